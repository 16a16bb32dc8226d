import { boundsOf, type Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { Reinforcement, Suppliers } from '../job.ts';
import { chairsFigure } from './chairs.ts';
import { chairHeightFigure, coverFigure } from './cover.ts';
import { DIAGONALS_METHOD, DIAGONALS_SOURCE } from './diagonal-bars.ts';
import { meshSheetCount, meshStripsIn, meshWeightLb } from './mesh.ts';
import { meshTable } from './mesh-table.ts';
import { type SectionFigures, sectionFigures } from './section-figures.ts';

export type Mesh = Extract<Reinforcement, { kind: 'mesh' }>;
export type MeshSupplier = Pick<Suppliers['mesh'], 'sheetLengthIn' | 'sheetWidthIn' | 'lapIn' | 'roll'>;

export type MeshFigures = {
  /** Sheets, or the length that is rolled out side by side [ft]: one of the two. */
  readonly sheets?: Figure;
  readonly 'rolled-out'?: Figure;
  /** Across inner corners that no joint starts at. */
  readonly diagonals: Figure;
  readonly weight: Figure;
  readonly chairs: Figure;
  readonly 'chair-height': Figure;
  readonly cover: Figure;
  readonly along: SectionFigures;
};

type Place = {
  readonly id: string;
  readonly thicknessIn: number;
  readonly outline: Outline;
  readonly areaSqFt: Figure;
  readonly boxLengthIn: Figure;
  readonly diagonalCount: number;
};

export function meshFigures(steel: Mesh, place: Place, supplier: MeshSupplier): MeshFigures {
  const { id, thicknessIn, areaSqFt, boxLengthIn } = place;
  const laid = steel.from === 'rolls' ? rolledOut(steel, place, supplier) : inSheets(steel, place, supplier);
  return {
    ...laid,
    diagonals: figure({
      value: place.diagonalCount,
      unit: 'each',
      decimals: 0,
      formula: { method: DIAGONALS_METHOD },
      inputs: { areaSqFt },
      source: DIAGONALS_SOURCE,
    }),
    chairs: chairsFigure(steel, areaSqFt),
    'chair-height': chairHeightFigure(id, steel, thicknessIn),
    cover: coverFigure(id, steel),
    along: sectionFigures(steel, 'along', { id, thicknessIn, lengthIn: boxLengthIn }),
  };
}

const at = (key: string) => `company.suppliers.mesh.${key}`;

function inSheets(steel: Mesh, { outline, areaSqFt }: Place, supplier: MeshSupplier) {
  const { sheetLengthIn, sheetWidthIn, lapIn } = supplier;
  const row = meshTable[steel.style];
  const sheet = { lengthIn: sheetLengthIn, widthIn: sheetWidthIn };
  const sheetCount = meshSheetCount({ box: boxOf(outline), sheet, lapIn });
  const sheetSides = {
    sheetLengthIn: given(at('sheet-length'), sheetLengthIn, 'in'),
    sheetWidthIn: given(at('sheet-width'), sheetWidthIn, 'in'),
  };
  const sheets = figure({
    value: sheetCount,
    unit: 'each',
    decimals: 0,
    formula: {
      method:
        'each way ceil((side - lap) / (sheet - lap)) over the box around the outline, in the turning with fewer sheets',
    },
    inputs: { ...sheetSides, lapIn: given(at('lap'), lapIn, 'in'), areaSqFt },
    rounding: 'up',
  });
  const weight = figure({
    value: meshWeightLb({ sheetCount, sheet, lbPer100SqFt: row.lbPer100SqFt }),
    unit: 'lb',
    decimals: 0,
    formula: 'sheetCount * sheetLengthIn * sheetWidthIn / 144 * meshLbPer100SqFt / 100',
    inputs: { sheetCount: sheets, ...sheetSides, meshLbPer100SqFt: meshLb(steel) },
    source: row.source,
  });
  return { sheets, weight };
}

/** @throws {RangeError} If the company names no rolls, which the checks refuse. */
function rolledOut(steel: Mesh, { outline, areaSqFt }: Place, { roll, lapIn }: MeshSupplier) {
  if (roll === null) throw new RangeError('mesh from rolls, and the company has none');
  const row = meshTable[steel.style];
  const rollWidthIn = given(at('roll-width'), roll.widthIn, 'in');
  const rolledOutFt = figure({
    value: meshStripsIn({ box: boxOf(outline), rollWidthIn: roll.widthIn, lapIn }) / 12,
    unit: 'ft',
    decimals: 1,
    formula: {
      method:
        'strips ceil((side - lap) / (width - lap)) over the box around the outline, each as long as the other side, in the turning with less',
    },
    inputs: { rollWidthIn, lapIn: given(at('lap'), lapIn, 'in'), areaSqFt },
  });
  const weight = figure({
    value: (((num(rolledOutFt) * roll.widthIn) / 12) * row.lbPer100SqFt) / 100,
    unit: 'lb',
    decimals: 0,
    formula: 'rolledOutFt * rollWidthIn / 12 * meshLbPer100SqFt / 100',
    inputs: { rolledOutFt, rollWidthIn, meshLbPer100SqFt: meshLb(steel) },
    source: row.source,
  });
  return { 'rolled-out': rolledOutFt, weight };
}

function meshLb(steel: Mesh) {
  const { lbPer100SqFt, source } = meshTable[steel.style];
  return constant(`weight of 100 sq ft of ${steel.style} mesh`, lbPer100SqFt, 'lb', source);
}

function boxOf(outline: Outline) {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(outline);
  return { lengthIn: maxXIn - minXIn, widthIn: maxYIn - minYIn };
}

/** A lap that uses up what it laps. */
export function meshProblem(steel: Mesh, supplier: MeshSupplier): CoreProblem | null {
  const { sheetLengthIn, sheetWidthIn, lapIn, roll } = supplier;
  const sides =
    steel.from === 'rolls' && roll !== null ? [roll.lengthIn, roll.widthIn] : [sheetLengthIn, sheetWidthIn];
  const sideIn = Math.min(...sides);
  if (lapIn < sideIn) return null;
  return {
    code: 'mesh-lap-too-long',
    path: at('lap'),
    parts: { lap: formatInches(lapIn, 16), sheet: formatInches(sideIn, 16) },
  };
}
