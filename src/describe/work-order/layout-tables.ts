import { num } from '../../calculate/figure.ts';
import type { CurveFigures, CurveOnPlan } from '../../calculate/layout/index.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { Show } from '../show/index.ts';
import { type TableView, TICK_BOX } from '../views.ts';

/** A curve a row, its radius point and its offsets below it; null where nothing is curved. */
export function curvesTable({ job, results, show, words }: Made): TableView | null {
  const say = words.workOrder.curves;
  const curvesOn = new Map(
    Object.values(results.layout.data.curves).flatMap((curves) =>
      curves.map((curve) => [curve.tag, curve] as const),
    ),
  );
  const rows = Object.values(job.build.slabs).flatMap((slab) =>
    Object.entries(thingNamed(results.layout.figures.slabs, slab.id, 'slab').curves ?? {}).map(
      ([tag, figures]) => ({
        ...row(
          words.common.drawing.curve(tag.slice(1) as PublicText),
          slab.label,
          figures.setback === undefined ? say.none : show.length(num(figures.setback)),
          show.length(num(figures.radius)),
          show.length(num(figures['arc-length'])),
          figures.chord === undefined ? say.none : show.length(num(figures.chord)),
          figures.rise === undefined ? say.none : show.size(num(figures.rise)),
        ),
        note: notesOf(figures, curvesOn.get(tag), show, words),
      }),
    ),
  );
  return tableOrNull(
    say.caption,
    [
      start(say.curve),
      start(say.slab),
      end(say.setback),
      end(say.radius),
      end(say.arc),
      end(say.chord),
      end(say.rise),
    ],
    rows,
  );
}

function notesOf(
  figures: CurveFigures,
  curve: CurveOnPlan | undefined,
  show: Show,
  words: Words,
): string | null {
  const say = words.workOrder.curves;
  const ties = Object.entries(figures.ties ?? {}).map(([corner, tie]) =>
    say.tie(corner.replace('corner-', ''), show.length(num(tie))),
  );
  const step = figures.step === undefined ? '' : show.size(num(figures.step));
  const [chord = '', legs = ''] = [curve?.fromChordIn, curve?.fromLegsIn].map((offsets) =>
    (offsets ?? []).map(show.size).join(', '),
  );
  const notes = [
    ...(ties.length === 0 ? [] : [say.radiusPoint(ties.join(say.and))]),
    ...(chord === '' ? [] : [say.fromChord(step, chord)]),
    ...(legs === '' ? [] : [say.fromLegs(step, legs)]),
  ];
  return notes.length === 0 ? null : notes.join(' ');
}

/** Distances to tape between corners before anything is nailed; null where no slab has enough corners. */
export function checksTable({ job, results, show, words }: Made): TableView | null {
  const say = words.workOrder.checks;
  const rows = Object.values(job.build.slabs).flatMap((slab) => {
    const { diagonals, square } = thingNamed(results.layout.figures.slabs, slab.id, 'slab');
    const at = results.layout.data.squares[slab.id] ?? null;
    const made = Object.entries(diagonals ?? {}).map(([key, length]) => {
      const [from = '', to = ''] = key.split('-to-');
      return row(slab.label, say.between(from, to), show.length(num(length)), TICK_BOX);
    });
    if (square === undefined || at === null) return made;
    const sides = [square.first, square.second, square.between].map((side) => show.length(num(side)));
    return [...made, row(slab.label, say.square(`${at.corner}`), sides.join(say.by), TICK_BOX)];
  });
  return tableOrNull(say.caption, [start(say.slab), start(say.what), end(say.tape), start(say.done)], rows);
}

/** How wide a walk is on the diagonal where it turns, for each way to round it; null where none turns. */
export function turnsTable({ job, results, show, words }: Made): TableView | null {
  const say = words.workOrder.turns;
  const rows = Object.values(job.build.slabs).flatMap((slab) =>
    Object.entries(thingNamed(results.outline.figures.slabs, slab.id, 'slab').turns ?? {}).map(([, turn]) => {
      const width = (key: string) => show.length(num(thingNamed(turn, key, 'width')));
      return {
        ...row(
          slab.label,
          width('sharp'),
          width('equal'),
          width('parallel'),
          width('outer'),
          width('chosen'),
        ),
        note: say.setbacks(width('inner-setback'), width('outer-setback')),
      };
    }),
  );
  return tableOrNull(
    say.caption,
    [start(say.slab), end(say.sharp), end(say.equal), end(say.parallel), end(say.outer), end(say.chosen)],
    rows,
  );
}
