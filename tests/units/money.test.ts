import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import {
  floorToCent,
  formatMoney,
  type PaceUnit,
  parseMoney,
  parsePace,
  parseRate,
  type RateUnit,
  roundToCent,
  splitByLargestRemainder,
  sumUsd,
  Usd,
} from '../../src/units/index.ts';

describe('parseMoney', () => {
  test.each([
    ['$1,250.00', '1250'],
    ['$1250', '1250'],
    ['$0.05', '0.05'],
    ['$12.5', '12.5'],
    ['-$12.00', '-12'],
    ['$0', '0'],
    ['-$0', '0'],
    ['$123,456,789,012,345,678,901.01', '123456789012345678901.01'],
  ])('%s', (text, amount) => {
    const result = parseMoney(text);
    expect(result.ok && result.value.toFixed()).toBe(amount);
  });

  test.each([
    ['1250', 'without-unit', ['$1,250.00', '$1,250']],
    ['1,250.50', 'without-unit', ['$1,250.50', '$1250.50']],
    ['€1,250', 'not-dollars', ['$1,250.00', '$1,250']],
    ['£5', 'not-dollars', ['$5.00', '$5']],
    ['5 EUR', 'not-dollars', ['$5.00', '$5']],
    ['CAD 5', 'not-dollars', ['$5.00', '$5']],
    ['C$5', 'not-dollars', ['$5.00', '$5']],
    ['$5 CAD', 'not-dollars', ['$5.00', '$5']],
    ['US$5', 'unknown-unit', ['$5.00', '$5']],
    ['5 USD', 'unknown-unit', ['$5.00', '$5']],
    ['5 dollars', 'unknown-unit', ['$5.00', '$5']],
    ['$5 per yd3', 'unknown-unit', ['$5.00', '$5']],
    ['"$5"', 'stray-quote', ['$5.00', '$5']],
    ['$1.255', 'not-a-number', ['$1.26']],
    ['$12,50', 'not-a-number', undefined],
    ['$1,2500', 'not-a-number', undefined],
    ['$', 'not-a-number', ['$1,250.00', '$1,250']],
    ['', 'not-a-number', ['$1,250.00', '$1,250']],
  ])('%s is %s', (text, code, forms) => {
    const result = parseMoney(text);
    if (result.ok) throw new Error(`taken as ${result.value}`);
    expect(result.code).toBe(code);
    if (forms !== undefined) expect(result.forms).toEqual(forms);
    for (const form of result.forms) expect(parseMoney(form)).toMatchObject({ ok: true });
  });
});

describe('cents', () => {
  test('the shared context leaves the library as it was', () => {
    expect(Decimal.precision).toBe(20);
    expect(new Usd('123456789012345678901').plus('0.01').toFixed()).toBe('123456789012345678901.01');
    expect(new Usd('1e21').toString()).toBe('1000000000000000000000');
  });

  test('an amount made with the library default is rounded no earlier', () => {
    expect(roundToCent(new Decimal('123456789012345678901.005')).toFixed()).toBe('123456789012345678901.01');
  });

  test.each([
    ['10.019', '10.01'],
    ['10.01', '10.01'],
    ['-10.011', '-10.02'],
    ['0.009', '0.00'],
  ])('floorToCent %s is %s', (amount, floored) => {
    expect(floorToCent(new Usd(amount)).toFixed(2)).toBe(floored);
  });

  test.each(['-0.004', '-0'])('%s rounds to a nothing without a minus', (amount) => {
    expect(Object.is(roundToCent(new Usd(amount)).toNumber(), 0)).toBe(true);
    expect(formatMoney(new Usd(amount))).toBe('$0.00');
  });

  test('sumUsd', () => {
    expect(sumUsd(['0.10', '0.20', '-0.05'].map((amount) => new Usd(amount))).toFixed(2)).toBe('0.25');
    expect(sumUsd([]).toFixed(2)).toBe('0.00');
  });

  test.each([new Usd(Number.NaN), new Usd(Number.POSITIVE_INFINITY)])('%s is refused', (amountUsd) => {
    expect(() => roundToCent(amountUsd)).toThrow(RangeError);
    expect(() => floorToCent(amountUsd)).toThrow(RangeError);
    expect(() => sumUsd([amountUsd])).toThrow(RangeError);
    expect(() => formatMoney(amountUsd)).toThrow(RangeError);
  });
});

describe('splitByLargestRemainder', () => {
  const split = (total: string, weights: readonly string[]) =>
    splitByLargestRemainder(
      new Usd(total),
      weights.map((weight) => new Usd(weight)),
    ).map((shareUsd) => shareUsd.toFixed(2));

  test('weights with decimals, and one without weight', () => {
    expect(split('10.00', ['0.5', '0', '0.25'])).toEqual(['6.67', '0.00', '3.33']);
  });
  test('a credit mirrors its charge', () => {
    expect(split('-100.00', ['1', '1', '1'])).toEqual(['-33.34', '-33.33', '-33.33']);
  });
  test.each([
    ['10.005', ['1']],
    ['10.00', []],
    ['10.00', ['0', '0']],
    ['10.00', ['1', '-1']],
    ['10.00', ['NaN']],
  ])('%s by %j is refused', (total, weights) => {
    expect(() => split(total, weights)).toThrow(RangeError);
  });
});

