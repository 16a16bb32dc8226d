import { arcOf, pointOnArc } from './arc.ts';
import { containsPoint, isOnEdge, ringAreaSqIn } from './measure.ts';
import { distanceIn, type Outline, type Point, type Ring, type Vertex, vertexAt } from './outline.ts';
import { directionsAt } from './ring-corners.ts';

/** So near an edge or a corner an end of a cut lies on it [in]. */
const ON_EDGE_IN = 1e-5;
/** A cut runs into the concrete only where it leaves the edge by more than this [rad]. */
const LEAST_LEAVE_RAD = 1e-6;
/** A piece of less is none [in²]. */
const NO_AREA_SQ_IN = 1e-3;

/**
 * Cuts an outline along a path. Exact with arcs: the pieces have together the area of the outline, and an
 * arc that is cut becomes two arcs of its circle.
 *
 * @param path Two points or more, straight from each to the next: inside the outline, but for its ends, which
 *             lie on an edge or a corner.
 * @returns Two pieces, those holes with each that lie in it; one where the path ties a hole to another ring,
 *          which then runs along the path there and back. The new edges are of the kind `joint`. Null where
 *          an end lies on no edge, or the path does not run into the outline there.
 */
export function cutOutline(outline: Outline, path: readonly Point[]): readonly Outline[] | null {
  const [start, afterStart] = path;
  const [end, beforeEnd] = [path.at(-1), path.at(-2)];
  if (start === undefined || afterStart === undefined || end === undefined || beforeEnd === undefined) {
    throw new RangeError(`a path needs two points or more, got ${path.length}`);
  }
  const first = withCornerAt(outline.rings, start, afterStart);
  if (first === null) return null;
  const second = withCornerAt(first.rings, end, beforeEnd);
  if (second === null) return null;
  const from = placeOn(second.rings, start, afterStart);
  const to = second.at;
  if (from === null || from.isBetween) return null;

  const between = path.slice(1, -1);
  const others = second.rings.filter((_, index) => index !== from.ring && index !== to.ring);
  if (from.ring !== to.ring) {
    const tied = [
      ...around(second.rings, from, from.index),
      ...cornersAlong([start, ...between]),
      ...around(second.rings, to, to.index),
      ...cornersAlong([end, ...between.toReversed()]),
    ];
    return outlinesOf([tied, ...others]);
  }
  if (from.index === to.index) return null;
  return outlinesOf([
    [...around(second.rings, from, to.index), ...cornersAlong([end, ...between.toReversed()])],
    [...around(second.rings, to, from.index), ...cornersAlong([start, ...between])],
    ...others,
  ]);
}

type At = { readonly ring: number; readonly index: number };
/** On the edge that starts at the vertex, or at the vertex itself. */
type OnRing = At & { readonly isBetween: boolean; readonly share: number };

/** The vertices from one place round to the vertex before another; all of them where both are the same. */
function around(rings: readonly Ring[], { ring, index }: At, toIndex: number): Vertex[] {
  const vertices = rings[ring] ?? [];
  const count = (toIndex - index + vertices.length) % vertices.length || vertices.length;
  return Array.from({ length: count }, (_, step) => vertexAt(vertices, index + step));
}

function cornersAlong(points: readonly Point[]): Vertex[] {
  return points.map(({ xIn, yIn }) => ({ xIn, yIn, bulge: 0, edge: 'joint' }));
}

/** The rings with a vertex where a path starts; null where it starts on none of them. */
function withCornerAt(
  rings: readonly Ring[],
  point: Point,
  towards: Point,
): { readonly rings: readonly Ring[]; readonly at: At } | null {
  const place = placeOn(rings, point, towards);
  if (place === null) return null;
  if (!place.isBetween) return { rings, at: place };
  const ring = rings[place.ring] ?? [];
  const from = vertexAt(ring, place.index);
  const bulges =
    from.bulge === 0
      ? [0, 0]
      : [place.share, 1 - place.share].map((share) => Math.tan(Math.atan(from.bulge) * share));
  const added: Vertex = { ...from, xIn: point.xIn, yIn: point.yIn, bulge: bulges[1] ?? 0 };
  const cut = [
    ...ring.slice(0, place.index),
    { ...from, bulge: bulges[0] ?? 0 },
    added,
    ...ring.slice(place.index + 1),
  ];
  return {
    rings: rings.map((one, index) => (index === place.ring ? cut : one)),
    at: { ring: place.ring, index: place.index + 1 },
  };
}

