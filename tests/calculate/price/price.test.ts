import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COST_GROUPS } from '../../../src/calculate/cost/index.ts';
import { num } from '../../../src/calculate/figure.ts';
import { calcPrice, costOf, priceFromCost } from '../../../src/calculate/price/index.ts';
import { type Price, taxUsd } from '../../../src/calculate/price/money.ts';
import { splitPayments } from '../../../src/calculate/price/payments.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { sumUsd, Usd } from '../../../src/units/index.ts';
import { fig, usd } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { propertyRuns } from '../slabs.ts';

type Pricing = Parameters<typeof calcPrice>[0]['pricing'];

const steps = (...shareRatios: readonly number[]) =>
  shareRatios.map((shareRatio, index) => ({ label: `Step ${index + 1}` as PublicText, shareRatio }));

function pricing(changed: Partial<Pricing> = {}): Pricing {
  return {
    overheadRatio: 0.15,
    marginRatio: 0.1,
    taxRatio: 0.06,
    taxOn: 'nothing',
    minimumChargeUsd: usd('0'),
    payments: steps(0.3, 0.4, 0.3),
    ...changed,
  };
}

/** The five groups cost so much, and the materials so much. */
function price(groupsUsd: readonly string[], changed: Partial<Pricing> = {}, materialsUsd = '2000.00') {
  const groups = Object.fromEntries(
    COST_GROUPS.map((group, index) => [group, fig(usd(groupsUsd[index] ?? '0'), '$')]),
  ) as Parameters<typeof calcPrice>[0]['cost']['groups'];
  const total = fig(sumUsd(groupsUsd.map((amount) => usd(amount))), '$');
  return calcPrice({
    cost: { groups, materials: fig(usd(materialsUsd), '$'), total },
    pricing: pricing(changed),
  });
}

const cents = (value: number | Decimal) => new Decimal(value).toFixed(2);

