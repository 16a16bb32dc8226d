import { clipLineToOutline, type Line } from './clip.ts';
import type { Bounds } from './measure.ts';
import type { Outline } from './outline.ts';

/**
 * The lines that divide the box of an outline into equal parts each way, cut where they leave the
 * outline. A line that leaves it and comes back in is several.
 *
 * @param made.xCount Parts along x, a whole number from 1.
 * @param made.yCount Parts along y, a whole number from 1.
 */
export function gridLines(made: {
  readonly outline: Outline;
  readonly bounds: Bounds;
  readonly xCount: number;
  readonly yCount: number;
}): Line[] {
  const { outline, bounds, xCount, yCount } = made;
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

/** Stretches are distances from the line's first point; the lines run along x or y only. */
function partsInside(line: Line, outline: Outline): Line[] {
  const isLevel = line.fromYIn === line.toYIn;
  return clipLineToOutline(line, outline).map(({ fromIn, toIn }) =>
    isLevel
      ? { ...line, fromXIn: line.fromXIn + fromIn, toXIn: line.fromXIn + toIn }
      : { ...line, fromYIn: line.fromYIn + fromIn, toYIn: line.fromYIn + toIn },
  );
}
