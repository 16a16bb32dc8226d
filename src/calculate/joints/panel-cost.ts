import { panelAngleLimit, panelRatioLimit, panelRatioWanted, panelSideLimit } from './limits.ts';
import type { PanelShape } from './panel-shape.ts';
import { panelRatio, splitIntoPanels } from './panels.ts';

/*
 * What layouts are compared by. The unit is one panel more; the weights are our own judgement, common practice
 * without a source: a joint from a corner that turns in and a panel within its limits come before the number
 * of panels, square panels and square ends after it.
 */
const COST = {
  cornerLeft: 8,
  holeLeft: 8,
  tooLong: 10,
  tooLongAPart: 20,
  tooNarrow: 4,
  ratioOver: 3,
  ratioOverAPart: 2,
  ratioUnwantedAPart: 2,
  sharp: 3,
  sharpADegree: 0.1,
  leanADegree: 0.02,
  shortSide: 2,
  cornerToCut: 0.8,
  holeToCut: 2,
} as const;

const DEG = 180 / Math.PI;
/** Corners from here on are as good as square [deg]. */
const SQUARE_ENOUGH_DEG = 80;

/** What a panel costs as it is. */
export function panelCost(shape: PanelShape, limitIn: number): number {
  const { lengthIn, widthIn } = shape.box;
  const over = lengthIn / limitIn - 1;
  return (
    1 +
    COST.cornerLeft * shape.reEntrant.length +
    COST.holeLeft * shape.holeCount +
    (over > NOISE ? COST.tooLong + COST.tooLongAPart * over : 0) +
    ratioCost(lengthIn / widthIn) +
    shapeCost(shape)
  );
}

/**
 * How many panels it is likely to become, and what they are likely to cost, when it has been cut as far as it must
 * be; the same as it is where it is done.
 */
export function expected(
  shape: PanelShape,
  limitIn: number,
): { readonly count: number; readonly cost: number } {
  const { lengthIn, widthIn } = shape.box;
  const { alongCount, acrossCount } = splitIntoPanels({ lengthIn, widthIn }, limitIn);
  const sides = { panelLengthIn: lengthIn / alongCount, panelWidthIn: widthIn / acrossCount };
  const count = countOf(shape, alongCount * acrossCount);
  const cost =
    count +
    COST.cornerToCut * shape.reEntrant.length +
    COST.holeToCut * shape.holeCount +
    ratioCost(panelRatio(sides)) * Math.sqrt(count) +
    shapeCost(shape);
  return { count, cost };
}

/** As many panels as its box, fewer where it fills the box in part. */
function countOf(shape: PanelShape, ofBox: number): number {
  if (ofBox === 1) return 1;
  const { lengthIn, widthIn } = shape.box;
  const filled = Math.min(1, shape.areaSqIn / (lengthIn * widthIn));
  // What is left over of a box in steps makes no panel, but what a slanted side leaves makes small ones.
  const share = shape.reEntrant.length > 0 ? filled : Math.sqrt(filled);
  return Math.max(1, ofBox * share);
}

/** Whether something of a panel asks for a cut. */
export function wantsCut(shape: PanelShape, limitIn: number): boolean {
  const { lengthIn, widthIn } = shape.box;
  return (
    shape.reEntrant.length > 0 ||
    shape.holeCount > 0 ||
    lengthIn > limitIn * (1 + NOISE) ||
    lengthIn / widthIn > panelRatioLimit.ratio * (1 + NOISE)
  );
}

/** A double's arithmetic makes no panel too long. */
const NOISE = 1e-9;

function ratioCost(ratio: number): number {
  if (ratio > panelRatioLimit.ratio * (1 + NOISE)) {
    return COST.ratioOver + COST.ratioOverAPart * (ratio - panelRatioLimit.ratio);
  }
  return COST.ratioUnwantedAPart * Math.max(0, ratio - panelRatioWanted.ratio);
}

/** Sharp corners, short sides, and a panel so narrow that it breaks. */
function shapeCost({ corners, box }: PanelShape): number {
  let cost = COST.tooNarrow * Math.max(0, 1 - box.widthIn / panelSideLimit.lengthIn);
  for (const { insideRad, toNextIn } of corners) {
    cost += sharpCost(insideRad * DEG);
    cost += COST.shortSide * Math.max(0, 1 - toNextIn / panelSideLimit.lengthIn);
  }
  return cost;
}

function sharpCost(insideDeg: number): number {
  if (insideDeg < panelAngleLimit.deg - NOISE) {
    return COST.sharp + COST.sharpADegree * (panelAngleLimit.deg - insideDeg);
  }
  return COST.leanADegree * Math.max(0, SQUARE_ENOUGH_DEG - insideDeg);
}
