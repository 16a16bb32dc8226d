import { COMMON_PRACTICE, constant, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { BarMaterial, BarSize, BarSupplier } from '../job.ts';
import { sumOfParts } from '../sum-figure.ts';
import { supplierPath } from './bar-figures.ts';
import { BAR_SOURCE, barTable, GLASS_FIBRE_KERF } from './bar-table.ts';
import { type CuttingPlan, cuttingPlan } from './cutting/index.ts';
import type { LaidBar } from './lay-bars.ts';

/** Where pieces of one length go: of which slab, and what they are there. */
export type PiecePlace = {
  readonly slab: string;
  readonly as: LaidBar['way'] | 'bent';
  readonly count: number;
};
export type CutPiece = {
  readonly lengthIn: number;
  readonly count: number;
  readonly places: readonly PiecePlace[];
};

/** One piece that is cut, before like ones are put together. */
export type WantedPiece = { readonly slab: string; readonly as: PiecePlace['as']; readonly lengthIn: number };

/** Bars of one material and size, for all slabs together. */
export type BarStock = {
  readonly material: BarMaterial;
  readonly size: BarSize;
  /** Longest first. */
  readonly pieces: readonly CutPiece[];
  readonly plan: CuttingPlan;
};

type Supplier = Pick<BarSupplier, 'stocksIn' | 'kerfIn'>;

export type StockFigures = {
  readonly pieces: Figure;
  /** Of all pieces, as cut [ft]. */
  readonly length: Figure;
  /** Stock bars to take. */
  readonly sticks: Figure;
  readonly 'bought-length': Figure;
  readonly 'bought-weight': Figure;
  /** Of the bought length. */
  readonly 'left-over': Figure;
  /** What first fit from the longest stock would buy [ft], to hold the plan against. */
  readonly 'first-fit-length': Figure;
};

export function barStock(
  kind: Pick<BarStock, 'material' | 'size'>,
  wanted: readonly WantedPiece[],
  supplier: Supplier,
): { readonly stock: BarStock; readonly figures: StockFigures } {
  const pieces = cutList(wanted);
  const kerf = kerfInput(kind.material, supplier.kerfIn);
  const plan = cuttingPlan({ pieces, stocksIn: supplier.stocksIn, kerfIn: num(kerf) });
  return { stock: { ...kind, pieces, plan }, figures: stockFigures(kind, pieces, plan, { supplier, kerf }) };
}

/** What cutting takes away: what the company says; else nothing of steel, which is sheared. */
function kerfInput(material: BarMaterial, ownIn: number | null): FigureInput {
  if (ownIn !== null) return given(`${supplierPath(material)}.kerf`, ownIn, 'in');
  if (material === 'steel') return constant('cut of a sheared bar', 0, 'in', COMMON_PRACTICE);
  return constant('saw cut of a glass fibre bar', GLASS_FIBRE_KERF.lengthIn, 'in', GLASS_FIBRE_KERF.source);
}

function stockFigures(
  { material, size }: Pick<BarStock, 'material' | 'size'>,
  pieces: readonly CutPiece[],
  plan: CuttingPlan,
  made: { readonly supplier: Supplier; readonly kerf: FigureInput },
): StockFigures {
  const { lbPerFt } = barTable[material][size];
  const barLbPerFt = constant(`weight of a foot of #${size} bar`, lbPerFt, 'lb', BAR_SOURCE[material]);
  const stocks = Object.fromEntries(
    made.supplier.stocksIn.map((stockIn, index) => [
      index === 0 ? 'stockIn' : `otherStock${index}In`,
      given(`${supplierPath(material)}.${index === 0 ? 'stock' : `other-stock.${index - 1}`}`, stockIn, 'in'),
    ]),
  );
  const count = figure({
    value: pieces.reduce((sum, piece) => sum + piece.count, 0),
    unit: 'each',
    decimals: 0,
    formula: { method: 'pieces of all slabs' },
    inputs: {},
  });
  const lengthFt = figure({
    value: pieces.reduce((sumIn, piece) => sumIn + piece.count * piece.lengthIn, 0) / 12,
    unit: 'ft',
    decimals: 1,
    formula: { method: 'length of all pieces as they are cut' },
    inputs: { pieceCount: count },
  });
  const shown = plan.isLeast
    ? 'shown to be the least'
    : 'the least that was found, not shown to be the least';
  const boughtFt = figure({
    value: plan.boughtIn / 12,
    unit: 'ft',
    decimals: 1,
    formula: { method: `stock that all pieces can be cut from, by branch and bound: ${shown}` },
    inputs: { lengthFt, kerfIn: made.kerf, ...stocks },
    rounding: 'up',
  });
  return {
    pieces: count,
    length: lengthFt,
    sticks: figure({
      value: plan.bars.reduce((sum, bars) => sum + bars.count, 0),
      unit: 'each',
      decimals: 0,
      formula: { method: 'stock bars of the cutting plan' },
      inputs: { boughtFt, ...stocks },
    }),
    'bought-length': boughtFt,
    'bought-weight': figure({
      value: num(boughtFt) * lbPerFt,
      unit: 'lb',
      decimals: 0,
      formula: 'boughtFt * barLbPerFt',
      inputs: { boughtFt, barLbPerFt },
      source: BAR_SOURCE[material],
    }),
    'left-over': figure({
      value: 1 - num(lengthFt) / num(boughtFt),
      unit: 'ratio',
      decimals: 3,
      formula: '1 - lengthFt / boughtFt',
      inputs: { lengthFt, boughtFt },
    }),
    'first-fit-length': figure({
      value: plan.firstFitIn / 12,
      unit: 'ft',
      decimals: 1,
      formula: { method: 'longest piece first, each from the first bar of the longest stock with room' },
      inputs: { lengthFt, kerfIn: made.kerf, ...stocks },
      source: 'D. S. Johnson, Near-optimal bin packing algorithms, MIT, 1973 (memory)',
    }),
  };
}

/** Like lengths together, longest first; within one, in the order of slabs. */
function cutList(wanted: readonly WantedPiece[]): readonly CutPiece[] {
  const byLength = new Map<number, Map<string, PiecePlace>>();
  for (const { slab, as, lengthIn } of wanted) {
    const places = byLength.get(lengthIn) ?? new Map<string, PiecePlace>();
    const key = `${slab} ${as}`;
    places.set(key, { slab, as, count: (places.get(key)?.count ?? 0) + 1 });
    byLength.set(lengthIn, places);
  }
  return [...byLength]
    .sort(([oneIn], [otherIn]) => otherIn - oneIn)
    .map(([lengthIn, places]) => {
      const all = [...places.values()];
      return { lengthIn, count: all.reduce((sum, { count }) => sum + count, 0), places: all };
    });
}

/** Of bars of one material over their sizes. */
export function stockSum(
  stocks: Readonly<
    Record<string, { readonly kind: Pick<BarStock, 'material'>; readonly figures: StockFigures }>
  >,
  material: BarMaterial,
  key: 'bought-weight' | 'bought-length' | 'sticks',
): Figure {
  const unit = { 'bought-weight': 'lb', 'bought-length': 'ft', sticks: 'each' } as const;
  const suffix = { 'bought-weight': 'Lb', 'bought-length': 'Ft', sticks: 'Count' } as const;
  const parts = Object.entries(stocks)
    .filter(([, stock]) => stock.kind.material === material)
    .map(([, stock], index) => ({ key: `size${index + 1}${suffix[key]}`, input: stock.figures[key] }));
  return sumOfParts({ parts, unit: unit[key], decimals: key === 'bought-length' ? 1 : 0 });
}
