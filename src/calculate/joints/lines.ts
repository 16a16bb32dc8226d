import { type Bounds, clipLineToOutline, type Line, type Outline } from '../../geometry/index.ts';
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

/**
 * The lines between equal panels of the box, cut where they leave the outline.
 * A line that leaves the outline and comes back in is several.
 */
export function jointLines(outline: Outline, bounds: Bounds, panels: Panels): Line[] {
  const { runsAlong } = boxOf(bounds);
  const xCount = runsAlong === 'x' ? panels.alongCount : panels.acrossCount;
  const yCount = runsAlong === 'x' ? panels.acrossCount : panels.alongCount;
  const { minXIn, maxXIn, minYIn, maxYIn } = bounds;
  const upright = between(minXIn, maxXIn, xCount).map((xIn) => ({
    fromXIn: xIn,
    fromYIn: minYIn,
    toXIn: xIn,
    toYIn: maxYIn,
  }));
  const level = between(minYIn, maxYIn, yCount).map((yIn) => ({
    fromXIn: minXIn,
    fromYIn: yIn,
    toXIn: maxXIn,
    toYIn: yIn,
  }));
  return [...upright, ...level].flatMap((line) => partsInside(line, outline));
}

export function lineLengthIn(line: Line): number {
  return Math.hypot(line.toXIn - line.fromXIn, line.toYIn - line.fromYIn);
}

/** The places that divide a stretch into so many equal parts, its ends left out. */
function between(fromIn: number, toIn: number, partCount: number): number[] {
  return Array.from(
    { length: partCount - 1 },
    (_, index) => fromIn + ((toIn - fromIn) * (index + 1)) / partCount,
  );
}

/** Stretches are distances from the line's first point; joints run along x or y only. */
function partsInside(line: Line, outline: Outline): Line[] {
  const isLevel = line.fromYIn === line.toYIn;
  return clipLineToOutline(line, outline).map(({ fromIn, toIn }) =>
    isLevel
      ? { ...line, fromXIn: line.fromXIn + fromIn, toXIn: line.fromXIn + toIn }
      : { ...line, fromYIn: line.fromYIn + fromIn, toYIn: line.fromYIn + toIn },
  );
}
