import { execFile } from 'node:child_process';
import { cp, mkdir, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { describe, expect, test } from 'vitest';
import { bundleOf } from '../../src/commands/bundle.js';
import { PROJECT_DIR } from '../support/run-program.ts';
import { aFolder } from './folders.ts';

const MAIN = `
import { greeting } from './greeting.ts';
const name: string = process.argv[2] ?? 'nobody';
console.log(greeting(name), import.meta.dirname);
`;

/** A program of two sources, started as ours is. */
async function aProgram() {
  const projectDir = await aFolder();
  const commands = join(projectDir, 'src/commands');
  await mkdir(commands, { recursive: true });
  await mkdir(join(projectDir, 'node_modules'));
  await writeFile(join(projectDir, 'node_modules/.package-lock.json'), '{}');
  await writeFile(join(projectDir, 'package.json'), '{ "type": "module" }');
  await writeFile(join(commands, 'main.ts'), MAIN);
  const greet = (word: string) =>
    writeFile(
      join(commands, 'greeting.ts'),
      `export const greeting = (name: string): string => '${word} ' + name;\n`,
    );
  await greet('Hello');
  return { projectDir, commands, greet, cacheDir: join(projectDir, 'node_modules/.cache/program') };
}

async function saidBy(script: string): Promise<string> {
  return (await promisify(execFile)(process.execPath, [script, 'Ada'])).stdout.trim();
}

describe('the bundle of the program', () => {
  test('is made once, does as the sources do, and knows where they stood', async () => {
    const program = await aProgram();
    const url = await bundleOf(program);
    expect(await bundleOf(program)).toBe(url);
    expect(await readdir(program.cacheDir)).toHaveLength(1);
    expect(await saidBy(fileURLToPath(url ?? ''))).toBe(`Hello Ada ${program.commands}`);
  });

  test('is another where a source is another; the five last ones stay', async () => {
    const program = await aProgram();
    const urls = new Set<string | null>();
    for (const word of ['Hi', 'Hail', 'Howdy', 'Welcome', 'Greetings', 'Well met,', 'Good morning']) {
      await program.greet(word);
      const url = await bundleOf(program);
      urls.add(url);
      expect(await saidBy(fileURLToPath(url ?? ''))).toBe(`${word} Ada ${program.commands}`);
    }
    expect(urls.size).toBe(7);
    expect(await readdir(program.cacheDir)).toHaveLength(5);
  });

  test('is one where many make it at once, and nothing half made is left', async () => {
    const program = await aProgram();
    const urls = await Promise.all(Array.from({ length: 4 }, () => bundleOf(program)));
    expect(new Set(urls).size).toBe(1);
    expect(await saidBy(fileURLToPath(urls[0] ?? ''))).toContain('Hello Ada');
    expect(await readdir(program.cacheDir)).toHaveLength(1);
  });

  test('is none where the cache cannot be written, or a source is broken', async () => {
    const program = await aProgram();
    await writeFile(join(program.projectDir, 'node_modules/.cache'), 'a file');
    expect(await bundleOf(program)).toBeNull();
    await rm(join(program.projectDir, 'node_modules/.cache'));
    await writeFile(join(program.commands, 'greeting.ts'), 'export const = ;');
    expect(await bundleOf(program)).toBeNull();
    expect(await readdir(join(program.projectDir, 'node_modules'))).toEqual(['.package-lock.json']);
  });
});

test('without a bundle the program runs from its sources', async () => {
  const program = await aProgram();
  for (const file of ['bin.js', 'bundle.js'])
    await cp(join(PROJECT_DIR, 'src/commands', file), join(program.commands, file));
  for (const name of ['esbuild', 'tsx'])
    await symlink(join(PROJECT_DIR, 'node_modules', name), join(program.projectDir, 'node_modules', name));
  const bin = join(program.commands, 'bin.js');
  await writeFile(join(program.projectDir, 'node_modules/.cache'), 'a file');
  expect(await saidBy(bin)).toBe(`Hello Ada ${program.commands}`);
  await rm(join(program.projectDir, 'node_modules/.cache'));
  expect(await saidBy(bin)).toBe(`Hello Ada ${program.commands}`);
  expect(await readdir(join(program.projectDir, 'node_modules/.cache/flatwork-jobs/program'))).toHaveLength(
    1,
  );
});
