import {
  clipLineToOutline,
  distanceToOneEdgeIn,
  edgesOf,
  type Outline,
  type Point,
  type Stretch,
  unitAlong,
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
  const { on, stretches } = crossed(outline, at, directionRad);
  const cuts: Cut[] = [];
  for (const [index, { startsOn }] of stretches.entries()) {
    // Each run over holes is found where it starts.
    if (startsOn !== 0) continue;
    const cut = chained(stretches, index, on);
    if (cut !== null) cuts.push(cut);
  }
  return cuts;
}

/** The cut from a point of the edge in a direction; and back over the hole where the point is on one. */
export function cutFrom(outline: Outline, at: Point, directionRad: number): Cut | null {
  const { on, stretches } = crossed(outline, at, directionRad);
  let first = stretches.findIndex(({ fromIn }) => Math.abs(fromIn) < SAME_IN);
  if (first < 0) return null;
  while ((stretches[first]?.startsOn ?? 0) !== 0) {
    const before = stretches[first - 1];
    if (before === undefined || before.endsOn !== stretches[first]?.startsOn) return null;
    first -= 1;
  }
  return chained(stretches, first, on);
}

/** The straight piece from a point of the edge of a hole to the outer edge; null where it meets another hole. */
export function rayFrom(outline: Outline, at: Point, directionRad: number): readonly Point[] | null {
  const { on, stretches } = crossed(outline, at, directionRad);
  const stretch = stretches.find(({ fromIn }) => Math.abs(fromIn) < SAME_IN);
  return stretch === undefined || stretch.endsOn !== 0 ? null : [on(stretch.fromIn), on(stretch.toIn)];
}

type Crossed = Stretch & { readonly startsOn: number; readonly endsOn: number };

function chained(stretches: readonly Crossed[], first: number, on: (alongIn: number) => Point): Cut | null {
  const cut: (readonly Point[])[] = [];
  for (let index = first; ; index += 1) {
    const stretch = stretches[index];
    if (stretch === undefined) return null;
    cut.push([on(stretch.fromIn), on(stretch.toIn)]);
    if (stretch.endsOn === 0) return cut;
    if (stretches[index + 1]?.startsOn !== stretch.endsOn) return null;
  }
}

/** The stretches of a line inside, with the rings they start and end on; ended where a corner is touched. */
function crossed(outline: Outline, at: Point, directionRad: number) {
  const along = unitAlong(directionRad);
  const on = (alongIn: number): Point => ({
    xIn: at.xIn + along.xIn * alongIn,
    yIn: at.yIn + along.yIn * alongIn,
  });
  const line = { fromXIn: at.xIn, fromYIn: at.yIn, toXIn: at.xIn + along.xIn, toYIn: at.yIn + along.yIn };
  const touchedIn = outline.rings.flatMap((ring) =>
    ring.flatMap(({ xIn, yIn }) => {
      const offIn = along.xIn * (yIn - at.yIn) - along.yIn * (xIn - at.xIn);
      return Math.abs(offIn) < SAME_IN ? [along.xIn * (xIn - at.xIn) + along.yIn * (yIn - at.yIn)] : [];
    }),
  );
  const stretches = clipLineToOutline(line, outline)
    .flatMap(({ fromIn, toIn }) => {
      const breaksIn = touchedIn
        .filter((atIn) => atIn > fromIn + SAME_IN && atIn < toIn - SAME_IN)
        .toSorted((one, other) => one - other);
      const endsIn = [fromIn, ...breaksIn, toIn];
      return breaksIn.length === 0
        ? [{ fromIn, toIn }]
        : endsIn.slice(1).map((endIn, index) => ({ fromIn: endsIn[index] ?? fromIn, toIn: endIn }));
    })
    .map(
      (stretch): Crossed => ({
        ...stretch,
        startsOn: ringAt(outline, on(stretch.fromIn)),
        endsOn: ringAt(outline, on(stretch.toIn)),
      }),
    );
  return { on, stretches };
}

/** The ring a point of the edge lies on. */
function ringAt({ rings }: Outline, point: Point): number {
  if (rings.length === 1) return 0;
  const offsIn = rings.map((ring) =>
    Math.min(...edgesOf(ring).map((edge) => distanceToOneEdgeIn(edge, point))),
  );
  return offsIn.indexOf(Math.min(...offsIn));
}
