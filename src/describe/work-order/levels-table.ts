import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job, LevelPoint } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Words } from '../../words/index.ts';
import { end, row, start } from '../parts/tables.ts';
import type { Show } from '../show/index.ts';
import type { TableView, WorkOrderView } from '../views.ts';

type Made = {
  readonly job: Pick<Job, 'heights'> & { readonly site: Pick<Job['site'], 'existing'> };
  readonly results: Pick<JobResults, 'levels'>;
  readonly show: Show;
  readonly words: Words;
};

/** The height of every point and how the notes close; null where the job says nothing of heights. */
export function levelsView(made: Made): WorkOrderView['levels'] {
  const table = levelsTable(made);
  return table === null ? null : { table, notes: runNotes(made) };
}

function runNotes({ job, results, show, words }: Made): readonly string[] {
  const say = words.workOrder.levels;
  const { runs } = results.levels.data;
  const stationName = (id: string) => job.heights?.points[id]?.label ?? id;
  return runs.map(({ from, closing }, index) => {
    if (closing === null) return say.open(stationName(from));
    const figures = thingNamed(results.levels.figures.runs ?? {}, `run-${index + 1}`, 'run');
    const closes = say.closes(
      stationName(from),
      show.fine(num(figures.miss)),
      show.fine(num(figures.allowed)),
    );
    return closing.setUpCount === 1 ? closes : say.spread(closes, show.count(closing.setUpCount));
  });
}

function levelsTable(made: Made): TableView | null {
  const { job, results, show, words } = made;
  const { heights } = job;
  const figures = results.levels.figures.points;
  if (heights === null || figures === undefined) return null;
  const say = words.workOrder.levels;
  const points = Object.values(heights.points);
  const from = referenceOf(points);
  const heightInOf = ({ id }: LevelPoint) => num(thingNamed(figures, id, 'point').height);
  const fromIn = heightInOf(from);
  return {
    caption: say.caption(heights.datum),
    columns: [
      start(say.point),
      end(say.along),
      end(say.across),
      start(say.what),
      end(say.height),
      end(say.from(from.label)),
    ],
    rows: points.map((point) => ({
      ...row(
        point.label,
        show.length(point.at.xIn),
        show.length(point.at.yIn),
        whatOf(point, made),
        show.height(heightInOf(point)),
        differenceOf(heightInOf(point) - fromIn, made),
      ),
      note: loweredNote(point, made),
    })),
  };
}

/** What others are measured from: the first point that cannot move, else the first. */
function referenceOf(points: readonly LevelPoint[]): LevelPoint {
  const found = points.find(({ kind }) => kind === 'fixed') ?? points[0];
  if (found === undefined) throw new RangeError('heights without a point');
  return found;
}

function whatOf({ kind, stoodOn }: LevelPoint, { job, words }: Made): string {
  const say = words.workOrder.levels;
  if (stoodOn === null) return say.finish;
  const on =
    stoodOn.kind === 'existing'
      ? thingNamed(job.site.existing, stoodOn.id, 'existing thing').label
      : say.stoodOn[stoodOn.kind];
  return kind === 'fixed' ? say.fixed(on) : say.existing(on);
}

function differenceOf(byIn: number, { show, words }: Made): string {
  const say = words.workOrder.levels;
  const size = show.size(Math.abs(byIn));
  if (size === show.size(0)) return say.level;
  return byIn > 0 ? say.above(size) : say.below(size);
}

/** Of a fixed point read on a layer that goes. */
function loweredNote({ id }: LevelPoint, { results, show, words }: Made): string | null {
  const { read, height } = thingNamed(results.levels.figures.points ?? {}, id, 'point');
  if (read === undefined) return null;
  return words.workOrder.levels.lowered(show.height(num(read)), show.size(num(read) - num(height)));
}
