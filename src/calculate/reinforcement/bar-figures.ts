import type { Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import { COMMON_PRACTICE, constant, type Figure, figure, given, num } from '../figure.ts';
import type { Reinforcement, Suppliers } from '../job.ts';
import { BAR_SOURCE, barTable } from './bar-table.ts';
import { barGrid, barLapIn, barPiecesIn } from './bars.ts';
import { chairsFigure } from './chairs.ts';
import { cutFromSticks } from './sticks.ts';

type Bars = Extract<Reinforcement, { kind: 'bars' }>;
export type BarSupplier = Pick<Suppliers['bars'], 'stockIn' | 'lapDiameters'>;

export type BarFigures = {
  readonly 'bars-along': Figure;
  readonly 'bars-across': Figure;
  readonly length: Figure;
  readonly sticks: Figure;
  /** As laid, laps included. */
  readonly weight: Figure;
  /** Of the whole sticks, as they are paid for. */
  readonly 'bought-weight': Figure;
  readonly chairs: Figure;
};

/** So many bars of one length out of the stock. */
export type BarCut = { readonly lengthIn: number; readonly count: number };

/** From the edge of the slab to the outer bars and to the bar ends. */
const sideCover = {
  lengthIn: 2,
  source: `${COMMON_PRACTICE}; ACI 318-19 Table 20.5.1.3.1 has 1 1/2 in for #5 and smaller (seen)`,
};

export function barFigures(
  id: string,
  steel: Bars,
  made: { outline: Outline; areaSqFt: Figure; supplier: BarSupplier },
): { figures: BarFigures; cuts: BarCut[] } {
  const { outline, areaSqFt, supplier } = made;
  const { stockIn, lapDiameters } = supplier;
  const { diameterIn, lbPerFt } = barTable[steel.size];
  const grid = barGrid({ outline, spacingIn: steel.spacingIn, coverIn: sideCover.lengthIn });
  const lapIn = barLapIn({ lapDiameters, diameterIn });
  const piecesIn = [...grid.alongIn, ...grid.acrossIn].flatMap((runIn) =>
    barPiecesIn({ runIn, stockIn, lapIn }),
  );

  const setOut = {
    spacingIn: given(`build.slabs.${id}.reinforcement`, steel.spacingIn, 'in'),
    coverIn: constant('side cover of bars', sideCover.lengthIn, 'in', sideCover.source),
    areaSqFt,
  };
  const runs = (value: number, way: string) =>
    figure({
      value,
      unit: 'each',
      decimals: 0,
      formula: {
        method: `runs ${way} the box, even at most the spacing apart, cut to the outline less the cover`,
      },
      inputs: setOut,
      source: sideCover.source,
      rounding: 'up',
    });
  const alongCount = runs(grid.alongIn.length, 'along');
  const acrossCount = runs(grid.acrossIn.length, 'across');
  const stock = given('company.suppliers.bars.stock', stockIn, 'in');
  const lengthFt = figure({
    value: piecesIn.reduce((sumIn, pieceIn) => sumIn + pieceIn, 0) / 12,
    unit: 'ft',
    decimals: 1,
    formula: { method: 'length of the runs, and a lap where a run is longer than the stock' },
    inputs: {
      alongCount,
      acrossCount,
      stockIn: stock,
      lapDiameters: given('company.suppliers.bars.lap', lapDiameters, 'ratio'),
      diameterIn: constant(`diameter of a #${steel.size} bar`, diameterIn, 'in', BAR_SOURCE),
    },
  });

  const barLbPerFt = constant(`weight of a foot of #${steel.size} bar`, lbPerFt, 'lb', BAR_SOURCE);
  const sticks = figure({
    value: cutFromSticks(piecesIn, stockIn).length,
    unit: 'each',
    decimals: 0,
    formula: { method: 'cut from stock, the longest piece first, each from the first stick with room' },
    inputs: { lengthFt, stockIn: stock },
    rounding: 'up',
  });

  return {
    figures: {
      'bars-along': alongCount,
      'bars-across': acrossCount,
      length: lengthFt,
      sticks,
      weight: figure({
        value: num(lengthFt) * lbPerFt,
        unit: 'lb',
        decimals: 0,
        formula: 'lengthFt * barLbPerFt',
        inputs: { lengthFt, barLbPerFt },
        source: BAR_SOURCE,
      }),
      'bought-weight': figure({
        value: ((num(sticks) * stockIn) / 12) * lbPerFt,
        unit: 'lb',
        decimals: 0,
        formula: 'stickCount * stockIn / 12 * barLbPerFt',
        inputs: { stickCount: sticks, stockIn: stock, barLbPerFt },
        source: BAR_SOURCE,
      }),
      chairs: chairsFigure(steel, areaSqFt),
    },
    cuts: cutList(piecesIn),
  };
}

/** Like lengths together; two runs that differ by less than a tape shows are one length. */
function cutList(piecesIn: readonly number[]): BarCut[] {
  const countOf = new Map<number, number>();
  for (const pieceIn of piecesIn) {
    const tapedIn = Math.round(pieceIn * 16) / 16;
    countOf.set(tapedIn, (countOf.get(tapedIn) ?? 0) + 1);
  }
  return [...countOf]
    .map(([lengthIn, count]) => ({ lengthIn, count }))
    .sort((one, other) => other.lengthIn - one.lengthIn);
}

export function barProblem(steel: Bars, { stockIn, lapDiameters }: BarSupplier): CoreProblem | null {
  const lapIn = barLapIn({ lapDiameters, diameterIn: barTable[steel.size].diameterIn });
  if (lapIn < stockIn) return null;
  return {
    code: 'bar-lap-too-long',
    path: 'company.suppliers.bars.lap',
    parts: { lap: formatInches(lapIn, 16), stock: formatInches(stockIn, 16) },
  };
}
