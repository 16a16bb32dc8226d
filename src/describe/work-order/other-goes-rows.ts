import { num } from '../../calculate/figure.ts';
import type { Chip, OldSteps, Posts } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { row } from '../parts/tables.ts';
import type { TableView } from '../views.ts';
import { streamText, withSteel } from './goes-words.ts';

type Row = TableView['rows'][number];

/** Posts, steps, what is green and what is chipped off, of all that goes. */
export function otherRows(made: Made): readonly Row[] {
  const { posts, oldSteps, green, chip } = made.job.site;
  const { show, words } = made;
  return [
    ...Object.values(posts).map((one) => postsRow(one, made)),
    ...Object.values(oldSteps).map((one) => stepsRow(one, made)),
    ...Object.values(green).map(({ id, label, looseCuYd }) =>
      row(label, words.workOrder.goes.green, show.volume(looseCuYd), streamText(`green--${id}`, made)),
    ),
    ...Object.values(chip).map((one) => chipRow(one, made)),
  ];
}

function chipRow({ id, label, areaSqFt, thicknessIn }: Chip, { results, show, words }: Made): Row {
  const say = words.workOrder.goes.chip;
  const { weight } = thingNamed(results.tearOut.figures.chip, id, 'coating');
  return {
    ...row(label, say.of, say.size(show.area(areaSqFt), show.size(thicknessIn)), say.stream),
    note: say.note(show.weight(num(weight))),
  };
}

/** With the holes that are left, which are filled before the base. */
function postsRow({ id, label, count, footing }: Posts, made: Made): Row {
  const { results, show, words } = made;
  const say = words.workOrder.goes;
  const figures = thingNamed(results.tearOut.figures.posts, id, 'posts');
  return {
    ...row(
      label,
      say.materials.concrete,
      say.posts(show.count(count), show.size(footing.diameterIn), show.size(footing.depthIn)),
      streamText(`posts--${id}`, made),
    ),
    note: say.holes(show.volume(num(figures['hole-fill'])), show.count(num(figures.lifts))),
  };
}

function stepsRow({ id, label, material, steel, riserCount, riserIn, widthIn }: OldSteps, made: Made): Row {
  const { show, words } = made;
  const say = words.workOrder.goes;
  const name = say.materials[material];
  return row(
    label,
    material === 'concrete' ? withSteel(name, steel, words) : name,
    say.flight(show.count(riserCount), show.size(riserIn), show.length(widthIn)),
    streamText(`old-steps--${id}`, made),
  );
}
