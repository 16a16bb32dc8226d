import type {
  Plan,
  PlanBase,
  PlannedTrips,
  PlanProblem,
  PlanStream,
} from '../../../../src/calculate/haul/plan/problem.ts';
import { askedUsd, fetchUsd, type Load, mostLb, outUsd } from './brute-costs.ts';

/*
 * Every plan of a small problem, one after the other, and the least of them. It keeps only the least of
 * those that bring the same base on the same trailers and leave the same rest.
 */

export type Least = { readonly costUsd: number; readonly tripCount: number };

type Trip = Omit<PlannedTrips, 'count'>;

/** What a plan may have at the most. */
export type Held = {
  readonly most: (stream: PlanStream['stream'], trip: Trip) => number;
  readonly allowsShared: (trip: Trip, streams: readonly string[]) => boolean;
  readonly mostFetched: (trip: Omit<Trip, 'withBase'>) => number;
  readonly mostDeliveries: number;
};

const NOTHING_HELD: Held = {
  most: () => Number.POSITIVE_INFINITY,
  allowsShared: () => true,
  mostFetched: () => Number.POSITIVE_INFINITY,
  mostDeliveries: Number.POSITIVE_INFINITY,
};

/** Some of a plan: trips back with base are counted by trailer. */
type Some = Least & { readonly backs: readonly number[]; readonly restLb: number };

const NOISE_LB = 1e-3;
const NOISE_USD = 1e-5;

export function leastOfAll(problem: PlanProblem, held: Held = NOTHING_HELD): Least | null {
  const restUsd = broughtAlone(problem, held);
  const plans = plansFor(problem, held, problem.streams).flatMap((some) => {
    const rest = restUsd(some.backs);
    return rest === null ? [] : [plus(some, rest)];
  });
  return leastOf(plans);
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
  if (first === undefined)
    return [{ costUsd: 0, tripCount: 0, backs: problem.trailers.map(() => 0), restLb: 0 }];
  const starts = subsets(others).map((along) => ({
    some: along.length === 0 ? alone(problem, held, first) : together(problem, held, [first, ...along]),
    left: others.filter((other) => !along.includes(other)),
  }));
  return leastOfEach(
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

/** A stream on loads that hold all of it, laid out as cheaply as may be. */
function alone(problem: PlanProblem, held: Held, stream: PlanStream): readonly Some[] {
  const loads = loadsFor(problem, stream);
  const smallestLb = Math.min(...loads.map(({ trailer }) => mostLb(trailer, stream)));
  // One more than the smallest trailer needs: a dear pound may go where it is cheap to dump and dear to drive.
  const mostLoads = Math.ceil(stream.weightLb / smallestLb - 1e-9) + 1;
  return leastOfEach(
    multisets(loads, mostLoads, (load) => held.most(stream.stream, tripOf(load)))
      .filter((some) => roomLb(some, stream) >= stream.weightLb - NOISE_LB)
      .map((some) => ({
        costUsd: some.reduce((sum, load) => sum + outUsd(problem, load), layoutUsd(some, stream)),
        tripCount: some.length,
        backs: backsOf(problem, some),
        restLb: 0,
      })),
  );
}

/** Gate fees where the cheapest pounds are filled first. */
function layoutUsd(loads: readonly Load[], stream: PlanStream): number {
  let usd = 0;
  const pounds = loads.flatMap((load) => {
    const fullLb = mostLb(load.trailer, stream);
    const at = (weightLb: number) => askedUsd(load, [{ ...stream, weightLb }]);
    usd += Math.max(load.place.minimumUsd, at(0));
    const usdPerLb = (at(fullLb) - at(0)) / fullLb;
    const paidLb = usdPerLb > 0 ? Math.max(0, load.place.minimumUsd - at(0)) / usdPerLb : fullLb;
    const freeLb = Math.min(fullLb, paidLb);
    return [
      { usdPerLb: 0, lb: freeLb },
      { usdPerLb, lb: fullLb - freeLb },
    ];
  });
  pounds.sort((one, other) => one.usdPerLb - other.usdPerLb);
  let leftLb = stream.weightLb;
  for (const { usdPerLb, lb } of pounds) {
    usd += usdPerLb * Math.min(leftLb, lb);
    leftLb -= Math.min(leftLb, lb);
  }
  return usd;
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
          const own = {
            costUsd: outUsd(problem, load) + gateUsd,
            tripCount: 1,
            backs: backsOf(problem, [load]),
          };
          return [sumOf(sum, { ...own, restLb: 0 })];
        }
        return (rests[index] ?? []).flatMap((rest) => {
          const more = ratio + rest.restLb / mostLb(load.trailer, stream);
          if (more > 1 + 1e-9) return [];
          return filled(index + 1, more, [...restsLb, rest.restLb], sumOf(sum, { ...rest, restLb: 0 }));
        });
      };
      return filled(0, 0, [], { costUsd: 0, tripCount: 0, backs: problem.trailers.map(() => 0), restLb: 0 });
    });
}

