import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Decimal } from 'decimal.js';
import { afterAll, describe, expect, onTestFinished, test } from 'vitest';
import { jobsPageOf, summaryOf } from '../../src/commands/job-summary.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { renderSite } from '../../src/render/index.ts';
import { changedText } from '../support/change-leaf.ts';
import { testLeaves } from '../support/leaf-tests.ts';
import { FULL_JOB, jobNamed, PROJECT_DIR, preparedIn, TEST_JOBS } from '../support/project.ts';
import { isFullRun } from '../support/property-runs.ts';
import { aRenderer } from '../support/render.ts';
import { instancesOf, type SchemaLeaf, schemaLeaves } from '../support/schema-leaves.ts';
import { documentsOf } from '../support/shown-pages.ts';
import { type Leaf, leavesOf, readTrees, type Tree, withLeaf } from '../support/trees.ts';
import { aWorkbench } from '../support/workbench.ts';

/*
 * Every value a user can write reaches a document. The full job and its company hold every leaf of
 * both schemas; each is changed by itself, and some document has to differ. Those of the company
 * are in a file of their own, so that the two run side by side.
 */
const trees = readTrees(TEST_JOBS, FULL_JOB);
const leaves = { company: leavesOf(trees.company), job: leavesOf(trees.job) };
const companyLeaves = schemaLeaves('company');
const allJobLeaves = schemaLeaves('job');
const overrideLeaves = allJobLeaves.filter(({ path }) => path[0] === 'company');
const jobLeaves = allJobLeaves.filter(({ path }) => path[0] !== 'company');

/** Keys that slabs and what is there share by name alone. */
const NOT_OF_SHAPES = new Set(['label', 'thickness']);

const bench = aWorkbench(FULL_JOB, { why: false });
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
    const there = bench.resolve({ company: changed, job });
    const here = bench.resolve({
      company: trees.company,
      job: { ...job, company: changed },
    });
    expect(plain(here.job)).toEqual(plain(there.job));
    expect(plain(here.job)).not.toEqual(plain(bench.resolve({ company: trees.company, job }).job));
  });

  test('is shown as a build shows it', async () => {
    const prepared = jobNamed(preparedIn(TEST_JOBS), FULL_JOB);
    const index = jobsPageOf([summaryOf(prepared)]);
    const documents = documentsOf(prepared);
    const outputDir = await mkdtemp(join(tmpdir(), 'leaves-'));
    onTestFinished(() => rm(outputDir, { recursive: true }));
    const site = { jobs: [{ id: FULL_JOB, documents }], index };
    await renderSite(site, { projectDir: PROJECT_DIR, outputDir, quiet: true });
    const built = (path: string) => readFile(join(outputDir, `${path}.html`), 'utf8');
    const renderer = aRenderer();
    expect(documents.length).toBeGreaterThan(4);
    for (const document of documents) {
      const path = `${FULL_JOB}/${document.folder}/${document.name}`;
      expect(renderer.document(document)).toBe(await built(path));
    }
    expect(renderer.jobsPage(index)).toBe(await built('index'));
  });
});

/** All leaves at once, but for shares that have to add up, and base where a fee depends on its being sold. */
function withChange(tree: Tree, leaf: SchemaLeaf, instance: Leaf): Tree {
  if (['pricing.payments.*.share', 'places.*.sells-base'].includes(leaf.name)) return tree;
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

/**
 * What is there and what will be take the same shapes, by the same part of the schema and the same code: those
 * of what is there are tried in the long run, and the others in every run.
 */
const shapes = new Set(
  jobLeaves.flatMap(({ path, name }) =>
    path[1] === 'slabs' && !NOT_OF_SHAPES.has(path[3] ?? '')
      ? [name.replace('build.slabs', 'site.existing')]
      : [],
  ),
);

testLeaves('job', jobLeaves, isFullRun ? jobLeaves : jobLeaves.filter(({ name }) => !shapes.has(name)));
