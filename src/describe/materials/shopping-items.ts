import { type Figure, num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { mixWords } from '../parts/mix-words.ts';
import { orderedTons, orderedVolume } from '../parts/ordered.ts';
import { dowelItems } from './dowel-items.ts';
import { steelItems } from './steel-items.ts';

/** One thing to buy, its quantity as a number in the core's unit and as the page shows it. */
export type ShoppingItem = {
  readonly supplier: string;
  readonly phone: string;
  readonly noticeDays: number;
  readonly neededOn: string;
  readonly item: string;
  readonly quantity: {
    readonly unit: 'yd3' | 'ton' | 'each' | 'sq ft';
    readonly amount: number;
    readonly text: string;
  };
};

/** Everything to buy, in the order of the work. */
export function shoppingItems(made: Made): readonly ShoppingItem[] {
  return [
    ...concreteItems(made),
    ...baseItems(made),
    ...fabricItems(made),
    ...steelItems(made, firstDayOf(made, 'base-and-forms')),
    ...dowelItems(made, firstDayOf(made, 'base-and-forms')),
    ...sundryItems(made),
    ...formItems(made),
  ];
}

/** First day of a phase, or the start of the job where it has none. */
function firstDayOf({ job, results }: Made, phase: string): string {
  return (
    results.crew.data.days.find((day) => day.kind === 'work' && day.phase === phase)?.on ?? job.plan.startsOn
  );
}

function concreteItems(made: Made): ShoppingItem[] {
  const { job, results, show, words } = made;
  const say = words.materials.shopping;
  const { concrete, bagged } = job.company.suppliers;
  const { truck, bags, total } = results.concrete.figures;
  if (num(total.needed) <= 0) return [];
  const neededOn = firstDayOf(made, 'pour');
  if (results.concrete.data.supply === 'truck') {
    const item = say.concrete(mixWords(job, results, show, words));
    return [
      {
        supplier: concrete.label,
        phone: concrete.phone,
        noticeDays: concrete.noticeDays,
        neededOn,
        item,
        quantity: { unit: 'yd3', amount: num(truck.order), text: orderedVolume(num(truck.order), made) },
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
      quantity: pieces(num(bags.count), show),
    },
  ];
}

function baseItems(made: Made): ShoppingItem[] {
  const { job, results, show, words } = made;
  const orderTon = num(results.base.figures.total['order-tons']);
  if (orderTon <= 0) return [];
  const say = words.materials.shopping;
  const { base } = job.company.suppliers;
  const holesTon = Object.values(results.base.figures.holes).reduce((sum, { tons }) => sum + num(tons), 0);
  const item = holesTon > 0 ? say.baseWithHoles(show.tons(holesTon * 2000)) : say.base;
  const neededOn = firstDayOf(made, 'tear-out');
  const tons = (amount: number) => ({ unit: 'ton', amount, text: orderedTons(amount * 2000, made) }) as const;
  const { bought = {}, 'supplier-tons': supplierTons } = results.haul.figures.base;
  const supplierTon = supplierTons === undefined ? orderTon : num(supplierTons);
  return [
    ...(supplierTon > 0
      ? [
          {
            supplier: base.label,
            phone: base.phone,
            noticeDays: base.noticeDays,
            neededOn,
            item,
            quantity: tons(supplierTon),
          },
        ]
      : []),
    ...Object.entries(bought).map(([id, figures]) => {
      const { label, address } = thingNamed(job.company.places, id, 'place');
      return {
        supplier: label,
        phone: address,
        noticeDays: 0,
        neededOn,
        item,
        quantity: tons(num(figures.tons)),
      };
    }),
  ];
}

/** Whole rolls. */
function fabricItems(made: Made): ShoppingItem[] {
  const { job, results, show, words } = made;
  const say = words.materials.shopping;
  const { geotextile: supplier } = job.company.suppliers;
  const fabric = results.base.figures.geotextile;
  if (fabric === undefined || supplier === null) return [];
  const count = num(fabric.total.rolls);
  const [width, length] = [show.length(supplier.rollWidthIn), show.length(supplier.rollLengthIn)];
  return [
    {
      supplier: supplier.label,
      phone: supplier.phone,
      noticeDays: 1,
      neededOn: firstDayOf(made, 'base-and-forms'),
      item: say.fabric,
      quantity: { unit: 'each', amount: count, text: say.rolls(show.count(count), width, length) },
    },
  ];
}

function sundryItems(made: Made): ShoppingItem[] {
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
      quantity: {
        unit: 'each',
        amount: count,
        text: say.packs(show.count(count), show.liquid(sundries.curingPackGal)),
      },
    })),
    ...counted(results.curing.figures.sheeting, (areaSqFt) => ({
      ...common,
      item: results.curing.data.method === 'wet-cover' ? say.wetCovers : say.sheeting,
      quantity: { unit: 'sq ft' as const, amount: areaSqFt, text: show.area(areaSqFt) },
    })),
    ...counted(packs['isolation-strips'], (count) => ({
      ...common,
      item: say.isolation,
      quantity: {
        unit: 'each',
        amount: count,
        text: say.strips(show.count(count), show.length(sundries.isolationStripIn)),
      },
    })),
    ...[
      { packs: packs['tie-packs'], item: say.ties },
      { packs: packs['sealant-tubes'], item: say.sealant },
    ].flatMap(({ packs: some, item }) =>
      some === undefined
        ? []
        : counted(some, (count) => ({ ...common, item, quantity: pieces(count, show) })),
    ),
  ];
}

/** Only what the company's own stock does not cover. */
function formItems(made: Made): ShoppingItem[] {
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
        quantity: pieces(count, show),
      })),
    ),
    ...Object.keys(strips).flatMap((id) =>
      counted(thingNamed(strips, id, 'form strip').shortage, (count) => ({
        ...common,
        item: say.formStrips(id),
        quantity: pieces(count, show),
      })),
    ),
    ...counted(stakes.shortage, (count) => ({ ...common, item: say.stakes, quantity: pieces(count, show) })),
  ];
}

function counted(figure: Figure, item: (count: number) => ShoppingItem): ShoppingItem[] {
  return num(figure) > 0 ? [item(num(figure))] : [];
}

function pieces(count: number, show: Made['show']): ShoppingItem['quantity'] {
  return { unit: 'each', amount: count, text: show.count(count) };
}
