import type { Point } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import type { Heights, Job, PublicWalk } from '../job.ts';
import type { LevelsFigures } from '../levels/index.ts';
import type { OutlineResult, StringCorner } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { type DrainFigures, drainFigures } from './drain-figures.ts';
import { drainPoints, drainProblems } from './drain-points.ts';
import { type PublicWalkFigures, publicWalkFigures } from './public-walk-figures.ts';
import { type TiedPoints, walkPoints } from './walk-points.ts';
import { walkPlaceProblems, wayProblems } from './walk-problems.ts';

export type { DrainFigures } from './drain-figures.ts';
export { leastPipeSlope } from './least-pipe-slope.ts';
export type { PublicWalkFigures } from './public-walk-figures.ts';
export { transitionLengthIn } from './transition.ts';
export type { FallFigures, WalkEndFigures } from './walk-end-figures.ts';
export type { TiedPoint, TiedPoints } from './walk-points.ts';

export type TieInsFigures = {
  readonly 'public-walks'?: Readonly<Record<string, PublicWalkFigures>>;
  readonly drains?: Readonly<Record<string, DrainFigures>>;
};

export type TieInsResult = TopicResult<
  TieInsFigures,
  {
    /** What new surfaces run through because of what is chosen here. */
    readonly surface: TiedPoints;
    /** Where water is led off: the places of each drain with an outlet. */
    readonly outlets: readonly (readonly Point[])[];
  }
>;

type TieInsInput = {
  readonly tieIns: Job['tieIns'];
  readonly heights: Heights | null;
  readonly points: LevelsFigures['points'];
  readonly slabs: Job['build']['slabs'];
  readonly plans: OutlineResult['data']['plans'];
  /** On the plan. */
  readonly corners: Readonly<Record<string, readonly StringCorner[]>>;
};

type MadeWalk = {
  readonly figures: readonly (readonly [string, PublicWalkFigures])[];
  readonly surface: TiedPoints;
  readonly problems: readonly CoreProblem[];
};

/** Where new slabs meet what does not move, and what that makes of their surfaces. */
export function calcTieIns(input: TieInsInput): TieInsResult {
  const walks = Object.values(input.tieIns.publicWalks).map((walk) => madeWalk(walk, input));
  const drains = Object.values(input.tieIns.drains).map((drain) => {
    const figures = drainFigures(drain);
    return { drain, figures, points: drainPoints(drain, figures) };
  });
  const slabs = { outlines: input.plans.slabs, corners: input.corners };
  return {
    figures: {
      ...(walks.length === 0
        ? {}
        : { 'public-walks': Object.fromEntries(walks.flatMap(({ figures }) => figures)) }),
      ...(drains.length === 0
        ? {}
        : { drains: Object.fromEntries(drains.map(({ drain, figures }) => [drain.id, figures])) }),
    },
    data: {
      surface: {
        moved: walks.flatMap(({ surface }) => surface.moved),
        lines: [...walks.flatMap(({ surface }) => surface.lines), ...drains.map(({ points }) => points)],
      },
      outlets: drains.flatMap(({ drain }) => (drain.pipe === null ? [] : [drain.at])),
    },
    problems: [
      ...walks.flatMap(({ problems }) => problems),
      ...drains.flatMap(({ drain }) => drainProblems(drain, slabs)),
    ],
  };
}

function madeWalk(walk: PublicWalk, input: TieInsInput): MadeWalk {
  const pointOf = (id: string) => thingNamed(input.heights?.points ?? {}, id, 'point');
  const slab = {
    label: thingNamed(input.slabs, walk.slab, 'slab').label,
    outline: thingNamed(input.plans.slabs, walk.slab, 'slab'),
    corners: thingNamed(input.corners, walk.slab, 'slab'),
  };
  const problems = walkPlaceProblems(walk, slab, pointOf);
  if (problems.length > 0) return { figures: [], surface: { moved: [], lines: [] }, problems };
  const figures = publicWalkFigures(walk, (id) => ({
    point: pointOf(id),
    height: thingNamed(input.points ?? {}, id, 'point').height,
  }));
  return {
    figures: [[walk.id, figures]],
    surface: walkPoints(walk, figures, pointOf),
    problems: wayProblems(walk, figures),
  };
}
