import type { Line, Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import { constant, DEFINITION, type Figure, figure, given, num } from '../figure.ts';
import type { Reinforcement, BarSupplier as Supplier } from '../job.ts';
import { barLapIn, lapsOf } from './bar-laps.ts';
import { BAR_SOURCE, barTable } from './bar-table.ts';
import { chairsFigure } from './chairs.ts';
import { type CornerPiece, cornerPieces } from './corner-pieces.ts';
import { chairHeightFigure, coverFigure, coverIn, coverInput } from './cover.ts';
import { DIAGONALS_METHOD, DIAGONALS_SOURCE } from './diagonal-bars.ts';
import { type LaidBar, layBars } from './lay-bars.ts';
import { type SectionFigures, sectionFigures, spacingInput } from './section-figures.ts';
import { tiesFigure } from './ties.ts';

export type Bars = Extract<Reinforcement, { kind: 'bars' }>;
export type BarSupplier = Pick<Supplier, 'stocksIn' | 'lapDiameters' | 'kerfIn'>;

export type BarFigures = {
  readonly 'bars-along': Figure;
  readonly 'bars-across': Figure;
  /** Across inner corners that no joint starts at. */
  readonly diagonals: Figure;
  /** Pieces bent round outer corners. */
  readonly 'bent-pieces': Figure;
  readonly laps: Figure;
  /** Laps that a joint line runs through, because there was no other place. */
  readonly 'laps-on-joints': Figure;
  /** Straight bars, laps and bars across corners included; bent pieces are not. */
  readonly length: Figure;
  readonly weight: Figure;
  readonly chairs: Figure;
  readonly 'chair-height': Figure;
  readonly cover: Figure;
  readonly ties: Figure;
  readonly along: SectionFigures;
  readonly across: SectionFigures;
};

export type BarLayout = { readonly bars: readonly LaidBar[]; readonly corners: readonly CornerPiece[] };

type Place = {
  readonly id: string;
  readonly thicknessIn: number;
  readonly outline: Outline;
  readonly joints: readonly Line[];
  readonly areaSqFt: Figure;
  readonly boxLengthIn: Figure;
  readonly boxWidthIn: Figure;
};

/** Where the company's supplier of a material stands. */
export function supplierPath(material: Bars['material']): string {
  return `company.suppliers.${material === 'steel' ? 'bars' : 'glass-fibre-bars'}`;
}

export function lapInOf(steel: Bars, { lapDiameters }: Pick<BarSupplier, 'lapDiameters'>): number {
  return barLapIn({ lapDiameters, diameterIn: barTable[steel.material][steel.size].diameterIn });
}

export function barLayout(steel: Bars, place: Place, supplier: BarSupplier): BarLayout {
  const lapIn = lapInOf(steel, supplier);
  const bars = layBars({
    outline: place.outline,
    joints: place.joints,
    spacingIn: { along: steel.spacingIn, across: steel.spacingAcrossIn ?? steel.spacingIn },
    coverIn: coverIn(steel),
    stockIn: Math.max(...supplier.stocksIn),
    lapIn,
  });
  const corners =
    steel.corners === 'bent'
      ? cornerPieces({ outline: place.outline, coverIn: coverIn(steel), legIn: lapIn })
      : [];
  return { bars, corners };
}

export function barFigures(steel: Bars, place: Place, supplier: BarSupplier, layout: BarLayout): BarFigures {
  const { id, areaSqFt, thicknessIn } = place;
  const { bars, corners } = layout;
  const { diameterIn, lbPerFt } = barTable[steel.material][steel.size];
  const source = BAR_SOURCE[steel.material];
  const setOut = {
    spacingIn: spacingInput(id, steel, 'along'),
    spacingAcrossIn: spacingInput(id, steel, 'across'),
    coverIn: coverInput(id, steel),
    areaSqFt,
  };
  const counted = (value: number, method: string, from: string = DEFINITION) =>
    figure({ value, unit: 'each', decimals: 0, formula: { method }, inputs: setOut, source: from });
  const of = (way: LaidBar['way']) => bars.filter((bar) => bar.way === way).length;
  const runs = (way: 'along' | 'across') =>
    counted(
      of(way),
      `runs ${way} the slab, even at most the spacing apart, cut to the outline less the cover`,
    );
  const supplied = {
    stockIn: given(`${supplierPath(steel.material)}.stock`, Math.max(...supplier.stocksIn), 'in'),
    lapDiameters: given(`${supplierPath(steel.material)}.lap`, supplier.lapDiameters, 'ratio'),
    diameterIn: constant(`diameter of a #${steel.size} bar`, diameterIn, 'in', source),
  };
  const counts = { alongCount: runs('along'), acrossCount: runs('across') };
  const laps = figure({
    value: bars.reduce((sum, { pieces }) => sum + lapsOf(pieces).length, 0),
    unit: 'each',
    decimals: 0,
    formula: { method: 'where a run is longer than the longest stock, from one end and the other in turn' },
    inputs: { ...counts, ...supplied },
  });
  const diagonals = counted(of('diagonal'), DIAGONALS_METHOD, DIAGONALS_SOURCE);
  const lengthFt = figure({
    value: bars.flatMap(({ pieces }) => pieces).reduce((sumIn, { lengthIn }) => sumIn + lengthIn, 0) / 12,
    unit: 'ft',
    decimals: 1,
    formula: { method: 'length of the runs to 1/4 in, of their laps, and of the bars across inner corners' },
    inputs: { ...counts, laps, diagonals, ...supplied },
  });
  const barLbPerFt = constant(`weight of a foot of #${steel.size} bar`, lbPerFt, 'lb', source);
  return {
    'bars-along': counts.alongCount,
    'bars-across': counts.acrossCount,
    diagonals,
    'bent-pieces': counted(corners.length, 'one at each outer corner, where it is asked for'),
    laps,
    'laps-on-joints': figure({
      value: bars.reduce((sum, bar) => sum + bar.lapsOnJoints, 0),
      unit: 'each',
      decimals: 0,
      formula: { method: 'laps that a joint line runs through, since stock leaves no other place for them' },
      inputs: { laps },
    }),
    length: lengthFt,
    weight: figure({
      value: num(lengthFt) * lbPerFt,
      unit: 'lb',
      decimals: 0,
      formula: 'lengthFt * barLbPerFt',
      inputs: { lengthFt, barLbPerFt },
      source,
    }),
    chairs: chairsFigure(steel, areaSqFt),
    'chair-height': chairHeightFigure(id, steel, thicknessIn),
    cover: coverFigure(id, steel),
    ties: tiesFigure(bars, { ...counts, laps, diagonals }),
    along: sectionFigures(steel, 'along', { id, thicknessIn, lengthIn: place.boxLengthIn }),
    across: sectionFigures(steel, 'across', { id, thicknessIn, lengthIn: place.boxWidthIn }),
  };
}

/** Where stock cannot serve: a lap uses it up, or a piece bent of it. */
export function stockProblem(steel: Bars, supplier: BarSupplier): CoreProblem | null {
  const lapIn = lapInOf(steel, supplier);
  const stockIn = Math.max(...supplier.stocksIn);
  const leastIn = steel.corners === 'bent' && steel.material === 'steel' ? 2 * lapIn : lapIn;
  if (leastIn < stockIn) return null;
  return {
    code: 'bar-lap-too-long',
    path: `${supplierPath(steel.material)}.lap`,
    parts: { lap: formatInches(leastIn, 16), stock: formatInches(stockIn, 16) },
  };
}
