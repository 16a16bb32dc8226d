import type { JobResults } from '../../calculate/index.ts';

/** Whether it is cold at the pour and nobody said how warm the days after it will be: all days of waiting are too few then. */
export function isCountedTooMild({ pourDay, strength }: Pick<JobResults, 'pourDay' | 'strength'>): boolean {
  return pourDay !== null && pourDay.data.isCold && !strength.data.isEstimated;
}
