import { ceilCount } from '../../units/index.ts';

/**
 * Lifts of a layer, each at most so thick when compacted: n = ceil(t / t_most).
 *
 * @returns Whole lifts, at least 1.
 * @throws {RangeError} If a thickness is not above 0.
 */
export function liftCount(layer: { readonly thicknessIn: number; readonly mostIn: number }): number {
  const { thicknessIn, mostIn } = layer;
  if (!(thicknessIn > 0)) throw new RangeError(`thicknessIn must be above 0, got ${thicknessIn}`);
  if (!(mostIn > 0)) throw new RangeError(`mostIn must be above 0, got ${mostIn}`);
  return ceilCount(thicknessIn / mostIn);
}

/**
 * Area that a compactor finishes in an hour: each strip lies over the one before by the overlap,
 * and every place is gone over so many times.
 *
 * @param compactor.overlapIn       Less than its width [in].
 * @param compactor.travelFtPerHr   While it runs [ft/h].
 * @param compactor.efficiencyRatio Share of an hour that it runs, above 0 to 1.
 * @param compactor.passes          In all directions together, at least 1.
 * @returns [sq ft/h].
 * @throws {RangeError} If a value is outside its range or not a number.
 *
 * r = ((w - o) / 12) v E / P. By a lift of so many inches it is the output in volume that
 * US Army FM 5-434 (2000), chapter 11, gives as 16.3 W S L E / P (memory).
 */
export function compactedSqFtPerHr(compactor: {
  readonly widthIn: number;
  readonly overlapIn: number;
  readonly travelFtPerHr: number;
  readonly efficiencyRatio: number;
  readonly passes: number;
}): number {
  const { widthIn, overlapIn, travelFtPerHr, efficiencyRatio, passes } = compactor;
  if (!(overlapIn >= 0)) throw new RangeError(`overlapIn must be 0 or more, got ${overlapIn}`);
  if (!(widthIn > overlapIn)) {
    throw new RangeError(`widthIn must be above the overlap of ${overlapIn}, got ${widthIn}`);
  }
  if (!(travelFtPerHr > 0)) throw new RangeError(`travelFtPerHr must be above 0, got ${travelFtPerHr}`);
  if (!(efficiencyRatio > 0 && efficiencyRatio <= 1)) {
    throw new RangeError(`efficiencyRatio must be above 0 to 1, got ${efficiencyRatio}`);
  }
  if (!(passes >= 1)) throw new RangeError(`passes must be 1 or more, got ${passes}`);
  return (((widthIn - overlapIn) / 12) * travelFtPerHr * efficiencyRatio) / passes;
}

/**
 * Hours of a compactor on a base: T = A n / r.
 *
 * @param base.lifts    At least 1.
 * @param base.sqFtPerHr As of `compactedSqFtPerHr`, above 0.
 * @returns Machine hours [h].
 * @throws {RangeError} If a value is outside its range or not a number.
 */
export function plateHr(base: {
  readonly areaSqFt: number;
  readonly lifts: number;
  readonly sqFtPerHr: number;
}): number {
  const { areaSqFt, lifts, sqFtPerHr } = base;
  if (!(areaSqFt >= 0)) throw new RangeError(`areaSqFt must be 0 or more, got ${areaSqFt}`);
  if (!(lifts >= 1)) throw new RangeError(`lifts must be 1 or more, got ${lifts}`);
  if (!(sqFtPerHr > 0)) throw new RangeError(`sqFtPerHr must be above 0, got ${sqFtPerHr}`);
  return (areaSqFt * lifts) / sqFtPerHr;
}
