import type { Job } from '../../calculate/job.ts';
import type { Words } from '../../words/index.ts';
import type { Show } from '../show/index.ts';

/** The mix in one line, as it is ordered and checked at the chute. */
export function mixWords(mix: Job['build']['mix'], show: Show, words: Words): string {
  return words.workOrder.mix(
    show.strength(mix.strengthPsi),
    show.percent(mix.airRatio),
    show.size(mix.slumpIn),
    show.size(mix.aggregateIn),
  );
}
