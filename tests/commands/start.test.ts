import { mkdir, readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, type Mock, test, vi } from 'vitest';
import { parse } from 'yaml';
import { EXIT } from '../../src/commands/exit-codes.ts';
import { type Answers, jobScaffold } from '../../src/commands/job-scaffold.ts';
import type { Options } from '../../src/commands/options.ts';
import { prepareJobs } from '../../src/commands/prepare.ts';
import { start } from '../../src/commands/start.ts';
import { aFolder, bytesOf } from './folders.ts';

let complained: Mock<typeof console.error>;
beforeEach(() => {
  vi.spyOn(console, 'log').mockImplementation(() => undefined);
  complained = vi.spyOn(console, 'error').mockImplementation(() => undefined);
});
afterEach(() => vi.restoreAllMocks());

const optionsFor = (jobsDir: string, ...names: string[]): Options => ({
  command: 'start',
  names,
  jobsDir,
  outputDir: join(jobsDir, '../output'),
  browserPath: null,
  port: 0,
});

describe('start', () => {
  test('in an empty folder makes a company and a job, which check clean as they are', async () => {
    const jobs = await aFolder();
    expect(await start(optionsFor(jobs, 'maple-court'))).toBe(EXIT.built);
    expect(prepareJobs({ jobsDir: jobs, names: [] })).toMatchObject({
      ok: true,
      jobs: [{ job: { id: 'maple-court' } }],
    });
    expect(complained).not.toHaveBeenCalled();
    for (const file of [
      'maple-court/job.yaml',
      'company/company.yaml',
      'company/suppliers.yaml',
      'company/terms.yaml',
    ]) {
      const text = await readFile(join(jobs, file), 'utf8');
      const [, schema = ''] = /^# yaml-language-server: \$schema=(\S+)$/m.exec(text) ?? [];
      expect((await stat(join(jobs, dirname(file), schema))).isFile(), file).toBe(true);
    }
  });

  test('says with which command the job is checked, where it stands', async () => {
    const told = vi.mocked(console.log);
    for (const [name, shown] of [
      ['jobs', '--jobs %'],
      ['my jobs', '--jobs "%"'],
    ] as const) {
      const jobs = join(await aFolder(), name);
      await start(optionsFor(jobs, 'maple-court'));
      expect(told.mock.calls.map(([line]) => String(line)).find((line) => line.includes(jobs))).toBe(
        `Made ${join(jobs, 'maple-court/job.yaml')}. Fill it in; check it with: npm run check -- maple-court ${shown.replace('%', jobs)}`,
      );
    }
  });

  test('makes the jobs folder too, where there is none', async () => {
    const jobs = join(await aFolder(), 'new/jobs');
    expect(await start(optionsFor(jobs, 'a1'))).toBe(EXIT.built);
    expect(prepareJobs({ jobsDir: jobs, names: [] })).toMatchObject({ ok: true });
  });

  test('leaves a company that is there as it is, and a second job beside the first', async () => {
    const jobs = await aFolder();
    await start(optionsFor(jobs, 'first'));
    const file = join(jobs, 'company/company.yaml');
    await writeFile(file, (await readFile(file, 'utf8')).replace(/name: .*/, 'name: Ours alone'));
    const before = await bytesOf(jobs);
    expect(await start(optionsFor(jobs, 'second'))).toBe(EXIT.built);
    const after = await bytesOf(jobs);
    expect(Object.keys(after).filter((path) => after[path] !== before[path])).toEqual(['second/job.yaml']);
  });

  test('refuses a folder that is there, and changes nothing', async () => {
    const jobs = await aFolder();
    await start(optionsFor(jobs, 'first'));
    await mkdir(join(jobs, 'empty'));
    const before = await bytesOf(jobs);
    for (const name of ['first', 'empty']) {
      expect(await start(optionsFor(jobs, name))).toBe(EXIT.wrongUsage);
      expect(complained.mock.lastCall?.[0]).toBe(
        `${join(jobs, name)} is there already; nothing was changed.`,
      );
    }
    expect(await bytesOf(jobs)).toEqual(before);
  });

  test.each([
    [['../x']],
    [['/tmp/x']],
    [['Company']],
    [['company']],
    [['']],
    [['a b']],
    [['-a']],
    [['a--b']],
    [['a/b']],
    [['.cache']],
    [['straße']],
    // Regression: these were made, and then no job could be built beside them.
    [['12']],
    [['constructor']],
    [['x'.repeat(81)]],
    [['a', 'b']],
    [[]],
  ])('refuses the name %j and makes nothing', async (names) => {
    const folder = await aFolder();
    const jobs = join(folder, 'jobs');
    expect(await start(optionsFor(jobs, ...names))).toBe(EXIT.wrongUsage);
    expect(complained.mock.lastCall?.[0]).toMatch(/^Say one name for the job/);
    await expect(stat(jobs)).rejects.toThrow('ENOENT');
  });
});

describe('jobScaffold', () => {
  const plain: Answers = {
    label: 'Driveway replaced',
    number: '2026-001',
    client: 'A. Owner',
    address: '1 Street',
    length: '40 ft',
    width: '18 ft',
    preparedOn: '2026-05-04',
  };

  test.each([
    'Smith, John',
    'Smith } and { Jones',
    '[x]',
    'a: b',
    'a #b',
    '# all',
    'O\'Neil "Bud"',
    '- dash',
    '*alias',
    '&anchor',
    '!tag',
    '%x',
    '@x',
    '`x`',
    'null',
    'yes',
    '007',
    '2026-01-02',
    '{{ 7 * 7 }}',
    '<b>&amp;</b>',
    'back\\slash, "and" more',
    'ends with colon:',
    '| block',
    'x'.repeat(200),
  ])('%j stands in the file as it was given', (answer) => {
    const text = jobScaffold(
      { ...plain, label: answer, number: answer, client: answer, address: answer },
      'x.json',
    );
    const { job } = parse(text, { schema: 'failsafe' }) as {
      job: { label: string; number: string; address: string; client: { name: string } };
    };
    expect([job.label, job.number, job.address, job.client.name]).toEqual([answer, answer, answer, answer]);
  });

  test.each(['14\' 6"', '14 ft 6-1/2 in', '3,5 m', '4 m, about'])(
    '%j as a length stands as it was given',
    (length) => {
      const { site, build } = parse(jobScaffold({ ...plain, length }, 'x.json'), { schema: 'failsafe' }) as {
        site: { existing: { 'old-slab': { rectangle: unknown } } };
        build: { slabs: { 'new-slab': { rectangle: unknown } } };
      };
      expect(site.existing['old-slab'].rectangle).toEqual({ length, width: '18 ft' });
      expect(build.slabs['new-slab'].rectangle).toEqual({ length, width: '18 ft' });
    },
  );

  test('the work starts on a workday about two weeks on', () => {
    // 2026-05-04 is a Monday; thirteen days on is a Sunday.
    expect(jobScaffold(plain, 'x.json')).toContain('starts-on: 2026-05-18');
  });
});
