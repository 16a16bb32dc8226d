import type { Decimal } from 'decimal.js';
import { ceilCount, Usd } from '../../units/index.ts';
import type { BaseResult } from '../base/index.ts';
import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { BaseSupplier, DumpPlace } from '../job.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import { inputKey, sumOfUsdParts } from '../sum-figure.ts';
import type { BaseLoad } from './base-brought.ts';
import { type BoughtFigures, boughtFigures, supplierTons } from './bought-figures.ts';
import { type HaulRates, haulCostFigure, placeInputs } from './cost-figures.ts';
import type { HaulLoad } from './load-table.ts';
import type { Plan, PlannedTrips } from './plan/index.ts';
import { tripHr } from './trip.ts';

/** Trips for base alone, of one trailer to one place. */
export type BaseWayFigures = {
  readonly trips: Figure;
  /** Of the driver [h]. */
  readonly hours: Figure;
  readonly miles: Figure;
  /** Driver and truck [$]; the base itself is bought with the materials. */
  readonly cost: Figure;
};

export type HaulBaseFigures = {
  /** Of base on trailers; 0 where all of it is delivered. */
  readonly loads: Figure;
  /** Of them, those that ride back on a debris trip. */
  readonly paired: Figure;
  /** By trailer and place. */
  readonly ways: Readonly<Record<string, BaseWayFigures>>;
  readonly 'own-trips': Figure;
  /** Of the driver, for trips for base alone [h]. */
  readonly hours: Figure;
  readonly miles: Figure;
  readonly cost: Figure;
  readonly deliveries: Figure;
  /** What the supplier asks for bringing all of it [$]. */
  readonly 'delivery-offer': Figure;
  /** What the supplier is paid for bringing what he brings [$]. */
  readonly 'delivery-cost': Figure;
  /** By place that has its own price of base and sells some; only where one does. */
  readonly bought?: Readonly<Record<string, BoughtFigures>>;
  /** What the supplier sells then, at his yard or delivered [tons]. */
  readonly 'supplier-tons'?: Figure;
};

/** How the base comes: back on trips with debris, on trips of its own, brought by the supplier. */
export function haulBaseFigures(made: {
  readonly plan: Plan;
  readonly loads: readonly HaulLoad[];
  readonly brought: readonly BaseLoad[];
  readonly base: BaseResult['figures'];
  readonly supplier: BaseSupplier;
  readonly places: Readonly<Record<string, DumpPlace>>;
  readonly rates: HaulRates;
}): HaulBaseFigures {
  const { plan, supplier, rates } = made;
  const orderTon = made.base.total['order-tons'];
  const bought = boughtFigures(made.brought, made.places);
  const paired = planned(
    made.loads.filter(({ returns }) => returns === 'base').length,
    'debris trips on which base rides back, of the plan that costs least',
  );
  const ways = Object.fromEntries(
    plan.baseTrips.map((trips) => [
      baseWayId(trips),
      baseWayFigures(trips.count, thingNamed(made.places, trips.place, 'place'), rates),
    ]),
  );
  const own = (name: 'trips' | 'hours' | 'miles', shown: Omit<Parameters<typeof sumFigure>[0], 'parts'>) =>
    sumFigure({ parts: pick(ways, name), ...shown });
  const ownTrips = own('trips', { unitSuffix: 'Trips', unit: 'each', decimals: 0 });
  const deliveries = planned(
    plan.deliveryCount,
    'loads that the supplier brings, of the plan that costs least',
  );
  return {
    loads: figure({
      value: num(paired) + num(ownTrips),
      unit: 'each',
      decimals: 0,
      formula: 'paired + ownTrips',
      inputs: { paired, ownTrips },
    }),
    paired,
    ways,
    'own-trips': ownTrips,
    hours: own('hours', { unitSuffix: 'Hr', unit: 'h', decimals: 1 }),
    miles: own('miles', { unitSuffix: 'Mi', unit: 'mi', decimals: 0 }),
    cost: sumOfUsdParts(
      Object.entries(ways).map(([id, { cost }]) => ({ key: inputKey('cost', id, 'Usd'), input: cost })),
    ),
    deliveries,
    'delivery-offer': offerFigure(orderTon, supplier),
    'delivery-cost': deliveryFigure(deliveries, supplier),
    ...(Object.keys(bought).length === 0 ? {} : { bought, 'supplier-tons': supplierTons(orderTon, bought) }),
  };
}

export function baseWayId({ trailer, place }: Omit<PlannedTrips, 'count'>): string {
  return `${trailer}-from-${place}`;
}

function baseWayFigures(count: number, place: DumpPlace, rates: HaulRates): BaseWayFigures {
  const { driveHr, turnHr, distanceMi } = placeInputs(place);
  const trips = planned(count, 'trips for base alone, of the plan that costs least');
  const hours = figure({
    value:
      count * tripHr({ loadingHr: 0, outHr: place.driveHr, turnHr: place.turnHr, backHr: place.driveHr }),
    unit: 'h',
    decimals: 1,
    formula: 'trips * (driveHr + turnHr + driveHr)',
    inputs: { trips, driveHr, turnHr },
    source: COMPANY_FIGURE,
  });
  const miles = figure({
    value: count * 2 * place.distanceMi,
    unit: 'mi',
    decimals: 0,
    formula: 'trips * 2 * distanceMi',
    inputs: { trips, distanceMi },
    source: COMPANY_FIGURE,
  });
  return { trips, hours, miles, cost: haulCostFigure({ hours, miles, fee: null }, rates) };
}

/** A charge for each load of the supplier's truck. */
function offerFigure(orderTon: Figure, supplier: BaseSupplier): Figure {
  return figure({
    value: supplier.deliveryUsd.times(ceilCount(num(orderTon) / supplier.deliveryTon)),
    unit: '$',
    decimals: 2,
    formula: 'ceilStep(orderTon / deliveryTon, 1) * deliveryUsd',
    inputs: {
      orderTon,
      deliveryTon: given('company.suppliers.base.delivery-load', supplier.deliveryTon, 'ton'),
      deliveryUsd: given('company.suppliers.base.delivery', supplier.deliveryUsd, '$/load'),
    },
    source: COMPANY_FIGURE,
    rounding: 'up',
  });
}

function deliveryFigure(loads: Figure, supplier: BaseSupplier): Figure {
  const value: Decimal = new Usd(num(loads)).times(supplier.deliveryUsd);
  return figure({
    value,
    unit: '$',
    decimals: 2,
    formula: 'loads * deliveryUsd',
    inputs: { loads, deliveryUsd: given('company.suppliers.base.delivery', supplier.deliveryUsd, '$/load') },
    source: COMPANY_FIGURE,
  });
}

function planned(value: number, method: string): Figure {
  return figure({ value, unit: 'each', decimals: 0, formula: { method }, inputs: {} });
}