describe('price', () => {
  test('a price covers its cost and the shares: 7,500 / (1 - 0.15 - 0.10) = 10,000', () => {
    const { figures } = price(['3000.00', '1500.00', '1500.00', '1200.00', '300.00']);
    expect(COST_GROUPS.map((group) => cents(figures.lines[group].value))).toEqual([
      '4000.00',
      '2000.00',
      '2000.00',
      '1600.00',
      '400.00',
    ]);
    expect(cents(figures.total.value)).toBe('10000.00');
    expect(cents(figures.overhead.value)).toBe('1500.00');
    expect(cents(figures.margin.value)).toBe('1000.00');
    expect(figures['margin-share'].value).toBe(0.1);
    expect(Object.values(figures.payments).map(({ value }) => cents(value))).toEqual([
      '3000.00',
      '4000.00',
      '3000.00',
    ]);
    expect(cents(figures.deposit.value)).toBe('3000.00');
    expect(figures['deposit-share'].value).toBe(0.3);
  });

  test('a small job comes up to the least charge', () => {
    const { figures } = price(['300.00'], { minimumChargeUsd: usd('650.00') });
    expect(cents(figures.lines['tear-out-and-haul'].value)).toBe('400.00');
    expect(cents(figures['minimum-charge-addition'].value)).toBe('250.00');
    expect(cents(figures.total.value)).toBe('650.00');
    // 650 - 300 - 15 % of 650
    expect(cents(figures.margin.value)).toBe('252.50');
    expect(
      cents(price(['750.00'], { minimumChargeUsd: usd('650.00') }).figures['minimum-charge-addition'].value),
    ).toBe('0.00');
  });

  test('tax on materials, on the price with the addition, on nothing', () => {
    const taxed = (taxOn: Pricing['taxOn']) =>
      price(['300.00'], { taxOn, minimumChargeUsd: usd('650.00') }, '123.45').figures;
    expect(cents(taxed('materials').tax.value)).toBe('7.41'); // 123.45 x 0.06 = 7.407
    expect(cents(taxed('price').tax.value)).toBe('39.00');
    expect(cents(taxed('price').total.value)).toBe('689.00');
    expect(cents(taxed('price').margin.value)).toBe('252.50');
    expect(cents(taxed('nothing').tax.value)).toBe('0.00');
    expect(taxUsd(usd('0.25'), 0.06).toFixed(2)).toBe('0.02'); // 0.015, half up
  });

  test('overhead and margin that take everything, and payments that do not make a whole, are problems', () => {
    expect(price(['100.00'], { overheadRatio: 0.6, marginRatio: 0.4 }).problems).toEqual([
      {
        code: 'overhead-and-margin-take-all',
        path: 'company.pricing.margin',
        parts: { overhead: '0.6', margin: '0.4' },
      },
    ]);
    expect(price(['100.00'], { payments: steps(0.3, 0.3, 0.3) }).problems).toEqual([
      { code: 'payments-not-whole', path: 'company.pricing.payments', parts: { sum: '90' } },
    ]);
    expect(price(['100.00'], { payments: steps(1 / 3, 1 / 3, 1 / 3) }).problems).toEqual([]);
    const cost = costOf(fig(usd('1'), '$'));
    expect(() => priceFromCost(cost, { overheadRatio: 0.6, marginRatio: 0.4 })).toThrow(RangeError);
    expect(() => priceFromCost(cost, { overheadRatio: -0.1, marginRatio: 0.4 })).toThrow(RangeError);
    expect(() => priceFromCost(cost, { overheadRatio: Number.NaN, marginRatio: 0.4 })).toThrow();
  });

  test('a deposit is cut down: a third of 10,000.00 is 3,333.33, of 9,600.00 it is 3,200.00', () => {
    const third = (totalUsd: string) =>
      splitPayments(usd(totalUsd) as Price, [1 / 3, 1 / 3, 1 / 3]).map((part) => part.toFixed(2));
    expect(third('10000.00')).toEqual(['3333.33', '3333.34', '3333.33']);
    expect(third('9600.00')).toEqual(['3200.00', '3200.00', '3200.00']);
    expect(splitPayments(usd('10.00') as Price, [1]).map((part) => part.toFixed(2))).toEqual(['10.00']);
  });

  testExpressions('price', price(['3011.37', '1512.91', '1499.99', '0.01', '33.33']).figures, 12);
  testExpressions(
    'price with tax',
    price(['311.37', '12.91'], { taxOn: 'price', minimumChargeUsd: usd('900.00') }).figures,
    12,
  );
  testExpressions(
    'price with tax on materials',
    price(['311.37', '12.91'], { taxOn: 'materials' }).figures,
    12,
  );

  const money = fc
    .integer({ min: 1, max: 3_000_000 })
    .map((count) => new Decimal(count).dividedBy(100).toFixed(2));
  const shares = fc
    .tuple(fc.integer({ min: 0, max: 49 }), fc.integer({ min: 0, max: 49 }))
    .map(([overheadPct, marginPct]) => ({ overheadRatio: overheadPct / 100, marginRatio: marginPct / 100 }));
  const taxOn = fc.constantFrom('nothing' as const, 'materials' as const, 'price' as const);
  const parts = fc.array(fc.integer({ min: 1, max: 99 }), { minLength: 1, maxLength: 6 }).map((weights) => {
    const whole = weights.reduce((sum, weight) => sum + weight, 0);
    return steps(...weights.map((weight) => weight / whole));
  });

  test('property: lines add to the total, payments add to it, no payment is below 0', () => {
    fc.assert(
      fc.property(
        fc.array(money, { minLength: 5, maxLength: 5 }),
        shares,
        taxOn,
        parts,
        money,
        (groups, of, on, payments, least) => {
          const { figures, data, problems } = price(groups, {
            ...of,
            taxOn: on,
            payments,
            minimumChargeUsd: usd(least),
          });
          expect(problems).toEqual([]);
          const lines = [...data.lines.map((line) => line.price), data.minimumChargeAddition, data.tax];
          expect(sumUsd(lines).eq(figures.total.value)).toBe(true);
          expect(sumUsd(data.payments.map((payment) => payment.price)).eq(data.total)).toBe(true);
          for (const payment of data.payments) expect(payment.price.gte(0)).toBe(true);
          expect(new Usd(figures.total.value).minus(figures.tax.value).gte(least)).toBe(true);
          const firstRatio = payments[0]?.shareRatio ?? 1;
          if (payments.length > 1)
            expect(num(figures['deposit-share'])).toBeLessThanOrEqual(firstRatio * (1 + 1e-9));
        },
      ),
      propertyRuns,
    );
  });

  test('property: price is at least cost, and the margin left is the margin asked for', () => {
    fc.assert(
      fc.property(fc.array(money, { minLength: 5, maxLength: 5 }), shares, taxOn, (groups, of, on) => {
        const { figures, data } = price(groups, { ...of, taxOn: on });
        data.lines.forEach(({ price: lineUsd }, index) => expect(lineUsd.gte(groups[index] ?? 0)).toBe(true));
        // Each of five lines and the overhead are off by half a cent at most.
        const beforeTaxUsd = num(figures.total) - num(figures.tax);
        expect(Math.abs(num(figures['margin-share']) - of.marginRatio) * beforeTaxUsd).toBeLessThanOrEqual(
          0.03 + 1e-6,
        );
      }),
      propertyRuns,
    );
  });
});
