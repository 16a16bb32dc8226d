import type { JobResults } from '../../../calculate/index.ts';
import type { Job } from '../../../calculate/job.ts';
import type { Words } from '../../../words/index.ts';
import type { Show } from '../../show/index.ts';

export type Made = {
  readonly job: Job;
  readonly results: JobResults;
  readonly show: Show;
  readonly words: Words;
};
export type PourDay = NonNullable<JobResults['pourDay']>;
