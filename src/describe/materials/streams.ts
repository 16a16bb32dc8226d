import { num } from '../../calculate/figure.ts';
import type { Stream } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull, totalRow } from '../parts/tables.ts';
import type { SpreadsheetView, TableView } from '../views.ts';
import { sheetOrNull } from './sheet.ts';

type PerLoad = {
  readonly thing: string;
  readonly trailer: string;
  readonly areaSqFt: number;
  readonly area: string;
};

/** One stream, each quantity as a number in the core's unit and as the page shows it. */
type StreamRow = {
  readonly stream: string;
  /** Null where nothing of it is torn out or dug. */
  readonly weightLb: number | null;
  readonly weight: string;
  readonly looseCuYd: number | null;
  readonly loose: string;
  readonly loadCount: number;
  /** Of each thing of the stream, how much makes a full load of each trailer that it rides on. */
  readonly perLoad: readonly PerLoad[];
};

function streamRows({ job, results, show, words }: Made): readonly StreamRow[] {
  return Object.entries(results.haul.figures.streams).map(([stream, figures]) => {
    const torn = results.tearOut.figures.streams[stream as Stream];
    return {
      stream: words.materials.streamNames[stream as Stream],
      weightLb: torn === undefined ? null : num(torn.weight),
      weight: torn === undefined ? '' : show.weight(num(torn.weight)),
      looseCuYd: torn === undefined ? null : num(torn['loose-volume']),
      loose: torn === undefined ? '' : show.volume(num(torn['loose-volume'])),
      loadCount: num(figures.loads),
      perLoad: Object.entries(figures['sq-ft-per-load']).flatMap(([id, byTrailer]) =>
        Object.entries(byTrailer).map(([trailer, one]) => ({
          thing: thingNamed(job.site.existing, id, 'existing thing').label,
          trailer: thingNamed(job.company.trailers, trailer, 'trailer').label,
          areaSqFt: num(one),
          area: show.area(num(one)),
        })),
      ),
    };
  });
}

export function streamsTable(made: Made): TableView | null {
  const { results, show, words } = made;
  const say = words.materials.streams;
  const streams = streamRows(made);
  const loadCount = results.haul.data.loads.length;
  const isShared = streams.reduce((sum, stream) => sum + stream.loadCount, 0) !== loadCount;
  const totals = totalRow(
    say.total,
    show.weight(num(results.tearOut.figures.total.weight)),
    '',
    isShared ? say.shared(show.count(loadCount)) : show.count(loadCount),
    '',
  );
  const rows = streams.map((stream) =>
    row(stream.stream, stream.weight, stream.loose, show.count(stream.loadCount), perLoadWords(stream, made)),
  );
  return tableOrNull(
    say.caption,
    [start(say.stream), end(say.weight), end(say.loose), end(say.loads), end(say.perLoad)],
    rows.length === 0 ? [] : [...rows, totals],
  );
}

/** The trailer is named where not all of the stream rides on one. */
function perLoadWords({ perLoad }: StreamRow, { words }: Made): string {
  const isOne = new Set(perLoad.map(({ trailer }) => trailer)).size === 1;
  return perLoad
    .map(({ area, trailer }) => (isOne ? area : words.materials.streams.onTrailer(area, trailer)))
    .join(', ');
}

/** What the page says of slab per load has a sheet of its own: a stream can have several. */
export function streamsSheet(made: Made): SpreadsheetView | null {
  const { streams: say, streamsSheet: asNumber, sheets } = made.words.materials;
  return sheetOrNull({
    name: sheets.streams,
    columns: [
      { heading: say.stream, cell: ({ stream }) => stream },
      { heading: asNumber.weight, cell: ({ weightLb }) => weightLb },
      { heading: say.weight, cell: ({ weight }) => weight },
      { heading: asNumber.loose, cell: ({ looseCuYd }) => looseCuYd },
      { heading: say.loose, cell: ({ loose }) => loose },
      { heading: say.loads, cell: ({ loadCount }) => loadCount },
    ],
    rows: streamRows(made),
  });
}

/** A row for each thing of each stream that is loaded by the square foot. */
export function perLoadSheet(made: Made): SpreadsheetView | null {
  const { streams: say, streamsSheet: asNumber, loads, sheets } = made.words.materials;
  return sheetOrNull({
    name: sheets.perLoad,
    columns: [
      { heading: say.stream, cell: ({ stream }) => stream },
      { heading: loads.what, cell: ({ thing }) => thing },
      { heading: loads.trailer, cell: ({ trailer }) => trailer },
      { heading: asNumber.perLoad, cell: ({ areaSqFt }) => areaSqFt },
      { heading: say.perLoad, cell: ({ area }) => area },
    ],
    rows: streamRows(made).flatMap(({ stream, perLoad }) => perLoad.map((one) => ({ stream, ...one }))),
  });
}
