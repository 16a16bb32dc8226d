import { type Box, baselineDropIn, leadingRatio, textHeightIn, uprightBox } from './boxes.ts';
import type { PaperPoint, TextPrimitive } from './drawing.ts';
import { balancedLines, type TextStyle } from './lines.ts';
import { textWidthIn } from './text-width.ts';

const airIn = 0.04;

export type Block = { readonly box: Box; readonly texts: readonly TextPrimitive[] };

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

/** Lines of text centred on a point, with the box that they take. */
export function blockAt(
  lines: readonly string[],
  centre: PaperPoint,
  turnDeg: 0 | -90,
  style: TextStyle,
): Block {
  const { sizePt } = style;
  const leadingIn = (leadingRatio * sizePt) / 72;
  const halfHighIn = ((lines.length - 1) * leadingIn + textHeightIn(sizePt)) / 2 + airIn;
  const halfWideIn = Math.max(...lines.map((line) => textWidthIn(line, style))) / 2 + airIn;
  const isTurned = turnDeg !== 0;
  const halfXIn = isTurned ? halfHighIn : halfWideIn;
  const halfYIn = isTurned ? halfWideIn : halfHighIn;
  const texts = lines.map((text, index): TextPrimitive => {
    const downIn = (index - (lines.length - 1) / 2) * leadingIn + baselineDropIn(sizePt);
    return {
      kind: 'text',
      xIn: centre.xIn + (isTurned ? downIn : 0),
      yIn: centre.yIn + (isTurned ? 0 : downIn),
      text,
      anchor: 'middle',
      ...style,
      turnDeg,
    };
  });
  const box = uprightBox({
    leftIn: centre.xIn - halfXIn,
    rightIn: centre.xIn + halfXIn,
    topIn: centre.yIn - halfYIn,
    bottomIn: centre.yIn + halfYIn,
  });
  return { box, texts };
}
