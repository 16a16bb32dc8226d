export const SLUMP_SOURCE =
  'ASTM C94, tolerance of a slump ordered as such: 1/2 in up to 2 in, 1 in up to 4 in, 1 1/2 in above (from memory)';

/**
 * How far a delivered slump may be from the one that was ordered, either way [in].
 *
 * @param slumpIn Ordered [in], 0 or more.
 * @throws {RangeError} If it is below 0 or no number.
 *
 * Source: ASTM C94, Table 2 (from memory).
 */
export function slumpToleranceIn(slumpIn: number): number {
  if (!(slumpIn >= 0)) throw new RangeError(`slumpIn must be 0 or more, got ${slumpIn}`);
  if (slumpIn <= 2) return 0.5;
  return slumpIn <= 4 ? 1 : 1.5;
}
