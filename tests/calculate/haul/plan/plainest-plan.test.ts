import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestPlan, type Plan, plainestPlan } from '../../../../src/calculate/haul/plan/index.ts';
import { runCount } from '../../../support/property-runs.ts';
import { aPlace, aProblem, aTrailer } from './a-problem.ts';
import { smallProblem } from './small-problems.ts';

const SEED = 20_261_126;

function trailersOf(plan: Plan | null): ReadonlySet<string> {
  const trips =
    plan === null ? [] : [...plan.byStream.flatMap((one) => one.trips), ...plan.shared, ...plan.baseTrips];
  return new Set(trips.map(({ trailer }) => trailer));
}

test(`the plainest plan is as good as the best, and has one trailer where one does it (seed ${SEED})`, () => {
  let spared = 0;
  fc.assert(
    fc.property(smallProblem({ rebates: true, mixed: true, base: true }), (problem) => {
      const best = bestPlan(problem);
      const plain = plainestPlan(problem);
      expect([plain?.costUsd, plain?.tripCount]).toEqual([best?.costUsd, best?.tripCount]);
      const oneDoes = problem.trailers.some((trailer) => {
        const alone = bestPlan({ ...problem, trailers: [trailer] });
        return best !== null && alone?.costUsd === best.costUsd && alone.tripCount === best.tripCount;
      });
      if (oneDoes) expect(trailersOf(plain).size).toBeLessThanOrEqual(1);
      if (trailersOf(best).size > trailersOf(plain).size) spared += 1;
    }),
    { numRuns: runCount(200), seed: SEED },
  );
  // Else the case that this is for never came up.
  expect(spared).toBeGreaterThan(0);
});

test('two trailers that need fewer trips than either alone stay, though either would cost no more', () => {
  // Paid by the ton alone: the low box takes the broken slab at once, the tall one the light soil.
  const problem = aProblem({
    trailers: [aTrailer('low', 8000, 2), aTrailer('tall', 4000, 4)],
    places: [aPlace('yard', { tariff: { usdPerLoad: 0, usdPerTon: 10, usdPerCuYd: 0 } })],
    streams: [
      { stream: 'clean-concrete', weightLb: 8000, looseLbPerCuYd: 4000 },
      { stream: 'soil', weightLb: 2000, looseLbPerCuYd: 500 },
    ],
    rates: {
      driverUsdPerHr: 0,
      truckUsdPerHr: 0,
      truckUsdPerMi: 0,
      loadingHr: 0.25,
      swapHr: null,
      driverCount: 1,
    },
  });
  for (const trailer of problem.trailers)
    expect(plainestPlan({ ...problem, trailers: [trailer] })).toMatchObject({ costUsd: 50, tripCount: 3 });
  const plan = plainestPlan(problem);
  expect(plan).toMatchObject({ costUsd: 50, tripCount: 2 });
  expect(trailersOf(plan)).toEqual(new Set(['low', 'tall']));
});
