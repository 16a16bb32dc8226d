import type { Cut, Stock } from './types.ts';

/** Steps that a search may still take; shared by all of its parts, and counted down. */
export type Budget = { stepsLeft: number };

/**
 * Every way to fill a stock bar that holds one piece of a size so that no other piece left would fit behind.
 * Some only, once the steps are used up.
 *
 * @param made.longest Index of the size that has to be in it; no longer one is taken.
 */
export function fullBars(made: {
  readonly left: readonly number[];
  readonly sizes: readonly number[];
  readonly longest: number;
  readonly stock: Stock;
  readonly budget: Budget;
}): readonly Cut[] {
  const { left, sizes, longest, stock, budget } = made;
  const takes = sizes.map(() => 0);
  const found: Cut[] = [];

  /** @param smallestLeftOut The smallest size of which a piece stays out; longer sizes come first. */
  const fill = (from: number, room: number, smallestLeftOut: number): void => {
    budget.stepsLeft -= 1;
    if (budget.stepsLeft < 0) return;
    const size = sizes[from];
    if (size === undefined) {
      if (room < smallestLeftOut) found.push({ stock, takes: [...takes] });
      return;
    }
    const there = left[from] ?? 0;
    const least = from === longest ? 1 : 0;
    for (let count = Math.min(there, Math.floor(room / size)); count >= least; count -= 1) {
      takes[from] = count;
      fill(from + 1, room - count * size, count < there ? size : smallestLeftOut);
    }
    takes[from] = 0;
  };
  fill(longest, stock.holds, Infinity);
  return found;
}
