import { lstatSync, readFileSync } from 'node:fs';
import { type LocatedProblem, problemAt } from '../problems/index.ts';

/** A job that fits on a screen has 2 kB; ten thousand lines have 256 kB. */
const MOST_KB = 256;
const BYTES_IN_KB = 1024;

export type Loaded = { readonly text: string } | { readonly problem: LocatedProblem };

/**
 * The text of a file, or what keeps it from being read. The size is looked at first, so that a
 * huge file costs nothing; a link, a pipe or a device is not followed.
 */
export function loadFile(file: string): Loaded {
  const whole = { file, line: null };
  try {
    const stats = lstatSync(file);
    if (!stats.isFile()) return { problem: problemAt(whole, 'not-a-plain-file', {}) };
    if (stats.size > MOST_KB * BYTES_IN_KB) {
      const size = `${Math.ceil(stats.size / BYTES_IN_KB)} kB`;
      return { problem: problemAt(whole, 'file-too-large', { size, most: `${MOST_KB} kB` }) };
    }
    return decode(file, readFileSync(file));
  } catch (error) {
    return { problem: problemAt(whole, 'unreadable-file', { reason: reasonOf(error) }) };
  }
}

function decode(file: string, bytes: Uint8Array): Loaded {
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { problem: problemAt({ file, line: null }, 'not-utf8', {}) };
  }
}

/** The system's short name of the reason (`EACCES`), without the path that the message repeats. */
export function reasonOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}
