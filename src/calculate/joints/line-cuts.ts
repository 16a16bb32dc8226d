import {
  clipLineToOutline,
  distanceToOneEdgeIn,
  type Outline,
  type Point,
  type Stretch,
  unitAlong,
  vertexAt,
} from '../../geometry/index.ts';

/** A way to cut a panel: straight pieces, cut one after the other. */
export type Cut = readonly (readonly Point[])[];

/** Ends nearer than this are one [in]. */
const SAME_IN = 1e-5;

/**
 * The cuts along a line through a panel, from its outer edge to its outer edge, over any holes between.
 * A line that touches a corner stops there.
 */
export function cutsAlong(outline: Outline, at: Point, directionRad: number): readonly Cut[] {
  const line = crossed(outline, at, directionRad);
  const cuts: Cut[] = [];
  for (const index of line.stretches.keys()) {
    // Each run over holes is found where it starts.
    if (line.startsOn(index) !== 0) continue;
    const cut = chained(line, index);
    if (cut !== null) cuts.push(cut);
  }
  return cuts;
}

/** The cut from a point of the edge in a direction; and back over the hole where the point is on one. */
export function cutFrom(outline: Outline, at: Point, directionRad: number): Cut | null {
  const line = crossed(outline, at, directionRad);
  let first = line.stretches.findIndex(({ fromIn }) => Math.abs(fromIn) < SAME_IN);
  if (first < 0) return null;
  for (let ring = line.startsOn(first); ring !== 0; ring = line.startsOn(first)) {
    if (first === 0 || line.endsOn(first - 1) !== ring) return null;
    first -= 1;
  }
  return chained(line, first);
}

/** The straight piece from a point of the edge of a hole to the outer edge; null where it meets another hole. */
export function rayFrom(outline: Outline, at: Point, directionRad: number): readonly Point[] | null {
  const line = crossed(outline, at, directionRad);
  const index = line.stretches.findIndex(({ fromIn }) => Math.abs(fromIn) < SAME_IN);
  const stretch = line.stretches[index];
  return stretch === undefined || line.endsOn(index) !== 0 ? null : line.ends(stretch);
}

type Crossed = {
  readonly stretches: readonly Stretch[];
  readonly ends: (stretch: Stretch) => readonly [Point, Point];
  /** The ring that a stretch starts on, and that it ends on. */
  readonly startsOn: (index: number) => number;
  readonly endsOn: (index: number) => number;
};

function chained(line: Crossed, first: number): Cut | null {
  const cut: (readonly Point[])[] = [];
  for (let index = first; ; index += 1) {
    const stretch = line.stretches[index];
    if (stretch === undefined) return null;
    cut.push(line.ends(stretch));
    const endsOn = line.endsOn(index);
    if (endsOn === 0) return cut;
    if (index + 1 === line.stretches.length || line.startsOn(index + 1) !== endsOn) return null;
  }
}

/** The stretches of a line inside an outline; ended where a corner is touched. */
function crossed(outline: Outline, at: Point, directionRad: number): Crossed {
  const along = unitAlong(directionRad);
  const on = (alongIn: number): Point => ({
    xIn: at.xIn + along.xIn * alongIn,
    yIn: at.yIn + along.yIn * alongIn,
  });
  const line = { fromXIn: at.xIn, fromYIn: at.yIn, toXIn: at.xIn + along.xIn, toYIn: at.yIn + along.yIn };
  const touchedIn: number[] = [];
  for (const ring of outline.rings) {
    for (const { xIn, yIn } of ring) {
      const offIn = along.xIn * (yIn - at.yIn) - along.yIn * (xIn - at.xIn);
      if (Math.abs(offIn) < SAME_IN) {
        touchedIn.push(along.xIn * (xIn - at.xIn) + along.yIn * (yIn - at.yIn));
      }
    }
  }
  const stretches = clipLineToOutline(line, outline).flatMap(({ fromIn, toIn }) => {
    const breaksIn = touchedIn
      .filter((atIn) => atIn > fromIn + SAME_IN && atIn < toIn - SAME_IN)
      .toSorted((one, other) => one - other);
    const endsIn = [fromIn, ...breaksIn, toIn];
    return endsIn.slice(1).map((endIn, index) => ({ fromIn: endsIn[index] ?? fromIn, toIn: endIn }));
  });
  const known = new Map<number, number>();
  const ringOn = (alongIn: number | undefined) => {
    if (alongIn === undefined || outline.rings.length === 1) return 0;
    const ring = known.get(alongIn) ?? ringAt(outline, on(alongIn));
    known.set(alongIn, ring);
    return ring;
  };
  return {
    stretches,
    ends: ({ fromIn, toIn }) => [on(fromIn), on(toIn)],
    startsOn: (index) => ringOn(stretches[index]?.fromIn),
    endsOn: (index) => ringOn(stretches[index]?.toIn),
  };
}

/** The ring a point of the edge lies on. */
function ringAt({ rings }: Outline, point: Point): number {
  let [nearest, nearestIn] = [0, Infinity];
  for (const [ringIndex, ring] of rings.entries()) {
    for (const [index, from] of ring.entries()) {
      const offIn = distanceToOneEdgeIn({ from, to: vertexAt(ring, index + 1) }, point);
      if (offIn < nearestIn) [nearest, nearestIn] = [ringIndex, offIn];
    }
  }
  return nearest;
}
