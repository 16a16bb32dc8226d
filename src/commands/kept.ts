import { createHash, randomUUID } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { type KeptResults, withKeptResults } from '../calculate/kept-results.ts';
import { type RulesInput, readRules } from '../read/index.ts';

/*
 * What the program worked out and need not work out again: where joints go, which trips, how water runs, what the
 * rule sets say. It is kept with the bundle that made it and thrown away with it; a file that is gone or spoiled is
 * made again, and where none can be kept nothing else changes.
 */

/** Given by the bundle; there is none where the sources run as they are. */
declare const KEPT_FOLDER: string;

/** Jobs whose results stay: more than an office has open. */
const MOST_FILES = 300;
const SUM_BYTES = 32;

let rules: RulesInput | null = null;

/** The rule sets that come with the program, which are a part of it: read once and for all. */
export function shippedRules(): RulesInput {
  rules ??= (kept('rules') as RulesInput | undefined) ?? readAndKept();
  return rules;
}

function readAndKept(): RulesInput {
  const read = readRules();
  keep('rules', read);
  return read;
}

/** Calculates a job with what was kept of its slow results, by their inputs; then keeps those it needed. */
export function withResultsOf<R>(jobFolder: string, calculate: () => R): R {
  const name = `job ${resolve(jobFolder)}`;
  const known = (kept(name) as KeptResults | undefined) ?? new Map();
  const { given, asked, isAnyNew } = withKeptResults(known, calculate);
  if (isAnyNew) keep(name, asked);
  return given;
}

function kept(name: string): unknown {
  const path = pathOf(name);
  try {
    const bytes = path === null ? null : readFileSync(path);
    if (bytes === null) return undefined;
    const [sum, data] = [bytes.subarray(0, SUM_BYTES), bytes.subarray(SUM_BYTES)];
    return sum.equals(sumOf(data)) ? deserialize(data) : undefined;
  } catch {
    return undefined;
  }
}

/** Before what is kept stands the sum of its bytes: what a failing disk gives back is no result. */
function sumOf(data: Uint8Array): Buffer {
  return createHash('sha256').update(data).digest();
}

function keep(name: string, value: unknown): void {
  const path = pathOf(name);
  if (path === null) return;
  const aside = `${path}.${randomUUID()}.tmp`;
  try {
    mkdirSync(KEPT_FOLDER, { recursive: true });
    try {
      const data = serialize(value);
      writeFileSync(aside, Buffer.concat([sumOf(data), data]));
      renameSync(aside, path);
    } finally {
      rmSync(aside, { force: true });
    }
    removeOldest();
  } catch {
    // Where nothing can be kept, it is worked out again.
  }
}

/** Another Node may round the last digit of a sine otherwise: it keeps its own. */
function pathOf(name: string): string | null {
  if (typeof KEPT_FOLDER === 'undefined') return null;
  const hash = createHash('sha256').update(`${process.version} ${name}`).digest('hex').slice(0, 24);
  return join(KEPT_FOLDER, hash);
}

function removeOldest(): void {
  const files = readdirSync(KEPT_FOLDER).map((name) => join(KEPT_FOLDER, name));
  if (files.length <= MOST_FILES) return;
  const ages = files.map((path) => ({ path, atMs: statSync(path).mtimeMs }));
  for (const { path } of ages.sort((one, other) => other.atMs - one.atMs).slice(MOST_FILES)) rmSync(path);
}
