import { type Arc, arcOf, pointOnArc } from './arc.ts';
import { boundsOf } from './measure.ts';
import { type Edge, edgesOf, type Outline, type Point } from './outline.ts';

/** An area this near is the one that was asked for [in²]: a ten-millionth of a square foot. */
const NEAR_SQ_IN = 1e-5;
/** Bounds this near each other are one line [in]. */
const SAME_IN = 1e-10;

/**
 * Area of what lies left of an upright line [in²]; exact with arcs.
 *
 * A = ∮ min(x - a, 0) dy round every ring, with a the place of the line. Derived: the divergence of
 * (min(x - a, 0), 0) is 1 left of the line and 0 right of it; holes run the other way.
 */
export function areaLeftOfSqIn(outline: Outline, atXIn: number): number {
  let sumSqIn = 0;
  for (const ring of outline.rings) {
    for (const edge of edgesOf(ring)) {
      sumSqIn +=
        edge.from.bulge === 0 ? leftOfChordSqIn(edge.from, edge.to, atXIn) : leftOfArcSqIn(edge, atXIn);
    }
  }
  return sumSqIn;
}

/**
 * Where an upright line stands that has so much of an outline on its left.
 *
 * @param areaSqIn Above 0, below the area of the outline [in²].
 * @returns x of the line [in].
 * @throws {RangeError} If the outline has not so much area.
 *
 * Regula falsi by the Illinois rule, by which the miss of an end that stays is halved: M. Dowell and
 * P. Jarratt, "A modified regula falsi method for computing the root of an equation", BIT 11, 1971
 * (from memory).
 */
export function lineOfAreaXIn(outline: Outline, areaSqIn: number): number {
  const bounds = boundsOf(outline);
  let low = { xIn: bounds.minXIn, missSqIn: -areaSqIn };
  let high = { xIn: bounds.maxXIn, missSqIn: areaLeftOfSqIn(outline, bounds.maxXIn) - areaSqIn };
  if (!(low.missSqIn < 0 && high.missSqIn > 0)) {
    throw new RangeError(`areaSqIn must be above 0 and below that of the outline, got ${areaSqIn}`);
  }
  let moved: 'low' | 'high' | null = null;
  for (;;) {
    const xIn = low.xIn + (high.xIn - low.xIn) * (low.missSqIn / (low.missSqIn - high.missSqIn));
    const missSqIn = areaLeftOfSqIn(outline, xIn) - areaSqIn;
    if (Math.abs(missSqIn) <= NEAR_SQ_IN || high.xIn - low.xIn <= SAME_IN) return xIn;
    if (missSqIn < 0) {
      if (moved === 'low') high = { ...high, missSqIn: high.missSqIn / 2 };
      low = { xIn, missSqIn };
      moved = 'low';
    } else {
      if (moved === 'high') low = { ...low, missSqIn: low.missSqIn / 2 };
      high = { xIn, missSqIn };
      moved = 'high';
    }
  }
}

function leftOfChordSqIn(from: Point, to: Point, atXIn: number): number {
  const riseIn = to.yIn - from.yIn;
  const fromIn = from.xIn - atXIn;
  const toIn = to.xIn - atXIn;
  if (fromIn >= 0 && toIn >= 0) return 0;
  if (fromIn <= 0 && toIn <= 0) return ((fromIn + toIn) / 2) * riseIn;
  const leftIn = Math.min(fromIn, toIn);
  const leftRatio = leftIn / (leftIn - Math.max(fromIn, toIn));
  return (leftIn / 2) * riseIn * leftRatio;
}

/** Each part of the arc that lies left of the line is its chord and the segment between the two. */
function leftOfArcSqIn({ from, to }: Edge, atXIn: number): number {
  const arc = arcOf(from, to);
  const shares = [0, ...crossingShares(arc, atXIn), 1];
  let sumSqIn = 0;
  for (const [index, share] of shares.entries()) {
    const next = shares[index + 1];
    if (next === undefined) break;
    if (!isLeft(arc, [share, next], atXIn)) continue;
    const start = share === 0 ? from : { ...pointOnArc(arc, share), xIn: atXIn };
    const end = next === 1 ? to : { ...pointOnArc(arc, next), xIn: atXIn };
    const chordSqIn = ((start.xIn + end.xIn) / 2 - atXIn) * (end.yIn - start.yIn);
    sumSqIn += chordSqIn + segmentSqIn(arc.radiusIn, arc.sweepRad * (next - share));
  }
  return sumSqIn;
}

/**
 * On which side of the line a part of an arc lies that it does not cross, told by its place farthest from the line:
 * an end may stand on it, and so may the middle where the arc touches it.
 */
function isLeft(arc: Arc, [from, to]: readonly [number, number], atXIn: number): boolean {
  let farthestIn = 0;
  for (const way of [0, 1 / 4, 1 / 2, 3 / 4, 1]) {
    const offIn = pointOnArc(arc, from + (to - from) * way).xIn - atXIn;
    if (Math.abs(offIn) > Math.abs(farthestIn)) farthestIn = offIn;
  }
  return farthestIn < 0;
}

/** How much of an arc is turned where it meets the line, in order, the ends left out. */
function crossingShares(arc: Arc, atXIn: number): number[] {
  const cosine = (atXIn - arc.centre.xIn) / arc.radiusIn;
  if (!(Math.abs(cosine) < 1)) return [];
  const fullRad = 2 * Math.PI;
  return [Math.acos(cosine), -Math.acos(cosine)]
    .map((directionRad) => {
      const turnedRad = (directionRad - arc.startRad) * Math.sign(arc.sweepRad);
      return (((turnedRad % fullRad) + fullRad) % fullRad) / Math.abs(arc.sweepRad);
    })
    .filter((share) => share > 0 && share < 1)
    .sort((a, b) => a - b);
}

/** Signed area between a chord and its arc: R² (t - sin t) / 2, as in `edgeSegmentAreaSqIn`. */
function segmentSqIn(radiusIn: number, turnRad: number): number {
  return (radiusIn ** 2 * (turnRad - Math.sin(turnRad))) / 2;
}
