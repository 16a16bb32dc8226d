import { describe, expect, test } from 'vitest';
import { parseLimit, readRules } from '../../src/read/index.ts';

describe('parseLimit', () => {
  test.each([
    { text: '3 1/2 in', kind: 'length', value: 3.5 },
    { text: '15 ft', kind: 'length', value: 180 },
    { text: '1:48', kind: 'ratio', value: 1 / 48 },
    { text: '1/4 in per ft', kind: 'ratio', value: 1 / 48 },
    { text: '10 %', kind: 'ratio', value: 0.1 },
    { text: '1/3', kind: 'number', value: 1 / 3 },
    { text: '1.5', kind: 'number', value: 1.5 },
    { text: '$1,000', kind: 'money', value: 1000 },
    { text: '1 day', kind: 'days', value: 1 },
    { text: '0 each', kind: 'each', value: 0 },
    { text: '8 h', kind: 'duration', value: 8 },
    { text: '400 sq ft', kind: 'area', value: 400 },
    { text: '2 1/2 deg', kind: 'angle', value: 2.5 },
  ])('$text', ({ text, kind, value }) => {
    expect(parseLimit(text)).toEqual({ kind, value });
  });

  test.each(['', 'wide', '1/0', '4 in in', '-1', '3 yd3'])('%j is no limit', (text) => {
    expect(parseLimit(text)).toBeNull();
  });
});

test('the shipped rule sets read without a problem', () => {
  const { sets, problems } = readRules();
  expect(problems).toEqual([]);
  expect([...sets.keys()]).toContain('general');
  for (const { rules } of sets.values()) expect(rules.length).toBeGreaterThan(0);
});
