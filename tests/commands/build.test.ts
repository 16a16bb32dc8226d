import { cp, mkdir, readdir, readFile, rename, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, inject, type Mock, test, vi } from 'vitest';
import { build } from '../../src/commands/build.ts';
import { check } from '../../src/commands/check.ts';
import { EXIT } from '../../src/commands/exit-codes.ts';
import type { Options } from '../../src/commands/options.ts';
import { ForeignError } from '../../src/commands/output-folder.ts';
import { sheet } from '../../src/commands/sheet.ts';
import { aBuiltPlace, bytesOf, leftIn, type Place } from './folders.ts';

const ALL = ['corner-walk', 'garden-row', 'maple-court'];

let said: Mock<typeof console.log>;
let complained: Mock<typeof console.error>;
beforeEach(() => {
  said = vi.spyOn(console, 'log').mockImplementation(() => undefined);
  complained = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  vi.spyOn(process.stderr, 'write').mockReturnValue(true);
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
});

const linesOf = (spy: Mock<(...words: string[]) => void>) => spy.mock.calls.map((words) => words.join(' '));

function optionsFor({ jobs, output }: Place, changes: Partial<Options> = {}): Options {
  return {
    command: 'build',
    names: [],
    jobsDir: jobs,
    outputDir: output,
    browserPath: null,
    port: 0,
    ...changes,
  };
}

async function edit(file: string, from: string | RegExp, to: string): Promise<void> {
  const text = await readFile(file, 'utf8');
  expect(text).toMatch(from);
  await writeFile(file, text.replace(from, to));
}

