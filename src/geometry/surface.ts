import { type HalfPlane, leftOf, valueOf } from './half-plane.ts';
import { crossSqIn, distanceIn, type Point } from './outline.ts';
import { triangulate } from './triangulate.ts';

export type HeightPoint = Point & { readonly heightIn: number };

/** Anticlockwise on the plan. */
export type Triangle = readonly [HeightPoint, HeightPoint, HeightPoint];

/** A plane by a point on it and how it climbs along x and y [rise over run]. */
export type Plane = { readonly at: HeightPoint; readonly climbX: number; readonly climbY: number };

/**
 * A surface of plane triangles over points with heights. Beyond the hull of its points it goes on as the
 * plane of the triangle at the nearest edge of the hull; what lies out from a corner of the hull belongs to
 * the edge on its side of the line that halves the corner. Where a point stands within an inch of an edge of
 * the hull, it counts as a point on it: how the sliver between them leans would be chance.
 */
export type Surface = {
  readonly triangles: readonly Triangle[];
  /** For each edge of the hull the parts of the plan outside of it, each with the triangle that goes on. */
  readonly beyond: readonly { readonly sides: readonly HalfPlane[]; readonly triangle: Triangle }[];
};

/** Points that near to one line [in] hold no surface: how it leans across the line would be chance. */
const IN_LINE_IN = 1;

/** Points nearer than this are at one place [in]. */
const SAME_PLACE_IN = 1 / 16;

/**
 * The surface through points with heights.
 *
 * @param points Each place once.
 * @param breaklines Lines it does not bend across: pairs of indexes of points that become edges of
 *                   triangles, meeting at their ends only.
 * @returns Null where there are no three points, or all are within an inch of one line.
 * @throws {RangeError} If two points are at one place, or a value is not a finite number.
 */
export function surfaceThrough(
  points: readonly HeightPoint[],
  breaklines: readonly (readonly [number, number])[] = [],
): Surface | null {
  refuseBadPoints(points);
  if (areInLine(points)) return null;
  const triangles = triangulate(points, breaklines).map((triple): Triangle => {
    const [a, b, c] = triple.map((index) => points[index]);
    if (a === undefined || b === undefined || c === undefined) throw new RangeError('a corner is no point');
    return [a, b, c];
  });
  return { triangles, beyond: beyondHull(triangles) };
}

/** Whether no three of the points stand more than an inch off one line; fewer than three never do. */
export function areInLine(points: readonly Point[]): boolean {
  let longest: readonly [Point, Point] | null = null;
  for (const [index, from] of points.entries()) {
    for (const to of points.slice(index + 1)) {
      if (longest === null || distanceIn(from, to) > distanceIn(...longest)) longest = [from, to];
    }
  }
  if (longest === null) return true;
  const [from, to] = longest;
  const lengthIn = distanceIn(from, to);
  return points.every((point) => Math.abs(crossSqIn(from, to, point)) <= IN_LINE_IN * lengthIn);
}

/** Height of a surface at a point [in]. */
export function heightAt(surface: Surface, point: Point): number {
  return planeHeightIn(planeAt(surface, point), point);
}

/** Height of a plane at a point [in]. */
export function planeHeightIn({ at, climbX, climbY }: Plane, point: Point): number {
  return at.heightIn + climbX * (point.xIn - at.xIn) + climbY * (point.yIn - at.yIn);
}

/** The plane of the triangle that a point lies in, on an edge that of the first; see `Surface` for outside. */
export function planeAt(surface: Surface, point: Point): Plane {
  return planeOf(triangleAt(surface, point));
}

/** The triangle whose plane a surface has at a point; see `planeAt`. */
export function triangleAt(surface: Surface, point: Point): Triangle {
  const around = surface.triangles.find(
    ([a, b, c]) => crossSqIn(a, b, point) >= 0 && crossSqIn(b, c, point) >= 0 && crossSqIn(c, a, point) >= 0,
  );
  if (around !== undefined) return around;
  const leastIn = (sides: readonly HalfPlane[]) =>
    sides.reduce((valueIn, side) => Math.min(valueIn, valueOf(side, point)), Infinity);
  const [first, ...others] = surface.beyond;
  if (first === undefined) throw new RangeError('a surface needs at least one triangle');
  // On the line between two parts the noise of a double may leave a point in neither: the nearest is taken.
  const nearest = others.reduce(
    (best, one) => (leastIn(one.sides) > leastIn(best.sides) ? one : best),
    first,
  );
  return nearest.triangle;
}

/**
 * The plane through three points: z = z0 + a x + b y, by the two sides from the first point.
 * Source: definition.
 */
export function planeOf([at, b, c]: Triangle): Plane {
  const twiceSqIn = crossSqIn(at, b, c);
  const toB = { x: b.xIn - at.xIn, y: b.yIn - at.yIn, z: b.heightIn - at.heightIn };
  const toC = { x: c.xIn - at.xIn, y: c.yIn - at.yIn, z: c.heightIn - at.heightIn };
  return {
    at,
    climbX: (toB.z * toC.y - toC.z * toB.y) / twiceSqIn,
    climbY: (toC.z * toB.x - toB.z * toC.x) / twiceSqIn,
  };
}

/** How steep a plane falls [rise over run], 0 or more: sqrt(a² + b²), and which way on the plan. */
export function fallOf({ climbX, climbY }: Plane): {
  readonly slope: number;
  /** Anticlockwise from x; 0 where it is level. */
  readonly towardsRad: number;
} {
  const slope = Math.hypot(climbX, climbY);
  return { slope, towardsRad: slope === 0 ? 0 : Math.atan2(-climbY, -climbX) };
}

