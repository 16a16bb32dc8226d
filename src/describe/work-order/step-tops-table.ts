import { num } from '../../calculate/figure.ts';
import type { StepsFigures } from '../../calculate/flights/index.ts';
import type { Steps } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

type Row = TableView['rows'][number];

/** A tread a row, then the landing; against the datum too where the job has heights. Null without steps. */
export function stepTopsTable(made: Made): TableView | null {
  const say = made.words.flights.tops;
  const { job, results } = made;
  return tableOrNull(
    say.caption,
    [
      start(say.flight),
      start(say.part),
      end(say.front),
      end(say.back),
      ...(job.heights === null ? [] : [end(say.height)]),
    ],
    Object.values(job.build.steps).flatMap((steps) =>
      topRows(steps, thingNamed(results.flights.figures.steps, steps.id, 'steps'), made),
    ),
  );
}

function topRows(steps: Steps, figures: StepsFigures, { job, results, show, words }: Made): readonly Row[] {
  const say = words.flights.tops;
  const { rise } = steps;
  const footIn = rise.kind === 'heights' ? (results.levels.data.heightOf[rise.from] ?? null) : null;
  const against = (aboveIn: number) => (footIn === null ? say.none : show.height(footIn + aboveIn));
  const rows = Object.entries(figures.tops).map(([key, { front, back }]) =>
    row(
      steps.label,
      partName(key, words),
      show.fine(num(front)),
      back === undefined ? say.none : show.fine(num(back)),
      ...(job.heights === null ? [] : [against(num(front))]),
    ),
  );
  const [count, form] = [show.count(num(figures.risers)), show.fine(num(figures['form-riser']))];
  const treadRiseIn = num(figures['tread-rise']);
  const note = treadRiseIn > 0 ? say.form(count, form, show.fine(treadRiseIn)) : say.level(count, form);
  const last = rows.length - 1;
  return rows.map((one, index) => (index === last ? { ...one, note } : one));
}

function partName(key: string, words: Words): string {
  const say = words.flights.tops;
  if (key === 'landing' || key === 'top') return say[key];
  return say.tread(key.replace('tread-', ''));
}
