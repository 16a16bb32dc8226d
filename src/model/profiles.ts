import type { Profile } from '../calculate/job.ts';
import type { HeightsSection } from '../read/index.ts';
import { inCoreUnit, mapThings } from './quantity.ts';
import { pointOf } from './shape-base.ts';

/** None where the job says nothing of heights. */
export function profilesOf(input: HeightsSection | undefined): Readonly<Record<string, Profile>> {
  return mapThings(input?.profiles ?? {}, (id, { label, along, beyond }) => ({
    id,
    label,
    along: along.map(pointOf),
    beyond: (beyond ?? []).map((point) => ({
      label: point.label,
      awayIn: inCoreUnit(point.away),
      heightIn: inCoreUnit(point.height),
    })),
  }));
}
