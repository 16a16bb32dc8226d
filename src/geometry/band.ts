import { areaPathsD, booleanOpD, ClipType, EndType, FillRule, inflatePathsD, JoinType } from 'clipper2-ts';
import type { Outline, Point } from './outline.ts';
import { chordPaths, OFF_ARC_IN, PRECISION } from './overlap.ts';

/** A sharp corner of a band reaches no farther than so many times its width; past that it is cut off. */
const MITRE_LIMIT = 10;

/** A line along an edge of an outline, with chords in place of arcs; a closed one runs back to its start. */
export type EdgeLine = { readonly points: readonly Point[]; readonly isClosed: boolean };

/**
 * Area of the part of an outline that lies within a distance of some of its edges [in²].
 *
 * @param lines Along those edges; where two meet they are one line, so that the corner between them
 *              counts once.
 * @param byIn  Measured square to the edges [in], 0 or more. The ends of an open line are cut square.
 * @throws {RangeError} If the distance is below 0 or not a finite number.
 */
export function bandAreaSqIn(outline: Outline, lines: readonly EdgeLine[], byIn: number): number {
  if (!(byIn >= 0 && byIn < Infinity)) {
    throw new RangeError(`byIn must be a length of 0 or more, got ${byIn}`);
  }
  if (byIn === 0 || lines.length === 0) return 0;
  const bands = lines.flatMap(({ points, isClosed }) =>
    inflatePathsD(
      [points.map(({ xIn, yIn }) => ({ x: xIn, y: yIn }))],
      byIn,
      JoinType.Miter,
      isClosed ? EndType.Joined : EndType.Butt,
      MITRE_LIMIT,
      PRECISION,
    ),
  );
  const inside = chordPaths(outline, OFF_ARC_IN);
  return areaPathsD(booleanOpD(ClipType.Intersection, inside, bands, FillRule.NonZero, PRECISION));
}
