import type { MadeJoint } from '../../calculate/edges/index.ts';
import { num } from '../../calculate/figure.ts';
import type { Made } from '../made.ts';
import type { ShoppingItem } from './shopping-items.ts';

/** Dowels and tie bars by their size, and epoxy for those that are drilled in. */
export function dowelItems(made: Made, neededOn: string): readonly ShoppingItem[] {
  const { job, results, show, words } = made;
  const { shopping: say } = words.steel;
  const supplier = job.company.suppliers.dowels;
  if (supplier === null) return [];
  const item = (name: string, count: number): ShoppingItem => ({
    supplier: supplier.label,
    phone: supplier.phone,
    noticeDays: supplier.noticeDays,
    neededOn,
    item: name,
    quantity: { unit: 'each', amount: count, text: show.count(count) },
  });
  const bars = Object.values(results.edges.data.joints)
    .flat()
    .filter(({ barCount }) => barCount > 0);
  const epoxy = results.cost.figures.packs['epoxy-cartridges'];
  return [
    ...[...bySize(bars)].map(([, { joint, count }]) => {
      const [diameter, length] = [show.size(joint.steel.diameterIn), show.size(joint.steel.lengthIn)];
      return item(joint.how === 'tied' ? say.ties(diameter, length) : say.dowels(diameter, length), count);
    }),
    ...(epoxy === undefined ? [] : [item(say.epoxy, num(epoxy))]),
  ];
}

type Barred = MadeJoint & { readonly steel: NonNullable<MadeJoint['steel']> };

function bySize(joints: readonly MadeJoint[]) {
  const sizes = new Map<string, { readonly joint: Barred; readonly count: number }>();
  for (const joint of joints) {
    const { how, steel, barCount } = joint;
    if (steel === null) continue;
    const key = `${how} ${steel.diameterIn} ${steel.lengthIn}`;
    sizes.set(key, { joint: { ...joint, steel }, count: (sizes.get(key)?.count ?? 0) + barCount });
  }
  return sizes;
}
