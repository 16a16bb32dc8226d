import { COMMON_PRACTICE, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Heights, Job, LevelPoint } from '../job.ts';
import type { OutlineResult, StringCorner } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { finishProblems, noteProblems } from './check-levels.ts';
import { type NotesFigures, noteFigures } from './note-figures.ts';
import { type PointFigures, pointFigures } from './point-figures.ts';
import { type ReducedNotes, type Run, reduceNotes } from './reduce.ts';

export { isOnSlab } from './on-slab.ts';
export type { PointFigures } from './point-figures.ts';
export { reduceNotes } from './reduce.ts';

export type LevelsFigures = Partial<NotesFigures> & {
  /** Nothing where the job says nothing of heights. */
  readonly points?: Readonly<Record<string, PointFigures>>;
};

type LevelsData = {
  /** Above the datum [in], by the id of each point. */
  readonly heightOf: Readonly<Record<string, number>>;
  /** Of the level notes, in their order. */
  readonly runs: readonly Run[];
};

export type LevelsResult = TopicResult<LevelsFigures, LevelsData>;

type LevelsInput = {
  readonly heights: Heights | null;
  readonly existing: Job['site']['existing'];
  /** Level, as drawn. */
  readonly plans: OutlineResult['data']['plans'];
  /** Sharp corners of each slab on the plan. */
  readonly corners: Readonly<Record<string, readonly StringCorner[]>>;
};

/** The height of every point above the one datum of the job, as written or as the notes give it. */
export function calcLevels({ heights, existing, plans, corners }: LevelsInput): LevelsResult {
  if (heights === null) return { figures: {}, data: { heightOf: {}, runs: [] }, problems: [] };
  const known = knownHeights(heights);
  const made = heights.closingErrorIn === null ? null : madeOfNotes(heights, known, heights.closingErrorIn);
  const sights = made === null ? [] : sightsByStation(made);
  const points = Object.fromEntries(
    Object.values(heights.points).map((point) => [
      point.id,
      pointFigures(point, heightFigure(point, known, sights), existing),
    ]),
  );
  return {
    figures: { ...made?.figures, points },
    data: {
      heightOf: Object.fromEntries(Object.entries(points).map(([id, { height }]) => [id, num(height)])),
      runs: made?.reduced.runs ?? [],
    },
    problems: [
      ...(made?.problems ?? []),
      ...finishProblems(heights.points, plans.slabs, Object.values(corners).flat()),
    ],
  };
}

/** Heights that are written, of points and of the stations of notes. */
function knownHeights({ points, notes }: Heights): Readonly<Record<string, FigureInput>> {
  return Object.fromEntries([
    ...notes.flatMap(({ on, kind, valueIn }, index) =>
      kind === 'height' ? [[on, given(`heights.notes.${index}.height`, valueIn, 'in')] as const] : [],
    ),
    ...Object.values(points).flatMap(({ id, heightIn }) =>
      heightIn === null ? [] : [[id, given(`heights.points.${id}.height`, heightIn, 'in')] as const],
    ),
  ]);
}

function madeOfNotes(
  { notes }: Heights,
  known: Readonly<Record<string, FigureInput>>,
  closingErrorIn: number,
) {
  const knownIn = Object.fromEntries(Object.entries(known).map(([on, input]) => [on, num(input)]));
  const reduced = reduceNotes(notes, knownIn);
  const { figures, sights } = noteFigures({ notes, reduced, known, closingErrorIn });
  return { reduced, figures, sights, problems: noteProblems(reduced, knownIn, closingErrorIn) };
}

type StationSight = { readonly on: string; readonly height: Figure };

function sightsByStation(made: {
  readonly reduced: ReducedNotes;
  readonly sights: readonly Figure[];
}): readonly StationSight[] {
  return made.reduced.sights.flatMap(({ on }, index) => {
    const height = made.sights[index];
    return height === undefined ? [] : [{ on, height }];
  });
}

/**
 * As written; else the mean of its sights, which agree within what notes may miss by.
 *
 * @throws {RangeError} If there is neither, which is refused where files are read.
 */
function heightFigure(
  { id }: LevelPoint,
  known: Readonly<Record<string, FigureInput>>,
  sights: readonly StationSight[],
): Figure {
  const shown = { unit: 'in', decimals: 3 } as const;
  if (Object.hasOwn(known, id)) {
    const heightIn = thingNamed(known, id, 'known height');
    return figure({ ...shown, value: num(heightIn), formula: 'heightIn', inputs: { heightIn } });
  }
  const own = sights.filter(({ on }) => on === id).map(({ height }) => height);
  if (own.length === 0) throw new RangeError(`the point ${id} has no height`);
  const [only] = own;
  const inputs: Readonly<Record<string, Figure>> =
    own.length === 1 && only !== undefined
      ? { sightIn: only }
      : Object.fromEntries(own.map((height, index) => [`sight_${index + 1}In`, height]));
  const sum = Object.keys(inputs).join(' + ');
  return figure({
    ...shown,
    value: own.reduce((sumIn, height) => sumIn + num(height), 0) / own.length,
    formula: own.length === 1 ? sum : `(${sum}) / ${own.length}`,
    inputs,
    ...(own.length === 1 ? {} : { source: COMMON_PRACTICE }),
  });
}
