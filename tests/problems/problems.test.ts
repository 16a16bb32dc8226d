import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { calculateJob } from '../../src/calculate/index.ts';
import { resolveJob } from '../../src/model/index.ts';
import { formatProblems, locateProblem } from '../../src/problems/index.ts';
import { readCompany, readJob, readRules, sourceLines } from '../../src/read/index.ts';
import { problemsEn } from '../../src/words/problems-en.ts';

/*
 * Every folder is a case: files that stand in for those of a good job in `base`, and the message as
 * a user reads it, of the files or, where those are good, of what is calculated from them. Files of the company are in a folder of that name.
 */
const HERE = import.meta.dirname;
const COMPANY = 'company';
const BASE = 'base';
const cases = readdirSync(HERE, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== BASE)
  .map(({ name }) => name);
const made: string[] = [];

afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true });
});

/** The good job with the files of a case in their places. */
function laidOut(name: string): string {
  const root = mkdtempSync(join(tmpdir(), 'problems-'));
  made.push(root);
  cpSync(join(HERE, BASE, 'job'), join(root, 'jobs', 'walk'), { recursive: true });
  cpSync(join(HERE, BASE, COMPANY), join(root, 'jobs', COMPANY), { recursive: true });
  if (name === BASE) return root;
  const files = join(HERE, name);
  const isOfJob = (path: string) => path !== join(files, COMPANY) && !path.endsWith('expected.txt');
  cpSync(files, join(root, 'jobs', 'walk'), { recursive: true, filter: isOfJob });
  if (existsSync(join(files, COMPANY)))
    cpSync(join(files, COMPANY), join(root, 'jobs', COMPANY), { recursive: true });
  return root;
}

function messageOf(name: string): string {
  const root = laidOut(name);
  const company = readCompany(join(root, 'jobs', COMPANY));
  const rules = readRules();
  const input = readJob(join(root, 'jobs', 'walk'));
  const { job, origins, problems } = resolveJob(input, company, rules);
  const read = [...company.problems, ...rules.problems, ...problems];
  expect(job === null).toBe(read.length > 0);
  const where = { folder: input.folder, texts: problemsEn.texts };
  const found = job === null ? [] : calculateJob(job).problems;
  const all = [...read, ...found.map((problem) => locateProblem(problem, origins, where))];
  return formatProblems(all, problemsEn, sourceLines()).replaceAll(`${root}/`, '');
}

describe('bad input, as the user reads it', () => {
  test('the job that the cases change is good', () => {
    expect(messageOf(BASE)).toBe('');
  });

  test.each(cases)('%s', (name) => {
    expect(`${messageOf(name)}\n`).toBe(readFileSync(join(HERE, name, 'expected.txt'), 'utf8'));
  });
});

describe('the problems of the core', () => {
  const CORE = join(HERE, '..', '..', 'src', 'calculate');
  const sources = readdirSync(CORE, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ts'),
  );
  const codes = sources.flatMap((name) => {
    const source = readFileSync(join(CORE, name), 'utf8');
    return [...source.matchAll(/code: '([a-z-]+)',\s*path\b|\bwrong\('([a-z-]+)'/g)].map(
      ([, code, other]) => code ?? other ?? '',
    );
  });

  test('were found', () => {
    expect(codes.length).toBeGreaterThanOrEqual(15);
  });

  test.each(codes)('%s has a text', (code) => {
    expect(Object.keys(problemsEn.texts)).toContain(code);
  });
});
