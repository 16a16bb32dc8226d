import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import { showFigure } from '../show/index.ts';
import type { TableView } from '../views.ts';

/** Why the trips are as they are: what other plans would take and cost; nothing where there is no other. */
export function whyTable({ job, results, show, words }: Made): TableView | null {
  const say = words.materials.why;
  const { why } = results;
  if (why === null) return null;
  const { plan, only, 'second-best': second, 'no-reserve': noReserve } = why;
  const others = [
    ...(second === undefined
      ? []
      : [
          {
            what: showFigure(second.cost) === showFigure(plan.cost) ? say.asCheap : say.second,
            other: second,
          },
        ]),
    ...Object.entries(only).map(([id, other]) => ({
      what: say.alone(thingNamed(job.company.trailers, id, 'trailer').label),
      other,
    })),
    ...(noReserve === undefined
      ? []
      : [{ what: say.noReserve(show.weight(job.company.loadReserveLb)), other: noReserve }]),
  ];
  const rows = [{ what: say.plan, other: plan }, ...others].map(({ what, other }) =>
    row(what, show.count(num(other.trips)), showFigure(other.cost)),
  );
  return tableOrNull(
    say.caption,
    [start(say.what), end(say.trips), end(say.cost)],
    others.length === 0 ? [] : rows,
  );
}
