import { Decimal } from 'decimal.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { describeAll } from '../../src/commands/describe-all.ts';
import { figuresJson } from '../../src/commands/figures-json.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { formatMoney, Usd } from '../../src/units/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { piecesOf } from '../support/html.ts';
import { pagesIn } from '../support/pages.ts';
import { partOfFull } from '../support/part-of-full.ts';
import { FULL_JOB, TEST_JOBS } from '../support/project.ts';
import { aRenderer, type Renderer } from '../support/render.ts';
import { type Audience, textLeaves, withTexts } from '../support/text-leaves.ts';
import { readTrees, type Trees, withLeaf } from '../support/trees.ts';
import { aWorkbench } from '../support/workbench.ts';

const bench = aWorkbench(FULL_JOB);
afterAll(() => bench.remove());
let renderer: Renderer;
beforeAll(() => {
  renderer = aRenderer();
});

/** Who may read each canary, by its text. */
const canaries = new Map<string, Audience>();
const trees = withTexts(readTrees(TEST_JOBS, FULL_JOB), (leaf, index, text) => {
  if (leaf.audience === 'public') return text;
  const canary = `Canary${String(index).padStart(3, '0')}x`;
  canaries.set(canary, leaf.audience);
  return canary;
});

describe('nothing of the crew or the office is in the homeowner folder', () => {
  let prepared: PreparedJob;
  beforeAll(() => {
    prepared = bench.prepare(trees);
  });

  test('there are canaries of both kinds, and the office documents hold them', () => {
    const kinds = [...canaries.values()];
    expect(kinds.filter((kind) => kind === 'crew').length).toBeGreaterThan(30);
    // The client's mail address, the reason of an acknowledgement and the label of another cost.
    expect(kinds.filter((kind) => kind === 'office').length).toBeGreaterThanOrEqual(3);
    expect(textLeaves('job').filter(({ audience }) => audience === 'public').length).toBeGreaterThan(15);
    const binder = pagesIn(prepared, en as Words, renderer).get('binder') ?? '';
    const seen = [...canaries.keys()].filter((canary) => binder.includes(canary));
    // Places that are not driven to, people and machines that are not on this job are not named.
    expect(seen.length).toBeGreaterThan(30);
  });

  test('no canary, no amount that is not a price, no share of the office', () => {
    const secrets = secretsOf(prepared);
    expect(secrets.length).toBeGreaterThan(100);
    for (const { html } of homeownerPages(prepared)) expect(leaksIn(html, secrets)).toEqual([]);
  });

  test('every amount there is a price', () => {
    const prices = pricesOf(prepared);
    for (const { html } of homeownerPages(prepared)) {
      const amounts = piecesOf(html)
        .filter(({ kind }) => kind === 'text')
        .flatMap(({ text }) => text.match(/\$[\d,]*\d(?:\.\d+)?/g) ?? []);
      expect(amounts.length).toBeGreaterThan(10);
      expect(amounts.filter((amount) => !prices.has(amount))).toEqual([]);
    }
  });

  test.each([
    ['a crew note', () => [...canaries.keys()][0] ?? ''],
    ['a wage', () => '$37.41'],
    ['a wage without its sign', () => 'at 37.41 an hour'],
    ['the margin', () => 'margin 17.3 %'],
    ['the margin as a ratio', () => '0.173'],
    ['the whole cost', (small: PreparedJob) => formatMoney(new Usd(small.results.cost.figures.total.value))],
  ] as const)('the check finds %s where it is planted', (_, planted) => {
    const few = partOfFull(trees, []);
    const text = planted(bench.prepare(few));
    const leaky = bench.prepare(inJob(few, 'site.access.note', `It says ${text} here`));
    const found = homeownerPages(leaky).flatMap(({ html }) => leaksIn(html, secretsOf(leaky)));
    expect(found).not.toEqual([]);
  });
});

function inJob(start: Trees, path: string, text: string): Trees {
  return { ...start, job: withLeaf(start.job, path.split('.'), text) };
}

/** Everything that goes into the folder that may be sent. */
function homeownerPages(prepared: PreparedJob): readonly { readonly name: string; readonly html: string }[] {
  const documents = describeAll([prepared]).flatMap((job) => job.documents);
  const pages = documents.filter(({ folder }) => folder === 'homeowner');
  expect(pages.map(({ name }) => name)).toEqual(['proposal']);
  return pages.map((page) => ({ name: page.name, html: renderer.document(page) }));
}

type Row = { readonly unit: string; readonly value: number | string; readonly inputs: Record<string, Row> };

/**
 * What the homeowner is told: the groups, the tax, the total, the payments, the agreed differences, and what
 * others ask for a panel of the public walk.
 */
