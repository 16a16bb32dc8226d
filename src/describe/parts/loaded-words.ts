import type { HaulLoad } from '../../calculate/haul/index.ts';
import type { Job } from '../../calculate/job.ts';

/** What is on a load, in the words of the job; soil dug out under slabs has one word of ours. */
export function loadedWords(load: Pick<HaulLoad, 'pieces'>, job: Job, soilWord: string): string {
  const labels = load.pieces.map(({ existingId }) =>
    existingId === null ? soilWord : (job.site.existing[existingId]?.label ?? soilWord),
  );
  return [...new Set(labels)].join(', ');
}
