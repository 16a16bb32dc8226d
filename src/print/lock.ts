import { randomUUID } from 'node:crypto';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

const POLL_MS = 50;

/** Another process holds the lock and does not give it up. */
export class BusyError extends Error {
  readonly lockFolder: string;
  readonly ownerPid: number | null;

  constructor(lockFolder: string, ownerPid: number | null) {
    super(`${lockFolder} is held by process ${ownerPid}`);
    this.lockFolder = lockFolder;
    this.ownerPid = ownerPid;
  }
}

/** How many tasks of this process hold or want a lock, by lock. */
const wantedHere = new Map<string, number>();

/**
 * Run a task while holding a lock that other processes respect.
 *
 * The lock is a folder that holds its owner's process id. It is prepared under a private name and
 * renamed into place, so it is never seen without its owner, and a rename onto a folder that is
 * not empty fails: that is what makes one process win. The lock of a process that is gone is moved away.
 *
 * The number of a dead owner may belong to another program by then, which looks alive. So past
 * `patienceMs` the task either runs without the lock, if it is safe to run twice at once, or not at all.
 *
 * @param lockFolder Name of the lock; its parent must exist.
 * @param patienceMs How long to wait for a live owner [ms].
 * @param thereafter What to do when the patience is over.
 * @throws {BusyError} If the patience is over and `thereafter` is `give-up`.
 */
export async function withLock<Result>(
  lockFolder: string,
  patienceMs: number,
  task: () => Promise<Result>,
  thereafter: 'run-anyway' | 'give-up' = 'run-anyway',
): Promise<Result> {
  wantedHere.set(lockFolder, (wantedHere.get(lockFolder) ?? 0) + 1);
  let isOwner = false;
  try {
    isOwner = await acquire(lockFolder, patienceMs);
    if (!isOwner && thereafter === 'give-up') throw new BusyError(lockFolder, await ownerOf(lockFolder));
    return await task();
  } finally {
    if (isOwner) await release(lockFolder);
    wantedHere.set(lockFolder, (wantedHere.get(lockFolder) ?? 1) - 1);
  }
}

async function acquire(lockFolder: string, patienceMs: number): Promise<boolean> {
  const prepared = `${lockFolder}.${randomUUID()}`;
  await mkdir(prepared, { mode: 0o700 });
  await writeFile(join(prepared, 'owner'), String(process.pid));
  const giveUpMs = performance.now() + patienceMs;
  while (!(await isMoved(prepared, lockFolder))) {
    await removeIfOwnerIsGone(lockFolder);
    if (performance.now() > giveUpMs) {
      await rm(prepared, { recursive: true, force: true });
      return false;
    }
    await sleep(POLL_MS);
  }
  return true;
}

/** Moved before it is removed: a lock that is half removed is an empty folder, which anybody may replace. */
async function release(lockFolder: string): Promise<void> {
  const aside = `${lockFolder}.${randomUUID()}`;
  if (await isMovedAside(lockFolder, aside)) await rm(aside, { recursive: true, force: true });
}

async function isMoved(from: string, to: string): Promise<boolean> {
  try {
    await rename(from, to);
    return true;
  } catch (error) {
    if (isCode(error, 'ENOTEMPTY', 'EEXIST', 'EPERM')) return false;
    throw error;
  }
}

async function removeIfOwnerIsGone(lockFolder: string): Promise<void> {
  const ownerPid = await ownerOf(lockFolder);
  if (ownerPid === null || isHeldBy(ownerPid, lockFolder)) return;
  // Moved before it is removed: of several waiting processes one moves it, the others find nothing.
  const aside = `${lockFolder}.${randomUUID()}`;
  if (!(await isMovedAside(lockFolder, aside))) return;
  // Another process may have removed the dead lock and taken its own between our look and our move.
  const isStillTheDeadOne = (await ownerOf(aside)) === ownerPid;
  if (!isStillTheDeadOne && (await isMoved(aside, lockFolder))) return;
  await rm(aside, { recursive: true, force: true });
}

/** In a container every run may have the same number: our own number on a lock only we want is a dead one's. */
function isHeldBy(ownerPid: number, lockFolder: string): boolean {
  return ownerPid === process.pid ? (wantedHere.get(lockFolder) ?? 0) > 1 : isAlive(ownerPid);
}

async function isMovedAside(from: string, to: string): Promise<boolean> {
  try {
    await rename(from, to);
    return true;
  } catch (error) {
    if (isCode(error, 'ENOENT')) return false;
    throw error;
  }
}

async function ownerOf(lockFolder: string): Promise<number | null> {
  try {
    return Number(await readFile(join(lockFolder, 'owner'), 'utf8'));
  } catch (error) {
    if (isCode(error, 'ENOENT')) return null;
    throw error;
  }
}

/** A process of another user answers EPERM, and is alive. */
export function isAlive(pid: number): boolean {
  if (!(pid > 0)) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return isCode(error, 'EPERM');
  }
}

function isCode(error: unknown, ...codes: string[]): boolean {
  return error instanceof Error && 'code' in error && codes.includes(String(error.code));
}
