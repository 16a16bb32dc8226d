import { distanceToOneEdgeIn } from './measure.ts';
import { type Edge, edgesOf, type Point, type Ring } from './outline.ts';
import { straightened } from './tessellate.ts';

/** An edge of a finished ring: the number of the taped edge it is part of, and the points along it. */
export type NumberedEdge = {
  /** Null for what is no part of one: the curve of a rounded corner, the sides of a piece that was joined on. */
  readonly number: number | null;
  /** Both ends, and between them the corners of chords that stand in for an arc. */
  readonly points: readonly Point[];
};

/** Nearer than this a point lies on an edge [in]. */
const ON_EDGE_IN = 1e-3;
/** How far the middle of a chord may be from its arc [in]. */
const OFF_ARC_IN = 1e-3;

/**
 * The edges of a finished ring, each by the number of the edge it had before corners were rounded and
 * pieces joined on.
 *
 * @param finished The outer ring, in its own order.
 * @param taped    The ring with sharp corners, edges bent, its first edge number 1.
 */
export function numberedEdges(finished: Ring, taped: Ring): readonly NumberedEdge[] {
  const before = edgesOf(taped);
  return edgesOf(finished).map((edge) => {
    const points = pointsAlong(edge);
    const looks = [...points, ...points.slice(1).map((to, index) => between(points[index] ?? to, to))];
    const isOn = (one: Edge) => looks.every((point) => distanceToOneEdgeIn(one, point) < ON_EDGE_IN * 2);
    return { number: before.find(isOn)?.number ?? null, points };
  });
}

function pointsAlong({ from, to }: Edge): readonly Point[] {
  const chords = straightened([from, { ...to, bulge: 0 }], OFF_ARC_IN);
  return chords.map(({ xIn, yIn }) => ({ xIn, yIn }));
}

function between(one: Point, other: Point): Point {
  return { xIn: (one.xIn + other.xIn) / 2, yIn: (one.yIn + other.yIn) / 2 };
}
