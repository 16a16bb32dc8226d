import { COMMON_PRACTICE, DEFINITION, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Board, Company, Slab, Strip } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import { formShortByIn } from './counts.ts';
import { type CurveFigures, curveFigures, setbackFigure } from './curve-figures.ts';
import type { LaidForm } from './lay.ts';
import { type FormSundries, type StakeFigures, stakeFigures, sundries } from './stake-figures.ts';
import type { Taken } from './stock-figures.ts';

export type SlabForms = FormSundries &
  StakeFigures & {
    readonly length: Figure;
    readonly 'short-by': Figure;
    /** Open between the bottom of the board and what it stands on; only where the job says how high the form stands. */
    readonly 'gap-under-board'?: Figure;
    /** How far the base inside lies below what the forms stand on; only with the one before. */
    readonly 'base-drop'?: Figure;
    /** Boards that stay whole. */
    readonly boards: Figure;
    readonly pieces: Figure;
    readonly 'cut-length': Figure;
    /** Curves for which the slab names no strip; not there where it has none such. */
    readonly 'curves-without-strip'?: Figure;
    readonly strips?: Taken;
    readonly 'strip-short-by'?: Figure;
    readonly 'end-stake-setback'?: Figure;
    readonly curves?: Readonly<Record<string, CurveFigures>>;
  };

export type FormedShape = Pick<ShapeFigures, 'formed-straight' | 'formed-curved'>;
export type FormedSlab = Pick<Slab, 'id' | 'thicknessIn' | 'formHeightIn' | 'board' | 'curveForm'>;

/** The figures of one slab whose forms are laid. */
export function slabFigures(made: {
  readonly slab: FormedSlab;
  readonly shape: FormedShape;
  readonly laid: readonly LaidForm[];
  readonly board: Board;
  readonly strip: Strip | null;
  readonly leastRadiusIn: Figure | null;
  readonly forms: Company['forms'];
}): SlabForms {
  const { slab, shape, laid, board, strip, leastRadiusIn, forms } = made;
  const straightFt = shape['formed-straight'];
  const curvedFt = shape['formed-curved'];
  const length = figure({
    value: num(straightFt) + num(curvedFt),
    unit: 'ft',
    decimals: 2,
    formula: 'straightFt + curvedFt',
    inputs: { straightFt, curvedFt },
  });
  const boards = takenFigures(laid, 'board', boardInputs(length, board, forms));
  const stakes = stakeFigures(laid, { straightFt, curvedFt, board, strip, forms });
  const isStripped = strip !== null && leastRadiusIn !== null;
  const bent = laid.filter(({ form, stock }) => form.kind === 'curve' && stock === 'board');
  return {
    length,
    'short-by': shortBy(slab, `company.forms.boards.${board.id}`, board.heightIn),
    ...standFigures(slab, board),
    boards: boards.whole,
    pieces: boards.pieces,
    'cut-length': boards['cut-length'],
    ...stakes,
    ...sundries({ length, stakes: stakes.stakes, board, forms }),
    ...(bent.length === 0 ? {} : { 'curves-without-strip': withoutStrip(bent.length, curvedFt) }),
    ...(isStripped ? stripFigures({ slab, strip, leastRadiusIn, laid, curvedFt }) : {}),
  };
}

function boardInputs(lengthFt: Figure, board: Board, forms: Company['forms']): Record<string, FigureInput> {
  return {
    lengthFt,
    boardLengthIn: given(`company.forms.boards.${board.id}.length`, board.lengthIn, 'in'),
    ...(forms.runPastIn === null
      ? {}
      : { runPastIn: given('company.forms.run-past', forms.runPastIn, 'in') }),
  };
}

