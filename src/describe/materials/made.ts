import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import type { Words } from '../../words/index.ts';
import type { Show } from '../show/index.ts';

/** What tables and sheets of the materials and haul plan are made of. */
export type Made = {
  readonly job: Job;
  readonly results: JobResults;
  readonly show: Show;
  readonly words: Words;
};
