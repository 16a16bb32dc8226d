import { type Box, boxesOverlap, boxMeetsSegment, isBoxInside, type Segment } from './boxes.ts';

/** What is already taken on the sheet; placing a thing adds to it. */
export type Room = {
  readonly zone: { leftIn: number; topIn: number; rightIn: number; bottomIn: number };
  readonly boxes: Box[];
  /** Edges and joints. */
  readonly segments: readonly Segment[];
  /** Dimension lines and leaders. */
  readonly thinLines: Segment[];
};

export function isFree(room: Room, box: Box): boolean {
  return (
    isBoxInside(box, room.zone) &&
    !room.boxes.some((taken) => boxesOverlap(taken, box)) &&
    ![...room.segments, ...room.thinLines].some((segment) => boxMeetsSegment(box, segment))
  );
}

export function isClearOfBoxes(room: Room, segment: Segment): boolean {
  return !room.boxes.some((box) => boxMeetsSegment(box, segment));
}

/** Whether two pieces cross in their inner parts; meeting end to end or side by side is no crossing. */
export function segmentsCross(first: Segment, second: Segment): boolean {
  const side = (segment: Segment, point: Segment['from']) => {
    const { from, to } = segment;
    const twiceArea =
      (to.xIn - from.xIn) * (point.yIn - from.yIn) - (to.yIn - from.yIn) * (point.xIn - from.xIn);
    return Math.abs(twiceArea) < 1e-7 ? 0 : Math.sign(twiceArea);
  };
  return (
    side(first, second.from) * side(first, second.to) < 0 &&
    side(second, first.from) * side(second, first.to) < 0
  );
}
