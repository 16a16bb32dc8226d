import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { Slab } from '../../../src/calculate/job.ts';
import {
  calcJoints,
  jointDepthIn,
  jointSpacingLimitIn,
  panelRatio,
  spacingMultiplier,
  splitIntoPanels,
} from '../../../src/calculate/joints/index.ts';
import { containsPoint, distanceToEdgeIn } from '../../../src/geometry/index.ts';
import { testExpressions } from '../evaluate.ts';
import { anyShape, aSlab, at, lShape, outlined, propertyRuns, rectangle, tapedIn, values } from '../slabs.ts';

const mix = { slumpIn: 4, aggregateIn: 0.75 };

function joints(...slabs: readonly Slab[]) {
  return calcJoints({ ...outlined(...slabs), mix });
}

describe('calcJoints', () => {
  const drive = aSlab({ shape: rectangle(480, 216, { edges: [{ edge: 4, kind: 'house' }] }) });
  const walk = aSlab({ id: 'front-walk', use: 'walk', shape: rectangle(48, 360) });
  const apron = aSlab({ id: 'apron', shape: rectangle(240, 120), jointSpacingIn: 72, thicknessIn: 6 });
  const result = joints(drive, walk, apron);

  test('the driveway by hand', () => {
    expect(values(at(result.figures.slabs, 'drive'))).toEqual({
      'box-length': 480,
      'box-width': 216,
      'spacing-limit': 120,
      'panels-along': 4,
      'panels-across': 2,
      'panel-length': 120,
      'panel-width': 108,
      'panel-ratio': 120 / 108,
      depth: 1,
      length: 3 * 18 + 40,
      isolation: 18,
    });
    expect(at(result.data.lines, 'drive')).toEqual([
      { fromXIn: 120, fromYIn: 0, toXIn: 120, toYIn: 216 },
      { fromXIn: 240, fromYIn: 0, toXIn: 240, toYIn: 216 },
      { fromXIn: 360, fromYIn: 0, toXIn: 360, toYIn: 216 },
      { fromXIn: 0, fromYIn: 108, toXIn: 480, toYIn: 108 },
    ]);
  });

  test('a walk is cut every 5 ft, square to the way it runs', () => {
    expect(values(at(result.figures.slabs, 'front-walk'))).toMatchObject({
      'spacing-limit': 60,
      'panels-along': 6,
      'panels-across': 1,
      length: 20,
    });
    expect(at(result.data.lines, 'front-walk').every((line) => line.fromYIn === line.toYIn)).toBe(true);
  });

  test('a spacing of the job goes before the table', () => {
    expect(values(at(result.figures.slabs, 'apron'))).toMatchObject({
      'spacing-limit': 72,
      'panels-along': 4,
      'panels-across': 2,
      depth: 1.5,
    });
  });

  test('a long panel gets one joint more and says why', () => {
    const strip = joints(aSlab({ id: 'strip', shape: rectangle(119, 60) }));
    const { 'panels-along': along, 'panel-ratio': ratio } = at(strip.figures.slabs, 'strip');
    expect([num(along), num(ratio)]).toEqual([2, 60 / 59.5]);
    expect(along.formula).toHaveProperty('method');
  });

  test('lines stop where an L ends', () => {
    const corner = joints(aSlab({ shape: lShape({ lengthIn: 240, widthIn: 240, legIn: 90, armIn: 90 }) }));
    expect(at(corner.data.lines, 'drive')).toEqual([
      { fromXIn: 120, fromYIn: 0, toXIn: 120, toYIn: 90 },
      { fromXIn: 0, fromYIn: 120, toXIn: 90, toYIn: 120 },
    ]);
    expect(num(corner.figures.total.length)).toBe(15);
  });

  test('totals are the sums of the slabs', () => {
    expect(num(result.figures.total.length)).toBe(94 + 20 + (3 * 10 + 20));
    expect(num(result.figures.total.isolation)).toBe(18);
  });

  test('no slabs, no joints', () => {
    expect(num(joints().figures.total.length)).toBe(0);
  });

  testExpressions('joints', result.figures, 25);

  test('invariant: lines lie inside the outline and end on its edge', () => {
    fc.assert(
      fc.property(anyShape, tapedIn(40, 180), (shape, jointSpacingIn) => {
        const slab = aSlab({ shape, jointSpacingIn });
        const made = outlined(slab);
        const outline = at(made.outlines, 'drive');
        for (const line of at(calcJoints({ ...made, mix }).data.lines, 'drive')) {
          const along = (share: number) => ({
            xIn: line.fromXIn + (line.toXIn - line.fromXIn) * share,
            yIn: line.fromYIn + (line.toYIn - line.fromYIn) * share,
          });
          expect(distanceToEdgeIn(outline, along(0))).toBeLessThan(1e-6);
          expect(distanceToEdgeIn(outline, along(1))).toBeLessThan(1e-6);
          for (const share of [0.01, 0.31, 0.5, 0.77, 0.99])
            expect(containsPoint(outline, along(share))).toBe(true);
        }
      }),
      propertyRuns,
    );
  });

  test('invariant: more spacing is never more panels, and never more joint on a rectangle', () => {
    fc.assert(
      fc.property(
        tapedIn(30, 900),
        tapedIn(30, 400),
        tapedIn(24, 180),
        tapedIn(0, 90),
        (long, wide, near, more) => {
          const at180 = (jointSpacingIn: number) =>
            at(joints(aSlab({ shape: rectangle(long, wide), jointSpacingIn })).figures.slabs, 'drive');
          const close = values(at180(near));
          const far = values(at180(near + more));
          expect(far['panels-along']).toBeLessThanOrEqual(close['panels-along']);
          expect(far['panels-across']).toBeLessThanOrEqual(close['panels-across']);
          expect(far.length).toBeLessThanOrEqual(close.length + 1e-9);
        },
      ),
      propertyRuns,
    );
  });

  test('invariant: panels keep the limit, and the ratio unless they would become too narrow', () => {
    fc.assert(
      fc.property(tapedIn(30, 900), tapedIn(20, 400), tapedIn(24, 180), (one, other, limitIn) => {
        const box = { lengthIn: Math.max(one, other), widthIn: Math.min(one, other) };
        const { alongCount, acrossCount } = splitIntoPanels(box, limitIn);
        const panelLengthIn = box.lengthIn / alongCount;
        const panelWidthIn = box.widthIn / acrossCount;
        expect(Math.max(panelLengthIn, panelWidthIn)).toBeLessThanOrEqual(limitIn + 1e-6);
        const [longIn, count] =
          panelLengthIn > panelWidthIn ? [box.lengthIn, alongCount] : [box.widthIn, acrossCount];
        if (longIn / (count + 1) >= 18)
          expect(panelRatio({ panelLengthIn, panelWidthIn })).toBeLessThanOrEqual(1.5);
      }),
      propertyRuns,
    );
  });
});

