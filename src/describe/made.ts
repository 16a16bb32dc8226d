import type { JobResults } from '../calculate/index.ts';
import type { Job } from '../calculate/job.ts';
import type { Words } from '../words/index.ts';
import type { Show } from './show/index.ts';

/** What the documents of the office are made from; the proposal has facts of its own. */
export type Made = {
  readonly job: Job;
  readonly results: JobResults;
  readonly show: Show;
  readonly words: Words;
};
