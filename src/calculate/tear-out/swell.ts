/*
 * Three states of one yard: in place, loose in a box, compacted. Weight is the same in all three
 * at the same moisture. "Swell factor" means 1 + s in one book and 1 / (1 + s) in another, so
 * that only the plain ratio s is kept here.
 */

/**
 * By how much a material grows when it is broken out or dug.
 *
 * @param weights.inPlace Unit weight in place, above 0 [any unit].
 * @param weights.loose   Unit weight loose, above 0 [the same unit].
 * @returns Share of the volume in place; 0.6 makes 1.6 loose yards of a yard in place.
 * @throws {RangeError} If a unit weight is not above 0.
 *
 * s = gB / gL - 1, with gB in place, gL loose.
 * Source: "Earth Quantities Hauled", engineeringcivil.com (seen).
 */
export function swellRatio(weights: { readonly inPlace: number; readonly loose: number }): number {
  const { inPlace, loose } = weights;
  if (!(inPlace > 0 && loose > 0)) {
    throw new RangeError(`unit weights must be above 0, got ${inPlace} in place and ${loose} loose`);
  }
  return inPlace / loose - 1;
}

/**
 * Loose unit weight over unit weight in place: LF = 1 / (1 + s).
 *
 * @throws {RangeError} If the swell is not above -1.
 *
 * Source: "Earth Quantities Hauled", engineeringcivil.com (seen).
 */
export function loadFactor(swell: number): number {
  if (!(swell > -1)) throw new RangeError(`a swell must be above -1, got ${swell}`);
  return 1 / (1 + swell);
}

/**
 * Loose volume of a volume in place: V_L = V_B (1 + s). For the box and for a fee by the yard
 * only; weight never comes from it.
 *
 * @returns In the unit of the volume given.
 * @throws {RangeError} If the volume is below 0 or the swell is not above -1.
 */
export function looseVolume(volumeInPlace: number, swell: number): number {
  if (!(volumeInPlace >= 0)) throw new RangeError(`a volume must be 0 or more, got ${volumeInPlace}`);
  if (!(swell > -1)) throw new RangeError(`a swell must be above -1, got ${swell}`);
  return volumeInPlace * (1 + swell);
}
