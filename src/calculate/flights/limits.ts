import { type Constant, constant } from '../figure.ts';

/** A riser of a dwelling is no higher [in]. */
export const RISER_MOST_IN = 7.75;
/** The highest riser of a flight is no further above the lowest [in]. */
export const RISER_SPREAD_IN = 3 / 8;

/*
 * Limits of a model code as inputs of figures that say how far something may move. What is held against
 * them, and how gravely, are rules; the code of the place decides.
 */
export const RISER_MOST: Constant = constant(
  'highest riser',
  RISER_MOST_IN,
  'in',
  'International Residential Code 2018, R311.7.5.1, risers of 7 3/4 in at most (seen as quoted on a page of a county); the local code decides',
);

export const RISER_SPREAD: Constant = constant(
  'difference of risers',
  RISER_SPREAD_IN,
  'in',
  'International Residential Code, R311.7.5.1, risers of a flight within 3/8 in of each other (from memory); the local code decides',
);

/** The noise of a chain of doubles [in]. */
const NOISE_IN = 1e-9;

/** Whether no riser is too high, and none too far above another; risers on a limit are even. */
export function isEven(risersIn: readonly number[]): boolean {
  if (risersIn.length === 0) return true;
  const [highestIn, lowestIn] = [Math.max(...risersIn), Math.min(...risersIn)];
  return highestIn <= RISER_MOST_IN + NOISE_IN && highestIn - lowestIn <= RISER_SPREAD_IN + NOISE_IN;
}
