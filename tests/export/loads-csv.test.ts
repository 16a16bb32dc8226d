import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { describeAll } from '../../src/commands/describe-all.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { writeExports } from '../../src/commands/write-exports.ts';
import { describeMaterials, materialsSpreadsheets } from '../../src/describe/materials/index.ts';
import { spreadsheetToCsv } from '../../src/export/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { allJobs, DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';
import { pseudo } from '../support/pseudo.ts';
import { readTrees, type Trees, withLeaf } from '../support/trees.ts';
import { aWorkbench } from '../support/workbench.ts';
import { readWithHeadings } from './read-csv.ts';

const { loads: say, loadsSpreadsheet: asNumber } = en.materials;
const demosAndFull = allJobs();
const jobs = [
  ...demosAndFull.map((prepared) => [prepared.job.id, prepared] as const),
  ['maple-court on two trailers', onTwoTrailers(jobNamed(demosAndFull, 'maple-court'))] as const,
];

/** The first load goes on the trailer that no other load is on, so that the page has a column for it. */
function onTwoTrailers(prepared: PreparedJob): PreparedJob {
  const { job, results } = prepared;
  const { data } = results.haul;
  const other = job.plan.trailers.find((id) => data.loads.every(({ trailer }) => trailer !== id));
  if (other === undefined) throw new RangeError(`${job.id} has no trailer without a load`);
  const loads = data.loads.map((load, index) => (index === 0 ? { ...load, trailer: other } : load));
  return { ...prepared, results: { ...results, haul: { ...results.haul, data: { ...data, loads } } } };
}

/** Without the plans of the job, which take long to draw. */
function spreadsheetsOf({ job, results }: PreparedJob, words: Words = en) {
  return materialsSpreadsheets(job, results, words);
}

/** The file of the loads of a job, read back. @throws {RangeError} If it has none. */
function loadsFileOf(prepared: PreparedJob) {
  const { loads } = spreadsheetsOf(prepared);
  if (loads === null) throw new RangeError(`${prepared.job.id} has no loads`);
  return readWithHeadings(spreadsheetToCsv(loads));
}

describe.each(jobs)('the loads of %s as CSV', (_, prepared) => {
  const { loads } = prepared.results.haul.data;
  const page = describeMaterials(prepared.job, prepared.results, en).loads;
  const file = loadsFileOf(prepared);

  test('are the rows of the page without its total, with the same texts', () => {
    expect(loads.length).toBeGreaterThan(0);
    const lines = page?.rows.filter(({ isTotal }) => !isTotal) ?? [];
    expect(file.rows).toHaveLength(lines.length);
    for (const [index, { heading }] of page?.columns.entries() ?? []) {
      const shown = lines.map(({ cells }) => cells[index]);
      // The page has a line to write on there.
      if (heading === say.ticket) expect(new Set(file.texts(heading))).toEqual(new Set(['']));
      else expect(file.texts(heading)).toEqual(shown);
    }
    // With one trailer the page names it in the caption.
    const trailers = new Set(file.texts(say.trailer));
    if (trailers.size === 1) expect(page?.caption).toContain([...trailers][0]);
  });

  test('have the full numbers beside them, in lb, sq ft, in and $', () => {
    const numbers = (heading: string) =>
      file.texts(heading).map((text) => (text === '' ? null : Number(text)));
    expect(numbers(say.load)).toEqual(loads.map((_load, index) => index + 1));
    expect(numbers(asNumber.weight)).toEqual(loads.map(({ weightLb }) => weightLb));
    expect(numbers(asNumber.bay)).toEqual(loads.map(({ areaSqFt }) => areaSqFt));
    expect(numbers(asNumber.fill)).toEqual(loads.map(({ fillIn }) => fillIn));
  });

  test('have numbers bare, every text in quotes and nothing for the ticket', () => {
    const bare = new Set<string>([say.load, ...Object.values(asNumber), say.ticket]);
    expect(file.first.every(({ isQuoted }) => isQuoted)).toBe(true);
    for (const heading of file.headings) {
      const quoted = new Set(file.column(heading).map(({ isQuoted }) => isQuoted));
      expect(quoted, heading).toEqual(new Set([!bare.has(heading)]));
    }
  });

  test('have headings that are all in the words, each once', () => {
    expect(new Set(file.headings).size).toBe(file.headings.length);
    const headings = spreadsheetsOf(prepared, pseudo).loads?.headings ?? [];
    expect(headings).toEqual(file.headings.map((heading) => `[${heading}]`));
  });
});

