import { type Box, baselineDropIn, textBox } from './boxes.ts';
import type { TextPrimitive } from './drawing.ts';
import { jointTagStyle } from './joint-tags.ts';
import type { TextStyle } from './lines.ts';
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
    .flatMap((corner) => placeAround(corner, jointTagStyle, placement, room) ?? []);
}

/** A text close beside a point, in the first free place where it may stand; null where there is none. */
export function placeAround(
  { text, at }: PlanArea['corners'][number],
  style: TextStyle,
  placement: Placement,
  room: Room,
  mayStandAt: (box: Box) => boolean = () => true,
): TextPrimitive | null {
  for (const tag of placesAround(text, style, toPaper(placement, at))) {
    const box = textBox(tag, 0.02);
    if (!isFree(room, box) || !mayStandAt(box)) continue;
    room.boxes.push(box);
    return tag;
  }
  return null;
}

function placesAround(
  text: string,
  style: TextStyle,
  corner: { readonly xIn: number; readonly yIn: number },
): TextPrimitive[] {
  return offsetsIn.flatMap((offsetIn) =>
    Array.from({ length: DIRECTIONS }, (_, step): TextPrimitive => {
      const directionRad = (2 * Math.PI * (step + 0.5)) / DIRECTIONS;
      return {
        kind: 'text',
        xIn: corner.xIn + offsetIn * Math.cos(directionRad),
        yIn: corner.yIn + offsetIn * Math.sin(directionRad) + baselineDropIn(style.sizePt),
        text,
        anchor: 'middle',
        ...style,
        turnDeg: 0,
      };
    }),
  );
}
