import type { Profile } from '../calculate/job.ts';
import type { HeightsSection } from '../read/index.ts';
import { mapThings } from './quantity.ts';
import { pointOf } from './shape-base.ts';

/** None where the job says nothing of heights. */
export function profilesOf(input: HeightsSection | undefined): Readonly<Record<string, Profile>> {
  return mapThings(input?.profiles ?? {}, (id, { label, along }) => ({
    id,
    label,
    along: along.map(pointOf),
  }));
}
