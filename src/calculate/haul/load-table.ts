import type { Decimal } from 'decimal.js';
import type { DumpPlace, Stream } from '../job.ts';
import { thingNamed } from '../parts.ts';
import { alternating } from './alternate.ts';
import { baseBrought } from './base-brought.ts';
import {
  driverCount,
  emptyLoad,
  type Plan,
  type PlannedTrips,
  type PlanProblem,
  type SharedLoad,
  swapSavesHr,
} from './plan/index.ts';
import { shareOutLb } from './share-out.ts';
import { areaOf, type HauledThing, inOrder, inProportion, type LoadPart, type LoadPiece } from './split.ts';
import { ticketUsd } from './ticket.ts';
import { fillHeightIn } from './trailer.ts';
import type { UsableTrailer } from './usable-trailer.ts';

/** One trip with debris, as it is driven. */
export type HaulLoad = {
  /** `load-1` and so on, in the order in which they leave. */
  readonly name: string;
  /** More than one where the place lets them share a load. */
  readonly streams: readonly Stream[];
  /** Ids of the trailer and the place. */
  readonly trailer: string;
  readonly place: string;
  /** Of the existing things on it; null where nothing on it is loaded by the square foot. */
  readonly areaSqFt: number | null;
  readonly weightLb: number;
  readonly looseCuYd: number;
  /** Height in the box if it lay level; rough, as the swell is. */
  readonly fillIn: number;
  readonly feeUsd: Decimal;
  readonly returns: 'base' | 'empty';
  /** Of base on the way back; 0 where it comes back empty [lb]. */
  readonly baseLb: number;
  /** What is on it, in the order in which it is loaded. */
  readonly pieces: readonly LoadPiece[];
};

export type LoadSetting = {
  readonly problem: PlanProblem;
  readonly trailers: Readonly<Record<string, UsableTrailer>>;
  readonly places: Readonly<Record<string, DumpPlace>>;
  readonly thingsOf: (stream: Stream) => readonly HauledThing[];
};

type Trip = Omit<PlannedTrips, 'count'>;
type Laden = Trip & { readonly parts: readonly { readonly stream: Stream; readonly part: LoadPart }[] };

/** Loads are cut to whole pounds, or finer where a whole pound would not go in. */
const WHOLE_LB = 1;
const FINE_LB = 2 ** -20;
/** Of a box: what a double may be over by noise and by one fine step. */
const NOISE_RATIO = 1e-6;

/**
 * The trips with debris in order: stream by stream, a shared load after the last of its streams, and
 * those that bring base back after those of the same kind that do not, when the ground is nearest to ready.
 * Where trailers are swapped, those of different trailers take turns.
 */
export function loadTable(plan: Plan, setting: LoadSetting): readonly HaulLoad[] {
  const rests = new Map<SharedLoad, { readonly stream: Stream; readonly part: LoadPart }[]>();
  const laden = plan.byStream.flatMap(({ stream, trips }): Laden[] => {
    const shared = plan.shared.filter(({ parts }) => parts.some((part) => part.stream === stream));
    const singles = trips.flatMap(({ count, ...trip }): Trip[] => Array.from({ length: count }, () => trip));
    const parts = partsOf(stream, { singles, shared: shared[0] ?? null, setting });
    const [alone, rest] = [parts.slice(0, singles.length), parts[singles.length]];
    const loads = singles.map((trip, index) => {
      const part = alone[index];
      return { ...trip, parts: part === undefined ? [] : [{ stream, part }] };
    });
    return [...loads, ...shared.flatMap((load) => closedBy(stream, load, rest, rests))];
  });
  const inTurn = isInTurn(setting.problem) ? alternating(laden) : laden;
  const driven = baseOnTheLast(inTurn, setting);
  const back = driven.filter(({ withBase }) => withBase);
  const { backLb } = baseBrought(plan, setting.problem, back);
  return driven.map((load, index) =>
    named(load, index, { ...setting, baseLb: backLb[back.indexOf(load)] ?? 0 }),
  );
}

/** Where trailers are swapped or trucks take turns. */
function isInTurn(problem: PlanProblem): boolean {
  return swapSavesHr(problem) > 0 || driverCount(problem) > 1;
}

