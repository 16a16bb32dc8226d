import type { GradedSlab } from '../../calculate/grades/index.ts';
import type { Words } from '../../words/index.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { Show } from '../show/index.ts';
import type { TableView } from '../views.ts';

/** Strings from corner to corner: how they fall, and where the top leaves them. */
export function stringsTable(
  slabs: readonly GradedSlab[],
  { show, words }: { readonly show: Show; readonly words: Words },
): TableView | null {
  const say = words.workOrder.grades.strings;
  const { towards, level, even, below, above } = say;
  return tableOrNull(
    say.caption,
    [start(say.slab), start(say.corners), end(say.length), start(say.falls), start(say.between)],
    slabs.flatMap(({ slab, strings }) =>
      strings.map(({ from, to, lengthIn, climb, off }) => {
        const [first, second] = [`${from}`, `${to}`];
        const slope = show.slope(Math.abs(climb));
        const runs = towards(slope, climb < 0 ? second : first);
        const by = show.size(Math.abs(off.aboveIn));
        const at = show.length(off.alongIn);
        return row(
          slab.label,
          say.from(first, second),
          show.length(lengthIn),
          slope === show.slope(0) ? level : runs,
          by === show.size(0) ? even : (off.aboveIn < 0 ? below : above)(by, at, first),
        );
      }),
    ),
  );
}
