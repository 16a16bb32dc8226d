import { describe, expect, test } from 'vitest';
import { type Check, problemsOf, readCheckFile } from './load.ts';

const aRow = (changes: string): string => `checks:
  - { call: double, with: { value: 2 }, source: "a table", seen: seen, ${changes} }
`;

const aCheck = (changes: Partial<Check>): Check => ({
  call: 'double',
  with: { value: 2 },
  expect: 4,
  tolerance: 0,
  source: 'a table',
  seen: 'seen',
  ...changes,
});

describe('readCheckFile', () => {
  test('takes numbers with a tolerance, and text without', () => {
    expect(readCheckFile(aRow('expect: 4, tolerance: 0'), 'x').checks).toHaveLength(1);
    expect(readCheckFile(aRow('expect: "4"'), 'x').checks).toHaveLength(1);
    expect(readCheckFile(aRow('expect: ["4", true]'), 'x').checks).toHaveLength(1);
  });

  test.each([
    ['no rows', 'checks: []'],
    ['no list', 'checks: 4'],
    ['a key too many', aRow('expect: "4", note: x')],
    ['a number without tolerance', aRow('expect: 4')],
    ['a tolerance below 0', aRow('expect: 4, tolerance: -1')],
    ['a tolerance that is no number', aRow('expect: 4, tolerance: .nan')],
    ['text with a tolerance', aRow('expect: "4", tolerance: 1')],
    ['an expectation that nothing can miss', aRow('expect: []')],
    ['nothing expected', aRow('tolerance: 1')],
    ['not a number expected', aRow('expect: .nan, tolerance: 1')],
    ['no provenance', aRow('expect: "4"').replace('seen: seen', 'seen: maybe')],
    ['no source', aRow('expect: "4"').replace('"a table"', '""')],
    ['a second list', `${aRow('expect: "4"')}rows: []`],
    ['a row left out without a reason', `${aRow('expect: "4"')}not-checked: [{ what: x }]`],
  ])('refuses %s', (_what, text) => {
    expect(() => readCheckFile(text, 'x')).toThrow(/^x\.yaml/);
  });
});

describe('problemsOf', () => {
  const double = (given: { value: number }) => 2 * given.value;

  test('nothing is wrong with a right answer', () => {
    expect(problemsOf(aCheck({}), double)).toEqual([]);
    expect(problemsOf(aCheck({ expect: 4.4, tolerance: 0.4 }), double)).toEqual([]);
    expect(problemsOf(aCheck({ expect: [4, 'a'] }), (given) => [2 * given.value, 'a'])).toEqual([]);
  });

  test.each<[string, Check, (given: { value: number }) => number | string | number[]]>([
    ['a number outside the tolerance', aCheck({ expect: 4.5, tolerance: 0.4 }), double],
    ['not a number', aCheck({}), (given) => given.value * Number.NaN],
    ['text for a number', aCheck({}), (given) => String(2 * given.value)],
    ['a number for text', aCheck({ expect: '4' }), double],
    ['a list for one value', aCheck({}), (given) => [2 * given.value]],
    ['a list too short', aCheck({ expect: [4, 4] }), (given) => [2 * given.value]],
    ['an argument that is not read', aCheck({ with: { value: 2, more: 1 } }), double],
  ])('finds %s', (_what, check, calculate) => {
    expect(problemsOf(check, calculate)).toHaveLength(1);
  });

  test('finds a call that nobody knows, and an argument that the row lacks', () => {
    expect(problemsOf(aCheck({}), undefined)).toEqual(['no function is called double']);
    expect(() => problemsOf(aCheck({ with: {} }), double)).toThrow('the row has no value');
  });
});
