import type { DumpPlace } from '../job.ts';

/** A broken piece, in whatever way it lies [in]. */
export type Piece = { readonly lengthIn: number; readonly widthIn: number; readonly thicknessIn: number };

/**
 * Whether a place takes a piece of this size: turned as it may be, two of its sides go into the
 * longest side that the place takes, and the least into its thickness.
 *
 * @param piece Its three sides [in], each above 0, in any order.
 * @param limit Longest side and greatest thickness that the place takes [in], above 0.
 * @throws {RangeError} If a size is not a length above 0.
 *
 * Source: the form in which yards state the limit, as 2 ft x 2 ft x 8 in (private quarry terms,
 * olivespringsquarry.net, seen).
 *
 * @example pieceFits({ lengthIn: 24, widthIn: 24, thicknessIn: 9 }, { sideIn: 24, thicknessIn: 8 }) // false
 */
export function pieceFits(piece: Piece, limit: NonNullable<DumpPlace['largestPiece']>): boolean {
  const sidesIn = [piece.lengthIn, piece.widthIn, piece.thicknessIn];
  const limitsIn = [limit.sideIn, limit.sideIn, limit.thicknessIn];
  for (const sizeIn of [...sidesIn, ...limitsIn]) {
    if (!(sizeIn > 0 && sizeIn < Infinity)) throw new RangeError(`a size must be above 0 in, got ${sizeIn}`);
  }
  // Longest against longest: if any way of turning a box fits it into another, this one does.
  const [sorted, room] = [sidesIn, limitsIn].map((list) => list.toSorted((one, other) => one - other));
  return sorted?.every((sideIn, index) => sideIn <= (room?.[index] ?? 0)) ?? false;
}
