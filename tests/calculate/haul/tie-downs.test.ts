import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FigureTree } from '../../../src/calculate/figure.ts';
import {
  aggregateWorkingLoadLb,
  calcTieDowns,
  machineTiedownCount,
  SAME_SIDE_RATIO,
  tiedownCount,
} from '../../../src/calculate/haul/index.ts';
import type { Company, Machine } from '../../../src/calculate/job.ts';
import { runCount } from '../../support/property-runs.ts';
import { machine, rate } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';

const runs = { numRuns: runCount(200), seed: 20_261_125 };

/** A company whose base is made with the machine, and whose slabs are finished with another. */
function tied(tiedDown: Machine['tiedDown'], tasks: readonly string[] = ['base']) {
  const row = { task: 'base', machine: 'loader-with-breaker' };
  return calcTieDowns({
    machines: {
      'loader-with-breaker': machine('loader-with-breaker', { tiedDown }),
      mixer: machine('mixer', { tiedDown: { weightLb: 400, lengthIn: 60 } }),
      unused: machine('mixer', { id: 'unused', tiedDown: { weightLb: 400, lengthIn: 60 } }),
    },
    production: { base: row, place: { task: 'place', machine: 'mixer' } } as unknown as Company['production'],
    tasks: Object.fromEntries(tasks.map((task) => [task, rate('1.00', 'h')])),
  });
}

describe('calcTieDowns', () => {
  test('only of machines that work in this job and say what they weigh', () => {
    expect(Object.keys(tied({ weightLb: 6200, lengthIn: 108 }))).toEqual(['loader-with-breaker']);
    expect(Object.keys(tied({ weightLb: 6200, lengthIn: 108 }, ['base', 'place']))).toEqual([
      'loader-with-breaker',
      'mixer',
    ]);
    expect(tied(null)).toEqual({});
    expect(tied({ weightLb: 6200, lengthIn: 108 }, [])).toEqual({});
  });

  test.each([
    // By hand: half of the weight, up to a whole pound; half of each limit counts.
    { weightLb: 6200, lengthIn: 108, together: 3100, count: 2, each: 3100, blocked: 1 },
    { weightLb: 6201, lengthIn: 132, together: 3101, count: 3, each: 2068, blocked: 2 },
    { weightLb: 9999, lengthIn: 108, together: 5000, count: 2, each: 5000, blocked: 1 },
    { weightLb: 10_000, lengthIn: 108, together: 5000, count: 4, each: 2500, blocked: 4 },
    { weightLb: 12_000, lengthIn: 492, together: 6000, count: 6, each: 2000, blocked: 5 },
    { weightLb: 300, lengthIn: 48, together: 150, count: 1, each: 300, blocked: 1 },
  ])('$weightLb lb, $lengthIn in', ({ weightLb, lengthIn, together, count, each, blocked }) => {
    const figures = tied({ weightLb, lengthIn })['loader-with-breaker'];
    expect([
      figures?.['working-load'].value,
      figures?.count.value,
      figures?.['working-load-each'].value,
      figures?.['count-blocked'].value,
    ]).toEqual([together, count, each, blocked]);
  });

  for (const [weightLb, lengthIn] of [
    [300, 48],
    [6201, 132],
    [10_000, 108],
    [12_000, 492],
  ] as const) {
    testExpressions(`${weightLb} lb`, tied({ weightLb, lengthIn }) as FigureTree, 4);
  }
});

describe('counting tie-downs', () => {
  const article = fc.record({
    lengthIn: fc.integer({ min: 1, max: 600 }),
    weightLb: fc.integer({ min: 1, max: 60_000 }),
    isBlockedInFront: fc.boolean(),
  });

  test('invariant: longer or heavier never takes fewer, and a blocked one never more', () => {
    fc.assert(
      fc.property(article, (one) => {
        const count = machineTiedownCount(one);
        expect(machineTiedownCount({ ...one, lengthIn: one.lengthIn + 1 })).toBeGreaterThanOrEqual(count);
        expect(machineTiedownCount({ ...one, weightLb: one.weightLb + 1 })).toBeGreaterThanOrEqual(count);
        expect(machineTiedownCount({ ...one, isBlockedInFront: true })).toBeLessThanOrEqual(count);
        expect(count).toBeGreaterThanOrEqual(tiedownCount(one));
      }),
      runs,
    );
  });

  test('invariant: tie-downs of the limit for each hold the whole', () => {
    fc.assert(
      fc.property(article, ({ weightLb, lengthIn }) => {
        const figures = tied({ weightLb, lengthIn })['loader-with-breaker'];
        const counted =
          Number(figures?.count.value) * Number(figures?.['working-load-each'].value) * SAME_SIDE_RATIO;
        expect(counted).toBeGreaterThanOrEqual(aggregateWorkingLoadLb(weightLb));
      }),
      runs,
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is no weight and no length', (wrong) => {
    expect(() => aggregateWorkingLoadLb(wrong)).toThrow(RangeError);
    const made = { lengthIn: 100, weightLb: 100, isBlockedInFront: true };
    expect(() => tiedownCount({ ...made, lengthIn: wrong })).toThrow(RangeError);
    expect(() => tiedownCount({ ...made, weightLb: wrong })).toThrow(RangeError);
  });
});
