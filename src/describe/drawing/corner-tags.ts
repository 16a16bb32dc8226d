import { baselineDropIn, textBox } from './boxes.ts';
import type { TextPrimitive } from './drawing.ts';
import { jointTagStyle } from './joint-tags.ts';
import { type Placement, toPaper } from './paper.ts';
import type { PlanArea } from './plan-view.ts';
import { isFree, type Room } from './room.ts';

/** Directions tried round a corner, and how far from it the number may stand. */
const DIRECTIONS = 16;
const offsetsIn = [0.1, 0.13, 0.17, 0.22];

/** The number of each corner, close beside it; left out where every place near it is taken. */
export function placeCornerTags(
  areas: readonly PlanArea[],
  placement: Placement,
  room: Room,
): readonly TextPrimitive[] {
  return areas
    .flatMap(({ corners }) => corners)
    .flatMap(({ text, at }) => {
      for (const tag of placesAround(text, toPaper(placement, at))) {
        const box = textBox(tag, 0.02);
        if (!isFree(room, box)) continue;
        room.boxes.push(box);
        return [tag];
      }
      return [];
    });
}

function placesAround(text: string, corner: { readonly xIn: number; readonly yIn: number }): TextPrimitive[] {
  return offsetsIn.flatMap((offsetIn) =>
    Array.from({ length: DIRECTIONS }, (_, step): TextPrimitive => {
      const directionRad = (2 * Math.PI * (step + 0.5)) / DIRECTIONS;
      return {
        kind: 'text',
        xIn: corner.xIn + offsetIn * Math.cos(directionRad),
        yIn: corner.yIn + offsetIn * Math.sin(directionRad) + baselineDropIn(jointTagStyle.sizePt),
        text,
        anchor: 'middle',
        ...jointTagStyle,
        turnDeg: 0,
      };
    }),
  );
}
