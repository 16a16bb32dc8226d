import { boxAround, type Outline } from '../../geometry/index.ts';
import { type Figure, figure, num } from '../figure.ts';
import type { TapedBase } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';

export type BoxFigures = {
  /** Sides of the smallest rectangle round a slab, or of a walk rolled out straight [in]. */
  readonly 'box-length': Figure;
  readonly 'box-width': Figure;
};

export function boxFigures(base: TapedBase, shape: ShapeFigures, outline: Outline): BoxFigures {
  const centreLine = shape['centre-line'];
  const isStrip = base.kind === 'strip' && centreLine !== undefined;
  const box = isStrip
    ? { lengthIn: num(centreLine), widthIn: Math.max(base.widthIn, base.endWidthIn ?? 0) }
    : boxAround(outline);
  const side = (value: number, ofStrip: string, ofBox: string) =>
    figure({
      value,
      unit: 'in',
      decimals: 2,
      formula: { method: isStrip ? ofStrip : `${ofBox} side of the smallest rectangle round the slab` },
      inputs: isStrip ? { centreLineIn: centreLine } : shape.perimeter.inputs,
    });
  return {
    'box-length': side(box.lengthIn, 'length of the centre line of the walk', 'longer'),
    'box-width': side(box.widthIn, 'width of the walk', 'shorter'),
  };
}
