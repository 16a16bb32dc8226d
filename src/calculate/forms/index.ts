import type { Outline } from '../../geometry/index.ts';
import { constant, type Figure, figure, num } from '../figure.ts';
import type { Company } from '../job.ts';
import { sumFigure, thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { leastRadius } from './curve-figures.ts';
import type { CutBoard } from './cut-stock.ts';
import { type LaidForm, layForms } from './lay.ts';
import { STAKES_PER_KICKER } from './practice.ts';
import { type FormedShape, type FormedSlab, type SlabForms, slabFigures } from './slab-figures.ts';
import type { FormSundries } from './stake-figures.ts';
import { type StockFigures, shortage, stockFigures, type Taken } from './stock-figures.ts';

export { leastBendFt } from './bend-table.ts';
export { formShortByIn, stakeCount } from './counts.ts';
export { type CutBoard, cutCount, cutFromStock, leastBoards } from './cut-stock.ts';
export { type LaidForm, layForms } from './lay.ts';
export { type Form, type FormedRun, formedRuns } from './runs.ts';
export type { SlabForms } from './slab-figures.ts';
export { curvedSpacing } from './stake-figures.ts';

/** The boards a kind of stock is cut from, each with its pieces by slab and place among its forms. */
export type CutPlan = {
  readonly pieces: readonly { readonly slab: string; readonly form: number; readonly lengthIn: number }[];
  readonly boards: readonly CutBoard[];
};

export type FormsResult = TopicResult<
  {
    readonly slabs: Readonly<Record<string, SlabForms>>;
    readonly boards: Readonly<Record<string, StockFigures>>;
    readonly strips: Readonly<Record<string, StockFigures & { readonly 'least-radius': Figure }>>;
    /** `at-forms` stands apart where kickers take some more. */
    readonly stakes: { readonly 'at-forms'?: Figure; readonly needed: Figure; readonly shortage: Figure };
    readonly total: FormSundries;
  },
  {
    /** The straights and curves of every slab, in the order of its rings. */
    readonly laid: Readonly<Record<string, readonly LaidForm[]>>;
    readonly cuts: { readonly board: Record<string, CutPlan>; readonly strip: Record<string, CutPlan> };
  }
>;

/**
 * Boards, strips and stakes for the formed edges of every slab, how they are cut, and what of them
 * the company lacks. Edges along the house, along concrete that stays and along a joint take no form.
 */
export function calcForms(input: {
  readonly slabs: Readonly<Record<string, FormedSlab>>;
  readonly shapes: { readonly slabs: Readonly<Record<string, FormedShape>> };
  readonly outlines: Readonly<Record<string, Outline>>;
  readonly forms: Company['forms'];
}): FormsResult {
  const { slabs, shapes, outlines, forms } = input;
  const stripUsed = [...new Set(Object.values(slabs).flatMap(({ curveForm }) => curveForm ?? []))];
  const radii = Object.fromEntries(
    stripUsed.map((id) => [id, leastRadius(thingNamed(forms.strips, id, 'form strip'))]),
  );
  const made = Object.values(slabs).map((slab): Formed => {
    const board = thingNamed(forms.boards, slab.board, 'form board');
    const strip = slab.curveForm === null ? null : thingNamed(forms.strips, slab.curveForm, 'form strip');
    const outline = thingNamed(outlines, slab.id, 'outline');
    const laid = layForms({ outline, board, strip, runPastIn: forms.runPastIn });
    const leastRadiusIn = slab.curveForm === null ? null : thingNamed(radii, slab.curveForm, 'form strip');
    const shape = thingNamed(shapes.slabs, slab.id, 'shape');
    return { slab, laid, figures: slabFigures({ slab, shape, laid, board, strip, leastRadiusIn, forms }) };
  });

  const figuresOf = Object.fromEntries(made.map(({ slab, figures }) => [slab.id, figures]));
  const { sawKerfIn } = forms;
  const boardUsed = [...new Set(Object.values(slabs).map(({ board }) => board))];
  const boards = Object.fromEntries(
    boardUsed.map((id) => {
      const stock = thingNamed(forms.boards, id, 'form board');
      const on = made.filter(({ slab }) => slab.board === id);
      return [id, stockOf({ kind: 'board', path: `company.forms.boards.${id}`, stock, sawKerfIn, on })];
    }),
  );
  const strips = Object.fromEntries(
    stripUsed.map((id) => {
      const stock = thingNamed(forms.strips, id, 'form strip');
      const on = made.filter(({ slab }) => slab.curveForm === id);
      return [id, stockOf({ kind: 'strip', path: `company.forms.strips.${id}`, stock, sawKerfIn, on })];
    }),
  );
  const total = sundriesTotal(figuresOf);
  return {
    figures: {
      slabs: figuresOf,
      boards: mapRecord(boards, ({ figures }) => figures),
      strips: Object.fromEntries(
        stripUsed.map((id) => [
          id,
          {
            'least-radius': thingNamed(radii, id, 'form strip'),
            ...thingNamed(strips, id, 'strip').figures,
          },
        ]),
      ),
      stakes: stakesOf(figuresOf, total.kickers, forms.stakesOnHandCount),
      total,
    },
    data: {
      laid: Object.fromEntries(made.map(({ slab, laid }) => [slab.id, laid])),
      cuts: { board: mapRecord(boards, ({ plan }) => plan), strip: mapRecord(strips, ({ plan }) => plan) },
    },
    problems: [],
  };
}

type Formed = {
  readonly slab: FormedSlab;
  readonly laid: readonly LaidForm[];
  readonly figures: SlabForms;
};

/** The figures and the cut plan of one kind of board or strip, over the slabs that name it. */
function stockOf(made: {
  readonly kind: LaidForm['stock'];
  readonly path: string;
  readonly stock: { readonly lengthIn: number; readonly onHandCount: number };
  readonly sawKerfIn: number | null;
  readonly on: readonly Formed[];
}): { readonly figures: StockFigures; readonly plan: CutPlan } {
  const { kind, path, stock, sawKerfIn, on } = made;
  const pieces = on.flatMap(({ slab, laid }) =>
    laid.flatMap((one, form) =>
      one.stock !== kind || one.pieceIn === null ? [] : [{ slab: slab.id, form, lengthIn: one.pieceIn }],
    ),
  );
  const { figures, boards } = stockFigures({
    path,
    lengthIn: stock.lengthIn,
    onHandCount: stock.onHandCount,
    sawKerfIn,
    taken: Object.fromEntries(
      on.flatMap((one): (readonly [string, Taken])[] => {
        const own = kind === 'board' ? boardsTaken(one.figures) : one.figures.strips;
        return own === undefined ? [] : [[one.slab.id, own]];
      }),
    ),
    piecesIn: pieces.map(({ lengthIn }) => lengthIn),
  });
  return { figures, plan: { pieces, boards } };
}

function boardsTaken(figures: SlabForms): Taken {
  return { whole: figures.boards, pieces: figures.pieces, 'cut-length': figures['cut-length'] };
}

function mapRecord<I, O>(record: Readonly<Record<string, I>>, map: (one: I) => O): Record<string, O> {
  return Object.fromEntries(Object.entries(record).map(([id, one]) => [id, map(one)]));
}

function sundriesTotal(slabs: Readonly<Record<string, SlabForms>>): FormSundries {
  const total = (key: keyof FormSundries) => {
    const parts = Object.fromEntries(
      Object.entries(slabs).flatMap(([id, figures]) => {
        const own = figures[key];
        return own === undefined ? [] : [[id, own]];
      }),
    );
    if (Object.keys(parts).length === 0) return {};
    const sum =
      key === 'release'
        ? sumFigure({ parts, unitSuffix: 'Gal', unit: 'gal', decimals: 3 })
        : sumFigure({ parts, unitSuffix: 'Count', unit: 'each', decimals: 0 });
    return { [key]: sum };
  };
  return { ...total('kickers'), ...total('screws'), ...total('release') };
}

/** The stakes of all slabs, and those that the kickers take. */
function stakesOf(
  slabs: Readonly<Record<string, SlabForms>>,
  kickers: Figure | undefined,
  onHandCount: number,
): FormsResult['figures']['stakes'] {
  const atFormsCount = sumFigure({
    parts: mapRecord(slabs, ({ stakes }) => stakes),
    unitSuffix: 'Count',
    unit: 'each',
    decimals: 0,
  });
  const { count, source } = STAKES_PER_KICKER;
  const needed =
    kickers === undefined
      ? atFormsCount
      : figure({
          value: num(atFormsCount) + count * num(kickers),
          unit: 'each',
          decimals: 0,
          formula: 'atFormsCount + eachCount * kickerCount',
          inputs: {
            atFormsCount,
            kickerCount: kickers,
            eachCount: constant('stakes of a kicker', count, 'each', source),
          },
          source,
        });
  return {
    ...(kickers === undefined ? {} : { 'at-forms': atFormsCount }),
    needed,
    shortage: shortage(needed, 'company.forms.stakes-on-hand', onHandCount),
  };
}
