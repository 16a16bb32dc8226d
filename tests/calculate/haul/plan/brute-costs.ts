import type {
  PlanPlace,
  PlanProblem,
  PlanTrailer,
  Tariff,
} from '../../../../src/calculate/haul/plan/problem.ts';

/*
 * What a load and a trip cost, written once more from the definitions: nothing here comes from the planner.
 */

/** A load of one kind: with this trailer to this place, and back empty or with base. */
export type Load = {
  readonly trailer: PlanTrailer;
  readonly place: PlanPlace;
  readonly withBase: boolean;
};

/** A stream, or base, as it lies in a box. */
export type Loose = { readonly looseLbPerCuYd: number };

/** The most of it in one load, by payload and by box [lb]. */
export function mostLb(trailer: PlanTrailer, { looseLbPerCuYd }: Loose): number {
  return Math.min(trailer.payloadLb, trailer.boxCuYd * looseLbPerCuYd);
}

/** So much of a stream on a load. */
export type Part = Loose & { readonly stream: keyof PlanPlace['surcharges']; readonly weightLb: number };

/** What the tariff comes to for a load that holds these parts, before the minimum [$]. */
export function askedUsd({ place, withBase }: Load, parts: readonly Part[]): number {
  const tariffs: Tariff[] = [withBase ? place.tariffWithBase : place.tariff];
  for (const { stream } of parts) {
    const surcharge = place.surcharges[stream];
    if (surcharge !== undefined) tariffs.push(surcharge);
  }
  const tons = parts.reduce((sum, { weightLb }) => sum + weightLb / 2000, 0);
  const cuYd = parts.reduce((sum, { weightLb, looseLbPerCuYd }) => sum + weightLb / looseLbPerCuYd, 0);
  return tariffs.reduce(
    (sum, { usdPerLoad, usdPerTon, usdPerCuYd }) => sum + usdPerLoad + usdPerTon * tons + usdPerCuYd * cuYd,
    0,
  );
}

/** Trucks that drive: each needs a trailer. */
function trucks({ rates, trailers }: PlanProblem): number {
  return Math.min(rates.driverCount, trailers.length);
}

/** What a load need not wait that was filled while the truck was away [h]. */
export function sparedHr(problem: PlanProblem): number {
  const { swapHr, loadingHr } = problem.rates;
  if (swapHr === null || problem.trailers.length === 1 || trucks(problem) > 1) return 0;
  const awayHr = problem.places.map(({ driveHr, turnHr }) => driveHr + turnHr + driveHr);
  return Math.max(0, Math.min(...awayHr, loadingHr) - swapHr);
}

/** Of a trip that takes something out, waiting while it is loaded, or for other trucks to be [h]. */
export function outHr(problem: PlanProblem, { place, withBase }: Load): number {
  const { loadingHr } = problem.rates;
  const hours = loadingHr + place.driveHr + place.turnHr + (withBase ? place.turnHr : 0) + place.driveHr;
  return trucks(problem) === 1 ? hours : Math.max(hours, trucks(problem) * loadingHr);
}

/** Of a trip for base alone [h]. */
export function fetchHr({ driveHr, turnHr }: PlanPlace): number {
  return driveHr + turnHr + driveHr;
}

/** Driver and truck over hours and miles [$]. */
export function drivenUsd({ rates }: PlanProblem, hours: number, miles: number): number {
  return hours * (rates.driverUsdPerHr + rates.truckUsdPerHr) + miles * rates.truckUsdPerMi;
}
