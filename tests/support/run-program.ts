import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

export const PROJECT_DIR = join(import.meta.dirname, '..', '..');
const BIN = join(PROJECT_DIR, 'src', 'commands', 'bin.js');

export type Ended = { readonly code: number | null; readonly out: string; readonly err: string };
export type RunOptions = {
  readonly env?: Readonly<Record<string, string>>;
  /** Modules loaded before the program. */
  readonly before?: readonly string[];
};
export type Running = {
  readonly child: ChildProcess;
  readonly ended: Promise<Ended>;
  /** What the program printed that fits, as soon as it did; rejects when it ends without. */
  readonly says: (pattern: RegExp) => Promise<RegExpExecArray>;
};

/** The program as a user starts it, in a process of its own. */
export function startProgram(args: readonly string[], options: RunOptions = {}): Running {
  const before = (options.before ?? []).flatMap((module) => ['--import', module]);
  const { FORCE_COLOR: _color, ...env } = process.env;
  const child = spawn(process.execPath, [...before, BIN, ...args], {
    cwd: PROJECT_DIR,
    env: { ...env, ...options.env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let out = '';
  let err = '';
  // Read to the end: a program whose output nobody takes any more would fail for that.
  child.stdout?.on('data', (bytes) => (out += bytes));
  child.stderr?.on('data', (bytes) => (err += bytes));
  const ended = once(child, 'close').then(() => ({ code: child.exitCode, out, err }));
  const says = async (pattern: RegExp) => {
    for (;;) {
      const found = pattern.exec(out) ?? pattern.exec(err);
      if (found !== null) return found;
      if (child.exitCode !== null || child.signalCode !== null)
        throw new Error(`it ended without ${pattern}: ${out}${err}`);
      await sleep(10);
    }
  };
  return { child, ended, says };
}

export function runProgram(args: readonly string[], options: RunOptions = {}): Promise<Ended> {
  return startProgram(args, options).ended;
}
