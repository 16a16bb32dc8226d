/**
 * Ground that a fabric covers below a base: the area of the base, and the sides of its box, which
 * are as high as the base is thick. What stands double in the corners of the box is not counted.
 *
 * @param box.baseAreaSqFt [sq ft], 0 or more.
 * @param box.perimeterFt  Round the slab [ft], 0 or more.
 * @param box.baseIn       [in], 0 or more.
 * @throws {RangeError} If a value is below 0 or not finite.
 *
 * A_f = A + (b / 12) P. Source: masonry trade magazine, April 2007, p. 52 (seen): geotextile over
 * clay or silt without wrinkles, laps of at least 12 in, the sides of the box covered.
 */
export function fabricAreaSqFt(box: {
  readonly baseAreaSqFt: number;
  readonly perimeterFt: number;
  readonly baseIn: number;
}): number {
  for (const [name, value] of Object.entries(box)) {
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
  return box.baseAreaSqFt + (box.baseIn / 12) * box.perimeterFt;
}

/**
 * Fabric off the roll for an area: every width and every length of a roll loses a lap to the next
 * piece. A strip that needs no neighbour loses nothing, so this is never too little as long as what
 * is cut off is used.
 *
 * @param cover.lapIn [in], 0 or more and below both sides of the roll.
 * @throws {RangeError} If a value is outside its range.
 *
 * A w / (w - l) L / (L - l). Source: geometry.
 */
export function withLapsSqFt(cover: {
  readonly areaSqFt: number;
  readonly rollWidthIn: number;
  readonly rollLengthIn: number;
  readonly lapIn: number;
}): number {
  const { areaSqFt, rollWidthIn, rollLengthIn, lapIn } = cover;
  if (!(areaSqFt >= 0 && areaSqFt < Infinity)) {
    throw new RangeError(`areaSqFt must be 0 or more, got ${areaSqFt}`);
  }
  const leastIn = Math.min(rollWidthIn, rollLengthIn);
  if (!(lapIn >= 0 && lapIn < leastIn && Math.max(rollWidthIn, rollLengthIn) < Infinity)) {
    throw new RangeError(`lapIn must be 0 or more and below the roll of ${leastIn}, got ${lapIn}`);
  }
  return (((areaSqFt * rollWidthIn) / (rollWidthIn - lapIn)) * rollLengthIn) / (rollLengthIn - lapIn);
}
