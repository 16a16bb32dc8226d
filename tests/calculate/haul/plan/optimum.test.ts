import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestPlan } from '../../../../src/calculate/haul/plan/best-plan.ts';
import { nextPlan } from '../../../../src/calculate/haul/plan/next-plan.ts';
import type { Plan } from '../../../../src/calculate/haul/plan/problem.ts';
import { runCount } from '../../../support/property-runs.ts';
import { leastOfAll, leastOfOthers } from './brute-force.ts';
import type { Least } from './brute-sums.ts';
import { smallProblem } from './small-problems.ts';

const SEED = 20_260_511;
const ALL = { rebates: true, mixed: true, base: true };

/** The same least cost to the half cent, and as many trips. */
function expectSame(plan: Plan | null, least: Least | null): void {
  expect(plan === null).toBe(least === null);
  if (plan === null || least === null) return;
  expect(Math.abs(plan.costUsd - least.costUsd)).toBeLessThan(0.005);
  expect(plan.tripCount).toBe(least.tripCount);
}

describe(`invariants of the plan against all plans of small problems (seed ${SEED})`, () => {
  test('none costs less than the best one, and none that costs the same has fewer trips', () => {
    fc.assert(
      fc.property(smallProblem(ALL), (problem) => expectSame(bestPlan(problem), leastOfAll(problem))),
      { numRuns: runCount(200), seed: SEED },
    );
  });

  test.each([
    ['trailers are swapped, or several trucks drive', { ...ALL, swaps: true }, 200],
    ['each place has its own price of base', { ...ALL, prices: true }, 200],
    ['the drivers have only so much time', { ...ALL, hurried: true }, 200],
    ['all of that', { ...ALL, swaps: true, prices: true, hurried: true }, 200],
  ])('nor where %s', (_, wanted, runs) => {
    fc.assert(
      fc.property(smallProblem(wanted), (problem) => expectSame(bestPlan(problem), leastOfAll(problem))),
      { numRuns: runCount(runs), seed: SEED },
    );
  });

  test('the next one is the least of those that have less of some kind of trip', () => {
    fc.assert(
      fc.property(smallProblem(ALL), (problem) => {
        const best = bestPlan(problem);
        if (best !== null) expectSame(nextPlan(problem, best), leastOfOthers(problem, best));
      }),
      { numRuns: runCount(200), seed: SEED },
    );
  });
});
