import { bestPlan } from './best-plan.ts';
import type { Plan, PlanProblem, PlanTrailer } from './problem.ts';
import { totalsOf } from './totals.ts';
import { outHr } from './working.ts';

const SEC_PER_HR = 3600;
/** A trip that fills the hours to the last second goes into them. */
const NOISE = 1e-6;

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

/**
 * Whether trailers full to the limit, each as often as its hours have room for the shortest trip, would carry all
 * there is. Where they would not, no plan keeps the hours of a trailer, and none need be looked for.
 */
export function couldCarry(problem: PlanProblem): boolean {
  const { trailers, streams, places, mostTrailerHr } = problem;
  if (mostTrailerHr === null) return true;
  const shortestHr = Math.min(...places.map((place) => outHr(problem, place, false)));
  const tripCount = Math.floor(mostTrailerHr / shortestHr + NOISE);
  const carries = (ofTrailer: (trailer: PlanTrailer) => number) =>
    trailers.reduce((sum, trailer) => sum + tripCount * ofTrailer(trailer), 0) * (1 + NOISE);
  const weightLb = streams.reduce((sumLb, stream) => sumLb + stream.weightLb, 0);
  const looseCuYd = streams.reduce((sum, stream) => sum + stream.weightLb / stream.looseLbPerCuYd, 0);
  return carries(({ payloadLb }) => payloadLb) >= weightLb && carries(({ boxCuYd }) => boxCuYd) >= looseCuYd;
}
