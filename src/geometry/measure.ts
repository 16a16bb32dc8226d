import { circleOf, edgeLengthIn, edgeSegmentAreaSqIn, meetsArc } from './arc.ts';
import {
  crossSqIn,
  distanceIn,
  type Edge,
  type EdgeKind,
  edgesOf,
  type Outline,
  type Point,
  type Ring,
  type Vertex,
  vertexAt,
} from './outline.ts';

export type Bounds = {
  readonly minXIn: number;
  readonly minYIn: number;
  readonly maxXIn: number;
  readonly maxYIn: number;
};

/**
 * Area of a ring [in²]: above 0 when it runs anticlockwise.
 *
 * A = 1/2 sum(x_i y_(i+1) - x_(i+1) y_i) over the corners, plus for each arc its segment.
 * Source: J. V. Mahun, "Open Access Surveying": Traverse Computations ch. G (coordinates),
 * COGO ch. H sec. 2 (segments added to the area over chords); both seen.
 */
export function ringAreaSqIn(ring: Ring): number {
  const [origin] = ring;
  if (origin === undefined) return 0;
  let areaSqIn = 0;
  for (let index = 0; index < ring.length; index += 1) {
    const [from, to] = [vertexAt(ring, index), vertexAt(ring, index + 1)];
    // Taken about the first corner, so that a shape far from zero keeps its digits.
    areaSqIn += crossSqIn(origin, from, to) / 2;
    if (from.bulge !== 0) areaSqIn += edgeSegmentAreaSqIn({ from, to });
  }
  return areaSqIn;
}

/** Area inside the outer ring and outside the holes [in²]; holes run clockwise and count negative. */
export function outlineAreaSqIn(outline: Outline): number {
  return outline.rings.reduce((sumSqIn, ring) => sumSqIn + ringAreaSqIn(ring), 0);
}

/** Length of all edges [in], those of the holes included. */
export function outlinePerimeterIn(outline: Outline): number {
  return allEdges(outline).reduce((sumIn, edge) => sumIn + edgeLengthIn(edge), 0);
}

/** Length of edge of each kind [in], straight and curved apart, those of the holes included. */
export function edgeLengthsByKindIn(
  outline: Outline,
): Record<EdgeKind, { readonly straightIn: number; readonly curvedIn: number }> {
  const lengthsOf = (kind: EdgeKind) => {
    let straightIn = 0;
    let curvedIn = 0;
    for (const edge of allEdges(outline)) {
      if (edge.from.edge !== kind) continue;
      if (edge.from.bulge === 0) straightIn += edgeLengthIn(edge);
      else curvedIn += edgeLengthIn(edge);
    }
    return { straightIn, curvedIn };
  };
  return {
    formed: lengthsOf('formed'),
    house: lengthsOf('house'),
    stays: lengthsOf('stays'),
    joint: lengthsOf('joint'),
  };
}

/**
 * The smallest upright box around the outline, arcs included.
 * @throws {RangeError} If the outline has no vertex.
 */
export function boundsOf(outline: Outline): Bounds {
  let [minXIn, minYIn, maxXIn, maxYIn] = [Infinity, Infinity, -Infinity, -Infinity];
  const reach = ({ xIn, yIn }: Point) => {
    if (xIn < minXIn) minXIn = xIn;
    if (xIn > maxXIn) maxXIn = xIn;
    if (yIn < minYIn) minYIn = yIn;
    if (yIn > maxYIn) maxYIn = yIn;
  };
  for (const ring of outline.rings) {
    for (const [index, from] of ring.entries()) {
      reach(from);
      if (from.bulge !== 0) extremesOf(from, vertexAt(ring, index + 1)).forEach(reach);
    }
  }
  if (minXIn > maxXIn) throw new RangeError('an outline without vertices has no bounds');
  return { minXIn, minYIn, maxXIn, maxYIn };
}

/** Whether a point lies inside; on an edge itself the answer may be either. */
export function containsPoint(outline: Outline, point: Point): boolean {
  let inside = false;
  for (const ring of outline.rings) {
    let from = ring.at(-1);
    for (const to of ring) {
      if (from !== undefined && changesSides(from, to, point)) inside = !inside;
      from = to;
    }
  }
  return inside;
}

