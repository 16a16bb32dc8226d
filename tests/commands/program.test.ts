import { appendFile, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runProgram } from '../support/run-program.ts';
import { aBuiltPlace, aFolder, bytesOf, leftIn, someJobs } from './folders.ts';

const here = (module: string) => join(import.meta.dirname, module);

describe('the program ends with', () => {
  test('0 and help, when asked for it', async () => {
    const { code, out, err } = await runProgram(['--help']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const word of ['build', 'check', 'start', 'sheet', 'serve', '--jobs', '--output', 'Exit codes']) {
      expect(out).toContain(word);
    }
  });

  test('3 for a word it does not know, and help on the side of errors', async () => {
    const { code, out, err } = await runProgram(['biuld']);
    expect({ code, out }).toEqual({ code: 3, out: '' });
    expect(err).toMatch(/^There is no command "biuld". Did you mean build\?\n\nCommands\n/);
  });

  test('1 for problems in the files', async () => {
    const jobs = await someJobs('corner-walk');
    await appendFile(join(jobs, 'corner-walk/job.yaml'), '\nplann: {}\n');
    const { code, out, err } = await runProgram(['check', '--jobs', jobs]);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain('Did you mean "plan"?');
    expect(err).toContain('Nothing was written');
  });

  test('2 for a fault of ours, with all there is to report, and the old output stays', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    const { code, out, err } = await runProgram(['build', '--jobs', place.jobs, '--output', place.output], {
      before: [here('break-templates.mjs')],
    });
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('This is a fault of this program, not of your files.');
    expect(err).toContain('injected');
    expect(err).toMatch(/\n\s+at .*\/src\/render\/\w[\w-]*\.ts:\d+/);
    expect(await bytesOf(place.output)).toEqual(before);
    expect(await leftIn(place.output)).toEqual([]);
  });
});

describe('what is loaded', () => {
  const loadedBy = async (args: readonly string[]) => {
    const list = join(await aFolder(), 'loaded');
    const { code } = await runProgram(args, { before: [here('record-loads.mjs')], env: { LOADED: list } });
    const lines = (await readFile(list, 'utf8')).split('\n');
    const packages = lines.flatMap((line) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(line)?.[1] ?? []);
    return { code, packages: new Set(packages), sources: lines.filter((line) => line.endsWith('.ts')) };
  };
  const HEAVY = ['@11ty/eleventy', 'nunjucks', 'puppeteer', 'puppeteer-core', '@sparticuz/chromium'];

  test('a check loads no page engine, no browser and no source by itself', async () => {
    const jobs = await someJobs('corner-walk');
    const { code, packages, sources } = await loadedBy(['check', '--jobs', jobs]);
    expect(code).toBe(0);
    expect([...packages]).toEqual(['.cache']);
    expect(sources).toEqual([]);
    expect(HEAVY.filter((name) => packages.has(name))).toEqual([]);
  });

  test('a build with a problem tells it before it loads what makes pages of templates', async () => {
    const jobs = await someJobs('corner-walk');
    await appendFile(join(jobs, 'corner-walk/job.yaml'), '\nplann: {}\n');
    const output = join(await aFolder(), 'output');
    const { code, packages } = await loadedBy(['build', '--jobs', jobs, '--output', output]);
    expect(code).toBe(1);
    expect(HEAVY.filter((name) => packages.has(name))).toEqual(['nunjucks']);
  });

  test('a build without change starts no browser and gives the same bytes; with a change it starts one', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    const args = ['build', 'corner-walk', '--jobs', place.jobs, '--output', place.output];
    const unchanged = await loadedBy(args);
    expect(unchanged.code).toBe(0);
    expect(HEAVY.filter((name) => unchanged.packages.has(name))).toEqual(['@11ty/eleventy', 'nunjucks']);
    expect(await bytesOf(place.output)).toEqual(before);

    await rm(join(place.output, '.cache'));
    const printing = await loadedBy([...args, '--browser', process.execPath]);
    expect(printing.code).toBe(4);
    expect([...printing.packages]).toContain('puppeteer');
  });
});
