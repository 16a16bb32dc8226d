import { lbToTon, roundToCent, sumUsd, Usd } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { DumpPlace } from '../job.ts';
import { inputName, thingNamed } from '../parts.ts';
import type { BaseLoad } from './base-brought.ts';

/** Base that is bought at a place at its own price. */
export type BoughtFigures = {
  readonly tons: Figure;
  /** Every load to the cent [$]. */
  readonly cost: Figure;
};

type Placed = DumpPlace & { readonly base: NonNullable<DumpPlace['base']> };

/** By place, of those that have a price of their own. */
export function boughtFigures(
  loads: readonly BaseLoad[],
  places: Readonly<Record<string, DumpPlace>>,
): Readonly<Record<string, BoughtFigures>> {
  const ids = [...new Set(loads.map(({ place }) => place))];
  const sold = ids.map((id) => thingNamed(places, id, 'place')).filter(isPriced);
  return Object.fromEntries(
    sold.map((place) => [
      place.id,
      boughtAt(
        place,
        loads.filter((load) => load.place === place.id),
      ),
    ]),
  );
}

/** What the supplier sells: all that is ordered but for what is bought elsewhere [tons]. */
export function supplierTons(orderTon: Figure, bought: Readonly<Record<string, BoughtFigures>>): Figure {
  const inputs = Object.fromEntries(
    Object.entries(bought).map(([id, { tons }]) => [inputName(id, 'Ton'), tons]),
  );
  const elsewhere = Object.values(bought).reduce((sum, { tons }) => sum + num(tons), 0);
  return figure({
    value: Math.max(0, num(orderTon) - elsewhere),
    unit: 'ton',
    decimals: 2,
    formula: `max(0, orderTon - (${Object.keys(inputs).join(' + ') || '0'}))`,
    inputs: { orderTon, ...inputs },
  });
}

function isPriced(place: DumpPlace): place is Placed {
  return place.base !== null;
}

function boughtAt(place: Placed, loads: readonly BaseLoad[]): BoughtFigures {
  const { price, minimumUsd } = place.base;
  const path = `company.places.${place.id}.base`;
  const tons = figure({
    value: lbToTon(loads.reduce((sum, { weightLb }) => sum + weightLb, 0)),
    unit: 'ton',
    decimals: 2,
    formula: { method: 'what the loads of base from there hold, the cheapest places filled first' },
    inputs: {},
  });
  return {
    tons,
    cost: figure({
      value: sumUsd(
        loads.map(({ weightLb }) =>
          roundToCent(Usd.max(minimumUsd, price.amountUsd.times(lbToTon(weightLb)))),
        ),
      ),
      unit: '$',
      decimals: 2,
      formula: {
        method: 'sum over the loads, each to the cent: price times tons, and no less than the minimum',
      },
      inputs: {
        tons,
        priceUsd: given(`${path}.price`, price.amountUsd, '$/ton'),
        minimumUsd: given(`${path}.minimum`, minimumUsd, '$/visit'),
      },
      source: COMPANY_FIGURE,
      rounding: 'cent',
    }),
  };
}
