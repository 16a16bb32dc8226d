import { ceilCount, ceilToStep } from '../../units/index.ts';
import { BAR_STEP_IN } from './bar-runs.ts';

/** A stretch of a run, from its start [in]. */
export type Stretch = { readonly fromIn: number; readonly toIn: number };

/** One bar of a run: where it starts and how long it is cut [in]. */
export type BarPiece = { readonly fromIn: number; readonly lengthIn: number };

/**
 * Lap of two bars, up to what bars are cut to.
 *
 * @throws {RangeError} If a value is below 0 or not finite.
 */
export function barLapIn(made: { lapDiameters: number; diameterIn: number }): number {
  const { lapDiameters, diameterIn } = made;
  for (const [name, value] of Object.entries({ lapDiameters, diameterIn })) {
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
  return ceilToStep(lapDiameters * diameterIn, BAR_STEP_IN);
}

/**
 * A run as bars out of stock, each over the one before by the lap.
 *
 * @param made.runIn    [in], above 0.
 * @param made.stockIn  Longest stock [in], above the lap.
 * @param made.lapIn    [in], 0 or more.
 * @param made.jointsIn Where joint lines cross the run, from its start [in]: no lap lies on one, if there is a way.
 * @param made.fromEnd  Laid from the other end, so that the laps of neighbours do not lie side by side.
 * @returns Bars in order from the start of the run; their lengths add up to the run and its laps.
 * @throws {RangeError} If a value is outside its range.
 *
 * n = ceil((run - lap) / (stock - lap)) bars, laps = n - 1; one bar more where else a lap would lie on a
 * joint and with it none does. The last bar is two laps long at least, where the run is.
 */
export function barPieces(made: {
  readonly runIn: number;
  readonly stockIn: number;
  readonly lapIn: number;
  readonly jointsIn: readonly number[];
  readonly fromEnd: boolean;
}): readonly BarPiece[] {
  const { runIn, stockIn, lapIn, jointsIn, fromEnd } = made;
  if (!(runIn > 0 && runIn < Infinity)) throw new RangeError(`runIn must be above 0, got ${runIn}`);
  if (!(lapIn >= 0 && lapIn < stockIn && stockIn < Infinity)) {
    throw new RangeError(`lapIn must be 0 or more and below the stock of ${stockIn}, got ${lapIn}`);
  }
  const count = Math.max(1, ceilCount((runIn - lapIn) / (stockIn - lapIn)));
  if (count === 1) return [{ fromIn: 0, lengthIn: runIn }];
  const joints = fromEnd ? jointsIn.map((atIn) => runIn - atIn) : jointsIn;
  const tries = [count, count + 1].map((barCount) =>
    laidFromStart({ runIn, stockIn, lapIn, joints, barCount }),
  );
  const [plain = [], more = []] = tries;
  const laid = lapsOnJoints(plain, joints) > 0 && lapsOnJoints(more, joints) === 0 ? more : plain;
  if (!fromEnd) return laid;
  return laid.map(({ fromIn, lengthIn }) => ({ fromIn: runIn - fromIn - lengthIn, lengthIn })).toReversed();
}

/** Laps of bars that lie over one another [in from the start of the run]. */
export function lapsOf(pieces: readonly BarPiece[]): readonly Stretch[] {
  return pieces.slice(1).map(({ fromIn }, index) => {
    const before = pieces[index];
    return { fromIn, toIn: before === undefined ? fromIn : before.fromIn + before.lengthIn };
  });
}

/** How many laps a joint line runs through. */
export function lapsOnJoints(pieces: readonly BarPiece[], jointsIn: readonly number[]): number {
  return lapsOf(pieces).filter(({ fromIn, toIn }) => jointsIn.some((atIn) => atIn > fromIn && atIn < toIn))
    .length;
}

type Laying = {
  readonly runIn: number;
  readonly stockIn: number;
  readonly lapIn: number;
  readonly joints: readonly number[];
  readonly barCount: number;
};

/** Each bar as long as stock allows, shortened until its lap is off every joint and the rest can still be laid. */
function laidFromStart({ runIn, stockIn, lapIn, joints, barCount }: Laying): readonly BarPiece[] {
  const pieces: BarPiece[] = [];
  let fromIn = 0;
  for (let left = barCount - 1; left > 0; left -= 1) {
    // What the bars after this one cover at most, and at least where each is two laps long.
    const leastEndIn = runIn - left * (stockIn - lapIn);
    const mostEndIn = Math.max(leastEndIn, Math.min(fromIn + stockIn, runIn - left * lapIn));
    const endIn = endOffJoints({ leastEndIn, mostEndIn, lapIn, joints });
    pieces.push({ fromIn, lengthIn: endIn - fromIn });
    fromIn = endIn - lapIn;
  }
  return [...pieces, { fromIn, lengthIn: runIn - fromIn }];
}

/** The last place for the end of a bar at which its lap is off every joint; the last one of all if there is none. */
function endOffJoints(made: {
  readonly leastEndIn: number;
  readonly mostEndIn: number;
  readonly lapIn: number;
  readonly joints: readonly number[];
}): number {
  const { leastEndIn, mostEndIn, lapIn, joints } = made;
  let endIn = mostEndIn;
  for (;;) {
    const crossing = joints.find((atIn) => atIn > endIn - lapIn && atIn < endIn);
    if (crossing === undefined) return endIn;
    endIn = Math.floor(crossing / BAR_STEP_IN) * BAR_STEP_IN;
    if (endIn < leastEndIn) return mostEndIn;
  }
}
