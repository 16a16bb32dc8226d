import type { CoreProblem } from '../../problems/index.ts';
import type { Heights, Job, PublicWalk } from '../job.ts';
import type { LevelsFigures } from '../levels/index.ts';
import type { OutlineResult, StringCorner } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { type PublicWalkFigures, publicWalkFigures } from './public-walk-figures.ts';
import { type TiedPoints, walkPoints } from './walk-points.ts';
import { walkPlaceProblems, wayProblems } from './walk-problems.ts';

export type { PublicWalkFigures } from './public-walk-figures.ts';
export { transitionLengthIn } from './transition.ts';
export type { FallFigures, WalkEndFigures } from './walk-end-figures.ts';
export type { TiedPoint, TiedPoints } from './walk-points.ts';

export type TieInsFigures = {
  readonly 'public-walks'?: Readonly<Record<string, PublicWalkFigures>>;
};

export type TieInsResult = TopicResult<
  TieInsFigures,
  {
    /** What new surfaces run through because of what is chosen here. */
    readonly surface: TiedPoints;
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
  return {
    figures:
      walks.length === 0
        ? {}
        : { 'public-walks': Object.fromEntries(walks.flatMap(({ figures }) => figures)) },
    data: {
      surface: {
        moved: walks.flatMap(({ surface }) => surface.moved),
        lines: walks.flatMap(({ surface }) => surface.lines),
      },
    },
    problems: walks.flatMap(({ problems }) => problems),
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
