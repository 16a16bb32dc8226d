import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  climbOf,
  distanceIn,
  heightAt,
  pointAlong,
  surfaceAlong,
  surfaceThrough,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const point = (xIn: number, yIn: number, heightIn: number) => ({ xIn, yIn, heightIn });
const place = (xIn: number, yIn: number) => ({ xIn, yIn });

/** @throws {Error} If there is none. */
function through(points: readonly ReturnType<typeof point>[]) {
  const surface = surfaceThrough(points);
  if (surface === null) throw new Error('no surface');
  return surface;
}

describe('a surface along a line', () => {
  test('exact: a plane is one piece, beyond its points too', () => {
    const plane = through([point(0, 0, 100), point(100, 0, 98), point(0, 100, 99)]);
    const pieces = surfaceAlong(plane, { from: place(-50, 50), to: place(150, 50) });
    expect(pieces).toHaveLength(1);
    // z = 100 - 0.02 x - 0.01 y
    expect(pieces[0]?.fromHeightIn).toBeCloseTo(100 + 1 - 0.5, 12);
    expect(pieces[0]?.toHeightIn).toBeCloseTo(100 - 3 - 0.5, 12);
    expect(pieces[0] && climbOf(pieces[0])).toBeCloseTo(-0.02, 12);
  });

  test('exact: a ridge across the line is a break where it stands, and an edge that bends nothing is none', () => {
    const ridge = through([
      point(0, 0, 0),
      point(0, 60, 0),
      point(40, 0, 2),
      point(40, 60, 2),
      point(100, 0, -1),
      point(100, 60, -1),
    ]);
    const pieces = surfaceAlong(ridge, { from: place(0, 20), to: place(100, 20) });
    const rounded = (value: number) => Math.round(value * 1e9) / 1e9;
    expect(pieces.map(({ fromIn, toIn }) => [rounded(fromIn), rounded(toIn)])).toEqual([
      [0, 40],
      [40, 100],
    ]);
    expect(pieces.map(climbOf).map(rounded)).toEqual([0.05, -0.05]);
  });

  test('property: everywhere on a piece the line is as high as the surface', () => {
    const spot = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }));
    const spots = fc.uniqueArray(spot, { minLength: 3, maxLength: 9, selector: ([x, y]) => `${x} ${y}` });
    const heights = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 9, maxLength: 9 });
    const ends = fc.tuple(spot, spot).filter(([one, other]) => `${one}` !== `${other}`);
    fc.assert(
      fc.property(
        spots,
        heights,
        ends,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (at, high, [one, other], share) => {
          const surface = surfaceThrough(at.map(([x, y], index) => point(x, y, (high[index] ?? 0) / 8)));
          fc.pre(surface !== null);
          if (surface === null) return;
          const line = { from: place(...one), to: place(...other) };
          const pieces = surfaceAlong(surface, line);
          expect(pieces[0]?.fromIn).toBe(0);
          expect(pieces.at(-1)?.toIn).toBeCloseTo(distanceIn(line.from, line.to), 9);
          for (const [index, piece] of pieces.entries()) {
            if (index > 0) expect(piece.fromIn).toBe(pieces[index - 1]?.toIn);
            const alongIn = piece.fromIn + share * (piece.toIn - piece.fromIn);
            const heightIn = piece.fromHeightIn + share * (piece.toHeightIn - piece.fromHeightIn);
            expect(heightAt(surface, pointAlong(line, alongIn))).toBeCloseTo(heightIn, 6);
          }
        },
      ),
      { seed: 20261126, numRuns: runCount(200) },
    );
  });

  test('two points at one place are refused', () => {
    const plane = through([point(0, 0, 0), point(9, 0, 0), point(0, 9, 0)]);
    expect(() => surfaceAlong(plane, { from: place(1, 1), to: place(1, 1) })).toThrow(RangeError);
  });
});
