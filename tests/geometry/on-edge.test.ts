import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  distanceToOneEdgeIn,
  isOnEdge,
  planeAt,
  segmentCrossingIn,
  surfaceThrough,
  type Vertex,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const settings = { seed: 20261127, numRuns: runCount(1000) };
const place = fc.record({ xIn: fc.integer({ min: -20, max: 20 }), yIn: fc.integer({ min: -20, max: 20 }) });

test('invariant: a point is on an edge as far as its distance says, straight or curved', () => {
  const found = { on: 0, off: 0 };
  fc.assert(
    fc.property(
      place,
      place,
      place,
      fc.constantFrom(0, 0, 0.3, -0.7),
      fc.constantFrom(0.01, 1, 4),
      (from, to, point, bulge, withinIn) => {
        fc.pre(from.xIn !== to.xIn || from.yIn !== to.yIn);
        const edge = {
          from: { ...from, bulge, edge: 'formed' } satisfies Vertex,
          to: { ...to, bulge: 0, edge: 'formed' } satisfies Vertex,
        };
        const isOn = distanceToOneEdgeIn(edge, point) <= withinIn;
        found[isOn ? 'on' : 'off'] += 1;
        expect(isOnEdge(edge, point, withinIn)).toBe(isOn);
      },
    ),
    settings,
  );
  expect(Math.min(found.on, found.off)).toBeGreaterThan(settings.numRuns / 20);
});

describe('segmentCrossingIn', () => {
  const level = { from: { xIn: 0, yIn: 0 }, to: { xIn: 100, yIn: 0 } };

  // It falls by 1 in a thousand, through the middle of the level one.
  test('exact: a line that hardly leans meets a level one', () => {
    expect(segmentCrossingIn(level, { fromXIn: 0, fromYIn: 0.05, toXIn: 100, toYIn: -0.05 })).toBeCloseTo(
      50,
      9,
    );
    expect(segmentCrossingIn(level, { fromXIn: 0, fromYIn: 5e-6, toXIn: 100, toYIn: -5e-6 })).toBeCloseTo(
      50,
      6,
    );
  });

  test('lines side by side, or on each other, do not meet', () => {
    expect(segmentCrossingIn(level, { fromXIn: 0, fromYIn: 1, toXIn: 100, toYIn: 1 })).toBeNull();
    expect(segmentCrossingIn(level, { fromXIn: 10, fromYIn: 0, toXIn: 90, toYIn: 0 })).toBeNull();
    expect(segmentCrossingIn(level, { fromXIn: 0, fromYIn: 1e-9, toXIn: 100, toYIn: -1e-9 })).toBeNull();
  });
});

test('on the fold between two planes it is that of the first triangle', () => {
  const surface = surfaceThrough([
    { xIn: 0, yIn: 0, heightIn: 0 },
    { xIn: 100, yIn: 0, heightIn: 0 },
    { xIn: 110, yIn: 90, heightIn: 30 },
    { xIn: 0, yIn: 100, heightIn: 0 },
  ]);
  if (surface === null) throw new RangeError('no surface');
  const [first, second] = surface.triangles;
  const shared = (first ?? []).filter((corner) => (second as readonly unknown[]).includes(corner));
  expect(shared).toHaveLength(2);
  for (const corner of shared) {
    const plane = planeAt(surface, corner);
    const own = planeAt(surface, middleOf(first ?? []));
    expect([plane.climbX, plane.climbY]).toEqual([own.climbX, own.climbY]);
    expect([plane.climbX, plane.climbY]).not.toEqual([
      planeAt(surface, middleOf(second ?? [])).climbX,
      planeAt(surface, middleOf(second ?? [])).climbY,
    ]);
  }
});

function middleOf(corners: readonly { readonly xIn: number; readonly yIn: number }[]) {
  const mean = (key: 'xIn' | 'yIn') => corners.reduce((sum, corner) => sum + corner[key], 0) / corners.length;
  return { xIn: mean('xIn'), yIn: mean('yIn') };
}
