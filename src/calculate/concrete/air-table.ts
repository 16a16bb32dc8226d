import type { Exposure } from '../job.ts';

/*
 * Total air content of concrete exposed to freezing, by the largest stone [in, ratio].
 *
 * ACI 318-19 Table 19.3.3.1, exposure classes F2 and F3 (from memory); flatwork is wetted often, so
 * freezing is F2. The tolerance of delivered concrete is 1.5 points either way, ASTM C94 and the note of
 * the same table (from memory). IRC Table R402.2, note d, has 5 to 7 % for any stone (seen).
 */
const rows = [
  { aggregateIn: 3 / 8, airRatio: 0.075 },
  { aggregateIn: 1 / 2, airRatio: 0.07 },
  { aggregateIn: 3 / 4, airRatio: 0.06 },
  { aggregateIn: 1, airRatio: 0.06 },
  { aggregateIn: 3 / 2, airRatio: 0.055 },
  { aggregateIn: 2, airRatio: 0.05 },
  { aggregateIn: 3, airRatio: 0.045 },
] as const;

/*
 * The ranges of UFGS 03311, Table 3 (seen), [in, least ratio, most ratio].
 */
const ranges = [
  { aggregateIn: 3 / 8, leastRatio: 0.06, mostRatio: 0.1 },
  { aggregateIn: 1 / 2, leastRatio: 0.05, mostRatio: 0.09 },
  { aggregateIn: 3 / 4, leastRatio: 0.04, mostRatio: 0.08 },
  { aggregateIn: 1, leastRatio: 0.035, mostRatio: 0.065 },
  { aggregateIn: 3 / 2, leastRatio: 0.03, mostRatio: 0.06 },
  { aggregateIn: 2, leastRatio: 0.025, mostRatio: 0.055 },
] as const;

export const AIR_SOURCE =
  'ACI 318-19 Table 19.3.3.1, classes F2 and F3 (from memory); IRC Table R402.2, note d, 5 to 7 % (seen)';

/** What delivered air may differ from what was ordered, either way [ratio]. */
export const AIR_TOLERANCE_RATIO = 0.015;
export const AIR_TOLERANCE_SOURCE = 'ASTM C94, tolerance of air content, 1.5 points (from memory)';

/**
 * Air to order for an exposure; null where nothing freezes.
 *
 * @param aggregateIn Largest stone [in], above 0. Between two rows the smaller stone counts, which has more
 *                    air; below the first row the first, above the last one the last.
 * @throws {RangeError} If the size is not above 0.
 */
export function airTarget(aggregateIn: number, exposure: Exposure): number | null {
  if (exposure === 'no-freezing') return null;
  return rowFor(rows, aggregateIn).airRatio;
}

/**
 * The range of UFGS 03311 for a stone.
 *
 * @throws {RangeError} As `airTarget`.
 */
export function airRange(aggregateIn: number): { readonly leastRatio: number; readonly mostRatio: number } {
  const { leastRatio, mostRatio } = rowFor(ranges, aggregateIn);
  return { leastRatio, mostRatio };
}

function rowFor<T extends { readonly aggregateIn: number }>(table: readonly T[], aggregateIn: number): T {
  if (!(aggregateIn > 0 && aggregateIn < Infinity))
    throw new RangeError(`aggregateIn must be above 0, got ${aggregateIn}`);
  const row = table.findLast((one) => one.aggregateIn <= aggregateIn) ?? table[0];
  if (row === undefined) throw new Error('a table has rows');
  return row;
}
