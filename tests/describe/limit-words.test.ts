import { describe, expect, test } from 'vitest';
import { type Limit, limitWords, valueWords } from '../../src/describe/parts/limit-words.ts';

type Most = Omit<Limit, 'direction'>;
const most = (held: Most): Limit => ({ ...held, direction: 'at-most' });
const told = (held: Most, value: number, system: 'us' | 'metric') => [
  limitWords(most(held), system),
  valueWords(value, most(held), system),
];
const quarter: Most = { limit: 1 / 4, limitText: '1/4 in', unit: 'in' };

describe('a limit and what is held against it', () => {
  test('are told as a tape reads, and to a metric job in its own units beside what is written', () => {
    expect(told(quarter, 1.32, 'us')).toEqual(['1/4″', '1 5/16″']);
    expect(told(quarter, 1.32, 'metric')).toEqual(['1/4 in (6 mm)', '34 mm']);
  });

  test('stay apart where both would read alike', () => {
    expect(told(quarter, 0.255, 'us')).toEqual(['1/4″', '0.26 in']);
    expect(told(quarter, 0.255, 'metric')).toEqual(['1/4 in (6 mm)', '0.26 in']);
    expect(told(quarter, 0.2504, 'us')).toEqual(['1/4″', '0.2504 in']);
    expect(told({ limit: 0.09, limitText: '9 %', unit: 'ratio' }, 0.0902, 'us')).toEqual(['9 %', '9.02 %']);
    expect(told({ limit: 1 / 48, limitText: '1:48', unit: 'ratio' }, 0.02084, 'us')[1]).toBe('2.084 %');
  });

  test('a limit that no tape shows stays as it is written', () => {
    expect(limitWords(most({ limit: 6 / 25.4, limitText: '6 mm', unit: 'in' }), 'us')).toBe('6 mm');
    expect(limitWords(most({ limit: 6 / 25.4, limitText: '6 mm', unit: 'in' }), 'metric')).toBe('6 mm');
  });

  test('a slope tells both its ratio and the digits that tell it from 2 %', () => {
    expect(told({ limit: 1 / 48, limitText: '1:48', unit: 'ratio' }, 0.02, 'us')).toEqual([
      '1:48 (2.08 %)',
      '2.00 %',
    ]);
    expect(told({ limit: 0.09, limitText: '9 %', unit: 'ratio' }, 0.098, 'us')).toEqual(['9 %', '9.8 %']);
  });

  test('counts have no unit, and none is none', () => {
    expect(told({ limit: 0, limitText: '0 each', unit: 'each' }, 2, 'us')).toEqual(['0', '2']);
    expect(told({ limit: 0, limitText: '0 in', unit: 'in' }, 7 / 16, 'metric')).toEqual(['0 mm', '11 mm']);
  });

  // exact: 0 °C is 32 °F, and a difference of 9 °F is one of 5 °C, never −18 °C.
  test('temperatures are told on the thermometer of the job, differences as they are written', () => {
    expect(told({ limit: 40, limitText: '40 F', unit: '°F' }, 32, 'metric')).toEqual(['40 F (4 °C)', '0 °C']);
    expect(told({ limit: 0, limitText: '0 F', unit: '°F' }, 9, 'metric')).toEqual(['0 F', '9 °F']);
  });

  test('wind, drying, weights and money', () => {
    expect(told({ limit: 20, limitText: '20 mph', unit: 'mph' }, 25, 'metric')).toEqual([
      '20 mph (32 km/h)',
      '40 km/h',
    ]);
    expect(told({ limit: 0.2, limitText: '0.2 lb per sq ft per h', unit: 'lb/sq ft/h' }, 0.37, 'us')).toEqual(
      ['0.20 lb/sq ft/h', '0.37 lb/sq ft/h'],
    );
    expect(told({ limit: 10_000, limitText: '10,000 lb', unit: 'lb' }, 14_000, 'metric')).toEqual([
      '10,000 lb (4,535 kg)',
      '6,350 kg',
    ]);
    expect(told({ limit: 500, limitText: '$500', unit: '$' }, 499.5, 'us')).toEqual(['$500', '$499.50']);
  });

  // exact: 40 °F is 4.44 °C, 95 °F is 35 °C, 0.2 lb/sq ft/h is 0.976 kg/m²/h, 10,000 lb is 4,535.92 kg.
  test('in metric the most that is allowed is told rounded down, the least up', () => {
    const words = (limit: number, limitText: string, unit: Limit['unit']) => [
      limitWords({ limit, limitText, unit, direction: 'at-most' }, 'metric'),
      limitWords({ limit, limitText, unit, direction: 'at-least' }, 'metric'),
    ];
    expect(words(40, '40 F', '°F')).toEqual(['40 F (4 °C)', '40 F (5 °C)']);
    expect(words(95, '95 F', '°F')).toEqual(['95 F (35 °C)', '95 F (35 °C)']);
    expect(words(0.2, '0.2', 'lb/sq ft/h')).toEqual(['0.2 (0.97 kg/m²/h)', '0.2 (0.98 kg/m²/h)']);
    expect(words(20, '20 mph', 'mph')).toEqual(['20 mph (32 km/h)', '20 mph (33 km/h)']);
    expect(words(1 / 4, '1/4 in', 'in')).toEqual(['1/4 in (6 mm)', '1/4 in (7 mm)']);
    expect(words(10_000, '10,000 lb', 'lb')).toEqual(['10,000 lb (4,535 kg)', '10,000 lb (4,536 kg)']);
    expect(words(3_000, '3000 psi', 'psi')).toEqual(['3000 psi (20 MPa)', '3000 psi (21 MPa)']);
    expect(words(15, '15 ft', 'ft')).toEqual(['15 ft (4.5 m)', '15 ft (4.6 m)']);
    expect(words(100, '100 sq ft', 'sq ft')).toEqual(['100 sq ft (9.2 m²)', '100 sq ft (9.3 m²)']);
    expect(words(1 / 48, '1:48', 'ratio')).toEqual(['1:48 (2.08 %)', '1:48 (2.09 %)']);
    expect(words(1 / 20, '1:20', 'ratio')).toEqual(['1:20 (5.00 %)', '1:20 (5.00 %)']);
  });
});
