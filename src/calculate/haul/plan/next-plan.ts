import { bestPlan } from './best-plan.ts';
import { NO_LIMITS, type PlanLimits } from './limits.ts';
import type { Plan, PlannedTrips, PlanProblem, SharedLoad } from './problem.ts';

/** How much dearer it may be: the less, the sooner it is found. */
const LOOKS = [1.02, 1.1, 1.5, Number.POSITIVE_INFINITY];

/**
 * The cheapest plan that is another one: each kind of trip of the best plan in turn is held to one
 * trip less. A plan that only adds trips to the best one is none of its own.
 *
 * @returns null where there is no other way.
 */
export function nextPlan(problem: PlanProblem, best: Plan): Plan | null {
  for (const dearer of LOOKS) {
    let next: Plan | null = null;
    for (const limits of oneLess(best)) {
      const mostUsd = next?.costUsd ?? (best.costUsd + 1) * dearer;
      const plan = bestPlan(problem, { ...limits, mostUsd });
      if (plan !== null && (next === null || isLess(plan, next))) next = plan;
      // None is less than the best one: nothing is left to look for.
      if (next !== null && !isLess(best, next)) return next;
    }
    if (next !== null && next.costUsd <= (best.costUsd + 1) * dearer) return next;
  }
  return null;
}

function isLess(plan: Plan, other: Plan): boolean {
  return plan.costUsd < other.costUsd || (plan.costUsd === other.costUsd && plan.tripCount < other.tripCount);
}

function oneLess(best: Plan): readonly PlanLimits[] {
  return [
    ...best.byStream.flatMap(({ stream, trips }) =>
      trips.map(
        (held): PlanLimits => ({
          ...NO_LIMITS,
          held: stream,
          mostOf: (of, trip) =>
            of === stream && sameTrip(trip, held) ? held.count - 1 : Number.POSITIVE_INFINITY,
        }),
      ),
    ),
    ...best.shared.map(
      (held): PlanLimits => ({ ...NO_LIMITS, allowsShared: (load) => !sameShared(load, held) }),
    ),
    ...best.baseTrips.map(
      (held): PlanLimits => ({
        ...NO_LIMITS,
        holdsBase: true,
        mostBaseTrips: (trailer, place) =>
          trailer === held.trailer && place === held.place ? held.count - 1 : Number.POSITIVE_INFINITY,
      }),
    ),
    ...(best.deliveryCount > 0
      ? [{ ...NO_LIMITS, holdsBase: true, mostDeliveries: best.deliveryCount - 1 }]
      : []),
  ];
}

type Trip = Omit<PlannedTrips, 'count'>;

function sameTrip(one: Trip, other: Trip): boolean {
  return one.trailer === other.trailer && one.place === other.place && one.withBase === other.withBase;
}

function sameShared(one: SharedLoad, other: SharedLoad): boolean {
  const streams = ({ parts }: SharedLoad) => parts.map(({ stream }) => stream).join();
  return sameTrip(one, other) && streams(one) === streams(other);
}
