import { boundsOf, type Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import { constant, type Figure, figure, given } from '../figure.ts';
import type { Reinforcement, Suppliers } from '../job.ts';
import { chairsFigure } from './chairs.ts';
import { meshSheetCount, meshWeightLb } from './mesh.ts';
import { meshTable } from './mesh-table.ts';

type Mesh = Extract<Reinforcement, { kind: 'mesh' }>;
export type MeshSupplier = Pick<Suppliers['mesh'], 'sheetLengthIn' | 'sheetWidthIn' | 'lapIn'>;

export type MeshFigures = { readonly sheets: Figure; readonly weight: Figure; readonly chairs: Figure };

export function meshFigures(
  steel: Mesh,
  made: { outline: Outline; areaSqFt: Figure; supplier: MeshSupplier },
): MeshFigures {
  const { outline, areaSqFt, supplier } = made;
  const { sheetLengthIn, sheetWidthIn, lapIn } = supplier;
  const row = meshTable[steel.style];
  const sheet = { lengthIn: sheetLengthIn, widthIn: sheetWidthIn };
  const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(outline);
  const sheetCount = meshSheetCount({
    box: { lengthIn: maxXIn - minXIn, widthIn: maxYIn - minYIn },
    sheet,
    lapIn,
  });
  const sheetSides = {
    sheetLengthIn: given('company.suppliers.mesh.sheet-length', sheetLengthIn, 'in'),
    sheetWidthIn: given('company.suppliers.mesh.sheet-width', sheetWidthIn, 'in'),
  };
  const sheets = figure({
    value: sheetCount,
    unit: 'each',
    decimals: 0,
    formula: {
      method:
        'each way ceil((side - lap) / (sheet - lap)) over the box around the outline, in the turning with fewer sheets',
    },
    inputs: { ...sheetSides, lapIn: given('company.suppliers.mesh.lap', lapIn, 'in'), areaSqFt },
    rounding: 'up',
  });
  return {
    sheets,
    weight: figure({
      value: meshWeightLb({ sheetCount, sheet, lbPer100SqFt: row.lbPer100SqFt }),
      unit: 'lb',
      decimals: 0,
      formula: 'sheetCount * sheetLengthIn * sheetWidthIn / 144 * meshLbPer100SqFt / 100',
      inputs: {
        sheetCount: sheets,
        ...sheetSides,
        meshLbPer100SqFt: constant(
          `weight of 100 sq ft of ${steel.style} mesh`,
          row.lbPer100SqFt,
          'lb',
          row.source,
        ),
      },
      source: row.source,
    }),
    chairs: chairsFigure(steel, areaSqFt),
  };
}

export function meshProblem({ sheetLengthIn, sheetWidthIn, lapIn }: MeshSupplier): CoreProblem | null {
  const sideIn = Math.min(sheetLengthIn, sheetWidthIn);
  if (lapIn < sideIn) return null;
  return {
    code: 'mesh-lap-too-long',
    path: 'company.suppliers.mesh.lap',
    parts: { lap: formatInches(lapIn, 16), sheet: formatInches(sideIn, 16) },
  };
}
