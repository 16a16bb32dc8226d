import type { Fall } from '../../calculate/grades/index.ts';

/** Of a slab's falls those are drawn that are on a larger share of it. */
const LEAST_SHARE_DRAWN = 0.1;

/** Where arrows are drawn on a slab: one for each part that leans its own way, the small ones left out. */
export function drawnFalls(falls: readonly Fall[]): readonly Fall[] {
  const wholeSqIn = falls.reduce((sum, { areaSqIn }) => sum + areaSqIn, 0);
  return falls.filter(({ areaSqIn }) => areaSqIn >= LEAST_SHARE_DRAWN * wholeSqIn);
}
