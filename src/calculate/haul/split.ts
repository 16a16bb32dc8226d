import { lbPerCuFtToLbPerCuYd } from '../../units/index.ts';
import { loadCount, splitWeightLb, volumeOfWeightCuYd } from './load-count.ts';

/** Something of a stream that is loaded; in the order in which it is loaded. */
export type HauledThing = {
  /** Id of the existing thing; null for soil. */
  readonly existingId: string | null;
  readonly weightLb: number;
  readonly looseLbPerCuFt: number;
  /** Null for soil, which is not loaded by the square foot. */
  readonly weightLbPerSqFt: number | null;
};

/** One load before it has a name, a trailer and a place. */
export type SplitLoad = {
  readonly weightLb: number;
  readonly looseCuYd: number;
  readonly areaSqFt: number | null;
  readonly pieces: readonly LoadPiece[];
};

/** What of one thing is on a load. */
export type LoadPiece = {
  /** Null for soil dug out under a slab. */
  readonly existingId: string | null;
  /** Null where it is not loaded by the square foot. */
  readonly areaSqFt: number | null;
  readonly weightLb: number;
};

type Room = { readonly payloadLb: number; readonly boxCuYd: number };

/** Loads are cut to whole pounds, or finer where a whole pound would not go in. */
const WHOLE_LB = 1;
const FINE_LB = 2 ** -20;
/** Of payload or box: what a double may be over by noise and by one fine step. */
const NOISE_RATIO = 1e-6;

/**
 * The loads of one stream: as few as payload and box allow, of equal weight, that add up to it.
 *
 * Things are taken in order and one may be split over loads. Where things of one stream differ in
 * how loosely they lie, a load of the looser one alone can ask for more room than the mean; then
 * there is one load more than the count of the whole stream says.
 */
export function splitStream(things: readonly HauledThing[], room: Room): readonly SplitLoad[] {
  const weightLb = things.reduce((sum, thing) => sum + thing.weightLb, 0);
  const looseCuYd = things.reduce((sum, thing) => sum + looseOf(thing, thing.weightLb), 0);
  const fits = (load: SplitLoad) =>
    load.weightLb <= room.payloadLb * (1 + NOISE_RATIO) && load.looseCuYd <= room.boxCuYd * (1 + NOISE_RATIO);

  for (let count = loadCount({ weightLb, looseCuYd, ...room }); ; count += 1) {
    for (const stepLb of [WHOLE_LB, FINE_LB]) {
      const loads = fillLoads(things, splitWeightLb(weightLb, count, stepLb));
      if (loads.every(fits)) return loads;
    }
  }
}

function fillLoads(things: readonly HauledThing[], weightsLb: readonly number[]): SplitLoad[] {
  const left = things.map((thing) => ({ thing, weightLb: thing.weightLb }));
  return weightsLb.map((weightLb) => {
    const pieces: { thing: HauledThing; weightLb: number }[] = [];
    let needLb = weightLb;
    for (let next = left[0]; next !== undefined && needLb > 0; next = left[0]) {
      const lastThing = left.length === 1;
      const takenLb = lastThing ? needLb : Math.min(next.weightLb, needLb);
      if (takenLb > 0) pieces.push({ thing: next.thing, weightLb: takenLb });
      needLb -= takenLb;
      next.weightLb -= takenLb;
      if (lastThing) break;
      if (next.weightLb <= FINE_LB) left.shift();
    }
    return loadOf(weightLb, pieces);
  });
}

function loadOf(
  weightLb: number,
  taken: readonly { readonly thing: HauledThing; readonly weightLb: number }[],
): SplitLoad {
  const pieces = taken.map(
    ({ thing, weightLb: pieceLb }): LoadPiece => ({
      existingId: thing.existingId,
      areaSqFt: thing.weightLbPerSqFt === null ? null : pieceLb / thing.weightLbPerSqFt,
      weightLb: pieceLb,
    }),
  );
  const areas = pieces.flatMap(({ areaSqFt }) => (areaSqFt === null ? [] : [areaSqFt]));
  return {
    weightLb,
    looseCuYd: taken.reduce((sum, { thing, weightLb: pieceLb }) => sum + looseOf(thing, pieceLb), 0),
    areaSqFt: areas.length === 0 ? null : areas.reduce((sum, areaSqFt) => sum + areaSqFt, 0),
    pieces,
  };
}

function looseOf(thing: HauledThing, weightLb: number): number {
  return volumeOfWeightCuYd(weightLb, lbPerCuFtToLbPerCuYd(thing.looseLbPerCuFt));
}
