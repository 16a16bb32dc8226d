import type { Decimal } from 'decimal.js';
import type { CoreProblem } from '../../problems/index.ts';
import { roundToCent, Usd } from '../../units/index.ts';
import { COST_GROUPS, type CostGroup } from '../cost/index.ts';
import { COMPANY_FIGURE, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Company } from '../job.ts';
import { inputKey, inputsOf, sumExpression, sumOfUsdParts } from '../sum-figure.ts';
import type { TopicResult } from '../topic.ts';
import { costOf, minimumChargeAddition, type Price, priceFromCost, type Shares, taxUsd } from './money.ts';
import { splitPayments } from './payments.ts';

export { type Cost, costOf, othersPrice, type Price, priceFromCost, type Shares } from './money.ts';

export type PriceFigures = {
  readonly lines: Readonly<Record<CostGroup, Figure>>;
  readonly 'minimum-charge-addition': Figure;
  readonly tax: Figure;
  readonly total: Figure;
  readonly overhead: Figure;
  readonly margin: Figure;
  /** What is really left, as a share of the price before tax, as the company's own shares are. */
  readonly 'margin-share': Figure;
  readonly deposit: Figure;
  readonly 'deposit-share': Figure;
  /** payment-1, payment-2, ... in the order of the company's steps. */
  readonly payments: Readonly<Record<string, Figure>>;
};

export type PriceData = {
  readonly lines: readonly { readonly group: CostGroup; readonly price: Price }[];
  readonly minimumChargeAddition: Price;
  readonly tax: Price;
  readonly total: Price;
  readonly payments: readonly {
    readonly label: Company['pricing']['payments'][number]['label'];
    readonly price: Price;
  }[];
};

export type PriceResult = TopicResult<PriceFigures, PriceData>;

/** Shares of payments may miss 1 by the noise of adding doubles. */
const NOISE = 1e-9;

/**
 * What the homeowner pays: a price for each group, the addition up to the least charge, tax, the
 * total of these lines as shown, and the payments that add up to it.
 *
 * Overhead and margin are shares of the price, not markups on the cost.
 */
export function calcPrice(input: {
  readonly cost: {
    readonly groups: Readonly<Record<CostGroup, Figure>>;
    readonly materials: Figure;
    readonly total: Figure;
  };
  readonly pricing: Pick<
    Company['pricing'],
    'overheadRatio' | 'marginRatio' | 'taxRatio' | 'taxOn' | 'minimumChargeUsd' | 'payments'
  >;
}): PriceResult {
  const { cost, pricing } = input;
  const problems = [...shareProblems(pricing), ...paymentProblems(pricing.payments)];
  // With the problem nothing is written; prices at cost let the rest run and report.
  const shares: Shares = shareProblems(pricing).length === 0 ? pricing : { overheadRatio: 0, marginRatio: 0 };

  const lines = Object.fromEntries(
    COST_GROUPS.map((group) => [group, groupPrice(cost.groups[group], shares)]),
  ) as Record<CostGroup, Figure>;
  const lineParts = COST_GROUPS.map((group) => ({
    key: inputKey('price', group, 'Usd'),
    input: lines[group],
  }));
  const addition = additionFigure(lineParts, pricing.minimumChargeUsd);
  const beforeTax = [...lineParts, { key: 'additionUsd', input: addition }];
  const tax = taxFigure(pricing, cost.materials, beforeTax);
  const total = sumOfUsdParts([...beforeTax, { key: 'taxUsd', input: tax }]);
  const payments = paymentFigures(total, pricing.payments);
  const deposit = payments['payment-1'] ?? total;
  return {
    figures: {
      lines,
      'minimum-charge-addition': addition,
      tax,
      total,
      ...whatIsLeft({ total, tax, cost: cost.total, shares }),
      ...depositFigures(deposit, total),
      payments,
    },
    data: {
      lines: COST_GROUPS.map((group) => ({ group, price: priceOf(lines[group]) })),
      minimumChargeAddition: priceOf(addition),
      tax: priceOf(tax),
      total: priceOf(total),
      payments: pricing.payments.map(({ label }, index) => ({
        label,
        price: priceOf(payments[`payment-${index + 1}`] ?? total),
      })),
    },
    problems,
  };
}

function shareProblems(shares: Shares): readonly CoreProblem[] {
  const { overheadRatio, marginRatio } = shares;
  if (new Usd(overheadRatio).plus(marginRatio).lt(1)) return [];
  const parts = { overhead: String(overheadRatio), margin: String(marginRatio) };
  return [{ code: 'overhead-and-margin-take-all', path: 'company.pricing.margin', parts }];
}

function paymentProblems(payments: Company['pricing']['payments']): readonly CoreProblem[] {
  const sumRatio = payments.reduce((sum, { shareRatio }) => sum + shareRatio, 0);
  if (Math.abs(sumRatio - 1) <= NOISE) return [];
  const parts = { sum: new Usd(sumRatio).times(100).toDecimalPlaces(4).toString() };
  return [{ code: 'payments-not-whole', path: 'company.pricing.payments', parts }];
}

function shareInputs({ overheadRatio, marginRatio }: Shares) {
  return {
    overheadRatio: given('company.pricing.overhead', overheadRatio, 'ratio'),
    marginRatio: given('company.pricing.margin', marginRatio, 'ratio'),
  };
}

