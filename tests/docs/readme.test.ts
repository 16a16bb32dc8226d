import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { EXIT } from '../../src/commands/exit-codes.ts';
import { COMMANDS } from '../../src/commands/options.ts';
import { generatedParts, withGenerated } from '../tools/reference.ts';

const PROJECT = join(import.meta.dirname, '..', '..');
const MOST_PICTURE_BYTES = 60_000;

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

  test('its message of a problem is one that a user gets', () => {
    const shown = /```text\n(jobs\/[\s\S]*?)\n```/.exec(readmeText)?.[1];
    const lines = (shown ?? '').split('\n').filter((line) => /^ {2}[A-Z"]/.test(line));
    const expected = ['length-without-unit', 'unknown-key'].map((folder) =>
      readFileSync(join(PROJECT, 'tests', 'problems', folder, 'expected.txt'), 'utf8'),
    );
    expect(lines.length).toBeGreaterThanOrEqual(2);
    for (const line of lines) expect(sentencesOf(expected.join('\n'))).toContain(sentenceOf(line));
  });
});

/** A message without the values in it. */
function sentenceOf(line: string): string {
  return line.trim().replace(/".*?"|\d.*(?=\.$)/g, '...');
}

function sentencesOf(text: string): readonly string[] {
  return text.split('\n').map(sentenceOf);
}

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
