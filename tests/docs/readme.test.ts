import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { EXIT } from '../../src/commands/exit-codes.ts';
import { jobScaffold } from '../../src/commands/job-scaffold.ts';
import { COMMANDS } from '../../src/commands/options.ts';
import { prepareJobs } from '../../src/commands/prepare.ts';
import { showProblems } from '../../src/commands/show-problems.ts';
import { generatedParts, withGenerated } from '../tools/reference.ts';

const PROJECT = join(import.meta.dirname, '..', '..');
const MOST_PICTURE_BYTES = 60_000;

const ANSWERS = {
  label: 'Driveway replaced',
  number: 'elm-street',
  client: 'Name of the owner',
  address: 'Street and town',
  length: '40 ft',
  width: '18 ft',
  preparedOn: '2026-11-25',
};

const readmeText = readFileSync(join(PROJECT, 'README.md'), 'utf8');
const developersText = readFileSync(join(PROJECT, 'DEVELOPERS.md'), 'utf8');

describe('README.md', () => {
  test('its tables are those of the schema and the catalogue: npm run docs', () => {
    expect(withGenerated(readmeText, generatedParts())).toBe(readmeText);
  });

  test('a pair of markers that is missing is told', () => {
    expect(() => withGenerated('no markers', { rules: 'x' })).toThrow(RangeError);
  });

  test('it names every command and every exit code', () => {
    for (const command of COMMANDS) expect(readmeText).toMatch(new RegExp(`npm run ${command}\\b`));
    for (const code of Object.values(EXIT)) expect(readmeText).toContain(`| ${code} |`);
  });

  test('its example is what a check says of a new job with these mistakes', () => {
    const jobsDir = mkdtempSync(join(tmpdir(), 'readme-'));
    try {
      cpSync(join(PROJECT, 'jobs', 'company'), join(jobsDir, 'company'), { recursive: true });
      mkdirSync(join(jobsDir, 'elm-street'));
      const text = jobScaffold(ANSWERS, 'schema.json')
        .replaceAll(/thickness: 4 in$/gm, 'thickness: 4')
        .replace('reinforcement:', 'reinforcment:');
      writeFileSync(join(jobsDir, 'elm-street', 'job.yaml'), text);
      const prepared = prepareJobs({ jobsDir, names: ['elm-street'] });
      const shown = prepared.ok ? '' : showProblems(prepared.problems).replaceAll(jobsDir, 'jobs');
      expect(/```text\n(jobs\/[\s\S]*?)\n```/.exec(readmeText)?.[1]).toBe(shown);
    } finally {
      rmSync(jobsDir, { recursive: true });
    }
  });
});

describe.each([
  ['README.md', readmeText],
  ['DEVELOPERS.md', developersText],
])('%s', (_, text) => {
  test('every picture and file it links to is there, and pictures are small', () => {
    const links = [...text.matchAll(/(?:\]\(|src=")(?!https?:|#)([^)"#]+)/g)].map(([, path]) => path ?? '');
    expect(links.length).toBeGreaterThan(0);
    for (const path of links) expect(existsSync(join(PROJECT, path)), path).toBe(true);
    for (const path of links.filter((each) => each.endsWith('.png'))) {
      expect(statSync(join(PROJECT, path)).size, path).toBeLessThan(MOST_PICTURE_BYTES);
    }
  });

  test('every script it tells to run is in package.json', () => {
    const { scripts } = JSON.parse(readFileSync(join(PROJECT, 'package.json'), 'utf8')) as {
      scripts: Record<string, string>;
    };
    const told = [...text.matchAll(/npm run ([a-z:]+)/g)].map(([, name]) => name ?? '');
    expect(told.length).toBeGreaterThan(3);
    for (const name of told) expect(Object.keys(scripts)).toContain(name);
  });
});
