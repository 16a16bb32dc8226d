import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import type { Words } from '../../words/index.ts';
import { showIn } from '../show/index.ts';
import type { SpreadsheetCell, SpreadsheetView } from '../views.ts';
import { type LoadRow, loadRows } from './load-rows.ts';

type Column = { readonly heading: string; readonly cell: (load: LoadRow) => SpreadsheetCell };

/**
 * The loads for a spreadsheet, a row a load: each quantity as a number to reckon with, in lb, sq ft, in
 * and $ whatever the job is shown in, and beside it as the page shows it. It has no row of totals, which
 * a sum down the column would count again; the scale ticket is empty, to be filled in. Null without loads.
 */
export function loadsSpreadsheet(job: Job, results: JobResults, words: Words): SpreadsheetView | null {
  const rows = loadRows({ job, results, show: showIn(job.unitSystem), words });
  const columns = columnsIn(words);
  return rows.length === 0
    ? null
    : {
        headings: columns.map(({ heading }) => heading),
        rows: rows.map((load) => columns.map(({ cell }) => cell(load))),
      };
}

function columnsIn(words: Words): readonly Column[] {
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
    { heading: asNumber.fee, cell: ({ feeUsd }) => feeUsd },
    { heading: say.fee, cell: ({ fee }) => fee },
    { heading: say.back, cell: ({ back }) => back },
    { heading: say.ticket, cell: () => null },
  ];
}
