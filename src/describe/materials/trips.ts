import type { Decimal } from 'decimal.js';
import { num } from '../../calculate/figure.ts';
import { loaderSets, type MachineLeg, type WorkingFigures } from '../../calculate/haul/index.ts';
import type { JobResults } from '../../calculate/index.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { formatMoney } from '../../units/index.ts';
import type { Made } from '../made.ts';
import { clockWords } from '../parts/clock-words.ts';
import { end, row, start, tableOrNull, totalRow } from '../parts/tables.ts';
import { showDate, showFigure } from '../show/index.ts';
import type { SpreadsheetView, TableView } from '../views.ts';
import { sheetOrNull } from './sheet.ts';

/** One trip, as the page shows it. */
type TripRow = {
  readonly day: string;
  readonly load: string;
  readonly trailer: string;
  readonly place: string;
  readonly starts: string;
  readonly leaves: string;
  readonly arrives: string;
  readonly back: string;
  /** Null where nothing is dumped. */
  readonly feeUsd: Decimal | null;
  readonly fee: string;
};

function tripRows(made: Made): readonly TripRow[] {
  return [
    ...legRows(made, 'to-job'),
    ...drivenRows(made),
    ...legRows(made, 'to-yard'),
    ...legRows(made, 'to-yard-last'),
  ];
}

/** Machines on a trailer. */
function legRows({ job, results, words }: Made, asked: MachineLeg['way']): readonly TripRow[] {
  const say = words.materials.trips;
  const clock = (timeHr: number) => clockWords(timeHr, job.unitSystem, words);
  return results.haul.data.legs
    .filter(({ way }) => way === asked)
    .map(({ machines, trailer, way, times }) => {
      const labels = machines.map((id) => thingNamed(job.company.machines, id, 'machine').label).join(', ');
      return {
        day: times === null ? say.whenDone : showDate(times.on, words.common),
        load: '',
        trailer: thingNamed(job.company.trailers, trailer, 'trailer').label,
        place: way === 'to-job' ? say.toJob(labels) : say.toYard(labels),
        starts: '',
        leaves: times === null ? '' : clock(times.leavesHr),
        arrives: times === null ? '' : clock(times.arrivesHr),
        back: '',
        feeUsd: null,
        fee: '',
      };
    });
}

function drivenRows({ job, results, show, words }: Made): readonly TripRow[] {
  const say = words.materials.trips;
  const clock = (timeHr: number) => clockWords(timeHr, job.unitSystem, words);
  const numberOf = (name: string) => results.haul.data.loads.findIndex((load) => load.name === name) + 1;
  return results.haul.data.trips.map(
    ({ on, load, trailer, place, startsHr, leavesHr, arrivesHr, backHr }) => ({
      day: showDate(on, words.common),
      load: load === null ? say.baseOnly : show.count(numberOf(load)),
      trailer: thingNamed(job.company.trailers, trailer, 'trailer').label,
      place: thingNamed(job.company.places, place, 'place').label,
      starts: startsHr === null ? say.filledBefore : clock(startsHr),
      leaves: clock(leavesHr),
      arrives: clock(arrivesHr),
      back: clock(backHr),
      ...feeOf(load, results),
    }),
  );
}

function feeOf(name: string | null, { haul }: JobResults): Pick<TripRow, 'feeUsd' | 'fee'> {
  const load = haul.data.loads.find((one) => one.name === name);
  return load === undefined
    ? { feeUsd: null, fee: '' }
    : { feeUsd: load.feeUsd, fee: formatMoney(load.feeUsd) };
}

