import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

/** How high new slabs come up to garage floors, point by point; null where none does. */
export function garagesTable({ job, results, show, words }: Made): TableView | null {
  const say = words.tieIns.garages;
  return tableOrNull(
    say.caption,
    [start(say.floor), start(say.point), end(say.floorHeight), end(say.slabTop), end(say.lip), end(say.seal)],
    Object.values(job.tieIns.garages).flatMap(({ id, label, points }) => {
      const { lip, seal, tops } = thingNamed(results.tieIns.figures.garages ?? {}, id, 'garage floor');
      return points.map((point, index) => {
        const cells = [
          index === 0 ? label : '',
          thingNamed(job.heights?.points ?? {}, point, 'point').label,
          show.height(num(thingNamed(results.levels.figures.points ?? {}, point, 'point').height)),
          show.height(num(thingNamed(tops, point, 'point'))),
          show.fine(num(lip)),
          show.size(num(seal)),
        ];
        return { ...row(...cells), note: index === points.length - 1 ? say.how : null };
      });
    }),
  );
}

/** How much water of each slab runs to lines that are kept dry; null where there are none. */
export function keptDryTable({ job, results, show, words }: Made): TableView | null {
  const say = words.tieIns.keptDry;
  return tableOrNull(
    say.caption,
    [start(say.line), start(say.kind), start(say.slab), end(say.share)],
    Object.values(job.tieIns.keepDry).flatMap(({ id, label, kind }) =>
      Object.values(job.build.slabs).map((slab) => {
        const share = results.grades.data.slabs[slab.id]?.figures.towards?.[id];
        const told =
          share === undefined ? say.unknown : num(share) === 0 ? say.none : show.percent(num(share));
        return row(label, say.kinds[kind], slab.label, told);
      }),
    ),
  );
}
