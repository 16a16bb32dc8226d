import type { JobResults } from '../../../calculate/index.ts';

export type { Made } from '../../made.ts';
export type PourDay = NonNullable<JobResults['pourDay']>;
