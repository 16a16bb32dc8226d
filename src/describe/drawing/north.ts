import { baselineDropIn } from './boxes.ts';
import { type LinePrimitive, lineWeightsMm, type PaperPoint, type TextPrimitive } from './drawing.ts';

/** What the arrow takes, turned whichever way. */
export const northSizeIn = 0.52;

const halfIn = 0.095;
const letterOffIn = 0.18;
const headLongIn = 0.1;
const headHalfIn = 0.045;

/** An arrow to the north with its letter, which stays upright. */
export function northArrow(
  centre: PaperPoint,
  north: { readonly deg: number; readonly letter: string },
): readonly (LinePrimitive | TextPrimitive)[] {
  const turnRad = (north.deg * Math.PI) / 180;
  const at = (aheadIn: number, rightIn: number): PaperPoint => ({
    xIn: centre.xIn + aheadIn * Math.sin(turnRad) + rightIn * Math.cos(turnRad),
    yIn: centre.yIn - aheadIn * Math.cos(turnRad) + rightIn * Math.sin(turnRad),
  });
  const line = (from: PaperPoint, to: PaperPoint): LinePrimitive => ({
    kind: 'line',
    from,
    to,
    weightMm: lineWeightsMm.existing,
    dash: 'solid',
  });
  const tip = at(halfIn, 0);
  const [left, right] = [at(halfIn - headLongIn, -headHalfIn), at(halfIn - headLongIn, headHalfIn)];
  const letterAt = at(letterOffIn, 0);
  return [
    line(at(-halfIn, 0), tip),
    line(left, tip),
    line(tip, right),
    line(left, right),
    {
      kind: 'text',
      xIn: letterAt.xIn,
      yIn: letterAt.yIn + baselineDropIn(8),
      text: north.letter,
      anchor: 'middle',
      sizePt: 8,
      weight: 700,
      turnDeg: 0,
    },
  ];
}
