import {
  centroidOf,
  circleRing,
  distanceIn,
  edgesOf,
  moveOutline,
  type Outline,
  outlineAreaSqIn,
  overlapAreaSqIn,
  type Point,
} from '../../geometry/index.ts';
import { rememberByValue } from '../remember.ts';

/** How a slab lies to the rear of the truck, on the level plan. */
export type Reach = {
  /** To its farthest corner [ft]. */
  readonly farthestFt: number;
  /** Share of its area that the chute reaches, 0 to 1. */
  readonly chuteRatio: number;
  /** To the middle of what the chute does not reach [ft]. */
  readonly wayFt: number;
};

/** Less than this is not carried: the chute is raked so far [ratio]. */
const RAKED_RATIO = 0.02;

/**
 * @param chuteReachIn How far the chute reaches [in]; 0 where there is none.
 *
 * The way is straight, to the middle of the slab, or half way between the end of the chute and the
 * farthest corner where the chute reaches a part of it. Common practice, no source.
 */
export function reachOf(outline: Outline, truckAt: Point, chuteReachIn: number): Reach {
  const corners = outline.rings.flatMap((ring) => edgesOf(ring).map(({ from }) => from));
  const farthestIn = Math.max(...corners.map((corner) => distanceIn(truckAt, corner)));
  const chuteRatio = chuteReachIn === 0 ? 0 : chuteShare({ outline, truckAt, reachIn: chuteReachIn });
  const wayIn = chuteRatio > 0 ? (chuteReachIn + farthestIn) / 2 : distanceIn(truckAt, centroidOf(outline));
  return { farthestFt: farthestIn / 12, chuteRatio, wayFt: wayIn / 12 };
}

type Chute = { readonly outline: Outline; readonly truckAt: Point; readonly reachIn: number };

/** More slabs than a job has. */
const KEPT_SHARES = 100;
const chuteShare = rememberByValue('chute', chuteShareOf, KEPT_SHARES);

function chuteShareOf({ outline, truckAt, reachIn }: Chute): number {
  const corner = { dxIn: truckAt.xIn - reachIn, dyIn: truckAt.yIn - reachIn };
  const swept = moveOutline({ rings: [circleRing({ diameterIn: 2 * reachIn })] }, corner);
  const ratio = overlapAreaSqIn(outline, swept) / outlineAreaSqIn(outline);
  if (ratio > 1 - RAKED_RATIO) return 1;
  return ratio < RAKED_RATIO ? 0 : ratio;
}
