import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { num } from '../../src/calculate/figure.ts';
import { describeAll } from '../../src/commands/describe-all.ts';
import { writeExports } from '../../src/commands/write-exports.ts';
import { describeMaterials, materialsSpreadsheets } from '../../src/describe/materials/index.ts';
import { showIn } from '../../src/describe/show/index.ts';
import type { TableView } from '../../src/describe/views.ts';
import { spreadsheetToCsv, workbookOf } from '../../src/export/index.ts';
import { formatMoney, formatNumber, Usd } from '../../src/units/index.ts';
import { en } from '../../src/words/index.ts';
import { allJobs, jobNamed } from '../support/project.ts';
import { pseudo } from '../support/pseudo.ts';
import { readWithHeadings } from './read-csv.ts';
import { readWorkbook, type XlsxSheet, zipDayOf } from './read-xlsx.ts';

const { materials: say } = en;
const { sheets: named } = say;
const prepared = allJobs();

/** `45, 2″ high` is 45, `1,031 of 20′, 12 of 13′` is 1,043. */
function countIn(text: string): number {
  const counts = text.includes(' of ') ? text.split(', ') : [text];
  return counts.reduce(
    (sum, part) => sum + Number((/^[\d,]*\d/.exec(part)?.[0] ?? '').replaceAll(',', '')),
    0,
  );
}

