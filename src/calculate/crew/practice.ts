import type { Steel } from '../job.ts';

/**
 * How much longer a slab with steel takes to break out than a plain one of the same size.
 *
 * Planning Planet, wiki page "Breaking out" (seen), slabs of 50 to 150 mm, labor hours a m³:
 * plain 3.2 slow and 1.9 fast, reinforced 5.2 slow and 3.9 fast, so 5.2/3.2 = 1.6 and
 * 3.9/1.9 = 2.05. The page does not part mesh from bars: that the smaller ratio stands for
 * mesh and the larger for bars is our reading (common practice).
 */
export const BREAK_OUT_RATIO: Readonly<Record<Steel, number>> = { none: 1, mesh: 1.6, bars: 2.05 };
export const BREAK_OUT_SOURCE =
  'Planning Planet, wiki "Breaking out", slabs 50-150 mm, reinforced over plain, slow and fast (seen); which of the two is mesh: common practice, no source';

/** The thickness that the pace of breaking out is given for [in]. */
export const BREAK_OUT_PACE_IN = 4;
