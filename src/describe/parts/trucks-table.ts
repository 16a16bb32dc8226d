import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Words } from '../../words/index.ts';
import type { Show } from '../show/index.ts';
import type { TableView } from '../views.ts';
import { end, row, start } from './tables.ts';

type Made = { readonly results: JobResults; readonly show: Show; readonly words: Words };

/** Each truck: its load, when it should come, and how long it unloads. The last of several is the balance. */
export function trucksTable({ results, show, words }: Made): TableView {
  const say = words.common.trucks;
  const { arrivals } = results.concrete.data;
  const { rate, limit } = results.concrete.figures.delivery;
  return {
    caption: say.caption(show.pour(num(rate)), show.minutes(num(limit))),
    columns: [start(say.truck), end(say.load), start(say.comes), end(say.unloads)],
    rows: arrivals.map(({ loadCuYd, afterFirstHr, unloadHr }, index) =>
      row(
        say.number(index + 1),
        show.volume(loadCuYd),
        [
          index === 0 ? say.first : say.later(show.minutes(afterFirstHr)),
          ...(index > 0 && index === arrivals.length - 1 ? [say.balance] : []),
        ].join('; '),
        show.minutes(unloadHr),
      ),
    ),
  };
}
