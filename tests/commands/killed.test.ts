import { spawnSync } from 'node:child_process';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { withOutputFolder } from '../../src/commands/output-folder.ts';
import { BusyError } from '../../src/print/index.ts';
import { childrenOf, isRunning } from '../support/processes.ts';
import { runProgram, startProgram } from '../support/run-program.ts';
import { aBuiltPlace, aFolder, bytesOf, leftIn, type Place } from './folders.ts';

const buildArgs = ({ jobs, output }: Place, ...names: string[]) => [
  'build',
  ...names,
  '--jobs',
  jobs,
  '--output',
  output,
];

/** Builds the pages alone, which is quick. */
const NO_BROWSER = ['--browser', '/nowhere'];

async function relabel({ jobs }: Place, id: string, label: string): Promise<void> {
  const file = join(jobs, id, 'job.yaml');
  await writeFile(file, (await readFile(file, 'utf8')).replace(/^ {2}label: .*$/m, `  label: ${label}`));
}

describe('a build that is killed while it prints', () => {
  test('leaves the old output as it was, and the next build does not mind what it left', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    await rm(join(place.output, '.cache'));
    await relabel(place, 'corner-walk', 'Two panels');
    const { child, ended, says } = startProgram(buildArgs(place, 'corner-walk'));
    await says(/printed 1 of 6/);
    child.kill('SIGKILL');
    await ended;

    const left = await leftIn(place.output);
    expect(left.toSorted()).toEqual(['.lock', expect.stringMatching(/^\.next-\d+$/)]);
    const after = await bytesOf(place.output);
    expect(Object.fromEntries(Object.entries(after).filter(([file]) => !file.startsWith('.')))).toEqual(
      before,
    );

    const next = await runProgram([...buildArgs(place, 'corner-walk'), ...NO_BROWSER]);
    expect(next.code).toBe(4);
    expect(await leftIn(place.output)).toEqual([]);
    expect(await readFile(join(place.output, 'corner-walk/homeowner/proposal.html'), 'utf8')).toContain(
      'Two panels',
    );
    const pages = (files: object) => Object.keys(files).filter((file) => file.endsWith('.html'));
    expect(pages(await bytesOf(place.output))).toEqual(pages(before));
  });
});

describe('two builds at once', () => {
  test('both end well, and the output is that of one after the other', async () => {
    const place = await aBuiltPlace();
    const before = await bytesOf(place.output);
    await relabel(place, 'corner-walk', 'Two panels');
    await relabel(place, 'garden-row', 'Another patio');
    const ends = await Promise.all(
      ['corner-walk', 'garden-row'].map((id) => runProgram([...buildArgs(place, id), ...NO_BROWSER])),
    );
    expect(ends.map(({ code }) => code)).toEqual([4, 4]);
    expect(await leftIn(place.output)).toEqual([]);
    const index = await readFile(join(place.output, 'index.html'), 'utf8');
    expect(index).toContain('Two panels');
    expect(index).toContain('Another patio');
    const untouched = (files: Readonly<Record<string, string>>) =>
      Object.entries(files).filter(([file]) => /^(maple-court|site-walk)/.test(file));
    expect(untouched(await bytesOf(place.output))).toEqual(untouched(before));
  });

  test('work on the output one after the other', async () => {
    const output = await aFolder();
    const order: string[] = [];
    const one = (name: string) =>
      withOutputFolder(output, async (next) => {
        order.push(`${name} begins`);
        await writeFile(join(next, 'page.html'), name);
        await new Promise((wait) => setTimeout(wait, 120));
        expect(await readFile(join(next, 'page.html'), 'utf8')).toBe(name);
        order.push(`${name} ends`);
      });
    await Promise.all([one('a'), one('b')]);
    expect(new Set([order[0]?.[0], order[2]?.[0]])).toEqual(new Set(['a', 'b']));
    expect(order[1]).toBe(`${order[0]?.[0]} ends`);
    expect(await leftIn(output)).toEqual([]);
  });
});

describe('the lock of the output folder', () => {
  const lockedBy = async (pid: number) => {
    const output = await aFolder();
    await mkdir(join(output, '.lock'));
    await writeFile(join(output, '.lock/owner'), String(pid));
    return output;
  };

  test('of a process that is dead is taken over at once', async () => {
    const { pid } = spawnSync(process.execPath, ['-e', '']);
    const startedMs = performance.now();
    expect(await withOutputFolder(await lockedBy(pid), async () => 'built')).toBe('built');
    expect(performance.now() - startedMs).toBeLessThan(5000);
  });

  // Regression: past its patience a build went on without the lock, beside the one that held it.
  test('of a process that is alive is respected to the end', async () => {
    const output = await lockedBy(process.ppid);
    await expect(withOutputFolder(output, async () => 'built', 100)).rejects.toThrow(BusyError);
    expect(await leftIn(output)).toEqual(['.lock']);
  });
});

test('Ctrl-C while it prints ends the build, and no browser stays behind', async () => {
  const place = await aBuiltPlace();
  await rm(join(place.output, '.cache'));
  const { child, ended, says } = startProgram(buildArgs(place, 'corner-walk'));
  await says(/printed 1 of 6/);
  const browsers = childrenOf(child.pid ?? 0);
  expect(browsers.length).toBeGreaterThan(0);
  child.kill('SIGINT');
  expect((await ended).code).not.toBe(0);
  await expect.poll(() => browsers.filter(isRunning), { timeout: 5000 }).toEqual([]);
});
