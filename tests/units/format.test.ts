import { describe, expect, test } from 'vitest';
import * as units from '../../src/units/index.ts';
import {
  ceilCount,
  ceilToStep,
  floorToStep,
  formatFeetInches,
  formatInches,
  formatMoney,
  formatNumber,
  formatPercent,
  formatQuantity,
  inToMm,
  parseQuantity,
  rational,
  rationalFromDecimalText,
  rationalToDecimal,
  rationalToNumber,
  Usd,
} from '../../src/units/index.ts';

describe('formatNumber', () => {
  test.each([
    [1234567.891, 2, '1,234,567.89'],
    [999.995, 2, '1,000.00'],
    [1.005, 2, '1.01'],
    [2.5, 0, '3'],
    [-2.5, 0, '-3'],
    [-0.004, 2, '0.00'],
    [-0, 0, '0'],
    [0, 1, '0.0'],
    [100, 0, '100'],
    [1e21, 0, '1,000,000,000,000,000,000,000'],
    [new Usd('123456789012345678901.01'), 2, '123,456,789,012,345,678,901.01'],
  ])('%s to %d decimals is %s', (value, decimals, text) => {
    expect(formatNumber(value, decimals)).toBe(text);
  });
  test.each([Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (value) => {
    expect(() => formatNumber(value, 2)).toThrow(RangeError);
  });
});

describe('feet and inches', () => {
  test.each([
    [174.375, 8, '14′ 6 3/8″'],
    [4, 8, '4″'],
    [0, 8, '0″'],
    [0.375, 16, '3/8″'],
    [12, 16, '1′ 0″'],
    [12.25, 16, '1′ 0 1/4″'],
    [11.96, 8, '1′ 0″'],
    [11.96, 16, '11 15/16″'],
    [6.25, 16, '6 1/4″'],
    [6.5, 16, '6 1/2″'],
    [0.0625, 8, '1/8″'],
    [-0.0625, 8, '-1/8″'],
    [-174.375, 8, '-14′ 6 3/8″'],
    [-0.01, 8, '0″'],
    [15000, 8, '1,250′ 0″'],
    [0.0625 - 1e-12, 8, '1/8″'], // half an eighth but for noise
    [0.0625 - 1e-6, 8, '0″'],
  ] as const)('%d in to 1/%d is %s', (inches, denominator, text) => {
    expect(formatFeetInches(inches, denominator)).toBe(text);
  });

  test('alwaysFeet', () => {
    expect(formatFeetInches(4, 8, { alwaysFeet: true })).toBe('0′ 4″');
    expect(formatFeetInches(0, 8, { alwaysFeet: true })).toBe('0′ 0″');
    expect(formatFeetInches(-0.375, 8, { alwaysFeet: true })).toBe('-0′ 3/8″');
    expect(formatFeetInches(-0.01, 8, { alwaysFeet: true })).toBe('0′ 0″');
  });

  test('formatInches has no feet', () => {
    expect(formatInches(6.375, 8)).toBe('6 3/8″');
    expect(formatInches(174.5, 16)).toBe('174 1/2″');
    expect(formatInches(-0.375, 8)).toBe('-3/8″');
    expect(formatInches(0, 8)).toBe('0″');
  });

  test.each([Number.NaN, Number.NEGATIVE_INFINITY])('%s is refused', (inches) => {
    expect(() => formatFeetInches(inches, 8)).toThrow(RangeError);
    expect(() => formatInches(inches, 8)).toThrow(RangeError);
  });
});

test('formatMoney', () => {
  expect(formatMoney(new Usd('1250'))).toBe('$1,250.00');
  expect(formatMoney(new Usd('-12'))).toBe('-$12.00');
  expect(formatMoney(new Usd('0.005'))).toBe('$0.01');
});

test('formatPercent', () => {
  expect(formatPercent(0.07, 0)).toBe('7 %');
  expect(formatPercent(1 / 48, 3)).toBe('2.083 %');
  expect(formatPercent(-0.005, 1)).toBe('-0.5 %');
  expect(formatPercent(new Usd('0.0725'), 2)).toBe('7.25 %');
});

describe('formatQuantity', () => {
  test('100 mm in is 100 mm out', () => {
    const result = parseQuantity('length', '100 mm');
    expect(result.ok && formatQuantity(result.value)).toBe('100 mm');
  });
  test('part fractions where decimals do not end', () => {
    const value = rational(1, 3);
    expect(formatQuantity({ kind: 'length', value, unit: 'in', text: '' })).toBe('1/3 in');
    expect(formatQuantity({ kind: 'weight', value: rational(10, 3), unit: 'lb', text: '' })).toBe('3 1/3 lb');
    expect(formatQuantity({ kind: 'slope', value: rational(0), unit: '1:n', text: '' })).toBe('0 %');
    expect(formatQuantity({ kind: 'slope', value: rational(3, 100), unit: '1:n', text: '' })).toBe(
      '0.36 in per ft',
    );
  });
  test('a unit of another kind throws', () => {
    expect(() => formatQuantity({ kind: 'length', value: rational(1), unit: 'lb', text: '' })).toThrow(
      RangeError,
    );
  });
});

describe('steps', () => {
  test('noise does not buy another load: 448 sq ft, 5 in, 150 lb per cu ft, 7000 lb a load', () => {
    const loads = (448 * (5 / 12) * 150) / 7000;
    expect(Math.ceil(loads)).toBe(5); // the trap
    expect(ceilCount(loads)).toBe(4);
    expect(ceilToStep(loads, 1)).toBe(4);
  });

  test.each([
    [4.01, 1, 5, 4],
    [4, 1, 4, 4],
    [0, 1, 0, 0],
    [5.5e-17, 1, 0, 0],
    [0.1 * 3, 0.1, 0.3, 0.3],
    [7.26, 0.25, 7.5, 7.25],
    [-0.3, 1, 0, -1],
    [1_000_000.4, 1, 1_000_001, 1_000_000],
    [2.9999999999999996, 1, 3, 3],
  ])('%d in steps of %d: up %d, down %d', (value, step, up, down) => {
    expect(ceilToStep(value, step)).toBe(up);
    expect(floorToStep(value, step)).toBe(down);
  });

  test.each([
    [1, 0],
    [1, -1],
    [1, Number.NaN],
    [Number.NaN, 1],
    [Number.POSITIVE_INFINITY, 1],
  ])('%d in steps of %d is refused', (value, step) => {
    expect(() => ceilToStep(value, step)).toThrow(RangeError);
    expect(() => floorToStep(value, step)).toThrow(RangeError);
  });
});

describe('conversions', () => {
  const pairs = Object.keys(units).flatMap((name) => {
    const parts = /^([a-z]\w*?)To([A-Z]\w*)$/.exec(name);
    if (parts === null) return [];
    const [, from = '', to = ''] = parts;
    const back = `${to[0]?.toLowerCase()}${to.slice(1)}To${from[0]?.toUpperCase()}${from.slice(1)}`;
    return back in units ? [[name, back] as const] : [];
  });

  test('there are pairs to try', () => {
    expect(pairs.length).toBeGreaterThan(20);
  });

  test.each(pairs)('%s is undone by %s', (there, back) => {
    const conversions = units as unknown as Readonly<Record<string, (value: number) => number>>;
    const result = conversions[back]?.(conversions[there]?.(123.4) ?? Number.NaN);
    expect(result).toBeCloseTo(123.4, 9);
  });

  test('no conversion hands on a NaN', () => {
    expect(() => inToMm(Number.NaN)).toThrow(RangeError);
  });
});

describe('fractions', () => {
  test('lowest terms, sign above the line', () => {
    expect(rational(6, -8)).toEqual({ n: -3n, d: 4n });
    expect(rational(0, 5)).toEqual({ n: 0n, d: 1n });
  });
  test('decimal text', () => {
    expect(rationalFromDecimalText('4.75')).toEqual({ n: 19n, d: 4n });
    expect(rationalFromDecimalText('-0.050')).toEqual({ n: -1n, d: 20n });
    for (const text of ['', '.5', '5.', '1e3', '1,000', ' 1', 'NaN']) {
      expect(() => rationalFromDecimalText(text)).toThrow(RangeError);
    }
  });
  test('numbers', () => {
    expect(rationalToNumber(rational(10n ** 400n + 1n, 3n * 10n ** 400n))).toBe(1 / 3);
    expect(rationalToDecimal(rational(1, 3)).toFixed()).toBe(`0.${'3'.repeat(40)}`);
    expect(() => rational(1, 0)).toThrow(RangeError);
    expect(() => rational(0.5)).toThrow(RangeError);
    expect(() => rational(2 ** 53)).toThrow(RangeError);
  });
});
