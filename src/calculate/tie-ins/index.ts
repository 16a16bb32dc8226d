import type { Point } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import type { Figure } from '../figure.ts';
import type { GarageFloor, Heights, Job, LevelPoint, PublicWalk } from '../job.ts';
import type { LevelsFigures } from '../levels/index.ts';
import type { OutlineResult, StringCorner } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { type DrainFigures, drainFigures } from './drain-figures.ts';
import { drainPoints, drainProblems } from './drain-points.ts';
import { type GarageFigures, garageFigures } from './garage-figures.ts';
import { type PublicWalkFigures, publicWalkFigures } from './public-walk-figures.ts';
import { bendProblems, garagePoints, garageProblems } from './surface-lines.ts';
import { type TiedPoint, type TiedPoints, walkPoints } from './walk-points.ts';
import { walkPlaceProblems, wayProblems } from './walk-problems.ts';

export type { DrainFigures } from './drain-figures.ts';
export type { GarageFigures } from './garage-figures.ts';
export { leastPipeSlope } from './least-pipe-slope.ts';
export type { PublicWalkFigures } from './public-walk-figures.ts';
export { transitionLengthIn } from './transition.ts';
export type { FallFigures, WalkEndFigures } from './walk-end-figures.ts';
export type { TiedPoint, TiedPoints } from './walk-points.ts';

export type TieInsFigures = {
  readonly 'public-walks'?: Readonly<Record<string, PublicWalkFigures>>;
  readonly drains?: Readonly<Record<string, DrainFigures>>;
  readonly garages?: Readonly<Record<string, GarageFigures>>;
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
  const garages = Object.values(input.tieIns.garages).map((garage) => madeGarage(garage, input));
  const heightOf = heightsAt(
    input,
    garages.flatMap(({ moved }) => moved),
  );
  const walks = Object.values(input.tieIns.publicWalks).map((walk) => madeWalk(walk, input, heightOf));
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
      ...(garages.length === 0
        ? {}
        : { garages: Object.fromEntries(garages.map(({ garage, figures }) => [garage.id, figures])) }),
    },
    data: {
      surface: {
        moved: [...walks.flatMap(({ surface }) => surface.moved), ...garages.flatMap(({ moved }) => moved)],
        lines: [
          ...walks.flatMap(({ surface }) => surface.lines),
          ...drains.map(({ points }) => points),
          ...input.tieIns.bends.map((ids, line) => ids.map((id) => bendPoint(id, line, input, heightOf))),
        ],
      },
      outlets: drains.flatMap(({ drain }) => (drain.pipe === null ? [] : [drain.at])),
    },
    problems: [
      ...walks.flatMap(({ problems }) => problems),
      ...drains.flatMap(({ drain }) => drainProblems(drain, slabs)),
      ...garages.flatMap(({ problems }) => problems),
      ...bendProblems(input.tieIns.bends, (id) => pointNamed(id, input)),
    ],
  };
}

function pointNamed(id: string, { heights }: TieInsInput): LevelPoint {
  return thingNamed(heights?.points ?? {}, id, 'point');
}

function slabNamed(id: string, input: TieInsInput) {
  return {
    label: thingNamed(input.slabs, id, 'slab').label,
    outline: thingNamed(input.plans.slabs, id, 'slab'),
    corners: thingNamed(input.corners, id, 'slab'),
  };
}

type HeightOf = (id: string) => Figure;

/** How high the new surface is at a point: at a garage floor so far below it. */
function heightsAt(input: TieInsInput, moved: readonly TiedPoint[]): HeightOf {
  return (id) =>
    moved.find(({ point }) => point.id === id)?.height ?? thingNamed(input.points ?? {}, id, 'point').height;
}

function bendPoint(id: string, line: number, input: TieInsInput, heightOf: HeightOf): TiedPoint {
  return { point: pointNamed(id, input), height: heightOf(id), path: `heights.bends-along.${line}` };
}

function madeGarage(garage: GarageFloor, input: TieInsInput) {
  const pointOf = (id: string) => pointNamed(id, input);
  const figures = garageFigures(garage, input.points ?? {});
  return {
    garage,
    figures,
    moved: garagePoints(garage, figures, pointOf),
    problems: garageProblems(garage, slabNamed(garage.slab, input), pointOf),
  };
}

function madeWalk(walk: PublicWalk, input: TieInsInput, heightOf: HeightOf): MadeWalk {
  const pointOf = (id: string) => pointNamed(id, input);
  const problems = walkPlaceProblems(walk, slabNamed(walk.slab, input), pointOf);
  if (problems.length > 0) return { figures: [], surface: { moved: [], lines: [] }, problems };
  const figures = publicWalkFigures(walk, (id) => ({ point: pointOf(id), height: heightOf(id) }));
  return {
    figures: [[walk.id, figures]],
    surface: walkPoints(walk, figures, pointOf),
    problems: wayProblems(walk, figures),
  };
}
