import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';

/** A bare Linux has no `ps`, other systems have no `/proc`. */
const HAS_PROC = existsSync('/proc/self/stat');

/** What a process started itself and is not collected yet. */
export function childrenOf(pid: number): readonly number[] {
  if (!HAS_PROC) return said('ps', ['-o', 'pid=', '--ppid', String(pid)]).map(Number);
  try {
    const tasks = readdirSync(`/proc/${pid}/task`);
    return tasks.flatMap((task) =>
      wordsOf(readFileSync(`/proc/${pid}/task/${task}/children`, 'utf8')).map(Number),
    );
  } catch {
    return [];
  }
}

/** A process with all that it started, and they. */
export function treeOf(pid: number): readonly number[] {
  return [pid, ...childrenOf(pid).flatMap(treeOf)];
}

/** Whether it is there and not only waiting to be collected. */
export function isRunning(pid: number): boolean {
  const [state = 'Z'] = HAS_PROC ? statusOf(pid) : said('ps', ['-o', 'stat=', '-p', String(pid)]);
  return !state.startsWith('Z');
}

function statusOf(pid: number): readonly string[] {
  try {
    // The name, in brackets, may hold anything.
    return wordsOf(readFileSync(`/proc/${pid}/stat`, 'utf8').replace(/^.*\) /s, ''));
  } catch {
    return [];
  }
}

function said(command: string, args: readonly string[]): readonly string[] {
  return wordsOf(spawnSync(command, args, { encoding: 'utf8' }).stdout);
}

function wordsOf(text: string): readonly string[] {
  return text.split(/\s+/).filter((word) => word !== '');
}
