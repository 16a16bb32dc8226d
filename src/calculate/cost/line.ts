import type { Decimal } from 'decimal.js';
import type { CoreProblem } from '../../problems/index.ts';
import { type Rate, type RateUnit, roundToCent, Usd } from '../../units/index.ts';
import {
  COMPANY_FIGURE,
  type Figure,
  type FigureInput,
  type FigureUnit,
  figure,
  type Given,
  given,
} from '../figure.ts';
import type { CostGroup, CostKind } from './groups.ts';

export type CostLine = {
  readonly name: string;
  readonly group: CostGroup;
  readonly kind: CostKind;
  readonly cost: Figure;
};
export type Lines = { readonly lines: readonly CostLine[]; readonly problems: readonly CoreProblem[] };

/**
 * quantity x price, rounded once, half up to the cent.
 *
 * @param line.quantity As a double; taken at the digits it prints with.
 * @param line.priceUsd Price of one [$], not rounded.
 */
export function lineCostUsd(line: { quantity: number | Decimal; priceUsd: Decimal }): Decimal {
  return roundToCent(new Usd(line.quantity).times(line.priceUsd));
}

/** A line of so many at a price; none where there are none. */
export function productLine(made: {
  readonly name: string;
  readonly group: CostGroup;
  readonly kind: CostKind;
  readonly quantity: { readonly key: string; readonly input: FigureInput };
  readonly price: { readonly key: string; readonly input: Figure | Given };
}): readonly CostLine[] {
  const { name, group, kind, quantity, price } = made;
  if (new Usd(quantity.input.value).isZero()) return [];
  const cost = figure({
    value: lineCostUsd({ quantity: quantity.input.value, priceUsd: new Usd(price.input.value) }),
    unit: '$',
    decimals: 2,
    formula: `roundCent(${quantity.key} * ${price.key})`,
    inputs: { [quantity.key]: quantity.input, [price.key]: price.input },
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
  return [{ name, group, kind, cost }];
}

/** An amount that stands, rounded to the cent; none where it is $0. */
export function amountLine(made: {
  readonly name: string;
  readonly group: CostGroup;
  readonly kind: CostKind;
  readonly amount: FigureInput;
}): readonly CostLine[] {
  const { name, group, kind, amount } = made;
  const amountUsd = new Usd(amount.value);
  if (amountUsd.isZero()) return [];
  const cost = figure({
    value: roundToCent(amountUsd),
    unit: '$',
    decimals: 2,
    formula: 'roundCent(amountUsd)',
    inputs: { amountUsd: amount },
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
  return [{ name, group, kind, cost }];
}

/** The price of a rate as an input. */
export function priceOf(path: string, rate: Rate, unit: FigureUnit): Given {
  return given(path, rate.amountUsd, unit);
}

/** A problem where a rate is not for one of the units the line can count. */
export function rateUnitProblems(
  path: string,
  rate: Rate,
  allowed: readonly RateUnit[],
): readonly CoreProblem[] {
  if (allowed.includes(rate.perUnit)) return [];
  return [{ code: 'rate-unit', path, parts: { unit: rate.perUnit, wanted: allowed.join(', ') } }];
}

export function joinLines(parts: readonly Lines[]): Lines {
  return { lines: parts.flatMap(({ lines }) => lines), problems: parts.flatMap(({ problems }) => problems) };
}
