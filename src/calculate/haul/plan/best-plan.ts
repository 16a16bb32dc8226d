import { baseNeedOf } from './base-need.ts';
import { type BaseWay, baseWays } from './base-ways.ts';
import {
  type Bounds,
  boundsOf,
  isWithin,
  leastKeyOfCovers,
  type PricedCover,
  type RestKeyOf,
  roughBounds,
} from './bounds.ts';
import { closestOf } from './closest.ts';
import { combined, type Way } from './combine.ts';
import { tripsOfKey, usdOfKey } from './cost-key.ts';
import type { Cover } from './covers.ts';
import { type BaseNeed, unbeatenWays } from './frontier.ts';
import { NO_LIMITS, type PlanLimits } from './limits.ts';
import { allOptionsFor, cheapestFirst, type Option, unbeatenOptions } from './options.ts';
import type { Plan, PlannedTrips, PlanProblem, PlanStream } from './problem.ts';
import { type SharedWay, sharedWays } from './shared-loads.ts';
import { type SharedOption, sharedOptionsOf } from './shared-options.ts';
import { streamCovers } from './stream-covers.ts';
import { firstLooks, type Looked, missedBy, tiltsOf } from './tilts.ts';
import type { Together } from './together.ts';

/**
 * The plan that costs least, and of several the one with fewer trips. Every way that may be part of it
 * is kept to the end, so that none can cost less: streams are covered one by one, sets of them that
 * share a load on top, then what base is still to come.
 *
 * A stream counts as one material of its mean loose weight. Where streams may share a load, one load
 * takes what is left over of several of them, and each shares one load at most.
 *
 * @param limits Trips that it must not have; for the plan that comes next.
 * @returns null where a stream has no place, or the limits leave no way.
 */
export function bestPlan(problem: PlanProblem, limits: PlanLimits = NO_LIMITS): Plan | null {
  let { mostUsd } = limits;
  let look = bestLook(firstLooks(problem).flatMap((looked) => looksAt(problem, limits, looked)));
  for (;;) {
    const found = bestOf(problem, { ...limits, mostUsd }, look);
    if (found === null) return null;
    const missed = missedBy(problem, found, look.looked);
    if (missed.looked === null) return found;
    mostUsd = Math.min(mostUsd, found.costUsd + usdOfKey(missed.key));
    look = bestLook(looksAt(problem, { ...limits, mostUsd }, missed.looked));
  }
}

/** The best plan as far as is looked at. */
function bestOf(problem: PlanProblem, limits: PlanLimits, look: Look): Plan | null {
  const { base, restKeyOf, sharedOptions, options, rough } = look;
  const useful = usefulCovers(problem.streams, rough, (stream, index, bounds) =>
    streamCovers({
      stream,
      options: options[index] ?? [],
      sharedOptions,
      base,
      limits,
      rough: { bounds, leastKey: rough.leastKeys[index] ?? 0 },
    }),
  );
  const bounds = boundsOf({ covers: useful, base, restKeyOf, limits });
  if (bounds === null) return null;

  const made = { problem, limits, base, sharedOptions, useful };
  const best = closestOf(
    (slackKey) => leastOf(waysOf(made, { ...bounds, slackKey }), problem, look.restWay),
    bounds,
  );
  return best && planOf(best, problem, look);
}

type Look = ReturnType<typeof lookAt>;

/** The one that bounds the cost best. */
function bestLook(looks: readonly Look[]): Look {
  const leastKeyOf = ({ rough, base }: Look) => rough.sumKey + base.together.startKey;
  return looks.reduce((best, look) => (leastKeyOf(look) > leastKeyOf(best) ? look : best));
}

function looksAt(problem: PlanProblem, limits: PlanLimits, looked: Looked): readonly Look[] {
  return tiltsOf(problem, looked).map((together) => lookAt(problem, limits, { looked, together }));
}

function lookAt(
  problem: PlanProblem,
  limits: PlanLimits,
  { looked, together }: { readonly looked: Looked; readonly together: Together },
) {
  const { streams } = problem;
  const base = baseNeedOf(problem, limits, together);
  const restWay = restWayOf(problem, limits, together);
  const restKeyOf: RestKeyOf = (restLb, tally) => restWay(restLb, tally)?.key ?? Number.POSITIVE_INFINITY;
  const sharedOptions = sharedOptionsOf(problem, together);
  const options = streams.map((stream) => {
    const all = allOptionsFor(problem, stream, together);
    // Where the best way is held back, one that only it beats may come next.
    return cheapestFirst(limits.held === stream.stream ? all : unbeatenOptions(all, together));
  });
  const rough = roughBounds({ streams, options, sharedOptions, base, restKeyOf, limits });
  return { looked, base, restWay, restKeyOf, sharedOptions, options, rough };
}

/**
 * The covers of each stream. The lightest comes first: whole loads cost it most beyond its parts of loads,
 * and the others may be so much less dear.
 */
