import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CuttingPlan, cuttingPlan } from '../../../src/calculate/reinforcement/index.ts';
import { propertyRuns } from '../slabs.ts';

type Wanted = Parameters<typeof cuttingPlan>[0];

const of = (...lengthsIn: readonly number[]): Wanted['pieces'] =>
  lengthsIn.map((lengthIn) => ({ lengthIn, count: 1 }));

function plan(pieces: Wanted['pieces'], changed: Partial<Wanted> = {}): CuttingPlan {
  return cuttingPlan({ pieces, stocksIn: [240], kerfIn: 0, ...changed });
}

function piecesIn({ bars }: CuttingPlan): number[] {
  return bars
    .flatMap(({ count, cuts }) =>
      cuts.flatMap((cut) => Array.from({ length: count * cut.count }, () => cut.lengthIn)),
    )
    .sort((one, other) => one - other);
}

/**
 * The least stock, by trying every way to hand the pieces out over bars: an own opinion, without bounds,
 * patterns or first fit. Only for a handful of pieces.
 */
function leastByHand(lengthsIn: readonly number[], { stocksIn, kerfIn }: Omit<Wanted, 'pieces'>): number {
  const dearest = Infinity;
  const costOf = (bars: readonly (readonly number[])[]) =>
    bars.reduce((sum, cuts) => {
      const neededIn = cuts.reduce((total, cut) => total + cut, 0) + (cuts.length - 1) * kerfIn;
      const fits = stocksIn.filter((stockIn) => neededIn <= stockIn + 1e-9);
      return sum + (fits.length === 0 ? dearest : Math.min(...fits));
    }, 0);
  const handOut = (index: number, bars: readonly (readonly number[])[]): number => {
    const piece = lengthsIn[index];
    if (piece === undefined) return costOf(bars);
    const into = bars.map((_, at) => bars.map((cuts, own) => (own === at ? [...cuts, piece] : cuts)));
    return Math.min(...[...into, [...bars, [piece]]].map((next) => handOut(index + 1, next)));
  };
  return handOut(0, []);
}

