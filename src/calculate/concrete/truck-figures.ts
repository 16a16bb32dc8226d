import type { Decimal } from 'decimal.js';
import type { CoreProblem } from '../../problems/index.ts';
import { ceilToStep, formatNumber, type Rate, Usd } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import { inputName } from '../parts.ts';
import { usdPerCuYd } from '../usd-per-cu-yd.ts';
import {
  cheapestTruckOrder,
  shortLoadFeesUsd,
  type TruckTerms,
  truckCost,
  truckLoadsCuYd,
  truckOrderCostUsd,
} from './truck.ts';
import { feeUsd } from './truck-fees.ts';

export type TruckFigures = {
  /** The least that is enough, up to the increment [yd3]. */
  readonly least: Figure;
  readonly 'least-cost': Figure;
  readonly order: Figure;
  readonly loads: Figure;
  readonly 'largest-load': Figure;
  /** The one before the last; only of two loads or more. */
  readonly 'load-before-last'?: Figure;
  readonly concrete: Figure;
  /** Only where the plant names prices for what is added to this mix. */
  readonly additives?: Figure;
  readonly 'short-load-fee': Figure;
  /** Only where the plant asks it. */
  readonly 'fuel-fee'?: Figure;
  /** Only where the plant asks it and the pour falls on a Saturday. */
  readonly 'saturday-fee'?: Figure;
  /** Only where waiting is charged and this crew is slower than what is free. */
  readonly 'wait-fee'?: Figure;
  readonly cost: Figure;
  /** What may be left when all is placed [yd3]. */
  readonly 'left-over': Figure;
};

const PATH = 'company.suppliers.concrete';

/** Waiting that is charged: hours for each yard, and what an hour costs. */
export type Waiting = { readonly perYardHr: Figure; readonly usdPerHr: FigureInput };

export function truckFigures(
  neededCuYd: Figure,
  terms: TruckTerms,
  delivery: { readonly waiting: Waiting | null; readonly mostPerLoad: Figure | null },
): TruckFigures {
  const from = {
    incrementCuYd: given(`${PATH}.increment`, terms.incrementCuYd, 'yd3'),
    truckCuYd: delivery.mostPerLoad ?? given(`${PATH}.truck`, terms.truckCuYd, 'yd3'),
  };
  const { waiting } = delivery;
  const priceUsdPerCuYd = given(`${PATH}.price`, usdPerCuYd(terms.price), '$/yd3');
  const feeTerms = feeInputs(terms);
  const least = leastFigure(neededCuYd, terms, from.incrementCuYd);
  const order = orderFigure(least, terms, { ...from, priceUsdPerCuYd, ...feeTerms });
  const loads = loadsFigure(order, terms, from);
  const lines = {
    concrete: usdFigure({
      value: truckCost(num(order), terms).concreteUsd,
      formula: 'roundCent(orderCuYd * priceUsdPerCuYd)',
      inputs: { orderCuYd: order, priceUsdPerCuYd },
    }),
    ...additivesLine(order, loads, terms),
    'short-load-fee': usdFigure({
      value: shortLoadFeesUsd(num(order), terms),
      formula: { method: 'the fee once for each load below the limit' },
      inputs: { orderCuYd: order, truckCuYd: from.truckCuYd, ...shortLoadInputs(terms) },
    }),
    ...feeLine('fuel-fee', terms.fuelFee, truckCost(num(order), terms).fuelUsd, { order, loads }),
    ...feeLine('saturday-fee', terms.saturdayFee, truckCost(num(order), terms).saturdayUsd, { order, loads }),
    ...waitLine(order, terms, waiting),
  };
  return {
    least,
    'least-cost': usdFigure({
      value: truckOrderCostUsd(num(least), terms),
      formula: { method: 'concrete and all fees of the least order that is enough' },
      inputs: { leastCuYd: least, ...from, priceUsdPerCuYd, ...feeTerms },
    }),
    order,
    loads,
    ...loadFigures(order, terms),
    ...lines,
    cost: costFigure(lines, truckOrderCostUsd(num(order), terms)),
    'left-over': figure({
      // An order that is needed to the last digit may fall short by the noise of its sum.
      value: Math.max(0, num(order) - num(neededCuYd)),
      unit: 'yd3',
      decimals: 2,
      formula: 'max(0, orderCuYd - neededCuYd)',
      inputs: { orderCuYd: order, neededCuYd },
    }),
  };
}

