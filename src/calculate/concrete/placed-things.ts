import type { Outline } from '../../geometry/index.ts';
import { type Figure, figure, num } from '../figure.ts';
import { thingNamed } from '../parts.ts';
import type { PlacedThing } from '../placing/index.ts';
import type { PlacedFigures } from './total-figures.ts';

type Nets = Readonly<Record<string, { readonly net: Figure }>>;

/** Each slab and flight with its share of all that is placed; a flight by `steps--` and its id. */
export function placedThings(
  { slabs, steps }: { readonly slabs: Nets; readonly steps: Nets },
  total: Pick<PlacedFigures, 'net' | 'placed'>,
  plans: Readonly<Record<string, Outline>>,
): readonly PlacedThing[] {
  if (num(total.net) === 0) return [];
  const volume = (net: Figure) =>
    figure({
      value: (num(total.placed) * num(net)) / num(total.net),
      unit: 'yd3',
      decimals: 2,
      formula: 'placedCuYd * netCuYd / totalNetCuYd',
      inputs: { placedCuYd: total.placed, netCuYd: net, totalNetCuYd: total.net },
    });
  return [
    ...Object.entries(slabs).map(([id, { net }]) => ({
      id,
      volume: volume(net),
      outline: thingNamed(plans, id, 'plan'),
    })),
    ...Object.entries(steps).map(([id, { net }]) => ({
      id: `steps--${id}`,
      volume: volume(net),
      outline: null,
    })),
  ];
}
