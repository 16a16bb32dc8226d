import { arcOf } from './arc.ts';
import { selfCrossing } from './crossing.ts';
import { edgesOf, type Point, type Ring, type Vertex, vertexAt } from './outline.ts';
import { turnAtRad } from './tangents.ts';

/** An arc that meets its neighbour at less than this runs smoothly on [rad]. */
const SMOOTH_RAD = 1e-6;
/** Of an edge or a radius not longer than this nothing is left [in]. */
const VANISHED_IN = 1e-6;

/**
 * What a corner factor is of a ring whose arcs run smoothly into their neighbours, so that a ring moved
 * in by d, its corners kept sharp, has
 *
 *   area A - P d + c d², length P - 2 c d, with A the area and P the perimeter.
 *
 * c = sum of tan(turn / 2) over the corners + sum of half the sweep over the arcs, both left positive: 4
 * for a rectangle, pi for a circle. Derived: each corner takes two kites of d² tan(turn / 2) / 2 off the
 * band along the edges, and a sector of sweep t takes t d² / 2 off it.
 *
 * @param ring Anticlockwise.
 * @returns [ratio].
 */
export function cornerFactor(ring: Ring): number {
  return ring.reduce((sum, here, index) => {
    const turnRad = turnAtRad(ring, index);
    const cornerPart = Math.abs(turnRad) < SMOOTH_RAD ? 0 : Math.tan(turnRad / 2);
    return sum + cornerPart + 2 * Math.atan(here.bulge);
  }, 0);
}

export type InsetResult =
  | { readonly ok: true; readonly ring: Ring }
  /** An arc meets its neighbour at an angle; or edges vanish or meet before they are so far in. */
  | { readonly ok: false; readonly reason: 'arc-at-an-angle' | 'too-far' };

/**
 * A ring moved in square to its edges, its corners kept sharp.
 *
 * @param ring Anticlockwise.
 * @param byIn [in], 0 or more.
 * @throws {RangeError} If the distance is below 0 or not a finite number.
 */
export function insetRing(ring: Ring, byIn: number): InsetResult {
  if (!(byIn >= 0 && byIn < Infinity)) {
    throw new RangeError(`byIn must be a length of 0 or more, got ${byIn}`);
  }
  if (ring.some((_, index) => meetsAtAngle(ring, index))) return { ok: false, reason: 'arc-at-an-angle' };
  const moved = ring.map((vertex, index) => movedIn(ring, index, vertex, byIn));
  const stays = edgesOf(ring).every(({ from, to }, index) => {
    const now = { from: vertexAt(moved, index), to: vertexAt(moved, index + 1) };
    if (from.bulge > 0) return arcOf(from, to).radiusIn - byIn > VANISHED_IN;
    return from.bulge < 0 || runsOn(from, to, now);
  });
  return stays && selfCrossing(moved) === null ? { ok: true, ring: moved } : { ok: false, reason: 'too-far' };
}

function meetsAtAngle(ring: Ring, index: number): boolean {
  const isStraight = vertexAt(ring, index - 1).bulge === 0 && vertexAt(ring, index).bulge === 0;
  return !isStraight && Math.abs(turnAtRad(ring, index)) >= SMOOTH_RAD;
}

/** Along the bisector of a corner: d / cos(turn / 2) from it, square to the tangent where it is smooth. */
function movedIn(ring: Ring, index: number, vertex: Vertex, byIn: number): Vertex {
  const turnRad = turnAtRad(ring, index);
  const after = vertexAt(ring, index + 1);
  const chordRad = Math.atan2(after.yIn - vertex.yIn, after.xIn - vertex.xIn);
  const leavesRad = chordRad - 2 * Math.atan(vertex.bulge);
  const towardsRad = leavesRad - turnRad / 2 + Math.PI / 2;
  const reachIn = byIn / Math.cos(turnRad / 2);
  return {
    ...vertex,
    xIn: vertex.xIn + reachIn * Math.cos(towardsRad),
    yIn: vertex.yIn + reachIn * Math.sin(towardsRad),
  };
}

/** A straight edge still runs the way it ran, and has some length left. */
function runsOn(from: Point, to: Point, now: { readonly from: Point; readonly to: Point }): boolean {
  const along =
    (to.xIn - from.xIn) * (now.to.xIn - now.from.xIn) + (to.yIn - from.yIn) * (now.to.yIn - now.from.yIn);
  return along > VANISHED_IN * Math.hypot(to.xIn - from.xIn, to.yIn - from.yIn);
}
