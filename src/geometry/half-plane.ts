import { distanceIn, type Point } from './outline.ts';

/** Where a linear form is 0 or more lies one side of a line: a x + b y + c, taken about a point. */
export type HalfPlane = { readonly at: Point; readonly a: number; readonly b: number; readonly c: number };

export function valueOf({ at, a, b, c }: HalfPlane, point: Point): number {
  return a * (point.xIn - at.xIn) + b * (point.yIn - at.yIn) + c;
}

export function opposite({ at, a, b, c }: HalfPlane): HalfPlane {
  return { at, a: -a, b: -b, c: -c };
}

/** Distance to the left of a line from one point through another [in]. */
export function leftOf(from: Point, to: Point): HalfPlane {
  const lengthIn = distanceIn(from, to);
  return { at: from, a: (from.yIn - to.yIn) / lengthIn, b: (to.xIn - from.xIn) / lengthIn, c: 0 };
}

/** The sides of a convex ring that runs anticlockwise. */
export function sidesOf(ring: readonly Point[]): readonly HalfPlane[] {
  return ring.flatMap((from, index) => {
    const to = ring[(index + 1) % ring.length] ?? from;
    return distanceIn(from, to) > 0 ? [leftOf(from, to)] : [];
  });
}

/**
 * The part of a ring on the kept side of every line. Exact for a convex ring; of another one pieces may hang
 * together by doubled edges along the lines, which change no signed area or volume.
 */
export function keptIn(ring: readonly Point[], sides: readonly HalfPlane[]): readonly Point[] {
  return sides.reduce(keptOn, ring);
}

function keptOn(ring: readonly Point[], side: HalfPlane): readonly Point[] {
  const kept: Point[] = [];
  for (const [index, from] of ring.entries()) {
    const to = ring[(index + 1) % ring.length] ?? from;
    const here = valueOf(side, from);
    const there = valueOf(side, to);
    if (here >= 0) kept.push(from);
    if (here * there < 0) {
      const share = here / (here - there);
      kept.push({
        xIn: from.xIn + share * (to.xIn - from.xIn),
        yIn: from.yIn + share * (to.yIn - from.yIn),
      });
    }
  }
  return kept;
}
