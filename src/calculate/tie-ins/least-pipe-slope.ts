import { type Constant, constant } from '../figure.ts';

const SOURCE =
  'Chicago Plumbing Code, Table 18-29-704.1, slope of horizontal drainage pipe by its size, as in the International Plumbing Code (seen); the local code decides';

/** Sizes up to which a slope holds [in], with that slope [in per ft]; larger ones take the last. */
const ROWS = [
  { mostIn: 2.5, inPerFt: 1 / 4 },
  // From 2 1/2 in to the next size of the table, 3 in, the steeper one holds.
  { mostIn: 3, inPerFt: 1 / 4, isBelow: true },
  { mostIn: 8, inPerFt: 1 / 8, isBelow: true },
] as const;
const LARGEST_IN_PER_FT = 1 / 16;

/**
 * The least slope of a drain pipe [rise over run]: 1/4 in per ft up to 2 1/2 in, 1/8 from 3 to 6 in, 1/16 from
 * 8 in. Between two sizes of the table the steeper one holds.
 *
 * @param sizeIn Inside diameter [in], above 0.
 * @throws {RangeError} If the size is not above 0.
 */
export function leastPipeSlope(sizeIn: number): Constant {
  if (!(sizeIn > 0)) throw new RangeError(`sizeIn must be above 0, got ${sizeIn}`);
  const row = ROWS.find(({ mostIn, ...more }) => ('isBelow' in more ? sizeIn < mostIn : sizeIn <= mostIn));
  return constant('least slope of a pipe', (row?.inPerFt ?? LARGEST_IN_PER_FT) / 12, 'ratio', SOURCE);
}
