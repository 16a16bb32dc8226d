import { type Line, type Outline, type Point, sharpCorners } from '../../geometry/index.ts';

/** A bar bent round an outer corner of the mat, with a leg along each edge. */
export type CornerPiece = { readonly legs: readonly [Line, Line]; readonly legIn: number };

/** Less is no corner to go round. */
const LEAST_TURN_RAD = Math.PI / 6;

/**
 * One bent piece at every outer corner of a slab, inside the cover; each leg laps the outer bar it lies on.
 *
 * @param made.legIn Of each leg, from the bend [in]: a lap. Common practice, no source.
 */
export function cornerPieces(made: {
  readonly outline: Outline;
  readonly coverIn: number;
  readonly legIn: number;
}): readonly CornerPiece[] {
  const { outline, coverIn, legIn } = made;
  return sharpCorners(outline, LEAST_TURN_RAD)
    .filter(({ turnRad }) => turnRad > 0)
    .map(({ at, inward, turnRad, leavesRad }) => {
      const offIn = coverIn / Math.cos(turnRad / 2);
      const bend = { xIn: at.xIn + inward.xIn * offIn, yIn: at.yIn + inward.yIn * offIn };
      return { legs: [leg(bend, leavesRad, legIn), leg(bend, leavesRad - turnRad + Math.PI, legIn)], legIn };
    });
}

function leg(from: Point, towardsRad: number, lengthIn: number): Line {
  return {
    fromXIn: from.xIn,
    fromYIn: from.yIn,
    toXIn: from.xIn + lengthIn * Math.cos(towardsRad),
    toYIn: from.yIn + lengthIn * Math.sin(towardsRad),
  };
}
