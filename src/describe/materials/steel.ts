import { num } from '../../calculate/figure.ts';
import { steelWords } from '../parts/steel-words.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { SpreadsheetView, TableView } from '../views.ts';
import type { Made } from './made.ts';
import { sheetOrNull } from './sheet.ts';

/** Steel of one slab, each quantity as a number in the core's unit and as the page shows it. */
type SteelRow = {
  readonly slab: string;
  readonly what: string;
  /** Bars in stock lengths, or sheets of mesh. */
  readonly pieceCount: number;
  readonly amount: string;
  readonly weightLb: number;
  readonly weight: string;
  readonly chairCount: number;
};

/** Only of slabs that have steel. */
function steelRows({ job, results, show, words }: Made): readonly SteelRow[] {
  const { stockIn } = job.company.suppliers.bars;
  return Object.values(job.build.slabs).flatMap((slab) => {
    const figures = results.reinforcement.figures.slabs[slab.id];
    if (figures === undefined) return [];
    return [
      {
        slab: slab.label,
        ...steelWords({ slab, figures, stockIn, show, words }),
        pieceCount: num('sticks' in figures ? figures.sticks : figures.sheets),
        weightLb: num(figures.weight),
        weight: show.weight(num(figures.weight)),
        chairCount: num(figures.chairs),
      },
    ];
  });
}

export function steelTable(made: Made): TableView | null {
  const { show, words } = made;
  const say = words.materials.steel;
  return tableOrNull(
    say.caption,
    [start(say.slab), start(say.what), end(say.amount), end(say.weight), end(say.chairs)],
    steelRows(made).map(({ slab, what, amount, weight, chairCount }) =>
      row(slab, what, amount, weight, show.count(chairCount)),
    ),
  );
}

export function steelSheet(made: Made): SpreadsheetView | null {
  const { steel: say, steelSheet: asNumber, sheets } = made.words.materials;
  return sheetOrNull({
    name: sheets.steel,
    columns: [
      { heading: say.slab, cell: ({ slab }) => slab },
      { heading: say.what, cell: ({ what }) => what },
      { heading: asNumber.amount, cell: ({ pieceCount }) => pieceCount },
      { heading: say.amount, cell: ({ amount }) => amount },
      { heading: asNumber.weight, cell: ({ weightLb }) => weightLb },
      { heading: say.weight, cell: ({ weight }) => weight },
      { heading: say.chairs, cell: ({ chairCount }) => chairCount },
    ],
    rows: steelRows(made),
  });
}