function takenFigures(
  laid: readonly LaidForm[],
  stock: LaidForm['stock'],
  inputs: Readonly<Record<string, FigureInput>>,
): Taken {
  const own = laid.filter((one) => one.stock === stock);
  const piecesIn = own.flatMap(({ pieceIn }) => (pieceIn === null ? [] : [pieceIn]));
  const isBoard = stock === 'board';
  const one = (value: number, unit: 'each' | 'in', method: string): Figure =>
    figure({
      value,
      unit,
      decimals: unit === 'in' ? 4 : 0,
      formula: { method },
      inputs,
      source: COMMON_PRACTICE,
    });
  return {
    whole: one(
      own.reduce((sum, { wholeCount }) => sum + wholeCount, 0),
      'each',
      isBoard
        ? 'whole boards end to end along each form, and one more, uncut, where it may run past an outside corner'
        : 'whole strips end to end along each curve, each lapping the next',
    ),
    pieces: one(
      piecesIn.length,
      'each',
      isBoard ? 'the rest of a form where no board may run past its end' : 'the last strip of a curve',
    ),
    'cut-length': one(
      piecesIn.reduce((sumIn, pieceIn) => sumIn + pieceIn, 0),
      'in',
      'the pieces together, each up to the next 1/16 in',
    ),
  };
}

function shortBy(slab: FormedSlab, path: string, heightIn: number): Figure {
  return figure({
    value: formShortByIn({ thicknessIn: slab.thicknessIn, boardHeightIn: heightIn }),
    unit: 'in',
    decimals: 3,
    formula: 'max(0, thicknessIn - heightIn)',
    inputs: {
      thicknessIn: given(`build.slabs.${slab.id}.thickness`, slab.thicknessIn, 'in'),
      heightIn: given(`${path}.height`, heightIn, 'in'),
    },
    source: DEFINITION,
  });
}

/** Form height, true height of the board and level of the base inside it, one against the other. */
function standFigures(slab: FormedSlab, board: Board): Pick<SlabForms, 'gap-under-board' | 'base-drop'> {
  const { id, formHeightIn, thicknessIn } = slab;
  if (formHeightIn === null) return {};
  const formHeight = given(`build.slabs.${id}.form-height`, formHeightIn, 'in');
  const difference = (value: number, formula: string, other: Readonly<Record<string, FigureInput>>) =>
    figure({
      value: Math.max(0, value),
      unit: 'in',
      decimals: 3,
      formula,
      inputs: { formHeightIn: formHeight, ...other },
    });
  return {
    'gap-under-board': difference(formHeightIn - board.heightIn, 'max(0, formHeightIn - boardHeightIn)', {
      boardHeightIn: given(`company.forms.boards.${board.id}.height`, board.heightIn, 'in'),
    }),
    'base-drop': difference(thicknessIn - formHeightIn, 'max(0, thicknessIn - formHeightIn)', {
      thicknessIn: given(`build.slabs.${id}.thickness`, thicknessIn, 'in'),
    }),
  };
}

function withoutStrip(count: number, curvedFt: Figure): Figure {
  return figure({
    value: count,
    unit: 'each',
    decimals: 0,
    formula: { method: 'curves with no strip to form them: boards are sawn to bend' },
    inputs: { curvedFt },
  });
}

function stripFigures(made: {
  slab: FormedSlab;
  strip: Strip;
  leastRadiusIn: Figure;
  laid: readonly LaidForm[];
  curvedFt: Figure;
}): Pick<SlabForms, 'strips' | 'strip-short-by' | 'end-stake-setback' | 'curves'> {
  const { slab, strip, leastRadiusIn, laid, curvedFt } = made;
  const path = `company.forms.strips.${strip.id}`;
  const curves = laid.filter(({ stock }) => stock === 'strip');
  if (curves.length === 0) return {};
  const meetsStraight = laid.some(
    ({ form }) => form.kind === 'straight' && [form.before, form.after].includes('tangent'),
  );
  return {
    strips: takenFigures(laid, 'strip', {
      curvedFt,
      stripLengthIn: given(`${path}.length`, strip.lengthIn, 'in'),
      lapIn: given(`${path}.lap`, strip.lapIn, 'in'),
    }),
    ...(strip.heightIn === null ? {} : { 'strip-short-by': shortBy(slab, path, strip.heightIn) }),
    ...(meetsStraight ? { 'end-stake-setback': setbackFigure(strip) } : {}),
    curves: Object.fromEntries(
      curves.map((one, index) => [
        `curve-${index + 1}`,
        curveFigures({ laid: one, strip, leastRadiusIn, curvedFt }),
      ]),
    ),
  };
}