/** Whether an edge lies to the right of a point, an odd number of times. */
function changesSides(from: Vertex, to: Point, point: Point): boolean {
  const climbsPast = from.yIn > point.yIn !== to.yIn > point.yIn;
  const isRightOf =
    climbsPast && point.xIn < from.xIn + ((point.yIn - from.yIn) / (to.yIn - from.yIn)) * (to.xIn - from.xIn);
  if (from.bulge === 0) return isRightOf;
  // The arc differs from its chord by the segment between them: a point in there changes sides.
  if (sideOf(from, to, point) * from.bulge >= 0) return isRightOf;
  const { centre, radiusIn } = circleOf(from, to);
  return distanceIn(centre, point) < radiusIn ? !isRightOf : isRightOf;
}

/**
 * Side of a chord a point lies on, left positive, never 0: a point on the chord counts as lying a hair to
 * the right and up, as it does where a chord is counted above. A point on the diameter that two half
 * circles share must not fall between them.
 */
function sideOf(from: Point, to: Point, point: Point): number {
  const side = crossSqIn(from, to, point);
  if (side !== 0) return side;
  return to.yIn !== from.yIn ? from.yIn - to.yIn : to.xIn - from.xIn;
}

/** Shortest distance from a point to any edge [in]. */
export function distanceToEdgeIn(outline: Outline, point: Point): number {
  return Math.min(...allEdges(outline).map((edge) => distanceToOneEdgeIn(edge, point)));
}

/**
 * A point inside, far from every edge, where a label has most room, and how far that is.
 *
 * A grid over the bounds, refined until a point falls inside, then a search in ever smaller steps
 * around the best one. The same outline always gives the same point.
 * @throws {RangeError} If no point of the finest grid lies inside: the outline has hardly any area.
 */
export function labelPointOf(outline: Outline): RoomyPoint {
  const known = labelPoints.get(outline);
  if (known !== undefined) return known;
  const found = roomiestOf(outline);
  labelPoints.set(outline, found);
  return found;
}

type RoomyPoint = Point & { readonly clearanceIn: number };

/** Each drawing of an outline asks for its point. */
const labelPoints = new WeakMap<Outline, RoomyPoint>();

function roomiestOf(outline: Outline): RoomyPoint {
  const bounds = boundsOf(outline);
  const widthIn = bounds.maxXIn - bounds.minXIn;
  const heightIn = bounds.maxYIn - bounds.minYIn;
  const middle = { xIn: bounds.minXIn + widthIn / 2, yIn: bounds.minYIn + heightIn / 2 };

  for (let steps = 15; steps <= 480; steps *= 2) {
    const step = { xIn: widthIn / steps, yIn: heightIn / steps };
    const coarse = farthestInside(outline, middle, { step, steps, moreThanIn: -1 });
    if (coarse === null) continue;
    let best = coarse;
    for (let halving = 1; halving <= 8; halving += 1) {
      const half = { xIn: step.xIn / 2 ** halving, yIn: step.yIn / 2 ** halving };
      // A hair more room is no reason to move: the middle of a long walk stays its middle.
      const moreThanIn: number = best.clearanceIn * (1 + 1e-9);
      best = farthestInside(outline, best, { step: half, steps: 4, moreThanIn }) ?? best;
    }
    return best;
  }
  throw new RangeError('no point lies inside the outline');
}

/** Of the points of a grid around a point the roomiest, of those as roomy the nearest; null where none has more room than said. */
function farthestInside(
  outline: Outline,
  around: Point,
  grid: { readonly step: Point; readonly steps: number; readonly moreThanIn: number },
): RoomyPoint | null {
  const { step, steps, moreThanIn } = grid;
  let best: RoomyPoint | null = null;
  let bestOffIn = Infinity;
  // What is too near to one edge is so a step further too, mostly.
  let nearest: Edge | null = null;
  for (let row = 0; row <= steps; row += 1) {
    // Nothing is farther from the edges than its neighbour is and the step to it.
    let mostIn = Infinity;
    for (let column = 0; column <= steps; column += 1) {
      const xIn = around.xIn + (column - steps / 2) * step.xIn;
      const yIn = around.yIn + (row - steps / 2) * step.yIn;
      mostIn += step.xIn;
      const worthIn: number = best === null ? moreThanIn : best.clearanceIn * (1 - 1e-9);
      if (mostIn < worthIn) continue;
      if (nearest !== null) mostIn = Math.min(mostIn, distanceToOneEdgeIn(nearest, { xIn, yIn }));
      if (mostIn <= worthIn) continue;
      if (!containsPoint(outline, { xIn, yIn })) {
        mostIn = 0;
        continue;
      }
      const near = nearestDownTo(outline, { xIn, yIn }, worthIn);
      const { clearanceIn } = near;
      nearest = near.edge;
      mostIn = clearanceIn;
      if (clearanceIn <= worthIn) continue;
      const offIn = distanceIn(around, { xIn, yIn });
      const roomier = best === null || clearanceIn > best.clearanceIn * (1 + 1e-9);
      const asRoomyNearer = best !== null && offIn < bestOffIn - 1e-9;
      if (roomier || asRoomyNearer) {
        best = { xIn, yIn, clearanceIn };
        bestOffIn = offIn;
      }
    }
  }
  return best;
}

