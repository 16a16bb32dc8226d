import { crossSqIn, segmentsMeet } from '../../geometry/index.ts';
import type { PaperPoint, TextPrimitive } from './drawing.ts';
import { textWidthIn } from './text-width.ts';

/** Four corners of an upright or turned rectangle, in order. */
export type Box = readonly [PaperPoint, PaperPoint, PaperPoint, PaperPoint];
export type Segment = { readonly from: PaperPoint; readonly to: PaperPoint };

/**
 * How far letters reach above and below the baseline, in parts of the text size, tails of g and ( included;
 * an accent on a capital reaches a little further. From the outlines of Noto Sans, rounded up.
 */
const riseRatio = 0.78;
const dropRatio = 0.24;
/** From one baseline to the next. */
export const leadingRatio = 1.2;

export function textHeightIn(sizePt: number): number {
  return ((riseRatio + dropRatio) * sizePt) / 72;
}

/** Baseline below the middle of the letters, so that a text stands centred on a point. */
export function baselineDropIn(sizePt: number): number {
  return (((riseRatio - dropRatio) / 2) * sizePt) / 72;
}

/** The box of a text on the paper, with some air around it. */
export function textBox(text: TextPrimitive, airIn = 0): Box {
  const widthIn = textWidthIn(text.text, text);
  const startIn = { start: 0, middle: -widthIn / 2, end: -widthIn }[text.anchor];
  const left = startIn - airIn;
  const right = startIn + widthIn + airIn;
  const top = (-riseRatio * text.sizePt) / 72 - airIn;
  const bottom = (dropRatio * text.sizePt) / 72 + airIn;
  const turnRad = (text.turnDeg * Math.PI) / 180;
  const place = (xIn: number, yIn: number): PaperPoint => ({
    xIn: text.xIn + xIn * Math.cos(turnRad) - yIn * Math.sin(turnRad),
    yIn: text.yIn + xIn * Math.sin(turnRad) + yIn * Math.cos(turnRad),
  });
  return [place(left, top), place(right, top), place(right, bottom), place(left, bottom)];
}

export function uprightBox(corners: {
  leftIn: number;
  topIn: number;
  rightIn: number;
  bottomIn: number;
}): Box {
  const { leftIn, topIn, rightIn, bottomIn } = corners;
  return [
    { xIn: leftIn, yIn: topIn },
    { xIn: rightIn, yIn: topIn },
    { xIn: rightIn, yIn: bottomIn },
    { xIn: leftIn, yIn: bottomIn },
  ];
}

/** Two rectangles overlap unless a side of one of them parts them. */
export function boxesOverlap(first: Box, second: Box): boolean {
  if (boundsApart(first, second)) return false;
  if (isUpright(first) && isUpright(second)) return true;
  return ![...sidesOf(first), ...sidesOf(second)].some((side) => {
    const normal = { xIn: side.from.yIn - side.to.yIn, yIn: side.to.xIn - side.from.xIn };
    const along = (point: PaperPoint) => point.xIn * normal.xIn + point.yIn * normal.yIn;
    const firstAlong = first.map(along);
    const secondAlong = second.map(along);
    return (
      Math.max(...firstAlong) <= Math.min(...secondAlong) ||
      Math.max(...secondAlong) <= Math.min(...firstAlong)
    );
  });
}

/** Whether a line runs into, through or along a box. */
export function boxMeetsSegment(box: Box, segment: Segment): boolean {
  if (outsideEachOther(box, segment)) return false;
  // Of two convex shapes whose bounds meet, only the line itself can still part an upright box from it.
  if (isUpright(box)) return !isBesideLine(box, segment);
  return isInBox(box, segment.from) || sidesOf(box).some((side) => segmentsMeet(side, segment));
}

/** The upright box round a line. */
export function boundsOfLine({ from, to }: Segment): Box {
  return [from, { xIn: to.xIn, yIn: from.yIn }, to, { xIn: from.xIn, yIn: to.yIn }];
}

export function isBoxInside(
  inner: Box,
  outer: { leftIn: number; topIn: number; rightIn: number; bottomIn: number },
) {
  return inner.every(
    (corner) =>
      corner.xIn >= outer.leftIn &&
      corner.xIn <= outer.rightIn &&
      corner.yIn >= outer.topIn &&
      corner.yIn <= outer.bottomIn,
  );
}

export function sidesOf(box: Box): Segment[] {
  const [a, b, c, d] = box;
  return [
    { from: a, to: b },
    { from: b, to: c },
    { from: c, to: d },
    { from: d, to: a },
  ];
}

function isInBox(box: Box, point: PaperPoint): boolean {
  const signs = sidesOf(box).map(({ from, to }) =>
    Math.sign((to.xIn - from.xIn) * (point.yIn - from.yIn) - (to.yIn - from.yIn) * (point.xIn - from.xIn)),
  );
  return !(signs.includes(1) && signs.includes(-1));
}

function isUpright([a, b, c, d]: Box): boolean {
  return a.yIn === b.yIn && b.xIn === c.xIn && c.yIn === d.yIn && d.xIn === a.xIn;
}

/** Whether all corners lie on one side of the endless line, none on it. */
function isBesideLine([a, b, c, d]: Box, { from, to }: Segment): boolean {
  const side = crossSqIn(from, to, a);
  return (
    side !== 0 &&
    side * crossSqIn(from, to, b) > 0 &&
    side * crossSqIn(from, to, c) > 0 &&
    side * crossSqIn(from, to, d) > 0
  );
}

/** A quick no: the upright bounds of the two are apart. Asked very often, so it makes no lists. */
function outsideEachOther([a, b, c, d]: Box, { from, to }: Segment): boolean {
  return (
    Math.max(from.xIn, to.xIn) < Math.min(a.xIn, b.xIn, c.xIn, d.xIn) ||
    Math.min(from.xIn, to.xIn) > Math.max(a.xIn, b.xIn, c.xIn, d.xIn) ||
    Math.max(from.yIn, to.yIn) < Math.min(a.yIn, b.yIn, c.yIn, d.yIn) ||
    Math.min(from.yIn, to.yIn) > Math.max(a.yIn, b.yIn, c.yIn, d.yIn)
  );
}

/** As above, for two boxes. */
function boundsApart([a, b, c, d]: Box, [e, f, g, h]: Box): boolean {
  return (
    Math.max(a.xIn, b.xIn, c.xIn, d.xIn) <= Math.min(e.xIn, f.xIn, g.xIn, h.xIn) ||
    Math.max(e.xIn, f.xIn, g.xIn, h.xIn) <= Math.min(a.xIn, b.xIn, c.xIn, d.xIn) ||
    Math.max(a.yIn, b.yIn, c.yIn, d.yIn) <= Math.min(e.yIn, f.yIn, g.yIn, h.yIn) ||
    Math.max(e.yIn, f.yIn, g.yIn, h.yIn) <= Math.min(a.yIn, b.yIn, c.yIn, d.yIn)
  );
}