/** What of a stream is on each of its loads, and last on the one it shares. */
function partsOf(
  stream: Stream,
  made: {
    readonly singles: readonly Trip[];
    readonly shared: SharedLoad | null;
    readonly setting: LoadSetting;
  },
): readonly LoadPart[] {
  const { singles, shared, setting } = made;
  const things = setting.thingsOf(stream);
  const allLb = things.reduce((sum, { weightLb }) => sum + weightLb, 0);
  const empties = singles.map((trip) => emptyLoad(setting.problem, stream, trip));
  const boxes = [...singles, ...(shared === null ? [] : [shared])].map(
    ({ trailer }) => thingNamed(setting.trailers, trailer, 'trailer').trailer.box,
  );
  const fits = (parts: readonly LoadPart[]) =>
    shared !== null ||
    parts.every(({ looseCuYd }, index) => {
      const box = boxes[index];
      return box !== undefined && fillHeightIn(looseCuYd, box) <= box.heightIn * (1 + NOISE_RATIO);
    });
  for (const stepLb of [WHOLE_LB, FINE_LB]) {
    const weightsLb =
      shared === null
        ? shareOutLb(allLb, empties, stepLb)
        : fullWithRest(
            allLb,
            empties.map(({ capacityLb }) => capacityLb),
          );
    const parts = inOrder(things, weightsLb);
    if (fits(parts)) return parts;
    if (stepLb === FINE_LB) return inProportion(things, weightsLb);
  }
  throw new RangeError(`${stream} fits on no load`);
}

function fullWithRest(allLb: number, capacitiesLb: readonly number[]): readonly number[] {
  return [...capacitiesLb, capacitiesLb.reduce((left, lb) => left - lb, allLb)];
}

/** A shared load leaves once the last of its streams is on it. */
function closedBy(
  stream: Stream,
  load: SharedLoad,
  part: LoadPart | undefined,
  rests: Map<SharedLoad, { readonly stream: Stream; readonly part: LoadPart }[]>,
): readonly Laden[] {
  const onIt = rests.get(load) ?? [];
  if (part !== undefined) onIt.push({ stream, part });
  rests.set(load, onIt);
  const { trailer, place, withBase } = load;
  return load.parts.at(-1)?.stream === stream ? [{ trailer, place, withBase, parts: onIt }] : [];
}

/** Where it changes no fee, base rides back on the last trips of a trailer to a place. */
function baseOnTheLast(laden: readonly Laden[], { places }: LoadSetting): readonly Laden[] {
  const left = new Map<string, number>();
  const keyOf = ({ trailer, place }: Trip) => `${trailer} ${place}`;
  const mayMove = ({ place }: Trip) => {
    const { fee, feeWithBase } = thingNamed(places, place, 'place');
    return feeWithBase === null || (fee.perUnit === 'load' && feeWithBase.perUnit === 'load');
  };
  for (const load of laden) {
    if (load.withBase && mayMove(load)) left.set(keyOf(load), (left.get(keyOf(load)) ?? 0) + 1);
  }
  return [...laden]
    .reverse()
    .map((load) => {
      if (!mayMove(load)) return load;
      const count = left.get(keyOf(load)) ?? 0;
      left.set(keyOf(load), count - 1);
      return { ...load, withBase: count > 0 };
    })
    .reverse();
}

function named(
  load: Laden,
  index: number,
  { trailers, places, baseLb }: LoadSetting & { readonly baseLb: number },
): HaulLoad {
  const weightLb = load.parts.reduce((sum, { part }) => sum + part.weightLb, 0);
  const looseCuYd = load.parts.reduce((sum, { part }) => sum + part.looseCuYd, 0);
  const pieces = load.parts.flatMap(({ part }) => part.pieces);
  const streams = load.parts.map(({ stream }) => stream);
  const place = thingNamed(places, load.place, 'place');
  return {
    name: `load-${index + 1}`,
    streams,
    trailer: load.trailer,
    place: load.place,
    areaSqFt: areaOf(pieces),
    weightLb,
    looseCuYd,
    fillIn: fillHeightIn(looseCuYd, thingNamed(trailers, load.trailer, 'trailer').trailer.box),
    feeUsd: ticketUsd(place, { weightLb, looseCuYd, streams, withBase: load.withBase }),
    returns: load.withBase ? 'base' : 'empty',
    baseLb,
    pieces,
  };
}