async function jobsListed({ output }: Place): Promise<readonly string[]> {
  const html = await readFile(join(output, 'index.html'), 'utf8');
  return [
    ...new Set([...html.matchAll(/href="([^"/]+)\/homeowner\/proposal\.html"/g)].map(([, id = '']) => id)),
  ].toSorted();
}

describe('build', () => {
  test('from another folder, with nothing changed, gives the same bytes and prints nothing', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    expect(await build(optionsFor(place))).toBe(EXIT.built);
    expect(linesOf(said)).toEqual([
      `Built 3 jobs: 18 documents (0 printed, 18 unchanged) in ${place.output}`,
    ]);
    expect(await bytesOf(place.output)).toEqual(before);
    expect(await leftIn(place.output)).toEqual([]);
  });

  // Regression: the calculation sheet named its sources by their full paths on the machine.
  test('writes no path of this machine into a document', async () => {
    const place = await aBuiltPlace();
    const files = Object.keys(await bytesOf(place.output)).filter((file) => /\.(html|json)$/.test(file));
    expect(files.length).toBeGreaterThan(19);
    const texts = await Promise.all(files.map((file) => readFile(join(place.output, file), 'utf8')));
    const parent = join(inject('demoJobs'), '..');
    expect(files.filter((_, index) => texts[index]?.includes(parent))).toEqual([]);
    expect(texts.some((text) => text.includes('thicknessIn: job.yaml:'))).toBe(true);
  });

  test('of a job by name keeps the others, and the jobs page still lists all', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    expect(await jobsListed(place)).toEqual(ALL);
    await edit(
      join(place.jobs, 'corner-walk/job.yaml'),
      'label: One walk panel replaced',
      'label: Two panels',
    );
    expect(await build(optionsFor(place, { names: ['corner-walk'] }))).toBe(EXIT.built);
    const after = await bytesOf(place.output);
    const changed = Object.keys(after).filter((file) => after[file] !== before[file]);
    expect(changed).toContain('index.html');
    expect(changed).toContain('corner-walk/homeowner/proposal.pdf');
    expect(changed.filter((file) => !/^(corner-walk\/|index\.html$|site-walk)/.test(file))).toEqual([]);
    expect(Object.keys(after)).toEqual(Object.keys(before));
    expect(await jobsListed(place)).toEqual(ALL);
    expect(await readFile(join(place.output, 'index.html'), 'utf8')).toContain('Two panels');
  });

  test('of one job into an empty folder lists that one', async () => {
    const place = await aBuiltPlace();
    await mkdir(join(place.folder, 'new'));
    await cp(join(place.output, '.cache'), join(place.folder, 'new/.cache'));
    const fresh = { ...place, output: join(place.folder, 'new') };
    expect(await build(optionsFor(fresh, { names: ['garden-row'] }))).toBe(EXIT.built);
    expect(await jobsListed(fresh)).toEqual(['garden-row']);
    expect((await readdir(fresh.output)).toSorted()).toEqual(['.cache', 'garden-row', 'index.html']);
  });

  test('with a problem in one job writes nothing, and says what and where', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    await edit(join(place.jobs, 'corner-walk/job.yaml'), 'label: One walk panel replaced', 'label: Another');
    await edit(join(place.jobs, 'garden-row/job.yaml'), 'thickness: 100 mm', 'thickness: 100');
    expect(await build(optionsFor(place))).toBe(EXIT.problemsInInput);
    expect(linesOf(complained).join('\n')).toMatch(/garden-row\/job\.yaml:\d+:\d+ {2}length-without-unit/);
    expect(linesOf(said)).toEqual([]);
    expect(await bytesOf(place.output)).toEqual(before);
    expect(await leftIn(place.output)).toEqual([]);
  });

  // Regression: with the jobs folder for the output, by whatever path, the jobs were replaced by their documents.
  test('replaces nothing that no build made, and says what stands there', async () => {
    const place = await aBuiltPlace();
    const same = join(place.folder, 'the-same');
    await symlink(place.jobs, same);
    const jobs = await bytesOf(place.jobs);
    const onJobs = build(optionsFor({ ...place, output: same }, { names: ['corner-walk'] }));
    await expect(onJobs).rejects.toThrow(new ForeignError(join(same, 'corner-walk/job.yaml')));
    expect(await bytesOf(place.jobs)).toEqual(jobs);
    expect(await leftIn(place.jobs)).toEqual([]);

    const named = (name: string) => build(optionsFor(place, { names: [name] }));
    for (const file of [
      'signed.pdf',
      '.git',
      'homeowner/signed.pdf',
      'office/signed.pdf',
      'office/mine.xlsx',
    ]) {
      const signed = join(place.output, 'corner-walk', file);
      await writeFile(signed, 'signed');
      await expect(named('corner-walk')).rejects.toThrow(new ForeignError(signed));
      expect(await readFile(signed, 'utf8')).toBe('signed');
      // What a file manager leaves is no reason to stop.
      await rename(signed, join(dirname(signed), file.endsWith('pdf') ? '.DS_Store' : 'Thumbs.db'));
    }
    expect(await named('corner-walk')).toBe(EXIT.built);

    const index = join(place.output, 'index.html');
    for (const another of ['<html>ours</html>', '']) {
      await writeFile(index, another);
      await expect(named('corner-walk')).rejects.toThrow(new ForeignError(index));
      expect(await readFile(index, 'utf8')).toBe(another);
    }
    await rm(index);
    await rm(join(place.output, 'corner-walk'), { recursive: true });
    await writeFile(join(place.output, 'corner-walk'), 'a file');
    await expect(named('corner-walk')).rejects.toThrow(new ForeignError(join(place.output, 'corner-walk')));
  });

  test('of a name that is no job says which are', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    expect(await build(optionsFor(place, { names: ['cornerwalk'] }))).toBe(EXIT.problemsInInput);
    expect(linesOf(complained).join('\n')).toContain('corner-walk');
    expect(await bytesOf(place.output)).toEqual(before);
  });

  test.each([
    { file: 'torn', text: '{"id": "maple-court", "num' },
    { file: 'of another shape', text: '{"id": "maple-court"}' },
    { file: 'of another kind', text: 'null' },
  ])('a summary that is $file leaves its job out of the page until it is built again', async ({ text }) => {
    const place = await aBuiltPlace();
    await writeFile(join(place.output, 'maple-court/office/summary.json'), text);
    expect(await build(optionsFor(place, { names: ['corner-walk'] }))).toBe(EXIT.built);
    expect(await jobsListed(place)).toEqual(ALL.filter((id) => id !== 'maple-court'));
    expect(await build(optionsFor(place, { names: ['maple-court'] }))).toBe(EXIT.built);
    expect(await jobsListed(place)).toEqual(ALL);
  });

  test.each(['today', '-1', '', '1.5'])(
    'SOURCE_DATE_EPOCH "%s" is refused before anything is built',
    async (stamp) => {
      const place = await aBuiltPlace();
      const before = await bytesOf(place.output);
      vi.stubEnv('SOURCE_DATE_EPOCH', stamp);
      expect(await build(optionsFor(place))).toBe(EXIT.wrongUsage);
      expect(linesOf(complained).join('\n')).toContain(`it is "${stamp}"`);
      expect(await bytesOf(place.output)).toEqual(before);
    },
  );

  test('SOURCE_DATE_EPOCH changes the stamps of the PDFs and of the workbook and nothing else', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    const pdf = join(place.output, 'corner-walk/office/safety.pdf');
    const old = await readFile(pdf, 'latin1');
    vi.stubEnv('SOURCE_DATE_EPOCH', '1000000000');
    expect(await build(optionsFor(place, { names: ['corner-walk'] }))).toBe(EXIT.built);
    const after = await bytesOf(place.output);
    const changed = Object.keys(after).filter((file) => after[file] !== before[file]);
    expect(changed).toHaveLength(7);
    expect(changed.filter((file) => !/^corner-walk\/.*\.pdf$/.test(file))).toEqual([
      'corner-walk/office/materials.xlsx',
    ]);
    const dates = /(?<=\/(?:CreationDate|ModDate) \(D:)\d{14}/g;
    expect(old.match(dates)).toEqual(['20260615000000', '20260615000000']);
    expect((await readFile(pdf, 'latin1')).replace(dates, '20260615000000')).toBe(old);
    expect((await readFile(pdf, 'latin1')).match(dates)).toEqual(['20010909014640', '20010909014640']);
  });

  test('a cached PDF that was damaged is printed again, to the same bytes', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    const cache = join(place.output, '.cache');
    await rm(cache);
    await cp(join(inject('demoOutput'), '.cache'), cache, { recursive: true });
    for (const name of await readdir(cache)) {
      const isShort = (await stat(join(cache, name))).size < 500_000; // to print the long ones takes long
      if (isShort) await writeFile(join(cache, name), 'pdf 3 torn\nabc');
    }
    expect(await build(optionsFor(place, { names: ['corner-walk'] }))).toBe(EXIT.built);
    expect(linesOf(said).join()).toContain('(4 printed, 2 unchanged)');
    expect(await bytesOf(place.output)).toEqual(before);
  });
});

