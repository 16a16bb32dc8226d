import type { Stream } from '../../job.ts';
import { costKey, usdOfKey } from './cost-key.ts';
import type { PlanBase, PlanPlace, PlanProblem, PlanStream, PlanTrailer, Tariff } from './problem.ts';
import type { Tally, Together } from './together.ts';
import { awayHr, outHr } from './working.ts';

const LB_PER_TON = 2000;

/** One way in which a load of one stream may go. */
export type Option = {
  readonly trailer: PlanTrailer;
  readonly place: PlanPlace;
  readonly withBase: boolean;
  /** The most of the stream that one load carries [lb]. */
  readonly capacityLb: number;
  /** Of base on the way back; 0 where it comes back empty [lb]. */
  readonly baseLb: number;
  /** Of a trip, with all of the fee that does not grow with the weight. */
  readonly fixedKey: number;
  readonly tally: Tally;
  /** Weight that the fixed part of the fee pays for [lb]. */
  readonly freeLb: number;
  /** What each pound beyond that costs [$]. */
  readonly usdPerLb: number;
  /** What a pound of a full load costs, less what a trip for base alone would, where it brings base [$]. */
  readonly outUsdPerLb: number;
};

/** The most of something that a trailer carries: by its weight, and by the box [lb]. */
export function capacityLb(trailer: PlanTrailer, looseLbPerCuYd: number): number {
  return Math.min(trailer.payloadLb, trailer.boxCuYd * looseLbPerCuYd);
}

/** What a pound of something adds to a fee by the ton and by the yard [$]. */
export function usdPerLb(tariff: Tariff, looseLbPerCuYd: number): number {
  return tariff.usdPerTon / LB_PER_TON + tariff.usdPerCuYd / looseLbPerCuYd;
}

/** What a load that holds these streams pays by. */
export function tariffOf(place: PlanPlace, streams: readonly Stream[], withBase: boolean): Tariff {
  const added = streams.flatMap((stream) => place.surcharges[stream] ?? []);
  const start = withBase ? place.tariffWithBase : place.tariff;
  return added.reduce<Tariff>(
    (sum, tariff) => ({
      usdPerLoad: sum.usdPerLoad + tariff.usdPerLoad,
      usdPerTon: sum.usdPerTon + tariff.usdPerTon,
      usdPerCuYd: sum.usdPerCuYd + tariff.usdPerCuYd,
    }),
    start,
  );
}

/** Driver and truck of a trip that carries something out; base on the way back costs one more turn [$]. */
export function driveUsd(problem: PlanProblem, place: PlanPlace, withBase: boolean): number {
  return drivenUsd(problem, place, outHr(problem, place, withBase));
}

/** Driver and truck of a trip for base alone [$]. */
export function fetchUsd(problem: PlanProblem, place: PlanPlace): number {
  return drivenUsd(problem, place, awayHr(place, false));
}

function drivenUsd({ rates }: PlanProblem, { distanceMi }: PlanPlace, hours: number): number {
  return hours * (rates.driverUsdPerHr + rates.truckUsdPerHr) + 2 * distanceMi * rates.truckUsdPerMi;
}

/** Whether trips come back empty or with base, where the place sells it and there is need of it. */
export function returnsOf(place: PlanPlace, base: PlanBase | null): readonly boolean[] {
  return base !== null && place.sellsBase ? [false, true] : [false];
}

/** All ways in which a load of a stream may go. */
export function allOptionsFor(
  problem: PlanProblem,
  stream: PlanStream,
  together: Together,
): readonly Option[] {
  return problem.trailers.flatMap((trailer) =>
    problem.places
      .filter((place) => place.accepts.includes(stream.stream))
      .flatMap((place) =>
        returnsOf(place, problem.base).map((withBase) =>
          optionOf(problem, { stream, trailer, place, withBase, together }),
        ),
      ),
  );
}

/** The cheapest pound first, in full loads; so the ways that no other one beats stay few while they grow. */
export function cheapestFirst(options: readonly Option[]): readonly Option[] {
  const keyPerLb = (option: Option) => keyAt(option, option.capacityLb) / option.capacityLb;
  return [...options].sort((one, other) => keyPerLb(one) - keyPerLb(other));
}

/** Without those that another one of the same trailer beats at any weight. */
export function unbeatenOptions(options: readonly Option[], together: Together): readonly Option[] {
  return options.filter(
    (option, index) =>
      !options.some(
        (other, otherIndex) =>
          otherIndex !== index &&
          beats(other, option, together) &&
          (otherIndex < index || !beats(option, other, together)),
      ),
  );
}

