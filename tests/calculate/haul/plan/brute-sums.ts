import type {
  PlanBase,
  PlannedTrips,
  PlanProblem,
  PlanStream,
} from '../../../../src/calculate/haul/plan/problem.ts';
import { drivenUsd, type Load, mostLb, outHr } from './brute-costs.ts';

/* Lists of loads, and the least of what they come to. */

export type Least = { readonly costUsd: number; readonly tripCount: number };

export type Trip = Omit<PlannedTrips, 'count'>;

/** What a plan may have at the most. */
export type Held = {
  readonly most: (stream: PlanStream['stream'], trip: Trip) => number;
  readonly allowsShared: (trip: Trip, streams: readonly string[]) => boolean;
  readonly mostFetched: (trip: Omit<Trip, 'withBase'>) => number;
  readonly mostDeliveries: number;
};

/** Some of a plan. */
export type Some = Least & {
  readonly hours: number;
  /** On each trailer. */
  readonly trailerHr: readonly number[];
  /** Loads out, by trailer. */
  readonly outs: readonly number[];
  /** Trips back with base, by trailer and place. */
  readonly backs: readonly number[];
  readonly restLb: number;
};

export const NOISE_LB = 1e-3;
const NOISE_USD = 1e-5;

/** Up to so many of them, none included, each as often as it may be. */
export function multisets(
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

export function allLoads(problem: PlanProblem): readonly Load[] {
  return problem.trailers.flatMap((trailer) =>
    problem.places.flatMap((place) =>
      [false, true]
        .filter((withBase) => !withBase || (problem.base !== null && place.sellsBase))
        .map((withBase) => ({ trailer, place, withBase })),
    ),
  );
}

export function loadsFor(problem: PlanProblem, { stream }: PlanStream): readonly Load[] {
  return allLoads(problem).filter(({ place }) => place.accepts.includes(stream));
}

export function tripOf({ trailer, place, withBase }: Load): Trip {
  return { trailer: trailer.id, place: place.id, withBase };
}

export function roomLb(loads: readonly Load[], of: PlanStream | PlanBase): number {
  return loads.reduce((sum, { trailer }) => sum + mostLb(trailer, of), 0);
}

export function nothing({ trailers, places }: PlanProblem): Some {
  const outs = trailers.map(() => 0);
  return {
    costUsd: 0,
    tripCount: 0,
    hours: 0,
    trailerHr: outs,
    outs,
    backs: outs.flatMap(() => places.map(() => 0)),
    restLb: 0,
  };
}

/** Loads that take something out, at so much at the gate. */
export function drivenOut(
  problem: PlanProblem,
  loads: readonly Load[],
  left: { readonly gateUsd: number; readonly restLb: number },
): Some {
  const { trailers, places } = problem;
  const count = (isIt: (load: Load) => boolean) => loads.filter(isIt).length;
  const hours = loads.reduce((sum, load) => sum + outHr(problem, load), 0);
  const miles = loads.reduce((sum, { place }) => sum + 2 * place.distanceMi, 0);
  return {
    costUsd: left.gateUsd + drivenUsd(problem, hours, miles),
    tripCount: loads.length,
    hours,
    trailerHr: trailers.map(({ id }) =>
      loads.reduce((sum, load) => sum + (load.trailer.id === id ? outHr(problem, load) : 0), 0),
    ),
    outs: trailers.map(({ id }) => count(({ trailer }) => trailer.id === id)),
    backs: trailers.flatMap((one) =>
      places.map((to) =>
        count(({ trailer, place, withBase }) => withBase && trailer.id === one.id && place.id === to.id),
      ),
    ),
    restLb: left.restLb,
  };
}

export function sumOf(one: Some, other: Some): Some {
  const sums = (some: readonly number[], more: readonly number[]) =>
    some.map((count, index) => count + (more[index] ?? 0));
  return {
    costUsd: one.costUsd + other.costUsd,
    tripCount: one.tripCount + other.tripCount,
    hours: one.hours + other.hours,
    trailerHr: sums(one.trailerHr, other.trailerHr),
    outs: sums(one.outs, other.outs),
    backs: sums(one.backs, other.backs),
    restLb: one.restLb + other.restLb,
  };
}

/** Of those that differ in nothing that counts later, the least. */
export function leastOfEach(
  { rates, mostHr, mostTrailerHr }: PlanProblem,
  all: readonly Some[],
): readonly Some[] {
  const byKey = new Map<string, Some>();
  for (const some of all) {
    const outs = rates.swapHr === null ? '' : some.outs.join();
    const inAll = mostHr === null ? '' : some.hours.toFixed(5);
    const own = mostTrailerHr === null ? '' : some.trailerHr.map((hours) => hours.toFixed(5)).join();
    const key = `${some.backs.join()} ${outs} ${inAll} ${own} ${some.restLb.toFixed(3)}`;
    const known = byKey.get(key);
    if (known === undefined || isLess(some, known)) byKey.set(key, some);
  }
  return [...byKey.values()];
}

export function leastOf(all: readonly Least[]): Least | null {
  return all.reduce<Least | null>((least, one) => (least === null || isLess(one, least) ? one : least), null);
}

function isLess(one: Least, other: Least): boolean {
  if (Math.abs(one.costUsd - other.costUsd) > NOISE_USD) return one.costUsd < other.costUsd;
  return one.tripCount < other.tripCount;
}
