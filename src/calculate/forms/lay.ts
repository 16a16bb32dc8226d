import type { Outline } from '../../geometry/index.ts';
import { ceilCount } from '../../units/index.ts';
import type { Board, Strip } from '../job.ts';
import { downToTapeIn, upToTapeIn } from './cut-stock.ts';
import { type RunsPast, roomPastIn, runsPast } from './run-past.ts';
import { type Form, formedRuns } from './runs.ts';

/** How one straight or curve is formed, to the sixteenth. */
export type LaidForm = {
  readonly form: Form;
  readonly stock: 'board' | 'strip';
  /** Boards or strips that stay whole. */
  readonly wholeCount: number;
  /** The piece cut for the rest [in]; null where the last board runs past a corner or nothing is left. */
  readonly pieceIn: number | null;
  readonly runsPast: { readonly end: RunsPast; readonly byIn: number } | null;
  /** Laps of strips: those with each other, and those onto the forms at the ends. */
  readonly lapCount: number;
  readonly endLapCount: number;
  /** From stake at an end or at a meeting of boards to the next such one [in]; they add up to the form. */
  readonly sectionsIn: readonly { readonly lengthIn: number; readonly count: number }[];
  /** A closed curve ends at the stake it starts at. */
  readonly isClosed: boolean;
};

/**
 * Lays boards and strips along all forms of a slab.
 *
 * Whole boards stand end to end; the rest of a straight is closed by one more, uncut, where that one
 * may run past an outside corner, and by a piece that is cut where it may not. A curve takes strips
 * where the slab names one, else boards sawn to bend, which end with the curve. Nothing is added for
 * the thickness of a board: at a corner one butts against the face of the other.
 */
export function layForms(made: {
  readonly outline: Outline;
  readonly board: Pick<Board, 'lengthIn'>;
  readonly strip: Pick<Strip, 'lengthIn' | 'lapIn'> | null;
  readonly runPastIn: number | null;
}): readonly LaidForm[] {
  const { outline, board, strip, runPastIn } = made;
  const boardIn = downToTapeIn(board.lengthIn);
  if (!(boardIn > 0)) throw new RangeError(`a board must be 1/16 in or longer, got ${board.lengthIn}`);
  return formedRuns(outline).flatMap((run) => {
    const wants = run.forms.map((form) => {
      const { restIn } = wholeAndRest(form.lengthIn, boardIn);
      const fits = (end: RunsPast) =>
        restIn > 0 && roomPastIn(form, end, outline, runPastIn) >= boardIn - restIn;
      return { before: fits('before'), after: fits('after') };
    });
    const ends = runsPast(run, wants);
    return run.forms.map((form, index) => {
      const isClosed = run.isClosed && run.forms.length === 1;
      if (form.kind === 'curve' && strip !== null) return stripped(form, strip, isClosed);
      return boarded(form, boardIn, ends[index] ?? null, isClosed);
    });
  });
}

function wholeAndRest(lengthIn: number, boardIn: number) {
  const wantedIn = upToTapeIn(lengthIn);
  const wholeCount = Math.floor(wantedIn / boardIn);
  return { wholeCount, restIn: wantedIn - wholeCount * boardIn };
}

function boarded(form: Form, boardIn: number, end: RunsPast | null, isClosed: boolean): LaidForm {
  const { wholeCount, restIn } = wholeAndRest(form.lengthIn, boardIn);
  return {
    form,
    stock: 'board',
    wholeCount: wholeCount + (end === null ? 0 : 1),
    pieceIn: end === null && restIn > 0 ? restIn : null,
    runsPast: end === null ? null : { end, byIn: boardIn - restIn },
    lapCount: 0,
    endLapCount: 0,
    sectionsIn: [
      { lengthIn: boardIn, count: wholeCount },
      { lengthIn: restIn, count: restIn > 0 ? 1 : 0 },
    ].filter(({ count }) => count > 0),
    isClosed,
  };
}

/**
 * Strips end to end, each lapping the next, and lapping onto the forms at the ends of the curve:
 * n = ceil((T - lap) / (stock - lap)), with T the curve and its laps at the ends. A circle laps
 * itself once more.
 *
 * @throws {RangeError} If a strip is not longer than its lap.
 */
function stripped(form: Form, strip: Pick<Strip, 'lengthIn' | 'lapIn'>, isClosed: boolean): LaidForm {
  const { lapIn } = strip;
  const stockIn = downToTapeIn(strip.lengthIn);
  if (!(stockIn > lapIn)) throw new RangeError(`a strip of ${stockIn} in is no longer than its lap`);
  const endLapCount = isClosed ? 1 : [form.before, form.after].filter((join) => join !== 'end').length;
  const wantedIn = stripLengthIn({ arcIn: form.lengthIn, endLapCount, lapIn });
  const count = Math.max(1, ceilCount((wantedIn - lapIn) / (stockIn - lapIn)));
  const lastIn = upToTapeIn(wantedIn - (count - 1) * (stockIn - lapIn));
  const isLastWhole = lastIn >= stockIn;

  // A stake at each lap: the first where the second strip starts, then one a strip.
  const startLapIn = form.before === 'end' || isClosed ? 0 : lapIn;
  const firstIn = Math.min(form.lengthIn, Math.max(0, stockIn - lapIn - startLapIn));
  const middleCount = Math.min(
    Math.max(0, count - 2),
    Math.floor((form.lengthIn - firstIn) / (stockIn - lapIn)),
  );
  const restIn = form.lengthIn - firstIn - middleCount * (stockIn - lapIn);
  const sections =
    count === 1
      ? [{ lengthIn: form.lengthIn, count: 1 }]
      : [
          { lengthIn: firstIn, count: 1 },
          { lengthIn: stockIn - lapIn, count: middleCount },
          { lengthIn: restIn, count: 1 },
        ];
  return {
    form,
    stock: 'strip',
    wholeCount: count - (isLastWhole ? 0 : 1),
    pieceIn: isLastWhole ? null : lastIn,
    runsPast: null,
    lapCount: count - 1 + endLapCount,
    endLapCount,
    sectionsIn: sections.filter((section) => section.count > 0 && section.lengthIn > 1e-6),
    isClosed,
  };
}

/** A curve with its laps onto the forms at its ends [in], up to 1/16: arc + laps lap. */
export function stripLengthIn(made: { arcIn: number; endLapCount: number; lapIn: number }): number {
  return upToTapeIn(made.arcIn + made.endLapCount * made.lapIn);
}
