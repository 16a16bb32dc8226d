import { type Figure, num } from '../figure.ts';
import type { TowVehicle } from '../job.ts';
import { amountLine, type Lines, priceOf, productLine, rateUnitProblems } from './line.ts';

export type HaulCosts = {
  readonly base: {
    readonly deliveries: Figure;
    readonly 'delivery-cost': Figure;
    /** By place that sells base at its own price; only where one does. */
    readonly bought?: Readonly<Record<string, { readonly cost: Figure }>>;
    readonly 'supplier-tons'?: Figure;
  };
  readonly total: { readonly hours: Figure; readonly miles: Figure; readonly fees: Figure };
};

/** Dump fees and what the truck costs on the road; the driver is labor, and stands there. */
export function haulLines(haul: HaulCosts, towVehicle: Pick<TowVehicle, 'cost'>): Lines {
  const path = 'company.tow-vehicle.cost';
  const { cost } = towVehicle;
  const common = { name: 'haul-truck', group: 'tear-out-and-haul', kind: 'haul' } as const;
  const truck =
    cost.perUnit === 'h'
      ? productLine({
          ...common,
          quantity: { key: 'driverHr', input: haul.total.hours },
          price: { key: 'truckUsdPerHr', input: priceOf(path, cost, '$/h') },
        })
      : productLine({
          ...common,
          quantity: { key: 'distanceMi', input: haul.total.miles },
          price: { key: 'truckUsdPerMi', input: priceOf(path, cost, '$/mi') },
        });
  const fees = amountLine({
    name: 'haul-fees',
    group: 'tear-out-and-haul',
    kind: 'haul',
    amount: haul.total.fees,
  });
  return { lines: [...fees, ...truck], problems: rateUnitProblems(path, cost, ['mi', 'h']) };
}

/** The supplier's delivery of base, where it is delivered. */
export function deliveryLines(haul: HaulCosts): Lines {
  if (num(haul.base.deliveries) === 0) return { lines: [], problems: [] };
  const amount = haul.base['delivery-cost'];
  return {
    lines: amountLine({ name: 'base-delivery', group: 'base-and-forms', kind: 'material', amount }),
    problems: [],
  };
}
