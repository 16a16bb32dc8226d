/** Input of a job and its company, resolved into one Job and the origins of its values. */
export { type ResolvedJob, resolveJob } from './resolve-job.ts';
