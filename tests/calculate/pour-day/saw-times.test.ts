import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sawClosesHr, sawOpensHr, sawTimes, settingHr } from '../../../src/calculate/pour-day/index.ts';
import { runCount } from '../../support/property-runs.ts';

const allowed = { fromHr: 7, toHr: 20 };

describe('sawTimes', () => {
  test.each([
    ['in the evening', { fromHr: 17, toHr: 23 }, 1.5, { fromHr: 17, toHr: 20 }, 0],
    [
      'next morning, where the evening is too short',
      { fromHr: 19, toHr: 35 },
      1.5,
      { fromHr: 31, toHr: 35 },
      0,
    ],
    ['in the evening, just long enough', { fromHr: 18.5, toHr: 35 }, 1.5, { fromHr: 18.5, toHr: 20 }, 0],
    ['not at night', { fromHr: 21, toHr: 29 }, 1.5, null, 1.5],
    ['partly', { fromHr: 19.5, toHr: 24 }, 1.5, { fromHr: 19.5, toHr: 20 }, 1],
    ['the longer of two that are too short', { fromHr: 19.5, toHr: 32 }, 1.5, { fromHr: 31, toHr: 32 }, 0.5],
  ])('%s', (_what, window, cuttingHr, at, shortHr) => {
    expect(sawTimes({ window, cuttingHr, allowed })).toEqual({ at, shortHr });
  });

  test('where nothing limits noise the whole window is open', () => {
    const window = { fromHr: 22, toHr: 30 };
    expect(sawTimes({ window, cuttingHr: 2, allowed: null })).toEqual({ at: window, shortHr: 0 });
  });

  test('invariant: what is cut lies in the window and in the hours allowed', () => {
    const hour = fc.double({ min: 8, max: 34, noNaN: true });
    fc.assert(
      fc.property(hour, fc.double({ min: 0.5, max: 18, noNaN: true }), (fromHr, longHr) => {
        const window = { fromHr, toHr: fromHr + longHr };
        const { at, shortHr } = sawTimes({ window, cuttingHr: 2, allowed });
        if (at === null) {
          expect(shortHr).toBe(2);
          return;
        }
        expect(at.fromHr).toBeGreaterThanOrEqual(window.fromHr);
        expect(at.toHr).toBeLessThanOrEqual(window.toHr);
        for (const timeHr of [at.fromHr, at.toHr]) {
          const clockHr = timeHr > 24 ? timeHr - 24 : timeHr;
          expect(clockHr).toBeGreaterThanOrEqual(allowed.fromHr - 1e-9);
          expect(clockHr).toBeLessThanOrEqual(allowed.toHr + 1e-9);
        }
        expect(shortHr).toBeCloseTo(Math.max(0, 2 - (at.toHr - at.fromHr)), 9);
      }),
      { numRuns: runCount(200), seed: 2 },
    );
  });
});

describe('setting and sawing by temperature', () => {
  test('exact: halfway between two rows of the table', () => {
    expect(settingHr(65)).toBeCloseTo(7, 9);
    expect(settingHr(45)).toBeCloseTo(12.5, 9);
    expect(sawOpensHr('wet-saw', 65)).toBeCloseTo(8, 9);
    expect(sawOpensHr('early-entry', 65)).toBeCloseTo(2.5, 9);
  });

  test('beyond the ends the last row holds', () => {
    expect(settingHr(10)).toBe(19);
    expect(settingHr(115)).toBe(1.7);
    expect(sawOpensHr('wet-saw', 20)).toBe(12);
    expect(sawOpensHr('wet-saw', 110)).toBe(4);
    expect(sawClosesHr('wet-saw', 95)).toBe(8);
    expect(sawClosesHr('wet-saw', 30)).toBe(18);
    expect(sawClosesHr('early-entry', 95)).toBe(4);
    expect(sawClosesHr('early-entry', 30)).toBe(12);
  });

  test('invariant: warmer never sets later and never opens the saw later', () => {
    const warm = fc.double({ min: -20, max: 120, noNaN: true });
    fc.assert(
      fc.property(warm, warm, (one, other) => {
        const [cooler, warmer] = one < other ? [one, other] : [other, one];
        expect(settingHr(warmer)).toBeLessThanOrEqual(settingHr(cooler));
        expect(sawOpensHr('wet-saw', warmer)).toBeLessThanOrEqual(sawOpensHr('wet-saw', cooler));
        expect(sawOpensHr('early-entry', warmer)).toBeLessThan(sawOpensHr('wet-saw', warmer));
      }),
      { numRuns: runCount(200), seed: 3 },
    );
  });

  test('refuses what is no number', () => {
    expect(() => settingHr(Number.NaN)).toThrow(RangeError);
    expect(() => sawOpensHr('wet-saw', Number.NaN)).toThrow(RangeError);
  });
});
