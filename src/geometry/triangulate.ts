import Delaunator from 'delaunator';
import { crossSqIn, type Point } from './outline.ts';

/** Three indexes of points, anticlockwise. */
export type IndexTriple = readonly [number, number, number];
type Pair = readonly [number, number];

/** A triangle of less is none [in²]. */
const NO_AREA_SQ_IN = 1e-9;

/**
 * The Delaunay triangles of points, with given lines among their edges. The same points in the same order
 * always give the same triangles, also where four lie on a circle.
 *
 * @param edges Pairs of indexes; they may meet at their ends only. One that runs through a point is left out.
 * @returns None where fewer than three points are not in a line.
 */
export function triangulate(points: readonly Point[], edges: readonly Pair[]): readonly IndexTriple[] {
  if (points.length < 3) return [];
  const { triangles } = new Delaunator(points.flatMap(({ xIn, yIn }) => [xIn, yIn]));
  const triples: IndexTriple[] = [];
  for (let index = 0; index < triangles.length; index += 3) {
    const [a = 0, b = 0, c = 0] = triangles.subarray(index, index + 3);
    const twiceSqIn = side(points, a, b, c);
    if (Math.abs(twiceSqIn) < 2 * NO_AREA_SQ_IN) continue;
    triples.push(twiceSqIn > 0 ? [a, b, c] : [a, c, b]);
  }
  // Most lines are edges already, and an edge that stands for a line is not turned for another one.
  let there = edgeKeys(triples);
  for (const edge of edges) {
    if (there.has(keyOf(edge))) continue;
    force(points, triples, edge);
    there = edgeKeys(triples);
  }
  return triples;
}

function edgeKeys(triples: readonly IndexTriple[]): ReadonlySet<string> {
  return new Set(triples.flatMap(edgesOfTriple).map(keyOf));
}

function keyOf([from, to]: Pair): string {
  return `${from} ${to}`;
}

/**
 * Turns the diagonals that cross a line until the line is an edge. What does not stand in the way stays as
 * it is. Source: S. W. Sloan, "A fast algorithm for generating constrained Delaunay triangulations" (from
 * memory).
 */
function force(points: readonly Point[], triples: IndexTriple[], edge: Pair): void {
  let crossing = triples.flatMap(edgesOfTriple).filter(([u, v]) => u < v && cross(points, edge, [u, v]));
  crossing = crossing.filter(([u, v], index) => crossing.findIndex((other) => isPair(other, u, v)) === index);
  // A point on the line stops the turning: then the line is no edge.
  for (let turns = 4 * crossing.length ** 2; turns > 0; turns -= 1) {
    const [first, ...rest] = crossing;
    if (first === undefined) return;
    const turned = turnDiagonal(points, triples, first);
    if (turned === null) crossing = [...rest, first];
    else crossing = cross(points, edge, turned) ? [...rest, turned] : rest;
  }
}

/** Turns the diagonal of the two triangles at an edge; null where they make no convex four-sided shape. */
function turnDiagonal(points: readonly Point[], triples: IndexTriple[], [u, v]: Pair): Pair | null {
  const at = triples.flatMap((triple, index) =>
    edgesOfTriple(triple).some(([from, to]) => isPair([u, v], from, to)) ? [index] : [],
  );
  const [one = -1, other = -1] = at;
  const p = triples[one]?.find((corner) => corner !== u && corner !== v);
  const q = triples[other]?.find((corner) => corner !== u && corner !== v);
  if (p === undefined || q === undefined || !cross(points, [p, q], [u, v])) return null;
  triples[one] = anticlockwise(points, p, q, u);
  triples[other] = anticlockwise(points, p, q, v);
  return [p, q];
}

function anticlockwise(points: readonly Point[], a: number, b: number, c: number): IndexTriple {
  return side(points, a, b, c) > 0 ? [a, b, c] : [a, c, b];
}

function edgesOfTriple([a, b, c]: IndexTriple): readonly Pair[] {
  return [[a, b] as const, [b, c] as const, [c, a] as const].flatMap(([from, to]): Pair[] => [
    [from, to],
    [to, from],
  ]);
}

function isPair([a, b]: Pair, u: number, v: number): boolean {
  return (a === u && b === v) || (a === v && b === u);
}

/** Whether two lines cross between their ends. */
function cross(points: readonly Point[], [a, b]: Pair, [u, v]: Pair): boolean {
  return (
    side(points, a, b, u) * side(points, a, b, v) < 0 && side(points, u, v, a) * side(points, u, v, b) < 0
  );
}

function side(points: readonly Point[], a: number, b: number, c: number): number {
  return crossSqIn(pointAt(points, a), pointAt(points, b), pointAt(points, c));
}

function pointAt(points: readonly Point[], index: number): Point {
  const point = points[index];
  if (point === undefined) throw new RangeError(`no point number ${index}`);
  return point;
}
