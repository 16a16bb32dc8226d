import type { Finding } from '../calculate/findings/index.ts';
import type { Job } from '../calculate/job.ts';
// Past the index on purpose: a check needs this one file, and the index loads every document.
import { findingsView } from '../describe/parts/findings-view.ts';
import type { Words } from '../words/index.ts';

/** Findings as lines for a terminal; those that were accepted come with the reason. */
export function findingsText(job: Job, findings: readonly Finding[], words: Words): readonly string[] {
  return findingsView(job, findings, words).map(
    ({ severityWord, place, sentence, limit, source, acknowledged }) =>
      `${severityWord}: ${place}. ${sentence} ${limit} ${source}.${acknowledged === null ? '' : ` ${acknowledged}`}`,
  );
}
