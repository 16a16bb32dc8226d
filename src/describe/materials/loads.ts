import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { DumpPlace, Job, Stream } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { formatMoney, sumUsd } from '../../units/index.ts';
import type { Words } from '../../words/index.ts';
import { plateHours } from '../parts/plate-hours.ts';
import { end, row, start, tableOrNull, totalRow } from '../parts/tables.ts';
import { type Show, showFigure } from '../show/index.ts';
import { type TableView, WRITE_LINE } from '../views.ts';
import { type LoadRow, loadRows } from './load-rows.ts';

type Made = { readonly job: Job; readonly results: JobResults; readonly show: Show; readonly words: Words };

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
  const feesUsd = sumUsd(loads.map(({ feeUsd }) => feeUsd));
  return [
    last(say.load, ({ number }) => `${number}`, say.total),
    first(say.what, ({ from }) => from),
    last(say.bay, ({ area }) => area),
    last(say.weight, ({ weight }) => weight, show.weight(totalLb)),
    last(say.fill, ({ fill }) => fill),
    ...(trailersUsed(job, results).length === 1 ? [] : [trailer]),
    first(say.place, ({ place }) => place),
    last(say.fee, ({ fee }) => fee, formatMoney(feesUsd)),
    first(say.back, ({ back }) => back),
    first(say.ticket, () => WRITE_LINE),
  ];
}

export function loadNotes({ job, results, show, words }: Made): readonly string[] {
  const say = words.materials.loadNotes;
  const { base, total } = results.haul.figures;
  if (results.haul.data.loads.length === 0) return [];
  const baseLoads = num(base.loads);
  return [
    say.trips(show.count(num(total.trips)), show.hours(num(total.hours)), show.distance(num(total.miles))),
    ...(num(base.delivered) === 1 ? [say.delivered] : []),
    ...(baseLoads > 0 ? [say.base(baseLoads, num(base.paired))] : []),
    ...placesUsed(job, results).map(({ label, address }) => say.place(label, address)),
    say.weigh,
    ...trailersUsed(job, results).map((id) =>
      say.governs(
        thingNamed(job.company.trailers, id, 'trailer').label,
        show.weight(num(thingNamed(results.haul.figures.trailers, id, 'trailer').payload)),
        words.materials.governing[thingNamed(results.haul.data.governing, id, 'trailer')],
      ),
    ),
    say.tarp,
  ];
}

/** Where loads go to or base comes from. */
function placesUsed(job: Job, results: JobResults): readonly DumpPlace[] {
  const { loads, baseFrom } = results.haul.data;
  const used = new Set([...loads.map(({ place }) => place), ...(baseFrom === null ? [] : [baseFrom.place])]);
  return [...used].map((id) => thingNamed(job.company.places, id, 'place'));
}

function trailersUsed(job: Job, results: JobResults): readonly string[] {
  const used = new Set(results.haul.data.loads.map(({ trailer }) => trailer));
  return job.plan.trailers.filter((id) => used.has(id));
}

export function streamsTable({ results, show, words }: Made): TableView | null {
  const say = words.materials.streams;
  const { streams } = results.haul.figures;
  const rows = Object.entries(streams).map(([stream, figures]) => {
    const torn = results.tearOut.figures.streams[stream as Stream];
    const perLoad = Object.values(figures['sq-ft-per-load']).map((one) => show.area(num(one)));
    return row(
      words.materials.streamNames[stream as Stream],
      torn === undefined ? '' : show.weight(num(torn.weight)),
      torn === undefined ? '' : show.volume(num(torn['loose-volume'])),
      show.count(num(figures.loads)),
      perLoad.join(', '),
      showFigure(figures.fee),
    );
  });
  const { total } = results.haul.figures;
  const totals = totalRow(
    say.total,
    show.weight(num(results.tearOut.figures.total.weight)),
    '',
    show.count(Object.values(streams).reduce((sum, { loads }) => sum + num(loads), 0)),
    '',
    showFigure(total.fees),
  );
  return tableOrNull(
    say.caption,
    [start(say.stream), end(say.weight), end(say.loose), end(say.loads), end(say.perLoad), end(say.fees)],
    rows.length === 0 ? [] : [...rows, totals],
  );
}

export function fleetTable({ job, results, show, words }: Made): TableView | null {
  const say = words.materials.fleet;
  const rows = job.plan.trailers.map((id) => {
    const figures = thingNamed(results.haul.figures.trailers, id, 'trailer');
    return row(
      thingNamed(job.company.trailers, id, 'trailer').label,
      show.weight(num(figures.payload)),
      words.materials.governing[thingNamed(results.haul.data.governing, id, 'trailer')],
      show.volume(num(figures['box-volume'])),
    );
  });
  return tableOrNull(
    say.caption(job.company.towVehicle.label),
    [start(say.trailer), end(say.payload), start(say.decides), end(say.box)],
    rows,
  );
}

export function baseFacts({ results, show, words }: Made) {
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
      { label: say.order, value: show.tons(num(total['order-tons']) * 2000) },
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
