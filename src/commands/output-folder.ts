import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm } from 'node:fs/promises';
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

/** Something stands where a build would put its own, and no build made it. */
export class ForeignError extends Error {
  readonly place: string;

  constructor(place: string) {
    super(`${place} was made by no build`);
    this.place = place;
  }
}

/** What a build puts into the folder of a job, by the folders in it. */
const PARTS: Readonly<Record<string, RegExp>> = {
  homeowner: /^proposal\.(html|pdf)$/,
  office:
    /^((work-order|materials|safety|calculation|binder)\.(html|pdf)|(figures|summary)\.json|loads\.csv|materials\.xlsx|(plan|profile)-.*\.dxf)$/,
};
/** What file managers leave in a folder that somebody looked into. */
const LEFT_BY_MACHINES = /^(\.DS_Store|\._.*|Thumbs\.db|desktop\.ini)$/i;
const JOBS_PAGE = 'index.html';

/**
 * Nothing is replaced but what an earlier build made: with the folder of the jobs for the output, the jobs
 * themselves would be.
 *
 * @param ids Of the jobs that are built.
 * @throws {ForeignError} If a folder of such a name holds anything else, or there is another page of our name.
 */
export async function refuseForeign(outputDir: string, ids: readonly string[]): Promise<void> {
  for (const id of ids) {
    const place = join(outputDir, id);
    await refuseOthers(place, (name) => Object.hasOwn(PARTS, name));
    for (const [part, ours] of Object.entries(PARTS))
      await refuseOthers(join(place, part), (name) => ours.test(name));
  }
  await refuseForeignPage(outputDir, JOBS_PAGE, 'jobs');
}

/**
 * A page that stands alone in the output, likewise.
 *
 * @throws {ForeignError} If there is another page of that name.
 */
export async function refuseForeignPage(
  outputDir: string,
  name: string,
  kind: 'jobs' | 'site-walk',
): Promise<void> {
  const page = join(outputDir, name);
  const html = await whatStands(page, readFile(page, 'utf8'));
  if (html !== null && !html.includes(`class="sheet sheet--${kind}"`)) throw new ForeignError(page);
}

/** A signed proposal is kept beside the one that was printed, and a build would take it away. */
async function refuseOthers(folder: string, isOurs: (name: string) => boolean): Promise<void> {
  const entries = (await whatStands(folder, readdir(folder))) ?? [];
  const foreign = entries.find((name) => !isOurs(name) && !LEFT_BY_MACHINES.test(name));
  if (foreign !== undefined) throw new ForeignError(join(folder, foreign));
}

/** Null where nothing does. @throws {ForeignError} If it is a file where a folder should be, or the other way round. */
async function whatStands<T>(place: string, read: Promise<T>): Promise<T | null> {
  try {
    return await read;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : null;
    if (code === 'ENOENT') return null;
    throw code === 'ENOTDIR' || code === 'EISDIR' ? new ForeignError(place) : error;
  }
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
