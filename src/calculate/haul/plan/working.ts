import type { PlanPlace, PlanProblem } from './problem.ts';

/*
 * How trucks, trailers and the loader share the day. All times are those of the drivers together.
 */

/** Away with a load: out, at the gate, base on the way back, and back [h]. */
export function awayHr(
  { driveHr, turnHr }: Pick<PlanPlace, 'driveHr' | 'turnHr'>,
  withBase: boolean,
): number {
  return 2 * driveHr + turnHr * (withBase ? 2 : 1);
}

/** As many as there are trailers for. */
export function driverCount({ rates, trailers }: Pick<PlanProblem, 'rates' | 'trailers'>): number {
  return Math.max(1, Math.min(rates.driverCount, trailers.length));
}

/**
 * What a load saves that is filled while the truck is away with another one: loading, or where the truck
 * is back before that its shortest way, less dropping one trailer and taking the other. 0 where one
 * trailer comes, where each truck keeps its own, or where nothing is saved [h].
 */
export function swapSavesHr({ rates, trailers, places }: PlanProblem): number {
  const { loadingHr, swapHr } = rates;
  if (swapHr === null || trailers.length < 2 || driverCount({ rates, trailers }) > 1) return 0;
  const shortestHr = Math.min(...places.map((place) => awayHr(place, false)));
  return Math.max(0, Math.min(loadingHr, shortestHr) - swapHr);
}

/**
 * Driver's hours of a trip that takes rubble out, from the loading to the return. Where trailers are
 * swapped it is one that was filled meanwhile; where several trucks wait for one loader, the loader may
 * set the pace: max(loading + away, trucks x loading).
 *
 * Source: units to keep a loader busy are the cycle over the loading time, as in texts on construction
 * methods and in Army FM 5-434 (from memory).
 */
export function outHr(problem: PlanProblem, place: PlanPlace, withBase: boolean): number {
  const { loadingHr } = problem.rates;
  const cycleHr = loadingHr + awayHr(place, withBase);
  const drivers = driverCount(problem);
  return drivers > 1 ? Math.max(cycleHr, drivers * loadingHr) : cycleHr - swapSavesHr(problem);
}
