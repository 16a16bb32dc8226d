import { type Box, baselineDropIn, leadingRatio, textHeightIn, uprightBox } from './boxes.ts';
import type { PaperPoint, TextPrimitive } from './drawing.ts';
import { balancedLines, type TextStyle } from './lines.ts';
import { textWidthIn } from './text-width.ts';

const airIn = 0.04;

export type Block = {
  /** From its centre to the middle of its farthest side. */
  readonly halfLongIn: number;
  readonly boxAt: (centre: PaperPoint) => Box;
  readonly textsAt: (centre: PaperPoint) => readonly TextPrimitive[];
};

/** Ways to set a label, the best first: one line or more, upright or turned. */
export function labelShapes(
  label: string,
  style: TextStyle,
): { lines: readonly string[]; turnDeg: 0 | -90 }[] {
  const lines = (count: number) => balancedLines(label, style, count);
  const shapes = [
    { lines: lines(1), turnDeg: 0 },
    { lines: lines(2), turnDeg: 0 },
    { lines: lines(1), turnDeg: -90 },
    { lines: lines(3), turnDeg: 0 },
    { lines: lines(2), turnDeg: -90 },
  ] as const;
  return shapes.flatMap((shape) =>
    shape.lines === null ? [] : [{ lines: shape.lines, turnDeg: shape.turnDeg }],
  );
}

/** Lines of text to be centred on a point: the box that they take there, and the texts themselves. */
export function textBlock(lines: readonly string[], turnDeg: 0 | -90, style: TextStyle): Block {
  const { sizePt } = style;
  const leadingIn = (leadingRatio * sizePt) / 72;
  const halfHighIn = ((lines.length - 1) * leadingIn + textHeightIn(sizePt)) / 2 + airIn;
  const halfWideIn = Math.max(...lines.map((line) => textWidthIn(line, style))) / 2 + airIn;
  const isTurned = turnDeg !== 0;
  const halfXIn = isTurned ? halfHighIn : halfWideIn;
  const halfYIn = isTurned ? halfWideIn : halfHighIn;
  return {
    halfLongIn: Math.max(halfXIn, halfYIn),
    boxAt: ({ xIn, yIn }) =>
      uprightBox({
        leftIn: xIn - halfXIn,
        rightIn: xIn + halfXIn,
        topIn: yIn - halfYIn,
        bottomIn: yIn + halfYIn,
      }),
    textsAt: ({ xIn, yIn }) =>
      lines.map((text, index): TextPrimitive => {
        const downIn = (index - (lines.length - 1) / 2) * leadingIn + baselineDropIn(sizePt);
        return {
          kind: 'text',
          xIn: xIn + (isTurned ? downIn : 0),
          yIn: yIn + (isTurned ? 0 : downIn),
          text,
          anchor: 'middle',
          ...style,
          turnDeg,
        };
      }),
  };
}
