import { num } from '../../calculate/figure.ts';
import { curvedSpacing, type LaidForm } from '../../calculate/forms/index.ts';
import type { Slab } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

/** One row a slab: its board, how much of it, and how the board stands to the slab. */
export function formsTable(made: Made): TableView {
  const { job, results, show, words } = made;
  const say = words.workOrder.forms;
  return {
    caption: say.caption,
    columns: [
      start(say.slab),
      start(say.board),
      end(say.length),
      end(say.boards),
      end(say.pieces),
      end(say.stakes),
      start(say.short),
    ],
    rows: Object.values(job.build.slabs).map((slab) => {
      const figures = thingNamed(results.forms.figures.slabs, slab.id, 'slab');
      const board = thingNamed(job.company.forms.boards, slab.board, 'form board');
      return {
        ...row(
          slab.label,
          `${board.id}, ${show.size(board.heightIn)}`,
          show.run(num(figures.length)),
          show.count(num(figures.boards)),
          show.count(num(figures.pieces)),
          show.count(num(figures.stakes)),
          standText(slab, made),
        ),
        note: formsNote(slab, made),
      };
    }),
  };
}

/** How the board stands: as the form height says, or else by what it lacks to the slab. */
function standText(slab: Slab, { results, show, words }: Made): string {
  const say = words.workOrder.forms;
  const figures = thingNamed(results.forms.figures.slabs, slab.id, 'slab');
  const { 'gap-under-board': gap, 'base-drop': drop } = figures;
  if (slab.formHeightIn === null || gap === undefined || drop === undefined) {
    const shortIn = num(figures['short-by']);
    if (shortIn === 0) return say.even;
    return say[slab.shortBoard === 'pack' ? 'pack' : 'dropBase'](show.size(shortIn));
  }
  return [
    say.top(show.size(slab.formHeightIn)),
    ...(num(gap) > 0 ? [say.gap(show.size(num(gap)))] : []),
    ...(num(drop) > 0 ? [say.drop(show.size(num(drop)))] : []),
  ].join(' ');
}

function formsNote(slab: Slab, { job, results, show, words }: Made): string | null {
  const say = words.workOrder.forms;
  const { kickers, 'end-stake-setback': setback } = thingNamed(results.forms.figures.slabs, slab.id, 'slab');
  const { kickerSpacingIn } = job.company.forms;
  const notes = [
    ...(kickers === undefined || kickerSpacingIn === null
      ? []
      : [say.kickers(show.count(num(kickers)), show.length(kickerSpacingIn))]),
    ...(setback === undefined ? [] : [say.setback(show.size(num(setback)))]),
  ];
  return notes.length === 0 ? null : notes.join(' ');
}

/** The cut list: every straight and curve with what it is formed of; null where nothing is formed. */
export function formPiecesTable(made: Made): TableView | null {
  const say = made.words.workOrder.formPieces;
  return tableOrNull(
    say.caption,
    [start(say.slab), start(say.form), end(say.length), start(say.stock), end(say.whole), start(say.last)],
    Object.values(made.job.build.slabs).flatMap((slab) => slabRows(slab, made)),
  );
}

function slabRows(slab: Slab, made: Made): TableView['rows'] {
  const { results, show, words } = made;
  const say = words.workOrder.formPieces;
  const laid = thingNamed(results.forms.data.laid, slab.id, 'slab');
  return laid.map((one, index) => {
    const { kind } = one.form;
    const number = laid.slice(0, index + 1).filter(({ form }) => form.kind === kind).length;
    return {
      ...row(
        slab.label,
        say[kind](number),
        show.length(one.form.lengthIn),
        stockId(slab, one),
        show.count(one.wholeCount),
        lastOne(slab, one, index, made),
      ),
      note: kind === 'curve' && number === 1 ? curveNote(slab, one, made) : null,
    };
  });
}

function stockId(slab: Slab, { stock }: LaidForm): string {
  return stock === 'strip' && slab.curveForm !== null ? slab.curveForm : slab.board;
}

function lastOne(slab: Slab, one: LaidForm, index: number, { job, results, show, words }: Made): string {
  const say = words.workOrder.formPieces;
  const id = stockId(slab, one);
  if (one.runsPast !== null) return say.past[one.runsPast.end](show.length(one.runsPast.byIn));
  const { pieces, boards } = thingNamed(results.forms.data.cuts[one.stock], id, 'cut plan');
  const piece = pieces.findIndex(({ slab: of, form }) => of === slab.id && form === index);
  const number = boards.findIndex((board) => board.pieces.includes(piece)) + 1;
  const last = one.pieceIn === null ? say.even : say.piece(show.cut(one.pieceIn), id, number);
  if (one.lapCount === 0) return last;
  return say.laps(last, one.lapCount, show.length(thingNamed(job.company.forms.strips, id, 'strip').lapIn));
}

function curveNote(slab: Slab, one: LaidForm, { job, show, words }: Made): string {
  const say = words.workOrder.formPieces;
  const { strips, stakeSpacingCurvedIn } = job.company.forms;
  const spacing = show.size(num(curvedSpacing(stakeSpacingCurvedIn, one.stock === 'strip')));
  if (one.stock === 'board') return say.sawn(spacing);
  const { id, thicknessIn, heightIn, bent } = thingNamed(strips, stockId(slab, one), 'form strip');
  const height = heightIn === null ? say.ripped : say.high(show.size(heightIn));
  return say.strip(id, show.size(thicknessIn), height, say.bent[bent], spacing);
}