describe.each(prepared)('the workbook of $job.id', ({ job, results }) => {
  const page = describeMaterials(job, results, en);
  const { loads, materials } = materialsSpreadsheets(job, results, en);
  const show = showIn(job.unitSystem);
  let book: ReadonlyMap<string, XlsxSheet>;
  beforeAll(async () => {
    book = readWorkbook(await workbookOf({ sheets: materials, epochSeconds: 0 }));
  });
  const sheet = (name: string): XlsxSheet => {
    const found = book.get(name);
    if (found === undefined) throw new RangeError(`there is no sheet ${name}`);
    return found;
  };

  test('has a sheet for each table that the page has', () => {
    const hasPerLoad = Object.values(results.haul.figures.streams).some(
      (stream) => Object.keys(stream['sq-ft-per-load']).length > 0,
    );
    const tables: readonly (readonly [string, unknown])[] = [
      [named.loads, page.loads],
      [named.trips, page.trips],
      [named.streams, page.streams],
      [named.perLoad, hasPerLoad ? page.streams : null],
      [named.fleet, page.fleet],
      [named.steel, page.steel],
      [named.stock, page.stock],
      [named.forms, page.forms],
      [named.shopping, page.shopping.suppliers[0] ?? null],
    ];
    expect([...book.keys()]).toEqual(tables.flatMap(([name, table]) => (table === null ? [] : [name])));
  });

  test('has every heading once, from the words, bold and frozen', () => {
    const inPseudo = materialsSpreadsheets(job, results, pseudo).materials;
    expect(inPseudo.map(({ name }) => name)).toEqual([...book.keys()].map((name) => `[${name}]`));
    for (const [at, { headings, rows, frozenRows }] of [...book.values()].entries()) {
      const texts = headings.map((cell) => String(cell?.value));
      expect(new Set(texts).size).toBe(texts.length);
      expect(inPseudo[at]?.headings).toEqual(texts.map((text) => `[${text}]`));
      expect(headings.every((cell) => cell?.isBold)).toBe(true);
      expect(rows.length).toBeGreaterThan(0);
      expect(frozenRows).toBe(1);
    }
  });

  test('has the loads as the CSV has them', () => {
    if (loads === null) throw new RangeError('there are no loads');
    const csv = readWithHeadings(spreadsheetToCsv(loads));
    expect(sheet(named.loads).headings.map((cell) => cell?.value)).toEqual(csv.headings);
    const cells = sheet(named.loads).rows.map((row) => row.map((cell) => String(cell?.value ?? '')));
    expect(cells).toEqual(csv.rows.map((row) => row.map(({ text }) => text)));
    const kinds = sheet(named.loads).rows.map((row) => row.map((cell) => typeof cell?.value === 'number'));
    const bare = csv.rows.map((row) => row.map(({ text, isQuoted }) => !isQuoted && text !== ''));
    expect(kinds).toEqual(bare);
  });

  test('has in every sheet the texts of the table, without its total', () => {
    compare(page.streams, sheet(named.streams), [say.streams.perLoad]);
    compare(page.fleet, sheet(named.fleet));
    if (page.steel !== null) compare(page.steel, sheet(named.steel));
    compare(page.forms, sheet(named.forms));
    const notes = page.forms.rows.map(({ note }) => note);
    expect(sheet(named.forms).values(say.formsSheet.note)).toEqual(notes);
    const blocks = page.shopping.suppliers.map(({ table }) => table);
    const [first] = blocks;
    if (first === undefined) throw new RangeError('nothing is bought');
    compare({ ...first, rows: blocks.flatMap(({ rows }) => rows) }, sheet(named.shopping));
  });

  test('says from whom and until when each thing is ordered, as the page does', () => {
    const bought = sheet(named.shopping);
    const column = (of: (block: (typeof page.shopping.suppliers)[number]) => string) =>
      page.shopping.suppliers.flatMap((block) => block.table.rows.map(() => of(block)));
    const { shoppingSheet: own } = say;
    expect(bought.values(own.supplier)).toEqual(column(({ name }) => name));
    expect(bought.values(own.phone).map((phone) => phone ?? '')).toEqual(column(({ phone }) => phone));
    const inWords = bought.values(own.orderBy).map((date) => say.shopping.orderBy(String(date)));
    expect(inWords).toEqual(column(({ orderBy }) => orderBy));
    const days = bought.values(own.orderByDate).map((date) => Number(String(date).slice(8)));
    expect(inWords.map((text, at) => text.includes(` ${days[at]} `))).toEqual(days.map(() => true));
  });

  test('has beside each text the number that it shows, in the unit of its heading', () => {
    const { streamsSheet, fleetSheet, steelSheet, stockSheet, formsSheet, shoppingSheet: shopping } = say;
    const money = (usd: number) => formatMoney(new Usd(usd));
    const pairs = [
      [named.streams, streamsSheet.weight, say.streams.weight, show.weight],
      [named.streams, streamsSheet.loose, say.streams.loose, show.volume],
      [named.trips, say.tripsSheet.fee, say.trips.fee, money],
      [named.perLoad, streamsSheet.perLoad, say.streams.perLoad, show.area],
      [named.fleet, fleetSheet.payload, say.fleet.payload, show.weight],
      [named.fleet, fleetSheet.box, say.fleet.box, show.volume],
      [named.steel, steelSheet.weight, say.steel.weight, show.weight],
      [named.forms, formsSheet.needCount, say.forms.need, show.count],
      [named.forms, formsSheet.needVolume, say.forms.need, show.liquid],
    ] as const;
    // What is sold by the yard and the short ton is told so, with the unit of the job behind it.
    const sold = showIn('us');
    for (const [number, shown] of [
      [shopping.volume, sold.volume],
      [shopping.tons, (tons: number) => sold.tons(tons * 2000)],
    ] as const) {
      const texts = sheet(named.shopping).values(say.shopping.quantity);
      for (const [at, value] of sheet(named.shopping).values(number).entries()) {
        if (value !== null)
          expect([number, String(texts[at]).split(' (')[0]]).toEqual([number, shown(Number(value))]);
      }
    }
    for (const [name, number, text, shown] of pairs) {
      if (!book.has(name)) continue;
      const texts = sheet(name).values(text);
      for (const [at, value] of sheet(name).values(number).entries()) {
        if (value !== null) expect([name, number, shown(Number(value))]).toEqual([name, number, texts[at]]);
      }
    }
    for (const [name, number, text] of [
      [named.steel, steelSheet.chairs, say.steel.chairs],
      [named.stock, stockSheet.count, say.stock.take],
      [named.shopping, shopping.count, say.shopping.quantity],
    ] as const) {
      if (!book.has(name)) continue;
      const texts = sheet(name).values(text);
      for (const [at, value] of sheet(name).values(number).entries()) {
        if (value !== null) expect([name, countIn(String(texts[at]))]).toEqual([name, value]);
      }
    }
  });

  test('has the numbers of the figures in full', () => {
    const streams = Object.keys(results.haul.figures.streams);
    const torn = streams.map((id) => results.tearOut.figures.streams[id as 'soil']);
    const column = (heading: string) => sheet(named.streams).values(heading);
    expect(column(say.streamsSheet.weight)).toEqual(torn.map((one) => (one ? num(one.weight) : null)));
    expect(column(say.streamsSheet.loose)).toEqual(
      torn.map((one) => (one ? num(one['loose-volume']) : null)),
    );
    const fees = sheet(named.trips).column(say.tripsSheet.fee);
    // A trip for base alone pays no fee, nor does a machine on a trailer.
    const legs = (asked: string) =>
      results.haul.data.legs.filter(({ way }) => way === asked).map(() => undefined);
    expect(fees.map((cell) => cell?.format)).toEqual([
      ...legs('to-job'),
      ...results.haul.data.trips.map(({ load }) => (load === null ? undefined : '0.00')),
      ...legs('to-yard'),
      ...legs('to-yard-last'),
    ]);
    const boxes = job.plan.trailers.map((id) => results.haul.figures.trailers[id]?.['box-volume'].value);
    expect(sheet(named.fleet).values(say.fleetSheet.box)).toEqual(boxes);
  });

  test('has one quantity of each thing to buy and of each form', () => {
    const quantities = (name: string, headings: readonly string[]) =>
      sheet(name).rows.map(
        (_row, at) => headings.filter((one) => sheet(name).values(one)[at] !== null).length,
      );
    const { volume, tons, count } = say.shoppingSheet;
    const { needCount, needVolume } = say.formsSheet;
    expect(new Set(quantities(named.shopping, [volume, tons, count]))).toEqual(new Set([1]));
    expect(new Set(quantities(named.forms, [needCount, needVolume]))).toEqual(new Set([1]));
  });

  test('has what makes a full load of each thing, as the page lists it', () => {
    const rows = book.has(named.perLoad) ? sheet(named.perLoad).rows : [];
    const lines = page.streams?.rows.filter(({ isTotal }) => !isTotal) ?? [];
    const at = page.streams?.columns.findIndex(({ heading }) => heading === say.streams.perLoad) ?? -1;
    const joined = lines.map(({ cells: [stream] }) => {
      const ofStream = rows.filter((row) => row[0]?.value === stream);
      const isOne = new Set(ofStream.map((row) => row[2]?.value)).size === 1;
      const texts = ofStream.map((row) =>
        isOne ? row[4]?.value : say.streams.onTrailer(String(row[4]?.value), String(row[2]?.value)),
      );
      return texts.join(', ');
    });
    expect(joined).toEqual(lines.map(({ cells }) => cells[at]));
    const things = rows.map((row) => row[1]?.value);
    expect(things).toEqual(
      Object.values(results.haul.figures.streams)
        .flatMap((stream) =>
          Object.entries(stream['sq-ft-per-load']).flatMap(([id, on]) => Object.keys(on).map(() => id)),
        )
        .map((id) => job.site.existing[id]?.label),
    );
  });
});

