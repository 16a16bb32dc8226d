import { COMPANY_FIGURE, constant, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import { sumFigure } from '../parts.ts';
import { type CutBoard, cutCount, cutFromStock, downToTapeIn, leastBoards, upToTapeIn } from './cut-stock.ts';
import { SAW_KERF } from './practice.ts';

/** One kind of board or strip over all slabs: what stays whole, what is cut, and what has to be bought. */
export type StockFigures = {
  readonly whole: Figure;
  readonly pieces: Figure;
  readonly 'cut-length': Figure;
  /** No plan cuts the pieces from fewer. */
  readonly 'cut-least': Figure;
  readonly 'cut-from': Figure;
  readonly cuts: Figure;
  readonly needed: Figure;
  readonly shortage: Figure;
};

/** What one slab takes of a kind of board or strip. */
export type Taken = { readonly whole: Figure; readonly pieces: Figure; readonly 'cut-length': Figure };

const PLAN = 'the longest piece first, each into the first board with room for it and a saw cut';
const BIN_PACKING = 'D. S. Johnson, Near-optimal bin packing algorithms, MIT, 1973 (memory)';

/**
 * @param made.path     Job path of the stock, `company.forms.boards.2x4`.
 * @param made.taken    What each slab takes of it, by the slab's id.
 * @param made.piecesIn Every piece of every slab, in the order of the slabs.
 */
export function stockFigures(made: {
  readonly path: string;
  readonly lengthIn: number;
  readonly onHandCount: number;
  readonly sawKerfIn: number | null;
  readonly taken: Readonly<Record<string, Taken>>;
  readonly piecesIn: readonly number[];
}): { readonly figures: StockFigures; readonly boards: readonly CutBoard[] } {
  const { path, lengthIn, onHandCount, sawKerfIn, taken, piecesIn } = made;
  const kerfIn = kerfInput(sawKerfIn);
  const stockIn = given(`${path}.length`, lengthIn, 'in');
  const boards = cutFromStock({
    piecesIn,
    stockIn: downToTapeIn(lengthIn),
    kerfIn: upToTapeIn(num(kerfIn)),
  });

  const sum = (key: keyof Taken, unit: 'each' | 'in') =>
    sumFigure({
      parts: Object.fromEntries(Object.entries(taken).map(([id, one]) => [id, one[key]])),
      unitSuffix: unit === 'each' ? 'Count' : 'In',
      unit,
      decimals: unit === 'each' ? 0 : 4,
    });
  const wholeCount = sum('whole', 'each');
  const pieceCount = sum('pieces', 'each');
  const piecesLengthIn = sum('cut-length', 'in');
  const leastCount = figure({
    value: leastBoards({
      sumIn: num(piecesLengthIn),
      count: num(pieceCount),
      stockIn: lengthIn,
      kerfIn: num(kerfIn),
    }),
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep((piecesIn + pieceCount * kerfIn) / (stockIn + kerfIn), 1)',
    inputs: { piecesIn: piecesLengthIn, pieceCount, kerfIn, stockIn },
    rounding: 'up',
  });
  const cutFromCount = figure({
    value: boards.length,
    unit: 'each',
    decimals: 0,
    formula: { method: boards.length === num(leastCount) ? `${PLAN}; the least there can be` : PLAN },
    inputs: { pieceCount, piecesIn: piecesLengthIn, kerfIn, stockIn, leastCount },
    source: BIN_PACKING,
  });
  const needed = figure({
    value: num(wholeCount) + boards.length,
    unit: 'each',
    decimals: 0,
    formula: 'wholeCount + cutFromCount',
    inputs: { wholeCount, cutFromCount },
  });
  return {
    figures: {
      whole: wholeCount,
      pieces: pieceCount,
      'cut-length': piecesLengthIn,
      'cut-least': leastCount,
      'cut-from': cutFromCount,
      cuts: figure({
        value: cutCount(boards),
        unit: 'each',
        decimals: 0,
        formula: { method: 'one behind each piece, none where the board ends with its last piece' },
        inputs: { pieceCount, cutFromCount },
      }),
      needed,
      shortage: shortage(needed, `${path}.on-hand`, onHandCount),
    },
    boards,
  };
}

/** max(0, needed - on hand) */
export function shortage(needed: Figure, onHandPath: string, onHandCount: number): Figure {
  return figure({
    value: Math.max(0, num(needed) - onHandCount),
    unit: 'each',
    decimals: 0,
    formula: 'max(0, neededCount - onHandCount)',
    inputs: { neededCount: needed, onHandCount: given(onHandPath, onHandCount, 'each') },
    source: COMPANY_FIGURE,
  });
}

function kerfInput(sawKerfIn: number | null): FigureInput {
  return sawKerfIn === null
    ? constant('width of a saw cut', SAW_KERF.widthIn, 'in', SAW_KERF.source)
    : given('company.forms.saw-kerf', sawKerfIn, 'in');
}
