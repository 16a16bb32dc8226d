import { crossSqIn, distanceIn, type Point } from './outline.ts';

/** A point fixed by two tape lengths from two known points, swung until they meet. */
export type SwingTies = {
  /** Places of the two known points in the list, from 0, in its order. */
  readonly from: readonly [number, number];
  readonly distancesIn: readonly [number, number];
  /** Angle at which the two arcs cross, up to a right angle. */
  readonly crossingRad: number;
  /** Below 30 degrees an error of the tape grows too much; common practice, no source. */
  readonly isWeak: boolean;
  /** On which side of the line from the first to the second the point lies: the arcs cross on both. */
  readonly side: 'left' | 'right';
};

const WEAK_BELOW_RAD = Math.PI / 6;

/** Crossings that differ by less are alike, and the shorter tapes decide [rad]. */
const SAME_RAD = 1e-9;

/** Nearer than this two points are one, or a point stands on a line [in]. */
const SAME_IN = 1e-6;

/**
 * The two of the known points from which a point is best taped: those whose arcs cross nearest to a
 * right angle, of equal ones those with the shorter tapes.
 *
 * @returns Null if no two known points fix the point: they are the same, or on one line with it.
 *
 * The arcs cross at the angle between the two tapes, or half a turn minus it.
 */
export function swingTies(point: Point, from: readonly Point[]): SwingTies | null {
  let best: SwingTies | null = null;
  for (const [firstPlace, first] of from.entries()) {
    for (const [later, second] of from.slice(firstPlace + 1).entries()) {
      const secondPlace = firstPlace + 1 + later;
      const ties = tiesFrom(point, [first, second], [firstPlace, secondPlace]);
      if (ties !== null && (best === null || isBetter(ties, best))) best = ties;
    }
  }
  return best;
}

function tiesFrom(
  point: Point,
  [first, second]: readonly [Point, Point],
  from: readonly [number, number],
): SwingTies | null {
  const distancesIn = [distanceIn(first, point), distanceIn(second, point)] as const;
  const betweenIn = distanceIn(first, second);
  if (!(Math.min(...distancesIn, betweenIn) > SAME_IN)) return null;
  const besideSqIn = crossSqIn(first, second, point);
  if (!(Math.abs(besideSqIn) > SAME_IN * betweenIn)) return null;
  const dotSqIn =
    (first.xIn - point.xIn) * (second.xIn - point.xIn) + (first.yIn - point.yIn) * (second.yIn - point.yIn);
  const crossingRad = Math.atan2(Math.abs(besideSqIn), Math.abs(dotSqIn));
  return {
    from,
    distancesIn,
    crossingRad,
    isWeak: crossingRad < WEAK_BELOW_RAD,
    side: besideSqIn > 0 ? 'left' : 'right',
  };
}

function isBetter(one: SwingTies, best: SwingTies): boolean {
  if (Math.abs(one.crossingRad - best.crossingRad) > SAME_RAD) return one.crossingRad > best.crossingRad;
  const tapeIn = (ties: SwingTies) => ties.distancesIn[0] + ties.distancesIn[1];
  return tapeIn(one) < tapeIn(best);
}