test('every column but that of the scale ticket is filled in some job', () => {
  const sheets = prepared.flatMap(({ job, results }) => materialsSpreadsheets(job, results, en).materials);
  const filled = (name: string, at: number) =>
    sheets.some((sheet) => sheet.name === name && sheet.rows.some((row) => (row[at] ?? '') !== ''));
  const empty = sheets.flatMap(({ name, headings }) => headings.filter((_heading, at) => !filled(name, at)));
  expect(new Set(empty)).toEqual(new Set([say.loads.ticket]));
});

/** Every column of the table but some is in the sheet; a bare count there is shown as the page shows it. */
function compare(table: TableView | null, sheet: XlsxSheet, but: readonly string[] = []): void {
  const lines = table?.rows.filter(({ isTotal }) => !isTotal) ?? [];
  expect(lines.length).toBeGreaterThan(0);
  for (const [index, { heading }] of table?.columns.entries() ?? []) {
    if (but.includes(heading)) continue;
    const texts = sheet
      .values(heading)
      .map((value) => (typeof value === 'number' ? formatNumber(value, 0) : (value ?? '')));
    expect([heading, texts]).toEqual([heading, lines.map(({ cells }) => cells[index])]);
  }
}

describe('the file', () => {
  const folders: string[] = [];
  afterEach(() => {
    vi.unstubAllEnvs();
  });
  afterAll(async () => {
    for (const folder of folders) await rm(folder, { recursive: true });
  });
  // The demo with the least to draw.
  const described = describeAll([jobNamed(prepared, 'corner-walk')]);
  const written = async () => {
    const folder = await mkdtemp(join(tmpdir(), 'workbook-'));
    folders.push(folder);
    await writeExports(folder, described);
    return readFile(join(folder, 'corner-walk', 'office', 'materials.xlsx'));
  };

  test('holds the sheets, is the same twice, and carries the date of the job', async () => {
    vi.stubEnv('SOURCE_DATE_EPOCH', undefined);
    const { job, results } = jobNamed(prepared, 'corner-walk');
    const { materials } = materialsSpreadsheets(job, results, en);
    const first = await written();
    expect((await written()).equals(first)).toBe(true);
    expect(zipDayOf(first)).toBe(job.preparedOn);
    const sheets = [...readWorkbook(first)].map(([name, { rows }]) => [name, rows.length]);
    expect(sheets).toEqual(materials.map(({ name, rows }) => [name, rows.length]));
  });

  test('carries the date of SOURCE_DATE_EPOCH where it is set', async () => {
    vi.stubEnv('SOURCE_DATE_EPOCH', String(Date.UTC(2030, 0, 31) / 1000));
    expect(zipDayOf(await written())).toBe('2030-01-31');
  });
});
