import type { JobResults } from '../../calculate/index.ts';
import type { DumpPlace, Job } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';

/** Where loads of a job go to or base comes from. */
export function placesUsed(job: Job, results: JobResults): readonly DumpPlace[] {
  const { loads, baseFrom } = results.haul.data;
  const used = new Set([...loads.map(({ place }) => place), ...baseFrom.map(({ place }) => place)]);
  return [...used].map((id) => thingNamed(job.company.places, id, 'place'));
}
