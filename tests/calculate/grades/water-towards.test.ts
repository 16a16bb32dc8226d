import { describe, expect, test } from 'vitest';
import { shareTowards } from '../../../src/calculate/grades/water-towards.ts';
import {
  type EdgeKind,
  type HeightPoint,
  type Outline,
  surfaceThrough,
} from '../../../src/geometry/index.ts';

/** A slab of 240 by 120 in; its edges are formed but for those given. */
function slab(edges: readonly EdgeKind[] = ['formed', 'formed', 'formed', 'formed']): Outline {
  const corners = [
    [0, 0],
    [240, 0],
    [240, 120],
    [0, 120],
  ] as const;
  return {
    rings: [corners.map(([xIn, yIn], index) => ({ xIn, yIn, bulge: 0, edge: edges[index] ?? 'formed' }))],
  };
}

/** A plane that climbs so much along x and y. */
function plane(climbX: number, climbY: number) {
  const points = [
    [0, 0],
    [240, 0],
    [240, 120],
    [0, 120],
  ].map(([xIn = 0, yIn = 0]): HeightPoint => ({ xIn, yIn, heightIn: climbX * xIn + climbY * yIn }));
  const surface = surfaceThrough(points);
  if (surface === null) throw new RangeError('no surface');
  return surface;
}

const at = (...places: readonly (readonly [number, number])[]) => places.map(([xIn, yIn]) => ({ xIn, yIn }));
/** A line along the near long edge, 20 in off. */
const NEAR = at([-50, -20], [300, -20]);

describe('exact: the share of a slab whose water runs to a line', () => {
  test('all of it, none of it, and half of it before half the edge', () => {
    const towards = plane(0, 0.02);
    expect(shareTowards(NEAR, towards, slab(), [])).toBe(1);
    expect(shareTowards(NEAR, plane(0, -0.02), slab(), [])).toBe(0);
    expect(shareTowards(at([0, -20], [120, -20]), towards, slab(), [])).toBeCloseTo(0.5, 1);
    expect(shareTowards(NEAR, plane(0, 0), slab(), [])).toBe(0);
  });

  // At 45 degrees over 120 in the water of a triangle, half of 120 by 120 of 240 by 120, leaves at the short edge.
  test('what leaves over another edge before it gets there does not count', () => {
    const slanting = plane(0.02, 0.02);
    expect(shareTowards(at([-1, 0], [-1, 119]), slanting, slab(), [])).toBeCloseTo(1 / 4, 1);
  });

  test('10 ft past the edge it is not followed any more', () => {
    const towards = plane(0, 0.02);
    expect(shareTowards(at([-50, -119.9], [300, -119.9]), towards, slab(), [])).toBe(1);
    expect(shareTowards(at([-50, -120.1], [300, -120.1]), towards, slab(), [])).toBe(0);
  });

  test('a drain before the edge takes what comes to it, and half of one takes half', () => {
    const towards = plane(0, 0.02);
    expect(shareTowards(NEAR, towards, slab(), [at([-1, 2], [241, 2])])).toBeLessThan(0.06);
    expect(shareTowards(NEAR, towards, slab(), [at([-1, 2], [120, 2])])).toBeCloseTo(0.5, 1);
  });

  // Places stand 8 or 9 in apart, so that of 240 in of edge 12 in are the way of one or two rows in 28.
  test('a grate takes what passes within 6 in of it, and nothing of what passes beside', () => {
    const towards = plane(0, 0.02);
    const rowsIn = Array.from({ length: 28 }, (_, index) => ((index + 0.5) * 240) / 28);
    for (const xIn of [30, 123, 200]) {
      const taken = rowsIn.filter((rowIn) => Math.abs(rowIn - xIn) <= 6).length;
      expect(taken).toBeGreaterThan(0);
      expect(shareTowards(NEAR, towards, slab(), [at([xIn, -5])])).toBeCloseTo(1 - taken / 28, 9);
    }
    // Halfway up it takes half of what comes down its rows; off the slab and past the line, none.
    expect(shareTowards(NEAR, towards, slab(), [at([123, 60])])).toBeGreaterThan(
      shareTowards(NEAR, towards, slab(), [at([123, -5])]),
    );
    expect(shareTowards(NEAR, towards, slab(), [at([123, -40])])).toBe(1);
  });

  test('a wall along the edge stops it, and what lies on this side of the wall is reached', () => {
    const towards = plane(0, 0.02);
    const walled = slab(['house', 'formed', 'formed', 'formed']);
    expect(shareTowards(NEAR, towards, walled, [])).toBe(0);
    expect(shareTowards(at([0, 1], [240, 1]), towards, walled, [])).toBeGreaterThan(0.9);
  });
});
