import { createHash } from 'node:crypto';
import { cp, mkdtemp, readdir, readFile, rm, symlink } from 'node:fs/promises';
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

/** A copy of the demo jobs, or of some of them. */
export async function someJobs(...ids: readonly string[]): Promise<string> {
  const jobs = await aFolder();
  const wanted = ids.length === 0 ? await readdir(inject('demoJobs')) : ['company', ...ids];
  for (const name of wanted) await cp(join(inject('demoJobs'), name), join(jobs, name), { recursive: true });
  return jobs;
}

/**
 * Copies of the demo jobs and of all that was built from them. The cache is the one of that build:
 * what is added there has a name of its own, and nobody may change what is there.
 */
export async function aBuiltPlace(): Promise<Place> {
  const folder = await aFolder();
  const place = { folder, jobs: join(folder, 'jobs'), output: join(folder, 'output') };
  await cp(inject('demoJobs'), place.jobs, { recursive: true });
  const cache = join(inject('demoOutput'), '.cache');
  await cp(inject('demoOutput'), place.output, { recursive: true, filter: (path) => path !== cache });
  await symlink(cache, join(place.output, '.cache'));
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