function optionOf(
  problem: PlanProblem,
  made: {
    readonly stream: PlanStream;
    readonly trailer: PlanTrailer;
    readonly place: PlanPlace;
    readonly withBase: boolean;
    readonly together: Together;
  },
): Option {
  const { stream, trailer, place, withBase, together } = made;
  const tariff = tariffOf(place, [stream.stream], withBase);
  const empty = emptyLoadOf(stream, made);
  const fixedUsd = Math.max(place.minimumUsd, tariff.usdPerLoad);
  const tripUsd = driveUsd(problem, place, withBase);
  const share = together.ofTrip({ trailer, place, withBase, isOut: true });
  const savedKey = together.headStartKey(together.none, share.tally) - share.key;
  const worthUsd = withBase ? mostWorthUsd(problem, made) : 0;
  const outUsd = tripUsd - usdOfKey(savedKey) - worthUsd;
  const fullUsd = Math.max(fixedUsd, tariff.usdPerLoad + empty.usdPerLb * empty.capacityLb);
  return {
    ...empty,
    trailer,
    place,
    withBase,
    baseLb: withBase && problem.base !== null ? capacityLb(trailer, problem.base.looseLbPerCuYd) : 0,
    fixedKey: costKey(tripUsd + fixedUsd, 1) + share.key,
    tally: share.tally,
    outUsdPerLb: (outUsd + fullUsd) / empty.capacityLb,
  };
}

/** What base on the way back is worth at the most: what fetching it alone costs [$]. */
function mostWorthUsd(
  problem: PlanProblem,
  made: { readonly trailer: PlanTrailer; readonly place: PlanPlace; readonly together: Together },
): number {
  const { trailer, place, together } = made;
  const { key, tally } = together.ofTrip({ trailer, place, withBase: true, isOut: false });
  return fetchUsd(problem, place) + usdOfKey(key + together.headStartKey(tally, together.none));
}

/** Same trailer, same way back, and nowhere dearer. Both costs bend once, so that four weights tell. */
function beats(option: Option, other: Option, together: Together): boolean {
  if (option.trailer.id !== other.trailer.id || option.withBase !== other.withBase) return false;
  const startKey = together.headStartKey(option.tally, other.tally);
  return [0, option.freeLb, other.freeLb, other.capacityLb].every(
    (weightLb) => keyAt(option, weightLb) + startKey <= keyAt(other, weightLb),
  );
}

function keyAt(option: Option, weightLb: number): number {
  return option.fixedKey + keyOfWeight(option, weightLb);
}

/** The part of a fee that grows with the weight. */
export function keyOfWeight(option: Option, weightLb: number): number {
  return costKey(option.usdPerLb * Math.max(0, weightLb - option.freeLb), 0);
}

/** What fits on a load of a stream, and how its fee grows. */
export function emptyLoad(
  problem: PlanProblem,
  stream: Stream,
  trip: { readonly trailer: string; readonly place: string; readonly withBase: boolean },
): Pick<Option, 'capacityLb' | 'freeLb' | 'usdPerLb'> {
  const trailer = problem.trailers.find(({ id }) => id === trip.trailer);
  const place = problem.places.find(({ id }) => id === trip.place);
  if (trailer === undefined || place === undefined)
    throw new RangeError(`${stream} does not go to ${trip.place} on ${trip.trailer}`);
  return emptyLoadOf(streamOf(problem, stream), { trailer, place, withBase: trip.withBase });
}

function emptyLoadOf(
  { stream, looseLbPerCuYd }: PlanStream,
  { trailer, place, withBase }: Pick<Option, 'trailer' | 'place' | 'withBase'>,
): Pick<Option, 'capacityLb' | 'freeLb' | 'usdPerLb'> {
  const tariff = tariffOf(place, [stream], withBase);
  const mostLb = capacityLb(trailer, looseLbPerCuYd);
  const perLb = usdPerLb(tariff, looseLbPerCuYd);
  const fixedUsd = Math.max(place.minimumUsd, tariff.usdPerLoad);
  return {
    capacityLb: mostLb,
    freeLb: perLb > 0 ? Math.min(mostLb, (fixedUsd - tariff.usdPerLoad) / perLb) : mostLb,
    usdPerLb: perLb > 0 ? perLb : 0,
  };
}

function streamOf(problem: PlanProblem, stream: Stream): PlanStream {
  const found = problem.streams.find((one) => one.stream === stream);
  if (found === undefined) throw new RangeError(`there is no ${stream} to haul`);
  return found;
}

/** Of base, the most that a load of a trailer brings; 0 where none is laid [lb]. */
export function baseCapacityLb({ trailers, base }: PlanProblem, id: string): number {
  const trailer = trailers.find((one) => one.id === id);
  if (trailer === undefined) throw new RangeError(`no trailer called ${id}`);
  return base === null ? 0 : capacityLb(trailer, base.looseLbPerCuYd);
}
