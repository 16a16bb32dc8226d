import { cuFtToCuYd, cuYdToCuFt, lbToTon } from '../../units/index.ts';

/**
 * Area the base is laid over: the slab, and a working margin outside its formed edges, so that
 * form and stakes stand on base. The little squares where two margins meet are not counted.
 *
 * @returns [sq ft].
 * @throws {RangeError} If a value is below 0 or not a number.
 *
 * A = A_slab + (m / 12) L. Common practice, no source.
 */
export function baseAreaSqFt(slab: {
  readonly areaSqFt: number;
  readonly formedStraightFt: number;
  readonly formedCurvedFt: number;
  readonly marginIn: number;
}): number {
  const { areaSqFt, formedStraightFt, formedCurvedFt, marginIn } = slab;
  for (const [name, value] of Object.entries(slab)) {
    if (!(value >= 0)) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
  return areaSqFt + (marginIn / 12) * (formedStraightFt + formedCurvedFt);
}

/**
 * Compacted volume of a layer: V = A t / (12 x 27).
 *
 * @returns [yd3].
 * @throws {RangeError} If the area is below 0 or the thickness is not above 0.
 */
export function compactedCuYd(layer: { readonly areaSqFt: number; readonly thicknessIn: number }): number {
  const { areaSqFt, thicknessIn } = layer;
  if (!(areaSqFt >= 0)) throw new RangeError(`areaSqFt must be 0 or more, got ${areaSqFt}`);
  if (!(thicknessIn > 0)) throw new RangeError(`thicknessIn must be above 0, got ${thicknessIn}`);
  return cuFtToCuYd((areaSqFt * thicknessIn) / 12);
}

/**
 * Loose volume that makes a compacted volume: V_L = V_C f. Common practice, no source: f is 1.15
 * to 1.35 for crushed base.
 *
 * @param looseOverCompacted 1 or more.
 * @throws {RangeError} If the ratio is below 1: nothing gets larger by compacting.
 */
export function looseCuYd(volumeCompactedCuYd: number, looseOverCompacted: number): number {
  if (!(looseOverCompacted >= 1)) {
    throw new RangeError(`looseOverCompacted must be 1 or more, got ${looseOverCompacted}`);
  }
  return volumeCompactedCuYd * looseOverCompacted;
}

/**
 * Tons of a compacted volume, by the unit weight it has compacted and moist, as sold; moisture is
 * in that weight and is not added again.
 *
 * @returns Short tons.
 * @throws {RangeError} If the unit weight is not above 0.
 */
export function baseTon(volumeCompactedCuYd: number, compactedLbPerCuFt: number): number {
  if (!(compactedLbPerCuFt > 0)) {
    throw new RangeError(`compactedLbPerCuFt must be above 0, got ${compactedLbPerCuFt}`);
  }
  return lbToTon(cuYdToCuFt(volumeCompactedCuYd) * compactedLbPerCuFt);
}

/**
 * Unit weight of the same base loose. The two unit weights and the ratio of the volumes are two
 * free numbers, not three: g_L = g_C / f, since the weight stays.
 *
 * @returns [lb/cu ft].
 * @throws {RangeError} If the ratio is below 1 or the unit weight is not above 0.
 */
export function looseUnitWeightLbPerCuFt(compactedLbPerCuFt: number, looseOverCompacted: number): number {
  if (!(compactedLbPerCuFt > 0)) {
    throw new RangeError(`compactedLbPerCuFt must be above 0, got ${compactedLbPerCuFt}`);
  }
  if (!(looseOverCompacted >= 1)) {
    throw new RangeError(`looseOverCompacted must be 1 or more, got ${looseOverCompacted}`);
  }
  return compactedLbPerCuFt / looseOverCompacted;
}