/** The edge nearest to a point, and how far it is [in]; where that is no more than said, one that is so near. */
function nearestDownTo(
  outline: Outline,
  point: Point,
  leastIn: number,
): { readonly edge: Edge | null; readonly clearanceIn: number } {
  let nearest: Edge | null = null;
  let clearanceIn = Infinity;
  for (const edge of allEdges(outline)) {
    const offIn = distanceToOneEdgeIn(edge, point);
    if (offIn >= clearanceIn) continue;
    nearest = edge;
    clearanceIn = offIn;
    if (clearanceIn <= leastIn) break;
  }
  return { edge: nearest, clearanceIn };
}

const edgesOfOutline = new WeakMap<Outline, readonly Edge[]>();

/** Looking for the roomiest point asks thousands of times for the same edges: they are made once. */
function allEdges(outline: Outline): readonly Edge[] {
  const known = edgesOfOutline.get(outline);
  if (known !== undefined) return known;
  const edges = outline.rings.flatMap((ring) => edgesOf(ring));
  edgesOfOutline.set(outline, edges);
  return edges;
}

/** Where an arc reaches furthest right, up, left and down, if it gets there. */
function extremesOf(from: Vertex, to: Point): Point[] {
  const { centre, radiusIn } = circleOf(from, to);
  return [
    { xIn: centre.xIn + radiusIn, yIn: centre.yIn },
    { xIn: centre.xIn, yIn: centre.yIn + radiusIn },
    { xIn: centre.xIn - radiusIn, yIn: centre.yIn },
    { xIn: centre.xIn, yIn: centre.yIn - radiusIn },
  ].filter((place) => meetsArc(from, to, centre, place));
}

/** Distance from a point to the nearer end of an edge [in]. */
function toEndsIn(from: Point, to: Point, point: Point): number {
  return Math.min(distanceIn(from, point), distanceIn(to, point));
}

/** Shortest distance from a point to one edge [in]. */
export function distanceToOneEdgeIn({ from, to }: Pick<Edge, 'from' | 'to'>, point: Point): number {
  if (from.bulge !== 0) {
    const { centre, radiusIn } = circleOf(from, to);
    if (!meetsArc(from, to, centre, point)) return toEndsIn(from, to, point);
    return Math.min(toEndsIn(from, to, point), Math.abs(distanceIn(centre, point) - radiusIn));
  }
  const lengthIn = distanceIn(from, to);
  if (lengthIn === 0) return toEndsIn(from, to, point);
  const alongIn =
    ((point.xIn - from.xIn) * (to.xIn - from.xIn) + (point.yIn - from.yIn) * (to.yIn - from.yIn)) / lengthIn;
  if (alongIn < 0 || alongIn > lengthIn) return toEndsIn(from, to, point);
  return Math.abs(crossSqIn(from, to, point)) / lengthIn;
}

/** Whether a point is no farther from an edge than said. */
export function isOnEdge(edge: Pick<Edge, 'from' | 'to'>, point: Point, withinIn: number): boolean {
  const { from, to } = edge;
  // Most edges are far away, which is told by less than a distance.
  if (from.bulge === 0) {
    if (point.xIn < from.xIn - withinIn && point.xIn < to.xIn - withinIn) return false;
    if (point.xIn > from.xIn + withinIn && point.xIn > to.xIn + withinIn) return false;
    if (point.yIn < from.yIn - withinIn && point.yIn < to.yIn - withinIn) return false;
    if (point.yIn > from.yIn + withinIn && point.yIn > to.yIn + withinIn) return false;
  }
  return distanceToOneEdgeIn(edge, point) <= withinIn;
}

/** Distance of a point to a line from place to place [in]; of one place, to it; Infinity of none. */
export function distanceToLineIn(line: readonly Point[], point: Point): number {
  const edges = line.slice(1).map((to, step) => straightEdge(line[step] ?? to, to));
  return Math.min(
    ...line.slice(0, 1).map((first) => distanceIn(first, point)),
    ...edges.map((edge) => distanceToOneEdgeIn(edge, point)),
  );
}

function straightEdge(from: Point, to: Point): Edge {
  const vertex = (at: Point) => ({ ...at, bulge: 0, edge: 'formed' }) as const;
  return { number: 1, from: vertex(from), to: vertex(to) };
}
