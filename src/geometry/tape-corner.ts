import { arcOf } from './arc.ts';
import { distanceToOneEdgeIn } from './measure.ts';
import { crossSqIn, distanceIn, type Edge, edgesOf, type Point, type Ring, vertexAt } from './outline.ts';
import { turnAtRad } from './tangents.ts';

/** A point farther from every edge lies on another ring [in]. */
const ON_EDGE_IN = 0.01;
/** Below this turn nobody sees a corner: 3 degrees. Common practice, no source. */
const SEEN_RAD = Math.PI / 60;
/** Past this turn the sides of a rounded corner meet too far off to be found: 150 degrees. Likewise. */
const MOST_ROUNDED_RAD = (Math.PI * 5) / 6;
const BACK_IN = 1e-6;

/**
 * From which corner a point on a ring is found with a straight tape: the next one that can be seen when
 * going along the edge against a direction. Where the straight edge of the point ends at a rounded corner,
 * it is where the two sides would meet.
 *
 * @param given.towardsDeg The direction, anticlockwise from x.
 * @returns The corner and how far it is [in], or null where the point lies on no edge of this ring.
 */
export function tapeCorner(given: {
  readonly ring: Ring;
  readonly at: Point;
  readonly towardsDeg: number;
}): { readonly corner: Point; readonly lengthIn: number } | null {
  const { ring, at, towardsDeg } = given;
  const edges = edgesOf(ring).map((edge) => ({ edge, offIn: distanceToOneEdgeIn(edge, at) }));
  const [nearest] = edges.toSorted((one, other) => one.offIn - other.offIn);
  if (nearest === undefined || nearest.offIn > ON_EDGE_IN) return null;
  const { xIn, yIn } = cornerBehind(ring, nearest.edge, towardsDeg);
  return { corner: { xIn, yIn }, lengthIn: distanceIn({ xIn, yIn }, at) };
}

function cornerBehind(ring: Ring, edge: Edge, towardsDeg: number): Point {
  const towardsRad = (towardsDeg * Math.PI) / 180;
  const alongIn = ({ xIn, yIn }: Point) => xIn * Math.cos(towardsRad) + yIn * Math.sin(towardsRad);
  // Edges run anticlockwise; the corner behind is at the start of the edge or at its end.
  const step = alongIn(edge.from) <= alongIn(edge.to) ? -1 : 1;
  let place = step < 0 ? edge.number - 1 : edge.number;
  let isStraight = edge.from.bulge === 0;
  for (let walked = 0; walked < ring.length; walked += 1) {
    const here = vertexAt(ring, place);
    if (Math.abs(turnAtRad(ring, place)) > SEEN_RAD) return here;
    const behind = step < 0 ? vertexAt(ring, place - 1) : here;
    if (isStraight && behind.bulge !== 0) {
      const met = sidesMeet(ring, place, step);
      if (met !== null) return met;
    }
    if (!(alongIn(vertexAt(ring, place + step)) < alongIn(here) - BACK_IN)) return here;
    isStraight = isStraight && behind.bulge === 0;
    place += step;
  }
  return vertexAt(ring, place);
}

/**
 * Where the straight edges before and after an arc that runs smoothly into both would meet; null if it does
 * not, or turns too far.
 *
 * With d, e along the two edges: start + s d, s = e × (start - end) / (d × e). Derived.
 */
function sidesMeet(ring: Ring, place: number, step: 1 | -1): Point | null {
  const far = place + step;
  const [from, to] = step < 0 ? [far, place] : [place, far];
  const [start, end] = [vertexAt(ring, from), vertexAt(ring, to)];
  const [before, after] = [vertexAt(ring, from - 1), vertexAt(ring, to + 1)];
  if (before.bulge !== 0 || end.bulge !== 0 || Math.abs(turnAtRad(ring, far)) > SEEN_RAD) return null;
  if (Math.abs(arcOf(start, end).sweepRad) > MOST_ROUNDED_RAD) return null;
  const across =
    (start.xIn - before.xIn) * (after.yIn - end.yIn) - (start.yIn - before.yIn) * (after.xIn - end.xIn);
  if (across === 0) return null;
  const share = crossSqIn(end, after, start) / across;
  return {
    xIn: start.xIn + share * (start.xIn - before.xIn),
    yIn: start.yIn + share * (start.yIn - before.yIn),
  };
}
