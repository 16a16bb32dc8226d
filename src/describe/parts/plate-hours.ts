import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { PublicText } from '../../calculate/text.ts';
import { ceilToStep } from '../../units/index.ts';
import type { Show } from '../show/index.ts';

/** How long the compactor runs for all of the base, up to the next tenth: a strip is never 0.0 h. */
export function plateHours(results: JobResults, show: Show): PublicText {
  return show.hours(ceilToStep(num(results.base.figures.total['plate-hours']), 0.1));
}
