import { describe, expect, test } from 'vitest';
import { constant, figure, given } from '../../src/calculate/figure.ts';
import { shortDates, showFigure, showFormula, showIn } from '../../src/describe/show/index.ts';
import { Usd } from '../../src/units/index.ts';

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August'];

describe('shortDates', () => {
  test.each([
    { dates: ['2026-05-04'], shown: '4 May' },
    { dates: ['2026-05-04', '2026-05-05', '2026-05-08'], shown: '4–5, 8 May' },
    { dates: ['2026-05-08', '2026-05-04', '2026-05-04'], shown: '4, 8 May' },
    { dates: ['2026-05-29', '2026-05-31', '2026-06-01', '2026-06-02'], shown: '29, 31 May, 1–2 June' },
    { dates: ['2026-04-30', '2026-05-01'], shown: '30 April, 1 May' },
    { dates: [], shown: '' },
  ])('$dates are $shown', ({ dates, shown }) => {
    expect(shortDates(dates, MONTHS)).toBe(shown);
  });
});

describe('showIn', () => {
  // Exact: 100 mm is 3.937... in and must come back as 100 mm.
  test('a metric job shows the millimetres it was written in', () => {
    expect(showIn('metric').size(100 / 25.4)).toBe('100 mm');
    expect(showIn('metric').length(3600 / 25.4)).toBe('3.60 m');
    expect(showIn('metric').slope(0.02)).toBe('20 mm / m (2.0 %)');
  });

  test('a job in feet shows eighths, carried', () => {
    expect(showIn('us').length(11.97 * 12)).toBe('11′ 11 5/8″');
    expect(showIn('us').size(4)).toBe('4″');
    expect(showIn('us').slope(1 / 48)).toBe('1/4″ / ft (2.1 %)');
  });

  test('a piece to cut is shown to the sixteenth or the millimetre, never shorter', () => {
    expect(showIn('us').cut(68.5625)).toBe('5′ 8 9/16″');
    expect(showIn('us').cut(68.57)).toBe('5′ 8 5/8″');
    // 68.5625 in is 1,741.49 mm.
    expect(showIn('metric').cut(68.5625)).toBe('1,742 mm');
    expect(showIn('metric').cut(100 / 25.4)).toBe('100 mm');
  });

  test('a weight that is needed is never shown lighter', () => {
    expect(showIn('us').leastWeight(2000)).toBe('2,000 lb');
    expect(showIn('us').leastWeight(2000.2)).toBe('2,001 lb');
    // 2,000 lb is 907.18 kg.
    expect(showIn('metric').leastWeight(2000)).toBe('908 kg');
    expect(showIn('metric').weight(2000)).toBe('907 kg');
  });

  test('a share shows a decimal only where it has one', () => {
    expect(showIn('us').percent(0.07)).toBe('7 %');
    expect(showIn('us').percent(0.125)).toBe('12.5 %');
  });
});

describe('figures on the calculation sheet', () => {
  const priced = figure({
    value: new Usd('1250'),
    unit: '$',
    decimals: 2,
    formula: 'roundCent(_2x4Count * priceUsd)',
    inputs: {
      _2x4Count: given('a.b', 100, 'each'),
      priceUsd: constant('price', new Usd('12.5'), '$', 'a table'),
    },
    rounding: 'cent',
  });

  test('show the value with its unit, and the formula with the numbers in it', () => {
    expect(showFigure(priced)).toBe('$1,250.00');
    expect(showFormula(priced)).toBe('roundCent(_2x4Count [100 each] × priceUsd [$12.50])');
  });

  test('cannot be made from a number that is none', () => {
    const made = { unit: 'in', decimals: 1, formula: 'x', inputs: {} } as const;
    expect(() => figure({ ...made, value: Number.NaN })).toThrow(RangeError);
    expect(() => figure({ ...made, value: Infinity })).toThrow(RangeError);
  });
});

test('a slope less than a tape shows on a foot is told in percent alone, and level as level', () => {
  const { slope } = showIn('us');
  expect(slope(0.002)).toBe('0.2 %');
  expect(slope(0)).toBe('0″ / ft (0.0 %)');
  expect(slope(0.0002)).toBe('0″ / ft (0.0 %)');
  expect(slope(1 / 192)).toBe('1/16″ / ft (0.5 %)');
});
