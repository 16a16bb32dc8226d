import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';

/**
 * Values that stand in publications (or were worked by hand from a stated formula), one file
 * a topic, `tests/published/<topic>.yaml`:
 *
 *   checks:
 *     - call: name of a function the test file gives
 *       with: { its: arguments }
 *       expect: number, text, yes or no, or a list of those
 *       tolerance: greatest difference of a number, from the digits printed
 *       source: author, title, table or page
 *       seen: seen | memory | common-practice | computed
 *   not-checked:
 *     - { what: a published row, why: the reason it is not among the checks }
 */
type Leaf = number | string | boolean;
export type Expected = Leaf | readonly Leaf[];

export type Check = {
  readonly call: string;
  readonly with: Readonly<Record<string, unknown>>;
  readonly expect: Expected;
  readonly tolerance?: number;
  readonly source: string;
  readonly seen: 'seen' | 'memory' | 'common-practice' | 'computed';
};

export type CheckFile = {
  readonly checks: readonly Check[];
  readonly notChecked: readonly { readonly what: string; readonly why: string }[];
};

/** The shape of the arguments is each row's own; a misspelt key is caught when it is read. */
// oxlint-disable-next-line typescript/no-explicit-any
type CheckFunction = (given: any) => Expected;

const CHECK_KEYS = ['call', 'with', 'expect', 'tolerance', 'source', 'seen'];
const SEEN = ['seen', 'memory', 'common-practice', 'computed'];

/**
 * Reads the checks of a topic.
 *
 * @throws {Error} If a row has a key too many, lacks one, or has a wrong one; the row is named.
 */
export function loadChecks(topic: string): CheckFile {
  return readCheckFile(readFileSync(new URL(`${topic}.yaml`, import.meta.url), 'utf8'), topic);
}

export function readCheckFile(text: string, topic: string): CheckFile {
  const file: unknown = parse(text, { uniqueKeys: true });
  if (!isMap(file)) throw new Error(`${topic}.yaml: not a map`);
  const { checks, 'not-checked': notChecked = [], ...others } = file;
  if (Object.keys(others).length > 0)
    throw new Error(`${topic}.yaml: unknown keys ${Object.keys(others).join(', ')}`);
  if (!Array.isArray(checks) || checks.length === 0) throw new Error(`${topic}.yaml: no checks`);
  if (!Array.isArray(notChecked)) throw new Error(`${topic}.yaml: not-checked is not a list`);
  return {
    checks: checks.map((row: unknown, index) => asCheck(row, `${topic}.yaml, check ${index + 1}`)),
    notChecked: notChecked.map((row: unknown, index) =>
      asNotChecked(row, `${topic}.yaml, not-checked ${index + 1}`),
    ),
  };
}

function asCheck(row: unknown, where: string): Check {
  if (!isMap(row)) throw new Error(`${where}: not a map`);
  const unknown = Object.keys(row).filter((key) => !CHECK_KEYS.includes(key));
  if (unknown.length > 0) throw new Error(`${where}: unknown keys ${unknown.join(', ')}`);
  const { call, expect: expected, tolerance, source, seen } = row;
  if (!isText(call) || !isText(source)) throw new Error(`${where}: call and source must be text`);
  if (!isMap(row['with'])) throw new Error(`${where}: with is not a map`);
  if (!SEEN.includes(String(seen))) throw new Error(`${where}: seen must be one of ${SEEN.join(', ')}`);
  const leaves: readonly unknown[] = Array.isArray(expected) ? expected : [expected];
  if (leaves.length === 0 || !leaves.every(isLeaf)) throw new Error(`${where}: nothing that can be expected`);
  const needsTolerance = leaves.some((leaf) => typeof leaf === 'number');
  if (needsTolerance !== (typeof tolerance === 'number' && tolerance >= 0)) {
    throw new Error(`${where}: a number needs a tolerance of 0 or more, anything else none`);
  }
  return row as Check;
}

function asNotChecked(row: unknown, where: string): { what: string; why: string } {
  if (!isMap(row) || !isText(row['what']) || !isText(row['why']))
    throw new Error(`${where}: needs what and why`);
  return { what: row['what'], why: row['why'] };
}

/**
 * One test for each row of a topic, and one that every row ran, every call is known and every
 * function is used. Numbers are compared within the tolerance, all else exactly.
 *
 * A function gets the row's arguments. Reading one that the row does not have throws; leaving
 * one unread fails the row, since it then does not check what it says.
 */
export function runChecks(topic: string, functions: Readonly<Record<string, CheckFunction>>): void {
  const { checks } = loadChecks(topic);
  const ran = new Set<Check>();

  describe(`published: ${topic}`, () => {
    test('every call is known and every function is called', () => {
      const called = new Set(checks.map((check) => check.call));
      expect([...called].toSorted()).toEqual(Object.keys(functions).toSorted());
    });

    for (const [index, check] of checks.entries()) {
      test(`${index + 1}. ${check.call} ${JSON.stringify(check.with)} (${check.seen})`, () => {
        ran.add(check);
        const problems = problemsOf(check, functions[check.call]);
        expect(problems, check.source).toEqual([]);
      });
    }

    test('no row was skipped', () => {
      expect(ran.size).toBe(checks.length);
    });
  });
}

/** What is wrong with a row's result; empty if nothing. */
export function problemsOf(check: Check, calculate: CheckFunction | undefined): readonly string[] {
  if (calculate === undefined) return [`no function is called ${check.call}`];
  const unread = new Set(Object.keys(check.with));
  const actual = calculate(watched(check.with, check.call, unread));
  const expected = listOf(check.expect);
  const found = listOf(actual);
  const problems = [...unread].map((key) => `${key} was not read`);
  if (found.length !== expected.length || Array.isArray(actual) !== Array.isArray(check.expect)) {
    return [...problems, `expected ${JSON.stringify(check.expect)}, got ${JSON.stringify(actual)}`];
  }
  for (const [index, leaf] of expected.entries()) {
    if (!agrees(leaf, found[index], check.tolerance ?? 0)) {
      problems.push(`expected ${leaf} within ${check.tolerance ?? 0}, got ${found[index]}`);
    }
  }
  return problems;
}

/** Of the expected number: the noise of a double, so that a printed tolerance may be met exactly. */
const NOISE_RATIO = 1e-14;

function agrees(expected: Leaf, actual: unknown, tolerance: number): boolean {
  if (typeof expected !== 'number') return expected === actual;
  if (typeof actual !== 'number') return false;
  return Math.abs(actual - expected) <= tolerance + NOISE_RATIO * Math.abs(expected);
}

function watched(given: Readonly<Record<string, unknown>>, call: string, unread: Set<string>): unknown {
  return new Proxy(given, {
    get(target, key) {
      if (typeof key !== 'string') return Reflect.get(target, key);
      if (!Object.hasOwn(target, key)) throw new Error(`${call}: the row has no ${key}`);
      unread.delete(key);
      return target[key];
    },
  });
}

function listOf(value: Expected): readonly Leaf[] {
  return typeof value === 'object' ? value : [value];
}

function isMap(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isText(value: unknown): value is string {
  return typeof value === 'string' && value.trim() !== '';
}

function isLeaf(value: unknown): value is Leaf {
  return (
    ['string', 'boolean'].includes(typeof value) || (typeof value === 'number' && Number.isFinite(value))
  );
}
