import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainValue } from '../../src/read/tree.ts';
import { readTree } from '../../src/read/yaml-tree.ts';
import { formatQuantity, parseQuantity, rational } from '../../src/units/index.ts';
import { runCount } from '../support/property-runs.ts';

const read = (text: string) => readTree(text, 'job.yaml', 'job');
const codes = (text: string) => read(text).problems.map(({ code }) => code);
const valueOf = (text: string) => {
  const { root } = read(text);
  return root === null ? null : plainValue(root);
};

describe('readTree', () => {
  test.each([
    `14' 6"`,
    '4 in',
    '1/4 in per ft',
    '2 %',
    '$185 per yd3',
    '18 tons',
    '2026-05-04',
    '02134',
    '1e3',
    '0x10',
    'yes',
    'null',
    '~',
    '12345678901234567890',
  ])('keeps %s as it is written', (written) => {
    expect(valueOf(`a: ${written}\nb: [${written}, 4 in]\nc: { w: ${written} }\n`)).toEqual({
      a: written,
      b: [written, '4 in'],
      c: { w: written },
    });
  });

  test.each([
    { text: 'a: 14 #2 bar', found: ['cut-off-by-hash'] },
    { text: 'a: 14 # two bars', found: [] },
    { text: 'a: "14 #2 bar"', found: [] },
    { text: 'a: x#2', found: [] },
    { text: '#a\na: x\n#b', found: [] },
    { text: 'a: { x: 14 #2 bar, y: 3 }\nb: 1', found: ['cut-off-by-hash'] },
    { text: 'a: [$1,250.00, 3]', found: ['number-split-by-comma'] },
    { text: 'a: [$1, 250.00]', found: [] },
    { text: 'a: [1,25]', found: [] },
    { text: 'a: { b: $1,250.00 }', found: ['number-split-by-comma'] },
    { text: 'a: { b, c: 1 }', found: ['text-split-by-comma'] },
    { text: '? [a]\n: b', found: ['key-not-text'] },
    { text: 'a: 1\n---\nb: 2', found: ['more-than-one-document'] },
    { text: 'a: &x [*x]', found: ['too-deep'] },
    { text: `a: ${'['.repeat(40)}${']'.repeat(40)}`, found: ['too-deep'] },
    { text: '# nothing but a comment', found: ['empty-file'] },
  ])('$text', ({ text, found }) => {
    expect(codes(text)).toEqual(found);
  });

  test('a list of keys as long as a file may be is read in time', () => {
    const keys = Array.from({ length: 19_000 }, (_, index) => `k${index}: 1`).join('\n');
    expect(codes(keys)).toEqual([]);
  }, 30_000);

  test('property: a length that is written into a file is read again as it was', () => {
    const lengths = fc.tuple(
      fc.integer({ min: 1, max: 100_000 }),
      fc.constantFrom(1, 2, 4, 8, 16, 64),
      fc.constantFrom('in', 'ft-in', 'ft', 'mm', 'm'),
    );
    fc.assert(
      fc.property(lengths, ([parts, denominator, unit]) => {
        const value = rational(parts, denominator);
        const written = formatQuantity({ kind: 'length', value, unit, text: '' });
        const text = (valueOf(`a: ${written}\n`) as { a: string }).a;
        expect(text).toBe(written);
        expect(parseQuantity('length', text)).toMatchObject({ ok: true, value: { value } });
      }),
    );
  });

  test('property: no text makes it throw, and it says the same twice', () => {
    const pieces = fc.array(
      fc.constantFrom(
        'a: ',
        'b:\n  ',
        '- ',
        '[',
        ']',
        '{',
        '}',
        ',',
        '"',
        "'",
        '#',
        ' #',
        '&x ',
        '*x',
        '!t ',
        '|',
        '>',
        '\n',
        '  ',
        '\t',
        '1,250',
        '<<: ',
        '---\n',
        '%',
        '@',
        'é',
        ': ',
        '? ',
      ),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(pieces, (parts) => {
        const text = parts.join('');
        expect(read(text)).toEqual(read(text));
      }),
      { numRuns: runCount(500) },
    );
  });
});
