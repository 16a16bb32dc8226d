import type { Plan, PlanProblem, PlanStream } from '../../../../src/calculate/haul/plan/problem.ts';
import { askedUsd, mostLb } from './brute-costs.ts';
import { alone, restsOf } from './brute-streams.ts';
import {
  allLoads,
  drivenOut,
  type Held,
  type Least,
  leastOf,
  leastOfEach,
  multisets,
  NOISE_LB,
  nothing,
  roomLb,
  type Some,
  sumOf,
  type Trip,
  tripOf,
} from './brute-sums.ts';
import { wholeOf } from './brute-whole.ts';

/*
 * Every plan of a small problem, one after the other, and the least of them. It keeps only the least of
 * those that bring the same base on the same trailers and leave the same rest.
 */

const NOTHING_HELD: Held = {
  most: () => Number.POSITIVE_INFINITY,
  allowsShared: () => true,
  mostFetched: () => Number.POSITIVE_INFINITY,
  mostDeliveries: Number.POSITIVE_INFINITY,
};

export function leastOfAll(problem: PlanProblem, held: Held = NOTHING_HELD): Least | null {
  const brought = broughtAlone(problem, held);
  return leastOf(plansFor(problem, held, problem.streams).flatMap((some) => brought(some) ?? []));
}

/** The least of the plans that have less of some kind of trip than this one. */
export function leastOfOthers(problem: PlanProblem, best: Plan): Least | null {
  const isSame = (one: Trip, other: Trip) =>
    one.trailer === other.trailer && one.place === other.place && one.withBase === other.withBase;
  const helds: Held[] = [];
  for (const { stream, trips } of best.byStream) {
    for (const trip of trips) {
      const most: Held['most'] = (of, other) =>
        of === stream && isSame(trip, other) ? trip.count - 1 : Number.POSITIVE_INFINITY;
      helds.push({ ...NOTHING_HELD, most });
    }
  }
  for (const load of best.shared) {
    const names = (streams: readonly string[]) => [...streams].sort().join();
    const allowsShared = (trip: Trip, streams: readonly string[]) =>
      !isSame(load, trip) || names(load.parts.map(({ stream }) => stream)) !== names(streams);
    helds.push({ ...NOTHING_HELD, allowsShared });
  }
  for (const trip of best.baseTrips) {
    const mostFetched: Held['mostFetched'] = (other) =>
      isSame(trip, { ...other, withBase: true }) ? trip.count - 1 : Number.POSITIVE_INFINITY;
    helds.push({ ...NOTHING_HELD, mostFetched });
  }
  if (best.deliveryCount > 0) helds.push({ ...NOTHING_HELD, mostDeliveries: best.deliveryCount - 1 });
  return leastOf(helds.flatMap((held) => leastOfAll(problem, held) ?? []));
}

/** The first stream alone, or on one load with some of the others; then what is left of them. */
function plansFor(problem: PlanProblem, held: Held, streams: readonly PlanStream[]): readonly Some[] {
  const [first, ...others] = streams;
  if (first === undefined) return [nothing(problem)];
  const starts = subsets(others).map((along) => ({
    some: along.length === 0 ? alone(problem, held, first) : together(problem, held, [first, ...along]),
    left: others.filter((other) => !along.includes(other)),
  }));
  return leastOfEach(
    problem,
    starts.flatMap(({ some, left }) => {
      if (some.length === 0) return [];
      const rest = plansFor(problem, held, left);
      return some.flatMap((one) => rest.map((other) => sumOf(one, other)));
    }),
  );
}

function subsets<T>(all: readonly T[]): readonly (readonly T[])[] {
  return all.reduce<readonly (readonly T[])[]>(
    (sets, one) => [...sets, ...sets.map((set) => [...set, one])],
    [[]],
  );
}

/** Streams whose rests, after full loads, are on one load. */
function together(problem: PlanProblem, held: Held, streams: readonly PlanStream[]): readonly Some[] {
  return allLoads(problem)
    .filter(({ place }) => place.mixedLoads && streams.every(({ stream }) => place.accepts.includes(stream)))
    .filter((load) =>
      held.allowsShared(
        tripOf(load),
        streams.map(({ stream }) => stream),
      ),
    )
    .flatMap((load) => {
      const rests = streams.map((stream) => restsOf(problem, held, stream, mostLb(load.trailer, stream)));
      const filled = (
        index: number,
        ratio: number,
        restsLb: readonly number[],
        sum: Some,
      ): readonly Some[] => {
        const stream = streams[index];
        if (stream === undefined) {
          const parts = streams.map((one, at) => ({ ...one, weightLb: restsLb[at] ?? 0 }));
          const gateUsd = Math.max(load.place.minimumUsd, askedUsd(load, parts));
          return [sumOf(sum, drivenOut(problem, [load], { gateUsd, restLb: 0 }))];
        }
        return (rests[index] ?? []).flatMap((rest) => {
          const more = ratio + rest.restLb / mostLb(load.trailer, stream);
          if (more > 1 + 1e-9) return [];
          return filled(index + 1, more, [...restsLb, rest.restLb], sumOf(sum, { ...rest, restLb: 0 }));
        });
      };
      return filled(0, 0, [], nothing(problem));
    });
}

/** The whole of a plan with the base that its trips with rubble do not bring; null where one of them is not needed. */
function broughtAlone(problem: PlanProblem, held: Held): (some: Some) => Least | null {
  const { base, trailers, places } = problem;
  if (base === null) return (some) => leastOf(wholeOf(problem, some, [], 0));
  const eachLb = trailers.map((trailer) => mostLb(trailer, base));
  const fetches = trailers.flatMap((trailer) =>
    places.filter(({ sellsBase }) => sellsBase).map((place) => ({ trailer, place, withBase: true })),
  );
  return (some) => {
    const backsLb = some.backs.map(
      (count, index) => count * (eachLb[Math.floor(index / places.length)] ?? 0),
    );
    const broughtLb = backsLb.reduce((sum, lb) => sum + lb, 0);
    const smallestLb = Math.min(
      ...eachLb.filter((_, index) =>
        backsLb.some((lb, at) => lb > 0 && Math.floor(at / places.length) === index),
      ),
    );
    if (broughtLb > (base.roomLb ?? Number.POSITIVE_INFINITY) + NOISE_LB) return null;
    if (broughtLb > 0 && broughtLb - smallestLb >= base.weightLb - NOISE_LB) return null;
    const restLb = base.weightLb - broughtLb;
    if (restLb < NOISE_LB) return leastOf(wholeOf(problem, some, [], 0));
    const mostTrips = Math.ceil(restLb / Math.min(...eachLb) - 1e-9);
    return leastOf(
      multisets(fetches, mostTrips, ({ trailer, place }) =>
        held.mostFetched({ trailer: trailer.id, place: place.id }),
      ).flatMap((trips) => {
        const leastLb = Math.min(...trips.map(({ trailer }) => mostLb(trailer, base)));
        if (trips.length > 0 && roomLb(trips, base) - leastLb >= restLb - NOISE_LB) return [];
        const leftLb = restLb - roomLb(trips, base);
        const deliveries = Math.max(0, Math.ceil(leftLb / base.deliveryLb - 1e-9));
        return deliveries > held.mostDeliveries ? [] : wholeOf(problem, some, trips, deliveries);
      }),
    );
  };
}
