import { Decimal } from 'decimal.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { describeAll } from '../../src/commands/describe-all.ts';
import { jobsPageOf, summaryOf } from '../../src/commands/job-summary.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import type { DocumentToRender } from '../../src/render/index.ts';
import { renderOne } from '../../src/render/index.ts';
import { changedText } from '../support/change-leaf.ts';
import { FULL_JOB, PROJECT_DIR, TEST_JOBS } from '../support/project.ts';
import { aRenderer, type Renderer } from '../support/render.ts';
import { instancesOf, type SchemaLeaf, schemaLeaves } from '../support/schema-leaves.ts';
import {
  type Leaf,
  leavesOf,
  readTrees,
  subtree,
  type Tree,
  type Trees,
  withLeaf,
} from '../support/trees.ts';
import { aWorkbench } from '../support/workbench.ts';

/*
 * Every value a user can write reaches a document. The full job and its company hold every leaf of
 * both schemas; each is changed by itself, and some document has to differ.
 */
type Side = keyof Trees;
type Edit = { readonly of: Side; readonly path: string; readonly text: string };
type Special = {
  /** Changes made before, in the job that is compared with too. */
  readonly setting?: readonly Edit[];
  /** Changes made instead of the generic one. */
  readonly change?: readonly Edit[];
  readonly reason: string;
};

const BAGS_WIN: readonly Edit[] = [{ of: 'company', path: 'suppliers.bagged.price', text: '$0.10 per bag' }];

/** Leaves for which the generic change is no valid or no telling one. */
const SPECIAL: Readonly<Record<string, Special>> = {
  'company pricing.payments.*.share': {
    change: [
      { of: 'company', path: 'pricing.payments.0.share', text: '25 %' },
      { of: 'company', path: 'pricing.payments.1.share', text: '40 %' },
    ],
    reason: 'the shares add up to the whole, so two change together',
  },
  'company suppliers.bagged.label': {
    setting: BAGS_WIN,
    reason: 'a yard is named where something is bought there',
  },
  'company suppliers.bagged.phone': {
    setting: BAGS_WIN,
    reason: 'a yard is named where something is bought there',
  },
  'company forms.boards.*.height': {
    change: [{ of: 'company', path: 'forms.boards.high-board.height', text: '5 1/4 in' }],
    reason: 'a board as high as its slab has no finding, and one is acknowledged',
  },
  'job job.rule-sets.*': {
    change: [{ of: 'job', path: 'job.rule-sets.1', text: 'california' }],
    reason: 'the ids of rule sets stand in no file of the job',
  },
  'job job.acknowledged.*.finding': {
    change: [{ of: 'job', path: 'job.acknowledged.0.finding', text: 'walk-slopes-across' }],
    reason: 'the codes of rules stand in no file of the job',
  },
  'job job.acknowledged.*.where': {
    change: [{ of: 'job', path: 'job.acknowledged.0.where', text: 'drive' }],
    reason: 'a place of a finding is the id of a thing',
  },
};

const trees = readTrees(TEST_JOBS, FULL_JOB);
const leaves = { company: leavesOf(trees.company), job: leavesOf(trees.job) };
const companyLeaves = schemaLeaves('company');
const allJobLeaves = schemaLeaves('job');
const overrideLeaves = allJobLeaves.filter(({ path }) => path[0] === 'company');
const jobLeaves = allJobLeaves.filter(({ path }) => path[0] !== 'company');

const bench = aWorkbench(FULL_JOB);
afterAll(() => bench.remove());

describe('the full job', () => {
  test.each([
    ['company', companyLeaves],
    ['job', jobLeaves],
  ] as const)('has every leaf of the %s schema', (side, wanted) => {
    expect(wanted.length).toBeGreaterThan(70);
    const missing = wanted.filter((leaf) => instancesOf(leaf, leaves[side]).length === 0);
    expect(missing.map(({ name }) => name)).toEqual([]);
  });

  test('a job can override every leaf of the company, and it counts as if it stood there', () => {
    expect(overrideLeaves.map(({ name }) => name)).toEqual(
      companyLeaves.map(({ name }) => `company.${name}`),
    );
    const changed = companyLeaves.reduce(
      (tree, leaf) => instancesOf(leaf, leaves.company).reduce((at, one) => withChange(at, leaf, one), tree),
      trees.company,
    );
    // Other boards and rules have other findings, so none is acknowledged here.
    const sections = trees.job as Record<string, Record<string, Tree>>;
    const { acknowledged: _, ...particulars } = sections['job'] ?? {};
    const job = { ...sections, job: particulars };
    const there = bench.prepare({ company: changed, job });
    const here = bench.prepare({
      company: trees.company,
      job: { ...job, company: changed },
    });
    expect(plain(here.job)).toEqual(plain(there.job));
    expect(plain(here.job)).not.toEqual(plain(bench.prepare({ company: trees.company, job }).job));
  });

  test('is shown as renderOne shows it', async () => {
    for (const document of documentsOf(bench.prepare(trees))) {
      expect(aRenderer().document(document)).toBe(await renderOne(document, { projectDir: PROJECT_DIR }));
    }
  });
});

