export { bestPlan } from './best-plan.ts';
export { nextPlan } from './next-plan.ts';
export { baseCapacityLb, emptyLoad } from './options.ts';
export type {
  Plan,
  PlanBase,
  PlannedTrips,
  PlanPlace,
  PlanProblem,
  PlanStream,
  SharedLoad,
  Tariff,
} from './problem.ts';