function usefulCovers(
  streams: readonly PlanStream[],
  rough: Bounds,
  coversOf: (stream: PlanStream, index: number, bounds: Bounds) => readonly PricedCover[],
): readonly (readonly PricedCover[])[] {
  const covers = new Map<number, readonly PricedCover[]>();
  let { slackKey } = rough;
  const lightestFirst = [...streams.entries()].sort(([, one], [, other]) => one.weightLb - other.weightLb);
  for (const [index, stream] of lightestFirst) {
    const found = coversOf(stream, index, { ...rough, slackKey });
    covers.set(index, found);
    slackKey -= Math.max(0, leastKeyOfCovers(found, rough.baseKeyPerLb) - (rough.leastKeys[index] ?? 0));
  }
  return streams.map((_, index) => covers.get(index) ?? []);
}

/** All ways that are within the bounds and that no other one beats. */
function waysOf(
  made: {
    readonly problem: PlanProblem;
    readonly limits: PlanLimits;
    readonly base: BaseNeed;
    readonly sharedOptions: readonly SharedOption[];
    readonly useful: readonly (readonly PricedCover[])[];
  },
  bounds: Bounds,
): readonly Way[] {
  const { problem, limits, base, sharedOptions } = made;
  const covers = made.useful.map((ofStream, index) => {
    const leastKey = bounds.leastKeys[index] ?? 0;
    return ofStream.filter(({ key, restKeyAt, baseLb }) =>
      isWithin({ key: key + restKeyAt(bounds.baseKeyPerLb), baseLb }, leastKey, bounds),
    );
  });
  const rests = covers.map((ofStream) => ofStream.filter(({ restLb }) => restLb > 0));
  const whole = covers.map((ofStream) => ofStream.filter(({ restLb }) => restLb === 0));
  const sharing = sharedOptions.map((option) =>
    sharedWays({ option, streams: problem.streams, covers: rests, base, bounds }),
  );
  return combined({ whole, sharing: merged(sharing, limits, base), base, bounds });
}

type RestWay = ReturnType<typeof baseWays>;

function restWayOf(problem: PlanProblem, limits: PlanLimits, together: Together): RestWay {
  const { base } = problem;
  if (base === null)
    return (_, tally) => {
      const key = together.restKey(tally);
      return key < Number.POSITIVE_INFINITY ? { key, trips: [], deliveryCount: 0 } : null;
    };
  const { mostBaseTrips: mostTrips, mostDeliveries } = limits;
  return baseWays({ problem, base, together, mostTrips, mostDeliveries });
}

function merged(
  sharing: readonly ReadonlyMap<number, readonly SharedWay[]>[],
  limits: PlanLimits,
  base: BaseNeed,
): ReadonlyMap<number, readonly SharedWay[]> {
  const bySet = new Map<number, SharedWay[]>();
  for (const ways of sharing) {
    for (const [set, some] of ways) {
      bySet.set(set, [...(bySet.get(set) ?? []), ...some.filter(({ load }) => limits.allowsShared(load))]);
    }
  }
  return new Map([...bySet].map(([set, ways]) => [set, unbeatenWays(ways, base)]));
}

type WholeWay = { readonly key: number; readonly way: Way; readonly rest: BaseWay };

/** Adds the base that is still to come to each way, and takes the least of all; of equal ones the one that fetches more. */
function leastOf(ways: readonly Way[], { base }: PlanProblem, restWay: RestWay): WholeWay | null {
  let least: WholeWay | null = null;
  for (const way of ways) {
    const rest = restWay(Math.max(0, (base?.weightLb ?? 0) - way.baseLb), way.tally);
    if (rest === null || (least !== null && way.key + rest.key > least.key)) continue;
    least = { key: way.key + rest.key, way, rest };
  }
  return least;
}

function planOf(
  { key, way, rest }: WholeWay,
  { streams }: PlanProblem,
  { options, base }: Pick<Look, 'options' | 'base'>,
): Plan {
  const wholeKey = key + base.together.startKey;
  return {
    costUsd: usdOfKey(wholeKey),
    tripCount: tripsOfKey(wholeKey),
    byStream: streams.map((stream, index) =>
      plannedStream(stream, way.covers.get(index), options[index] ?? []),
    ),
    shared: way.shared,
    baseTrips: rest.trips,
    deliveryCount: rest.deliveryCount,
  };
}

function plannedStream(
  { stream, weightLb }: PlanStream,
  cover: Cover | undefined,
  options: readonly Option[],
): Plan['byStream'][number] {
  if (cover === undefined) throw new RangeError(`a way leaves ${stream} out`);
  const trips = options.flatMap((option, index): PlannedTrips[] => {
    const count = cover.counts[index] ?? 0;
    return count === 0
      ? []
      : [{ trailer: option.trailer.id, place: option.place.id, withBase: option.withBase, count }];
  });
  const named = ({ trailer, place, withBase }: PlannedTrips) => `${trailer} ${place} ${withBase ? 1 : 0}`;
  trips.sort((one, other) => (named(one) < named(other) ? -1 : 1));
  return { stream, weightLb: weightLb - cover.restLb, trips };
}
