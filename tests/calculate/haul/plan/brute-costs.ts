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

/** Driver and truck of a trip that takes something out [$]. */
export function outUsd({ rates }: PlanProblem, { place, withBase }: Load): number {
  const hours = rates.loadingHr + 2 * place.driveHr + place.turnHr + (withBase ? place.turnHr : 0);
  return hours * (rates.driverUsdPerHr + rates.truckUsdPerHr) + 2 * place.distanceMi * rates.truckUsdPerMi;
}

/** Driver and truck of a trip for base alone [$]. */
export function fetchUsd({ rates }: PlanProblem, place: PlanPlace): number {
  const hours = 2 * place.driveHr + place.turnHr;
  return hours * (rates.driverUsdPerHr + rates.truckUsdPerHr) + 2 * place.distanceMi * rates.truckUsdPerMi;
}