function groupPrice(groupCost: Figure, shares: Shares): Figure {
  return usdFigure(
    priceFromCost(costOf(groupCost), shares),
    'roundCent(costUsd / (1 - overheadRatio - marginRatio))',
    { costUsd: groupCost, ...shareInputs(shares) },
  );
}

function additionFigure(
  lines: readonly { readonly key: string; readonly input: Figure }[],
  minimumUsd: Decimal,
): Figure {
  const sum = lines.reduce<Decimal>((sumUsd, { input }) => sumUsd.plus(input.value), new Usd(0)) as Price;
  return usdFigure(minimumChargeAddition(sum, minimumUsd), `max(0, minimumUsd - (${sumExpression(lines)}))`, {
    ...inputsOf(lines),
    minimumUsd: given('company.pricing.minimum-charge', minimumUsd, '$'),
  });
}

function taxFigure(
  pricing: Pick<Company['pricing'], 'taxRatio' | 'taxOn'>,
  materials: Figure,
  beforeTax: readonly { readonly key: string; readonly input: Figure }[],
): Figure {
  const taxRatio = given('company.pricing.tax', pricing.taxRatio, 'ratio');
  switch (pricing.taxOn) {
    case 'nothing':
      return usdFigure(new Usd(0), '0', {});
    case 'materials':
      return usdFigure(
        taxUsd(new Usd(materials.value), pricing.taxRatio),
        'roundCent(materialsUsd * taxRatio)',
        {
          materialsUsd: materials,
          taxRatio,
        },
      );
    case 'price': {
      const sumUsd = beforeTax.reduce<Decimal>((sum, { input }) => sum.plus(input.value), new Usd(0));
      return usdFigure(
        taxUsd(sumUsd, pricing.taxRatio),
        `roundCent((${sumExpression(beforeTax)}) * taxRatio)`,
        {
          ...inputsOf(beforeTax),
          taxRatio,
        },
      );
    }
  }
}

/** overhead = its share of the price before tax; margin = what is left, also as a share of that price. */
function whatIsLeft(made: { total: Figure; tax: Figure; cost: Figure; shares: Shares }) {
  const { total, tax, cost, shares } = made;
  const beforeTaxUsd = new Usd(total.value).minus(tax.value);
  const overhead = usdFigure(
    roundToCent(beforeTaxUsd.times(shares.overheadRatio)),
    'roundCent((totalUsd - taxUsd) * overheadRatio)',
    { totalUsd: total, taxUsd: tax, overheadRatio: shareInputs(shares).overheadRatio },
  );
  const leftUsd = beforeTaxUsd.minus(cost.value).minus(overhead.value);
  const margin = usdFigure(leftUsd, 'totalUsd - taxUsd - costUsd - overheadUsd', {
    totalUsd: total,
    taxUsd: tax,
    costUsd: cost,
    overheadUsd: overhead,
  });
  const share = figure({
    value: beforeTaxUsd.isZero() ? 0 : num(margin) / (num(total) - num(tax)),
    unit: 'ratio',
    decimals: 4,
    formula: beforeTaxUsd.isZero() ? '0' : 'marginUsd / (totalUsd - taxUsd)',
    inputs: { marginUsd: margin, totalUsd: total, taxUsd: tax },
  });
  return { overhead, margin, 'margin-share': share };
}

/** The first payment, and its share of the total; 0 where the total is $0. */
function depositFigures(deposit: Figure, total: Figure) {
  const amount = usdFigure(new Usd(deposit.value), 'firstPaymentUsd', { firstPaymentUsd: deposit });
  const isFree = new Usd(total.value).isZero();
  const share = figure({
    value: isFree ? 0 : num(amount) / num(total),
    unit: 'ratio',
    decimals: 4,
    formula: isFree ? '0' : 'depositUsd / totalUsd',
    inputs: { depositUsd: amount, totalUsd: total },
  });
  return { deposit: amount, 'deposit-share': share };
}

function paymentFigures(total: Figure, payments: Company['pricing']['payments']): Record<string, Figure> {
  const amounts = splitPayments(
    priceOf(total),
    payments.map(({ shareRatio }) => shareRatio),
  );
  const shareParts = payments.map(({ shareRatio }, index) => ({
    key: `share${index + 1}Ratio`,
    input: given(`company.pricing.payments.${index}.share`, shareRatio, 'ratio'),
  }));
  const method =
    'the first payment down to the cent; the rest of the total by largest remainder, so that all add up to it';
  return Object.fromEntries(
    amounts.map((amountUsd, index) => [
      `payment-${index + 1}`,
      figure({
        value: amountUsd,
        unit: '$',
        decimals: 2,
        formula: { method },
        inputs: { totalUsd: total, ...inputsOf(shareParts) },
        source: COMPANY_FIGURE,
        rounding: 'cent',
      }),
    ]),
  );
}

function usdFigure(value: Decimal, formula: string, inputs: Readonly<Record<string, FigureInput>>): Figure {
  return figure({ value, unit: '$', decimals: 2, formula, inputs, source: COMPANY_FIGURE, rounding: 'cent' });
}

function priceOf(priceFigure: Figure): Price {
  return new Usd(priceFigure.value) as Price;
}
