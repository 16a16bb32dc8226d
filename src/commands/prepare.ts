import { basename, join, relative, sep } from 'node:path';
import { type CalculateJob, calculateJob, type JobResults } from '../calculate/index.ts';
import type { Job } from '../calculate/job.ts';
import { resolveJob } from '../model/index.ts';
import { type LocatedProblem, locateProblem, type Origins } from '../problems/index.ts';
import { COMPANY_FOLDER, listJobs, readCompany, readJob } from '../read/index.ts';
import { problemsEn } from '../words/problems-en.ts';
import { shippedRules, withResultsOf } from './kept.ts';

/** A job that was read, resolved and calculated without a problem. */
export type PreparedJob = {
  readonly job: Job;
  readonly origins: Origins;
  readonly results: JobResults;
};

export type Prepared =
  | { readonly ok: true; readonly jobs: readonly PreparedJob[] }
  | { readonly ok: false; readonly problems: readonly LocatedProblem[] };

/**
 * Reads and calculates the jobs asked for (all where none is named). With any problem in any of
 * them, all problems come back and no job.
 */
export function prepareJobs(asked: {
  readonly jobsDir: string;
  readonly names: readonly string[];
  /** Whether other plans of trips are looked for too, which only the documents show; they are if not given. */
  readonly why?: boolean;
  /** What calculates the job of that name, where it has been calculated before. */
  readonly calculatorOf?: (id: string) => CalculateJob;
}): Prepared {
  const jobsFolder = shownPath(asked.jobsDir);
  const listed = listJobs(jobsFolder, asked.names);
  const rules = shippedRules();
  const company = readCompany(join(jobsFolder, COMPANY_FOLDER));
  const problems: LocatedProblem[] = [...listed.problems, ...rules.problems, ...company.problems];
  const jobs: PreparedJob[] = [];
  for (const id of listed.ids) {
    const input = readJob(join(jobsFolder, id));
    const resolved = resolveJob(input, company, rules);
    problems.push(...resolved.problems);
    if (resolved.job === null) continue;
    const { job } = resolved;
    const why = asked.why ?? true;
    const calculated =
      asked.calculatorOf?.(id)(job, { why }) ??
      withResultsOf(join(asked.jobsDir, id), () => calculateJob(job, { why }));
    const where = { folder: input.folder, texts: problemsEn.texts };
    problems.push(...calculated.problems.map((problem) => locateProblem(problem, resolved.origins, where)));
    if (calculated.results !== null) {
      jobs.push({
        job: resolved.job,
        origins: asPrinted(resolved.origins, jobsFolder),
        results: calculated.results,
      });
    }
  }
  return problems.length > 0 ? { ok: false, problems: eachOnce(problems) } : { ok: true, jobs };
}

/**
 * Places in files as the documents name them: from the jobs folder on, so that the same jobs in
 * another place, or built from another place, give the same bytes and print no path of this machine.
 */
function asPrinted(origins: Origins, jobsFolder: string): Origins {
  const printed = (file: string): string => {
    const fromJobs = relative(jobsFolder, file);
    return fromJobs.startsWith('..') ? file : [basename(jobsFolder), ...fromJobs.split(sep)].join('/');
  };
  return new Map(
    [...origins].map(([path, origin]) => {
      const { spot } = origin;
      return [path, spot === null ? origin : { ...origin, spot: { ...spot, file: printed(spot.file) } }];
    }),
  );
}

/** A problem of the company shows in every job; it is told once. */
function eachOnce(problems: readonly LocatedProblem[]): readonly LocatedProblem[] {
  return [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
}

/** A folder as the user knows it: from where the command was started, where it lies below it. */
export function shownPath(path: string): string {
  const fromHere = relative(process.cwd(), path);
  return fromHere.startsWith('..') || fromHere === '' ? path : fromHere;
}
