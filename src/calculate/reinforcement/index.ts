import type { Line } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { type Figure, num } from '../figure.ts';
import type { MeshStyle, Reinforcement, Slab } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import {
  type BarFigures,
  type BarLayout,
  type BarSupplier,
  barFigures,
  barLayout,
  stockProblem,
} from './bar-figures.ts';
import { coverIn, coverProblem } from './cover.ts';
import { layDiagonals } from './lay-bars.ts';
import { type MeshFigures, type MeshSupplier, meshFigures, meshProblem } from './mesh-figures.ts';
import { byStyle, type RollFigures, rollFigures } from './roll-figures.ts';
import { type BarStock, barStock, type StockFigures, stockSum, type WantedPiece } from './stock-figures.ts';

export type { BarFigures, BarLayout } from './bar-figures.ts';
export { barLapIn, barPieces, lapsOf } from './bar-laps.ts';
export { type BarRun, barRuns } from './bar-runs.ts';
export { type BarRow, barTable } from './bar-table.ts';
export { chairCount, chairSpacingFt } from './chairs.ts';
export { type CuttingPlan, cuttingPlan } from './cutting/index.ts';
export { diagonalsOf } from './diagonal-bars.ts';
export { type LaidBar, lapLines } from './lay-bars.ts';
export { meshSheetCount, meshStripsIn, meshWeightLb, sheetsAlong } from './mesh.ts';
export type { MeshFigures } from './mesh-figures.ts';
export { type MeshRow, meshTable, wireDiameterIn } from './mesh-table.ts';
export { dragAreaSqInPerFt, steelAreaSqInPerFt } from './section-figures.ts';
export type { BarStock, CutPiece, PiecePlace, StockFigures } from './stock-figures.ts';

type ReinforcedSlab = Pick<Slab, 'id' | 'thicknessIn' | 'reinforcement'>;
type SteelSuppliers = {
  readonly mesh: MeshSupplier;
  readonly bars: BarSupplier;
  readonly glassFibreBars: BarSupplier | null;
};
type Input = {
  readonly slabs: Readonly<Record<string, ReinforcedSlab>>;
  readonly shapes: Pick<OutlineResult['figures'], 'slabs'>;
  readonly outlines: OutlineResult['data']['slabs'];
  readonly joints: Readonly<Record<string, { readonly 'box-length': Figure; readonly 'box-width': Figure }>>;
  readonly jointLines: Readonly<Record<string, readonly Line[]>>;
  readonly suppliers: SteelSuppliers;
};

export type ReinforcementResult = TopicResult<
  {
    readonly slabs: Readonly<Record<string, MeshFigures | BarFigures>>;
    /** By material and size, as `steel-4`. */
    readonly stock: Readonly<Record<string, StockFigures>>;
    readonly rolls: { readonly [style in MeshStyle]?: RollFigures };
    readonly total: {
      readonly sheets: Figure;
      readonly rolls: Figure;
      /** Of the whole stock bars of steel [lb]. */
      readonly 'bought-bars': Figure;
      /** Of the whole stock bars of glass fibre [lb, ft]. */
      readonly 'bought-glass-fibre': Figure;
      readonly 'bought-glass-fibre-length': Figure;
      /** Of glass fibre, bent where they are made. */
      readonly 'ordered-bent': Figure;
      readonly weight: Figure;
      readonly chairs: Figure;
      readonly ties: Figure;
    };
  },
  {
    /** Every bar of each slab where it lies, those across inner corners of slabs with mesh among them. */
    readonly laid: Readonly<Record<string, BarLayout>>;
    /** What is cut out of which stock, by the key of the figures. */
    readonly stock: Readonly<Record<string, BarStock>>;
  }
>;

type Laid = {
  readonly figures: MeshFigures | BarFigures;
  readonly layout: BarLayout;
  readonly steel: Exclude<Reinforcement, { kind: 'none' }>;
};