describe('limits', () => {
  test('a wide walk may be cut as far apart as it is wide, within the limit of its thickness', () => {
    const limit = (walkWidthIn: number) =>
      jointSpacingLimitIn({ multiplier: 24, thicknessIn: 4, walkWidthIn });
    expect([limit(36), limit(72), limit(144)]).toEqual([60, 72, 96]);
  });

  test('depth is rounded up to an eighth', () => {
    expect([3.5, 4, 4.1, 5, 6].map(jointDepthIn)).toEqual([1, 1, 1.125, 1.25, 1.5]);
  });

  test('refused: what is not above 0', () => {
    expect(() => spacingMultiplier({ slumpIn: 0, aggregateIn: 1 })).toThrow(RangeError);
    expect(() => spacingMultiplier({ slumpIn: 4, aggregateIn: Number.NaN })).toThrow(RangeError);
    expect(() => jointSpacingLimitIn({ multiplier: 24, thicknessIn: -4, walkWidthIn: null })).toThrow(
      RangeError,
    );
    expect(() => splitIntoPanels({ lengthIn: 100, widthIn: 50 }, 0)).toThrow(RangeError);
    expect(() => panelRatio({ panelLengthIn: 100, panelWidthIn: 0 })).toThrow(RangeError);
    expect(() => jointDepthIn(Number.NaN)).toThrow(RangeError);
  });
});
