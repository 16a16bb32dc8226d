import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutCount, cutFromStock, leastBoards } from '../../../src/calculate/forms/index.ts';
import { propertyRuns, tapedIn } from '../slabs.ts';

describe('cut plans by hand', () => {
  test('by length, each into the first board with room, a saw cut between', () => {
    // 100 + 1/8 + 90 = 190 1/8 of 192; 60 + 1/8 + 60 + 1/8 + 60 = 180 1/4; 120 alone, 70 fits behind it.
    const plan = cutFromStock({ piecesIn: [60, 100, 60, 120, 90, 60, 70], stockIn: 192, kerfIn: 1 / 8 });
    expect(plan).toEqual([
      { pieces: [3, 6], leftIn: 192 - 120 - 70 - 1 / 8 },
      { pieces: [1, 4], leftIn: 192 - 100 - 90 - 1 / 8 },
      { pieces: [0, 2, 5], leftIn: 192 - 180 - 2 / 8 },
    ]);
    expect(cutCount(plan)).toBe(7);
  });

  test('two halves fit a board without a saw cut, and not with one', () => {
    expect(cutFromStock({ piecesIn: [96, 96], stockIn: 192, kerfIn: 0 })).toHaveLength(1);
    expect(cutFromStock({ piecesIn: [96, 96], stockIn: 192, kerfIn: 1 / 16 })).toHaveLength(2);
    expect(cutFromStock({ piecesIn: [96, 95.875], stockIn: 192, kerfIn: 1 / 8 })).toHaveLength(1);
  });

  test('a board that ends with its last piece is cut once less', () => {
    expect(cutCount(cutFromStock({ piecesIn: [96, 95.875], stockIn: 192, kerfIn: 1 / 8 }))).toBe(1);
    expect(cutCount(cutFromStock({ piecesIn: [192], stockIn: 192, kerfIn: 1 / 8 }))).toBe(0);
    expect(cutCount([])).toBe(0);
  });

  test('the least by hand', () => {
    // (96 + 96 + 2/8) / (192 + 1/8) is a hair above 1.
    expect(leastBoards({ sumIn: 192, count: 2, stockIn: 192, kerfIn: 1 / 8 })).toBe(2);
    expect(leastBoards({ sumIn: 191.875, count: 2, stockIn: 192, kerfIn: 1 / 8 })).toBe(1);
    expect(leastBoards({ sumIn: 0, count: 0, stockIn: 192, kerfIn: 1 / 8 })).toBe(0);
  });

  test('refused: what is longer than the stock, no length, or no saw', () => {
    expect(() => cutFromStock({ piecesIn: [193], stockIn: 192, kerfIn: 0 })).toThrow(RangeError);
    expect(() => cutFromStock({ piecesIn: [0], stockIn: 192, kerfIn: 0 })).toThrow(RangeError);
    expect(() => cutFromStock({ piecesIn: [Number.NaN], stockIn: 192, kerfIn: 0 })).toThrow(RangeError);
    expect(() => cutFromStock({ piecesIn: [1], stockIn: 192, kerfIn: -1 })).toThrow(RangeError);
    expect(() => leastBoards({ sumIn: 1, count: 1, stockIn: 0, kerfIn: 0 })).toThrow(RangeError);
  });
});

test('invariant: every piece is cut once, its board has room, and no fewer than the least are cut', () => {
  fc.assert(
    fc.property(
      fc.array(tapedIn(1, 190), { maxLength: 40 }),
      fc.constantFrom(0, 1 / 16, 1 / 8, 1 / 4),
      (piecesIn, kerfIn) => {
        const stockIn = 192;
        const plan = cutFromStock({ piecesIn, stockIn, kerfIn });
        const cut = plan.flatMap(({ pieces }) => pieces).toSorted((a, b) => a - b);
        expect(cut).toEqual(piecesIn.map((_, index) => index));
        for (const { pieces, leftIn } of plan) {
          const usedIn = pieces.reduce((sumIn, piece) => sumIn + (piecesIn[piece] ?? Number.NaN), 0);
          expect(usedIn + (pieces.length - 1) * kerfIn + leftIn).toBe(stockIn);
          expect(leftIn).toBeGreaterThanOrEqual(0);
        }
        const sumIn = piecesIn.reduce((sum, pieceIn) => sum + pieceIn, 0);
        const least = leastBoards({ sumIn, count: piecesIn.length, stockIn, kerfIn });
        expect(plan.length).toBeGreaterThanOrEqual(least);
        // First fit leaves at most one board half empty.
        expect(plan.length).toBeLessThanOrEqual(2 * least + 1);
      },
    ),
    propertyRuns,
  );
});
