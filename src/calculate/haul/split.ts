import { lbPerCuFtToLbPerCuYd } from '../../units/index.ts';
import { volumeOfWeightCuYd } from './load-count.ts';

/** Something of a stream that is loaded; in the order in which it is loaded. */
export type HauledThing = {
  /** Id of the existing thing; null for soil dug out under a slab. */
  readonly existingId: string | null;
  readonly weightLb: number;
  readonly looseLbPerCuFt: number;
  /** Null where it is not loaded by the square foot. */
  readonly weightLbPerSqFt: number | null;
};

/** What of one stream is on a load. */
export type LoadPart = {
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

/** Of a load: weight less than this is noise. */
const NOISE_LB = 2 ** -20;

/** Things on loads of these weights, one after the other: one thing may be split over loads. */
export function inOrder(things: readonly HauledThing[], weightsLb: readonly number[]): readonly LoadPart[] {
  const left = things.map((thing) => ({ thing, weightLb: thing.weightLb }));
  return weightsLb.map((weightLb) => {
    const pieces: Taken[] = [];
    let needLb = weightLb;
    for (let next = left[0]; next !== undefined && needLb > 0; next = left[0]) {
      const lastThing = left.length === 1;
      const takenLb = lastThing ? needLb : Math.min(next.weightLb, needLb);
      if (takenLb > 0) pieces.push({ thing: next.thing, weightLb: takenLb });
      needLb -= takenLb;
      next.weightLb -= takenLb;
      if (lastThing) break;
      if (next.weightLb <= NOISE_LB) left.shift();
    }
    return partOf(weightLb, pieces);
  });
}

/** Things on loads of these weights, of every thing its share on each: none is looser than the mean. */
export function inProportion(
  things: readonly HauledThing[],
  weightsLb: readonly number[],
): readonly LoadPart[] {
  const allLb = things.reduce((sum, thing) => sum + thing.weightLb, 0);
  return weightsLb.map((weightLb) =>
    partOf(
      weightLb,
      things.map((thing) => ({ thing, weightLb: (thing.weightLb / allLb) * weightLb })),
    ),
  );
}

type Taken = { readonly thing: HauledThing; readonly weightLb: number };

function partOf(weightLb: number, taken: readonly Taken[]): LoadPart {
  const pieces = taken.map(
    ({ thing, weightLb: pieceLb }): LoadPiece => ({
      existingId: thing.existingId,
      areaSqFt: thing.weightLbPerSqFt === null ? null : pieceLb / thing.weightLbPerSqFt,
      weightLb: pieceLb,
    }),
  );
  return {
    weightLb,
    looseCuYd: taken.reduce((sum, { thing, weightLb: pieceLb }) => sum + looseOf(thing, pieceLb), 0),
    areaSqFt: areaOf(pieces),
    pieces,
  };
}

/** Of everything that is loaded by the square foot; null where nothing is. */
export function areaOf(pieces: readonly LoadPiece[]): number | null {
  const areas = pieces.flatMap(({ areaSqFt }) => (areaSqFt === null ? [] : [areaSqFt]));
  return areas.length === 0 ? null : areas.reduce((sum, areaSqFt) => sum + areaSqFt, 0);
}

function looseOf(thing: HauledThing, weightLb: number): number {
  return volumeOfWeightCuYd(weightLb, lbPerCuFtToLbPerCuYd(thing.looseLbPerCuFt));
}
