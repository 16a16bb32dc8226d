import type { Point } from './outline.ts';

/**
 * One inch in a direction [rad], anticlockwise from x.
 *
 * Whole quarter turns come out exact, so that a walk around a square ends where it began: sums of pi / 2
 * are off by less than 1e-15, and so are their sine and cosine.
 */
export function unitAlong(directionRad: number): Point {
  const exact = (share: number) => (Math.abs(share) < 1e-15 ? 0 : share);
  return { xIn: exact(Math.cos(directionRad)), yIn: exact(Math.sin(directionRad)) };
}

/** The point a length away in a direction; a negative length goes backwards. */
export function stepFrom(from: Point, directionRad: number, lengthIn: number): Point {
  const unit = unitAlong(directionRad);
  return { xIn: from.xIn + unit.xIn * lengthIn, yIn: from.yIn + unit.yIn * lengthIn };
}
