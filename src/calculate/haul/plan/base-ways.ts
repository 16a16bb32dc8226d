import { costKey, KIND_KEY } from './cost-key.ts';
import { capacityLb, fetchUsd } from './options.ts';
import type { PlanBase, PlannedTrips, PlanProblem } from './problem.ts';

/** How base comes that does not ride back on trips with rubble. */
export type BaseWay = {
  readonly key: number;
  readonly trips: readonly PlannedTrips[];
  readonly deliveryCount: number;
};

type Fetched = { readonly key: number; readonly baseLb: number; readonly trips: readonly PlannedTrips[] };

const NOISE_LB = 1e-6;

/**
 * The cheapest way to bring so much base: on trips of its own, by the supplier, or some of each.
 *
 * @param made.mostTrips      With a trailer to a place, the most trips.
 * @param made.mostDeliveries The most deliveries.
 * @returns Of the weight still to come; null where it cannot come within those limits.
 */
export function baseWays(made: {
  readonly problem: PlanProblem;
  readonly base: PlanBase;
  readonly mostTrips: (trailer: string, place: string) => number;
  readonly mostDeliveries: number;
}): (restLb: number) => BaseWay | null {
  const { base, mostDeliveries } = made;
  const fetches = fetchesOf(made);
  return (restLb) => {
    let best: BaseWay | null = null;
    for (const fetched of fetches) {
      const deliveryCount = Math.max(0, Math.ceil((restLb - fetched.baseLb - NOISE_LB) / base.deliveryLb));
      if (deliveryCount > mostDeliveries) continue;
      const key = fetched.key + costKey(base.deliveryUsd * deliveryCount, 0) + deliveryCount * KIND_KEY;
      if (best === null || key <= best.key) best = { key, trips: fetched.trips, deliveryCount };
    }
    return best;
  };
}

/** Trips for base alone that no others beat, from none to those that bring all of it. */
function fetchesOf(made: Parameters<typeof baseWays>[0]): readonly Fetched[] {
  const { problem, base, mostTrips } = made;
  let fetches: readonly Fetched[] = [{ key: 0, baseLb: 0, trips: [] }];
  for (const trailer of problem.trailers) {
    for (const place of problem.places.filter(({ sellsBase }) => sellsBase)) {
      const eachLb = capacityLb(trailer, base.looseLbPerCuYd);
      const eachKey = costKey(fetchUsd(problem, place), 1);
      const most = mostTrips(trailer.id, place.id);
      fetches = unbeatenFetches(
        fetches.flatMap((fetched) => {
          const out = [fetched];
          for (let count = 1; count <= most; count += 1) {
            if (fetched.baseLb + (count - 1) * eachLb >= base.weightLb - NOISE_LB) break;
            const trips = { trailer: trailer.id, place: place.id, withBase: true, count };
            out.push({
              key: fetched.key + count * eachKey + KIND_KEY,
              baseLb: fetched.baseLb + count * eachLb,
              trips: [...fetched.trips, trips],
            });
          }
          return out;
        }),
        base.weightLb,
      );
    }
  }
  return fetches;
}

function unbeatenFetches(fetches: readonly Fetched[], needLb: number): readonly Fetched[] {
  const sorted = [...fetches].sort((one, other) => one.key - other.key || other.baseLb - one.baseLb);
  const kept: Fetched[] = [];
  for (const fetched of sorted) {
    if (!kept.some(({ baseLb }) => baseLb >= Math.min(fetched.baseLb, needLb) - NOISE_LB)) kept.push(fetched);
  }
  return kept;
}
