import { num } from '../../calculate/figure.ts';
import type { WallPart } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

/** How far parts of walls stay above what is beside them; null where the job names none. */
export function wallsTable(made: Made): TableView | null {
  const say = made.words.walls;
  return tableOrNull(
    say.caption,
    [start(say.part), start(say.beside), end(say.height), end(say.surface), end(say.clear), end(say.least)],
    Object.values(made.job.walls).map((part) => partRow(part, made)),
  );
}

function partRow({ id, label, beside, heightIn }: WallPart, { job, results, show, words }: Made) {
  const say = words.walls;
  const { surface, clearance, buried, least } = thingNamed(results.clearances.figures, id, 'part of a wall');
  const buriedIn = num(buried);
  return row(
    label,
    beside.kind === 'earth' ? say.earth : thingNamed(job.build.slabs, beside.id, 'slab').label,
    show.height(heightIn),
    show.height(num(surface)),
    buriedIn > 0 ? say.buried(show.fineUp(buriedIn)) : show.fineDown(num(clearance)),
    least === undefined ? say.open : show.fine(num(least)),
  );
}
