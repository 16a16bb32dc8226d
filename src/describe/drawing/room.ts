import type { Outline } from '../../geometry/index.ts';
import { type Box, boxesOverlap, boxMeetsSegment, isBoxInside, type Segment } from './boxes.ts';

/** What is already taken on the sheet; placing a thing adds to it. */
export type Room = {
  readonly zone: { leftIn: number; topIn: number; rightIn: number; bottomIn: number };
  /** Texts. */
  readonly boxes: Box[];
  /** Standpoints of photographs. */
  readonly symbols: readonly Box[];
  /** Edges and joints. */
  readonly segments: readonly Segment[];
  /** A quick yes for boxes that some of them run through; a no says nothing. */
  readonly isCrossed: (box: Box) => boolean;
  /** Of them, those that may meet a box. */
  readonly segmentsNear: (box: Box) => readonly Segment[];
  /** Of them, those that are no edge of an outline and may meet a box. */
  readonly segmentsBut: (outline: Outline) => Room['segmentsNear'];
  /** Dimension lines and leaders. */
  readonly thinLines: Segment[];
  /** Ticks of dimensions: other lines may pass through them, letters not. */
  readonly ticks: Segment[];
};

export function isFree(room: Room, box: Box): boolean {
  if (!isBoxInside(box, room.zone) || room.isCrossed(box)) return false;
  for (const taken of [room.boxes, room.symbols]) {
    if (taken.some((other) => boxesOverlap(other, box))) return false;
  }
  for (const lines of [room.segmentsNear(box), room.thinLines, room.ticks]) {
    if (lines.some((line) => boxMeetsSegment(box, line))) return false;
  }
  return true;
}

export function isClearOfTexts(room: Room, segment: Segment): boolean {
  return !room.boxes.some((box) => boxMeetsSegment(box, segment));
}

export function isClearOfSymbols(room: Room, segment: Segment): boolean {
  return !room.symbols.some((box) => boxMeetsSegment(box, segment));
}

/** Whether two pieces cross in their inner parts; meeting end to end or side by side is no crossing. */
export function segmentsCross(first: Segment, second: Segment): boolean {
  return (
    sideOf(first, second.from) * sideOf(first, second.to) < 0 &&
    sideOf(second, first.from) * sideOf(second, first.to) < 0
  );
}

/** 1 left of the line, -1 right of it, 0 on it. */
function sideOf({ from, to }: Segment, point: Segment['from']): number {
  const twiceArea =
    (to.xIn - from.xIn) * (point.yIn - from.yIn) - (to.yIn - from.yIn) * (point.xIn - from.xIn);
  return Math.abs(twiceArea) < 1e-7 ? 0 : Math.sign(twiceArea);
}
