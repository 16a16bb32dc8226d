import { rationalToNumber, Usd } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { BagSupplier } from '../job.ts';
import { bagCount, baggedCostUsd } from './bags.ts';

export type BagFigures = {
  readonly count: Figure;
  readonly weight: Figure;
  readonly 'mixing-hours': Figure;
  readonly cost: Figure;
};

export function bagFigures(neededCuYd: Figure, bagged: BagSupplier, laborUsdPerHr: Figure): BagFigures {
  const path = 'company.suppliers.bagged';
  const { price, mixing } = bagged;
  if (mixing.unit !== 'each') throw new RangeError(`mixing is a pace of bags, got ${mixing.text}`);
  if (price.perUnit !== 'bag' && price.perUnit !== 'each')
    throw new RangeError(`bags are priced each, got ${price.text}`);

  const countValue = bagCount({ neededCuYd: num(neededCuYd), yieldCuFt: bagged.yieldCuFt });
  const bagsPerHr = rationalToNumber(mixing.perHour);
  const count = figure({
    value: countValue,
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(neededCuYd * 27 / yieldCuFt, 1)',
    inputs: { neededCuYd, yieldCuFt: given(`${path}.yield`, bagged.yieldCuFt, 'cu ft') },
    source: COMPANY_FIGURE,
    rounding: 'up',
  });
  const mixingHr = figure({
    value: countValue / bagsPerHr,
    unit: 'h',
    decimals: 1,
    formula: 'bagCount / bagsPerHr',
    inputs: { bagCount: count, bagsPerHr: given(`${path}.mixing`, bagsPerHr, 'per h') },
    source: COMPANY_FIGURE,
  });
  return {
    count,
    weight: figure({
      value: countValue * bagged.weightLb,
      unit: 'lb',
      decimals: 0,
      formula: 'bagCount * bagLb',
      inputs: { bagCount: count, bagLb: given(`${path}.weight`, bagged.weightLb, 'lb') },
      source: COMPANY_FIGURE,
    }),
    'mixing-hours': mixingHr,
    cost: figure({
      value: baggedCostUsd({
        bagCount: countValue,
        usdPerBag: price.amountUsd,
        mixingHr: num(mixingHr),
        laborUsdPerHr: new Usd(laborUsdPerHr.value),
      }),
      unit: '$',
      decimals: 2,
      formula: 'roundCent(bagCount * bagUsd + mixingHr * laborUsdPerHr)',
      inputs: {
        bagCount: count,
        bagUsd: given(`${path}.price`, price.amountUsd, '$/each'),
        mixingHr,
        laborUsdPerHr,
      },
      source: COMPANY_FIGURE,
      rounding: 'cent',
    }),
  };
}
