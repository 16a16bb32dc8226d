import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { BarStock } from '../../calculate/reinforcement/index.ts';
import type { Made } from '../made.ts';
import { chairsText, steelAmount, steelWhat, sticksText } from '../parts/steel-words.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { SpreadsheetView, TableView } from '../views.ts';
import { sheetOrNull } from './sheet.ts';

/** Steel of one slab, each quantity as a number in the core's unit and as the page shows it. */
type SteelRow = {
  readonly slab: string;
  readonly what: string;
  readonly amount: string;
  readonly weightLb: number;
  readonly weight: string;
  readonly chairCount: number;
  readonly chairs: string;
  readonly ties: string;
};

/** Only of slabs that have steel. */
function steelRows(made: Made): readonly SteelRow[] {
  const { job, results, show } = made;
  return Object.values(job.build.slabs).flatMap((slab) => {
    const figures = results.reinforcement.figures.slabs[slab.id];
    if (figures === undefined) return [];
    return [
      {
        slab: slab.label,
        what: steelWhat(slab, made),
        amount: steelAmount(figures, made),
        weightLb: num(figures.weight),
        weight: show.weight(num(figures.weight)),
        chairCount: num(figures.chairs),
        chairs: chairsText(figures, made),
        ties: 'ties' in figures ? show.count(num(figures.ties)) : '',
      },
    ];
  });
}

export function steelTable(made: Made): TableView | null {
  const say = made.words.materials.steel;
  return tableOrNull(
    say.caption,
    [start(say.slab), start(say.what), end(say.amount), end(say.weight), end(say.chairs), end(say.ties)],
    steelRows(made).map(({ slab, what, amount, weight, chairs, ties }) =>
      row(slab, what, amount, weight, chairs, ties),
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
      { heading: say.amount, cell: ({ amount }) => amount },
      { heading: asNumber.weight, cell: ({ weightLb }) => weightLb },
      { heading: say.weight, cell: ({ weight }) => weight },
      { heading: asNumber.chairs, cell: ({ chairCount }) => chairCount },
      { heading: say.chairs, cell: ({ chairs }) => chairs },
      { heading: say.ties, cell: ({ ties }) => ties },
    ],
    rows: steelRows(made),
  });
}

type StockRow = {
  readonly bar: string;
  readonly pieces: string;
  readonly lengthFt: number;
  readonly count: number;
  readonly take: string;
  readonly boughtFt: number;
  readonly weightLb: number;
  readonly left: string;
  readonly note: string;
};

function stockRows(made: Made): readonly StockRow[] {
  const { results, show, words } = made;
  const { data, figures } = results.reinforcement;
  return Object.entries(data.stock).map(([key, stock]) => {
    const own = thingNamed(figures.stock, key, 'stock');
    return {
      bar: words.steel.bar[stock.material](stock.size),
      pieces: show.count(num(own.pieces)),
      lengthFt: num(own.length),
      count: num(own.sticks),
      take: sticksText(stock, made),
      boughtFt: num(own['bought-length']),
      weightLb: num(own['bought-weight']),
      left: show.percent(num(own['left-over'])),
      note: planNote(stock, num(own['first-fit-length']), made),
    };
  });
}

/** Whether the plan is the least there can be, and what it saves. */
function planNote({ plan }: BarStock, firstFitFt: number, { show, words }: Made): string {
  const { stock: say } = words.materials;
  const shown = plan.isLeast ? say.least : say.found;
  return plan.firstFitIn > plan.boughtIn ? `${shown} ${say.worse(show.run(firstFitFt))}` : shown;
}

/** Bars to buy, of all slabs together. */
export function stockTable(made: Made): TableView | null {
  const { show, words } = made;
  const say = words.materials.stock;
  return tableOrNull(
    say.caption,
    [
      start(say.bar),
      end(say.pieces),
      end(say.length),
      end(say.take),
      end(say.bought),
      end(say.weight),
      end(say.left),
    ],
    stockRows(made).map(({ bar, pieces, lengthFt, take, boughtFt, weightLb, left, note }) => ({
      ...row(bar, pieces, show.run(lengthFt), take, show.run(boughtFt), show.weight(weightLb), left),
      note,
    })),
  );
}

export function stockSheet(made: Made): SpreadsheetView | null {
  const { stock: say, stockSheet: asNumber, sheets } = made.words.materials;
  return sheetOrNull({
    name: sheets.stock,
    columns: [
      { heading: say.bar, cell: ({ bar }) => bar },
      { heading: say.pieces, cell: ({ pieces }) => pieces },
      { heading: asNumber.length, cell: ({ lengthFt }) => lengthFt },
      { heading: asNumber.count, cell: ({ count }) => count },
      { heading: say.take, cell: ({ take }) => take },
      { heading: asNumber.bought, cell: ({ boughtFt }) => boughtFt },
      { heading: asNumber.weight, cell: ({ weightLb }) => weightLb },
      { heading: say.left, cell: ({ left }) => left },
    ],
    rows: stockRows(made),
  });
}
