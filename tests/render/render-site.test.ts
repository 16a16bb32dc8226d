import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { SiteToRender } from '../../src/render/index.ts';
import { renderOne, renderSite } from '../../src/render/index.ts';
import * as fixtures from './fixtures.ts';

const projectDir = new URL('../..', import.meta.url).pathname;
let outputDir = '';

beforeEach(async () => {
  outputDir = await mkdtemp(join(tmpdir(), 'render-'));
});
afterEach(() => rm(outputDir, { recursive: true }));

const proposal = {
  kind: 'proposal',
  folder: 'homeowner',
  name: 'proposal',
  view: fixtures.aProposal(),
} as const;
const workOrder = {
  kind: 'work-order',
  folder: 'office',
  name: 'work-order',
  view: fixtures.aWorkOrder(),
} as const;
const site: SiteToRender = {
  jobs: [
    { id: 'maple-court', documents: [proposal, workOrder] },
    { id: 'old-mill', documents: [proposal] },
  ],
  index: fixtures.aJobsPage(),
};

test('writes a page for each document and the jobs page, and says which', async () => {
  const written = await renderSite(site, { projectDir, outputDir, quiet: true });
  expect(written).toEqual([
    'index.html',
    'maple-court/homeowner/proposal.html',
    'maple-court/office/work-order.html',
    'old-mill/homeowner/proposal.html',
  ]);
  const onDisk = await readdir(outputDir, { recursive: true });
  expect(onDisk.filter((path) => path.endsWith('.html')).sort()).toEqual(written);
  const page = await readFile(join(outputDir, 'maple-court/homeowner/proposal.html'), 'utf8');
  expect(page).toBe(await renderOne(proposal, { projectDir }));
});

test('the jobs page links to the documents and leaves the question of today to the reader’s clock', async () => {
  await renderSite(site, { projectDir, outputDir, quiet: true });
  const page = await readFile(join(outputDir, 'index.html'), 'utf8');
  expect(page).toContain('href="maple-court/homeowner/proposal.html"');
  expect(page).toContain('<time datetime="2026-05-11" data-overdue="overdue">May 11, 2026</time>');
});

test('a view without a key that its template needs is an error naming job, document and path', async () => {
  const { surprise: _, ...incomplete } = fixtures.aWorkOrder();
  const broken: SiteToRender = {
    ...site,
    jobs: [
      { id: 'old-mill', documents: [proposal] },
      { id: 'maple-court', documents: [{ ...workOrder, view: incomplete as typeof workOrder.view }] },
    ],
  };
  await expect(renderSite(broken, { projectDir, outputDir, quiet: true })).rejects.toThrow(
    /^Cannot render maple-court\/office\/work-order: .*job maple-court, document office\/work-order: .*view\.surprise/s,
  );
  expect(await readdir(outputDir)).toEqual([]);
});

test('two documents with one name are refused', async () => {
  const twice: SiteToRender = { ...site, jobs: [{ id: 'maple-court', documents: [proposal, proposal] }] };
  await expect(renderSite(twice, { projectDir, outputDir, quiet: true })).rejects.toThrow(
    'two documents would be written to maple-court/homeowner/proposal.html',
  );
});

// Regression: what Eleventy had read of the head of a page it kept, so that a page that was served never showed an edit of it.
test.each([
  ['documents/proposal.njk', '{% block body %}', '{% block body %}<hr class="edited-here">'],
  ['layouts/document.njk', '<main>', '<main><hr class="edited-here">'],
  ['bodies/proposal.njk', '<section class="offer">', '<section class="offer"><hr class="edited-here">'],
  ['styles/base.css', /^/, '.edited-here { color: #000 }'],
])('an edit of %s while the program runs is seen by the next pages', async (file, from, to) => {
  const copied = join(outputDir, 'project');
  for (const name of ['templates', '.eleventy.js', 'package.json'])
    await cp(join(projectDir, name), join(copied, name), { recursive: true });
  const proposalPage = async () => {
    const made = join(outputDir, 'made');
    await renderSite(site, { projectDir: copied, outputDir: made, quiet: true });
    return readFile(join(made, 'maple-court/homeowner/proposal.html'), 'utf8');
  };
  expect(await proposalPage()).not.toContain('edited-here');
  const path = join(copied, 'templates', file);
  await writeFile(path, (await readFile(path, 'utf8')).replace(from, to));
  expect(await proposalPage()).toContain('edited-here');
});
