import { randomUUID } from 'node:crypto';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

const POLL_MS = 50;

/**
 * Run a task while holding a lock that other processes respect.
 *
 * The lock is a folder that holds its owner's process id. It is prepared under a private name and
 * renamed into place, so it is never seen without its owner, and a rename onto a folder that is
 * not empty fails: that is what makes one process win. The lock of a process that is gone is moved away.
 *
 * It saves double work; it is not a guarantee. Past `patienceMs` the task runs without the lock
 * (the number of a dead owner may belong to another program by then), so the task must be safe
 * to run twice at once.
 *
 * @param lockFolder Name of the lock; its parent must exist.
 * @param patienceMs How long to wait for a live owner [ms].
 */
export async function withLock<Result>(
  lockFolder: string,
  patienceMs: number,
  task: () => Promise<Result>,
): Promise<Result> {
  const isOwner = await acquire(lockFolder, patienceMs);
  try {
    return await task();
  } finally {
    if (isOwner) await rm(lockFolder, { recursive: true, force: true });
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
  if (ownerPid === null || isAlive(ownerPid)) return;
  // Moved before it is removed: of several waiting processes one moves it, the others find nothing.
  const aside = `${lockFolder}.${randomUUID()}`;
  if (!(await isMovedAside(lockFolder, aside))) return;
  // Another process may have removed the dead lock and taken its own between our look and our move.
  const isStillTheDeadOne = (await ownerOf(aside)) === ownerPid;
  if (!isStillTheDeadOne && (await isMoved(aside, lockFolder))) return;
  await rm(aside, { recursive: true, force: true });
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
