import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const SRC = resolve(import.meta.dirname, '../../src');

/** Which folders of src a folder may import from; itself always. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  units: [],
  geometry: [],
  problems: [],
  words: ['problems'],
  rules: [],
  read: ['units', 'problems'],
  model: ['read', 'calculate', 'geometry', 'units', 'problems'],
  calculate: ['geometry', 'units', 'problems'],
  describe: ['calculate', 'geometry', 'units', 'problems', 'words'],
  render: ['describe'],
  print: [],
  export: ['describe'],
  commands: [
    'units',
    'problems',
    'words',
    'read',
    'model',
    'calculate',
    'describe',
    'render',
    'print',
    'export',
  ],
};

/** From these folders only types may come. */
const TYPES_ONLY: readonly { readonly from: string; readonly to: string }[] = [
  { from: 'model', to: 'calculate' },
  { from: 'words', to: 'problems' },
  { from: 'export', to: 'describe' },
];

type Import = { readonly file: string; readonly target: string; readonly isType: boolean };

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => join(SRC, file));

const imports = files.flatMap(importsOf);

function importsOf(file: string): Import[] {
  const text = readFileSync(file, 'utf8');
  const found = [...text.matchAll(/^(?:import|export)\s+(type\s+)?([\s\S]*?)\s*from\s+'([^']+)';/gm)];
  const lazy = [...text.matchAll(/import\('([^']+)'\)/g)].map((match) => ['', '', '', match[1] ?? '']);
  return [...found, ...lazy].map((match) => {
    const names = (match[2] ?? '')
      .replace(/[{}\s]/g, '')
      .split(',')
      .filter((name) => name !== '');
    const allTypes =
      names.length > 0 &&
      /[{]/.test(match[2] ?? '') &&
      (match[2] ?? '')
        .replace(/[{}]/g, '')
        .split(',')
        .every((name) => name.trim() === '' || name.trim().startsWith('type '));
    return { file, target: match[3] ?? '', isType: match[1] !== undefined || allTypes };
  });
}

function folderOf(path: string): string {
  return relative(SRC, path).split('/')[0] ?? '';
}

function isOurs({ target }: Import): boolean {
  return target.startsWith('.');
}

describe('arrows between the folders of src', () => {
  test('every file is read and has imports to look at', () => {
    expect(files.length).toBeGreaterThan(150);
    expect(imports.length).toBeGreaterThan(files.length);
    expect(new Set(files.map(folderOf))).toEqual(
      new Set(Object.keys(MAY_IMPORT).filter((folder) => folder !== 'rules')),
    );
  });

  test('no folder imports one that it must not know', () => {
    const wrong = imports.filter(isOurs).flatMap((one) => {
      const from = folderOf(one.file);
      const to = folderOf(resolve(dirname(one.file), one.target));
      return from === to || MAY_IMPORT[from]?.includes(to)
        ? []
        : [`${relative(SRC, one.file)} -> ${one.target}`];
    });
    expect(wrong).toEqual([]);
  });

  test('where only types may come, only types come', () => {
    const wrong = imports.filter(isOurs).filter((one) => {
      const from = folderOf(one.file);
      const to = folderOf(resolve(dirname(one.file), one.target));
      return TYPES_ONLY.some((rule) => rule.from === from && rule.to === to) && !one.isType;
    });
    expect(wrong.map(({ file, target }) => `${relative(SRC, file)} -> ${target}`)).toEqual([]);
  });

  test('nobody imports past the index of another topic or folder', () => {
    const wrong = imports.filter(isOurs).filter((one) => {
      const target = relative(SRC, resolve(dirname(one.file), one.target)).split('/');
      const from = relative(SRC, one.file).split('/');
      const isTopic = target[0] === 'calculate' && target.length > 2;
      return isTopic && !(from[0] === 'calculate' && from[1] === target[1]) && target[2] !== 'index.ts';
    });
    expect(wrong.map(({ file, target }) => `${relative(SRC, file)} -> ${target}`)).toEqual([]);
  });

  test("the proposal's folder knows neither costs nor crew types", () => {
    const proposal = imports.filter(({ file }) => file.includes('/describe/proposal/'));
    expect(proposal.length).toBeGreaterThan(10);
    const forbidden = proposal.filter(({ target }) =>
      /cost|crew|results|calculate\/index|calculate\/(?!job|price\/|text)/.test(target),
    );
    expect(forbidden.map(({ file, target }) => `${relative(SRC, file)} -> ${target}`)).toEqual([]);
    for (const file of new Set(proposal.map((one) => one.file))) {
      expect(readFileSync(file, 'utf8')).not.toMatch(/\b(CrewText|OfficeText|CrewReadable|Cost)\b/);
    }
  });

  test('there is no cycle between files', () => {
    const edges = new Map(
      files.map((file) => [
        file,
        imports
          .filter((one) => one.file === file && isOurs(one) && !one.isType)
          .map(({ target }) => resolve(dirname(file), target)),
      ]),
    );
    const done = new Set<string>();
    const cycles: string[] = [];
    const visit = (file: string, path: readonly string[]) => {
      if (path.includes(file)) {
        cycles.push([...path.slice(path.indexOf(file)), file].map((one) => relative(SRC, one)).join(' -> '));
        return;
      }
      if (done.has(file)) return;
      for (const next of edges.get(file) ?? []) visit(next, [...path, file]);
      done.add(file);
    };
    for (const file of files) visit(file, []);
    expect(cycles).toEqual([]);
  });
});

describe('what the core must not touch', () => {
  test.each([
    ['calculate', /'node:|Date\.now|new Date\(|Math\.random|process\./],
    ['describe', /'node:|Date\.now|new Date\(|Math\.random|process\./],
  ])('%s reads no file, clock or chance', (folder, forbidden) => {
    const inFolder = files.filter((file) => folderOf(file) === folder);
    expect(inFolder.length).toBeGreaterThan(20);
    expect(
      inFolder
        .filter((file) => forbidden.test(readFileSync(file, 'utf8')))
        .map((file) => relative(SRC, file)),
    ).toEqual([]);
  });

  test('numbers and dates are formatted by hand, so no file names Intl or a locale', () => {
    const forbidden = /\bIntl\.|toLocale|localeCompare/;
    expect(
      files.filter((file) => forbidden.test(readFileSync(file, 'utf8'))).map((file) => relative(SRC, file)),
    ).toEqual([]);
  });
});
