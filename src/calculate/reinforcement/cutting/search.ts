import { type Budget, fullBars } from './fill-bar.ts';
import { firstFit } from './first-fit.ts';
import { leastLength } from './least.ts';
import { type Cut, type Cutting, lengthOf, takenBy } from './types.ts';

/** A bound of steps, not of time, so that each machine finds the same plan. */
const MOST_STEPS = 100_000;

export type Found = {
  readonly cuts: readonly Cut[];
  /** Whether no plan buys less: the bound is met, or every plan that could be better was tried. */
  readonly isLeast: boolean;
};

/**
 * The plan that buys the least length of stock, by branch and bound: the longest piece left is cut from some
 * bar, and from the same bar whatever else, until no other piece left would fit behind. Starts from first fit,
 * so it is never longer than that.
 *
 * Where `isLeast`, it is exact: of any least plan pieces can be moved into the bar of the longest piece until
 * none fits any more, and no bar gets longer by that.
 */
export function leastPlan(cutting: Cutting): Found {
  const start = firstFit(cutting);
  const least = leastLength(cutting);
  if (lengthOf(start) <= least(cutting.counts)) return { cuts: start, isLeast: true };

  let best = { cuts: start, length: lengthOf(start) };
  const budget: Budget = { stepsLeft: MOST_STEPS };
  /** The shortest length at which the same pieces were left before. */
  const seen = new Map<string, number>();

  const tryAll = (left: readonly number[], made: readonly Cut[], length: number): void => {
    const longest = left.findIndex((count) => count > 0);
    if (longest < 0) {
      best = { cuts: made, length };
      return;
    }
    const key = left.join(' ');
    if ((seen.get(key) ?? Infinity) <= length) return;
    seen.set(key, length);
    for (const cut of waysToCut(left, longest, cutting, budget)) {
      const rest = left.map((count, index) => count - (cut.takes[index] ?? 0));
      const restLength = length + cut.stock.length;
      budget.stepsLeft -= rest.length;
      if (restLength + least(rest) < best.length) tryAll(rest, [...made, cut], restLength);
      if (budget.stepsLeft < 0) return;
    }
  };
  tryAll(cutting.counts, [], 0);
  return { cuts: best.cuts, isLeast: budget.stepsLeft >= 0 };
}

/** Fullest first, by the share of the bar that is left over. */
function waysToCut(
  left: readonly number[],
  longest: number,
  { sizes, stocks }: Cutting,
  budget: Budget,
): readonly Cut[] {
  const overRatio = ({ stock, takes }: Cut) => (stock.holds - takenBy(takes, sizes)) / stock.length;
  return stocks
    .filter(({ holds }) => holds >= (sizes[longest] ?? 0))
    .flatMap((stock) => fullBars({ left, sizes, longest, stock, budget }))
    .sort((one, other) => overRatio(one) - overRatio(other));
}
