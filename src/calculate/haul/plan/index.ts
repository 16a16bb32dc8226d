export { bestPlan } from './best-plan.ts';
export { nextPlan } from './next-plan.ts';
export { baseCapacityLb, emptyLoad } from './options.ts';
export { plainestPlan } from './plainest-plan.ts';
export { couldCarry, planHr, quickestPlan } from './plan-time.ts';
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
export { driverCount, swapSavesHr } from './working.ts';
