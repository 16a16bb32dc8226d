import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  diagonalCheck,
  distanceIn,
  edgesOf,
  type FourSidesIn,
  fourSidesRing,
  ringAreaSqIn,
} from '../../src/geometry/index.ts';
import { tapeSlipOf } from '../../src/geometry/tape-slip.ts';
import { runCount } from '../support/property-runs.ts';

const settings = { numRuns: runCount(200), seed: Number(process.env.FAST_CHECK_SEED ?? 20260504) };

function shapeOf(taped: { sidesIn: FourSidesIn; diagonalIn: number }) {
  const result = fourSidesRing(taped);
  if (!result.ok) throw new Error(`edge ${result.edge} cannot be`);
  return result;
}

const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Sides and diagonal of a shape whose inner diagonal makes two sound triangles. */
const shapes = fc
  .record({
    diagonalIn: fc.double({ min: 50, max: 500, noNaN: true }),
    alongs: fc.tuple(unit(-0.3, 1.3), unit(-0.3, 1.3)),
    offs: fc.tuple(unit(0.1, 1), unit(0.1, 1)),
  })
  .map(({ diagonalIn, alongs, offs }) => {
    const from = (along: number, off: number) => Math.hypot(along, off) * diagonalIn;
    const sidesIn: FourSidesIn = [
      from(alongs[0], offs[0]),
      from(1 - alongs[0], offs[0]),
      from(1 - alongs[1], offs[1]),
      from(alongs[1], offs[1]),
    ];
    // Corner 2 lies below the diagonal and corner 4 above it.
    const otherDiagonalIn = from(alongs[0] - alongs[1], offs[0] + offs[1]);
    return { sidesIn, diagonalIn, otherDiagonalIn };
  });

describe('fourSidesRing', () => {
  // By hand: 25, 39, 56 cover 420 and 60, 52, 56 cover 1344 (Heron); the shape lies in a circle, so by
  // Ptolemy the other diagonal is (25 * 60 + 39 * 52) / 56.
  test('exact: sides 25, 39, 60, 52 and diagonal 56', () => {
    const { ring, otherDiagonalIn } = shapeOf({ sidesIn: [25, 39, 60, 52], diagonalIn: 56 });
    expect(otherDiagonalIn).toBeCloseTo(63, 12);
    expect(ringAreaSqIn(ring)).toBeCloseTo(1764, 9);
  });

  test('exact: a rectangle has equal diagonals', () => {
    const { ring, otherDiagonalIn } = shapeOf({ sidesIn: [40, 30, 40, 30], diagonalIn: 50 });
    expect(otherDiagonalIn).toBeCloseTo(50, 12);
    expect(ring[2]?.xIn).toBeCloseTo(40, 12);
    expect(ring[2]?.yIn).toBeCloseTo(30, 12);
    expect(ring[3]?.xIn).toBeCloseTo(0, 12);
  });

  test('exact: a corner pointing inwards at corner 1', () => {
    // An arrow head: corner 3 the tip, 40 from corner 1; corners 2 and 4 behind corner 1, 30 to the sides.
    const back = Math.hypot(10, 30);
    const front = Math.hypot(50, 30);
    const { ring, otherDiagonalIn } = shapeOf({ sidesIn: [back, front, front, back], diagonalIn: 40 });
    expect(otherDiagonalIn).toBeCloseTo(60, 10);
    expect(ringAreaSqIn(ring)).toBeCloseTo(40 * 30, 9);
  });

  test('sides and diagonals come out as taped; the area by the formula of their lengths', () => {
    fc.assert(
      fc.property(shapes, (taped) => {
        const { ring, otherDiagonalIn } = shapeOf(taped);
        const lengths = edgesOf(ring).map(({ from, to }) => distanceIn(from, to));
        for (const [index, sideIn] of taped.sidesIn.entries()) expect(lengths[index]).toBeCloseTo(sideIn, 8);
        expect(otherDiagonalIn).toBeCloseTo(taped.otherDiagonalIn, 7);
        // 4 K = sqrt(4 p² q² - (b² + d² - a² - c²)²), J. L. Coolidge, 1939, in E. W. Weisstein,
        // "Bretschneider's Formula", MathWorld (page seen, the formula from memory).
        const [a, b, c, d] = taped.sidesIn;
        const squares = b ** 2 + d ** 2 - a ** 2 - c ** 2;
        const areaSqIn = Math.sqrt(4 * (taped.diagonalIn * taped.otherDiagonalIn) ** 2 - squares ** 2) / 4;
        expect(ringAreaSqIn(ring) / areaSqIn).toBeCloseTo(1, 8);
      }),
      settings,
    );
  });

  test.each([
    { name: 'sides 1 and 2 short', sidesIn: [40, 30, 60, 60], edge: 1, leastIn: 70, mostIn: 130 },
    { name: 'side 2 long', sidesIn: [40, 150, 60, 60], edge: 2, leastIn: 60, mostIn: 140 },
    { name: 'sides 3 and 4 short', sidesIn: [60, 60, 30, 45], edge: 4, leastIn: 70, mostIn: 130 },
    { name: 'side 3 long', sidesIn: [60, 60, 160, 60], edge: 3, leastIn: 40, mostIn: 160 },
    { name: 'a flat triangle', sidesIn: [60, 40, 60, 60], edge: 1, leastIn: 60, mostIn: 140 },
  ] as const)('refuses $name, with what would work', ({ sidesIn, edge, leastIn, mostIn }) => {
    expect(fourSidesRing({ sidesIn, diagonalIn: 100 })).toEqual({ ok: false, edge, leastIn, mostIn });
    for (const good of [leastIn + 1e-6, mostIn - 1e-6]) {
      const [a, b, c, d] = sidesIn.map((sideIn, index) => (index === edge - 1 ? good : sideIn));
      const mended: FourSidesIn = [a ?? 0, b ?? 0, c ?? 0, d ?? 0];
      expect(fourSidesRing({ sidesIn: mended, diagonalIn: 100 }).ok).toBe(true);
    }
  });

  test.each([
    { sidesIn: [0, 30, 40, 30], diagonalIn: 50 },
    { sidesIn: [40, 30, Number.NaN, 30], diagonalIn: 50 },
    { sidesIn: [40, 30, 40, Infinity], diagonalIn: 50 },
    { sidesIn: [40, 30, 40, 30], diagonalIn: 0 },
    { sidesIn: [40, 30, 40, 30], diagonalIn: Number.NaN },
  ] as const)('throws on sides $sidesIn, diagonal $diagonalIn', (taped) => {
    expect(() => fourSidesRing(taped)).toThrow(RangeError);
  });
});