test('the jobs have loads of slab and of soil, on one trailer and on several, in lb and in kg', () => {
  const files = jobs.map(([, prepared]) => loadsFileOf(prepared));
  const areas = files.flatMap((file) => file.texts(asNumber.bay).map((text) => text === ''));
  expect(new Set(areas)).toEqual(new Set([true, false]));
  const severalTrailers = files.map((file) => new Set(file.texts(say.trailer)).size > 1);
  expect(new Set(severalTrailers)).toEqual(new Set([true, false]));
  const units = files.flatMap((file) => file.texts(say.weight).map((text) => text.split(' ')[1]));
  expect(new Set(units)).toEqual(new Set(['lb', 'kg']));
});

test('the same jobs, read again, give the same bytes', () => {
  const written = () =>
    describeAll(preparedIn(DEMO_JOBS)).flatMap(({ id, spreadsheets }) =>
      spreadsheets.map(({ name, spreadsheet }) => [id, name, spreadsheetToCsv(spreadsheet)]),
    );
  expect(written()).toHaveLength(3);
  expect(written()).toEqual(written());
});

describe('a label that reads as a formula', () => {
  test.each([
    { heading: say.what, side: 'job', path: 'site.existing.broken-panel.label' },
    { heading: say.trailer, side: 'company', path: 'trailers.short-box.label' },
    { heading: say.place, side: 'company', path: 'places.crusher.label' },
  ] as const)('from $path stands under $heading and moves nothing else', ({ heading, side, path }) => {
    const start = readTrees(DEMO_JOBS, 'corner-walk');
    const label = '=HYPERLINK("http://a.invalid","Walk"), 2 "panels"';
    const file = loadsFileOf(prepare({ ...start, [side]: withLeaf(start[side], path.split('.'), label) }));
    const plain = loadsFileOf(prepare(start));
    expect(file.texts(heading)).toContain(`'${label}`);
    for (const other of file.headings.filter((one) => one !== heading)) {
      expect(file.texts(other)).toEqual(plain.texts(other));
    }
  });
});

describe('the files of a job', () => {
  test('with loads are loads.csv, in UTF-8 with its mark, beside the plans', async () => {
    const start = prepare(readTrees(DEMO_JOBS, 'corner-walk'));
    const { office, names } = await writtenFor(start);
    expect(names).toEqual(['loads.csv', 'materials.xlsx', 'plan-existing.dxf', 'plan-new.dxf']);
    const bytes = await readFile(join(office, 'loads.csv'));
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(readWithHeadings(bytes.toString('utf8')).rows).toEqual(loadsFileOf(start).rows);
  });

  test('without loads have no loads.csv', async () => {
    const start = prepare(withoutLoads(readTrees(DEMO_JOBS, 'corner-walk')));
    expect(start.results.haul.data.loads).toEqual([]);
    expect(describeMaterials(start.job, start.results, en).loads).toBeNull();
    expect((await writtenFor(start)).names).toEqual(['materials.xlsx', 'plan-new.dxf']);
  });
});

const bench = aWorkbench('corner-walk');
const folders: string[] = [];
afterAll(async () => {
  bench.remove();
  for (const folder of folders) await rm(folder, { recursive: true });
});

function prepare(trees: Trees): PreparedJob {
  return bench.prepare(trees);
}

/** Nothing stands there and nothing is dug. */
function withoutLoads(trees: Trees): Trees {
  const { existing: _, ...site } = (trees.job as { readonly site: Record<string, Trees['job']> }).site;
  const job = { ...(trees.job as Record<string, Trees['job']>), site };
  return { ...trees, job: withLeaf(job, ['build', 'slabs', 'panel', 'dig'], '0 in') };
}

async function writtenFor(one: PreparedJob): Promise<{ office: string; names: readonly string[] }> {
  const folder = await mkdtemp(join(tmpdir(), 'exports-'));
  folders.push(folder);
  await writeExports(folder, describeAll([one]));
  const office = join(folder, one.job.id, 'office');
  return { office, names: (await readdir(office)).toSorted() };
}
