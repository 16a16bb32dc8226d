import { bestPlan } from './best-plan.ts';
import type { Plan, PlanProblem } from './problem.ts';
import { totalsOf } from './totals.ts';

const SEC_PER_HR = 3600;

/** What the drivers take for a plan together, waiting included [h]. */
export function planHr(problem: PlanProblem, plan: Plan): number {
  return totalsOf(problem, plan).sec / SEC_PER_HR;
}

/** The plan that takes the drivers least time, whatever it costs; null where a stream has no place, or the limits leave none. */
export function quickestPlan(problem: PlanProblem): Plan | null {
  const free = { usdPerLoad: 0, usdPerTon: 0, usdPerCuYd: 0 };
  return bestPlan({
    ...problem,
    places: problem.places.map((place) => ({
      ...place,
      tariff: free,
      tariffWithBase: free,
      minimumUsd: 0,
      surcharges: {},
      baseUsdPerLb: 0,
      baseMinimumUsd: 0,
    })),
    base: problem.base && { ...problem.base, usdPerLb: 0, deliveryUsd: 0 },
    rates: { ...problem.rates, driverUsdPerHr: 1, truckUsdPerHr: 0, truckUsdPerMi: 0 },
    mostHr: null,
  });
}
