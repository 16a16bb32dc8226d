import type { HaulLoad } from './load-table.ts';
import { baseCapacityLb, type Plan, type PlanProblem } from './plan/index.ts';
import { type EmptyLoad, idealLb } from './share-out.ts';

/** What of the base comes how: the cheapest first, loads that cost the same equally full. */
export type BaseBrought = {
  /** Of each trip with rubble on which base rides back [lb]. */
  readonly backLb: readonly number[];
  /** Of each trip for base alone [lb]. */
  readonly ownLb: readonly number[];
  /** By the supplier [lb]. */
  readonly deliveredLb: number;
};

type Trip = { readonly trailer: string; readonly place: string };

/** Where a load on a trailer costs what a delivery does, the trailer is filled first [$/lb]. */
const LATER_USD_PER_LB = 1e-9;

/** @param back Trips with rubble on which base rides back, in their order. */
export function baseBrought(plan: Plan, problem: PlanProblem, back: readonly Trip[]): BaseBrought {
  const { base } = problem;
  if (base === null) return { backLb: back.map(() => 0), ownLb: [], deliveredLb: 0 };
  const own = ownTrips(plan);
  const fetched = [...back, ...own].map((trip) => emptyOf(trip, problem));
  const delivered = Array.from({ length: plan.deliveryCount }, () => ({
    capacityLb: base.deliveryLb,
    freeLb: 0,
    usdPerLb: base.usdPerLb + LATER_USD_PER_LB,
  }));
  const filledLb = idealLb(base.weightLb, [...fetched, ...delivered]);
  return {
    backLb: filledLb.slice(0, back.length),
    ownLb: filledLb.slice(back.length, fetched.length),
    deliveredLb: filledLb.slice(fetched.length).reduce((sum, lb) => sum + lb, 0),
  };
}

/** Trips for base alone, one after the other. */
function ownTrips({ baseTrips }: Plan): readonly Trip[] {
  return baseTrips.flatMap(({ trailer, place, count }) =>
    Array.from({ length: count }, () => ({ trailer, place })),
  );
}

/** Base from a place on one load, back from it or alone. */
export type BaseLoad = { readonly place: string; readonly weightLb: number };

/** Every load of base that a trailer brings. */
export function baseLoads(
  loads: readonly HaulLoad[],
  plan: Plan,
  ownLb: readonly number[],
): readonly BaseLoad[] {
  return [
    ...loads
      .filter(({ returns }) => returns === 'base')
      .map(({ place, baseLb }) => ({ place, weightLb: baseLb })),
    ...ownTrips(plan).map(({ place }, index) => ({ place, weightLb: ownLb[index] ?? 0 })),
  ];
}

/** What its minimum pays for costs no more. */
function emptyOf({ trailer, place }: Trip, problem: PlanProblem): EmptyLoad {
  const sold = problem.places.find(({ id }) => id === place);
  if (sold === undefined) throw new RangeError(`no place called ${place}`);
  const capacityLb = baseCapacityLb(problem, trailer);
  const { baseUsdPerLb, baseMinimumUsd } = sold;
  const freeLb = baseUsdPerLb > 0 ? Math.min(capacityLb, baseMinimumUsd / baseUsdPerLb) : capacityLb;
  return { capacityLb, freeLb, usdPerLb: baseUsdPerLb };
}