describe('without a browser', () => {
  const nowhere = [
    {
      by: '--browser',
      changes: { browserPath: '/nowhere/chrome' },
      env: undefined,
      reason: '/nowhere/chrome (--browser): not there',
    },
    {
      by: 'PUPPETEER_EXECUTABLE_PATH',
      changes: {},
      env: '/gone/chrome',
      reason: '/gone/chrome (PUPPETEER_EXECUTABLE_PATH): not there',
    },
    {
      by: 'a program that is no browser',
      changes: { browserPath: process.execPath },
      env: undefined,
      reason: 'the browser you named does not start: ',
    },
  ];

  test.each(nowhere)(
    '($by) the pages are built, and one line says what is missing',
    async ({ changes, env, reason }) => {
      const place = await aBuiltPlace();
      await edit(
        join(place.jobs, 'corner-walk/job.yaml'),
        'label: One walk panel replaced',
        'label: Two panels',
      );
      if (env !== undefined) vi.stubEnv('PUPPETEER_EXECUTABLE_PATH', env);
      expect(await build(optionsFor(place, { names: ['corner-walk'], ...changes }))).toBe(
        EXIT.builtWithoutPdfs,
      );
      expect(linesOf(complained)).toHaveLength(1);
      expect(linesOf(complained)[0]).toContain(`Looked for: ${reason}`);
      expect(linesOf(complained)[0]).not.toContain('\n');
      const html = await readFile(join(place.output, 'corner-walk/homeowner/proposal.html'), 'utf8');
      expect(html).toContain('Two panels');
      // A PDF of another revision beside the page would be worse than none.
      await expect(stat(join(place.output, 'corner-walk/homeowner/proposal.pdf'))).rejects.toThrow('ENOENT');
      expect(await leftIn(place.output)).toEqual([]);
    },
  );

  test.each(nowhere)('($by) the sheet is there as a page', async ({ changes, env, reason }) => {
    const place = await aBuiltPlace();
    if (env !== undefined) vi.stubEnv('PUPPETEER_EXECUTABLE_PATH', env);
    const options = optionsFor(place, { command: 'sheet', outputDir: join(place.folder, 'new'), ...changes });
    expect(await sheet(options)).toBe(EXIT.builtWithoutPdfs);
    expect(linesOf(complained).join('\n')).toContain(reason);
    expect((await readdir(options.outputDir)).filter((name) => name !== '.cache')).toEqual([
      'site-walk.html',
    ]);
  });
});

