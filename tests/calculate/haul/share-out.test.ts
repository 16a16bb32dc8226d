import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type EmptyLoad, shareOutLb } from '../../../src/calculate/haul/share-out.ts';
import { runCount } from '../../support/property-runs.ts';

const SEED = 20_261_126;
const free = (capacityLb: number): EmptyLoad => ({ capacityLb, freeLb: capacityLb, usdPerLb: 0 });
const paid = (capacityLb: number, freeLb: number, usdPerLb: number): EmptyLoad => ({
  capacityLb,
  freeLb,
  usdPerLb,
});

describe('a weight laid on loads', () => {
  test('alike loads are alike full, the odd pounds on the first', () => {
    expect(shareOutLb(25_000, [free(9_800), free(9_800), free(9_800)], 1)).toEqual([8334, 8333, 8333]);
  });

  test('unlike loads are as full as each other, as near as whole pounds go', () => {
    // 12,000 of 16,000 lb: three quarters of each.
    expect(shareOutLb(12_000, [free(10_000), free(6_000)], 1)).toEqual([7500, 4500]);
  });

  test('a load that is full to the pound is not asked for more', () => {
    expect(shareOutLb(16_000, [free(10_000), free(6_000)], 1)).toEqual([10_000, 6000]);
  });

  test('the cheapest pounds first: what is paid for anyway, then the lower rate', () => {
    const loads = [paid(10_000, 2_000, 0.02), free(6_000), paid(10_000, 1_000, 0.01)];
    expect(shareOutLb(4_500, loads, 1)).toEqual([1000, 3000, 500]);
    expect(shareOutLb(12_000, loads, 1)).toEqual([2000, 6000, 4000]);
    expect(shareOutLb(20_000, loads, 1)).toEqual([4000, 6000, 10_000]);
  });

  test('what has no room is refused, and so is a weight without a load', () => {
    expect(() => shareOutLb(16_001, [free(10_000), free(6_000)], 1)).toThrow(RangeError);
    expect(() => shareOutLb(1, [], 1)).toThrow(RangeError);
  });

  test(`invariant: adds up exactly, over no capacity (seed ${SEED})`, () => {
    const load = fc
      .tuple(
        fc.integer({ min: 100, max: 10_000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(0, 0.01, 0.02),
      )
      .map(([capacityLb, share, usdPerLb]) =>
        paid(capacityLb, usdPerLb === 0 ? capacityLb : capacityLb * share, usdPerLb),
      );
    fc.assert(
      fc.property(
        fc.array(load, { minLength: 1, maxLength: 5 }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (loads, fill) => {
          const roomLb = loads.reduce((sum, { capacityLb }) => sum + capacityLb, 0);
          const weightLb = roomLb * fill;
          const laidLb = shareOutLb(weightLb, loads, 2 ** -20);
          expect(laidLb.reduce((sum, lb) => sum + lb, 0)).toBeCloseTo(weightLb, 6);
          for (const [index, lb] of laidLb.entries()) {
            expect(lb).toBeGreaterThanOrEqual(0);
            expect(lb).toBeLessThanOrEqual((loads[index]?.capacityLb ?? 0) * (1 + 1e-6));
          }
        },
      ),
      { numRuns: runCount(100), seed: SEED },
    );
  });
});
