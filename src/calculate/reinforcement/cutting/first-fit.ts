import { type Cut, type Cutting, lengthOf, type Stock, takenBy } from './types.ts';

/**
 * The shortest of some plans made without search: for each stock length the pieces longest first, each from
 * the first bar with room (first fit decreasing), a bar of that length or of the next longer one where it is
 * too short; then every bar as short as what is cut from it allows.
 *
 * Source: D. S. Johnson, "Near-optimal bin packing algorithms", MIT, 1973 (memory), for one stock length:
 * never more than 11/9 of the fewest, and some.
 */
export function firstFit(cutting: Cutting): readonly Cut[] {
  const plans = cutting.stocks.map((stock) => firstFitFrom(cutting, stock));
  return plans.reduce((best, plan) => (lengthOf(plan) < lengthOf(best) ? plan : best));
}

/** First fit decreasing from bars of one length where they are long enough, each then as short as it can be. */
export function firstFitFrom({ sizes, counts, stocks }: Cutting, preferred: Stock): readonly Cut[] {
  const open: { readonly takes: number[]; left: number }[] = [];
  for (const [index, size] of sizes.entries()) {
    for (let made = 0; made < (counts[index] ?? 0); made += 1) {
      let bar = open.find(({ left }) => size <= left);
      if (bar === undefined) {
        bar = { takes: sizes.map(() => 0), left: shortestFor(size, stocks, preferred).holds };
        open.push(bar);
      }
      bar.takes[index] = (bar.takes[index] ?? 0) + 1;
      bar.left -= size;
    }
  }
  return open.map(({ takes }) => ({ stock: shortestFor(takenBy(takes, sizes), stocks), takes }));
}

/**
 * The shortest stock bar that holds so much, not shorter than a preferred one.
 * @throws {RangeError} If none does.
 */
export function shortestFor(size: number, stocks: readonly Stock[], preferred?: Stock): Stock {
  const fit = stocks.filter(({ holds }) => holds >= size && holds >= (preferred?.holds ?? 0));
  const shortest = fit.at(-1);
  if (shortest === undefined) throw new RangeError(`no stock bar holds ${size}`);
  return shortest;
}
