import type { HaulLoad } from '../../calculate/haul/index.ts';
import type { Job } from '../../calculate/job.ts';
import { goneLabel } from './gone-thing.ts';

/** What is on a load, in the words of the job; soil dug out under slabs has one word of ours. */
export function loadedWords(load: Pick<HaulLoad, 'pieces'>, job: Job, soilWord: string): string {
  const labels = load.pieces.map(({ existingId }) =>
    existingId === null ? soilWord : (goneLabel(job, existingId) ?? soilWord),
  );
  return [...new Set(labels)].join(', ');
}