/** Bars across inner corners of a slab with mesh in it. */
const MESH_DIAGONALS = { material: 'steel', size: 4 } as const;

/**
 * Mesh or bars of every slab with steel in it, where each bar lies, and which stock they are cut from. A
 * slab whose lap uses up what it laps, or whose cover leaves no room, gives a problem and no figures.
 */
export function calcReinforcement(input: Input): ReinforcementResult {
  const problems = new Map<string, CoreProblem>();
  const laid: Record<string, Laid> = {};
  for (const slab of Object.values(input.slabs)) {
    if (slab.reinforcement.kind === 'none') continue;
    const found = problemsOf(slab, slab.reinforcement, input.suppliers);
    for (const problem of found) problems.set(`${problem.code} ${problem.path}`, problem);
    if (found.length === 0) laid[slab.id] = laidIn(slab, slab.reinforcement, input);
  }

  const stock = stockOf(laid, input);
  const figures = Object.fromEntries(Object.entries(laid).map(([id, one]) => [id, one.figures]));
  const stocks = Object.fromEntries(
    Object.entries(stock).map(([key, one]) => [key, { kind: one.stock, figures: one.figures }]),
  );
  const rolls = rollsOf(laid, input.suppliers.mesh);
  return {
    figures: {
      slabs: figures,
      stock: Object.fromEntries(Object.entries(stock).map(([key, one]) => [key, one.figures])),
      rolls,
      total: {
        sheets: countOf(having(figures, 'sheets')),
        rolls: countOf(Object.fromEntries(Object.entries(rolls).map(([style, one]) => [style, one.rolls]))),
        'bought-bars': stockSum(stocks, 'steel', 'bought-weight'),
        'bought-glass-fibre': stockSum(stocks, 'glass-fibre', 'bought-weight'),
        'bought-glass-fibre-length': stockSum(stocks, 'glass-fibre', 'bought-length'),
        'ordered-bent': countOf(orderedBent(laid)),
        weight: sumFigure({ parts: pick(figures, 'weight'), unitSuffix: 'Lb', unit: 'lb', decimals: 0 }),
        chairs: countOf(pick(figures, 'chairs')),
        ties: countOf(having(figures, 'ties')),
      },
    },
    data: {
      laid: Object.fromEntries(Object.entries(laid).map(([id, one]) => [id, one.layout])),
      stock: Object.fromEntries(Object.entries(stock).map(([key, one]) => [key, one.stock])),
    },
    problems: [...problems.values()],
  };
}

function countOf(parts: Readonly<Record<string, Figure>>): Figure {
  return sumFigure({ parts, unitSuffix: 'Count', unit: 'each', decimals: 0 });
}

function having(
  slabs: Readonly<Record<string, MeshFigures | BarFigures>>,
  key: 'sheets' | 'ties',
): Record<string, Figure> {
  return Object.fromEntries(
    Object.entries(slabs).flatMap(([id, figures]) => {
      const one = (figures as Partial<Record<typeof key, Figure>>)[key];
      return one === undefined ? [] : [[id, one]];
    }),
  );
}

function orderedBent(laid: Readonly<Record<string, Laid>>): Record<string, Figure> {
  return Object.fromEntries(
    Object.entries(laid).flatMap(([id, { figures, steel }]) =>
      steel.kind === 'bars' && steel.material === 'glass-fibre' && 'bent-pieces' in figures
        ? [[id, figures['bent-pieces']]]
        : [],
    ),
  );
}

function problemsOf(
  { id, thicknessIn }: ReinforcedSlab,
  steel: Laid['steel'],
  suppliers: SteelSuppliers,
): readonly CoreProblem[] {
  const stock =
    steel.kind === 'mesh'
      ? meshProblem(steel, suppliers.mesh)
      : stockProblem(steel, supplierOf(steel, suppliers));
  return [stock, coverProblem(id, steel, thicknessIn)].filter((problem) => problem !== null);
}