function pricesOf({ job, results }: PreparedJob): ReadonlySet<string> {
  const { lines, minimumChargeAddition, tax, total, payments } = results.price.data;
  const prices = [
    ...lines.map(({ price }) => price),
    minimumChargeAddition,
    tax,
    total,
    ...payments.map(({ price }) => price),
    ...Object.values(results.hidden.data),
    ...Object.values(job.tieIns.publicWalks).flatMap(({ panel }) =>
      panel === null ? [] : [new Usd(panel.priceUsd), new Usd(panel.priceUsd.times(panel.ownerRatio))],
    ),
  ];
  return new Set(prices.map((price) => formatMoney(price)));
}

/** Canaries, amounts of figures.json that are no price, and the shares of the office; as they may be written. */
function secretsOf(prepared: PreparedJob): readonly string[] {
  const rows = Object.values(JSON.parse(figuresJson(prepared)) as Record<string, Row>);
  const prices = pricesOf(prepared);
  const amounts = rows
    .flatMap((row) => [row, ...Object.values(row.inputs)])
    .filter(({ unit }) => unit.startsWith('$'))
    .map(({ value }) => new Decimal(value))
    // A round amount can be the number of something else on the page; the full job has none but 0.
    .filter((value) => !value.isInteger() && !prices.has(formatMoney(new Usd(value))));
  const { pricing, labor } = prepared.job.company;
  const share = Number(prepared.results.price.figures['margin-share'].value);
  const ratios = [pricing.overheadRatio, pricing.marginRatio, labor.burdenRatio, share];
  return [
    ...canaries.keys(),
    ...new Set(
      amounts.flatMap((value) => [formatMoney(new Usd(value)).slice(1), value.toString(), value.toFixed(2)]),
    ),
    ...ratios.flatMap((ratio) => [
      String(ratio),
      ...[1, 2].map((digits) => `${(ratio * 100).toFixed(digits)} %`),
      `${Number((ratio * 100).toFixed(2))}%`,
    ]),
  ];
}

/** Secrets anywhere in a page: text, attributes, comments, scripts, styles. */
function leaksIn(page: string, secrets: readonly string[]): readonly string[] {
  const html = withoutCoordinates(page);
  const pieces = piecesOf(html);
  const all = pieces.map(({ text }) => text).join('\n');
  return secrets.filter((secret) => {
    const alone = new RegExp(`(?<![\\d.,])${secret.replace(/[.$%]/g, '\\$&')}(?!\\d)`);
    return alone.test(all) || alone.test(html);
  });
}

/** Where a line of a drawing runs: hundreds of numbers, some of which look like an amount. */
function withoutCoordinates(html: string): string {
  return html.replace(/<svg[\s\S]*?<\/svg>/g, (svg) =>
    svg.replace(/ (?:d|x|y|x1|y1|x2|y2|cx|cy|r|points|transform|viewBox)="[^"]*"/g, ''),
  );
}

/** A program, a value of a template and the end of an attribute, in one text. */
const HOSTILE = `<script>alert(1)</script>{{ 7*7 }}"><img src=x onerror=alert(1)>'`;

describe('every text of a job and its company stays text', () => {
  let pages: ReadonlyMap<string, string>;
  beforeAll(() => {
    const prepared = bench.prepare(withTexts(readTrees(TEST_JOBS, FULL_JOB), () => HOSTILE));
    pages = pagesIn(prepared, en as Words, renderer);
  });

  test.each(['proposal', 'work-order', 'materials', 'safety', 'calculation', 'binder', 'site-walk', 'jobs'])(
    'on the page %s',
    (name) => expectHarmless(pages.get(name) ?? '', HOSTILE),
  );
});

function expectHarmless(html: string, hostile: string): void {
  const pieces = piecesOf(html);
  const said = pieces.filter(({ kind, text }) => kind === 'text' && text.includes(hostile));
  expect(said.length).toBeGreaterThan(0);
  // Wherever a part of it stands, all of it does, but for labels of a drawing, which are broken into lines.
  const parts = pieces.filter(
    ({ kind, text, within }) =>
      kind === 'text' && /alert\(1\)|onerror/.test(text) && !within.some((one) => one.startsWith('svg')),
  );
  expect(parts.filter(({ text }) => !text.includes(hostile))).toEqual([]);
  const code = pieces.filter(({ kind }) => kind === 'script' || kind === 'style' || kind === 'comment');
  expect(code.filter(({ text }) => text.includes('alert(1)') && text.includes('<'))).toEqual([]);
  expect(pieces.filter(({ name }) => name.startsWith('on') || name === 'src')).toEqual([]);
  expect(pieces.filter(({ kind, text }) => kind === 'script' && text.includes('alert('))).toEqual([]);
}
