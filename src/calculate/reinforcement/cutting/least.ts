import type { Cutting, Stock } from './types.ts';

/**
 * A length of stock below which no plan for some of the pieces can be, in a form that is asked often.
 *
 * Two bounds, the larger one holds. One is the shortest stock that holds the sum of the pieces. The other, for
 * one stock length only, counts pieces that cannot share a bar: S. Martello and P. Toth, "Knapsack Problems",
 * Wiley, 1990, bound L2 of chapter 8 (memory).
 */
export function leastLength({ sizes, counts, stocks }: Cutting): (left: readonly number[]) => number {
  const most = sizes.reduce((sum, size, index) => sum + size * (counts[index] ?? 0), 0);
  const shortest = shortestHolding(most, stocks);
  const [only, ...others] = stocks;
  return (left) => {
    const sum = left.reduce((total, count, index) => total + count * (sizes[index] ?? 0), 0);
    const bySum = shortest[sum] ?? 0;
    if (only === undefined || others.length > 0) return bySum;
    return Math.max(bySum, barsApart(left, sizes, only.holds) * only.length);
  };
}

/** For every sum up to the most, the least length of stock bars that together hold it. */
function shortestHolding(most: number, stocks: readonly Stock[]): Float64Array {
  const shortest = new Float64Array(most + 1);
  for (let sum = 1; sum <= most; sum += 1) {
    let best = Infinity;
    for (const { holds, length } of stocks) {
      best = Math.min(best, length + (shortest[Math.max(0, sum - holds)] ?? 0));
    }
    shortest[sum] = best;
  }
  return shortest;
}

/**
 * Bars that pieces need since the long ones cannot share one: for each piece of at most half a bar as the
 * smallest that counts, those above half a bar, and what of the smaller ones has no room behind them.
 */
function barsApart(left: readonly number[], sizes: readonly number[], holds: number): number {
  let best = 0;
  const smallest = [0, ...sizes.filter((size, index) => (left[index] ?? 0) > 0 && 2 * size <= holds)];
  for (const least of smallest) {
    let alone = 0;
    let large = 0;
    let roomBehind = 0;
    let small = 0;
    for (const [index, size] of sizes.entries()) {
      const count = left[index] ?? 0;
      if (size > holds - least) alone += count;
      else if (2 * size > holds) {
        large += count;
        roomBehind += count * (holds - size);
      } else if (size >= least) small += count * size;
    }
    best = Math.max(best, alone + large + Math.max(0, Math.ceil((small - roomBehind) / holds)));
  }
  return best;
}
