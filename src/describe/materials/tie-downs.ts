import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { MaterialsView } from '../views.ts';

/** How each machine is tied down that says what it weighs; null where none does. */
export function tieDownsView({ job, results, show, words }: Made): MaterialsView['tieDowns'] {
  const say = words.materials.tieDowns;
  const rows = Object.entries(results.tieDowns).flatMap(([id, figures]) => {
    const { label, tiedDown } = thingNamed(job.company.machines, id, 'machine');
    if (tiedDown === null) return [];
    return [
      row(
        label,
        show.weight(tiedDown.weightLb),
        show.length(tiedDown.lengthIn),
        show.leastWeight(num(figures['working-load'])),
        show.count(num(figures.count)),
        show.leastWeight(num(figures['working-load-each'])),
        show.count(num(figures['count-blocked'])),
      ),
    ];
  });
  const table = tableOrNull(
    say.caption,
    [
      start(say.machine),
      end(say.weight),
      end(say.length),
      end(say.together),
      end(say.count),
      end(say.each),
      end(say.countBlocked),
    ],
    rows,
  );
  return table === null ? null : { table, note: say.note };
}