/** All leaves at once: the shares of the payments stay as they are, since they have to add up. */
function withChange(tree: Tree, leaf: SchemaLeaf, instance: Leaf): Tree {
  if (leaf.name === 'pricing.payments.*.share') return tree;
  return withLeaf(tree, instance.path, changedText(leaf, instance, trees));
}

/** A job as data: exact numbers as their digits. */
function plain(job: PreparedJob['job']): unknown {
  return JSON.parse(
    JSON.stringify(job, (_, value: unknown) =>
      value instanceof Decimal || typeof value === 'bigint' ? value.toString() : value,
    ),
  );
}

describe('each leaf changes a document', () => {
  let renderer: Renderer;
  const before = new Map<string, Shown>();
  beforeAll(() => {
    renderer = aRenderer();
  });

  test.each([
    ...companyLeaves.map((leaf) => ['company', leaf.name, leaf] as const),
    ...jobLeaves.map((leaf) => ['job', leaf.name, leaf] as const),
  ])('%s %s', (side, name, leaf) => {
    const special = SPECIAL[`${side} ${name}`] ?? { reason: '' };
    const setting = special.setting ?? [];
    const start = withEdits(trees, setting);
    const key = JSON.stringify(setting);
    const known = before.get(key) ?? shownOf(start, renderer);
    before.set(key, known);
    const ways = special.change === undefined ? generic(side, leaf, start) : [special.change];
    // What stands at a place that is not driven to changes nothing; one of several has to.
    expect(ways.some((way) => differs(known, shownOf(withEdits(start, way), renderer)))).toBe(true);
  });
});

function generic(side: Side, leaf: SchemaLeaf, start: Trees): readonly (readonly Edit[])[] {
  return instancesOf(leaf, leavesOf(start[side])).map((instance) => [
    { of: side, path: instance.path.join('.'), text: changedText(leaf, instance, start) },
  ]);
}

function withEdits(start: Trees, edits: readonly Edit[]): Trees {
  return edits.reduce((at, { of, path, text }) => {
    subtree(at[of], path.split('.'));
    return { ...at, [of]: withLeaf(at[of], path.split('.'), text) };
  }, start);
}

type PageText = { readonly view: string; readonly html: () => string };
/** What a job looks like: the view of each page, and its HTML once it is asked for. The binder repeats the others. */
type Shown = ReadonlyMap<string, PageText>;

function documentsOf(prepared: PreparedJob): readonly DocumentToRender[] {
  const [described] = describeAll([prepared]);
  return (described?.documents ?? []).filter(({ kind }) => kind !== 'binder');
}

function shownOf(changed: Trees, renderer: Renderer): Shown {
  const prepared = bench.prepare(changed);
  const jobsPage = jobsPageOf([summaryOf(prepared)]);
  return new Map([
    ...documentsOf(prepared).map(
      (document) => [document.kind, pageText(document.view, () => renderer.document(document))] as const,
    ),
    ['jobs', pageText(jobsPage, () => renderer.jobsPage(jobsPage))] as const,
  ]);
}

function pageText(view: object, render: () => string): PageText {
  let made: string | undefined;
  return { view: JSON.stringify(view), html: () => (made ??= render()) };
}

/** Asks for the HTML only where the views differ: the same view is the same page. */
function differs(one: Shown, other: Shown): boolean {
  expect([...other.keys()]).toEqual([...one.keys()]);
  return [...one].some(([kind, page]) => {
    const twin = other.get(kind);
    return twin !== undefined && page.view !== twin.view && page.html() !== twin.html();
  });
}
