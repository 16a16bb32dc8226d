import { existsSync } from 'node:fs';
import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { withLock } from '../print/index.ts';

const NEXT = '.next-';
const OLD = '.old-';

/**
 * Runs a build with the output folder to itself. What it writes goes into a folder beside the old
 * output and is swapped in job by job, so a build that is killed, or finds the disk full, leaves
 * the old output readable.
 *
 * @param patienceMs How long to wait for another build to end [ms].
 * @throws {BusyError} If another build holds the folder for longer than that.
 */
export async function withOutputFolder<T>(
  outputDir: string,
  build: (nextDir: string) => Promise<T>,
  patienceMs = 120_000,
): Promise<T> {
  await mkdir(outputDir, { recursive: true });
  const alone = async () => {
    await tidy(outputDir);
    const nextDir = join(outputDir, `${NEXT}${process.pid}`);
    await mkdir(nextDir);
    try {
      return await build(nextDir);
    } finally {
      await rm(nextDir, { recursive: true, force: true });
    }
  };
  return withLock(join(outputDir, '.lock'), patienceMs, alone, 'give-up');
}

/**
 * Puts finished folders in the place of the old ones, each by two renames.
 *
 * @throws {Error} If one cannot be moved (open in another program); its old one is in place then.
 */
export async function swapIn(outputDir: string, nextDir: string, names: readonly string[]): Promise<void> {
  const oldDir = join(outputDir, `${OLD}${process.pid}`);
  await mkdir(oldDir, { recursive: true });
  for (const name of names) {
    const place = join(outputDir, name);
    const aside = join(oldDir, name);
    if (existsSync(place)) await rename(place, aside);
    try {
      await rename(join(nextDir, name), place);
    } catch (error) {
      if (existsSync(aside)) await rename(aside, place);
      throw error;
    }
  }
  await rm(oldDir, { recursive: true, force: true });
}

/**
 * Undoes the half swap of a dead build: what it had moved aside goes back where nothing stands.
 * Whoever holds the lock is alone, so every such folder belongs to a build that is dead.
 */
async function tidy(outputDir: string): Promise<void> {
  const entries = await readdir(outputDir);
  for (const entry of entries.filter((name) => name.startsWith(OLD))) {
    for (const name of await readdir(join(outputDir, entry))) {
      const place = join(outputDir, name);
      if (!existsSync(place)) await rename(join(outputDir, entry, name), place);
    }
    await rm(join(outputDir, entry), { recursive: true, force: true });
  }
  for (const entry of entries.filter((name) => name.startsWith(NEXT))) {
    await rm(join(outputDir, entry), { recursive: true, force: true });
  }
}
