import { type Box, textBox, textHeightIn, uprightBox } from './boxes.ts';
import { lineWeightsMm, type PaperPoint, type Primitive, type TextPrimitive } from './drawing.ts';
import type { TextStyle } from './lines.ts';
import type { BayMark } from './plan-view.ts';
import { textWidthIn } from './text-width.ts';

type BlockSize = { readonly number: TextStyle; readonly area: TextStyle };

/** The large number first; nothing is written below 8 pt. */
export const sizes: readonly BlockSize[] = [
  { number: { sizePt: 16, weight: 700 }, area: { sizePt: 9, weight: 400 } },
  { number: { sizePt: 12, weight: 700 }, area: { sizePt: 8, weight: 400 } },
  { number: { sizePt: 9, weight: 700 }, area: { sizePt: 8, weight: 400 } },
];
export const hookStyle: TextStyle = { sizePt: 11, weight: 700 };
export const bayStyles = [hookStyle, ...sizes.flatMap(({ number, area }) => [number, area])];

const airIn = 0.03;
/** Height of a digit in parts of the text size: figures of Noto Sans are as high as its capitals. */
const digitRatio = 0.714;

/** A number in its circle, alone or with the area below it or at its right; its middle at 0, 0. */
export type Block = {
  readonly halfWideIn: number;
  readonly halfHighIn: number;
  readonly centre: PaperPoint;
  readonly radiusIn: number;
  readonly texts: readonly TextPrimitive[];
};

export function blockOf(
  { number, area }: BayMark,
  shape: 'below' | 'beside' | 'alone',
  size: BlockSize,
): Block {
  const radiusIn = radiusOf(number, size.number);
  const acrossIn = 2 * radiusIn;
  const areaWideIn = textWidthIn(area, size.area);
  const areaHighIn = textHeightIn(size.area.sizePt);
  const middle = { xIn: 0, yIn: 0 };
  if (shape === 'alone') {
    const texts = [textAt(number, middle, size.number, 'middle')];
    return { halfWideIn: radiusIn, halfHighIn: radiusIn, centre: middle, radiusIn, texts };
  }
  const isBelow = shape === 'below';
  const halfWideIn = (isBelow ? Math.max(acrossIn, areaWideIn) : acrossIn + airIn + areaWideIn) / 2;
  const halfHighIn = (isBelow ? acrossIn + airIn + areaHighIn : acrossIn) / 2;
  const centre = isBelow ? { xIn: 0, yIn: radiusIn - halfHighIn } : { xIn: radiusIn - halfWideIn, yIn: 0 };
  const areaText = isBelow
    ? textAt(area, { xIn: 0, yIn: halfHighIn - areaHighIn / 2 }, size.area, 'middle')
    : textAt(area, { xIn: halfWideIn - areaWideIn, yIn: 0 }, size.area, 'start');
  const texts = [textAt(number, centre, size.number, 'middle'), areaText];
  return { halfWideIn, halfHighIn, centre, radiusIn, texts };
}

/** What the block takes with its middle at a place, with some air. */
export function blockBox({ halfWideIn, halfHighIn }: Block, place: PaperPoint): Box {
  return uprightBox({
    leftIn: place.xIn - halfWideIn - airIn,
    rightIn: place.xIn + halfWideIn + airIn,
    topIn: place.yIn - halfHighIn - airIn,
    bottomIn: place.yIn + halfHighIn + airIn,
  });
}

export function blockAt({ centre, radiusIn, texts }: Block, place: PaperPoint): readonly Primitive[] {
  return [
    circle(movedBy(centre, place), radiusIn),
    ...texts.map((text) => ({ ...text, ...movedBy(text, place) })),
  ];
}

export function movedBy(point: PaperPoint, by: PaperPoint): PaperPoint {
  return { xIn: point.xIn + by.xIn, yIn: point.yIn + by.yIn };
}

/** Round the whole box of the number, with a little air. */
function radiusOf(number: string, style: TextStyle): number {
  const corners = textBox(textAt(number, { xIn: 0, yIn: 0 }, style, 'middle'));
  return Math.max(...corners.map(({ xIn, yIn }) => Math.hypot(xIn, yIn))) + airIn / 2;
}

/** A text whose digits are centred on a height. */
function textAt(
  text: string,
  at: PaperPoint,
  style: TextStyle,
  anchor: TextPrimitive['anchor'],
): TextPrimitive {
  const yIn = at.yIn + (digitRatio / 2) * (style.sizePt / 72);
  return { kind: 'text', xIn: at.xIn, yIn, text, anchor, ...style, turnDeg: 0 };
}

function circle({ xIn, yIn }: PaperPoint, radiusIn: number): Primitive {
  return {
    kind: 'path',
    parts: [
      { kind: 'move', xIn: xIn + radiusIn, yIn },
      { kind: 'arc', radiusIn, bulge: 1, xIn: xIn - radiusIn, yIn },
      { kind: 'arc', radiusIn, bulge: 1, xIn: xIn + radiusIn, yIn },
      { kind: 'close' },
    ],
    weightMm: lineWeightsMm.existing,
    dash: 'solid',
  };
}
