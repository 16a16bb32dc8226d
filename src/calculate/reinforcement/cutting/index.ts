import { ceilToStep, floorToStep } from '../../../units/index.ts';
import { rememberByValue } from '../../remember.ts';
import { firstFitFrom } from './first-fit.ts';
import { leastPlan } from './search.ts';
import { type Cut, type Cutting, lengthOf, takenBy } from './types.ts';

/** What a tape is read to [in]. */
const TAPE_STEP_IN = 1 / 16;

/** Pieces of one length. */
export type Pieces = { readonly lengthIn: number; readonly count: number };

/** So many stock bars that are cut alike. */
export type CutBars = {
  readonly stockIn: number;
  readonly count: number;
  /** Out of each, longest first. */
  readonly cuts: readonly Pieces[];
  /** What is left over of each, saw cuts taken off. */
  readonly leftIn: number;
};

export type CuttingPlan = {
  readonly bars: readonly CutBars[];
  readonly boughtIn: number;
  /** What first fit from the longest stock would buy. */
  readonly firstFitIn: number;
  /** Whether it is shown that no plan buys less. */
  readonly isLeast: boolean;
};

type Bars = {
  readonly pieces: readonly Pieces[];
  readonly stocksIn: readonly number[];
  readonly kerfIn: number;
};

/** More than a job has, with its hidden conditions. */
const KEPT_PLANS = 50;

/**
 * Which stock bars to cut into which pieces so that the least length of stock is bought; of as short a plan
 * as could be shown or found.
 *
 * @param made.pieces   Lengths [in] in steps of 1/16, above 0 and not above the longest stock.
 * @param made.stocksIn Lengths as sold [in], one or more, above 0; taken down to 1/16.
 * @param made.kerfIn   What one cut takes away [in], 0 or more; taken up to 1/16.
 * @throws {RangeError} If a value is outside its range.
 */
export const cuttingPlan = rememberByValue('bars to cut', plannedCuts, KEPT_PLANS);

function plannedCuts(made: Bars): CuttingPlan {
  const { kerfIn } = made;
  if (!(kerfIn >= 0 && kerfIn < Infinity)) throw new RangeError(`kerfIn must be 0 or more, got ${kerfIn}`);
  const kerf = Math.round(ceilToStep(kerfIn, TAPE_STEP_IN) / TAPE_STEP_IN);
  const cutting = cuttingOf(made, kerf);
  if (cutting.sizes.length === 0) return { bars: [], boughtIn: 0, firstFitIn: 0, isLeast: true };
  const { cuts, isLeast } = leastPlan(cutting);
  const [longest] = cutting.stocks;
  if (longest === undefined) throw new RangeError('a cutting plan needs a stock length');
  return {
    bars: alike(cuts, cutting, kerf),
    boughtIn: lengthOf(cuts) * TAPE_STEP_IN,
    firstFitIn: lengthOf(firstFitFrom({ ...cutting, stocks: [longest] }, longest)) * TAPE_STEP_IN,
    isLeast,
  };
}

function cuttingOf(made: Pick<Bars, 'pieces' | 'stocksIn'>, kerf: number): Cutting {
  const lengths = made.stocksIn.map((stockIn) =>
    Math.round(floorToStep(stockIn, TAPE_STEP_IN) / TAPE_STEP_IN),
  );
  const longest = Math.max(...lengths);
  if (!(longest > 0 && Math.min(...lengths) > 0 && longest < Infinity)) {
    throw new RangeError(`stocksIn must be lengths above 0, got ${made.stocksIn.join(', ')}`);
  }
  const countOf = new Map<number, number>();
  for (const { lengthIn, count } of made.pieces) {
    const length = Math.round(lengthIn / TAPE_STEP_IN);
    if (!(length > 0 && length <= longest)) {
      throw new RangeError(`a piece must be above 0 and at most the stock, got ${lengthIn}`);
    }
    if (count > 0) countOf.set(length + kerf, (countOf.get(length + kerf) ?? 0) + count);
  }
  const sizes = [...countOf.keys()].sort((one, other) => other - one);
  return {
    sizes,
    counts: sizes.map((size) => countOf.get(size) ?? 0),
    stocks: [...new Set(lengths)]
      .sort((one, other) => other - one)
      .map((length) => ({ holds: length + kerf, length })),
  };
}

/** Bars that are cut alike together: long stock first, then those with the longest pieces. */
function alike(cuts: readonly Cut[], { sizes }: Cutting, kerf: number): readonly CutBars[] {
  const groups = new Map<string, { readonly cut: Cut; count: number }>();
  for (const cut of cuts) {
    const key = `${cut.stock.length} ${cut.takes.join(' ')}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { cut, count: 1 });
    else group.count += 1;
  }
  return [...groups.values()]
    .sort((one, other) => inOrder(one.cut, other.cut))
    .map(({ cut, count }) => ({
      stockIn: cut.stock.length * TAPE_STEP_IN,
      count,
      cuts: cut.takes.flatMap((taken, index) =>
        taken === 0 ? [] : [{ lengthIn: ((sizes[index] ?? 0) - kerf) * TAPE_STEP_IN, count: taken }],
      ),
      leftIn: leftOf(cut, sizes) * TAPE_STEP_IN,
    }));
}

function inOrder(one: Cut, other: Cut): number {
  if (one.stock.length !== other.stock.length) return other.stock.length - one.stock.length;
  const index = one.takes.findIndex((taken, size) => taken !== other.takes[size]);
  return (other.takes[index] ?? 0) - (one.takes[index] ?? 0);
}

/** What sticks out behind the last saw cut; none where the last piece ends with the bar, or in it. */
function leftOf({ stock, takes }: Cut, sizes: readonly number[]): number {
  return Math.max(0, stock.length - takenBy(takes, sizes));
}
