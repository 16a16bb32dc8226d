import { containsPoint, segmentsMeet } from '../../geometry/index.ts';
import type { LeaderLimits } from './area-labels.ts';
import { type Block, blockAt, blockBox, blockOf, hookStyle, movedBy, sizes } from './bay-block.ts';
import { type Box, boundsOfLine, boxMeetsSegment, type Segment, textBox } from './boxes.ts';
import { placeAround } from './corner-tags.ts';
import { lineWeightsMm, type PaperPoint, type Primitive, type TextPrimitive } from './drawing.ts';
import { gridAround } from './grid-around.ts';
import { shapeBox } from './label-places.ts';
import { outlineSegments, type Placement, toGround, toPaper } from './paper.ts';
import type { BayMark, PlanArea } from './plan-view.ts';
import { isClearOfSymbols, isClearOfTexts, isFree, type Room } from './room.ts';

const stepIn = 0.08;

export type MarkLimits = LeaderLimits & {
  /** Whether a letter or a mark may be missing. */
  readonly mayLeaveOut: boolean;
};

/**
 * The letter at every corner that a tape is hooked on, and the mark of every bay: its number in a circle
 * and its area inside the bay, the number alone where there is no room for both, or outside every area with
 * a leader. Null where one finds no place and may not be left out.
 */
export function placeBayMarks(
  areas: readonly PlanArea[],
  placement: Placement,
  room: Room,
  limits: MarkLimits,
): readonly Primitive[] | null {
  const placed: Primitive[] = [];
  const left: { readonly mark: BayMark; readonly area: PlanArea }[] = [];
  for (const area of areas) {
    for (const mark of area.bays.marks) {
      const inside = markInside(mark, area, placement, room);
      if (inside === null) left.push({ mark, area });
      else placed.push(...inside);
    }
  }
  for (const area of areas) {
    for (const hook of area.bays.hooks) {
      const letter = placeHook(hook, area, placement, room);
      if (letter === null && !limits.mayLeaveOut) return null;
      placed.push(...(letter === null ? [] : [letter]));
    }
  }
  for (const { mark, area } of left) {
    const outside = markOutside({ mark, area, areas }, placement, room, limits);
    if (outside === null && !limits.mayLeaveOut) return null;
    placed.push(...(outside ?? []));
  }
  return placed;
}

/** A corner's letter, inside first, since dimensions want the room outside; never over what a leader ends at. */
function placeHook(
  hook: PlanArea['bays']['hooks'][number],
  area: PlanArea,
  placement: Placement,
  room: Room,
): TextPrimitive | null {
  const ends = area.bays.marks.map(({ at }) => toPaper(placement, at));
  const mayStandInside = (box: Box) =>
    box.every((corner) => containsPoint(area.outline, toGround(placement, corner))) &&
    !ends.some((end) => boxMeetsSegment(box, { from: end, to: end }));
  return (
    placeAround(hook, hookStyle, placement, room, mayStandInside) ??
    placeAround(hook, hookStyle, placement, room)
  );
}

function markInside(
  mark: BayMark,
  area: PlanArea,
  placement: Placement,
  room: Room,
): readonly Primitive[] | null {
  const at = toPaper(placement, mark.at);
  // A place behind a line is in another bay.
  const places = [at, ...gridAround(at, shapeBox(area.outline, placement), stepIn)].filter((place) => {
    const way = { from: at, to: place };
    return !room.segmentsNear(boundsOfLine(way)).some((segment) => segmentsMeet(way, segment));
  });
  for (const shape of ['below', 'beside', 'alone'] as const) {
    for (const size of sizes) {
      const block = blockOf(mark, shape, size);
      for (const place of places) {
        const box = blockBox(block, place);
        if (!isFree(room, box)) continue;
        if (!box.every((corner) => containsPoint(area.outline, toGround(placement, corner)))) continue;
        room.boxes.push(box);
        return blockAt(block, place);
      }
    }
  }
  return null;
}

function markOutside(
  made: { readonly mark: BayMark; readonly area: PlanArea; readonly areas: readonly PlanArea[] },
  placement: Placement,
  room: Room,
  limits: LeaderLimits,
): readonly Primitive[] | null {
  const { mark, area, areas } = made;
  const at = toPaper(placement, mark.at);
  const ownEdges = outlineSegments(placement, area.outline);
  const isOwnEdge = ({ from }: Segment) =>
    ownEdges.some((edge) => edge.from.xIn === from.xIn && edge.from.yIn === from.yIn);
  const others = [...room.segments.filter((segment) => !isOwnEdge(segment)), ...room.thinLines];
  const enclosed = areas.map(({ outline }) => ({ rings: outline.rings.slice(0, 1) }));
  const isOutside = (corner: PaperPoint) =>
    !enclosed.some((outline) => containsPoint(outline, toGround(placement, corner)));
  for (const size of sizes.slice(1)) {
    const block = blockOf(mark, 'beside', size);
    for (const place of gridAround(at, room.zone, stepIn)) {
      // Places are sorted by their distance.
      if (lengthOf({ from: place, to: at }) > limits.mostIn + 2 * block.halfWideIn) break;
      const leader = leaderFrom(block, place, at);
      if (leader === null || lengthOf(leader) > limits.mostIn) continue;
      const box = blockBox(block, place);
      if (!isFree(room, box) || !box.every(isOutside)) continue;
      if (!isClearOfTexts(room, leader) || !isClearOfSymbols(room, leader)) continue;
      const primitives = blockAt(block, place);
      // Its own area stands at the right of the number: the leader may not run through it.
      if (primitives.some((one) => one.kind === 'text' && boxMeetsSegment(textBox(one), leader))) continue;
      if (!limits.mayCrossLines && others.some((segment) => segmentsMeet(leader, segment))) continue;
      room.boxes.push(box);
      room.thinLines.push(leader);
      return [
        { kind: 'line', ...leader, weightMm: lineWeightsMm.thin, dash: 'solid' },
        { kind: 'dot', ...at, radiusIn: 0.022 },
        ...primitives,
      ];
    }
  }
  return null;
}

/** From the circle to a point outside it; null where the point is not outside. */
function leaderFrom({ centre, radiusIn }: Block, place: PaperPoint, at: PaperPoint): Segment | null {
  const middle = movedBy(centre, place);
  const offIn = lengthOf({ from: middle, to: at });
  if (!(offIn > radiusIn)) return null;
  const share = radiusIn / offIn;
  const from = {
    xIn: middle.xIn + (at.xIn - middle.xIn) * share,
    yIn: middle.yIn + (at.yIn - middle.yIn) * share,
  };
  return { from, to: at };
}

function lengthOf({ from, to }: Segment): number {
  return Math.hypot(to.xIn - from.xIn, to.yIn - from.yIn);
}