/** How a plane climbs in a direction on the plan [rise over run]; below 0 where it falls. */
export function climbTowards({ climbX, climbY }: Plane, directionRad: number): number {
  return climbX * Math.cos(directionRad) + climbY * Math.sin(directionRad);
}

/**
 * The mean climb of a surface from one point to another [rise over run]; below 0 where it falls.
 * @throws {RangeError} If the two points are the same.
 */
export function climbAlong(surface: Surface, line: { readonly from: Point; readonly to: Point }): number {
  const lengthIn = distanceIn(line.from, line.to);
  if (!(lengthIn > 0)) throw new RangeError('a climb needs two different points');
  return (heightAt(surface, line.to) - heightAt(surface, line.from)) / lengthIn;
}

/** The same surface lower by a thickness [in]. */
export function lowered(surface: Surface, byIn: number): Surface {
  const down = (triangle: Triangle): Triangle => {
    const [a, b, c] = triangle;
    const lower = (point: HeightPoint) => ({ ...point, heightIn: point.heightIn - byIn });
    return [lower(a), lower(b), lower(c)];
  };
  return {
    triangles: surface.triangles.map(down),
    beyond: surface.beyond.map(({ sides, triangle }) => ({ sides, triangle: down(triangle) })),
  };
}

/** An edge of a triangle, which lies left of it. */
type Edge = { readonly from: Point; readonly to: Point; readonly triangle: Triangle };

/** Edges that belong to one triangle only, each with what lies outside of it. */
function beyondHull(triangles: readonly Triangle[]): Surface['beyond'] {
  const edges = triangles.flatMap((triangle): Edge[] => {
    const [a, b, c] = triangle;
    return [
      { from: a, to: b, triangle },
      { from: b, to: c, triangle },
      { from: c, to: a, triangle },
    ];
  });
  const hull = edges.filter(({ from, to }) => !edges.some((other) => other.from === to && other.to === from));
  return hull.flatMap((edge) => {
    const before = hull.find(({ to }) => to === edge.from) ?? edge;
    const after = hull.find(({ from }) => from === edge.to) ?? edge;
    const sides = [
      leftOf(edge.to, edge.from),
      leftOf(edge.from, outFrom(edge.from, before, edge)),
      leftOf(outFrom(edge.to, edge, after), edge.to),
    ];
    const parts = partsBeyond(edge, edge, edges) ?? [{ sides: [], triangle: edge.triangle }];
    return parts.map((part) => ({ sides: [...sides, ...part.sides], triangle: part.triangle }));
  });
}

/**
 * How the ground goes on out from an edge: as its triangle, or where the tip of that stands within an inch of
 * the edge, as the triangles behind it, each up to the line from the tip straight out.
 *
 * @param hull The edge of the hull; `edge` is it, or one behind it.
 * @param passed Slivers so far, each looked behind once: of many readings along a wall there are too many ways.
 * @returns Null where there are slivers only.
 */
function partsBeyond(
  edge: Edge,
  hull: Edge,
  edges: readonly Edge[],
  passed: Set<Triangle> = new Set(),
): Surface['beyond'] | null {
  const { from, to, triangle } = edge;
  const tip = triangle.find((corner) => corner !== from && corner !== to);
  if (tip === undefined) throw new RangeError('a triangle needs a corner off its edge');
  if (crossSqIn(hull.from, hull.to, tip) > IN_LINE_IN * distanceIn(hull.from, hull.to))
    return [{ sides: [], triangle }];
  passed.add(triangle);
  const behind = (start: Point, end: Point) => {
    const next = edges.find((other) => other.from === start && other.to === end);
    if (next === undefined || passed.has(next.triangle)) return null;
    return partsBeyond(next, hull, edges, passed);
  };
  const before = behind(from, tip);
  const after = behind(tip, to);
  if (before === null || after === null) return before ?? after;
  const out = outFrom(tip, hull, hull);
  return [
    ...before.map((part) => ({ ...part, sides: [...part.sides, leftOf(out, tip)] })),
    ...after.map((part) => ({ ...part, sides: [...part.sides, leftOf(tip, out)] })),
  ];
}

/** A point out from a corner of the hull, on the line that halves the corner. */
function outFrom(corner: Point, before: Edge, after: Edge): Point {
  const outward = ({ from, to }: Edge) => {
    const lengthIn = distanceIn(from, to);
    return { x: (to.yIn - from.yIn) / lengthIn, y: (from.xIn - to.xIn) / lengthIn };
  };
  const one = outward(before);
  const other = outward(after);
  return { xIn: corner.xIn + one.x + other.x, yIn: corner.yIn + one.y + other.y };
}

function refuseBadPoints(points: readonly HeightPoint[]): void {
  for (const [index, point] of points.entries()) {
    const { xIn, yIn, heightIn } = point;
    if (![xIn, yIn, heightIn].every(Number.isFinite)) {
      throw new RangeError(`a height point must be finite, got ${xIn}, ${yIn}, ${heightIn}`);
    }
    const twin = points.slice(0, index).find((other) => distanceIn(other, point) < SAME_PLACE_IN);
    if (twin !== undefined) throw new RangeError(`two points at one place, ${xIn}, ${yIn}`);
  }
}
