import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { CARRIED_BY } from '../../calculate/placing/index.ts';
import type { Made } from '../made.ts';
import { end, row, start } from '../parts/tables.ts';
import type { FactView, TableView } from '../views.ts';
import { moneyOf } from './concrete-cost.ts';

/** How concrete gets from the truck to each slab and flight; null where nobody said enough of it. */
export function placingTable(made: Made): TableView | null {
  const { results, show, words } = made;
  const say = words.materials.concrete.placing;
  const { placing } = results.concrete.figures;
  const { placedBy, supply } = results.concrete.data;
  if (placing === undefined || placedBy === null || supply !== 'truck') return null;
  return {
    caption: say.caption,
    columns: [start(say.thing), end(say.farthest), start(say.by), end(say.trips), end(say.hours)],
    rows: Object.entries(placing.things).map(([id, figures]) => {
      const means = placedBy[id] ?? null;
      const carried = num(figures.carried);
      return row(
        labelOf(id, made),
        num(figures.farthest) === 0 ? '' : show.run(num(figures.farthest)),
        carried === 0
          ? say.chute
          : say.carried(
              num(figures['chute-share']) === 0 ? null : show.percent(num(figures['chute-share'])),
              means === null ? say.nothing : say.means[means],
            ),
        figures.trips === undefined ? '' : show.count(num(figures.trips)),
        figures['labor-hours'] === undefined ? '' : show.hours(num(figures['labor-hours'])),
      );
    }),
  };
}

/** What the ways that were not taken would cost; null where nothing is carried, or there is only one way. */
export function otherWays({ results, words }: Made): FactView | null {
  const say = words.materials.concrete.placing;
  const { placing } = results.concrete.figures;
  if (placing === undefined || results.concrete.data.supply !== 'truck') return null;
  const texts = CARRIED_BY.flatMap((means) => {
    const cost = placing.instead[means];
    return cost === undefined ? [] : [say.alone(say.means[means], moneyOf(cost))];
  });
  return texts.length < 2 ? null : { label: say.others, value: texts.join('; ') };
}

function labelOf(id: string, { job, results }: Made): string {
  const flight = id.startsWith('steps--') ? id.slice('steps--'.length) : null;
  return flight === null
    ? thingNamed(job.build.slabs, id, 'slab').label
    : thingNamed(results.flights.data.steps, flight, 'steps').label;
}
