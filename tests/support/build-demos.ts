import { cp, mkdtemp, rm } from 'node:fs/promises';
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

/** Builds the demo jobs once, outside the project, for all tests that look at what is printed. */
export default async function buildDemos(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), 'demos-'));
  const jobs = join(folder, 'jobs');
  const output = join(folder, 'output');
  await cp(join(PROJECT_DIR, 'jobs'), jobs, { recursive: true });
  for (const command of ['build', 'sheet']) {
    const { code, err } = await runProgram([command, '--jobs', jobs, '--output', output]);
    if (code !== 0) throw new Error(`${command} of the demo jobs ended with ${code}: ${err}`);
  }
  project.provide('demoJobs', jobs);
  project.provide('demoOutput', output);
  return () => rm(folder, { recursive: true, force: true });
}