function shortLoadInputs(terms: TruckTerms): Readonly<Record<string, FigureInput>> {
  return {
    shortLoadBelowCuYd: given(`${PATH}.short-load-below`, terms.shortLoadBelowCuYd, 'yd3'),
    shortLoadFeeUsd: given(`${PATH}.short-load-fee`, terms.shortLoadFeeUsd, '$/load'),
  };
}

function feeInputs(terms: TruckTerms): Readonly<Record<string, FigureInput>> {
  const { fuelFee, saturdayFee } = terms;
  return {
    ...shortLoadInputs(terms),
    ...(fuelFee === null ? {} : { fuelFeeUsd: rateInput('fuel-fee', fuelFee) }),
    ...(saturdayFee === null ? {} : { saturdayFeeUsd: rateInput('saturday-fee', saturdayFee) }),
  };
}

function rateInput(key: 'fuel-fee' | 'saturday-fee', rate: Rate): FigureInput {
  return rate.perUnit === 'load'
    ? given(`${PATH}.${key}`, rate.amountUsd, '$/load')
    : given(`${PATH}.${key}`, usdPerCuYd(rate), '$/yd3');
}

function feeLine<K extends 'fuel-fee' | 'saturday-fee'>(
  key: K,
  rate: Rate | null,
  value: Figure['value'],
  { order, loads }: { readonly order: Figure; readonly loads: Figure },
): { readonly [key in K]?: Figure } {
  if (rate === null) return {};
  const isByLoad = rate.perUnit === 'load';
  const line = usdFigure({
    value,
    formula: isByLoad ? 'roundCent(loadCount * feeUsd)' : 'roundCent(orderCuYd * feeUsd)',
    inputs: {
      ...(isByLoad ? { loadCount: loads } : { orderCuYd: order }),
      feeUsd: rateInput(key, rate),
    },
  });
  return { [key]: line } as { readonly [key in K]?: Figure };
}

/** Each additive is a fee of its own, rounded by itself. */
function additivesLine(
  orderCuYd: Figure,
  loadCount: Figure,
  { additives = {} }: TruckTerms,
): Pick<TruckFigures, 'additives'> {
  const priced = Object.entries(additives).flatMap(([id, rate]) =>
    rate === undefined ? [] : [{ id, rate }],
  );
  if (priced.length === 0) return {};
  const terms = priced.map(({ id, rate }) => {
    const name = inputName(id, 'Usd');
    const isByLoad = rate.perUnit === 'load';
    const path = `${PATH}.additives.${id}`;
    const price = isByLoad ? given(path, rate.amountUsd, '$/load') : given(path, usdPerCuYd(rate), '$/yd3');
    const order = { orderCuYd: num(orderCuYd), loadCount: num(loadCount) };
    return {
      value: feeUsd(rate, order),
      term: `roundCent(${isByLoad ? 'loadCount' : 'orderCuYd'} * ${name})`,
      inputs: { ...(isByLoad ? { loadCount } : { orderCuYd }), [name]: price },
    };
  });
  return {
    additives: usdFigure({
      value: terms.reduce<Decimal>((sumUsd, { value }) => sumUsd.plus(value), new Usd(0)),
      formula: terms.map(({ term }) => term).join(' + '),
      inputs: Object.assign({}, ...terms.map(({ inputs }) => inputs)) as Record<string, FigureInput>,
    }),
  };
}

function waitLine(
  orderCuYd: Figure,
  terms: TruckTerms,
  waiting: Waiting | null,
): Pick<TruckFigures, 'wait-fee'> {
  if (waiting === null || num(waiting.perYardHr) === 0) return {};
  return {
    'wait-fee': usdFigure({
      value: truckCost(num(orderCuYd), terms).waitUsd,
      formula: 'roundCent(orderCuYd * waitHrPerCuYd * waitUsdPerHr)',
      inputs: { orderCuYd, waitHrPerCuYd: waiting.perYardHr, waitUsdPerHr: waiting.usdPerHr },
    }),
  };
}

