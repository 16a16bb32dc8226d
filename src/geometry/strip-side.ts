import { stepFrom } from './heading.ts';
import { distanceIn, type Point } from './outline.ts';
import { type TurnLayout, turnLayout } from './strip-turn.ts';
import type { Leg, Walk, WalkTurn } from './strip-walk.ts';

/** 1 the left side of the walk, -1 the right. */
export type Side = 1 | -1;

/** A point on a side, with the bulge from it to the next one, walking forwards. */
export type SidePoint = Point & { readonly bulge: number };

/** A straight edge of a side, between the corners its turns make when left sharp. */
export type SideEdge = {
  readonly leg: Leg;
  readonly side: Side;
  /** Below 0 where the corners of two turns pass each other. */
  readonly lengthIn: number;
  readonly turnAfter: WalkTurn | null;
};

/** All straight edges of one side, in order. */
export function straightEdgesOf(walk: Walk, side: Side): SideEdge[] {
  return walk.legs.flatMap((leg, index): SideEdge[] => {
    if (leg.turnRad !== 0) return [];
    const next = walk.legs[index + 1];
    const turnAfter = next?.turnBefore ?? null;
    const from = startOf(leg, side, walk);
    const to = turnAfter === null ? endOffset(leg, side) : cornerOf(turnAfter, leg, side, walk);
    const ahead = stepFrom({ xIn: 0, yIn: 0 }, leg.headingRad + side * Math.atan(walk.halfPerIn), 1);
    const lengthIn = (to.xIn - from.xIn) * ahead.xIn + (to.yIn - from.yIn) * ahead.yIn;
    return [{ leg, side, lengthIn, turnAfter }];
  });
}

/** One side of the walk from its start to its end, its corners rounded as their turns say. */
export function sideOf(walk: Walk, side: Side): SidePoint[] {
  const points: SidePoint[] = [];
  for (const leg of walk.legs) {
    const bulge = Math.tan(leg.turnRad / 4);
    const corner = startOf(leg, side, walk);
    const turn = leg.turnBefore;
    const setbackIn = turn === null ? 0 : setbackOn(side, turn, turnLayout(turn));
    if (turn === null || setbackIn === 0) {
      points.push({ ...corner, bulge });
      continue;
    }
    // Edges of a widening walk lean away from its line, but both by the same angle: they still turn by d.
    const leanRad = side * Math.atan(walk.halfPerIn);
    const arriving = leg.headingRad - turn.turnRad + leanRad;
    points.push({ ...stepFrom(corner, arriving, -setbackIn), bulge: Math.tan(turn.turnRad / 4) });
    points.push({ ...stepFrom(corner, leg.headingRad + leanRad, setbackIn), bulge });
  }
  const last = walk.legs.at(-1);
  if (last !== undefined) points.push({ ...endOffset(last, side), bulge: 0 });
  return withoutEmptyEdges(points);
}

/** Setback of a turn on one side: the inner one on the side it turns to. */
export function setbackOn(side: Side, turn: WalkTurn, layout: TurnLayout): number {
  return Math.sign(turn.turnRad) === side ? layout.innerSetbackIn : layout.outerSetbackIn;
}

function startOf(leg: Leg, side: Side, walk: Walk): Point {
  if (leg.turnBefore === null) return offset(leg.from, leg.headingRad, side * leg.fromHalfIn);
  const arriving = { to: leg.from, toHeadingRad: leg.headingRad - leg.turnBefore.turnRad };
  return cornerOf(leg.turnBefore, arriving, side, walk);
}

function endOffset(leg: Leg, side: Side): Point {
  return offset(leg.to, leg.toHeadingRad, side * leg.toHalfIn);
}

/**
 * Where the edges before and after a turn meet when left sharp.
 *
 * Past the turning point by a = -h (tan(s d/2) + k) / (1 + k²), off the line by h + k a, with h half the
 * width there, k its change per inch, d the turn, s the side; both edges lean by atan(k), so the mitre is
 * that of a walk of one width, turned by the lean. Derived.
 */
function cornerOf(turn: WalkTurn, arriving: Pick<Leg, 'to' | 'toHeadingRad'>, side: Side, walk: Walk): Point {
  const k = walk.halfPerIn;
  const halfIn = turn.widthIn / 2;
  const pastIn = (-halfIn * (Math.tan((side * turn.turnRad) / 2) + k)) / (1 + k ** 2);
  const onLine = stepFrom(arriving.to, arriving.toHeadingRad, pastIn);
  return offset(onLine, arriving.toHeadingRad, side * (halfIn + k * pastIn));
}

function offset(from: Point, headingRad: number, leftIn: number): Point {
  return stepFrom(from, headingRad + Math.PI / 2, leftIn);
}

/** Two setbacks that use an edge up leave it without length: drop it, the arcs meet. */
function withoutEmptyEdges(points: readonly SidePoint[]): SidePoint[] {
  return points.filter((point, index) => {
    const next = points[index + 1];
    return next === undefined || point.bulge !== 0 || distanceIn(point, next) > 1e-9;
  });
}