/** @throws {RangeError} If nobody sells it, which the checks refuse. */
function supplierOf(steel: Extract<Laid['steel'], { kind: 'bars' }>, suppliers: SteelSuppliers): BarSupplier {
  const supplier = steel.material === 'steel' ? suppliers.bars : suppliers.glassFibreBars;
  if (supplier === null) throw new RangeError('bars of glass fibre, and nobody sells them');
  return supplier;
}

function laidIn(slab: ReinforcedSlab, steel: Laid['steel'], input: Input): Laid {
  const { id, thicknessIn } = slab;
  const joints = thingNamed(input.joints, id, 'slab');
  const place = {
    id,
    thicknessIn,
    outline: thingNamed(input.outlines, id, 'outline'),
    joints: thingNamed(input.jointLines, id, 'slab'),
    areaSqFt: thingNamed(input.shapes.slabs, id, 'shape').area,
    boxLengthIn: joints['box-length'],
    boxWidthIn: joints['box-width'],
  };
  if (steel.kind === 'mesh') {
    const stockIn = Math.max(...input.suppliers.bars.stocksIn);
    const bars = layDiagonals({ ...place, coverIn: coverIn(steel), stockIn });
    const figures = meshFigures(steel, { ...place, diagonalCount: bars.length }, input.suppliers.mesh);
    return { steel, figures, layout: { bars, corners: [] } };
  }
  const supplier = supplierOf(steel, input.suppliers);
  const layout = barLayout(steel, place, supplier);
  return { steel, figures: barFigures(steel, place, supplier, layout), layout };
}

function stockOf(laid: Readonly<Record<string, Laid>>, input: Input) {
  const wanted = new Map<
    string,
    { readonly kind: Pick<BarStock, 'material' | 'size'>; pieces: WantedPiece[] }
  >();
  for (const [slab, { steel, layout }] of Object.entries(laid)) {
    const { material, size } = steel.kind === 'bars' ? steel : MESH_DIAGONALS;
    const pieces = piecesOf(slab, steel, layout);
    if (pieces.length === 0) continue;
    const known = wanted.get(`${material}-${size}`);
    if (known === undefined) wanted.set(`${material}-${size}`, { kind: { material, size }, pieces });
    else known.pieces = [...known.pieces, ...pieces];
  }
  return Object.fromEntries(
    [...wanted]
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([key, { kind, pieces }]) => {
        const supplier = kind.material === 'steel' ? input.suppliers.bars : input.suppliers.glassFibreBars;
        if (supplier === null) throw new RangeError(`nobody sells ${key}`);
        return [key, barStock(kind, pieces, supplier)];
      }),
  );
}

/** Bent pieces of steel are cut straight, both legs in one; those of glass fibre come bent. */
function piecesOf(slab: string, steel: Laid['steel'], { bars, corners }: BarLayout): WantedPiece[] {
  const isBentHere = steel.kind === 'bars' && steel.material === 'steel';
  return [
    ...bars.flatMap(({ way, pieces }) => pieces.map(({ lengthIn }) => ({ slab, as: way, lengthIn }))),
    ...(isBentHere ? corners.map(({ legIn }) => ({ slab, as: 'bent' as const, lengthIn: 2 * legIn })) : []),
  ];
}

function rollsOf(
  laid: Readonly<Record<string, Laid>>,
  supplier: MeshSupplier,
): ReinforcementResult['figures']['rolls'] {
  const rolled = Object.entries(laid).flatMap(([id, { steel, figures }]) => {
    const rolledOut = 'rolled-out' in figures ? figures['rolled-out'] : undefined;
    return steel.kind === 'mesh' && rolledOut !== undefined && num(rolledOut) > 0
      ? [[id, { style: steel.style, rolledOut }] as const]
      : [];
  });
  return Object.fromEntries(
    [...byStyle(Object.fromEntries(rolled))].map(([style, lengths]) => [
      style,
      rollFigures(lengths, supplier),
    ]),
  );
}