/** Every trip of the truck with its times, day by day; the day stands where it changes. */
export function tripsTable(made: Made): TableView | null {
  const say = made.words.materials.trips;
  const trips = tripRows(made);
  const rows = trips.map((trip, index) =>
    row(
      trips[index - 1]?.day === trip.day ? '' : trip.day,
      trip.load,
      trip.trailer,
      trip.place,
      trip.starts,
      trip.leaves,
      trip.arrives,
      trip.back,
      trip.fee,
    ),
  );
  const totals = totalRow(
    say.total,
    '',
    '',
    '',
    '',
    '',
    '',
    '',
    showFigure(made.results.haul.figures.total.fees),
  );
  return tableOrNull(
    captionOf(made),
    [
      start(say.day),
      end(say.load),
      start(say.trailer),
      start(say.place),
      end(say.starts),
      end(say.leaves),
      end(say.arrives),
      end(say.back),
      end(say.fee),
    ],
    rows.length === 0 ? [] : [...rows, totals],
  );
}

function captionOf({ results, words }: Made): string {
  const say = words.materials.trips;
  const { working } = results.haul.figures;
  if (working === undefined) return say.caption;
  const trucks = num(working.trucks);
  return trucks > 1
    ? say.captionTrucks(trucks)
    : working.swapped === undefined
      ? say.caption
      : say.captionSwapped;
}

export function tripsSheet(made: Made): SpreadsheetView | null {
  const { trips: say, tripsSheet: asNumber, sheets } = made.words.materials;
  return sheetOrNull({
    name: sheets.trips,
    columns: [
      { heading: say.day, cell: ({ day }) => day },
      { heading: say.load, cell: ({ load }) => load },
      { heading: say.trailer, cell: ({ trailer }) => trailer },
      { heading: say.place, cell: ({ place }) => place },
      { heading: say.starts, cell: ({ starts }) => starts },
      { heading: say.leaves, cell: ({ leaves }) => leaves },
      { heading: say.arrives, cell: ({ arrives }) => arrives },
      { heading: say.back, cell: ({ back }) => back },
      { heading: asNumber.fee, cell: ({ feeUsd }) => feeUsd },
      { heading: say.fee, cell: ({ fee }) => fee },
    ],
    rows: tripRows(made),
  });
}

/** What sets the pace of the day: breaking out, the loader or the trucks; nothing where nothing is hauled. */
export function paceNotes(made: Made): readonly string[] {
  const { results, show, words } = made;
  const { working, total } = results.haul.figures;
  if (working === undefined) return [];
  const say = words.materials.loadNotes;
  const breakingHr = brokenOutHr(results);
  const haulingHr = num(total.hours) / num(working.trucks);
  const hours = [show.hours(breakingHr), show.hours(haulingHr)] as const;
  const breaking = breakingHr > haulingHr ? say.breakingSets(...hours) : say.truckSets(...hours);
  return [...(breakingHr === 0 ? [] : [breaking]), ...cycleNotes(made, working)];
}

/** Loader against trucks; where one truck waits while it is loaded the two take turns. */
function cycleNotes({ results, show, words }: Made, working: WorkingFigures): readonly string[] {
  const say = words.materials.loadNotes;
  const cycles = [
    show.minutes(num(working['loader-cycle'])),
    show.minutes(num(working['truck-cycle'])),
  ] as const;
  const trucks = num(working.trucks);
  if (working.swapped === undefined && trucks === 1) return [say.truckWaits(...cycles)];
  const sets = loaderSets(working) ? say.loaderIsSlower : say.truckIsSlower;
  const idle = trucks - new Set(results.haul.data.trips.map(({ trailer }) => trailer)).size;
  return [
    sets(...cycles),
    ...(idle > 0 ? [say.idle(show.count(idle))] : []),
    ...(working.swapped === undefined
      ? []
      : [say.swapped(show.minutes(num(working.swapped.spared)), show.count(num(working.swapped.waits)))]),
  ];
}

function brokenOutHr({ crew }: JobResults): number {
  return (['break-out', 'break-out-by-hand', 'saw-and-lift'] as const).reduce((sum, task) => {
    const figures = crew.figures.tasks[task];
    return figures === undefined ? sum : sum + num(figures['clock-hours']);
  }, 0);
}
