import { ceilCount, ceilToStep } from '../../units/index.ts';
import {
  earlyEntry,
  jointDepth,
  panelRatioLimit,
  panelSideLimit,
  spacingCap,
  walkSpacing,
} from './limits.ts';

/**
 * The farthest apart that contraction joints may be.
 *
 * @param made.multiplier  Thicknesses between joints, see `spacingMultiplier`.
 * @param made.thicknessIn Slab [in], above 0.
 * @param made.walkWidthIn Width of a walk [in], null where it is no walk.
 * @returns [in]
 * @throws {RangeError} If a value is not above 0.
 *
 * s = min(multiplier t, 15 ft), for a walk at most max(width, 5 ft) too.
 *
 * @example jointSpacingLimitIn({ multiplier: 30, thicknessIn: 4, walkWidthIn: null }) // 120
 */
export function jointSpacingLimitIn(made: {
  multiplier: number;
  thicknessIn: number;
  walkWidthIn: number | null;
}): number {
  const { multiplier, thicknessIn, walkWidthIn } = made;
  requireAboveZero({ multiplier, thicknessIn, walkWidthIn: walkWidthIn ?? walkSpacing.lengthIn });
  const limitIn = Math.min(multiplier * thicknessIn, spacingCap.lengthIn);
  return walkWidthIn === null ? limitIn : Math.min(limitIn, Math.max(walkWidthIn, walkSpacing.lengthIn));
}

/**
 * The width of a walk from its area and its perimeter, as long as it is of one width: w = P / 4 - sqrt((P / 4)² - A),
 * since its legs add up to A = w (P / 2 - w), around square corners too. A shape that is no walk, for which the
 * root is none, counts as P / 4 wide. Derived.
 *
 * @returns [in], up to the next thousandth: where a root is near 0 its noise is not.
 * @throws {RangeError} If a value is not above 0.
 */
export function meanWidthIn(walk: { perimeterFt: number; areaSqFt: number }): number {
  const { perimeterFt, areaSqFt } = walk;
  requireAboveZero({ perimeterFt, areaSqFt });
  const halfFt = perimeterFt / 2;
  return ceilToStep(6 * (halfFt - Math.sqrt(Math.max(halfFt ** 2 - 4 * areaSqFt, 0))), WIDTH_STEP_IN);
}

const WIDTH_STEP_IN = 0.001;

export type Panels = {
  readonly alongCount: number;
  readonly acrossCount: number;
  /** How many of them the spacing did not ask for, made for squarer panels. */
  readonly addedAlongCount: number;
  readonly addedAcrossCount: number;
};

/**
 * Equal panels, none longer than the limit, and none much longer than wide.
 *
 * @param box.lengthIn Longer side [in], above 0.
 * @param box.widthIn  Shorter side [in], above 0.
 * @param limitIn      Spacing limit [in], above 0.
 * @throws {RangeError} If a value is not a length above 0.
 *
 * n = ceil(side / limit) each way; then the longer panel side is divided once more as long as the
 * sides are more than 1.5 to 1. Stops where a panel would become narrower than 18 in. Between 1.5
 * and 2 to 1 one more division always brings the ratio under 1.34, so it cannot swing back.
 */
export function splitIntoPanels(box: { lengthIn: number; widthIn: number }, limitIn: number): Panels {
  requireAboveZero({ lengthIn: box.lengthIn, widthIn: box.widthIn, limitIn });
  const alongBySpacing = ceilCount(box.lengthIn / limitIn);
  const acrossBySpacing = ceilCount(box.widthIn / limitIn);
  let alongCount = alongBySpacing;
  let acrossCount = acrossBySpacing;
  for (;;) {
    const panelLengthIn = box.lengthIn / alongCount;
    const panelWidthIn = box.widthIn / acrossCount;
    if (panelRatio({ panelLengthIn, panelWidthIn }) <= panelRatioLimit.ratio) break;
    const dividesAlong = panelLengthIn > panelWidthIn;
    const shortenedIn = dividesAlong ? box.lengthIn / (alongCount + 1) : box.widthIn / (acrossCount + 1);
    if (shortenedIn < panelSideLimit.lengthIn) break;
    if (dividesAlong) alongCount += 1;
    else acrossCount += 1;
  }
  return {
    alongCount,
    acrossCount,
    addedAlongCount: alongCount - alongBySpacing,
    addedAcrossCount: acrossCount - acrossBySpacing,
  };
}

/** Longer side over shorter side, 1 or more. */
export function panelRatio(panel: { panelLengthIn: number; panelWidthIn: number }): number {
  const { panelLengthIn, panelWidthIn } = panel;
  requireAboveZero({ panelLengthIn, panelWidthIn });
  return Math.max(panelLengthIn, panelWidthIn) / Math.min(panelLengthIn, panelWidthIn);
}

/**
 * How deep a contraction joint is sawn or tooled.
 *
 * @param thicknessIn Slab [in], above 0.
 * @returns [in], rounded up to 1/8 in: a legal minimum.
 * @throws {RangeError} If the thickness is not above 0.
 *
 * d = max(t / 4, 1 in)
 */
export function jointDepthIn(thicknessIn: number): number {
  requireAboveZero({ thicknessIn });
  const { shareOfThickness, leastIn, stepIn } = jointDepth;
  return ceilToStep(Math.max(thicknessIn * shareOfThickness, leastIn), stepIn);
}

/**
 * How deep a light saw cuts that goes over the slab within hours of finishing.
 *
 * @param thicknessIn Slab [in], above 0.
 * @returns [in]: 1 in up to 9 in of slab; beyond, where the rule ends, as deep as any other saw.
 * @throws {RangeError} If the thickness is not above 0.
 */
export function earlyEntryDepthIn(thicknessIn: number): number {
  requireAboveZero({ thicknessIn });
  return thicknessIn <= earlyEntry.mostThicknessIn ? earlyEntry.depthIn : jointDepthIn(thicknessIn);
}

function requireAboveZero(values: Readonly<Record<string, number>>): void {
  for (const name in values) {
    const value = values[name];
    if (!(value !== undefined && value > 0 && value < Infinity)) {
      throw new RangeError(`${name} must be above 0, got ${value}`);
    }
  }
}
