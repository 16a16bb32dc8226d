import { distanceIn, type Edge, type Point } from './outline.ts';

/** Two straight edges that run opposite ways beside each other, as of two shapes laid side by side. */
export type Facing = {
  readonly edge: Edge;
  readonly other: Edge;
  /** The stretch they share, as distances along the first edge from its start [in]. */
  readonly fromIn: number;
  readonly toIn: number;
  /**
   * How far the other edge lies to the right of the first, at both ends of that stretch [in]; the
   * inside is on the left of an edge, so above 0 is a gap and below 0 a lap.
   */
  readonly gapsIn: readonly [number, number];
  /** The greater of the two, gap or lap alike. */
  readonly missIn: number;
  /** What the other edge must be turned by to be parallel [rad]. */
  readonly turnRad: number;
};

/** Parallel within a hair: 1/4 in over 10 ft. Common practice, no source. */
const PARALLEL_RAD = 0.25 / 120;

/** Edges that share less than this only meet at a corner [in]. */
const LEAST_SHARED_IN = 1;

/** Misses that differ by less are the same, and the longer shared stretch decides [in]. */
const SAME_MISS_IN = 1e-6;

/** The two edges that face each other nearest, or null if none do. */
export function nearestFacing(edges: readonly Edge[], others: readonly Edge[]): Facing | null {
  let best: Facing | null = null;
  for (const edge of edges) {
    for (const other of others) {
      const facing = facingOf(edge, other);
      if (facing !== null && (best === null || isNearer(facing, best))) best = facing;
    }
  }
  return best;
}

function isNearer(one: Facing, best: Facing): boolean {
  if (Math.abs(one.missIn - best.missIn) > SAME_MISS_IN) return one.missIn < best.missIn;
  return one.toIn - one.fromIn > best.toIn - best.fromIn;
}

function facingOf(edge: Edge, other: Edge): Facing | null {
  if (edge.from.bulge !== 0 || other.from.bulge !== 0) return null;
  const lengthIn = distanceIn(edge.from, edge.to);
  const otherIn = distanceIn(other.from, other.to);
  if (!(lengthIn > 0 && otherIn > 0)) return null;
  const along = unitOf(edge.from, edge.to, lengthIn);
  const back = unitOf(other.to, other.from, otherIn);
  const turnRad = Math.atan2(
    back.xIn * along.yIn - back.yIn * along.xIn,
    back.xIn * along.xIn + back.yIn * along.yIn,
  );
  if (!(Math.abs(turnRad) <= PARALLEL_RAD)) return null;

  const start = placeOn(edge.from, along, other.to);
  const end = placeOn(edge.from, along, other.from);
  const fromIn = Math.max(0, start.alongIn);
  const toIn = Math.min(lengthIn, end.alongIn);
  if (!(toIn - fromIn >= LEAST_SHARED_IN)) return null;
  const gapAtIn = (alongIn: number) =>
    start.rightIn +
    ((end.rightIn - start.rightIn) * (alongIn - start.alongIn)) / (end.alongIn - start.alongIn);
  const gapsIn = [gapAtIn(fromIn), gapAtIn(toIn)] as const;
  const missIn = Math.max(...gapsIn.map(Math.abs));
  return { edge, other, fromIn, toIn, gapsIn, missIn, turnRad };
}

export function unitOf(from: Point, to: Point, lengthIn: number): Point {
  return { xIn: (to.xIn - from.xIn) / lengthIn, yIn: (to.yIn - from.yIn) / lengthIn };
}

/** Where a point stands beside a line: along it from its start, and to its right. */
export function placeOn(
  origin: Point,
  along: Point,
  point: Point,
): { readonly alongIn: number; readonly rightIn: number } {
  const xIn = point.xIn - origin.xIn;
  const yIn = point.yIn - origin.yIn;
  return {
    alongIn: along.xIn * xIn + along.yIn * yIn,
    rightIn: along.yIn * xIn - along.xIn * yIn,
  };
}
