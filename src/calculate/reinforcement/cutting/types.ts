/**
 * Lengths in whole steps of what a tape is read to, so that sums are exact.
 *
 * Each piece is taken longer by the saw cut behind it, and so is each stock bar: the last piece of a bar that
 * is cut to its end needs none.
 */
export type Cutting = {
  /** Different, longest first; each above 0. */
  readonly sizes: readonly number[];
  /** How many of each size, 1 or more. */
  readonly counts: readonly number[];
  /** Different, longest first; the longest takes every size. */
  readonly stocks: readonly Stock[];
};

/** What a stock bar holds, saw cut included, and what it is long. */
export type Stock = { readonly holds: number; readonly length: number };

/** One stock bar that is cut: of each size how many. */
export type Cut = { readonly stock: Stock; readonly takes: readonly number[] };

export function lengthOf(cuts: readonly Cut[]): number {
  return cuts.reduce((sum, { stock }) => sum + stock.length, 0);
}

/** What pieces take of a bar, saw cuts included. */
export function takenBy(takes: readonly number[], sizes: readonly number[]): number {
  return takes.reduce((sum, count, index) => sum + count * (sizes[index] ?? 0), 0);
}
