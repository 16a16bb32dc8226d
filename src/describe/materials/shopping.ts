import { addDaysOn, weekdayOf } from '../../units/index.ts';
import type { Made } from '../made.ts';
import { end, row, start } from '../parts/tables.ts';
import { showDate } from '../show/index.ts';
import type { MaterialsView, SpreadsheetView } from '../views.ts';
import { sheetOrNull } from './sheet.ts';
import { type ShoppingItem, shoppingItems } from './shopping-items.ts';

/** What is bought of one supplier, all ordered by one day. */
type Purchase = {
  readonly supplier: string;
  readonly phone: string;
  readonly orderByOn: string;
  readonly items: readonly ShoppingItem[];
};

/** In the order in which their things are needed. */
function purchases(made: Made): readonly Purchase[] {
  const items = shoppingItems(made);
  return [...new Set(items.map(({ supplier }) => supplier))].map((supplier) => {
    const own = items.filter((item) => item.supplier === supplier);
    const orderByDates = own.map(({ neededOn, noticeDays }) => workdaysBefore(neededOn, noticeDays)).sort();
    return {
      supplier,
      phone: own[0]?.phone ?? '',
      orderByOn: orderByDates[0] ?? made.job.plan.startsOn,
      items: own,
    };
  });
}

/** Everything to buy, one block a supplier, with the day to order by. */
export function shoppingView(made: Made): MaterialsView['shopping'] {
  const { words } = made;
  const say = words.materials.shopping;
  return {
    heading: say.heading,
    suppliers: purchases(made).map(({ supplier, phone, orderByOn, items }) => ({
      name: supplier,
      phone,
      orderBy: say.orderBy(showDate(orderByOn, words.common)),
      table: {
        caption: say.caption(supplier),
        columns: [start(say.item), end(say.quantity)],
        rows: items.map(({ item, quantity }) => row(item, quantity.text)),
      },
    })),
  };
}

/** A row a thing, with its supplier; the day to order by as a date that sorts and in words. */
export function shoppingSheet(made: Made): SpreadsheetView | null {
  const { words } = made;
  const { shopping: say, shoppingSheet: own, sheets } = words.materials;
  const amountIn = (unit: ShoppingItem['quantity']['unit']) => (bought: { readonly thing: ShoppingItem }) =>
    bought.thing.quantity.unit === unit ? bought.thing.quantity.amount : null;
  return sheetOrNull({
    name: sheets.shopping,
    columns: [
      { heading: own.supplier, cell: ({ supplier }) => supplier },
      { heading: own.phone, cell: ({ phone }) => phone },
      { heading: own.orderByDate, cell: ({ orderByOn }) => orderByOn },
      { heading: own.orderBy, cell: ({ orderByOn }) => showDate(orderByOn, words.common) },
      { heading: say.item, cell: ({ thing }) => thing.item },
      { heading: own.volume, cell: amountIn('yd3') },
      { heading: own.tons, cell: amountIn('ton') },
      { heading: own.count, cell: amountIn('each') },
      { heading: say.quantity, cell: ({ thing }) => thing.quantity.text },
    ],
    rows: purchases(made).flatMap(({ items, ...from }) => items.map((thing) => ({ ...from, thing }))),
  });
}

/** So many Mondays to Fridays before a day: an office answers on those. Holidays are not counted. */
function workdaysBefore(on: string, days: number): string {
  if (days <= 0) return on;
  const before = addDaysOn(on, -1);
  // A weekend day does not count.
  if (weekdayOf(before) > 5) return workdaysBefore(before, days);
  return workdaysBefore(before, days - 1);
}
