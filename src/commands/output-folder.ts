import { existsSync } from 'node:fs';
import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { isAlive, withLock } from '../print/index.ts';

const NEXT = '.next-';
const OLD = '.old-';

/**
 * Runs a build with the output folder to itself. What it writes goes into a folder beside the old
 * output and is swapped in job by job, so a build that is killed, or finds the disk full, leaves
 * the old output readable.
 *
 * @throws {Error} If another build holds the folder for longer than the patience.
 */
export async function withOutputFolder<T>(
  outputDir: string,
  build: (nextDir: string) => Promise<T>,
): Promise<T> {
  await mkdir(outputDir, { recursive: true });
  return withLock(join(outputDir, '.lock'), PATIENCE_MS, async () => {
    await tidy(outputDir);
    const nextDir = join(outputDir, `${NEXT}${process.pid}`);
    await mkdir(nextDir);
    try {
      return await build(nextDir);
    } finally {
      await rm(nextDir, { recursive: true, force: true });
    }
  });
}

const PATIENCE_MS = 120_000;

/** Puts finished folders in the place of the old ones, each by two renames. */
export async function swapIn(outputDir: string, nextDir: string, names: readonly string[]): Promise<void> {
  const oldDir = join(outputDir, `${OLD}${process.pid}`);
  await mkdir(oldDir, { recursive: true });
  for (const name of names) {
    const place = join(outputDir, name);
    if (existsSync(place)) await rename(place, join(oldDir, name));
    await rename(join(nextDir, name), place);
  }
  await rm(oldDir, { recursive: true, force: true });
}

/** Undoes the half swap of a dead build: what it had moved aside goes back where nothing stands. */
async function tidy(outputDir: string): Promise<void> {
  const entries = await readdir(outputDir);
  for (const entry of entries.filter((name) => isLeftBy(name, OLD))) {
    for (const name of await readdir(join(outputDir, entry))) {
      const place = join(outputDir, name);
      if (!existsSync(place)) await rename(join(outputDir, entry, name), place);
    }
    await rm(join(outputDir, entry), { recursive: true, force: true });
  }
  for (const entry of entries.filter((name) => isLeftBy(name, NEXT))) {
    await rm(join(outputDir, entry), { recursive: true, force: true });
  }
}

function isLeftBy(name: string, prefix: string): boolean {
  const pid = name.startsWith(prefix) ? Number(name.slice(prefix.length)) : Number.NaN;
  return Number.isInteger(pid) && (pid === process.pid || !isAlive(pid));
}
