import { Decimal } from 'decimal.js';
import { COST_GROUPS } from '../../src/calculate/cost/index.ts';
import { num } from '../../src/calculate/figure.ts';
import { evaluateRules } from '../../src/calculate/findings/index.ts';
import { calcPrice, costOf, priceFromCost } from '../../src/calculate/price/index.ts';
import { type Price } from '../../src/calculate/price/money.ts';
import { splitPayments } from '../../src/calculate/price/payments.ts';
import { nextWorkdayOn, roundToCent, splitByLargestRemainder } from '../../src/units/index.ts';
import { crewOf, fig, usd } from '../calculate/crew/a-plan.ts';
import { shippedRules } from '../calculate/findings/shipped-rules.ts';
import { runChecks } from './load.ts';

/** Whether the shipped rules of a state have nothing against a deposit. */
function isAllowed(state: string, depositUsd: Decimal, totalUsd: Decimal): boolean {
  const figures = {
    price: {
      deposit: fig(depositUsd, '$'),
      'deposit-share': fig(depositUsd.dividedBy(totalUsd).toNumber(), 'ratio'),
    },
  };
  const rules = shippedRules(state);
  return evaluateRules({ rules, figures, tags: ['price'], acknowledged: [] }).findings.length === 0;
}

/** Searched cent by cent between what is allowed and what is not. */
function largestDeposit({ rules, price }: { rules: string; price: string }): string {
  const totalUsd = usd(price);
  let allowedCents = 0;
  let refusedCents = totalUsd.times(100).toNumber() + 1;
  while (refusedCents - allowedCents > 1) {
    const cents = Math.floor((allowedCents + refusedCents) / 2);
    if (isAllowed(rules, new Decimal(cents).dividedBy(100), totalUsd)) allowedCents = cents;
    else refusedCents = cents;
  }
  return new Decimal(allowedCents).dividedBy(100).toFixed(2);
}

/** A job of one group that costs $1,000,000 and is charged the markup on it, by way of the least charge. */
function marginOfMarkup({ markupPct }: { markupPct: number }): number {
  const costUsd = usd('1000000.00');
  const groups = Object.fromEntries(
    COST_GROUPS.map((group) => [group, fig(group === 'concrete' ? costUsd : usd('0'), '$')]),
  );
  const { figures } = calcPrice({
    cost: {
      groups: groups as Parameters<typeof calcPrice>[0]['cost']['groups'],
      materials: fig(usd('0'), '$'),
      total: fig(costUsd, '$'),
    },
    pricing: {
      overheadRatio: 0,
      marginRatio: 0,
      taxRatio: 0,
      taxOn: 'nothing',
      minimumChargeUsd: roundToCent(costUsd.times(1 + markupPct / 100)),
      payments: [],
    },
  });
  return num(figures['margin-share']) * 100;
}

function priceOf(costUsd: string, overheadPct: number, marginPct: number): Decimal {
  const shares = { overheadRatio: overheadPct / 100, marginRatio: marginPct / 100 };
  return priceFromCost(costOf(fig(usd(costUsd), '$')), shares);
}

runChecks('contracts', {
  'largest deposit without a finding': largestDeposit,
  'first payment of three thirds': ({ price }: { price: string }) =>
    (splitPayments(usd(price) as Price, [1 / 3, 1 / 3, 1 / 3])[0] ?? usd('-1')).toFixed(2),
  'margin of a markup': marginOfMarkup,
  'markup of a margin': ({ marginPct }: { marginPct: number }) =>
    (priceOf('1000000.00', 0, marginPct).toNumber() / 1_000_000 - 1) * 100,
  'price of a cost': ({
    cost,
    overheadPct,
    marginPct,
  }: {
    cost: string;
    overheadPct: number;
    marginPct: number;
  }) => priceOf(cost, overheadPct, marginPct).toFixed(2),
  'to the cent': ({ amount }: { amount: string }) => roundToCent(usd(amount)).toFixed(2),
  'equal parts': ({ total, parts }: { total: string; parts: number }) =>
    splitByLargestRemainder(
      usd(total),
      Array.from({ length: parts }, () => usd('1')),
    ).map((part) => part.toFixed(2)),
  'workday after': ({ from, days }: { from: string; days: number }) =>
    Array.from({ length: days }).reduce<string>((on) => nextWorkdayOn(on), from),
  'plan of a pour': ({ starts }: { starts: string }) => {
    const { days, openings } = crewOf({
      plan: { poursOn: null, startsOn: starts, crew: ['ana', 'ben', 'cal'] },
    }).data;
    const onPhase = (phase: string) =>
      days.find((day) => day.kind === 'work' && day.phase === phase)?.on ?? 'never';
    return [
      onPhase('pour'),
      onPhase('strip-and-clean'),
      openings?.walkOn ?? 'never',
      openings?.driveOn ?? 'never',
    ];
  },
});
