import { containsPoint, labelPointOf, segmentsMeet } from '../../geometry/index.ts';
import { type Box, baselineDropIn, leadingRatio, type Segment, textHeightIn, uprightBox } from './boxes.ts';
import {
  type DotPrimitive,
  type LinePrimitive,
  lineWeightsMm,
  type PaperPoint,
  type TextPrimitive,
} from './drawing.ts';
import { balancedLines, wrapText } from './lines.ts';
import { outlineSegments, type Placement, toGround, toPaper } from './paper.ts';
import type { PlanArea } from './plan.ts';
import { isClearOfBoxes, isFree, type Room } from './room.ts';
import { textWidthIn } from './text-width.ts';

export const areaLabelStyle = { sizePt: 9, weight: 700 } as const;

const airIn = 0.04;
const insideStepIn = 0.1;
const outsideStepIn = 0.08;

export type LeaderLimits = { readonly mostIn: number; readonly mayCrossLines: boolean };

type Block = { readonly box: Box; readonly texts: readonly TextPrimitive[] };

/** The label inside its area, one line or more, upright or turned; null if it fits nowhere inside. */
export function placeLabelInside(
  area: PlanArea,
  areas: readonly PlanArea[],
  placement: Placement,
  room: Room,
): readonly TextPrimitive[] | null {
  const target = toPaper(placement, labelPointOf(area.outline));
  const places = [target, ...gridAround(target, outlineBox(area, placement), insideStepIn)];
  const others = areas.filter((other) => other !== area);
  for (const { lines, turnDeg } of shapesOf(area.label)) {
    for (const place of places) {
      const block = blockAt(lines, place, turnDeg);
      const corners = block.box.map((corner) => toGround(placement, corner));
      if (!corners.every((corner) => containsPoint(area.outline, corner))) continue;
      if (others.some((other) => containsPoint(other.outline, toGround(placement, place)))) continue;
      if (!isFree(room, block.box)) continue;
      room.boxes.push(block.box);
      return block.texts;
    }
  }
  return null;
}

/**
 * The label outside every area, with a leader to a dot inside its own; null if there is no room. The
 * leader is no longer than it may be, never runs over letters, and over lines, its own edge apart, only
 * if it may.
 */
export function placeLabelOutside(
  area: PlanArea,
  areas: readonly PlanArea[],
  placement: Placement,
  room: Room,
  limits: LeaderLimits,
): readonly (TextPrimitive | LinePrimitive | DotPrimitive)[] | null {
  const target = toPaper(placement, labelPointOf(area.outline));
  const ownEdges = outlineSegments(placement, area.outline);
  const zoneWidthIn = room.zone.rightIn - room.zone.leftIn;
  const mostWideIn = Math.min(2.4, zoneWidthIn * 0.45);
  const wrapped = wrapText(area.label, areaLabelStyle, { widthIn: mostWideIn, lines: 3 });
  const isWhole = wrapped.join(' ') === area.label.trim().replaceAll(/\s+/g, ' ');
  const lines = (isWhole ? balancedLines(area.label, areaLabelStyle, wrapped.length) : null) ?? wrapped;
  const places = gridAround(target, room.zone, outsideStepIn);
  const isOwnEdge = (segment: Segment) =>
    ownEdges.some((edge) => edge.from.xIn === segment.from.xIn && edge.from.yIn === segment.from.yIn);
  const otherSegments = [...room.segments.filter((segment) => !isOwnEdge(segment)), ...room.thinLines];

  for (const place of places) {
    const block = blockAt(lines, place, 0);
    if (!isFree(room, block.box)) continue;
    const isOutside = block.box.every(
      (corner) => !areas.some((other) => containsPoint(other.outline, toGround(placement, corner))),
    );
    if (!isOutside) continue;
    const leader = { from: facingSideMiddle(block.box, target), to: target };
    if (Math.hypot(target.xIn - leader.from.xIn, target.yIn - leader.from.yIn) > limits.mostIn) continue;
    if (!isClearOfBoxes(room, leader)) continue;
    if (!limits.mayCrossLines && otherSegments.some((segment) => segmentsMeet(leader, segment))) continue;
    room.boxes.push(block.box);
    room.thinLines.push(leader);
    return [
      { kind: 'line', ...leader, weightMm: lineWeightsMm.thin, dash: 'solid' },
      { kind: 'dot', ...target, radiusIn: 0.022 },
      ...block.texts,
    ];
  }
  return null;
}

