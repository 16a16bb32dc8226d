import type { CoreProblem } from '../../problems/index.ts';
import { ceilToStep, formatNumber } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, figure, type Given, given, num } from '../figure.ts';
import {
  cheapestTruckOrder,
  shortLoadFeesUsd,
  type TruckTerms,
  truckLoadsCuYd,
  truckOrderCostUsd,
  usdPerCuYd,
} from './truck.ts';

export type TruckFigures = {
  readonly order: Figure;
  readonly loads: Figure;
  readonly 'short-load-fee': Figure;
  readonly cost: Figure;
};

export function truckFigures(neededCuYd: Figure, terms: TruckTerms): TruckFigures {
  const path = 'company.suppliers.concrete';
  const incrementCuYd = given(`${path}.increment`, terms.incrementCuYd, 'yd3');
  const truckCuYd = given(`${path}.truck`, terms.truckCuYd, 'yd3');
  const priceUsdPerCuYd = given(`${path}.price`, usdPerCuYd(terms.price), '$/yd3');
  const feeTerms = {
    shortLoadBelowCuYd: given(`${path}.short-load-below`, terms.shortLoadBelowCuYd, 'yd3'),
    shortLoadFeeUsd: given(`${path}.short-load-fee`, terms.shortLoadFeeUsd, '$/load'),
  };
  const order = orderFigure(neededCuYd, terms, { incrementCuYd, truckCuYd, priceUsdPerCuYd, ...feeTerms });
  const orderCuYd = num(order);
  const fee = figure({
    value: shortLoadFeesUsd(orderCuYd, terms),
    unit: '$',
    decimals: 2,
    formula: { method: 'the fee once for each load below the limit' },
    inputs: { orderCuYd: order, truckCuYd, ...feeTerms },
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
  return {
    order,
    loads: figure({
      value: truckLoadsCuYd(orderCuYd, terms).length,
      unit: 'each',
      decimals: 0,
      formula: 'ceilStep(orderCuYd / floorStep(truckCuYd, incrementCuYd), 1)',
      inputs: { orderCuYd: order, truckCuYd, incrementCuYd },
      source: COMPANY_FIGURE,
      rounding: 'up',
    }),
    'short-load-fee': fee,
    cost: figure({
      value: truckOrderCostUsd(orderCuYd, terms),
      unit: '$',
      decimals: 2,
      formula: 'roundCent(orderCuYd * priceUsdPerCuYd + shortLoadFeesUsd)',
      inputs: { orderCuYd: order, priceUsdPerCuYd, shortLoadFeesUsd: fee },
      source: COMPANY_FIGURE,
      rounding: 'cent',
    }),
  };
}

function orderFigure(
  neededCuYd: Figure,
  terms: TruckTerms,
  supplier: Readonly<Record<string, Given>> & { readonly incrementCuYd: Given },
): Figure {
  const value = cheapestTruckOrder(num(neededCuYd), terms);
  const shown = { value, unit: 'yd3', decimals: 2, source: COMPANY_FIGURE, rounding: 'up' } as const;
  if (value === ceilToStep(num(neededCuYd), terms.incrementCuYd)) {
    return figure({
      ...shown,
      formula: 'ceilStep(neededCuYd, incrementCuYd)',
      inputs: { neededCuYd, incrementCuYd: supplier.incrementCuYd },
    });
  }
  return figure({
    ...shown,
    formula: {
      method: 'more than needed, because it costs less: no load is left that a short-load fee is due for',
    },
    inputs: { neededCuYd, ...supplier },
  });
}

export function truckProblem({ truckCuYd, incrementCuYd }: TruckTerms): CoreProblem | null {
  if (truckCuYd >= incrementCuYd) return null;
  return {
    code: 'truck-below-increment',
    path: 'company.suppliers.concrete.truck',
    parts: { truck: formatNumber(truckCuYd, 2), increment: formatNumber(incrementCuYd, 2) },
  };
}
