import { areaPathsD, booleanOpD, ClipType, FillRule, type PathsD } from 'clipper2-ts';
import { orient, polygonRing } from './build.ts';
import { type Bounds, boundsOf, containsPoint, distanceToEdgeIn, ringAreaSqIn } from './measure.ts';
import { distanceIn, type Outline, type Point, type Ring } from './outline.ts';
import { straightened } from './tessellate.ts';

/** Chords this near their arcs [in]: far below what a tape can tell, and their area is that of the arc. */
export const OFF_ARC_IN = 1e-3;

/** Decimals of an inch kept; without it the library rounds to two. */
export const PRECISION = 6;

/** What chords in place of arcs can pretend to stick out [in]. */
const NOISE_IN = 4e-3;

/** Along each side of what sticks out a point is looked at every inch, but no more than these. */
const MOST_LOOKS = 16;

/**
 * Area that two outlines have in common [in²]; 0 where they only touch, but for noise of about a
 * few thousandths of an inch along arcs that lie on each other.
 */
export function overlapAreaSqIn(a: Outline, b: Outline): number {
  if (!boxesMeet(boundsOf(a), boundsOf(b))) return 0;
  return areaPathsD(booleanOpD(ClipType.Intersection, pathsOf(a), pathsOf(b), FillRule.NonZero, PRECISION));
}

/**
 * The pieces of an outline between two upright lines, each with its holes, arcs as chords.
 *
 * @param band.offArcIn How far a chord may be from its arc [in].
 */
export function piecesBetween(
  outline: Outline,
  band: { readonly fromXIn: number; readonly toXIn: number; readonly offArcIn: number },
): readonly Outline[] {
  const { fromXIn, toXIn, offArcIn } = band;
  const { minYIn, maxYIn } = boundsOf(outline);
  const box = [
    { x: fromXIn, y: minYIn - 1 },
    { x: toXIn, y: minYIn - 1 },
    { x: toXIn, y: maxYIn + 1 },
    { x: fromXIn, y: maxYIn + 1 },
  ];
  const paths = chordPaths(outline, offArcIn);
  return outlinesOf(booleanOpD(ClipType.Intersection, paths, [box], FillRule.NonZero, PRECISION));
}

/** What two outlines have in common, each piece with its holes, arcs as chords. */
export function commonPieces(a: Outline, b: Outline): readonly Outline[] {
  if (!boxesMeet(boundsOf(a), boundsOf(b))) return [];
  return outlinesOf(booleanOpD(ClipType.Intersection, pathsOf(a), pathsOf(b), FillRule.NonZero, PRECISION));
}

/** What is left of an outline without some others, each piece with its holes, arcs as chords. */
export function piecesOutside(outline: Outline, others: readonly Outline[]): readonly Outline[] {
  const bounds = boundsOf(outline);
  const without = others.filter((other) => boxesMeet(bounds, boundsOf(other))).flatMap(pathsOf);
  return outlinesOf(booleanOpD(ClipType.Difference, pathsOf(outline), without, FillRule.NonZero, PRECISION));
}

function outlinesOf(paths: PathsD): readonly Outline[] {
  const rings = paths.map((path) => polygonRing(path.map(({ x, y }) => ({ xIn: x, yIn: y }))));
  const holes = rings.filter((ring) => ringAreaSqIn(ring) < 0);
  return rings
    .filter((ring) => ringAreaSqIn(ring) > 0)
    .map((outer) => ({ rings: [outer, ...holes.filter((hole) => isRingIn(hole, outer))] }));
}

function isRingIn([corner]: Ring, outer: Ring): boolean {
  return corner !== undefined && containsPoint({ rings: [outer] }, corner);
}

/** Most pairs of shapes stand apart, and a box tells that at once. */
function boxesMeet(a: Bounds, b: Bounds): boolean {
  return a.minXIn < b.maxXIn && b.minXIn < a.maxXIn && a.minYIn < b.maxYIn && b.minYIn < a.maxYIn;
}

/** Area that at least one of the outlines covers [in²]: what lies under several counts once. */
export function unionAreaSqIn(outlines: readonly Outline[]): number {
  const paths = outlines.flatMap(pathsOf);
  return areaPathsD(booleanOpD(ClipType.Union, paths, [], FillRule.NonZero, PRECISION));
}

/**
 * Whether a ring, run either way, lies within an outline; it may touch the edge. If not, how far it
 * reaches past the edge [in]: the farthest found along what sticks out, at the least its area over its
 * perimeter, so that a ring laid over a hole does not pass for one that touches it.
 */
export function isWithin(
  outer: Outline,
  inner: Ring,
): { readonly ok: true } | { readonly ok: false; readonly byIn: number } {
  const within = pathsOf({ rings: [inner] });
  const outside = booleanOpD(ClipType.Difference, within, pathsOf(outer), FillRule.NonZero, PRECISION);
  let byIn = 0;
  let perimeterIn = 0;
  for (const path of outside) {
    for (const [index, { x, y }] of path.entries()) {
      const from = { xIn: x, yIn: y };
      const next = path[(index + 1) % path.length] ?? { x, y };
      const to = { xIn: next.x, yIn: next.y };
      perimeterIn += distanceIn(from, to);
      for (const point of looksAlong(from, to)) byIn = Math.max(byIn, distanceToEdgeIn(outer, point));
    }
  }
  if (perimeterIn > 0) byIn = Math.max(byIn, areaPathsD(outside) / perimeterIn);
  return byIn > NOISE_IN ? { ok: false, byIn } : { ok: true };
}

const pathsOfOutline = new WeakMap<Outline, PathsD>();

/** An outline is held against many others: its chords are made once. */
function pathsOf(outline: Outline): PathsD {
  const known = pathsOfOutline.get(outline);
  if (known !== undefined) return known;
  const paths = chordPaths(outline, OFF_ARC_IN);
  pathsOfOutline.set(outline, paths);
  return paths;
}

/** The rings of an outline as the library takes them, arcs as chords. */
export function chordPaths(outline: Outline, offArcIn: number): PathsD {
  return orient(outline).rings.map((ring) =>
    straightened(ring, offArcIn).map(({ xIn, yIn }) => ({ x: xIn, y: yIn })),
  );
}

function looksAlong(from: Point, to: Point): Point[] {
  const count = Math.min(MOST_LOOKS, Math.max(1, Math.ceil(distanceIn(from, to))));
  return Array.from({ length: count }, (_, look) => ({
    xIn: from.xIn + ((to.xIn - from.xIn) * look) / count,
    yIn: from.yIn + ((to.yIn - from.yIn) * look) / count,
  }));
}