function loadFigures(
  orderCuYd: Figure,
  terms: TruckTerms,
): Pick<TruckFigures, 'largest-load' | 'load-before-last'> {
  const loads = truckLoadsCuYd(num(orderCuYd), terms);
  const one = (value: number, method: string) =>
    figure({ value, unit: 'yd3', decimals: 2, formula: { method }, inputs: { orderCuYd } });
  const beforeLastCuYd = loads.at(-2);
  return {
    'largest-load': one(loads[0] ?? 0, 'the largest of its loads'),
    ...(beforeLastCuYd === undefined || loads.length < 2
      ? {}
      : { 'load-before-last': one(beforeLastCuYd, 'the load before the last one') }),
  };
}

function usdFigure(made: Pick<Parameters<typeof figure>[0], 'value' | 'formula' | 'inputs'>): Figure {
  return figure({ ...made, unit: '$', decimals: 2, source: COMPANY_FIGURE, rounding: 'cent' });
}

const COST_NAMES = {
  concrete: 'concreteUsd',
  additives: 'additivesUsd',
  'short-load-fee': 'shortLoadUsd',
  'fuel-fee': 'fuelUsd',
  'saturday-fee': 'saturdayUsd',
  'wait-fee': 'waitUsd',
} as const;

function costFigure(lines: { readonly [K in keyof typeof COST_NAMES]?: Figure }, value: Figure['value']) {
  const inputs = Object.fromEntries(
    Object.entries(COST_NAMES).flatMap(([key, name]) => {
      const line = lines[key as keyof typeof COST_NAMES];
      return line === undefined ? [] : [[name, line]];
    }),
  );
  return figure({
    value,
    unit: '$',
    decimals: 2,
    formula: Object.keys(inputs).join(' + '),
    inputs,
    source: COMPANY_FIGURE,
  });
}

function leastFigure(neededCuYd: Figure, terms: TruckTerms, incrementCuYd: FigureInput): Figure {
  return figure({
    value: ceilToStep(num(neededCuYd), terms.incrementCuYd),
    unit: 'yd3',
    decimals: 2,
    formula: 'ceilStep(neededCuYd, incrementCuYd)',
    inputs: { neededCuYd, incrementCuYd },
    source: COMPANY_FIGURE,
    rounding: 'up',
  });
}

function orderFigure(
  leastCuYd: Figure,
  terms: TruckTerms,
  supplier: Readonly<Record<string, FigureInput>>,
): Figure {
  const value = cheapestTruckOrder(num(leastCuYd), terms);
  const shown = { value, unit: 'yd3', decimals: 2, source: COMPANY_FIGURE, rounding: 'up' } as const;
  if (value === num(leastCuYd)) return figure({ ...shown, formula: 'leastCuYd', inputs: { leastCuYd } });
  return figure({
    ...shown,
    formula: { method: 'of all orders up to a truck more, the one that costs least with its fees' },
    inputs: { leastCuYd, ...supplier },
  });
}

function loadsFigure(
  orderCuYd: Figure,
  terms: TruckTerms,
  { incrementCuYd, truckCuYd }: { readonly incrementCuYd: FigureInput; readonly truckCuYd: FigureInput },
): Figure {
  return figure({
    value: truckLoadsCuYd(num(orderCuYd), terms).length,
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(orderCuYd / floorStep(truckCuYd, incrementCuYd), 1)',
    inputs: { orderCuYd, truckCuYd, incrementCuYd },
    source: COMPANY_FIGURE,
    rounding: 'up',
  });
}

export function truckProblem({ truckCuYd, incrementCuYd }: TruckTerms): CoreProblem | null {
  if (truckCuYd >= incrementCuYd) return null;
  return {
    code: 'truck-below-increment',
    path: `${PATH}.truck`,
    parts: { truck: formatNumber(truckCuYd, 2), increment: formatNumber(incrementCuYd, 2) },
  };
}
