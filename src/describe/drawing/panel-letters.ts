import { baselineDropIn, textBox } from './boxes.ts';
import type { TextPrimitive } from './drawing.ts';
import { type Placement, toPaper } from './paper.ts';
import type { PlanArea } from './plan-view.ts';
import { isFree, type Room } from './room.ts';

export const panelLetterStyle = { sizePt: 8, weight: 700 } as const;

/** Directions tried, and shares of the way to the nearest joint or edge. */
const DIRECTIONS = 12;
const AWAY_RATIOS = [0, 0.35, 0.7];

/** The letter of each panel, about its middle; left out where no place near it is free. */
export function placePanelLetters(
  areas: readonly PlanArea[],
  placement: Placement,
  room: Room,
): readonly TextPrimitive[] {
  return areas
    .flatMap(({ panels = [] }) => panels)
    .flatMap((panel) => {
      for (const letter of placesOf(panel, placement)) {
        const box = textBox(letter, 0.02);
        if (!isFree(room, box)) continue;
        room.boxes.push(box);
        return [letter];
      }
      return [];
    });
}

function placesOf(
  { text, at, clearanceIn }: NonNullable<PlanArea['panels']>[number],
  placement: Placement,
): readonly TextPrimitive[] {
  const middle = toPaper(placement, at);
  const mostIn = clearanceIn * placement.paperInPerIn;
  return AWAY_RATIOS.flatMap((ratio) =>
    Array.from({ length: ratio === 0 ? 1 : DIRECTIONS }, (_, step): TextPrimitive => {
      const directionRad = (2 * Math.PI * step) / DIRECTIONS;
      return {
        kind: 'text',
        xIn: middle.xIn + mostIn * ratio * Math.cos(directionRad),
        yIn: middle.yIn + mostIn * ratio * Math.sin(directionRad) + baselineDropIn(panelLetterStyle.sizePt),
        text,
        anchor: 'middle',
        ...panelLetterStyle,
        turnDeg: 0,
      };
    }),
  );
}
