import { COMMON_PRACTICE, constant, type Figure, figure, type Given, given, num } from '../figure.ts';
import type { Existing } from '../job.ts';

/** How much thicker than assumed a slab may turn out where nobody says; common practice, no source. */
const MAY_BE_THICKER_IN = 1;

/**
 * The thickness that loads are planned for [in]: where it is assumed, the most it may be.
 *
 * @param thicknessIn As stated.
 */
export function loadThicknessFigure({ id, thicknessIs, thickestIn }: Existing, thicknessIn: Given): Figure {
  const shown = { unit: 'in', decimals: 2 } as const;
  if (thicknessIs === 'measured') {
    return figure({ value: num(thicknessIn), ...shown, formula: 'thicknessIn', inputs: { thicknessIn } });
  }
  if (thickestIn !== null) {
    const thickest = given(`site.existing.${id}.thickest`, thickestIn, 'in');
    // Thinner than the thickness is a problem of its own; until then nothing is planned below it.
    return figure({
      value: Math.max(num(thicknessIn), thickestIn),
      ...shown,
      formula: 'max(thicknessIn, thickestIn)',
      inputs: { thicknessIn, thickestIn: thickest },
      source: COMMON_PRACTICE,
    });
  }
  return figure({
    value: num(thicknessIn) + MAY_BE_THICKER_IN,
    ...shown,
    formula: 'thicknessIn + thickerIn',
    inputs: {
      thicknessIn,
      thickerIn: constant('may be thicker than assumed by', MAY_BE_THICKER_IN, 'in', COMMON_PRACTICE),
    },
    source: COMMON_PRACTICE,
  });
}
