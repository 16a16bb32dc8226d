import { type Bounds, gridLines, type Line, type Outline } from '../../geometry/index.ts';
import type { Panels } from './panels.ts';

/** The box around a slab by its longer side; a square one runs along x. */
export type Box = { readonly lengthIn: number; readonly widthIn: number; readonly runsAlong: 'x' | 'y' };

export function boxOf(bounds: Bounds): Box {
  const xIn = bounds.maxXIn - bounds.minXIn;
  const yIn = bounds.maxYIn - bounds.minYIn;
  return xIn >= yIn
    ? { lengthIn: xIn, widthIn: yIn, runsAlong: 'x' }
    : { lengthIn: yIn, widthIn: xIn, runsAlong: 'y' };
}

/** The lines between equal panels of the box, cut where they leave the outline. */
export function jointLines(outline: Outline, bounds: Bounds, panels: Panels): Line[] {
  const { runsAlong } = boxOf(bounds);
  const xCount = runsAlong === 'x' ? panels.alongCount : panels.acrossCount;
  const yCount = runsAlong === 'x' ? panels.acrossCount : panels.alongCount;
  return gridLines({ outline, bounds, xCount, yCount });
}