describe('diagonalCheck', () => {
  test('agreeing diagonals leave nobody to blame', () => {
    const { otherDiagonalIn } = shapeOf({ sidesIn: [40, 30, 40, 30], diagonalIn: 50 });
    const check = diagonalCheck({ sidesIn: [40, 30, 40, 30], diagonalIn: 50, otherDiagonalIn });
    expect(check).toEqual({ missIn: 0, culprits: [], likely: null });
  });

  test('each length it names makes the diagonals agree, nearest first', () => {
    const off = fc.double({ min: -0.05, max: 0.05, noNaN: true });
    let found = 0;
    fc.assert(
      fc.property(shapes, off, (shape, share) => {
        const taped = { ...shape, otherDiagonalIn: shape.otherDiagonalIn * (1 + share) };
        const { missIn, culprits } = diagonalCheck(taped);
        expect(missIn).toBeCloseTo(taped.otherDiagonalIn - shape.otherDiagonalIn, 7);
        let lastIn = 0;
        for (const { what, number, wouldBeIn, changeIn } of culprits) {
          expect(Math.abs(changeIn)).toBeGreaterThanOrEqual(lastIn);
          lastIn = Math.abs(changeIn);
          if (what === 'diagonal' && number === 2) {
            expect(wouldBeIn).toBeCloseTo(shape.otherDiagonalIn, 7);
            continue;
          }
          found += 1;
          const sides = shape.sidesIn.map((sideIn, index) =>
            what === 'side' && index === number - 1 ? wouldBeIn : sideIn,
          );
          const tapedIn = what === 'side' ? (shape.sidesIn[number - 1] ?? 0) : shape.diagonalIn;
          expect(wouldBeIn - changeIn).toBeCloseTo(tapedIn, 9);
          expect(Math.abs(changeIn)).toBeLessThanOrEqual(tapedIn * 0.1 * (1 + 1e-9));
          const [a = 0, b = 0, c = 0, d = 0] = sides;
          const mended = fourSidesRing({
            sidesIn: [a, b, c, d],
            diagonalIn: what === 'diagonal' ? wouldBeIn : shape.diagonalIn,
          });
          // A length at the very end of its range makes a flat triangle, which is not a shape.
          if (mended.ok) expect(mended.otherDiagonalIn).toBeCloseTo(taped.otherDiagonalIn, 6);
        }
      }),
      settings,
    );
    expect(found).toBeGreaterThan(settings.numRuns);
  });

  // A patio of 30 ft by 24 ft out of square; in turn each reading is noted one foot wrong.
  const sidesIn: FourSidesIn = [360, 288, 352, 300];
  const diagonalIn = 455;
  const right = { sidesIn, diagonalIn, ...shapeOf({ sidesIn, diagonalIn }) };
  test.each([
    { what: 'side', number: 1 },
    { what: 'side', number: 2 },
    { what: 'side', number: 3 },
    { what: 'side', number: 4 },
    { what: 'diagonal', number: 1 },
    { what: 'diagonal', number: 2 },
  ])('finds $what $number, noted a foot short', ({ what, number }) => {
    const [a = 0, b = 0, c = 0, d = 0] = sidesIn.map((sideIn, index) =>
      what === 'side' && index === number - 1 ? sideIn - 12 : sideIn,
    );
    const { culprits, likely } = diagonalCheck({
      sidesIn: [a, b, c, d],
      diagonalIn: what === 'diagonal' && number === 1 ? diagonalIn - 12 : diagonalIn,
      otherDiagonalIn: right.otherDiagonalIn - (what === 'diagonal' && number === 2 ? 12 : 0),
    });
    const named = culprits.find((culprit) => culprit.what === what && culprit.number === number);
    expect(named?.changeIn).toBeCloseTo(12, 6);
    expect(named?.slip?.kind).toBe('whole-foot');
    expect(likely?.because).toBe('whole-foot');
    expect(likely?.culprit).toEqual(named);
  });

  test('without a slip to see, the smallest change is the likely one', () => {
    const { culprits, likely } = diagonalCheck({
      sidesIn,
      diagonalIn,
      otherDiagonalIn: right.otherDiagonalIn + 1.1,
    });
    expect(likely).toEqual({ culprit: culprits[0], because: 'smallest-change' });
  });

  test('a miss of more than a tenth leaves out every reading it cannot be', () => {
    const { culprits, likely } = diagonalCheck({
      sidesIn: [40, 30, 40, 30],
      diagonalIn: 50,
      otherDiagonalIn: 70,
    });
    expect(culprits).toEqual([]);
    expect(likely).toBeNull();
  });

  test.each([
    { sidesIn, diagonalIn, otherDiagonalIn: 0 },
    { sidesIn, diagonalIn, otherDiagonalIn: Number.NaN },
    { sidesIn, diagonalIn: 1000, otherDiagonalIn: 450 },
    { sidesIn, diagonalIn: Number.NaN, otherDiagonalIn: 450 },
  ])('throws on diagonals $diagonalIn and $otherDiagonalIn', (taped) => {
    expect(() => diagonalCheck(taped)).toThrow(RangeError);
  });
});

