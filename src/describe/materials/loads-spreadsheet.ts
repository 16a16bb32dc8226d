import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import type { SpreadsheetView } from '../views.ts';
import { type LoadRow, loadRows } from './load-rows.ts';
import { type SheetColumn, sheetOrNull } from './sheet.ts';

/**
 * The loads for a spreadsheet, a row a load: each quantity as a number to reckon with, in lb, sq ft and
 * in whatever the job is shown in, and beside it as the page shows it. It has no row of totals, which
 * a sum down the column would count again; the scale ticket is empty, to be filled in. Null without loads.
 */
export function loadsSpreadsheet(made: Made): SpreadsheetView | null {
  const { words } = made;
  return sheetOrNull({
    name: words.materials.sheets.loads,
    columns: columnsIn(words),
    rows: loadRows(made),
  });
}

function columnsIn(words: Words): readonly SheetColumn<LoadRow>[] {
  const { loads: say, loadsSpreadsheet: asNumber } = words.materials;
  return [
    { heading: say.load, cell: (load) => load.number },
    { heading: say.what, cell: ({ from }) => from },
    { heading: say.trailer, cell: ({ trailer }) => trailer },
    { heading: asNumber.weight, cell: ({ weightLb }) => weightLb },
    { heading: say.weight, cell: ({ weight }) => weight },
    { heading: asNumber.bay, cell: ({ areaSqFt }) => areaSqFt },
    { heading: say.bay, cell: ({ area }) => area },
    { heading: asNumber.fill, cell: ({ fillIn }) => fillIn },
    { heading: say.fill, cell: ({ fill }) => fill },
    { heading: say.place, cell: ({ place }) => place },
    { heading: say.back, cell: ({ back }) => back },
    { heading: say.ticket, cell: () => null },
  ];
}
