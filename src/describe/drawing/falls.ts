import { type Box, baselineDropIn, textBox } from './boxes.ts';
import { lineWeightsMm, type PaperPoint, type Primitive, type TextPrimitive } from './drawing.ts';
import { type Placement, toPaper } from './paper.ts';
import type { Fall } from './plan-view.ts';
import { isFree, type Room } from './room.ts';

export const fallStyle = { sizePt: 8, weight: 400 } as const;

const halfLongIn = 0.17;
const headLongIn = 0.08;
/** Half of the angle at the tip [rad]. */
const headHalfRad = (20 * Math.PI) / 180;

/** A shaft with two barbs at its tip. */
export function fallPrimitives(fall: Fall, placement: Placement): readonly Primitive[] {
  const tip = reached(fall, placement, halfLongIn);
  const line = (from: PaperPoint, to: PaperPoint): Primitive => ({
    kind: 'line',
    from,
    to,
    weightMm: lineWeightsMm.existing,
    dash: 'solid',
  });
  const barbs = [-1, 1].map((side) => {
    const directionRad = -fall.towardsRad + Math.PI + side * headHalfRad;
    return {
      xIn: tip.xIn + headLongIn * Math.cos(directionRad),
      yIn: tip.yIn + headLongIn * Math.sin(directionRad),
    };
  });
  return [line(reached(fall, placement, -halfLongIn), tip), ...barbs.map((barb) => line(barb, tip))];
}

/** What an arrow takes, for letters to keep clear of it. */
export function fallBox(fall: Fall, placement: Placement): Box {
  const halfWideIn = headLongIn * Math.sin(headHalfRad) + 0.01;
  const corner = (alongIn: number, sideIn: number) => {
    const on = reached(fall, placement, alongIn);
    return {
      xIn: on.xIn + sideIn * Math.sin(fall.towardsRad),
      yIn: on.yIn + sideIn * Math.cos(fall.towardsRad),
    };
  };
  const longIn = halfLongIn + 0.01;
  return [
    corner(-longIn, -halfWideIn),
    corner(longIn, -halfWideIn),
    corner(longIn, halfWideIn),
    corner(-longIn, halfWideIn),
  ];
}

/** How steep it falls, beside its arrow; left out where every place beside it is taken. */
export function placeFallTexts(
  falls: readonly Fall[],
  placement: Placement,
  room: Room,
): readonly TextPrimitive[] {
  return falls.flatMap((fall) => {
    if (fall.text === null) return [];
    for (const text of placesBeside(fall, fall.text, placement)) {
      const box = textBox(text, 0.015);
      if (!isFree(room, box)) continue;
      room.boxes.push(box);
      return [text];
    }
    return [];
  });
}

/** Below, above, right and left of the arrow, then farther off. */
function placesBeside(fall: Fall, slope: string, placement: Placement): readonly TextPrimitive[] {
  const at = toPaper(placement, fall.at);
  const box = fallBox(fall, placement);
  const halfWideIn = Math.max(...box.map(({ xIn }) => xIn - at.xIn));
  const halfHighIn = Math.max(...box.map(({ yIn }) => yIn - at.yIn));
  return [0.03, 0.08, 0.14].flatMap((clearIn) => {
    const acrossIn = halfWideIn + clearIn;
    const downIn = halfHighIn + clearIn + HALF_TEXT_IN;
    const places = [
      { dxIn: 0, dyIn: downIn, anchor: 'middle' },
      { dxIn: 0, dyIn: -downIn, anchor: 'middle' },
      { dxIn: acrossIn, dyIn: 0, anchor: 'start' },
      { dxIn: -acrossIn, dyIn: 0, anchor: 'end' },
    ] as const;
    return places.map(
      ({ dxIn, dyIn, anchor }): TextPrimitive => ({
        kind: 'text',
        xIn: at.xIn + dxIn,
        yIn: at.yIn + dyIn + baselineDropIn(fallStyle.sizePt),
        text: slope,
        anchor,
        ...fallStyle,
        turnDeg: 0,
      }),
    );
  });
}

/** Half of the height of a line of it. */
const HALF_TEXT_IN = 0.06;

function reached(fall: Fall, placement: Placement, farIn: number): PaperPoint {
  const at = toPaper(placement, fall.at);
  return {
    xIn: at.xIn + farIn * Math.cos(fall.towardsRad),
    yIn: at.yIn - farIn * Math.sin(fall.towardsRad),
  };
}
