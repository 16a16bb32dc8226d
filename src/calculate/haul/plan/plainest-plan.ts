import { rememberByValue } from '../../remember.ts';
import { bestPlan } from './best-plan.ts';
import { NO_LIMITS } from './limits.ts';
import type { Plan, PlanProblem } from './problem.ts';

/** More than a job has, with its hidden conditions. */
const KEPT_PLANS = 50;

/**
 * The best plan; where one trailer alone does it for the same cost in as many trips, with that one: nobody
 * changes trailers for nothing. Of several such trailers the first by name.
 *
 * @returns null where a stream has no place.
 */
export const plainestPlan = rememberByValue('trips', plainestOf, KEPT_PLANS);

function plainestOf(problem: PlanProblem): Plan | null {
  const best = bestPlan(problem);
  if (best === null || trailersOf(best).size <= 1) return best;
  for (const trailer of problem.trailers) {
    const alone = bestPlan({ ...problem, trailers: [trailer] }, { ...NO_LIMITS, mostUsd: best.costUsd });
    if (alone?.costUsd === best.costUsd && alone.tripCount === best.tripCount) return alone;
  }
  return best;
}

function trailersOf({ byStream, shared, baseTrips }: Plan): ReadonlySet<string> {
  const trips = [...byStream.flatMap((stream) => stream.trips), ...shared, ...baseTrips];
  return new Set(trips.map(({ trailer }) => trailer));
}
