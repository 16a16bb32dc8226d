import { num } from '../../calculate/figure.ts';
import type { Made } from '../made.ts';
import type { TableView } from '../views.ts';
import { soldVolume } from './ordered.ts';
import { end, row, start } from './tables.ts';

/** Each truck: its load, when it should come, and how long it unloads. The last of several is the balance. */
export function trucksTable({ job, results, show, words }: Made): TableView {
  const say = words.common.trucks;
  const { arrivals } = results.concrete.data;
  const { rate, limit } = results.concrete.figures.delivery;
  return {
    caption: say.caption(show.pour(num(rate)), show.minutes(num(limit))),
    columns: [start(say.truck), end(say.load), start(say.comes), end(say.unloads)],
    rows: arrivals.map(({ loadCuYd, afterFirstHr, unloadHr }, index) =>
      row(
        say.number(index + 1),
        soldVolume(loadCuYd, { job, show }),
        [
          index === 0 ? say.first : say.later(show.minutes(afterFirstHr)),
          ...(index > 0 && index === arrivals.length - 1 ? [say.balance] : []),
        ].join('; '),
        show.minutes(unloadHr),
      ),
    ),
  };
}
