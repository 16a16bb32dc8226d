import { type Bounds, boundsOf, clipLineToOutline, type Line, type Outline } from '../../geometry/index.ts';
import { ceilCount } from '../../units/index.ts';

/** Lengths of the unbroken runs of a mat [in], by the way they go. */
export type BarGrid = { readonly alongIn: readonly number[]; readonly acrossIn: readonly number[] };

/**
 * A mat of bars both ways, cut to the outline.
 *
 * @param made.spacingIn Bars are never farther apart [in], above 0; they are set out evenly.
 * @param made.coverIn   From the edge to the outer bars and to the bar ends [in], 0 or more.
 * @returns Runs along the longer side of the box around the outline, and across it. A run is one
 *          stretch within the outline, less the cover at both ends; where a bar leaves the
 *          outline and comes back in, it is several.
 * @throws {RangeError} If a value is outside its range.
 *
 * Bars each way = ceil((side - 2 cover) / spacing) + 1 over the box. The cover is taken along the
 * bar, so at a slanting edge the end stands closer to it than the cover.
 */
export function barGrid(made: { outline: Outline; spacingIn: number; coverIn: number }): BarGrid {
  const { outline, spacingIn, coverIn } = made;
  if (!(spacingIn > 0 && spacingIn < Infinity))
    throw new RangeError(`spacingIn must be above 0, got ${spacingIn}`);
  if (!(coverIn >= 0 && coverIn < Infinity))
    throw new RangeError(`coverIn must be 0 or more, got ${coverIn}`);

  const bounds = boundsOf(outline);
  const { minXIn, maxXIn, minYIn, maxYIn } = bounds;
  const level = placesIn(minYIn, maxYIn, made).flatMap((yIn) =>
    runsIn(levelLine(yIn, bounds), outline, coverIn),
  );
  const upright = placesIn(minXIn, maxXIn, made).flatMap((xIn) =>
    runsIn(uprightLine(xIn, bounds), outline, coverIn),
  );
  return maxXIn - minXIn >= maxYIn - minYIn
    ? { alongIn: level, acrossIn: upright }
    : { alongIn: upright, acrossIn: level };
}

/**
 * A run as bars out of stock, each over the one before by the lap.
 *
 * @param made.runIn   [in], above 0.
 * @param made.stockIn Stock length [in], above the lap.
 * @param made.lapIn   [in], 0 or more.
 * @returns Lengths to cut [in], whole stock first; they add up to the run and its laps.
 * @throws {RangeError} If a value is outside its range.
 *
 * n = ceil((run - lap) / (stock - lap)), laps = n - 1.
 */
export function barPiecesIn(made: { runIn: number; stockIn: number; lapIn: number }): number[] {
  const { runIn, stockIn, lapIn } = made;
  if (!(runIn > 0 && runIn < Infinity)) throw new RangeError(`runIn must be above 0, got ${runIn}`);
  if (!(lapIn >= 0 && lapIn < stockIn && stockIn < Infinity)) {
    throw new RangeError(`lapIn must be 0 or more and below the stock of ${stockIn}, got ${lapIn}`);
  }
  const wholeCount = Math.max(1, ceilCount((runIn - lapIn) / (stockIn - lapIn))) - 1;
  return [...Array.from({ length: wholeCount }, () => stockIn), runIn - wholeCount * (stockIn - lapIn)];
}

/**
 * Lap of two bars.
 *
 * @throws {RangeError} If a value is below 0 or not finite.
 */
export function barLapIn(made: { lapDiameters: number; diameterIn: number }): number {
  const { lapDiameters, diameterIn } = made;
  for (const [name, value] of Object.entries({ lapDiameters, diameterIn })) {
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
  return lapDiameters * diameterIn;
}

/** Even places from cover to cover, none farther apart than the spacing. */
function placesIn(fromIn: number, toIn: number, made: { spacingIn: number; coverIn: number }): number[] {
  const spanIn = toIn - fromIn - 2 * made.coverIn;
  if (spanIn < 0) return [];
  const spaceCount = ceilCount(spanIn / made.spacingIn);
  return Array.from(
    { length: spaceCount + 1 },
    (_, index) => fromIn + made.coverIn + (spaceCount === 0 ? 0 : (spanIn * index) / spaceCount),
  );
}

function runsIn(line: Line, outline: Outline, coverIn: number): number[] {
  return clipLineToOutline(line, outline)
    .map(({ fromIn, toIn }) => toIn - fromIn - 2 * coverIn)
    .filter((runIn) => runIn > 0);
}

function levelLine(yIn: number, { minXIn, maxXIn }: Bounds): Line {
  return { fromXIn: minXIn, fromYIn: yIn, toXIn: maxXIn, toYIn: yIn };
}

function uprightLine(xIn: number, { minYIn, maxYIn }: Bounds): Line {
  return { fromXIn: xIn, fromYIn: minYIn, toXIn: xIn, toYIn: maxYIn };
}
