import { costsTogether, tripSec } from './groups.ts';
import type { Plan, PlanProblem } from './problem.ts';
import type { Sum, TripKind } from './together.ts';

export type Totals = {
  /** Of each cost that trips have together. */
  readonly sums: readonly (readonly number[])[];
  /** Of all drivers. */
  readonly sec: number;
  /** On each trailer. */
  readonly trailerSec: readonly number[];
};

/** What all trips of a plan come to. */
export function totalsOf(problem: PlanProblem, plan: Plan): Totals {
  const trips = tripsOf(problem, plan);
  const costs = costsTogether(problem);
  const sums = costs.map((cost) => cost.sums.map((sum) => totalOf(sum, trips, plan.deliveryCount)));
  const waitSec = costs.reduce(
    (sec, { secEach }, index) => sec + (secEach === 0 ? 0 : secEach * Math.max(...(sums[index] ?? []))),
    0,
  );
  const secOf = (some: readonly Counted[]) =>
    some.reduce((sec, { kind, count }) => sec + count * tripSec(problem, kind), 0);
  return {
    sums,
    sec: waitSec + secOf(trips),
    trailerSec: problem.trailers.map(({ id }) => secOf(trips.filter(({ kind }) => kind.trailer.id === id))),
  };
}

type Counted = { readonly kind: TripKind; readonly count: number };

function totalOf({ start, ofTrip, ofDelivery }: Sum, trips: readonly Counted[], deliveries: number): number {
  return trips.reduce((sum, { kind, count }) => sum + count * ofTrip(kind), start + deliveries * ofDelivery);
}

function tripsOf({ trailers, places }: PlanProblem, plan: Plan): readonly Counted[] {
  const counted =
    (isOut: boolean) =>
    (trip: Plan['baseTrips'][number]): Counted => {
      const trailer = trailers.find(({ id }) => id === trip.trailer);
      const place = places.find(({ id }) => id === trip.place);
      if (trailer === undefined || place === undefined)
        throw new RangeError(`no trip on ${trip.trailer} to ${trip.place}`);
      return { kind: { trailer, place, withBase: trip.withBase, isOut }, count: trip.count };
    };
  return [
    ...plan.byStream.flatMap(({ trips }) => trips.map(counted(true))),
    ...plan.shared.map((load) => counted(true)({ ...load, count: 1 })),
    ...plan.baseTrips.map(counted(false)),
  ];
}
