import type {
  PlanBase,
  PlannedTrips,
  PlanProblem,
  PlanStream,
} from '../../../../src/calculate/haul/plan/problem.ts';
import { type Load, mostLb } from './brute-costs.ts';

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

/** Some of a plan: trips back with base are counted by trailer. */
export type Some = Least & { readonly backs: readonly number[]; readonly restLb: number };

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

export function backsOf({ trailers }: PlanProblem, loads: readonly Load[]): readonly number[] {
  return trailers.map(
    ({ id }) => loads.filter(({ trailer, withBase }) => withBase && trailer.id === id).length,
  );
}

export function sumOf(one: Some, other: Some): Some {
  const backs = one.backs.map((count, index) => count + (other.backs[index] ?? 0));
  return { ...plus(one, other), backs, restLb: one.restLb + other.restLb };
}

export function plus(one: Least, other: Least): Least {
  return { costUsd: one.costUsd + other.costUsd, tripCount: one.tripCount + other.tripCount };
}

export function leastOfEach(all: readonly Some[]): readonly Some[] {
  const byKey = new Map<string, Some>();
  for (const some of all) {
    const key = `${some.backs.join()} ${some.restLb.toFixed(3)}`;
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
