import { num } from '../../calculate/figure.ts';
import type { Existing } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

/** What follows the name of a thing, a list of cells for each thickness. */
type Bays = readonly (readonly string[])[];

/**
 * What to chalk for one load once the first edge is open and the true thickness is seen. Things of
 * which all rows are alike share them.
 */
export function reChalkTable(made: Made): TableView | null {
  const say = made.words.workOrder.reChalk;
  const groups = new Map<string, { readonly labels: string[]; readonly bays: Bays }>();
  for (const id of Object.keys(made.results.haul.data.reChalk)) {
    const bays = baysOf(id, made);
    const key = JSON.stringify(bays);
    const group = groups.get(key) ?? { labels: [], bays };
    group.labels.push(thingNamed(made.job.site.existing, id, 'existing thing').label);
    groups.set(key, group);
  }
  return tableOrNull(
    say.caption,
    [start(say.what), start(say.trailer), end(say.thickness), end(say.bay), end(say.loads)],
    [...groups.values()].flatMap(({ labels, bays }) => bays.map((cells) => row(labels.join(', '), ...cells))),
  );
}

function baysOf(id: string, { job, results, show, words }: Made): Bays {
  const { figures, data } = results.haul;
  const sizeOf = thicknessWords(thingNamed(job.site.existing, id, 'existing thing'), {
    loadIn: num(thingNamed(results.tearOut.figures.existing, id, 'existing thing')['load-thickness']),
    show,
    words,
  });
  const byTrailer = thingNamed(figures['re-chalk'], id, 'existing thing');
  return thingNamed(data.reChalk, id, 'existing thing').flatMap(({ trailer, rows }) => {
    const byThickness = thingNamed(byTrailer, trailer, 'trailer');
    return rows.map(({ name, thicknessIn, isPlanned }) => {
      const bay = thingNamed(byThickness, name, 'thickness');
      return [
        thingNamed(job.company.trailers, trailer, 'trailer').label,
        sizeOf(thicknessIn, isPlanned),
        show.area(num(bay['area-per-load'])),
        show.count(num(bay.loads)),
      ];
    });
  });
}

/** Two thicknesses that differ by less are one [in]. */
const NOISE_IN = 1e-9;

/** A thickness in its row: the one that was assumed and the one that loads are planned for say so. */
function thicknessWords(
  { thicknessIs, thicknessIn: statedIn }: Existing,
  made: { readonly loadIn: number } & Pick<Made, 'show' | 'words'>,
): (thicknessIn: number, isPlanned: boolean) => string {
  const { loadIn, show, words } = made;
  const say = words.workOrder.reChalk;
  const isAt = (oneIn: number, otherIn: number) => Math.abs(oneIn - otherIn) <= NOISE_IN;
  return (thicknessIn, isPlanned) => {
    const size = show.size(thicknessIn);
    if (thicknessIs === 'measured') return isPlanned ? say.planned(size) : size;
    if (isAt(thicknessIn, loadIn)) return say.loadsFor(size);
    return isAt(thicknessIn, statedIn) ? say.assumed(size) : size;
  };
}
