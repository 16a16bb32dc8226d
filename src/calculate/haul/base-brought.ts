import { baseCapacityLb, type Plan, type PlanProblem } from './plan/index.ts';

/** What of the base comes how: all base loads on trailers equally full. */
export type BaseBrought = {
  /** On a load of this trailer [lb]. */
  readonly onLb: (trailer: string) => number;
  /** By the supplier [lb]. */
  readonly deliveredLb: number;
};

/**
 * @param backOn Trailers of the trips on which base rides back, one for each trip.
 */
export function baseBrought(plan: Plan, problem: PlanProblem, backOn: readonly string[]): BaseBrought {
  const { base } = problem;
  if (base === null) return { onLb: () => 0, deliveredLb: 0 };
  const own = plan.baseTrips.flatMap(({ trailer, count }) => Array.from({ length: count }, () => trailer));
  const roomLb = [...backOn, ...own].reduce((sum, trailer) => sum + baseCapacityLb(problem, trailer), 0);
  const fetchedLb = Math.min(base.weightLb, roomLb);
  return {
    onLb: (trailer) => (roomLb === 0 ? 0 : (baseCapacityLb(problem, trailer) * fetchedLb) / roomLb),
    deliveredLb: base.weightLb - fetchedLb,
  };
}
