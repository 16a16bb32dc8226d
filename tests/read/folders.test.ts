import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import * as z from 'zod';
import { isJobName, listJobs, readJob, sourceLines } from '../../src/read/index.ts';
import { checkSections } from '../../src/read/read-job.ts';
import { readTree } from '../../src/read/yaml-tree.ts';

let root = '';
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'read-'));
});
afterEach(() => {
  rmSync(root, { recursive: true });
});

const codes = (input: { readonly problems: readonly { readonly code: string }[] }) =>
  input.problems.map(({ code }) => code);

function aJobFolder(files: Readonly<Record<string, string>> = {}): string {
  const folder = join(root, 'walk');
  mkdirSync(folder);
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

describe('the name of a job', () => {
  test.each(['maple-court', 'a', '2026-014-drive'])('%s is one', (name) => {
    expect(isJobName(name)).toBe(true);
  });
  test.each([
    '..',
    '../x',
    'a/b',
    'Maple',
    'maple_court',
    '-a',
    'a-',
    'a--b',
    '',
    'company',
    'constructor',
    '__proto__',
    'a\n',
    '12',
    'x'.repeat(81),
  ])('%j is none', (name) => {
    expect(isJobName(name)).toBe(false);
  });
});

describe('listJobs', () => {
  test('folders by name; the company and hidden ones are no jobs', () => {
    for (const name of ['walk', 'company', '.git', 'drive']) mkdirSync(join(root, name));
    writeFileSync(join(root, 'notes.txt'), 'x');
    expect(listJobs(root)).toEqual({ ids: ['drive', 'walk'], problems: [] });
  });

  test('a folder without jobs, and none at all', () => {
    expect(codes(listJobs(root))).toEqual(['no-jobs']);
    expect(codes(listJobs(join(root, 'nowhere')))).toEqual(['no-folder']);
  });

  test('a folder that cannot be a job is refused, the others are read', () => {
    for (const name of ['walk', 'Old Jobs']) mkdirSync(join(root, name));
    const list = listJobs(root);
    expect(list.ids).toEqual(['walk']);
    expect(codes(list)).toEqual(['folder-name']);
  });

  test('names asked for: the nearest is shown, and none leads out of the folder', () => {
    for (const name of ['walk', 'drive']) mkdirSync(join(root, name));
    const list = listJobs(root, ['walk/', 'drvie', '../walk', 'company']);
    expect(list.ids).toEqual(['walk']);
    expect(list.problems.map(({ code, parts }) => ({ code, parts }))).toEqual([
      { code: 'unknown-job', parts: { name: 'drvie', nearest: 'drive' } },
      { code: 'folder-name', parts: { name: '../walk' } },
      { code: 'folder-name', parts: { name: 'company' } },
    ]);
  });
});

describe('the files of a job', () => {
  test('a folder that is not there, and an empty one', () => {
    expect(codes(readJob(join(root, 'walk')))).toEqual(['no-folder']);
    expect(codes(readJob(aJobFolder()))).toEqual(['no-yaml']);
  });

  test('a folder whose name is no job is not opened', () => {
    expect(codes(readJob(`${root}/..`))).toEqual(['folder-name']);
  });

  test('a file of 50 MB is refused unread', () => {
    const folder = aJobFolder({ 'job.yaml': '' });
    truncateSync(join(folder, 'job.yaml'), 50_000_000);
    const input = readJob(folder);
    expect(input.problems.map(({ parts }) => parts)).toEqual([{ size: '48829 kB', most: '256 kB' }]);
    expect(sourceLines()(join(folder, 'job.yaml'), 1)).toBeNull();
  });

  test('a link is not followed out of the folder', () => {
    writeFileSync(join(root, 'secret.yaml'), 'job: {}\n');
    const folder = aJobFolder();
    symlinkSync(join(root, 'secret.yaml'), join(folder, 'job.yaml'));
    expect(codes(readJob(folder))).toEqual(['not-a-plain-file']);
  });

  test('YAML in a folder of a job is not passed over', () => {
    const folder = aJobFolder({ 'job.yaml': 'job: {}\n' });
    mkdirSync(join(folder, 'changes'));
    writeFileSync(join(folder, 'changes', 'one.yaml'), 'x: 1\n');
    mkdirSync(join(folder, 'photos'));
    writeFileSync(join(folder, 'photos', 'before.jpg'), '');
    expect(codes(readJob(folder)).filter((code) => code === 'folder-not-read')).toHaveLength(1);
  });

  test('a byte order mark and line ends of two characters change nothing', () => {
    const text = 'plan:\r\n  starts-on: 2026-02-30\r\n  crew: [foreman]\r\n  trailers: []\r\n';
    const input = readJob(aJobFolder({ 'plan.yaml': `\ufeff${text}` }));
    const problem = input.problems.find(({ code }) => code === 'not-a-date');
    expect(problem?.spot).toMatchObject({ line: 2, column: 14, length: 10 });
    expect(sourceLines()(problem?.spot.file ?? '', 2)).toBe('  starts-on: 2026-02-30');
  });
});

describe('a folder that is read once more', () => {
  const plan = (crew: string) => `plan: { starts-on: 2026-06-24, crew: [${crew}], trailers: [short-box] }\n`;
  const job = 'job: { label: Walk, client: { name: Robin Hale } }\n';

  test('says what stands in it now; a section of which nothing changed is not read anew', () => {
    const folder = aJobFolder({ 'plan.yaml': plan('ann, bob'), 'job.yaml': job });
    const first = readJob(folder);
    expect(first.sections.plan?.crew).toEqual(['ann', 'bob']);
    writeFileSync(join(folder, 'plan.yaml'), plan('bob, ann'));
    const second = readJob(folder);
    expect(second.sections.plan?.crew).toEqual(['bob', 'ann']);
    expect(second.origins.get('plan.crew.0')?.text).toBe('bob');
    expect(second.origins.get('job.label')?.spot).toBe(first.origins.get('job.label')?.spot);
  });

  test('is checked anew by another schema', () => {
    const tree = readTree('plan: { crew: ann }\n', 'job.yaml', 'job').root;
    if (tree?.kind !== 'map') throw new Error('it is a map');
    const by = (schema: z.ZodType) =>
      checkSections(tree, { plan: { schema: () => schema, isRequired: false } });
    const texts = z.record(z.string(), z.string());
    expect(by(texts)).toEqual({ sections: { plan: { crew: 'ann' } }, problems: [] });
    const changed = z.record(
      z.string(),
      z.string().transform((text) => `${text}!`),
    );
    expect(by(changed).sections).toEqual({ plan: { crew: 'ann!' } });
  });

  test('has its problems each time, in the place where they are', () => {
    const folder = aJobFolder({ 'plan.yaml': plan('ann, bob').replace('crew', 'crow') });
    const linesOf = () =>
      readJob(folder).problems.flatMap(({ code, spot }) => (code === 'unknown-key' ? [spot.line] : []));
    expect(linesOf()).toEqual([1]);
    expect(linesOf()).toEqual([1]);
    writeFileSync(join(folder, 'plan.yaml'), `\n${plan('ann, bob').replace('crew', 'crow')}`);
    expect(linesOf()).toEqual([2]);
  });
});
