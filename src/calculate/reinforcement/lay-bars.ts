import { distanceIn, type Line, type Outline, type Point, segmentCrossingIn } from '../../geometry/index.ts';
import { type BarPiece, barPieces, lapsOf, lapsOnJoints } from './bar-laps.ts';
import { type BarRun, type BarWay, barRuns } from './bar-runs.ts';
import { diagonalsOf } from './diagonal-bars.ts';

/** A bar, or several lapped into one, where it lies. */
export type LaidBar = {
  readonly way: BarWay | 'diagonal';
  readonly from: Point;
  readonly to: Point;
  readonly lengthIn: number;
  readonly pieces: readonly BarPiece[];
  /** How many of its laps a joint line runs through. */
  readonly lapsOnJoints: number;
};

/**
 * Every bar of a mat, laps where a run is longer than the stock: from one end and the other in turn, so that
 * neighbours do not lap side by side, and off the joint lines; and the bars across inner corners.
 */
export function layBars(made: {
  readonly outline: Outline;
  readonly joints: readonly Line[];
  readonly spacingIn: Readonly<Record<BarWay, number>>;
  readonly coverIn: number;
  readonly stockIn: number;
  readonly lapIn: number;
}): readonly LaidBar[] {
  const runs = barRuns(made);
  const lapped = (way: BarWay) =>
    runs.filter((run) => run.way === way).map((run, index) => lap(run, index, made));
  return [...lapped('along'), ...lapped('across'), ...layDiagonals(made)];
}

/** Only the bars across inner corners, in one piece each. */
export function layDiagonals(made: Parameters<typeof diagonalsOf>[0]): readonly LaidBar[] {
  return diagonalsOf(made).map((bar) => ({
    ...bar,
    way: 'diagonal',
    pieces: [{ fromIn: 0, lengthIn: bar.lengthIn }],
    lapsOnJoints: 0,
  }));
}

function lap(
  run: BarRun,
  index: number,
  made: { readonly joints: readonly Line[]; readonly stockIn: number; readonly lapIn: number },
): LaidBar {
  const jointsIn = made.joints.flatMap((joint) => segmentCrossingIn(run, joint) ?? []);
  const pieces = barPieces({
    runIn: run.lengthIn,
    stockIn: made.stockIn,
    lapIn: made.lapIn,
    jointsIn,
    fromEnd: index % 2 === 1,
  });
  return { ...run, pieces, lapsOnJoints: lapsOnJoints(pieces, jointsIn) };
}

/** Where its laps lie. */
export function lapLines({ from, to, pieces }: LaidBar): readonly Line[] {
  const lengthIn = distanceIn(from, to);
  const at = (alongIn: number): Point => ({
    xIn: from.xIn + ((to.xIn - from.xIn) * alongIn) / lengthIn,
    yIn: from.yIn + ((to.yIn - from.yIn) * alongIn) / lengthIn,
  });
  return lapsOf(pieces).map(({ fromIn, toIn }) => {
    const [start, end] = [at(fromIn), at(toIn)];
    return { fromXIn: start.xIn, fromYIn: start.yIn, toXIn: end.xIn, toYIn: end.yIn };
  });
}
