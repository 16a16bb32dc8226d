import { type Figure, num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { addDaysOn, weekdayOf } from '../../units/index.ts';
import type { Words } from '../../words/index.ts';
import { mixWords } from '../parts/mix-words.ts';
import { end, row, start } from '../parts/tables.ts';
import { type Show, showDate } from '../show/index.ts';
import type { MaterialsView } from '../views.ts';

type Made = { readonly job: Job; readonly results: JobResults; readonly show: Show; readonly words: Words };
type Item = {
  readonly supplier: string;
  readonly phone: string;
  readonly noticeDays: number;
  readonly neededOn: string;
  readonly item: string;
  readonly quantity: string;
};

/** Everything to buy, one block a supplier, with the day to order by. */
export function shoppingView(made: Made): MaterialsView['shopping'] {
  const { words } = made;
  const say = words.materials.shopping;
  const items = [
    ...concreteItems(made),
    ...baseItems(made),
    ...steelItems(made),
    ...sundryItems(made),
    ...formItems(made),
  ];
  const suppliers = [...new Set(items.map(({ supplier }) => supplier))];
  return {
    heading: say.heading,
    suppliers: suppliers.map((supplier) => {
      const own = items.filter((item) => item.supplier === supplier);
      const orderByDates = own.map(({ neededOn, noticeDays }) => workdaysBefore(neededOn, noticeDays)).sort();
      return {
        name: supplier,
        phone: own[0]?.phone ?? '',
        orderBy: say.orderBy(showDate(orderByDates[0] ?? made.job.plan.startsOn, words.common)),
        table: {
          caption: say.caption(supplier),
          columns: [start(say.item), end(say.quantity)],
          rows: own.map(({ item, quantity }) => row(item, quantity)),
        },
      };
    }),
  };
}

/** So many Mondays to Fridays before a day: an office answers on those. Holidays are not counted. */
function workdaysBefore(on: string, days: number): string {
  if (days <= 0) return on;
  const before = addDaysOn(on, -1);
  // A weekend day does not count.
  if (weekdayOf(before) > 5) return workdaysBefore(before, days);
  return workdaysBefore(before, days - 1);
}

/** First day of a phase, or the start of the job where it has none. */
function firstDayOf({ job, results }: Made, phase: string): string {
  return (
    results.crew.data.days.find((day) => day.kind === 'work' && day.phase === phase)?.on ?? job.plan.startsOn
  );
}

function concreteItems(made: Made): Item[] {
  const { job, results, show, words } = made;
  const say = words.materials.shopping;
  const { concrete, bagged } = job.company.suppliers;
  const { truck, bags, total } = results.concrete.figures;
  if (num(total.needed) <= 0) return [];
  const neededOn = firstDayOf(made, 'pour');
  if (results.concrete.data.supply === 'truck') {
    const item = say.concrete(mixWords(job.build.mix, show, words));
    return [
      {
        supplier: concrete.label,
        phone: concrete.phone,
        noticeDays: concrete.noticeDays,
        neededOn,
        item,
        quantity: show.volume(num(truck.order)),
      },
    ];
  }
  const item = say.bags(show.weight(bagged.weightLb));
  return [
    {
      supplier: bagged.label,
      phone: bagged.phone,
      noticeDays: 1,
      neededOn,
      item,
      quantity: show.count(num(bags.count)),
    },
  ];
}

function baseItems(made: Made): Item[] {
  const { job, results, show, words } = made;
  const orderTon = num(results.base.figures.total['order-tons']);
  if (orderTon <= 0) return [];
  const { base } = job.company.suppliers;
  return [
    {
      supplier: base.label,
      phone: base.phone,
      noticeDays: base.noticeDays,
      neededOn: firstDayOf(made, 'tear-out'),
      item: words.materials.shopping.base,
      quantity: show.tons(orderTon * 2000),
    },
  ];
}

function steelItems(made: Made): Item[] {
  const { job, results, show, words } = made;
  const say = words.materials.shopping;
  const { mesh, bars, sundries } = job.company.suppliers;
  const neededOn = firstDayOf(made, 'base-and-forms');
  const slabItems = Object.values(job.build.slabs).flatMap((slab): Item[] => {
    const figures = results.reinforcement.figures.slabs[slab.id];
    if (figures === undefined) return [];
    const { reinforcement } = slab;
    if (reinforcement.kind === 'bars' && 'sticks' in figures) {
      const quantity = words.workOrder.steel.sticks(
        show.count(num(figures.sticks)),
        show.length(bars.stockIn),
      );
      return [
        {
          supplier: bars.label,
          phone: bars.phone,
          noticeDays: 1,
          neededOn,
          item: `${say.bars(reinforcement.size)}, ${slab.label}`,
          quantity,
        },
      ];
    }
    if (reinforcement.kind === 'mesh' && 'sheets' in figures) {
      const item = `${say.mesh} ${reinforcement.style}, ${slab.label}`;
      return [
        {
          supplier: mesh.label,
          phone: mesh.phone,
          noticeDays: 1,
          neededOn,
          item,
          quantity: show.count(num(figures.sheets)),
        },
      ];
    }
    return [];
  });
  const chairs = counted(results.reinforcement.figures.total.chairs, (count) => ({
    supplier: sundries.label,
    phone: sundries.phone,
    noticeDays: 1,
    neededOn,
    item: say.chairs,
    quantity: show.count(count),
  }));
  return [...slabItems, ...chairs];
}

function sundryItems(made: Made): Item[] {
  const { job, results, show, words } = made;
  const say = words.materials.shopping;
  const { sundries } = job.company.suppliers;
  const neededOn = firstDayOf(made, 'base-and-forms');
  const common = { supplier: sundries.label, phone: sundries.phone, noticeDays: 1, neededOn };
  const { packs } = results.cost.figures;
  return [
    ...counted(packs['curing-packs'], (count) => ({
      ...common,
      item: say.curing,
      quantity: say.packs(show.count(count), show.liquid(sundries.curingPackGal)),
    })),
    ...counted(packs['isolation-strips'], (count) => ({
      ...common,
      item: say.isolation,
      quantity: say.strips(show.count(count), show.length(sundries.isolationStripIn)),
    })),
  ];
}

/** Only what the company's own stock does not cover. */
function formItems(made: Made): Item[] {
  const { results, show, words } = made;
  const say = words.materials.shopping;
  const neededOn = firstDayOf(made, 'base-and-forms');
  const common = { supplier: say.formSupplier, phone: '', noticeDays: 1, neededOn };
  const { boards, strips, stakes } = results.forms.figures;
  return [
    ...Object.keys(boards).flatMap((id) =>
      counted(thingNamed(boards, id, 'board').shortage, (count) => ({
        ...common,
        item: say.boards(id),
        quantity: show.count(count),
      })),
    ),
    ...Object.keys(strips).flatMap((id) =>
      counted(thingNamed(strips, id, 'form strip').shortage, (count) => ({
        ...common,
        item: say.formStrips(id),
        quantity: show.count(count),
      })),
    ),
    ...counted(stakes.shortage, (count) => ({ ...common, item: say.stakes, quantity: show.count(count) })),
  ];
}

function counted(figure: Figure, item: (count: number) => Item): Item[] {
  return num(figure) > 0 ? [item(num(figure))] : [];
}
