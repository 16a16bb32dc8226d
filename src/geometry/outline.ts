/** What stands at an edge: a form, the house, concrete that stays, or a joint to a neighbouring slab. */
export type EdgeKind = 'formed' | 'house' | 'stays' | 'joint';

export type Point = { readonly xIn: number; readonly yIn: number };

/**
 * A corner, with the edge that starts at it and runs to the next corner.
 * `bulge` is tan(sweep / 4): 0 straight, 1 a half circle, anticlockwise positive.
 */
export type Vertex = Point & { readonly bulge: number; readonly edge: EdgeKind };

/** Closed: the last vertex's edge runs back to the first, which is not repeated. */
export type Ring = readonly Vertex[];

/** One outer ring, anticlockwise (x right, y up), first; then the holes, clockwise. */
export type Outline = { readonly rings: readonly Ring[] };

export type Edge = {
  /** 1 for the edge from corner 1 to corner 2. */
  readonly number: number;
  readonly from: Vertex;
  readonly to: Vertex;
};

export function edgesOf(ring: Ring): Edge[] {
  return ring.map((from, index) => ({ number: index + 1, from, to: vertexAt(ring, index + 1) }));
}

/** The vertex at an index that may run past either end of the ring. */
export function vertexAt(ring: Ring, index: number): Vertex {
  const count = ring.length;
  const vertex = ring[index >= 0 && index < count ? index : ((index % count) + count) % count];
  if (vertex === undefined) throw new RangeError('a ring needs at least one vertex');
  return vertex;
}

export function distanceIn(from: Point, to: Point): number {
  return Math.sqrt((to.xIn - from.xIn) ** 2 + (to.yIn - from.yIn) ** 2);
}

/** Twice the signed area of the triangle origin, a, b [in²]: above 0 when b lies left of a. */
export function crossSqIn(origin: Point, a: Point, b: Point): number {
  return (a.xIn - origin.xIn) * (b.yIn - origin.yIn) - (a.yIn - origin.yIn) * (b.xIn - origin.xIn);
}
