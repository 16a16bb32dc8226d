import { turnOutline } from './build.ts';
import { boundsOf } from './measure.ts';
import { distanceIn, edgesOf, type Outline } from './outline.ts';

/** A rectangle round an outline, however it lies. */
export type BoxAround = {
  /** Longer side [in]. */
  readonly lengthIn: number;
  readonly widthIn: number;
  /** Direction of the longer side, anticlockwise from x [rad], 0 to below pi. */
  readonly alongRad: number;
};

/** Directions nearer than this are one [deg]. */
const SAME_DEG = 0.01;
/** An edge of less gives no direction [in]. */
const LEAST_EDGE_IN = 1;
/** One box is smaller than another only by more than the noise of turning it. */
const NOISE_RATIO = 1e-9;

/**
 * The smallest rectangle round an outline, arcs included, with a side along one of its straight edges or
 * the chord of one of its arcs; of those with the same area the one that is nearest to a square. A circle's
 * box is upright.
 *
 * @throws {RangeError} If the outline has no vertex.
 */
export function boxAround(outline: Outline): BoxAround {
  let best: BoxAround | null = null;
  for (const turnDeg of directionsDeg(outline)) {
    const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(
      turnDeg === 0 ? outline : turnOutline(outline, -turnDeg),
    );
    const box = boxOf(maxXIn - minXIn, maxYIn - minYIn, turnDeg);
    if (best === null || isSmaller(box, best)) best = box;
  }
  if (best === null) throw new RangeError('an outline without edges has no box');
  return best;
}

function boxOf(alongIn: number, acrossIn: number, turnDeg: number): BoxAround {
  const runsAlong = alongIn >= acrossIn * (1 - NOISE_RATIO);
  const deg = (runsAlong ? turnDeg : turnDeg + 90) % 180;
  return {
    lengthIn: Math.max(alongIn, acrossIn),
    widthIn: Math.min(alongIn, acrossIn),
    alongRad: (deg * Math.PI) / 180,
  };
}

function isSmaller(one: BoxAround, other: BoxAround): boolean {
  const [oneSqIn, otherSqIn] = [one.lengthIn * one.widthIn, other.lengthIn * other.widthIn];
  if (Math.abs(oneSqIn - otherSqIn) > NOISE_RATIO * otherSqIn) return oneSqIn < otherSqIn;
  return one.lengthIn < other.lengthIn * (1 - NOISE_RATIO);
}

/** Within a quarter turn: a box along an edge is a box square to it. */
function directionsDeg(outline: Outline): readonly number[] {
  const found: number[] = [];
  for (const { from, to } of edgesOf(outline.rings[0] ?? [])) {
    if (distanceIn(from, to) < LEAST_EDGE_IN) continue;
    if (from.bulge !== 0 && Math.abs(from.bulge) > 1) continue;
    const deg = (Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn) * 180) / Math.PI;
    const withinDeg = ((deg % 90) + 90) % 90;
    // What is upright or level but for noise is turned exactly.
    const plainDeg = Math.min(withinDeg, 90 - withinDeg) < 1e-9 ? 0 : withinDeg;
    if (!found.some((known) => Math.abs(known - plainDeg) < SAME_DEG)) found.push(plainDeg);
  }
  return found.length === 0 ? [0] : found;
}
