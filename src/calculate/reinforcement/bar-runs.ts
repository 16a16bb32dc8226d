import {
  type Bounds,
  boundsOf,
  clearStretches,
  distanceIn,
  edgesOf,
  type Line,
  type Outline,
  type Point,
  turnOutline,
  turnPoint,
} from '../../geometry/index.ts';
import { ceilCount, floorToStep } from '../../units/index.ts';

/** One straight stretch of a mat between two edges, where its steel lies: cover taken off. */
export type BarRun = {
  readonly way: BarWay;
  readonly from: Point;
  readonly to: Point;
  /** As it is cut [in]. */
  readonly lengthIn: number;
};

/** Along the longer side of the slab, or across it. */
export type BarWay = 'along' | 'across';

/** Bars are cut to this [in], down: what is lost is more cover. Common practice, no source. */
export const BAR_STEP_IN = 1 / 4;

/**
 * A shorter stretch gets no bar: it would not hold [in].
 * ACI 318, 25.4.2.1 and 25.5.2.1: development and lap of 12 in at least (memory).
 */
export const LEAST_RUN_IN = 12;

/** Edges whose lengths differ by less, in parts of the longest, are as long: the first one sets the grid. */
const AS_LONG_RATIO = 1e-3;

/**
 * A mat of bars both ways, cut to the outline less the cover. It lies square to the longest straight edge.
 *
 * @param made.spacingIn Bars that run along, and those across, are never farther apart [in], above 0; they
 *                       are set out evenly over the box around the outline.
 * @param made.coverIn   From every edge to the bars and their ends, square to the edge [in], 0 or more.
 * @returns Runs of 12 in and more. Where a bar leaves the slab and comes back in, it is several.
 * @throws {RangeError} If a value is outside its range.
 *
 * Bars each way = ceil((side - 2 cover) / spacing) + 1 over the box.
 */
export function barRuns(made: {
  readonly outline: Outline;
  readonly spacingIn: Readonly<Record<BarWay, number>>;
  readonly coverIn: number;
}): readonly BarRun[] {
  const { outline, spacingIn, coverIn } = made;
  for (const [way, apartIn] of Object.entries(spacingIn)) {
    if (!(apartIn > 0 && apartIn < Infinity))
      throw new RangeError(`spacing ${way} must be above 0, got ${apartIn}`);
  }
  if (!(coverIn >= 0 && coverIn < Infinity))
    throw new RangeError(`coverIn must be 0 or more, got ${coverIn}`);

  const turnDeg = gridTurnDeg(outline);
  const square = turnDeg === 0 ? outline : turnOutline(outline, -turnDeg);
  const bounds = boundsOf(square);
  const { minXIn, maxXIn, minYIn, maxYIn } = bounds;
  const levelIsAlong = maxXIn - minXIn >= maxYIn - minYIn;
  const lines = (way: BarWay): readonly Line[] =>
    (way === 'along') === levelIsAlong
      ? placesIn(minYIn, maxYIn, { spacingIn: spacingIn[way], coverIn }).map((yIn) => levelLine(yIn, bounds))
      : placesIn(minXIn, maxXIn, { spacingIn: spacingIn[way], coverIn }).map((xIn) =>
          uprightLine(xIn, bounds),
        );
  return (['along', 'across'] as const).flatMap((way) =>
    lines(way)
      .flatMap((line) => runsOf(line, square, coverIn))
      .map(({ from, to, lengthIn }) => ({
        way,
        from: turnPoint(from, turnDeg),
        to: turnPoint(to, turnDeg),
        lengthIn,
      })),
  );
}

/** How the longest straight edge is turned, within an eighth of a turn; 0 where all edges are curved [deg]. */
function gridTurnDeg(outline: Outline): number {
  const straight = edgesOf(outline.rings[0] ?? []).filter(({ from }) => from.bulge === 0);
  const longestIn = Math.max(0, ...straight.map(({ from, to }) => distanceIn(from, to)));
  const edge = straight.find(({ from, to }) => distanceIn(from, to) >= longestIn * (1 - AS_LONG_RATIO));
  if (edge === undefined) return 0;
  const { from, to } = edge;
  const deg = (Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn) * 180) / Math.PI;
  const turnDeg = deg - 90 * Math.round(deg / 90);
  // The noise of a placed shape is no turn.
  return Math.abs(turnDeg) < 1e-9 ? 0 : turnDeg;
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

/** The stretches of a line that get a bar, each shortened evenly to what it is cut to. */
function runsOf(line: Line, outline: Outline, coverIn: number): Omit<BarRun, 'way'>[] {
  return nearlyClear(line, outline, coverIn).flatMap(({ fromIn, toIn }) => {
    const lengthIn = floorToStep(toIn - fromIn, BAR_STEP_IN);
    if (lengthIn < LEAST_RUN_IN) return [];
    const startIn = (fromIn + toIn - lengthIn) / 2;
    return [{ from: pointOn(line, startIn), to: pointOn(line, startIn + lengthIn), lengthIn }];
  });
}

/** The outer bars lie just on the cover, where noise decides: it is let off. */
const NOISE_IN = 1e-6;

function nearlyClear(line: Line, outline: Outline, coverIn: number) {
  return clearStretches(line, outline, Math.max(0, coverIn - NOISE_IN));
}

/** Lines run along x or y, in its direction. */
function pointOn(line: Line, atIn: number): Point {
  return line.fromYIn === line.toYIn
    ? { xIn: line.fromXIn + atIn, yIn: line.fromYIn }
    : { xIn: line.fromXIn, yIn: line.fromYIn + atIn };
}

function levelLine(yIn: number, { minXIn, maxXIn }: Bounds): Line {
  return { fromXIn: minXIn, fromYIn: yIn, toXIn: maxXIn, toYIn: yIn };
}

function uprightLine(xIn: number, { minYIn, maxYIn }: Bounds): Line {
  return { fromXIn: xIn, fromYIn: minYIn, toXIn: xIn, toYIn: maxYIn };
}
