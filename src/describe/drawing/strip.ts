import { leadingRatio } from './boxes.ts';
import { type LinePrimitive, lineWeightsMm, type Scale, type TextPrimitive } from './drawing.ts';
import { wrapText } from './lines.ts';
import { northArrow, northSizeIn } from './north.ts';
import { scaleBarLengthIn, type UnitSystem } from './scales.ts';
import { textWidthIn } from './text-width.ts';

const titleStyle = { sizePt: 10, weight: 700 } as const;
const noteStyle = { sizePt: 8, weight: 400 } as const;
const padIn = 0.1;
const noteRowIn = 0.24;

export type Strip = {
  readonly heightIn: number;
  /** Drawn with the strip's own top edge at y = 0. */
  readonly primitives: readonly (TextPrimitive | LinePrimitive)[];
};

/** The title strip along the foot: title, scale in words, a scale bar, and at the right where north lies. */
export function titleStrip(given: {
  title: string;
  widthIn: number;
  scale: Scale;
  scaleText: string;
  system: UnitSystem;
  lengthOf: (lengthIn: number) => string;
  north: { readonly deg: number; readonly letter: string } | null;
}): Strip {
  const { title, scale, system, north } = given;
  const widthIn = given.widthIn - (north === null ? 0 : northSizeIn + padIn / 2);
  const innerIn = widthIn - 2 * padIn;
  const titles = wrapText(title, titleStyle, { widthIn: innerIn, lines: 2 });
  const titleRowIn = (leadingRatio * titleStyle.sizePt) / 72;
  const titleBottomIn = padIn / 2 + titles.length * titleRowIn;

  const barGroundIn = scaleBarLengthIn(system, scale, Math.min(1.5, innerIn * 0.4));
  const barIn = barGroundIn * scale.paperInPerIn;
  const endText = given.lengthOf(barGroundIn);
  const barBlockIn = barIn + textWidthIn(endText, noteStyle);
  const [scaleText = ''] = wrapText(given.scaleText, noteStyle, { widthIn: innerIn, lines: 1 });
  const isOneRow = textWidthIn(scaleText, noteStyle) + 0.2 + barBlockIn <= innerIn;
  const scaleBaseIn = titleBottomIn + noteRowIn - 0.07;
  const barBaseIn = isOneRow ? scaleBaseIn : scaleBaseIn + noteRowIn;
  const barLeftIn = isOneRow ? widthIn - padIn - barBlockIn : padIn;

  const text = (
    words: string,
    xIn: number,
    yIn: number,
    style: typeof titleStyle | typeof noteStyle,
  ): TextPrimitive => ({
    kind: 'text',
    xIn,
    yIn,
    text: words,
    anchor: 'start',
    ...style,
    turnDeg: 0,
  });
  const line = (fromXIn: number, fromYIn: number, toXIn: number, toYIn: number): LinePrimitive => ({
    kind: 'line',
    from: { xIn: fromXIn, yIn: fromYIn },
    to: { xIn: toXIn, yIn: toYIn },
    weightMm: lineWeightsMm.existing,
    dash: 'solid',
  });
  const heightIn = Math.max(barBaseIn + 0.07 + padIn / 2, north === null ? 0 : northSizeIn + 0.04);
  const northAt = { xIn: given.widthIn - padIn / 2 - northSizeIn / 2, yIn: heightIn / 2 };
  return {
    heightIn,
    primitives: [
      ...titles.map((words, index) =>
        text(words, padIn, padIn / 2 + (index + 0.78) * titleRowIn, titleStyle),
      ),
      text(scaleText, padIn, scaleBaseIn, noteStyle),
      text('0', barLeftIn, barBaseIn - 0.04, noteStyle),
      text(endText, barLeftIn + barIn, barBaseIn - 0.04, noteStyle),
      line(barLeftIn, barBaseIn + 0.04, barLeftIn + barIn, barBaseIn + 0.04),
      ...[0, 1 / 2, 1].map((share) =>
        line(
          barLeftIn + barIn * share,
          barBaseIn + 0.04,
          barLeftIn + barIn * share,
          barBaseIn + (share === 0.5 ? 0.01 : -0.01),
        ),
      ),
      ...(north === null ? [] : northArrow(northAt, north)),
    ],
  };
}
