import type { PaperPoint, Scale } from './drawing.ts';
import type { ProfileView } from './profile-view.ts';
import { scalesOf, type UnitSystem } from './scales.ts';
import { textWidthIn } from './text-width.ts';

export const profileTextStyle = { sizePt: 8, weight: 400 } as const;
export const profileLetterStyle = { sizePt: 9, weight: 700 } as const;

/** Rows above the lines [in from the top]: heights, letters, slopes; then the lines themselves. */
export const rowsIn = { heights: 0.2, letters: 0.38, letterFoot: 0.43, slopes: 0.62, plot: 0.74 } as const;
export const axisGapIn = 0.08;
const belowAxisIn = 0.32;
const sideIn = 0.12;
/** From the last of the concrete to the names of the lines. */
const leaderIn = 0.32;
/** From the last of the ground past it to its name. */
export const beyondGapIn = 0.08;

/** Heights are drawn that many times as large: common practice, no source. */
const TIMES = [20, 10, 5, 2, 1] as const;
/** What is left for heights on the paper [in]. */
const MOST_PLOT_IN = 2.3;
/** Room for the names of five lines. */
const LEAST_PLOT_IN = 0.8;
const LEAST_HEIGHT_TICK_IN = 0.25;
const LEAST_DISTANCE_TICK_IN = 0.6;

const INCHES_PER_METRE = 1000 / 25.4;
const STEPS_IN: Readonly<Record<UnitSystem, readonly number[]>> = {
  us: [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500].map((feet) => feet * 12),
  metric: [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200].map(
    (metres) => metres * INCHES_PER_METRE,
  ),
};

/** Where a profile lies on the paper. */
export type ProfileFrame = {
  /** Where the names of its lines stand: past its last slab, or before its first where the ground goes on past the last. */
  readonly names: { readonly xIn: number; readonly side: 'left' | 'right' };
  readonly scale: Scale;
  readonly times: number;
  readonly at: (alongIn: number, heightIn: number) => PaperPoint;
  /** Heights and distances that are written at the axes [in]. */
  readonly heightTicksIn: readonly number[];
  readonly distanceTicksIn: readonly number[];
  readonly leftIn: number;
  readonly rightIn: number;
  readonly plotBottomIn: number;
  readonly bottomIn: number;
};

/**
 * The largest scale at which a profile fits the page, and the largest factor for its heights.
 *
 * @throws {RangeError} If no scale is small enough.
 */
export function profileFrame(view: ProfileView): ProfileFrame {
  const { fromIn, toIn } = rangeOf([
    ...view.reaches.flatMap(({ top }) => top.flatMap((one) => [one.fromIn, one.toIn])),
    ...view.beyond.map(({ alongIn }) => alongIn),
  ]);
  const heights = rangeOf([
    ...view.reaches.flatMap(heightsOf),
    ...view.beyond.map(({ heightIn }) => heightIn),
  ]);
  const { beyond: beyondName, ...lineNames } = view.words.profileLines;
  const nameWidthIn = Math.max(
    ...Object.values(lineNames).map((name) => textWidthIn(name, profileTextStyle)),
  );
  const beyondWidthIn =
    view.beyond.length === 0 ? 0 : beyondGapIn + textWidthIn(beyondName, profileTextStyle);
  const tickWidthIn = Math.max(
    ...[heights.fromIn, heights.toIn].map((heightIn) =>
      textWidthIn(view.words.heightOf(heightIn), profileTextStyle),
    ),
  );
  const leftIn = sideIn + tickWidthIn + 0.1;
  const roomIn = view.sheet.widthIn - leftIn - leaderIn - nameWidthIn - beyondWidthIn - sideIn - 0.1;
  const scale = scalesOf(view.system).find(({ paperInPerIn }) => (toIn - fromIn) * paperInPerIn <= roomIn);
  if (scale === undefined) throw new RangeError(`no scale is small enough for the profile ${view.id}`);
  const { paperInPerIn } = scale;
  const times =
    TIMES.find((one) => (heights.toIn - heights.fromIn) * paperInPerIn * one <= MOST_PLOT_IN) ?? 1;
  const stepIn = stepOf(view.system, paperInPerIn * times, LEAST_HEIGHT_TICK_IN);
  const ticksIn = ticksBetween(heights.fromIn, heights.toIn, stepIn);
  const highIn = ticksIn.at(-1) ?? heights.toIn;
  const plotIn = (highIn - (ticksIn[0] ?? heights.fromIn)) * paperInPerIn * times;
  const side = view.beyond.length === 0 ? 'right' : 'left';
  const startIn = leftIn + 0.1 + (side === 'left' ? nameWidthIn + leaderIn : 0);
  const plotBottomIn = rowsIn.plot + Math.max(LEAST_PLOT_IN, plotIn);
  return {
    scale,
    times,
    at: (alongIn, heightIn) => ({
      xIn: startIn + (alongIn - fromIn) * paperInPerIn,
      yIn: rowsIn.plot + (highIn - heightIn) * paperInPerIn * times,
    }),
    heightTicksIn: ticksIn,
    distanceTicksIn: ticksBetween(
      fromIn,
      toIn,
      stepOf(view.system, paperInPerIn, LEAST_DISTANCE_TICK_IN),
    ).filter((tickIn) => tickIn >= fromIn && tickIn <= toIn),
    leftIn,
    rightIn: startIn + (toIn - fromIn) * paperInPerIn,
    names: {
      xIn: side === 'left' ? startIn - leaderIn : startIn + (toIn - fromIn) * paperInPerIn + leaderIn,
      side,
    },
    plotBottomIn,
    bottomIn: plotBottomIn + axisGapIn + belowAxisIn,
  };
}

function heightsOf({ top, thicknessIn, baseIn, old }: ProfileView['reaches'][number]): readonly number[] {
  const tops = top.flatMap((one) => [one.fromHeightIn, one.toHeightIn]);
  const olds = old.flatMap(({ top: now, goneIn }) =>
    [now.fromHeightIn, now.toHeightIn].flatMap((heightIn) => [heightIn, heightIn - goneIn]),
  );
  return [...tops, ...tops.map((heightIn) => heightIn - thicknessIn - baseIn), ...olds];
}

function rangeOf(values: readonly number[]): { readonly fromIn: number; readonly toIn: number } {
  return { fromIn: Math.min(...values), toIn: Math.max(...values) };
}

/** The least round step that stands so far apart on the paper. */
function stepOf(system: UnitSystem, paperInPerIn: number, leastIn: number): number {
  const steps = STEPS_IN[system];
  return steps.find((stepIn) => stepIn * paperInPerIn >= leastIn) ?? steps.at(-1) ?? 1;
}

/** Round values from the last before a range to the first past it. */
function ticksBetween(fromIn: number, toIn: number, stepIn: number): readonly number[] {
  const first = Math.floor(fromIn / stepIn + 1e-9);
  const last = Math.max(first + 1, Math.ceil(toIn / stepIn - 1e-9));
  return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * stepIn);
}
