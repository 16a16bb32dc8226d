import { execFile } from 'node:child_process';
import { readdir, readFile, stat, truncate, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';
import { aFolder, someJobs } from './folders.ts';

const CHILD = join(import.meta.dirname, 'prepare-child.ts');

async function figuresBy(...args: readonly string[]): Promise<string> {
  const { stdout } = await promisify(execFile)(process.execPath, ['--import', 'tsx', CHILD, ...args], {
    maxBuffer: 1e9,
  });
  return stdout;
}

/** Each file by its number on the disk: one that is written again is another one. */
async function filesIn(folder: string): Promise<Readonly<Record<string, number>>> {
  const names = (await readdir(folder)).toSorted();
  return Object.fromEntries(
    await Promise.all(names.map(async (name) => [name, (await stat(join(folder, name))).ino] as const)),
  );
}

test('what is kept changes no figure, is written again only where something is new, and may be spoiled', async () => {
  const kept = join(await aFolder(), 'kept');
  const jobs = await someJobs('corner-walk');
  const first = await figuresBy(jobs, kept);
  const files = await filesIn(kept);
  expect(Object.keys(files)).toHaveLength('rules corner-walk'.split(' ').length);
  expect(await figuresBy(jobs, kept)).toBe(first);
  expect(await filesIn(kept)).toEqual(files);

  const job = join(jobs, 'corner-walk/job.yaml');
  await writeFile(job, (await readFile(job, 'utf8')).replaceAll('width: 4 ft', 'width: 5 ft'));
  const changed = await figuresBy(jobs);
  expect(changed).not.toBe(first);
  expect(await figuresBy(jobs, kept)).toBe(changed);
  const later = await filesIn(kept);
  expect(Object.keys(later)).toEqual(Object.keys(files));
  expect(later).not.toEqual(files);

  // One is cut off, the other has a wrong digit; each is found out, and made again.
  const [cut = '', wrong = ''] = Object.keys(later).map((name) => join(kept, name));
  const whole = await readFile(wrong);
  await truncate(cut, 100);
  const at = whole.length - 9;
  await writeFile(wrong, whole.with(at, (whole[at] ?? 0) ^ 1));
  expect(await figuresBy(jobs, kept)).toBe(changed);
  expect((await stat(cut)).size).toBeGreaterThan(100);
  expect(await readFile(wrong)).toEqual(whole);

  // Of very many the oldest go.
  const old = Array.from({ length: 310 }, (_, index) => join(kept, `old-${index}`));
  for (const path of old) {
    await writeFile(path, '');
    await utimes(path, 0, 0);
  }
  await truncate(cut, 100);
  expect(await figuresBy(jobs, kept)).toBe(changed);
  const left = await readdir(kept);
  expect(left).toHaveLength(300);
  expect(left).toEqual(expect.arrayContaining(Object.keys(later)));
});

test('where no folder can be made nothing is kept, and nothing else changes', async () => {
  const file = join(await aFolder(), 'a-file');
  await writeFile(file, '');
  const jobs = await someJobs('corner-walk');
  expect(await figuresBy(jobs, join(file, 'kept'))).toBe(await figuresBy(jobs));
});
