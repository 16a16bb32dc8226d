import { WAITS } from '../../../calculate/strength/index.ts';
import { isCountedTooMild } from '../../parts/mild-days.ts';
import { showDay } from '../../show/index.ts';
import type { FactView } from '../../views.ts';
import type { Made } from './made.ts';

/** From which day on what may be done to the concrete; nothing where none is placed. */
export function waitsFacts({ results, words }: Made): readonly FactView[] {
  const { pourDay, strength } = results;
  if (pourDay === null) return [];
  const say = words.pourDay.waits;
  const { waitsUntil } = pourDay.data;
  const dates = WAITS.map((wait) => say.date(say.names[wait], showDay(waitsUntil[wait], words.common)));
  return [
    { label: say.label, value: say.dates(dates) },
    ...(strength.data.isEstimated ? [{ label: say.days, value: say.estimated }] : []),
    ...(isCountedTooMild(results) ? [{ label: say.days, value: say.cold }] : []),
  ];
}
