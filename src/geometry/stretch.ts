import type { Outline } from './outline.ts';
import { straightened } from './tessellate.ts';

/** How far the chords of a stretched arc may be from it [in]: 1/64 in, finer than any form is set. */
const OFF_ARC_IN = 1 / 64;

/**
 * The outline stretched along x and across it, from the origin.
 *
 * Straight edges stay exact. Where the two ratios differ, an arc is no arc of a circle any more and
 * becomes chords of its kind; the area is that of the outline times both ratios to the last digits.
 *
 * @param ratios.alongRatio  Of every x, above 0.
 * @param ratios.acrossRatio Of every y, above 0.
 * @throws {RangeError} If a ratio is not a number above 0.
 */
export function stretchOutline(
  outline: Outline,
  ratios: { readonly alongRatio: number; readonly acrossRatio: number },
): Outline {
  const { alongRatio, acrossRatio } = ratios;
  for (const [name, ratio] of Object.entries({ alongRatio, acrossRatio })) {
    if (!(ratio > 0 && ratio < Infinity)) throw new RangeError(`${name} must be above 0, got ${ratio}`);
  }
  if (alongRatio === 1 && acrossRatio === 1) return outline;
  return {
    rings: outline.rings.map((ring) => {
      const stretchable = alongRatio === acrossRatio ? ring : straightened(ring, OFF_ARC_IN);
      return stretchable.map((vertex) => ({
        ...vertex,
        xIn: vertex.xIn * alongRatio,
        yIn: vertex.yIn * acrossRatio,
      }));
    }),
  };
}
