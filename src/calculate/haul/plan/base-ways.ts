import { costKey, KIND_KEY } from './cost-key.ts';
import { capacityLb, fetchUsd } from './options.ts';
import type { PlanBase, PlannedTrips, PlanProblem } from './problem.ts';
import { plusTally, type Tally, type Together } from './together.ts';

/** How base comes that does not ride back on trips with rubble. */
export type BaseWay = {
  /** With what all trips cost together. */
  readonly key: number;
  readonly trips: readonly PlannedTrips[];
  readonly deliveryCount: number;
};

type Fetched = {
  readonly key: number;
  readonly baseLb: number;
  /** The least that one of the trips brings; infinite where there is none [lb]. */
  readonly leastBaseLb: number;
  readonly tally: Tally;
  readonly trips: readonly PlannedTrips[];
};

const NOISE_LB = 1e-6;

/**
 * The cheapest way to bring so much base: on trips of its own, none of them to spare, by the supplier, or
 * some of each.
 *
 * @param made.mostTrips      With a trailer to a place, the most trips.
 * @param made.mostDeliveries The most deliveries.
 * @returns Of the weight still to come, and what the other trips come to together; null where it cannot
 *   come within those limits.
 */
export function baseWays(made: {
  readonly problem: PlanProblem;
  readonly base: PlanBase;
  readonly together: Together;
  readonly mostTrips: (trailer: string, place: string) => number;
  readonly mostDeliveries: number;
}): (restLb: number, tally: Tally) => BaseWay | null {
  const { base, together, mostDeliveries } = made;
  const fetches = fetchesOf(made);
  const { ofDelivery } = together;
  const deliveryKey = costKey(base.deliveryUsd, 0) + ofDelivery.key + KIND_KEY;
  return (restLb, tally) => {
    let best: BaseWay | null = null;
    for (const fetched of fetches) {
      if (fetched.baseLb - fetched.leastBaseLb >= restLb - NOISE_LB) continue;
      const deliveryCount = Math.max(0, Math.ceil((restLb - fetched.baseLb - NOISE_LB) / base.deliveryLb));
      if (deliveryCount > mostDeliveries) continue;
      const sum = plusTally(plusTally(tally, fetched.tally), ofDelivery.tally, deliveryCount);
      const key = fetched.key + deliveryKey * deliveryCount + together.restKey(sum);
      if (key < Number.POSITIVE_INFINITY && (best === null || key <= best.key))
        best = { key, trips: fetched.trips, deliveryCount };
    }
    return best;
  };
}

/** Trips for base alone that no others beat, from none to those that bring all of it. */
function fetchesOf(made: Parameters<typeof baseWays>[0]): readonly Fetched[] {
  const { problem, base, together, mostTrips } = made;
  const none: Fetched = {
    key: 0,
    baseLb: 0,
    leastBaseLb: Number.POSITIVE_INFINITY,
    tally: together.none,
    trips: [],
  };
  let fetches: readonly Fetched[] = [none];
  for (const trailer of problem.trailers) {
    for (const place of problem.places.filter(({ sellsBase }) => sellsBase)) {
      const eachLb = capacityLb(trailer, base.looseLbPerCuYd);
      const share = together.ofTrip({ trailer, place, withBase: true, isOut: false });
      const eachKey = costKey(fetchUsd(problem, place), 1) + share.key;
      const most = mostTrips(trailer.id, place.id);
      fetches = unbeatenFetches(
        fetches.flatMap((fetched) => {
          const out = [fetched];
          for (let count = 1; count <= most; count += 1) {
            if (fetched.baseLb + (count - 1) * eachLb >= base.weightLb - NOISE_LB) break;
            out.push({
              key: fetched.key + count * eachKey + KIND_KEY,
              baseLb: fetched.baseLb + count * eachLb,
              leastBaseLb: Math.min(fetched.leastBaseLb, eachLb),
              tally: plusTally(fetched.tally, share.tally, count),
              trips: [...fetched.trips, { trailer: trailer.id, place: place.id, withBase: true, count }],
            });
          }
          return out;
        }),
        base.weightLb,
        together,
      );
    }
  }
  return fetches;
}

function unbeatenFetches(
  fetches: readonly Fetched[],
  needLb: number,
  together: Together,
): readonly Fetched[] {
  const sorted = [...fetches].sort((one, other) => one.key - other.key || other.baseLb - one.baseLb);
  const kept: Fetched[] = [];
  for (const fetched of sorted) {
    if (!kept.some((other) => beats(other, fetched, needLb, together))) kept.push(fetched);
  }
  return kept;
}

/** No dearer, no less base; and where trips cost something together, one to spare no sooner. */
function beats(other: Fetched, fetched: Fetched, needLb: number, together: Together): boolean {
  if (other.baseLb < Math.min(fetched.baseLb, needLb) - NOISE_LB) return false;
  if (together.none.length === 0) return true;
  const spareLb = (one: Fetched) => one.baseLb - one.leastBaseLb;
  return (
    spareLb(other) <= spareLb(fetched) + NOISE_LB &&
    other.key + together.headStartKey(other.tally, fetched.tally) <= fetched.key
  );
}
