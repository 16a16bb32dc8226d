import type { Build } from '../job.ts';
import type { RuleTag } from '../rule.ts';

/** The tags of a job, which decide what rules are about it. */
export function ruleTags(job: {
  readonly slabs: Readonly<Record<string, Pick<Build['slabs'][string], 'use'>>>;
  readonly steps: Readonly<Record<string, unknown>>;
  readonly mix: Pick<Build['mix'], 'exposure'>;
  readonly loadCount: number;
}): readonly RuleTag[] {
  const uses = [...new Set(Object.values(job.slabs).map(({ use }) => use))];
  const { exposure } = job.mix;
  return [
    'any-job',
    'price',
    ...uses,
    ...(Object.keys(job.steps).length > 0 ? (['steps'] as const) : []),
    ...(exposure === 'no-freezing' ? [] : (['freezing'] as const)),
    ...(exposure === 'freezing-and-deicers' ? (['deicers'] as const) : []),
    ...(job.loadCount > 0 ? (['haul'] as const) : []),
  ];
}