/** Full loads, none or more, that leave a rest of no more than this. */
function restsOf(problem: PlanProblem, held: Held, stream: PlanStream, mostRestLb: number): readonly Some[] {
  const loads = loadsFor(problem, stream);
  const smallestLb = Math.min(...loads.map(({ trailer }) => mostLb(trailer, stream)));
  const most = (load: Load) => held.most(stream.stream, tripOf(load));
  return leastOfEach(
    multisets(loads, Math.floor(stream.weightLb / smallestLb), most).flatMap((some) => {
      const restLb = stream.weightLb - roomLb(some, stream);
      if (restLb < NOISE_LB || restLb > mostRestLb + NOISE_LB) return [];
      const costUsd = some.reduce((sum, load) => {
        const asked = askedUsd(load, [{ ...stream, weightLb: mostLb(load.trailer, stream) }]);
        return sum + outUsd(problem, load) + Math.max(load.place.minimumUsd, asked);
      }, 0);
      return [{ costUsd, tripCount: some.length, backs: backsOf(problem, some), restLb }];
    }),
  );
}

/** What base costs that trips with rubble do not bring; null where one of them is not needed. */
function broughtAlone(problem: PlanProblem, held: Held): (backs: readonly number[]) => Least | null {
  const { base, trailers, places } = problem;
  if (base === null) return () => ({ costUsd: 0, tripCount: 0 });
  const eachLb = trailers.map((trailer) => mostLb(trailer, base));
  const fetches = trailers.flatMap((trailer) =>
    places.filter(({ sellsBase }) => sellsBase).map((place) => ({ trailer, place, withBase: true })),
  );
  return (backs) => {
    const broughtLb = backs.reduce((sum, count, index) => sum + count * (eachLb[index] ?? 0), 0);
    const smallestLb = Math.min(...eachLb.filter((_, index) => (backs[index] ?? 0) > 0));
    if (broughtLb > (base.roomLb ?? Number.POSITIVE_INFINITY) + NOISE_LB) return null;
    if (broughtLb > 0 && broughtLb - smallestLb >= base.weightLb - NOISE_LB) return null;
    const restLb = base.weightLb - broughtLb;
    if (restLb < NOISE_LB) return { costUsd: 0, tripCount: 0 };
    const mostTrips = Math.ceil(restLb / Math.min(...eachLb) - 1e-9);
    return leastOf(
      multisets(fetches, mostTrips, ({ trailer, place }) =>
        held.mostFetched({ trailer: trailer.id, place: place.id }),
      ).flatMap((trips) => delivered(problem, base, trips, restLb, held.mostDeliveries)),
    );
  };
}

function delivered(
  problem: PlanProblem,
  base: PlanBase,
  trips: readonly Load[],
  restLb: number,
  most: number,
): readonly Least[] {
  const leftLb = restLb - roomLb(trips, base);
  const count = Math.max(0, Math.ceil(leftLb / base.deliveryLb - 1e-9));
  const tripsUsd = trips.reduce((sum, { place }) => sum + fetchUsd(problem, place), 0);
  return count > most ? [] : [{ costUsd: tripsUsd + count * base.deliveryUsd, tripCount: trips.length }];
}

/** Up to so many of them, none included, each as often as it may be. */
function multisets(
  loads: readonly Load[],
  mostLoads: number,
  most: (load: Load) => number,
): readonly (readonly Load[])[] {
  return loads.reduce<readonly (readonly Load[])[]>(
    (sets, load) => {
      const mostOf = most(load);
      return sets.flatMap((set) => {
        const out = [set];
        for (let count = 1, last = set; count <= mostOf && last.length < mostLoads; count += 1) {
          last = [...last, load];
          out.push(last);
        }
        return out;
      });
    },
    [[]],
  );
}

function allLoads(problem: PlanProblem): readonly Load[] {
  return problem.trailers.flatMap((trailer) =>
    problem.places.flatMap((place) =>
      [false, true]
        .filter((withBase) => !withBase || (problem.base !== null && place.sellsBase))
        .map((withBase) => ({ trailer, place, withBase })),
    ),
  );
}

function loadsFor(problem: PlanProblem, { stream }: PlanStream): readonly Load[] {
  return allLoads(problem).filter(({ place }) => place.accepts.includes(stream));
}

function tripOf({ trailer, place, withBase }: Load): Trip {
  return { trailer: trailer.id, place: place.id, withBase };
}

function roomLb(loads: readonly Load[], of: PlanStream | PlanBase): number {
  return loads.reduce((sum, { trailer }) => sum + mostLb(trailer, of), 0);
}

function backsOf({ trailers }: PlanProblem, loads: readonly Load[]): readonly number[] {
  return trailers.map(
    ({ id }) => loads.filter(({ trailer, withBase }) => withBase && trailer.id === id).length,
  );
}

function sumOf(one: Some, other: Some): Some {
  const backs = one.backs.map((count, index) => count + (other.backs[index] ?? 0));
  return { ...plus(one, other), backs, restLb: one.restLb + other.restLb };
}

function plus(one: Least, other: Least): Least {
  return { costUsd: one.costUsd + other.costUsd, tripCount: one.tripCount + other.tripCount };
}

function leastOfEach(all: readonly Some[]): readonly Some[] {
  const byKey = new Map<string, Some>();
  for (const some of all) {
    const key = `${some.backs.join()} ${some.restLb.toFixed(3)}`;
    const known = byKey.get(key);
    if (known === undefined || isLess(some, known)) byKey.set(key, some);
  }
  return [...byKey.values()];
}

function leastOf(all: readonly Least[]): Least | null {
  return all.reduce<Least | null>((least, one) => (least === null || isLess(one, least) ? one : least), null);
}

function isLess(one: Least, other: Least): boolean {
  if (Math.abs(one.costUsd - other.costUsd) > NOISE_USD) return one.costUsd < other.costUsd;
  return one.tripCount < other.tripCount;
}
