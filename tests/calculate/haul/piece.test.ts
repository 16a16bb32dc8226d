import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pieceFits } from '../../../src/calculate/haul/index.ts';
import { runCount } from '../../support/property-runs.ts';

const run = { seed: 20_260_504, numRuns: runCount(200) };
const sizeIn = fc.integer({ min: 1, max: 40 });
const aPiece = fc.record({ lengthIn: sizeIn, widthIn: sizeIn, thicknessIn: sizeIn });
const aLimit = fc.record({ sideIn: sizeIn, thicknessIn: sizeIn });

describe('pieceFits', () => {
  test.each([
    { lengthIn: 24, widthIn: 24, thicknessIn: 8, fits: true },
    { lengthIn: 24.01, widthIn: 24, thicknessIn: 8, fits: false },
    { lengthIn: 24, widthIn: 24.01, thicknessIn: 8, fits: false },
    { lengthIn: 24, widthIn: 24, thicknessIn: 8.01, fits: false },
    // Narrow and thick: it lies on its side.
    { lengthIn: 20, widthIn: 6, thicknessIn: 12, fits: true },
    { lengthIn: 8, widthIn: 24, thicknessIn: 24, fits: true },
  ])('exact: $lengthIn x $widthIn x $thicknessIn against 24 and 8', ({ fits, ...piece }) => {
    expect(pieceFits(piece, { sideIn: 24, thicknessIn: 8 })).toBe(fits);
  });

  test('invariant: it fits in some way of lying, and in no other way where it does not', () => {
    fc.assert(
      fc.property(aPiece, aLimit, ({ lengthIn: a, widthIn: b, thicknessIn: c }, limit) => {
        const ways = [
          [a, b, c],
          [a, c, b],
          [b, c, a],
        ] as const;
        const lies = ways.some(
          ([one, other, up]) => one <= limit.sideIn && other <= limit.sideIn && up <= limit.thicknessIn,
        );
        expect(pieceFits({ lengthIn: a, widthIn: b, thicknessIn: c }, limit)).toBe(lies);
      }),
      run,
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('a size of %d in is refused', (size) => {
    const piece = { lengthIn: 12, widthIn: 12, thicknessIn: 4 };
    const limit = { sideIn: 24, thicknessIn: 8 };
    for (const key of ['lengthIn', 'widthIn', 'thicknessIn'] as const)
      expect(() => pieceFits({ ...piece, [key]: size }, limit)).toThrow(RangeError);
    for (const key of ['sideIn', 'thicknessIn'] as const)
      expect(() => pieceFits(piece, { ...limit, [key]: size })).toThrow(RangeError);
  });
});
