import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closeTraverse, edgesOf, ringAreaSqIn, type WalkedSide } from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const settings = { numRuns: runCount(200), seed: Number(process.env.FAST_CHECK_SEED ?? 20260504) };
const radOf = (deg: number, min = 0, sec = 0) => ((deg + min / 60 + sec / 3600) * Math.PI) / 180;

type Course = { readonly azimuthRad: number; readonly length: number };

/** Azimuths run clockwise from north; a turn is to the left where positive. */
function walk(courses: readonly Course[]) {
  const [first] = courses;
  const startRad = first?.azimuthRad ?? Number.NaN;
  let beforeRad = startRad;
  const sides = courses.map(({ azimuthRad, length }): WalkedSide => {
    const turnRad = beforeRad - azimuthRad;
    beforeRad = azimuthRad;
    return { lengthIn: length, turnRad };
  });
  const result = closeTraverse(sides);
  const toNorthEast = (along: number, left: number) => ({
    north: along * Math.cos(startRad) + left * Math.sin(startRad),
    east: along * Math.sin(startRad) - left * Math.cos(startRad),
  });
  return {
    closure: result.closure,
    error: toNorthEast(result.closure.alongIn, result.closure.acrossIn),
    corners: result.ring.map(({ xIn, yIn }) => toNorthEast(xIn, yIn)),
  };
}

// Published (seen): J. V. Mahun, "Open Access Surveying", Traverse Computations ch. I, loop traverse
// ABCD: courses, sums of latitudes and departures, perimeter; adjusted coordinates in ch. G, example 1.
describe('closeTraverse, loop traverse of four courses', () => {
  const loop = walk([
    { azimuthRad: radOf(180) + radOf(68, 5, 35), length: 472.68 },
    { azimuthRad: -radOf(19, 46, 0), length: 216.13 },
    { azimuthRad: radOf(45, 55, 20), length: 276.52 },
    { azimuthRad: radOf(180) - radOf(54, 59, 15), length: 382.24 },
  ]);

  test('ends 0.083 north and 0.075 east of where it began, over 1347.57', () => {
    // Sums of four printed values, each rounded to 0.001.
    expect(Math.abs(loop.error.north - 0.083)).toBeLessThan(0.002);
    expect(Math.abs(loop.error.east - 0.075)).toBeLessThan(0.002);
    expect(loop.closure.perimeterIn).toBeCloseTo(1347.57, 9);
    expect(loop.closure.errorIn).toBeCloseTo(Math.hypot(loop.error.north, loop.error.east), 12);
  });

  test.each([
    { corner: 1, north: 500.0, east: 2000.0 },
    { corner: 2, north: 323.614, east: 1561.426 },
    { corner: 3, north: 526.996, east: 1488.321 },
    { corner: 4, north: 719.336, east: 1686.956 },
  ])('corner $corner at $north north, $east east', ({ corner, north, east }) => {
    const ours = loop.corners[corner - 1];
    // Printed values are chains of values rounded to 0.001.
    expect(Math.abs((ours?.north ?? Number.NaN) + 500 - north)).toBeLessThan(0.002);
    expect(Math.abs((ours?.east ?? Number.NaN) + 2000 - east)).toBeLessThan(0.002);
  });
});

// Published (seen): Purdue University, course ASM 215, topic page on traverse calculations, azimuths:
// misclosure, balanced coordinates from (10000, 10000), precision.
describe('closeTraverse, traverse of five courses', () => {
  const five = walk([
    { azimuthRad: radOf(26, 10), length: 285.1 },
    { azimuthRad: radOf(104, 35), length: 610.45 },
    { azimuthRad: radOf(195, 30), length: 720.48 },
    { azimuthRad: radOf(358, 18), length: 203.0 },
    { azimuthRad: radOf(306, 54), length: 647.02 },
  ]);

  test('misses by 0.71 south and 0.53 east, 1 in 2771', () => {
    // Sums of five printed values, each rounded to 0.01.
    expect(Math.abs(five.error.north + 0.71)).toBeLessThan(0.025);
    expect(Math.abs(five.error.east - 0.53)).toBeLessThan(0.025);
    expect(five.closure.perimeterIn).toBeCloseTo(2466.05, 9);
    // Printed from an error rounded to 0.89, itself of the rounded sums.
    expect(1 / five.closure.errorRatio / 2771).toBeGreaterThan(0.98);
    expect(1 / five.closure.errorRatio / 2771).toBeLessThan(1.02);
  });

  test.each([
    { corner: 2, north: 10255.96, east: 10125.66 },
    { corner: 3, north: 10102.44, east: 10716.31 },
    { corner: 4, north: 9408.37, east: 10523.62 },
    { corner: 5, north: 9611.34, east: 10517.55 },
  ])('corner $corner at $north north, $east east', ({ corner, north, east }) => {
    const ours = five.corners[corner - 1];
    // Printed values are chains of values rounded to 0.01.
    expect(Math.abs((ours?.north ?? Number.NaN) + 10000 - north)).toBeLessThan(0.02);
    expect(Math.abs((ours?.east ?? Number.NaN) + 10000 - east)).toBeLessThan(0.02);
  });
});

