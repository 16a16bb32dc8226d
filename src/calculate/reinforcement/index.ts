import type { CoreProblem } from '../../problems/index.ts';
import type { Figure } from '../figure.ts';
import type { Reinforcement, Slab } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { type BarCut, type BarFigures, type BarSupplier, barFigures, barProblem } from './bar-figures.ts';
import { barTable } from './bar-table.ts';
import { steelAreaSqInPerFt } from './mesh.ts';
import { type MeshFigures, type MeshSupplier, meshFigures, meshProblem } from './mesh-figures.ts';
import { meshTable } from './mesh-table.ts';

export type { BarCut, BarFigures } from './bar-figures.ts';
export { type BarRow, barTable } from './bar-table.ts';
export { barGrid, barLapIn, barPiecesIn } from './bars.ts';
export { chairCount, chairSpacingFt } from './chairs.ts';
export { meshSheetCount, meshWeightLb, sheetsAlong, steelAreaSqInPerFt } from './mesh.ts';
export type { MeshFigures } from './mesh-figures.ts';
export { type MeshRow, meshTable } from './mesh-table.ts';
export { cutFromSticks } from './sticks.ts';

type ReinforcedSlab = Pick<Slab, 'id' | 'reinforcement'>;
type SteelSuppliers = { readonly mesh: MeshSupplier; readonly bars: BarSupplier };

export type ReinforcementResult = TopicResult<
  {
    readonly slabs: Readonly<Record<string, MeshFigures | BarFigures>>;
    readonly total: {
      readonly sheets: Figure;
      readonly sticks: Figure;
      /** Of the whole sticks [lb]. */
      readonly 'bought-bars': Figure;
      readonly weight: Figure;
      readonly chairs: Figure;
    };
  },
  {
    /** What is cut for each slab with bars, longest first. */
    readonly cuts: Readonly<Record<string, readonly BarCut[]>>;
    /** Each way, in a foot of width. */
    readonly steelSqInPerFt: Readonly<Record<string, number>>;
  }
>;

/**
 * Mesh sheets or bars, their weight and their chairs, for every slab with steel in it.
 * A slab whose lap is longer than what it laps gives a problem and no figures.
 */
export function calcReinforcement(input: {
  readonly slabs: Readonly<Record<string, ReinforcedSlab>>;
  readonly shapes: Pick<OutlineResult['figures'], 'slabs'>;
  readonly outlines: OutlineResult['data']['slabs'];
  readonly suppliers: SteelSuppliers;
}): ReinforcementResult {
  const { slabs, shapes, outlines, suppliers } = input;
  const mesh: Record<string, MeshFigures> = {};
  const bars: Record<string, BarFigures> = {};
  const figures: Record<string, MeshFigures | BarFigures> = {};
  const cuts: Record<string, readonly BarCut[]> = {};
  const steelSqInPerFt: Record<string, number> = {};
  const problems = new Map<string, CoreProblem>();

  for (const { id, reinforcement: steel } of Object.values(slabs)) {
    if (steel.kind === 'none') continue;
    const problem = steel.kind === 'mesh' ? meshProblem(suppliers.mesh) : barProblem(steel, suppliers.bars);
    if (problem !== null) {
      problems.set(problem.code, problem);
      continue;
    }
    const outline = thingNamed(outlines, id, 'outline');
    const areaSqFt = thingNamed(shapes.slabs, id, 'shape').area;
    if (steel.kind === 'mesh') {
      figures[id] = mesh[id] = meshFigures(steel, { outline, areaSqFt, supplier: suppliers.mesh });
    } else {
      const made = barFigures(id, steel, { outline, areaSqFt, supplier: suppliers.bars });
      figures[id] = bars[id] = made.figures;
      cuts[id] = made.cuts;
    }
    steelSqInPerFt[id] = steelAreaSqInPerFt(oneBarOrWire(steel));
  }

  return {
    figures: {
      slabs: figures,
      total: {
        sheets: sumFigure({ parts: pick(mesh, 'sheets'), unitSuffix: 'Count', unit: 'each', decimals: 0 }),
        sticks: sumFigure({ parts: pick(bars, 'sticks'), unitSuffix: 'Count', unit: 'each', decimals: 0 }),
        'bought-bars': sumFigure({
          parts: pick(bars, 'bought-weight'),
          unitSuffix: 'Lb',
          unit: 'lb',
          decimals: 0,
        }),
        weight: sumFigure({ parts: pick(figures, 'weight'), unitSuffix: 'Lb', unit: 'lb', decimals: 0 }),
        chairs: sumFigure({ parts: pick(figures, 'chairs'), unitSuffix: 'Count', unit: 'each', decimals: 0 }),
      },
    },
    data: { cuts, steelSqInPerFt },
    problems: [...problems.values()],
  };
}

function oneBarOrWire(steel: Exclude<Reinforcement, { kind: 'none' }>): {
  areaSqIn: number;
  spacingIn: number;
} {
  if (steel.kind === 'bars') return { areaSqIn: barTable[steel.size].areaSqIn, spacingIn: steel.spacingIn };
  const { wireNumber, wireSpacingIn } = meshTable[steel.style];
  return { areaSqIn: wireNumber / 100, spacingIn: wireSpacingIn };
}