describe('what a dead build left', () => {
  test('between its two renames is put right by the next build, of whatever job', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    // The old folder is moved aside, the new one not yet in place; its number now belongs to somebody alive.
    const aside = join(place.output, `.old-${process.ppid}`);
    await mkdir(aside);
    await rename(join(place.output, 'maple-court'), join(aside, 'maple-court'));
    await mkdir(join(place.output, `.next-${process.ppid}/maple-court/office`), { recursive: true });
    await writeFile(join(place.output, `.next-${process.ppid}/maple-court/office/safety.html`), 'half');
    expect(await build(optionsFor(place, { names: ['corner-walk'] }))).toBe(EXIT.built);
    expect(await bytesOf(place.output)).toEqual(before);
    expect(await leftIn(place.output)).toEqual([]);
  });

  test('after its two renames the new one stays', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    await mkdir(join(place.output, '.old-999999/maple-court/office'), { recursive: true });
    await writeFile(join(place.output, '.old-999999/maple-court/office/safety.html'), 'old');
    expect(await build(optionsFor(place, { names: ['corner-walk'] }))).toBe(EXIT.built);
    expect(await bytesOf(place.output)).toEqual(before);
    expect(await leftIn(place.output)).toEqual([]);
  });
});

describe('check', () => {
  test('shows findings and writes nothing', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.folder);
    expect(check(optionsFor(place, { command: 'check' }))).toBe(EXIT.built);
    for (const id of ALL) expect(linesOf(said)).toContain(`${id}: no problems`);
    expect(linesOf(said).some((line) => line.startsWith('  Note: '))).toBe(true);
    expect(await bytesOf(place.folder)).toEqual(before);
  });

  test('of a job by name says nothing of a problem in another', async () => {
    const place = await aBuiltPlace();
    await rm(join(place.jobs, 'garden-row/job.yaml'));
    expect(check(optionsFor(place, { command: 'check', names: ['corner-walk'] }))).toBe(EXIT.built);
    expect(check(optionsFor(place, { command: 'check' }))).toBe(EXIT.problemsInInput);
    expect(linesOf(complained).join()).toContain('garden-row');
  });
});

describe('sheet', () => {
  test('needs the company alone, and says so when that has a problem', async () => {
    const place = await aBuiltPlace();
    for (const id of ALL) await rm(join(place.jobs, id), { recursive: true });
    expect(await sheet(optionsFor(place, { command: 'sheet' }))).toBe(EXIT.built);
    expect(await readFile(join(place.output, 'site-walk.html'), 'utf8')).toContain(
      'Plumb &amp; Level Flatwork',
    );
    await rm(join(place.jobs, 'company'), { recursive: true });
    expect(await sheet(optionsFor(place, { command: 'sheet' }))).toBe(EXIT.problemsInInput);
  });

  test('replaces its own page only', async () => {
    const place = await aBuiltPlace();
    const page = join(place.output, 'site-walk.html');
    expect(await sheet(optionsFor(place, { command: 'sheet' }))).toBe(EXIT.built);
    await writeFile(page, 'notes of a walk');
    await expect(sheet(optionsFor(place, { command: 'sheet' }))).rejects.toThrow(new ForeignError(page));
    expect(await readFile(page, 'utf8')).toBe('notes of a walk');
  });
});
