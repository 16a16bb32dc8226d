import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import type { Words } from '../../words/index.ts';
import type { Show } from '../show/index.ts';

/** The mix in one line, as it is ordered and checked at the chute. */
export function mixWords(job: Job, results: JobResults, show: Show, words: Words): string {
  const { mix } = job.build;
  const { strength, air } = results.concrete.figures.mix;
  return [
    words.workOrder.mix(
      show.strength(num(strength)),
      show.percent(num(air)),
      show.size(mix.slumpIn),
      show.size(mix.aggregateIn),
    ),
    ...mix.additives.map((additive) => words.common.additives[additive]),
  ].join(', ');
}
