import { num } from '../../calculate/figure.ts';
import type { Slab } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { loadedWords } from '../parts/loaded-words.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import { thickenedWords } from '../parts/thickened-words.ts';
import { type TableView, TICK_BOX } from '../views.ts';

/** One row a slab, then one a flight of steps. */
export function slabsTable({ job, results, show, words }: Made): TableView {
  const say = words.workOrder.slabs;
  const slabs = Object.values(job.build.slabs).map((slab) => ({
    ...row(
      slab.label,
      show.area(num(thingNamed(results.outline.figures.slabs, slab.id, 'slab').area)),
      show.size(slab.thicknessIn),
      show.size(slab.baseIn),
      digText(slab, { results, show, words }),
      say.towards(show.slope(slab.fall.slope), slab.fall.towards),
      words.common.finishes[slab.finish],
    ),
    note: slabNote(slab, { results, show, words }),
  }));
  const steps = Object.values(results.flights.data.steps).map((flight) => ({
    ...row(flight.label, '', '', '', '', '', ''),
    note: say.steps(
      flight.riserCount,
      show.fine(flight.riserIn),
      show.size(flight.treadIn),
      show.length(flight.landingIn),
      show.length(flight.widthIn),
    ),
  }));
  return {
    caption: say.caption,
    columns: [
      start(say.slab),
      end(say.area),
      end(say.thickness),
      end(say.base),
      end(say.dig),
      start(say.fall),
      start(say.finish),
    ],
    rows: [...slabs, ...steps],
  };
}

/** As the heights have it, where they do; else as it is stated. */
function digText(slab: Slab, { results, show, words }: Omit<Made, 'job'>): string {
  const say = words.workOrder.slabs;
  const deepest = results.grades.data.slabs[slab.id]?.figures['deepest-dig'];
  if (deepest === undefined) return show.size(slab.digIn);
  if (results.tearOut.figures.soil[slab.id] === undefined) return say.digNone;
  return say.digUpTo(show.size(num(deepest)));
}

/** What a row cannot say: thickened edges, a probed base, lifts. */
function slabNote(slab: Slab, made: Omit<Made, 'job'>): string | null {
  const { show, words } = made;
  const lifts = liftsNote(slab, made);
  const notes = [
    ...thickenedWords(slab, show, words),
    ...(slab.probedIn === null ? [] : [words.workOrder.slabs.probed(show.size(slab.probedIn))]),
    ...(lifts === null ? [] : [lifts]),
  ];
  return notes.length === 0 ? null : notes.join(' ');
}

/** The lifts of a base, where one is not enough: below the row, since a wide cell would shrink the page. */
function liftsNote(slab: Slab, { results, show, words }: Omit<Made, 'job'>): string | null {
  const figures = results.base.figures.slabs[slab.id];
  if (figures === undefined || num(figures.lifts) <= 1) return null;
  return words.workOrder.slabs.lifts(
    show.count(num(figures.lifts)),
    show.size(num(figures['lift-thickness'])),
  );
}

/** Load bays to chalk, in driving order, each with a box to tick when it has left. */
export function loadsTable({ job, results, show, words }: Made): TableView | null {
  const say = words.workOrder.loads;
  const { loads } = results.haul.data;
  const rows = loads.map((load, index) =>
    row(
      `${index + 1}`,
      loadedWords(load, job, say.soil),
      load.areaSqFt === null ? show.weight(load.weightLb) : show.area(load.areaSqFt),
      thingNamed(job.company.trailers, load.trailer, 'trailer').label,
      thingNamed(job.company.places, load.place, 'place').label,
      load.returns === 'base' ? say.base : say.empty,
      TICK_BOX,
    ),
  );
  return tableOrNull(
    loads.some(({ areaSqFt }) => areaSqFt !== null) ? say.caption : say.captionByWeight,
    [
      end(say.load),
      start(say.what),
      end(say.bay),
      start(say.trailer),
      start(say.place),
      start(say.back),
      start(say.loaded),
    ],
    rows,
  );
}
