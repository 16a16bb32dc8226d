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
  const chuteRatio = chuteShare(outline, truckAt, chuteReachIn);
  const wayIn = chuteRatio > 0 ? (chuteReachIn + farthestIn) / 2 : distanceIn(truckAt, centroidOf(outline));
  return { farthestFt: farthestIn / 12, chuteRatio, wayFt: wayIn / 12 };
}

function chuteShare(outline: Outline, truckAt: Point, reachIn: number): number {
  if (reachIn === 0) return 0;
  const corner = { dxIn: truckAt.xIn - reachIn, dyIn: truckAt.yIn - reachIn };
  const swept = moveOutline({ rings: [circleRing({ diameterIn: 2 * reachIn })] }, corner);
  const ratio = overlapAreaSqIn(outline, swept) / outlineAreaSqIn(outline);
  if (ratio > 1 - RAKED_RATIO) return 1;
  return ratio < RAKED_RATIO ? 0 : ratio;
}
