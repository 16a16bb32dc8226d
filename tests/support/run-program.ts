import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';

export const PROJECT_DIR = join(import.meta.dirname, '..', '..');
const MAIN = join(PROJECT_DIR, 'src', 'commands', 'main.ts');

export type Ended = { readonly code: number | null; readonly out: string; readonly err: string };
export type RunOptions = {
  readonly env?: Readonly<Record<string, string>>;
  /** Modules loaded before the program. */
  readonly before?: readonly string[];
};
export type Running = { readonly child: ChildProcess; readonly ended: Promise<Ended> };

/** The program as a user starts it, in a process of its own. */
export function startProgram(args: readonly string[], options: RunOptions = {}): Running {
  const before = (options.before ?? []).flatMap((module) => ['--import', module]);
  const { FORCE_COLOR: _color, ...env } = process.env;
  const child = spawn(process.execPath, ['--import', 'tsx', ...before, MAIN, ...args], {
    cwd: PROJECT_DIR,
    env: { ...env, ...options.env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let out = '';
  let err = '';
  child.stdout?.on('data', (bytes) => (out += bytes));
  child.stderr?.on('data', (bytes) => (err += bytes));
  const ended = once(child, 'close').then(() => ({ code: child.exitCode, out, err }));
  return { child, ended };
}

export function runProgram(args: readonly string[], options: RunOptions = {}): Promise<Ended> {
  return startProgram(args, options).ended;
}
