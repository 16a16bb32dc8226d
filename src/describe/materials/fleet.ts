import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { SpreadsheetView, TableView } from '../views.ts';
import { sheetOrNull } from './sheet.ts';

/** One trailer of the job, each quantity as a number in the core's unit and as the page shows it. */
type FleetRow = {
  readonly trailer: string;
  readonly payloadLb: number;
  readonly payload: string;
  readonly decides: string;
  readonly boxCuYd: number;
  readonly box: string;
};

function fleetRows({ job, results, show, words }: Made): readonly FleetRow[] {
  return job.plan.trailers.map((id) => {
    const figures = thingNamed(results.haul.figures.trailers, id, 'trailer');
    const [payloadLb, boxCuYd] = [num(figures.payload), num(figures['box-volume'])];
    return {
      trailer: thingNamed(job.company.trailers, id, 'trailer').label,
      payloadLb,
      payload: show.weight(payloadLb),
      decides: words.materials.governing[thingNamed(results.haul.data.governing, id, 'trailer')],
      boxCuYd,
      box: show.volume(boxCuYd),
    };
  });
}

export function fleetTable(made: Made): TableView | null {
  const say = made.words.materials.fleet;
  return tableOrNull(
    say.caption(made.job.company.towVehicle.label),
    [start(say.trailer), end(say.payload), start(say.decides), end(say.box)],
    fleetRows(made).map(({ trailer, payload, decides, box }) => row(trailer, payload, decides, box)),
  );
}

export function fleetSheet(made: Made): SpreadsheetView | null {
  const { fleet: say, fleetSheet: asNumber, sheets } = made.words.materials;
  return sheetOrNull({
    name: sheets.fleet,
    columns: [
      { heading: say.trailer, cell: ({ trailer }) => trailer },
      { heading: asNumber.payload, cell: ({ payloadLb }) => payloadLb },
      { heading: say.payload, cell: ({ payload }) => payload },
      { heading: say.decides, cell: ({ decides }) => decides },
      { heading: asNumber.box, cell: ({ boxCuYd }) => boxCuYd },
      { heading: say.box, cell: ({ box }) => box },
    ],
    rows: fleetRows(made),
  });
}
