import { createHash } from 'node:crypto';
import { cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inject, onTestFinished } from 'vitest';

/** A folder of its own for one test. */
export async function aFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'commands-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

export type Place = { readonly folder: string; readonly jobs: string; readonly output: string };

/** Copies of the demo jobs and of all that was built from them, cache included. */
export async function aBuiltPlace(): Promise<Place> {
  const folder = await aFolder();
  const place = { folder, jobs: join(folder, 'jobs'), output: join(folder, 'output') };
  await cp(inject('demoJobs'), place.jobs, { recursive: true });
  await cp(inject('demoOutput'), place.output, { recursive: true });
  return place;
}

/** Every file below a folder, with a hash of its bytes; the cache left out, which no reader opens. */
export async function bytesOf(folder: string): Promise<Readonly<Record<string, string>>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((path) => !path.startsWith(join(folder, '.cache')));
  const hashed = files.toSorted().map(async (path) => {
    const bytes = await readFile(path);
    return [path.slice(folder.length + 1), createHash('sha256').update(bytes).digest('hex')] as const;
  });
  return Object.fromEntries(await Promise.all(hashed));
}

/** What stands in the output folder beside the jobs and the pages: nothing, after a build. */
export async function leftIn(output: string): Promise<readonly string[]> {
  return (await readdir(output)).filter((name) => name.startsWith('.') && name !== '.cache');
}
