import { en } from '../words/index.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { findingsText } from './findings-text.ts';
import type { Options } from './options.ts';
import { prepareJobs } from './prepare.ts';
import { showProblems } from './show-problems.ts';

/** Reads and calculates; shows problems and findings; writes nothing. */
export function check(options: Options): ExitCode {
  const prepared = prepareJobs({ ...options, why: false });
  if (!prepared.ok) {
    console.error(showProblems(prepared.problems));
    return EXIT.problemsInInput;
  }
  for (const { job, results } of prepared.jobs) {
    console.log(`${job.id}: no problems`);
    for (const line of findingsText(job, results.findings, en)) console.log(`  ${line}`);
  }
  return EXIT.built;
}
