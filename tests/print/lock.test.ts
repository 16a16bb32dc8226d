import { spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { BusyError, withLock } from '../../src/print/lock.ts';

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'print-lock-'));
});
afterEach(() => rm(folder, { recursive: true }));

async function aLockOf(pid: number): Promise<string> {
  const lock = join(folder, 'lock');
  await mkdir(lock);
  await writeFile(join(lock, 'owner'), String(pid));
  return lock;
}

/** The number of a process that has ended. */
const deadPid = (): number => spawnSync(process.execPath, ['-e', '']).pid;

describe('withLock', () => {
  test('one at a time', async () => {
    const lock = join(folder, 'lock');
    let inside = 0;
    let most = 0;
    const task = async (): Promise<void> => {
      inside += 1;
      most = Math.max(most, inside);
      await sleep(20);
      inside -= 1;
    };
    await Promise.all([1, 2, 3, 4].map(() => withLock(lock, 20_000, task)));
    expect(most).toBe(1);
    expect(await readdir(folder)).toEqual([]);
  });

  test('is given up when the task fails', async () => {
    const lock = join(folder, 'lock');
    const failing = withLock(lock, 1000, async () => {
      throw new Error('no space');
    });
    await expect(failing).rejects.toThrow('no space');
    expect(await readdir(folder)).toEqual([]);
  });

  test('the lock of a dead process is taken over, by one of many', async () => {
    const lock = await aLockOf(deadPid());
    const startedMs = performance.now();
    const order: number[] = [];
    await Promise.all([1, 2, 3].map((n) => withLock(lock, 20_000, async () => void order.push(n))));
    expect(order.toSorted((one, other) => one - other)).toEqual([1, 2, 3]);
    expect(performance.now() - startedMs).toBeLessThan(10_000);
    expect(await readdir(folder)).toEqual([]);
  });

  test('past the patience the task runs, and the lock of the living owner stays', async () => {
    const lock = await aLockOf(process.ppid);
    expect(await withLock(lock, 100, async () => 'done')).toBe('done');
    expect(await readdir(folder)).toEqual(['lock']);
  });

  test('past the patience a task that must be alone does not run', async () => {
    const lock = await aLockOf(process.ppid);
    const refused = withLock(lock, 100, async () => 'done', 'give-up');
    await expect(refused).rejects.toThrow(BusyError);
    await expect(refused).rejects.toMatchObject({ ownerPid: process.ppid, lockFolder: lock });
    expect(await readdir(folder)).toEqual(['lock']);
  });

  // Regression: in a container each run may have the same process number.
  test('a lock that bears our own number and is not ours is taken over', async () => {
    const lock = await aLockOf(process.pid);
    expect(await withLock(lock, 20_000, async () => 'done', 'give-up')).toBe('done');
    expect(await readdir(folder)).toEqual([]);
  });
});
