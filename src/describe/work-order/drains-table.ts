import { num } from '../../calculate/figure.ts';
import type { Drain } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

/** Each drain with its rim and its pipe; null where there is none. */
export function drainsTable(made: Made): TableView | null {
  const say = made.words.tieIns.drains;
  return tableOrNull(
    say.caption,
    [
      start(say.no),
      start(say.drain),
      start(say.where),
      end(say.rim),
      end(say.deep),
      start(say.pipe),
      start(say.slope),
    ],
    Object.values(made.job.tieIns.drains).map((drain, index) => drainRow(drain, index, made)),
  );
}

function drainRow(drain: Drain, index: number, { results, show, words }: Made): TableView['rows'][number] {
  const say = words.tieIns.drains;
  const figures = thingNamed(results.tieIns.figures.drains ?? {}, drain.id, 'drain');
  const places = [drain.at[0], ...drain.at.slice(1).slice(-1)].flatMap((at) =>
    at === undefined ? [] : [say.at(show.length(at.xIn), show.length(at.yIn))],
  );
  const head = [
    say.tag(show.count(index + 1)),
    drain.label,
    places.join(say.to),
    show.height(num(figures.rim)),
  ] as const;
  const { pipe } = figures;
  if (pipe === undefined || drain.pipe === null)
    return { ...row(...head, say.noPipe, say.noPipe, say.noPipe), note: say.noOutlet };
  const { sizeIn, lengthIn, to } = drain.pipe;
  return {
    ...row(
      ...head,
      show.size(num(pipe.deep)),
      say.pipeSize(show.size(sizeIn), show.length(lengthIn)),
      show.slope(num(pipe.slope)),
    ),
    note: say.leads(to, show.size(num(pipe.drop)), show.slope(num(pipe.least))),
  };
}
