import type { PlanBase, PlanProblem } from '../../../../src/calculate/haul/plan/problem.ts';
import { drivenUsd, fetchHr, type Load, mostLb, sparedHr } from './brute-costs.ts';
import type { Least, Some } from './brute-sums.ts';

/* What all trips of a plan come to together: who waits for a load, what base is bought where, how long it takes. */

/** Trips with rubble, trips for base alone, deliveries; nothing where the drivers have not the time. */
export function wholeOf(
  problem: PlanProblem,
  some: Some,
  fetches: readonly Load[],
  deliveries: number,
): readonly Least[] {
  const { base, mostHr, mostTrailerHr, trailers } = problem;
  const sparedOfAllHr = sparedHr(problem) * (some.tripCount - waitedFor(some.outs));
  const fetchedHr = fetches.reduce((sum, { place }) => sum + fetchHr(place), 0);
  const fetchedMi = fetches.reduce((sum, { place }) => sum + 2 * place.distanceMi, 0);
  const hours = some.hours - sparedOfAllHr + fetchedHr;
  if (mostHr !== null && hours > mostHr + 1e-7) return [];
  const fetchedOnHr = (id: string) =>
    fetches.reduce((sum, { trailer, place }) => sum + (trailer.id === id ? fetchHr(place) : 0), 0);
  const isOver = trailers.some(
    ({ id }, index) =>
      mostTrailerHr !== null && (some.trailerHr[index] ?? 0) + fetchedOnHr(id) > mostTrailerHr + 1e-7,
  );
  if (isOver) return [];
  const baseUsd = base === null ? 0 : boughtUsd(problem, base, { some, fetches, deliveries });
  return [
    {
      costUsd:
        some.costUsd -
        drivenUsd(problem, sparedOfAllHr, 0) +
        drivenUsd(problem, fetchedHr, fetchedMi) +
        baseUsd +
        deliveries * (base?.deliveryUsd ?? 0),
      tripCount: some.tripCount + fetches.length,
    },
  ];
}

/** Loads that the truck waits for in the best order: the first, and each after one on the same trailer. */
export function waitedFor(outs: readonly number[]): number {
  const known = new Map<string, number>();
  const after = (left: readonly number[], last: number): number => {
    const key = `${left.join()} ${last}`;
    const found =
      known.get(key) ??
      Math.min(
        ...left.flatMap((count, trailer) =>
          count === 0
            ? []
            : [
                after(
                  left.map((one, at) => (at === trailer ? one - 1 : one)),
                  trailer,
                ) + (trailer === last ? 1 : 0),
              ],
        ),
        left.every((count) => count === 0) ? 0 : Number.POSITIVE_INFINITY,
      );
    known.set(key, found);
    return found;
  };
  return outs.every((count) => count === 0) ? 0 : 1 + after(outs, -1);
}

/** All base that is wanted, the cheapest pounds first; what a minimum has paid for is free. */
function boughtUsd(
  { trailers, places }: PlanProblem,
  base: PlanBase,
  brought: { readonly some: Some; readonly fetches: readonly Load[]; readonly deliveries: number },
): number {
  const rides = [
    ...trailers.flatMap((trailer, row) =>
      places.flatMap((place, column) =>
        Array.from({ length: brought.some.backs[row * places.length + column] ?? 0 }, () => ({
          trailer,
          place,
        })),
      ),
    ),
    ...brought.fetches,
  ];
  const pounds = [
    { usdPerLb: base.usdPerLb, lb: brought.deliveries * base.deliveryLb },
    ...rides.flatMap(({ trailer, place }) => {
      const allLb = mostLb(trailer, base);
      const paidLb = place.baseUsdPerLb > 0 ? Math.min(allLb, place.baseMinimumUsd / place.baseUsdPerLb) : 0;
      return [
        { usdPerLb: 0, lb: paidLb },
        { usdPerLb: place.baseUsdPerLb, lb: allLb - paidLb },
      ];
    }),
  ].sort((one, other) => one.usdPerLb - other.usdPerLb);
  let usd = rides.reduce((sum, { place }) => sum + place.baseMinimumUsd, 0);
  let leftLb = base.weightLb;
  for (const { usdPerLb, lb } of pounds) {
    usd += usdPerLb * Math.min(leftLb, lb);
    leftLb -= Math.min(leftLb, lb);
  }
  return usd;
}
