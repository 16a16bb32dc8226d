import { num } from '../../calculate/figure.ts';
import type { Existing, Hollow } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { Show } from '../show/index.ts';
import type { TableView } from '../views.ts';
import { streamText, withSteel } from './goes-words.ts';
import { otherRows } from './other-goes-rows.ts';

type Row = TableView['rows'][number];

/** Everything that goes: what it is made of, how thick it is or may be, what it is hauled as. */
export function goesTable(made: Made): TableView | null {
  const say = made.words.workOrder.goes;
  return tableOrNull(
    say.caption,
    [start(say.what), start(say.of), end(say.size), start(say.stream)],
    [
      ...Object.values(made.job.site.existing).map((thing) => flatRow(thing, made)),
      ...Object.values(made.job.site.hollow).flatMap((thing) => hollowRows(thing, made)),
      ...otherRows(made),
    ],
  );
}

function flatRow(thing: Existing, made: Made): Row {
  const { words } = made;
  const say = words.workOrder.goes;
  return {
    ...row(
      thing.label,
      withSteel(say.materials[thing.material], thing.steel, words),
      thicknessText(thing, made),
      streamText(thing.id, made),
    ),
    note: noteOf(thing, made),
  };
}

/** A row for each part of a hollow thing: they come apart. */
function hollowRows(thing: Hollow, made: Made): readonly Row[] {
  const { show, words } = made;
  const say = words.workOrder.goes;
  const { walls, footing, fill, material, steel } = thing;
  const part = (name: string, of: string, size: string, cargo: string) =>
    row(say.part(thing.label, name), of, size, streamText(`${thing.id}--${cargo}`, made));
  const ofConcrete = withSteel(say.materials.concrete, steel, words);
  const rows = [
    part(
      say.walls,
      material === 'concrete' ? ofConcrete : say.materials[material],
      say.wallsSize(show.size(walls.thicknessIn), show.length(walls.heightIn)),
      'walls',
    ),
  ];
  if (footing !== null) {
    const size = say.footingSize(show.size(footing.thicknessIn), show.size(footing.widthIn));
    rows.push(part(say.footing, ofConcrete, size, 'footing'));
  }
  if (fill !== null) {
    const of = fill.material === 'concrete' ? ofConcrete : say.fills[fill.material];
    rows.push(part(say.fill, of, show.size(fill.depthIn), 'fill'));
  }
  return rows;
}

function thicknessText({ id, thicknessIs, thicknessIn }: Existing, { results, show, words }: Made): string {
  const size = show.size(thicknessIn);
  if (thicknessIs === 'measured') return size;
  const thickest = num(thingNamed(results.tearOut.figures.existing, id, 'existing thing')['load-thickness']);
  return words.workOrder.goes.range(size, show.size(thickest));
}

/** What sticks to it. */
function noteOf({ coating, soilStuckIn }: Existing, { show, words }: Made): string | null {
  const say = words.workOrder.goes;
  const notes = [
    ...(coating === null ? [] : [coatingText(coating, show, words)]),
    ...(soilStuckIn === 0 ? [] : [say.soilStuck(show.size(soilStuckIn))]),
  ];
  return notes.length === 0 ? null : notes.join(' ');
}

function coatingText(coating: NonNullable<Existing['coating']>, show: Show, words: Words): string {
  const say = words.workOrder.goes;
  if (!('thicknessIn' in coating)) return say.coatings[coating.kind];
  return say.layer(say.layers[coating.kind], show.size(coating.thicknessIn));
}
