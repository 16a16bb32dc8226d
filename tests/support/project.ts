import { join } from 'node:path';
import { type PreparedJob, prepareJobs } from '../../src/commands/prepare.ts';
import { showProblems } from '../../src/commands/show-problems.ts';

export const PROJECT_DIR = join(import.meta.dirname, '..', '..');
export const DEMO_JOBS = join(PROJECT_DIR, 'jobs');
export const TEST_JOBS = join(PROJECT_DIR, 'tests', 'jobs');
export const FULL_JOB = 'full';

const preparedBefore = new Map<string, readonly PreparedJob[]>();

/**
 * All jobs of a folder that no test writes in: the test files of a worker share them.
 * @throws {Error} If one has a problem.
 */
export function preparedIn(jobsDir: string): readonly PreparedJob[] {
  const known = preparedBefore.get(jobsDir);
  if (known !== undefined) return known;
  const prepared = prepareJobs({ jobsDir, names: [] });
  if (!prepared.ok) throw new Error(showProblems(prepared.problems));
  preparedBefore.set(jobsDir, prepared.jobs);
  return prepared.jobs;
}

/** The demo jobs and the test jobs. */
export function allJobs(): readonly PreparedJob[] {
  return [...preparedIn(DEMO_JOBS), ...preparedIn(TEST_JOBS)];
}

/** @throws {RangeError} If there is no such job. */
export function jobNamed(jobs: readonly PreparedJob[], id: string): PreparedJob {
  const found = jobs.find(({ job }) => job.id === id);
  if (found === undefined) throw new RangeError(`no job is called ${id}`);
  return found;
}
