import { containsPoint, distanceIn, segmentsMeet } from '../../geometry/index.ts';
import { boundsOfLine } from './boxes.ts';
import { type DotPrimitive, type LinePrimitive, lineWeightsMm, type TextPrimitive } from './drawing.ts';
import { gridAround } from './grid-around.ts';
import { facingSideMiddle, shapeBox } from './label-places.ts';
import type { LabelTarget } from './label-targets.ts';
import { balancedLines, wrapText } from './lines.ts';
import { type Placement, toGround, toPaper } from './paper.ts';
import { isClearOfSymbols, isClearOfTexts, isFree, type Room } from './room.ts';
import { labelShapes, textBlock } from './text-blocks.ts';

const insideStepIn = 0.1;
const outsideStepIn = 0.08;

export type LeaderLimits = { readonly mostIn: number; readonly mayCrossLines: boolean };

/** The label inside its shape, one line or more, upright or turned; null if it fits nowhere inside. */
export function placeLabelInside(
  target: LabelTarget,
  placement: Placement,
  room: Room,
): readonly TextPrimitive[] | null {
  const at = toPaper(placement, target.at);
  const places = [at, ...gridAround(at, shapeBox(target.shape, placement), insideStepIn)];
  for (const { lines, turnDeg } of labelShapes(target.label, target.style)) {
    const block = textBlock(lines, turnDeg, target.style);
    for (const place of places) {
      const box = block.boxAt(place);
      if (!box.every((corner) => containsPoint(target.shape, toGround(placement, corner)))) continue;
      if (target.others.some((other) => containsPoint(other, toGround(placement, place)))) continue;
      if (!isFree(room, box)) continue;
      room.boxes.push(box);
      return block.textsAt(place);
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
  target: LabelTarget,
  placement: Placement,
  room: Room,
  limits: LeaderLimits,
): readonly (TextPrimitive | LinePrimitive | DotPrimitive)[] | null {
  const { label, style } = target;
  const at = toPaper(placement, target.at);
  const zoneWidthIn = room.zone.rightIn - room.zone.leftIn;
  const mostWideIn = Math.min(2.4, zoneWidthIn * 0.45);
  const wrapped = wrapText(label, style, { widthIn: mostWideIn, lines: 3 });
  const isWhole = wrapped.join(' ') === label.trim().replaceAll(/\s+/g, ' ');
  const lines = (isWhole ? balancedLines(label, style, wrapped.length) : null) ?? wrapped;
  const places = gridAround(at, room.zone, outsideStepIn);

  const block = textBlock(lines, 0, style);
  const otherLines = room.segmentsBut(target.shape);
  for (const place of places) {
    // So far off, all sides of a label are out of reach.
    if (distanceIn(place, at) > limits.mostIn + block.halfLongIn) break;
    const box = block.boxAt(place);
    if (!isFree(room, box)) continue;
    const leader = { from: facingSideMiddle(box, at), to: at };
    if (distanceIn(leader.from, at) > limits.mostIn) continue;
    if (!target.mayStandAt(box.map((corner) => toGround(placement, corner)))) continue;
    if (!isClearOfTexts(room, leader)) continue;
    const crossesNothing = () =>
      isClearOfSymbols(room, leader) &&
      !room.thinLines.some((line) => segmentsMeet(leader, line)) &&
      !otherLines(boundsOfLine(leader)).some((line) => segmentsMeet(leader, line));
    if (!limits.mayCrossLines && !crossesNothing()) continue;
    room.boxes.push(box);
    room.thinLines.push(leader);
    return [
      { kind: 'line', ...leader, weightMm: lineWeightsMm.thin, dash: 'solid' },
      { kind: 'dot', ...at, radiusIn: 0.022 },
      ...block.textsAt(place),
    ];
  }
  return null;
}
