import { num } from '../../calculate/figure.ts';
import type { Slab } from '../../calculate/job.ts';
import { barLapIn, barTable } from '../../calculate/reinforcement/index.ts';
import type { Made } from '../made.ts';
import { barSupplier, sticksText } from '../parts/steel-words.ts';
import type { ShoppingItem } from './shopping-items.ts';

type Bought = Pick<ShoppingItem, 'supplier' | 'phone' | 'noticeDays' | 'item' | 'quantity'>;

/** Mesh, bars, bent pieces and chairs, all needed on one day. */
export function steelItems(made: Made, neededOn: string): readonly ShoppingItem[] {
  const slabs = Object.values(made.job.build.slabs);
  return [
    ...slabs.flatMap((slab) => sheetItems(slab, made)),
    ...rollItems(made),
    ...barItems(made),
    ...slabs.flatMap((slab) => bentItems(slab, made)),
    ...slabs.flatMap((slab) => chairItems(slab, made)),
  ].map((bought) => ({ ...bought, neededOn }));
}

function each(amount: number, text: string): Bought['quantity'] {
  return { unit: 'each', amount, text };
}

function sheetItems(
  { id, label, reinforcement: steel }: Slab,
  { job, results, show, words }: Made,
): Bought[] {
  const { label: supplier, phone, noticeDays } = job.company.suppliers.mesh;
  const figures = results.reinforcement.figures.slabs[id];
  if (
    steel.kind !== 'mesh' ||
    figures === undefined ||
    !('sheets' in figures) ||
    figures.sheets === undefined
  )
    return [];
  const count = num(figures.sheets);
  const item = words.steel.shopping.mesh(steel.style, label);
  return [{ supplier, phone, noticeDays, item, quantity: each(count, show.count(count)) }];
}

function rollItems({ job, results, show, words }: Made): Bought[] {
  const { label: supplier, phone, noticeDays, roll } = job.company.suppliers.mesh;
  const { shopping: say } = words.steel;
  if (roll === null) return [];
  return Object.entries(results.reinforcement.figures.rolls).map(([style, { rolls }]) => {
    const count = num(rolls);
    const text = say.ofRoll(show.count(count), show.length(roll.lengthIn));
    return { supplier, phone, noticeDays, item: say.rolls(style), quantity: each(count, text) };
  });
}

function barItems(made: Made): Bought[] {
  const { job, results, words } = made;
  return Object.values(results.reinforcement.data.stock).map((stock) => {
    const { label: supplier, phone, noticeDays } = barSupplier(stock, job.company);
    const count = stock.plan.bars.reduce((sum, bars) => sum + bars.count, 0);
    const item = words.steel.bar[stock.material](stock.size);
    return { supplier, phone, noticeDays, item, quantity: each(count, sticksText(stock, made)) };
  });
}

/** Glass fibre is bent where it is made, which takes its time; steel is bent here. */
function bentItems({ id, reinforcement: steel }: Slab, { job, results, show, words }: Made): Bought[] {
  const figures = results.reinforcement.figures.slabs[id];
  const supplier = job.company.suppliers.glassFibreBars;
  if (steel.kind !== 'bars' || steel.material !== 'glass-fibre' || supplier === null) return [];
  if (figures === undefined || !('bent-pieces' in figures)) return [];
  const count = num(figures['bent-pieces']);
  if (count === 0) return [];
  const { diameterIn } = barTable[steel.material][steel.size];
  const leg = show.size(barLapIn({ lapDiameters: supplier.lapDiameters, diameterIn }));
  return [
    {
      supplier: supplier.label,
      phone: supplier.phone,
      noticeDays: supplier.bentNoticeDays,
      item: words.steel.shopping.bentPieces(steel.size, leg),
      quantity: each(count, show.count(count)),
    },
  ];
}

function chairItems({ id, label }: Slab, { job, results, show, words }: Made): Bought[] {
  const { label: supplier, phone } = job.company.suppliers.sundries;
  const figures = results.reinforcement.figures.slabs[id];
  if (figures === undefined || num(figures.chairs) === 0) return [];
  const count = num(figures.chairs);
  const item = words.steel.shopping.chairs(show.size(num(figures['chair-height'])), label);
  return [{ supplier, phone, noticeDays: 1, item, quantity: each(count, show.count(count)) }];
}
