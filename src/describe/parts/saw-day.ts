import type { JobResults } from '../../calculate/index.ts';
import { addDaysOn } from '../../units/index.ts';

const DAY_HR = 24;

/** The day after the pour on which the joints are sawn; null where a saw runs on the day itself, or nobody can say. */
export function sawDayOn({ pourDay }: Pick<JobResults, 'pourDay'>): string | null {
  if (pourDay === null) return null;
  const { on, steps } = pourDay.data;
  const hours = steps.flatMap(({ name, fromHr }) =>
    name === 'saw' || name === 'saw-early' ? [fromHr ?? 0] : [],
  );
  const firstHr = Math.min(...hours);
  return hours.length > 0 && firstHr >= DAY_HR ? addDaysOn(on, Math.floor(firstHr / DAY_HR)) : null;
}