describe('tapeSlipOf', () => {
  test.each([
    { tapedIn: 240, wouldBeIn: 252.2, slip: 'whole-foot' },
    { tapedIn: 240, wouldBeIn: 216, slip: 'whole-foot' },
    { tapedIn: 240, wouldBeIn: 252.3, slip: null },
    { tapedIn: 240, wouldBeIn: 240.1, slip: null },
    // 134 for 143, and 243.5 for 234.5.
    { tapedIn: 134, wouldBeIn: 143, slip: 'swapped-digits' },
    { tapedIn: 243.5, wouldBeIn: 234.6, slip: 'swapped-digits' },
    // 198 in is 16 ft 6 in, which may have been 16 ft 9 in; or its own 9 a 6.
    { tapedIn: 198, wouldBeIn: 201, slip: 'six-for-nine' },
    { tapedIn: 198, wouldBeIn: 168, slip: 'six-for-nine' },
    { tapedIn: 129, wouldBeIn: 126, slip: 'six-for-nine' },
    { tapedIn: 200, wouldBeIn: 203, slip: null },
  ])('$tapedIn in that would be $wouldBeIn in: $slip', ({ tapedIn, wouldBeIn, slip }) => {
    expect(tapeSlipOf({ tapedIn, wouldBeIn })?.kind ?? null).toBe(slip);
  });
});
