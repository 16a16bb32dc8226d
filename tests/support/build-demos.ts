import { cp, mkdtemp, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { PROJECT_DIR, runProgram } from './run-program.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** The demo jobs: two on letter, one on A4. */
    demoJobs: string;
    /** All their documents and the site-walk sheet, with the cache. */
    demoOutput: string;
  }
}

/** The file beside the demo jobs that is written once they are built; what went wrong stands in it. */
export const BUILT_MARK = 'built';

/**
 * Builds the demo jobs once, outside the project, for all tests that look at what is printed. The tests that do
 * not run meanwhile; `demos-built.ts` keeps the others waiting.
 */
export default async function buildDemos(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), 'demos-'));
  const jobs = join(folder, 'jobs');
  const output = join(folder, 'output');
  await cp(join(PROJECT_DIR, 'jobs'), jobs, { recursive: true });
  // `.ci/run` says where its own build has just printed the same pages with the same code.
  const printed = process.env['PRINTED_JUST_NOW'];
  if (printed !== undefined)
    await cp(join(PROJECT_DIR, printed), join(output, '.cache'), { recursive: true });
  const built = faultsOf(jobs, output)
    .catch(String)
    .then(async (said) => {
      await writeFile(join(folder, 'said'), said);
      await rename(join(folder, 'said'), join(folder, BUILT_MARK));
    });
  project.provide('demoJobs', jobs);
  project.provide('demoOutput', output);
  return async () => {
    await built;
    await rm(folder, { recursive: true, force: true });
  };
}

/** What went wrong; nothing where all of it is built. */
async function faultsOf(jobs: string, output: string): Promise<string> {
  let said = '';
  for (const command of ['build', 'sheet']) {
    const { code, err } = await runProgram([command, '--jobs', jobs, '--output', output]);
    if (code !== 0) said += `${command} of the demo jobs ended with ${code}: ${err}`;
  }
  return said;
}
