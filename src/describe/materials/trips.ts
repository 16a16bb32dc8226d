import type { Decimal } from 'decimal.js';
import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { formatMoney } from '../../units/index.ts';
import { clockWords } from '../parts/clock-words.ts';
import { end, row, start, tableOrNull, totalRow } from '../parts/tables.ts';
import { showDate, showFigure } from '../show/index.ts';
import type { SpreadsheetView, TableView } from '../views.ts';
import type { Made } from './made.ts';
import { sheetOrNull } from './sheet.ts';

/** One trip, as the page shows it. */
type TripRow = {
  readonly day: string;
  readonly load: string;
  readonly trailer: string;
  readonly place: string;
  readonly starts: string;
  readonly arrives: string;
  readonly back: string;
  /** Null where nothing is dumped. */
  readonly feeUsd: Decimal | null;
  readonly fee: string;
};

function tripRows({ job, results, show, words }: Made): readonly TripRow[] {
  const say = words.materials.trips;
  const clock = (timeHr: number) => clockWords(timeHr, job.unitSystem, words);
  const numberOf = (name: string) => results.haul.data.loads.findIndex((load) => load.name === name) + 1;
  return results.haul.data.trips.map(({ on, load, trailer, place, startsHr, arrivesHr, backHr }) => ({
    day: showDate(on, words.common),
    load: load === null ? say.baseOnly : show.count(numberOf(load)),
    trailer: thingNamed(job.company.trailers, trailer, 'trailer').label,
    place: thingNamed(job.company.places, place, 'place').label,
    starts: clock(startsHr),
    arrives: clock(arrivesHr),
    back: clock(backHr),
    ...feeOf(load, results),
  }));
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
    showFigure(made.results.haul.figures.total.fees),
  );
  return tableOrNull(
    say.caption,
    [
      start(say.day),
      end(say.load),
      start(say.trailer),
      start(say.place),
      end(say.starts),
      end(say.arrives),
      end(say.back),
      end(say.fee),
    ],
    rows.length === 0 ? [] : [...rows, totals],
  );
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
      { heading: say.arrives, cell: ({ arrives }) => arrives },
      { heading: say.back, cell: ({ back }) => back },
      { heading: asNumber.fee, cell: ({ feeUsd }) => feeUsd },
      { heading: say.fee, cell: ({ fee }) => fee },
    ],
    rows: tripRows(made),
  });
}

/** What sets the pace of the day, breaking out or the truck; nothing where one of them has nothing to do. */
export function paceNote({ results, show, words }: Made): readonly string[] {
  const { tasks } = results.crew.figures;
  const clockHr = (task: 'break-out' | 'break-out-by-hand' | 'saw-and-lift') => {
    const figures = tasks[task];
    return figures === undefined ? 0 : num(figures['clock-hours']);
  };
  const breakingHr = clockHr('break-out') + clockHr('break-out-by-hand') + clockHr('saw-and-lift');
  const haulingHr = num(results.haul.figures.total.hours);
  if (breakingHr === 0 || haulingHr === 0) return [];
  const say = words.materials.loadNotes;
  const hours = [show.hours(breakingHr), show.hours(haulingHr)] as const;
  return [breakingHr > haulingHr ? say.breakingSets(...hours) : say.truckSets(...hours)];
}
