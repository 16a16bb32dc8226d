import { containsPoint } from '../../geometry/index.ts';
import { type Box, isBoxInside, type Segment } from './boxes.ts';
import type { DotPrimitive, LinePrimitive, TextPrimitive } from './drawing.ts';
import { type Placement, toGround } from './paper.ts';
import type { PlanArea } from './plan-view.ts';
import { isClearOfSymbols, isClearOfTexts, isFree, type Room, segmentsCross } from './room.ts';

export const dimensionStyle = { sizePt: 8, weight: 400 } as const;

/** Room outside the shape that two dimension lines, one behind the other, need. */
export const dimensionRoomIn = 0.5;

export type Placed = (LinePrimitive | TextPrimitive | DotPrimitive)[];

/** A text with its lines, not yet on the drawing. */
export type Candidate = {
  readonly box: Box;
  readonly segments: readonly Segment[];
  readonly ticks: readonly Segment[];
  /** The pieces that may not run across an edge; the others start at one. */
  readonly mayNotCross: readonly Segment[];
  readonly primitives: Placed;
};

/** Whether the text lies outside every area, as a dimension must. */
export function isOutside({ box }: Candidate, areas: readonly PlanArea[], placement: Placement): boolean {
  return box.every(
    (corner) => !areas.some((area) => containsPoint(area.outline, toGround(placement, corner))),
  );
}

/** Whether text and lines lie on the sheet and clear of all that stands there, lines apart. */
export function isClear(candidate: Candidate, room: Room): boolean {
  const strokes = [...candidate.segments, ...candidate.ticks];
  return (
    isFree(room, candidate.box) &&
    strokes.every(({ from, to }) => isBoxInside([from, to, to, from], room.zone)) &&
    strokes.every((stroke) => isClearOfTexts(room, stroke) && isClearOfSymbols(room, stroke))
  );
}

export function crossesAny(candidate: Candidate, taken: readonly Segment[]): boolean {
  return candidate.mayNotCross.some((segment) => taken.some((other) => segmentsCross(segment, other)));
}

export function take(candidate: Candidate, room: Room): Placed {
  room.boxes.push(candidate.box);
  room.thinLines.push(...candidate.segments);
  room.ticks.push(...candidate.ticks);
  return candidate.primitives;
}

export function thinLine({ from, to }: Segment, weightMm: number): LinePrimitive {
  return { kind: 'line', from, to, weightMm, dash: 'solid' };
}
