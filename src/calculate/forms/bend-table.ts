import type { Strip } from '../job.ts';

export const BEND_SOURCE =
  'APA, minimum bending radii of dry plywood for concrete forms, repeated in Concrete Construction, “Curving plywood forms” (seen)';

/**
 * Smallest radius that dry form plywood bends to, by its thickness [in] and whether it is bent across
 * or along the grain of its face [ft]. Panels without knots, wetted or steamed ones bend further.
 *
 * Source: APA, The Engineered Wood Association, table of minimum bending radii in its guide to
 * concrete forming, repeated in Concrete Construction, "Curving plywood forms" (seen).
 */
export const BEND_ROWS = [
  { thicknessIn: 1 / 4, acrossGrainFt: 2, alongGrainFt: 5 },
  { thicknessIn: 5 / 16, acrossGrainFt: 2, alongGrainFt: 6 },
  { thicknessIn: 3 / 8, acrossGrainFt: 3, alongGrainFt: 8 },
  { thicknessIn: 1 / 2, acrossGrainFt: 6, alongGrainFt: 12 },
  { thicknessIn: 5 / 8, acrossGrainFt: 8, alongGrainFt: 16 },
  { thicknessIn: 3 / 4, acrossGrainFt: 12, alongGrainFt: 20 },
] as const;

/**
 * Smallest radius of a strip [ft]: the row of its thickness, or of the next thicker one. What is
 * thinner than the first row bends at least as far, and gets that row.
 *
 * @param strip.thicknessIn [in], above 0, at most the last row's.
 * @throws {RangeError} If the thickness is outside its range.
 */
export function leastBendFt(strip: { thicknessIn: number; bent: Strip['bent'] }): number {
  const { thicknessIn, bent } = strip;
  const row = BEND_ROWS.find((one) => thicknessIn <= one.thicknessIn + 1e-9);
  if (!(thicknessIn > 0) || row === undefined) {
    throw new RangeError(`thicknessIn must be above 0 and at most 3/4, got ${thicknessIn}`);
  }
  return bent === 'across-grain' ? row.acrossGrainFt : row.alongGrainFt;
}