function shapesOf(label: string): { lines: readonly string[]; turnDeg: 0 | -90 }[] {
  const lines = (count: number) => balancedLines(label, areaLabelStyle, count);
  const shapes = [
    { lines: lines(1), turnDeg: 0 },
    { lines: lines(2), turnDeg: 0 },
    { lines: lines(1), turnDeg: -90 },
    { lines: lines(3), turnDeg: 0 },
    { lines: lines(2), turnDeg: -90 },
  ] as const;
  return shapes.flatMap((shape) =>
    shape.lines === null ? [] : [{ lines: shape.lines, turnDeg: shape.turnDeg }],
  );
}

function blockAt(lines: readonly string[], centre: PaperPoint, turnDeg: 0 | -90): Block {
  const { sizePt } = areaLabelStyle;
  const leadingIn = (leadingRatio * sizePt) / 72;
  const halfHighIn = ((lines.length - 1) * leadingIn + textHeightIn(sizePt)) / 2 + airIn;
  const halfWideIn = Math.max(...lines.map((line) => textWidthIn(line, areaLabelStyle))) / 2 + airIn;
  const isTurned = turnDeg !== 0;
  const halfXIn = isTurned ? halfHighIn : halfWideIn;
  const halfYIn = isTurned ? halfWideIn : halfHighIn;
  const texts = lines.map((text, index): TextPrimitive => {
    const downIn = (index - (lines.length - 1) / 2) * leadingIn + baselineDropIn(sizePt);
    return {
      kind: 'text',
      xIn: centre.xIn + (isTurned ? downIn : 0),
      yIn: centre.yIn + (isTurned ? 0 : downIn),
      text,
      anchor: 'middle',
      ...areaLabelStyle,
      turnDeg,
    };
  });
  const box = uprightBox({
    leftIn: centre.xIn - halfXIn,
    rightIn: centre.xIn + halfXIn,
    topIn: centre.yIn - halfYIn,
    bottomIn: centre.yIn + halfYIn,
  });
  return { box, texts };
}

/** Grid points within a box, nearest to a point first; the same box always gives the same order. */
function gridAround(
  point: PaperPoint,
  within: { leftIn: number; topIn: number; rightIn: number; bottomIn: number },
  stepIn: number,
): PaperPoint[] {
  const places: (PaperPoint & { offIn: number })[] = [];
  const first = (edgeIn: number, fromIn: number) => fromIn - Math.floor((fromIn - edgeIn) / stepIn) * stepIn;
  for (let yIn = first(within.topIn, point.yIn); yIn <= within.bottomIn; yIn += stepIn) {
    for (let xIn = first(within.leftIn, point.xIn); xIn <= within.rightIn; xIn += stepIn) {
      places.push({ xIn, yIn, offIn: Math.round(Math.hypot(xIn - point.xIn, yIn - point.yIn) * 1e6) });
    }
  }
  return places.sort((a, b) => a.offIn - b.offIn).map(({ xIn, yIn }) => ({ xIn, yIn }));
}

function outlineBox(area: PlanArea, placement: Placement) {
  const ends = outlineSegments(placement, area.outline).map((segment) => segment.from);
  return {
    leftIn: Math.min(...ends.map((end) => end.xIn)),
    rightIn: Math.max(...ends.map((end) => end.xIn)),
    topIn: Math.min(...ends.map((end) => end.yIn)),
    bottomIn: Math.max(...ends.map((end) => end.yIn)),
  };
}

/** The middle of a side that faces the target, so that the leader does not run back over the letters. */
function facingSideMiddle(box: Box, target: PaperPoint): PaperPoint {
  const [topLeft, topRight, bottomRight, bottomLeft] = box;
  const middle = (a: PaperPoint, b: PaperPoint) => ({ xIn: (a.xIn + b.xIn) / 2, yIn: (a.yIn + b.yIn) / 2 });
  const middles = [
    middle(topLeft, topRight),
    middle(topRight, bottomRight),
    middle(bottomRight, bottomLeft),
    middle(bottomLeft, topLeft),
  ];
  const offIn = (point: PaperPoint) => Math.hypot(point.xIn - target.xIn, point.yIn - target.yIn);
  const centre = middle(topLeft, bottomRight);
  const faces = (point: PaperPoint) =>
    (point.xIn - centre.xIn) * (target.xIn - point.xIn) +
      (point.yIn - centre.yIn) * (target.yIn - point.yIn) >
    0;
  // A target outside the box has a side that faces it; one inside would be told from the centre.
  const [nearest = centre] = middles.filter(faces).sort((a, b) => offIn(a) - offIn(b));
  return nearest;
}
