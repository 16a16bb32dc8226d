import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addR,
  compareR,
  divideR,
  formatQuantity,
  multiplyR,
  parseQuantity,
  type Quantity,
  type Rational,
  rational,
  rationalFromDecimalText,
  rationalToNumber,
  roundToCent,
  splitByLargestRemainder,
  subtractR,
  sumUsd,
  Usd,
} from '../../src/units/index.ts';
import { FEET_INCHES, ONE_IN, QUANTITY_KINDS, UNIT_ROWS } from '../../src/units/unit-table.ts';
import { runCount } from '../support/property-runs.ts';

/** Set PROPERTY_SEED to repeat a run. */
const seed = Number(process.env['PROPERTY_SEED'] ?? Date.now() % 2 ** 31);
const run = { seed, numRuns: runCount(200) };
console.log(`units: properties run with PROPERTY_SEED=${seed}`);

const decimalAmount = fc
  .tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: 0, max: 6 }))
  .map(([digits, places]) => rational(BigInt(digits), 10n ** BigInt(places)));
const fractionAmount = fc
  .tuple(fc.integer({ min: -99_999, max: 99_999 }), fc.integer({ min: 1, max: 96 }))
  .map(([n, d]) => rational(n, d));
const amount = fc.oneof(decimalAmount, fractionAmount);

const PREVIEW = (value: Rational) => `${value.n}/${value.d}`;

describe('written again and read again, a quantity keeps its exact value and unit', () => {
  test.each(QUANTITY_KINDS)('%s, in each of its units', (kind) => {
    const rows = UNIT_ROWS.filter((row) => row.kind === kind);
    fc.assert(
      fc.property(fc.constantFrom(...rows), amount, (row, number) => {
        const value = addR(multiplyR(number, row.base), row.baseAtZero);
        const quantity: Quantity = { kind, value, unit: row.symbol, text: '' };
        const text = formatQuantity(quantity);
        expect(parseQuantity(kind, text)).toEqual({ ok: true, value: { ...quantity, text } });
      }),
      run,
    );
  });

  test('feet and inches', () => {
    fc.assert(
      fc.property(amount, (value) => {
        const text = formatQuantity({ kind: 'length', value, unit: FEET_INCHES, text: '' });
        expect(parseQuantity('length', text)).toEqual({
          ok: true,
          value: { kind: 'length', value, unit: FEET_INCHES, text },
        });
      }),
      run,
    );
  });

  test('a slope of one in n keeps its value, whatever the unit it has to take', () => {
    fc.assert(
      fc.property(amount, (value) => {
        const result = parseQuantity(
          'slope',
          formatQuantity({ kind: 'slope', value, unit: ONE_IN, text: '' }),
        );
        expect(result.ok && PREVIEW(result.value.value)).toBe(PREVIEW(value));
      }),
      run,
    );
  });
});

test('every form that is suggested is taken, whatever was written', () => {
  const scrap = fc.constantFrom(
    ...`0 1 12 3/8 .5 1,2 1,250 . - : ' " ft in m mm sq cu per / % F C lb tons yd3 h inches lbs`.split(' '),
  );
  const text = fc.oneof(
    fc.array(scrap, { maxLength: 5 }).map((scraps) => scraps.join(' ')),
    fc.array(scrap, { maxLength: 5 }).map((scraps) => scraps.join('')),
    fc.string({ maxLength: 12 }),
  );
  fc.assert(
    fc.property(fc.constantFrom(...QUANTITY_KINDS), text, (kind, written) => {
      const result = parseQuantity(kind, written);
      if (result.ok) return;
      expect(result.forms.length).toBeGreaterThan(0);
      for (const form of result.forms) expect(parseQuantity(kind, form), form).toMatchObject({ ok: true });
    }),
    { seed, numRuns: runCount(2000) },
  );
});

describe('fractions', () => {
  test('what is added can be taken away, and what is multiplied divided', () => {
    fc.assert(
      fc.property(amount, amount, (one, other) => {
        expect(compareR(subtractR(addR(one, other), other), one)).toBe(0);
        if (other.n !== 0n) expect(compareR(divideR(multiplyR(one, other), other), one)).toBe(0);
      }),
      run,
    );
  });

  test('the number is the nearest double, beyond 2^53 too', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 }), (value) => {
        const text = new Usd(value).toFixed();
        expect(rationalToNumber(rationalFromDecimalText(text))).toBe(value === 0 ? 0 : value);
      }),
      run,
    );
  });
});

describe('money', () => {
  test('shares are whole cents, add up exactly, and miss their part by less than a cent', () => {
    const cents = fc.integer({ min: -10_000_000, max: 10_000_000 });
    const weights = fc
      .array(fc.integer({ min: 0, max: 100_000 }), { minLength: 1, maxLength: 9 })
      .filter((list) => list.some((weight) => weight > 0));
    fc.assert(
      fc.property(cents, weights, (total, list) => {
        const totalUsd = new Usd(total).dividedBy(100);
        const sum = list.reduce((all, weight) => all + weight, 0);
        const shares = splitByLargestRemainder(
          totalUsd,
          list.map((weight) => new Usd(weight)),
        );
        expect(sumUsd(shares).minus(totalUsd).isZero()).toBe(true);
        for (const [index, shareUsd] of shares.entries()) {
          expect(shareUsd.eq(roundToCent(shareUsd))).toBe(true);
          const partUsd = totalUsd.times(list[index] ?? 0).dividedBy(sum);
          expect(shareUsd.minus(partUsd).abs().lt('0.01')).toBe(true);
        }
      }),
      run,
    );
  });
});
