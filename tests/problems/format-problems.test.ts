import { describe, expect, test } from 'vitest';
import {
  formatProblems,
  locateProblem,
  nearestName,
  type Origins,
  problemAt,
  sortProblems,
} from '../../src/problems/index.ts';
import { problemsEn } from '../../src/words/problems-en.ts';

const FILE = 'jobs/maple-court/job.yaml';
const lines: Readonly<Record<number, string>> = {
  13: '  front-walk:',
  14: '    width: 42',
  20: '  drive:',
  21: '    thicknes: 4 in',
};
const readLine = (file: string, line: number) => (file === FILE ? (lines[line] ?? null) : null);
const spot = (line: number, column: number, length: number, file = FILE) => ({ file, line, column, length });
const bareWidth = problemAt(spot(14, 12, 2), 'length-without-unit', {
  value: '42',
  forms: ['42 in', `3' 6"`, '1.07 m'],
});
const mistyped = problemAt(spot(21, 5, 8), 'unknown-key', {
  key: 'thicknes',
  thing: 'slab',
  nearest: 'thickness',
  known: ['thickness'],
});

describe('formatProblems', () => {
  test('place, code, lines, carets, what would work, and a count', () => {
    expect(formatProblems([mistyped, bareWidth], problemsEn, readLine)).toBe(
      [
        'jobs/maple-court/job.yaml:14:12  length-without-unit',
        '   13 |   front-walk:',
        '   14 |     width: 42',
        '      |            ^^',
        `  A length needs its unit. Write 42 in, 3' 6" or 1.07 m.`,
        '',
        'jobs/maple-court/job.yaml:21:5  unknown-key',
        '   20 |   drive:',
        '   21 |     thicknes: 4 in',
        '      |     ^^^^^^^^',
        '  "thicknes" is not a key of a slab. Did you mean "thickness"?',
        '',
        '2 problems in 1 file. Nothing was written; the documents of the last build are unchanged.',
      ].join('\n'),
    );
  });

  test('a file as a whole has no line; one that is gone has no frame', () => {
    const problems = [
      problemAt({ file: 'jobs/a', line: null }, 'no-yaml', {}),
      problemAt(spot(3, 1, 1, 'jobs/b/job.yaml'), 'tab-indent', {}),
    ];
    expect(formatProblems(problems, problemsEn, readLine)).toBe(
      [
        'jobs/a  no-yaml',
        '  This folder holds no YAML file. Put a job.yaml into it.',
        '',
        'jobs/b/job.yaml:3:1  tab-indent',
        '  A line starts with a tab. Indent with spaces.',
        '',
        '2 problems in 2 files. Nothing was written; the documents of the last build are unchanged.',
      ].join('\n'),
    );
  });

  test('nothing of the file or of the value can steer the terminal', () => {
    const hostile = problemAt(spot(1, 1, 3), 'bad-id', { id: '\u001b[2J\u202e' });
    const text = formatProblems([hostile], problemsEn, () => 'a\u001b[31mb\u0007\tc');
    expect(text).not.toMatch(/[^\P{Cc}\n]|\u202e/u);
    expect(text).toContain('1 | a·[31mb· c');
  });

  test('what several jobs find in a file they share stands once', () => {
    expect(sortProblems([mistyped, bareWidth, { ...mistyped }])).toEqual([bareWidth, mistyped]);
  });
});

describe('nearestName', () => {
  test.each([
    { written: 'thicknes', known: ['label', 'thickness'], nearest: 'thickness' },
    { written: 'Truck_Stands', known: ['truck-stands'], nearest: 'truck-stands' },
    { written: 'wlak', known: ['drive', 'walk'], nearest: 'walk' },
    { written: '2x8', known: ['2x4', '2x6'], nearest: null },
    { written: 'colour', known: ['label', 'thickness'], nearest: null },
    { written: 'x'.repeat(100_000), known: ['x'], nearest: null },
    { written: 'walk', known: [], nearest: null },
  ])('$written', ({ written, known, nearest }) => {
    expect(nearestName(written, known)).toBe(nearest);
  });
});

describe('locateProblem', () => {
  const origins: Origins = new Map([
    ['build.slabs.drive', { spot: spot(20, 3, 5), text: 'drive', from: 'job' as const }],
    ['build.slabs.drive.reinforcement', { spot: null, text: 'none', from: 'shipped' as const }],
  ]);
  const where = { folder: 'jobs/maple-court', texts: problemsEn.texts };
  const core = (path: string) => ({ code: 'outline-without-area', path, parts: {} });

  test('falls back to the nearest parent that stands in a file', () => {
    expect(locateProblem(core('build.slabs.drive.reinforcement'), origins, where).spot).toEqual(
      spot(20, 3, 5),
    );
    expect(locateProblem(core('build.slabs.drive.corners.2'), origins, where).spot).toEqual(spot(20, 3, 5));
  });

  test('and to the folder where nothing does', () => {
    expect(locateProblem(core('plan.trailers'), origins, where).spot).toEqual({
      file: 'jobs/maple-court',
      line: null,
    });
  });

  test('throws on a code without a text', () => {
    expect(() => locateProblem({ code: 'toString', path: '', parts: {} }, origins, where)).toThrow(
      /no text for the problem code toString/,
    );
  });
});
