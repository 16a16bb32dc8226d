import { containsPoint, segmentsMeet } from '../../geometry/index.ts';
import { boundsOfLine } from './boxes.ts';
import { type DotPrimitive, type LinePrimitive, lineWeightsMm, type TextPrimitive } from './drawing.ts';
import { gridAround } from './grid-around.ts';
import { facingSideMiddle, shapeBox } from './label-places.ts';
import type { LabelTarget } from './label-targets.ts';
import { balancedLines, wrapText } from './lines.ts';
import { type Placement, toGround, toPaper } from './paper.ts';
import { isClearOfSymbols, isClearOfTexts, isFree, type Room } from './room.ts';
import { blockAt, labelShapes } from './text-blocks.ts';

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
    for (const place of places) {
      const block = blockAt(lines, place, turnDeg, target.style);
      const corners = block.box.map((corner) => toGround(placement, corner));
      if (!corners.every((corner) => containsPoint(target.shape, corner))) continue;
      if (target.others.some((other) => containsPoint(other, toGround(placement, place)))) continue;
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

  const otherLines = room.segmentsBut(target.shape);
  for (const place of places) {
    // A label this far off has its nearest side out of reach, whichever way it stands.
    if (Math.hypot(place.xIn - at.xIn, place.yIn - at.yIn) > limits.mostIn + mostWideIn + 0.5) break;
    const block = blockAt(lines, place, 0, style);
    const leader = { from: facingSideMiddle(block.box, at), to: at };
    if (Math.hypot(at.xIn - leader.from.xIn, at.yIn - leader.from.yIn) > limits.mostIn) continue;
    if (!isFree(room, block.box)) continue;
    if (!target.mayStandAt(block.box.map((corner) => toGround(placement, corner)))) continue;
    if (!isClearOfTexts(room, leader)) continue;
    const crossesNothing = () =>
      isClearOfSymbols(room, leader) &&
      !room.thinLines.some((line) => segmentsMeet(leader, line)) &&
      !otherLines(boundsOfLine(leader)).some((line) => segmentsMeet(leader, line));
    if (!limits.mayCrossLines && !crossesNothing()) continue;
    room.boxes.push(block.box);
    room.thinLines.push(leader);
    return [
      { kind: 'line', ...leader, weightMm: lineWeightsMm.thin, dash: 'solid' },
      { kind: 'dot', ...at, radiusIn: 0.022 },
      ...block.texts,
    ];
  }
  return null;
}
