import {
  clearStretches,
  distanceIn,
  type Line,
  type Outline,
  type Point,
  sharpCorners,
} from '../../geometry/index.ts';
import { floorToStep } from '../../units/index.ts';
import { BAR_STEP_IN, LEAST_RUN_IN } from './bar-runs.ts';

export const DIAGONALS_METHOD = 'two bars across each inner corner that no joint starts at';
export const DIAGONALS_SOURCE =
  'ACI 302.1R: a joint from each re-entrant corner, or bars across it (memory); two bars of 4 ft are common practice, no source';

/** Bars across an inner corner: how many, how long, and how far the second lies behind the first. */
export const diagonalBars = { count: 2, lengthIn: 48, apartIn: 4, leastTurnDeg: 30 } as const;

/** A joint line that ends this near a corner starts at it [in]. */
const AT_CORNER_IN = 2;

/** A straight bar where it lies. */
export type DiagonalBar = { readonly from: Point; readonly to: Point; readonly lengthIn: number };

/**
 * Bars square to the line that halves an inner corner, as long as the slab has room for less the cover.
 *
 * @param made.coverIn From the corner to the first bar, and from every edge to the ends [in], above 0.
 * @param made.stockIn Longest stock [in]: no bar is longer.
 * @param made.joints  Joint lines of the slab; a corner one starts at gets no bars.
 */
export function diagonalsOf(made: {
  readonly outline: Outline;
  readonly joints: readonly Line[];
  readonly coverIn: number;
  readonly stockIn: number;
}): readonly DiagonalBar[] {
  const { outline, joints, coverIn } = made;
  return sharpCorners(outline, (diagonalBars.leastTurnDeg * Math.PI) / 180)
    .filter(({ at, turnRad }) => turnRad < 0 && !joints.some((joint) => startsAt(joint, at)))
    .flatMap((corner) =>
      Array.from(
        { length: diagonalBars.count },
        (_, index) => coverIn + index * diagonalBars.apartIn,
      ).flatMap((offIn) => barAcross(corner, offIn, made)),
    );
}

function startsAt(joint: Line, at: Point): boolean {
  return (
    distanceIn({ xIn: joint.fromXIn, yIn: joint.fromYIn }, at) <= AT_CORNER_IN ||
    distanceIn({ xIn: joint.toXIn, yIn: joint.toYIn }, at) <= AT_CORNER_IN
  );
}

/** Noise of the corner's own distance, let off [in]. */
const NOISE_IN = 1e-6;

function barAcross(
  { at, inward }: { readonly at: Point; readonly inward: Point },
  offIn: number,
  {
    outline,
    coverIn,
    stockIn,
  }: { readonly outline: Outline; readonly coverIn: number; readonly stockIn: number },
): DiagonalBar[] {
  const middle = { xIn: at.xIn + inward.xIn * offIn, yIn: at.yIn + inward.yIn * offIn };
  const pointAt = (alongIn: number) => ({
    xIn: middle.xIn - inward.yIn * alongIn,
    yIn: middle.yIn + inward.xIn * alongIn,
  });
  const end = pointAt(1);
  const line = { fromXIn: middle.xIn, fromYIn: middle.yIn, toXIn: end.xIn, toYIn: end.yIn };
  const clear = clearStretches(line, outline, coverIn - NOISE_IN).find(
    ({ fromIn, toIn }) => fromIn <= 0 && toIn >= 0,
  );
  if (clear === undefined) return [];
  const halfIn = Math.min(diagonalBars.lengthIn, stockIn) / 2;
  const fromIn = Math.max(clear.fromIn, -halfIn);
  const lengthIn = floorToStep(Math.min(clear.toIn, halfIn) - fromIn, BAR_STEP_IN);
  return lengthIn < LEAST_RUN_IN ? [] : [{ from: pointAt(fromIn), to: pointAt(fromIn + lengthIn), lengthIn }];
}
