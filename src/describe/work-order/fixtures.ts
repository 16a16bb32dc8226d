import { num } from '../../calculate/figure.ts';
import type { Lid, UnderSlab } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { TableView, WorkOrderView } from '../views.ts';
import { fixturesPlan } from './fixtures-plan.ts';

/** What lies in and under new slabs: its plan, lids and pipes; null where there is nothing of it. */
export function fixturesView(made: Made): WorkOrderView['fixtures'] {
  const plan = fixturesPlan(made);
  return plan === null ? null : { plan, lids: lidsTable(made), pipes: pipesTable(made) };
}

/** What the pre-pour page asks of each of them. */
export function fixtureChecks({ job, results, show, words }: Made): readonly string[] {
  const say = words.tieIns;
  const { lids = {} } = results.fixtures.figures;
  return [
    ...Object.values(job.lids).flatMap(({ id, label }) => {
      const figures = lids[id];
      return figures === undefined ? [] : [say.lids.prePour(label, show.height(num(figures.new)))];
    }),
    ...Object.values(job.site.underSlab).map(({ label, depthIn }) =>
      say.pipes.prePour(label, show.size(depthIn)),
    ),
    ...Object.values(job.tieIns.drains).map(({ label, rimIn }) =>
      say.drains.prePour(label, show.height(rimIn)),
    ),
    ...Object.values(job.tieIns.garages).map(({ label, lipIn }) =>
      say.garages.prePour(label, show.fine(lipIn)),
    ),
  ];
}

function lidsTable(made: Made): TableView | null {
  const say = made.words.tieIns.lids;
  return tableOrNull(
    say.caption,
    [
      start(say.no),
      start(say.lid),
      start(say.kind),
      start(say.where),
      end(say.old),
      end(say.new),
      end(say.set),
    ],
    Object.values(made.job.lids).map((lid, index) => lidRow(lid, index, made)),
  );
}

function lidRow(lid: Lid, index: number, { results, show, words }: Made): TableView['rows'][number] {
  const say = words.tieIns.lids;
  const figures = thingNamed(results.fixtures.figures.lids ?? {}, lid.id, 'lid');
  const [up, down, none] = [show.fine(num(figures.up)), show.fine(num(figures.down)), show.fine(0)];
  const lower = down === none ? say.same : say.down(down);
  return row(
    say.tag(show.count(index + 1)),
    lid.label,
    say.kinds[lid.kind],
    say.at(show.length(lid.at.xIn), show.length(lid.at.yIn)),
    show.height(num(figures.old)),
    show.height(num(figures.new)),
    up === none ? lower : say.up(up),
  );
}

function pipesTable(made: Made): TableView | null {
  const say = made.words.tieIns.pipes;
  return tableOrNull(
    say.caption,
    [
      start(say.no),
      start(say.pipe),
      start(say.kind),
      start(say.where),
      end(say.size),
      end(say.depth),
      end(say.below),
    ],
    Object.values(made.job.site.underSlab).map((pipe, index) => pipeRow(pipe, index, made)),
  );
}

function pipeRow(pipe: UnderSlab, index: number, { results, show, words }: Made): TableView['rows'][number] {
  const say = words.tieIns.pipes;
  const figures = thingNamed(results.fixtures.figures['under-slab'] ?? {}, pipe.id, 'pipe');
  const inSlabIn = num(figures['in-slab']);
  return row(
    say.tag(show.count(index + 1)),
    pipe.label,
    say.kinds[pipe.kind],
    pipe.along.map(({ xIn, yIn }) => say.at(show.length(xIn), show.length(yIn))).join(say.to),
    show.size(pipe.sizeIn),
    show.size(pipe.depthIn),
    inSlabIn > 0 ? say.inSlab(show.size(inSlabIn)) : show.size(num(figures.below)),
  );
}
