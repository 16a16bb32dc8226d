import {
  boundsOf,
  moveOutline,
  type Outline,
  type Point,
  stretchOutline,
  turnOutline,
} from '../../geometry/index.ts';
import type { TapedShape } from '../job.ts';

/** From a shape as taped, corner 1 at the origin, to where it lies: stretched, turned about corner 1, moved. */
export type Placing = {
  readonly alongRatio: number;
  readonly acrossRatio: number;
  readonly turnedRad: number;
  readonly at: Point;
};

/** What the slope of the ground makes of a tape: the surface is so much longer than the plan. */
export function slopeRatio(slope: number): number {
  return Math.hypot(1, slope);
}

/**
 * How the surface, which material follows, and the level plan, which is drawn, come from the tape.
 *
 * A length taped on the slope is the surface's, one taped level the plan's; the other of the two is
 * made from it, so that neither is corrected twice. Without a slope both are the shape as taped.
 */
export function stretches(taped: TapedShape['taped']): Record<'surface' | 'plan', Stretch> {
  if (taped === null) return { surface: AS_TAPED, plan: AS_TAPED };
  const ratio = slopeRatio(taped.slope);
  const inItsDirection = (by: number): Stretch =>
    taped.runs === 'along' ? { alongRatio: by, acrossRatio: 1 } : { alongRatio: 1, acrossRatio: by };
  return taped.how === 'on-slope'
    ? { surface: AS_TAPED, plan: inItsDirection(1 / ratio) }
    : { surface: inItsDirection(ratio), plan: AS_TAPED };
}

type Stretch = Pick<Placing, 'alongRatio' | 'acrossRatio'>;
const AS_TAPED: Stretch = { alongRatio: 1, acrossRatio: 1 };

/** Room left between two shapes on the plan where none was given a place [in]. */
const GAP_IN = 48;

/** Places for shapes one after the other: each its own, or beside those before it. */
export function placer(): (outline: Outline, shape: Pick<TapedShape, 'at' | 'turnedRad'>) => Point {
  let nextXIn = 0;
  return (outline, { at, turnedRad }) => {
    const bounds = boundsOf(turned(outline, turnedRad));
    const place = at ?? { xIn: nextXIn - bounds.minXIn, yIn: 0 };
    nextXIn = Math.max(nextXIn, place.xIn + bounds.maxXIn + GAP_IN);
    return place;
  };
}

export function placedOutline(outline: Outline, placing: Placing): Outline {
  const stretched = stretchOutline(outline, placing);
  return moveOutline(turned(stretched, placing.turnedRad), { dxIn: placing.at.xIn, dyIn: placing.at.yIn });
}

export function placedPoint(point: Point, placing: Placing): Point {
  const x = point.xIn * placing.alongRatio;
  const y = point.yIn * placing.acrossRatio;
  const cosine = Math.cos(placing.turnedRad);
  const sine = Math.sin(placing.turnedRad);
  return { xIn: placing.at.xIn + x * cosine - y * sine, yIn: placing.at.yIn + x * sine + y * cosine };
}

/** Where a point of the surface stands on the level plan. */
export function surfaceToPlan(
  point: Point,
  lies: { readonly surface: Placing; readonly plan: Placing },
): Point {
  const { surface, plan } = lies;
  const cosine = Math.cos(surface.turnedRad);
  const sine = Math.sin(surface.turnedRad);
  const dxIn = point.xIn - surface.at.xIn;
  const dyIn = point.yIn - surface.at.yIn;
  const taped = {
    xIn: (dxIn * cosine + dyIn * sine) / surface.alongRatio,
    yIn: (dyIn * cosine - dxIn * sine) / surface.acrossRatio,
  };
  return placedPoint(taped, plan);
}

function turned(outline: Outline, turnedRad: number): Outline {
  return turnedRad === 0 ? outline : turnOutline(outline, (turnedRad * 180) / Math.PI);
}
