import type { Bounds } from './bounds.ts';

/** The first look goes this part of the way to a plan that is known; where none is, of what all costs at the least. */
const FIRST_LOOK = 1 / 32;

/**
 * The best way, looked for close to the cheapest there might be and then twice as far. A way that is no
 * further from it than was looked is the best of all; one that is further says how far to look.
 *
 * @param bestWithin The best of the ways all parts of which are so close to the cheapest; null where there is none.
 */
export function closestOf<T extends { readonly key: number }>(
  bestWithin: (slackKey: number) => T | null,
  { slackKey: knownKey, sumKey, noiseKey }: Bounds,
): T | null {
  let mostKey = knownKey;
  let slackKey = Math.max(noiseKey, FIRST_LOOK * (Number.isFinite(knownKey) ? knownKey : sumKey));
  while (slackKey < mostKey) {
    const best = bestWithin(slackKey);
    if (best !== null) mostKey = Math.min(mostKey, best.key - sumKey + noiseKey);
    if (best !== null && mostKey <= slackKey) return best;
    slackKey = slackKey > sumKey ? Number.POSITIVE_INFINITY : 2 * slackKey;
  }
  return bestWithin(mostKey);
}
