import { crossSqIn, type Point, type Ring, vertexAt } from './outline.ts';

/**
 * Change of direction at a vertex [rad], -pi to pi, left positive: between the end of the edge before it
 * and the start of its own, along the tangent where an edge is an arc. 0 where they run smoothly on.
 *
 * @param index Of the vertex, from 0; may run past either end of the ring.
 *
 * An arc's tangent leaves its chord by half the sweep = 2 atan(bulge) at either end.
 */
export function turnAtRad(ring: Ring, index: number): number {
  const before = vertexAt(ring, index - 1);
  const here = vertexAt(ring, index);
  const after = vertexAt(ring, index + 1);
  const chordTurnRad = turnBetweenRad(before, here, after);
  if (before.bulge === 0 && here.bulge === 0) return chordTurnRad;
  return withinHalfTurnRad(chordTurnRad - 2 * Math.atan(before.bulge) - 2 * Math.atan(here.bulge));
}

/** Change of direction at `here`, from `before` to `after` along straight lines [rad], left positive. */
export function turnBetweenRad(before: Point, here: Point, after: Point): number {
  const along =
    (here.xIn - before.xIn) * (after.xIn - here.xIn) + (here.yIn - before.yIn) * (after.yIn - here.yIn);
  return Math.atan2(crossSqIn(before, here, after), along);
}

/** The same angle between -pi and pi. */
export function withinHalfTurnRad(angleRad: number): number {
  return angleRad - 2 * Math.PI * Math.round(angleRad / (2 * Math.PI));
}