describe('closeTraverse', () => {
  const left = Math.PI / 2;
  const square = [0, left, left, left].map((turnRad) => ({ lengthIn: 120, turnRad }));

  test('exact: a square closes without any error', () => {
    const { ring, closure } = closeTraverse(square);
    expect(closure).toEqual({
      errorIn: 0,
      directionRad: 0,
      alongIn: 0,
      acrossIn: 0,
      perimeterIn: 480,
      errorRatio: 0,
    });
    expect(ring.map(({ xIn, yIn }) => [xIn, yIn])).toEqual([
      [0, 0],
      [120, 0],
      [120, 120],
      [0, 120],
    ]);
  });

  // By hand: side 3 is 4 in long, so the walk ends 4 in before its beginning; 484 in all.
  test('exact: one side too long, and each corner takes its share', () => {
    const { ring, closure } = closeTraverse(
      square.map((side, index) => ({ ...side, lengthIn: index === 2 ? 124 : 120 })),
    );
    expect(closure.alongIn).toBe(-4);
    expect(closure.acrossIn).toBe(0);
    expect(closure.directionRad).toBeCloseTo(Math.PI, 12);
    expect(closure.errorRatio).toBeCloseTo(4 / 484, 12);
    expect(ring[1]?.xIn).toBeCloseTo(120 + (4 * 120) / 484, 12);
    expect(ring[3]?.xIn).toBeCloseTo(-4 + (4 * 364) / 484, 12);
  });

  test('the turn of the first side is not used, whatever it is', () => {
    const turned = square.map((side, index) => (index === 0 ? { ...side, turnRad: Number.NaN } : side));
    expect(closeTraverse(turned)).toEqual(closeTraverse(square));
  });

  test('exact: a walk to the right runs clockwise', () => {
    const right = square.map((side) => ({ ...side, turnRad: -side.turnRad }));
    expect(ringAreaSqIn(closeTraverse(right).ring)).toBe(-14_400);
  });

  /** Corners around the origin, as the sides and turns of someone who walks them without error. */
  const walks = fc
    .array(fc.double({ min: 100, max: 500, noNaN: true }), { minLength: 3, maxLength: 9 })
    .map((spokes) => {
      const points = spokes.map((outIn, index) => {
        const directionRad = (index * 2 * Math.PI) / spokes.length;
        return { xIn: outIn * Math.cos(directionRad), yIn: outIn * Math.sin(directionRad) };
      });
      const steps = points.map((point, index) => {
        const next = points[(index + 1) % points.length] ?? point;
        return { xIn: next.xIn - point.xIn, yIn: next.yIn - point.yIn };
      });
      const sides = steps.map((step, index): WalkedSide => {
        const before = steps.at(index - 1) ?? step;
        const turnRad = Math.atan2(
          before.xIn * step.yIn - before.yIn * step.xIn,
          before.xIn * step.xIn + before.yIn * step.yIn,
        );
        return { lengthIn: Math.hypot(step.xIn, step.yIn), turnRad };
      });
      return sides;
    });

  test('a walk without error closes, and where it starts changes nothing', () => {
    fc.assert(
      fc.property(walks, fc.nat(8), (sides, startAt) => {
        const { ring, closure } = closeTraverse(sides);
        expect(closure.errorIn).toBeLessThan(1e-9);
        const start = startAt % sides.length;
        const later = closeTraverse([...sides.slice(start), ...sides.slice(0, start)]);
        expect(ringAreaSqIn(later.ring) / ringAreaSqIn(ring)).toBeCloseTo(1, 9);
        expect(ringAreaSqIn(ring)).toBeGreaterThan(0);
      }),
      settings,
    );
  });

  test('corrections add up to the error, each in proportion to its side', () => {
    const slip = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(walks, slip, (sides, slipIn) => {
        const wrong = sides.map((side, index) =>
          index === 1 ? { ...side, lengthIn: side.lengthIn + slipIn } : side,
        );
        const { ring, closure } = closeTraverse(wrong);
        let directionRad = 0;
        for (const edge of edgesOf(ring)) {
          const side = wrong[edge.number - 1] ?? { lengthIn: Number.NaN, turnRad: 0 };
          if (edge.number > 1) directionRad += side.turnRad;
          const share = side.lengthIn / closure.perimeterIn;
          const walkedXIn = side.lengthIn * Math.cos(directionRad);
          const walkedYIn = side.lengthIn * Math.sin(directionRad);
          expect(edge.to.xIn - edge.from.xIn).toBeCloseTo(walkedXIn - closure.alongIn * share, 8);
          expect(edge.to.yIn - edge.from.yIn).toBeCloseTo(walkedYIn - closure.acrossIn * share, 8);
        }
        expect(closure.errorIn).toBeCloseTo(Math.abs(slipIn), 8);
      }),
      settings,
    );
  });

  test.each([
    { name: 'two sides', sides: square.slice(0, 2) },
    { name: 'no side', sides: [] },
    { name: 'a side of 0', sides: square.map((side) => ({ ...side, lengthIn: 0 })) },
    { name: 'a side of NaN', sides: square.map((side) => ({ ...side, lengthIn: Number.NaN })) },
    { name: 'a turn of NaN', sides: square.map((side) => ({ ...side, turnRad: Number.NaN })) },
    { name: 'an endless turn', sides: square.map((side) => ({ ...side, turnRad: Infinity })) },
  ])('refuses $name', ({ sides }) => {
    expect(() => closeTraverse(sides)).toThrow(RangeError);
  });
});