describe('cuttingPlan', () => {
  test('exact: where the pieces fill the bars, as many as their sum', () => {
    const made = plan(of(60, 200, 120, 40, 120, 180));
    expect(made).toMatchObject({ boughtIn: 720, isLeast: true });
    expect(made.bars.map(({ leftIn }) => leftIn)).toEqual([0, 0, 0]);
  });

  test('exact: better than first fit, and shown', () => {
    // Longest first: 120 + 100, 90 + 90 + 50, 50 + 50, then nothing for the last; else 120 + 70 + 50 twice ...
    const made = plan(of(120, 100, 90, 90, 50, 50, 50, 50, 60, 60));
    expect(made.boughtIn).toBe(720);
    expect(made.isLeast).toBe(true);
    const classic = plan([
      { lengthIn: 130, count: 2 },
      { lengthIn: 80, count: 1 },
      { lengthIn: 70, count: 1 },
      { lengthIn: 30, count: 1 },
      { lengthIn: 40, count: 1 },
      { lengthIn: 110, count: 2 },
    ]);
    expect(classic.boughtIn).toBe(
      leastByHand([130, 130, 80, 70, 30, 40, 110, 110], { stocksIn: [240], kerfIn: 0 }),
    );
  });

  test('pieces longer than half a bar each take one, although their sum says fewer', () => {
    const made = plan([{ lengthIn: 130, count: 9 }]);
    expect(made).toMatchObject({ boughtIn: 9 * 240, isLeast: true });
    expect(made.bars).toEqual([{ stockIn: 240, count: 9, cuts: [{ lengthIn: 130, count: 1 }], leftIn: 110 }]);
  });

  test('a saw cut is lost between two pieces, not behind the last', () => {
    expect(plan(of(119.75, 120), { kerfIn: 0.25 })).toMatchObject({ boughtIn: 240 });
    expect(plan(of(120, 120), { kerfIn: 0.25 })).toMatchObject({ boughtIn: 480 });
    expect(plan(of(240), { kerfIn: 0.25 }).bars[0]?.leftIn).toBe(0);
  });

  test('the length of stock that leaves least over', () => {
    expect(plan(of(110, 110), { stocksIn: [240, 120] })).toMatchObject({ boughtIn: 240 });
    expect(plan(of(100), { stocksIn: [240, 120] })).toMatchObject({ boughtIn: 120, firstFitIn: 240 });
    expect(plan(of(160, 160, 160), { stocksIn: [240, 480] })).toMatchObject({ boughtIn: 480, isLeast: true });
  });

  test('like bars stand together, the longest pieces first', () => {
    const made = plan([
      { lengthIn: 100, count: 4 },
      { lengthIn: 200, count: 2 },
      { lengthIn: 40, count: 2 },
    ]);
    expect(made.bars).toEqual([
      {
        stockIn: 240,
        count: 2,
        cuts: [
          { lengthIn: 200, count: 1 },
          { lengthIn: 40, count: 1 },
        ],
        leftIn: 0,
      },
      { stockIn: 240, count: 2, cuts: [{ lengthIn: 100, count: 2 }], leftIn: 40 },
    ]);
  });

  test('nothing wanted, nothing bought', () => {
    expect(plan([])).toEqual({ bars: [], boughtIn: 0, firstFitIn: 0, isLeast: true });
  });

  const lengths = fc.array(
    fc.integer({ min: 8, max: 192 }).map((quarters) => quarters * 1.25),
    {
      minLength: 1,
      maxLength: 7,
    },
  );
  const stocks = fc.constantFrom([240], [240, 120], [300, 240], [480, 240, 120]);
  const kerf = fc.constantFrom(0, 1 / 8, 1 / 4);

  test('invariant: on small cases it is shown to be the least, and is', () => {
    fc.assert(
      fc.property(lengths, stocks, kerf, (lengthsIn, stocksIn, kerfIn) => {
        const made = plan(of(...lengthsIn), { stocksIn, kerfIn });
        expect(made.isLeast).toBe(true);
        expect(made.boughtIn).toBe(leastByHand(lengthsIn, { stocksIn, kerfIn }));
      }),
      { ...propertyRuns, numRuns: Math.min(propertyRuns.numRuns, 400) },
    );
  });

  test('invariant: every piece is cut once, no bar beyond its length, never more than first fit', () => {
    const many = fc.array(
      fc.record({
        lengthIn: fc.integer({ min: 4, max: 960 }).map((steps) => steps / 4),
        count: fc.integer({ min: 1, max: 9 }),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(many, stocks, kerf, (pieces, stocksIn, kerfIn) => {
        const made = plan(pieces, { stocksIn, kerfIn });
        const wanted = pieces.flatMap(({ lengthIn, count }) => Array.from({ length: count }, () => lengthIn));
        expect(piecesIn(made)).toEqual(wanted.sort((one, other) => one - other));
        for (const { stockIn, cuts, leftIn } of made.bars) {
          const count = cuts.reduce((sum, cut) => sum + cut.count, 0);
          const usedIn = cuts.reduce((sum, cut) => sum + cut.count * cut.lengthIn, 0) + (count - 1) * kerfIn;
          expect(usedIn).toBeLessThanOrEqual(stockIn + 1e-9);
          expect(leftIn).toBeCloseTo(Math.max(0, stockIn - usedIn - kerfIn), 9);
        }
        expect(made.boughtIn).toBeLessThanOrEqual(made.firstFitIn);
        const boughtIn = made.bars.reduce((sum, { stockIn, count }) => sum + stockIn * count, 0);
        expect(made.boughtIn).toBe(boughtIn);
      }),
      { ...propertyRuns, numRuns: 100 },
    );
  });

  test('the same pieces in another order give the same plan', () => {
    const pieces = of(181.25, 33, 97.5, 97.5, 140, 61.75, 33, 203, 88, 120.25, 52);
    expect(plan(pieces.toReversed())).toEqual(plan(pieces));
  });

  test('refuses what is outside its range', () => {
    expect(() => plan(of(240.25))).toThrow(RangeError);
    expect(() => plan(of(0))).toThrow(RangeError);
    expect(() => plan(of(100), { stocksIn: [] })).toThrow(RangeError);
    expect(() => plan(of(100), { kerfIn: Number.NaN })).toThrow(RangeError);
  });
});
