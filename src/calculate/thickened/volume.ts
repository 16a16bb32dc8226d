/**
 * Concrete below the underside of a slab along thickened edges, between the flat bottom and where the
 * taper ends.
 *
 * @param edge.extraIn        How much deeper than the slab [in], 0 or more.
 * @param edge.bottomSqFt     Area of the flat bottom [sq ft], 0 or more.
 * @param edge.middleSqFt     Area of the level half way up.
 * @param edge.topSqFt        Area at the underside of the slab.
 * @returns [cu ft]
 * @throws {RangeError} If a value is below 0 or not finite.
 *
 * V = h (A_bottom + 4 A_middle + A_top) / 6. Source: prismoidal formula, as handbooks of surveying print
 * it for earthwork (from memory); exact where the width grows evenly and corners stay corners.
 *
 * @example thickenedCuFt({ extraIn: 6, bottomSqFt: 10, middleSqFt: 10, topSqFt: 10 }) // 5
 */
export function thickenedCuFt(edge: {
  extraIn: number;
  bottomSqFt: number;
  middleSqFt: number;
  topSqFt: number;
}): number {
  for (const [name, value] of Object.entries(edge)) {
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
  const { extraIn, bottomSqFt, middleSqFt, topSqFt } = edge;
  return ((extraIn / 12) * (bottomSqFt + 4 * middleSqFt + topSqFt)) / 6;
}