const ALL_RATES: readonly RateUnit[] = [
  ...(['yd3', 'cu ft', 'm3', 'ton', 'lb', 'load', 'h', 'day', 'sq ft', 'm2'] as const),
  ...(['ft', 'm', 'each', 'gal', 'bag', 'sheet', 'mi', 'job'] as const),
];

describe('parseRate', () => {
  test.each([
    ['$185 per yd3', '185', 'yd3'],
    ['$185/yd3', '185', 'yd3'],
    ['$185 / cu yd', '185', 'yd3'],
    ['$6.50 each', '6.5', 'each'],
    ['$40 per load', '40', 'load'],
    ['$28 per h', '28', 'h'],
    ['$1,250.00 per day', '1250', 'day'],
    ['$0.0725 per lb', '0.0725', 'lb'],
    ['$4.25 per sq ft', '4.25', 'sq ft'],
    ['$0.67 per mi', '0.67', 'mi'],
  ])('%s', (text, amount, perUnit) => {
    const result = parseRate(text, ALL_RATES);
    if (!result.ok) throw new Error(result.code);
    expect({ ...result.value, amountUsd: result.value.amountUsd.toFixed() }).toEqual({
      amountUsd: amount,
      perUnit,
      text,
    });
  });

  test.each(ALL_RATES)('every unit is known: %s', (unit) => {
    expect(parseRate(`$2/${unit}`, [unit])).toMatchObject({ ok: true, value: { perUnit: unit } });
  });

  test.each<[string, readonly RateUnit[], string, readonly string[] | undefined]>([
    ['$185', ['yd3'], 'without-unit', ['$185 per yd3', '$185/yd3']],
    ['$185', ['ton', 'load'], 'without-unit', ['$185 per ton', '$185 per load']],
    ['185 per yd3', ['yd3', 'm3'], 'without-unit', ['$185 per yd3', '$185/yd3']],
    ['185', ['each'], 'without-unit', ['$185 each']],
    ['$185 per ton', ['yd3', 'm3'], 'wrong-kind', ['$185 per yd3', '$185 per m3']],
    ['$185 per truck', ['load'], 'unknown-unit', ['$185 per load', '$185/load']],
    ['€185 per yd3', ['yd3'], 'not-dollars', ['$185 per yd3', '$185/yd3']],
    ['$1,85 per yd3', ['yd3'], 'not-a-number', undefined],
    ['$0.07255 per lb', ['lb'], 'not-a-number', undefined],
    ['"$185 per yd3"', ['yd3'], 'stray-quote', undefined],
    ['$185 per yd3"', ['yd3'], 'stray-quote', undefined],
    ['', ['yd3'], 'not-a-number', undefined],
  ])('%s for %j is %s', (text, allowed, code, forms) => {
    const result = parseRate(text, allowed);
    if (result.ok) throw new Error('taken');
    expect(result.code).toBe(code);
    if (forms !== undefined) expect(result.forms).toEqual(forms);
    expect(result.forms.length).toBeGreaterThan(0);
    for (const form of result.forms) expect(parseRate(form, allowed), form).toMatchObject({ ok: true });
  });
});

describe('parsePace', () => {
  const ALL_PACES: readonly PaceUnit[] = ['sq ft', 'm2', 'ft', 'm', 'yd3', 'm3', 'ton', 'load', 'each'];

  test.each([
    ['200 sq ft per h', 200n, 1n, 'sq ft'],
    ['200 sq ft/h', 200n, 1n, 'sq ft'],
    ['12.5 yd3 per h', 25n, 2n, 'yd3'],
    ['1 1/2 loads per h', 3n, 2n, 'load'],
    ['1,200 ft per h', 1200n, 1n, 'ft'],
    ['12 each per h', 12n, 1n, 'each'],
    ['-3 ton per h', -3n, 1n, 'ton'],
  ])('%s', (text, n, d, unit) => {
    expect(parsePace(text, ALL_PACES)).toEqual({ ok: true, value: { perHour: { n, d }, unit, text } });
  });

  test.each<[string, readonly PaceUnit[], string, readonly string[] | undefined]>([
    ['200', ['sq ft'], 'without-unit', ['200 sq ft per h', '200 sq ft/h']],
    ['200 sq ft', ['sq ft', 'm2'], 'without-unit', ['200 sq ft per h', '200 sq ft/h']],
    ['2', ['load', 'each'], 'without-unit', ['2 loads per h', '2 each per h']],
    ['200 sq ft per day', ['sq ft'], 'unknown-unit', undefined],
    ['200 sq ft per h', ['yd3'], 'wrong-kind', ['200 yd3 per h', '200 yd3/h']],
    ['many per h', ['yd3'], 'not-a-number', undefined],
    ['1/0 yd3 per h', ['yd3'], 'not-a-number', undefined],
    ['1-2 yd3 per h', ['yd3'], 'not-a-number', undefined],
    ['"2 yd3 per h"', ['yd3'], 'stray-quote', undefined],
  ])('%s for %j is %s', (text, allowed, code, forms) => {
    const result = parsePace(text, allowed);
    if (result.ok) throw new Error('taken');
    expect(result.code).toBe(code);
    if (forms !== undefined) expect(result.forms).toEqual(forms);
    for (const form of result.forms) expect(parsePace(form, allowed), form).toMatchObject({ ok: true });
  });
});