/**
 * Where on the rings a path starts. Where two edges lie on each other, or several corners in one place, the
 * one whose inside it runs into.
 */
function placeOn(rings: readonly Ring[], point: Point, towards: Point): OnRing | null {
  const leavesRad = Math.atan2(towards.yIn - point.yIn, towards.xIn - point.xIn);
  let best: { readonly place: OnRing; readonly marginRad: number } | null = null;
  const offer = (place: OnRing, outRad: number, insideRad: number) => {
    const turnedRad = positive(leavesRad - outRad);
    const marginRad = Math.min(turnedRad, insideRad - turnedRad);
    if (marginRad > LEAST_LEAVE_RAD && (best === null || marginRad > best.marginRad))
      best = { place, marginRad };
  };
  let isCorner = false;
  for (const [ringIndex, ring] of rings.entries()) {
    for (let index = 0; index < ring.length; index += 1) {
      if (distanceIn(vertexAt(ring, index), point) > ON_EDGE_IN) continue;
      isCorner = true;
      const { outRad, insideRad } = directionsAt(ring, index);
      offer({ ring: ringIndex, index, isBetween: false, share: 0 }, outRad, insideRad);
    }
  }
  if (isCorner) return placed(best);
  for (const [ringIndex, ring] of rings.entries()) {
    for (let index = 0; index < ring.length; index += 1) {
      const [from, to] = [vertexAt(ring, index), vertexAt(ring, index + 1)];
      if (!isOnEdge({ from, to }, point, ON_EDGE_IN)) continue;
      const { share, alongRad } = alongEdge(from, to, point);
      offer({ ring: ringIndex, index, isBetween: true, share }, alongRad, Math.PI);
    }
  }
  return placed(best);
}

function placed(best: { readonly place: OnRing } | null): OnRing | null {
  return best === null ? null : best.place;
}

/** How much of an edge lies before a point on it, and the direction of the edge there. */
function alongEdge(from: Vertex, to: Point, point: Point): { share: number; alongRad: number } {
  if (from.bulge === 0) {
    return {
      share: distanceIn(from, point) / distanceIn(from, to),
      alongRad: Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn),
    };
  }
  const arc = arcOf(from, to);
  const sign = Math.sign(arc.sweepRad);
  const atRad = Math.atan2(point.yIn - arc.centre.yIn, point.xIn - arc.centre.xIn);
  const share = positive((atRad - arc.startRad) * sign) / Math.abs(arc.sweepRad);
  return { share: Math.min(1, share), alongRad: atRad + (sign * Math.PI) / 2 };
}

function positive(angleRad: number): number {
  const fullRad = 2 * Math.PI;
  return ((angleRad % fullRad) + fullRad) % fullRad;
}

/** Null where a ring is left with no area: the path runs along an edge. */
function outlinesOf(rings: readonly Ring[]): readonly Outline[] | null {
  const areasSqIn = rings.map((ring) => ringAreaSqIn(ring));
  if (areasSqIn.some((areaSqIn) => Math.abs(areaSqIn) < NO_AREA_SQ_IN)) return null;
  const outers = rings.filter((_, index) => (areasSqIn[index] ?? 0) > 0);
  const holes = rings.filter((_, index) => (areasSqIn[index] ?? 0) < 0);
  const pieces = outers.map((outer) => ({
    rings: [outer, ...holes.filter((hole) => isInside(hole, outer))],
  }));
  const kept = pieces.reduce((count, piece) => count + piece.rings.length, 0);
  return kept === rings.length ? pieces : null;
}

/** Told by a point of the hole off the edge of the other ring: they may touch in a corner. */
function isInside(hole: Ring, outer: Ring): boolean {
  const from = vertexAt(hole, 0);
  const to = vertexAt(hole, 1);
  const middle =
    from.bulge === 0
      ? { xIn: (from.xIn + to.xIn) / 2, yIn: (from.yIn + to.yIn) / 2 }
      : pointOnArc(arcOf(from, to), 0.5);
  return containsPoint({ rings: [outer] }, middle);
}
