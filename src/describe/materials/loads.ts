import { num } from '../../calculate/figure.ts';
import { COMMERCIAL_VEHICLE_LB } from '../../calculate/findings/index.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { orderedTons } from '../parts/ordered.ts';
import { plateHours } from '../parts/plate-hours.ts';
import { row, tableOrNull, totalRow } from '../parts/tables.ts';
import { showDate } from '../show/index.ts';
import { type TableView, WRITE_LINE } from '../views.ts';
import { type LoadRow, loadRows } from './load-rows.ts';
import { paceNotes } from './trips.ts';

type Column = {
  readonly heading: string;
  readonly align: 'start' | 'end';
  readonly cell: (load: LoadRow) => string;
  /** What stands in the row of totals. */
  readonly total: string;
};

/** Page one: every load in driving order, with room for the scale ticket. */
export function loadsTable(made: Made): TableView | null {
  const say = made.words.materials.loads;
  const loads = loadRows(made);
  const columns = loadColumns(made, loads);
  const trailers = trailersUsed(made.job, made.results);
  const [only] = trailers;
  return tableOrNull(
    trailers.length === 1 && only !== undefined
      ? say.captionOn(thingNamed(made.job.company.trailers, only, 'trailer').label)
      : say.caption,
    columns,
    loads.length === 0
      ? []
      : [
          ...loads.map((load) => row(...columns.map(({ cell }) => cell(load)))),
          totalRow(...columns.map(({ total }) => total)),
        ],
  );
}

/** Where all loads ride on one trailer the caption names it, and the row is a line. */
function loadColumns({ job, results, show, words }: Made, loads: readonly LoadRow[]): readonly Column[] {
  const say = words.materials.loads;
  const first = (heading: string, cell: Column['cell'], total = ''): Column => ({
    heading,
    align: 'start',
    cell,
    total,
  });
  const last = (heading: string, cell: Column['cell'], total = ''): Column => ({
    heading,
    align: 'end',
    cell,
    total,
  });
  const trailer = first(say.trailer, (load) => load.trailer);
  const totalLb = loads.reduce((sumLb, load) => sumLb + load.weightLb, 0);
  return [
    last(say.load, ({ number }) => `${number}`, say.total),
    first(say.what, ({ from }) => from),
    last(say.bay, ({ area }) => area),
    last(say.weight, ({ weight }) => weight, show.weight(totalLb)),
    last(say.fill, ({ fill }) => fill),
    ...(trailersUsed(job, results).length === 1 ? [] : [trailer]),
    first(say.place, ({ place }) => place),
    first(say.back, ({ back }) => back),
    first(say.ticket, () => WRITE_LINE),
  ];
}

export function loadNotes(made: Made): readonly string[] {
  const { job, results, show, words } = made;
  const say = words.materials.loadNotes;
  const { base, total } = results.haul.figures;
  if (results.haul.data.loads.length === 0) return [];
  const baseLoads = num(base.loads);
  return [
    say.trips(show.count(num(total.trips)), show.hours(num(total.hours)), show.distance(num(total.miles))),
    ...(job.plan.haulByOn === null ? [] : [say.by(showDate(job.plan.haulByOn, words.common))]),
    ...(num(base.deliveries) > 0
      ? [say.delivered(orderedTons(results.haul.data.deliveredLb, made), num(base.deliveries))]
      : []),
    ...(baseLoads > 0 ? [say.base(baseLoads, num(base.paired))] : []),
    ...paceNotes(made),
    ...assumedNotes(made),
    say.weigh,
    say.tarp,
  ];
}

/** What each trailer that hauls carries, and what truck and trailer are rated for together. */
export function fleetNotes(made: Made): readonly string[] {
  const { job, results, show, words } = made;
  const say = words.materials.loadNotes;
  return [
    ...trailersUsed(job, results).map((id) =>
      say.governs(
        thingNamed(job.company.trailers, id, 'trailer').label,
        show.weight(num(thingNamed(results.haul.figures.trailers, id, 'trailer').payload)),
        words.materials.governing[thingNamed(results.haul.data.governing, id, 'trailer')],
      ),
    ),
    ...commercialNotes(made),
  ];
}

/** How thick loads take for granted what nobody has seen the edge of. */
function assumedNotes({ job, results, show, words }: Made): readonly string[] {
  return Object.values(job.site.existing).flatMap(({ id, label, thicknessIs, thicknessIn }) => {
    if (thicknessIs === 'measured') return [];
    const figures = thingNamed(results.tearOut.figures.existing, id, 'existing thing');
    const thickest = show.size(num(figures['load-thickness']));
    return [words.materials.loadNotes.assumed(label, show.size(thicknessIn), thickest)];
  });
}

/** What truck and trailers are rated for together, where federal rules for carriers may start. */
function commercialNotes({ job, results, show, words }: Made): readonly string[] {
  const say = words.materials.loadNotes;
  const rated = Object.entries(results.checks.fleet).flatMap(([id, figures]) => {
    const ratingLb = num(figures['combination-rating']);
    if (ratingLb < COMMERCIAL_VEHICLE_LB) return [];
    const { label } = thingNamed(job.company.trailers, id, 'trailer');
    return [say.rated(job.company.towVehicle.label, label, show.weight(ratingLb))];
  });
  return rated.length === 0 ? [] : [...rated, say.commercial(show.weight(COMMERCIAL_VEHICLE_LB))];
}

function trailersUsed(job: Job, results: JobResults): readonly string[] {
  const used = new Set(results.haul.data.loads.map(({ trailer }) => trailer));
  return job.plan.trailers.filter((id) => used.has(id));
}

export function baseFacts(made: Made) {
  const { results, show, words } = made;
  const say = words.materials.base;
  const { total } = results.base.figures;
  if (num(total.compacted) <= 0) return null;
  const slabs = Object.values(results.base.figures.slabs);
  const most = (key: 'lifts' | 'lift-thickness' | 'passes') =>
    Math.max(...slabs.map((slab) => num(slab[key])));
  return {
    heading: say.heading,
    facts: [
      { label: say.compacted, value: show.volume(num(total.compacted)) },
      { label: say.loose, value: show.volume(num(total.loose)) },
      { label: say.tons, value: show.tons(num(total.tons) * 2000) },
      { label: say.order, value: orderedTons(num(total['order-tons']) * 2000, made) },
      {
        label: say.lifts,
        value: say.liftsValue(show.count(most('lifts')), show.size(most('lift-thickness'))),
      },
      {
        label: say.compactor,
        value: say.compactorValue(plateHours(results, show), show.count(most('passes'))),
      },
    ],
  };
}
