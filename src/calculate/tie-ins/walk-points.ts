import { type Figure, num } from '../figure.ts';
import type { LevelPoint, PublicWalk } from '../job.ts';
import { WALK_ENDS, type WalkEnd } from '../tie-in-things.ts';
import type { PublicWalkFigures } from './public-walk-figures.ts';

/** What the new surface runs through because of what is chosen at a tie-in. */
export type TiedPoint = {
  readonly point: LevelPoint;
  readonly height: Figure;
  /** Where the job says it. */
  readonly path: string;
};

/** What a way makes of the surface: other heights of points that are there, and new points in lines. */
export type TiedPoints = {
  readonly moved: readonly TiedPoint[];
  /** Each line is an edge that the surface may bend at. */
  readonly lines: readonly (readonly TiedPoint[])[];
};

const NONE: TiedPoints = { moved: [], lines: [] };

/**
 * The surface of the slab by the way that is chosen. Met as it is, and while nothing is chosen, it runs to
 * the walk as it is; with a transition it bends there; else it runs to where the walk should be.
 */
export function walkPoints(
  walk: PublicWalk,
  figures: PublicWalkFigures,
  pointOf: (id: string) => LevelPoint,
): TiedPoints {
  if (walk.way === null || walk.way === 'match') return NONE;
  if (walk.way !== 'transition')
    return { moved: WALK_ENDS.map((end) => shouldPoint(walk, end, figures, pointOf)), lines: [] };
  return { moved: [], lines: [WALK_ENDS.flatMap((end) => startPoint(walk, end, figures, pointOf))] };
}

function shouldPoint(
  { id, ends }: PublicWalk,
  end: WalkEnd,
  figures: PublicWalkFigures,
  pointOf: (id: string) => LevelPoint,
): TiedPoint {
  return {
    point: pointOf(ends[end].now),
    height: figures.ends[end].should,
    path: `heights.public-walks.${id}.${end}.should`,
  };
}

/** Where the transition starts, on the line from the walk up; at the walk itself where it is as it should be. */
function startPoint(
  walk: PublicWalk,
  end: WalkEnd,
  figures: PublicWalkFigures,
  pointOf: (id: string) => LevelPoint,
): readonly TiedPoint[] {
  const { id, label, ends } = walk;
  const { transition, 'transition-start': height, run } = figures.ends[end];
  if (transition === undefined || height === undefined) return [];
  if (num(transition) === 0) return [shouldPoint(walk, end, figures, pointOf)];
  const [now, up] = [pointOf(ends[end].now), pointOf(ends[end].up)];
  const share = num(transition) / num(run);
  const point: LevelPoint = {
    id: `${id}-${end}-start`,
    label,
    at: {
      xIn: now.at.xIn + share * (up.at.xIn - now.at.xIn),
      yIn: now.at.yIn + share * (up.at.yIn - now.at.yIn),
    },
    heightIn: null,
    kind: 'finish',
    stoodOn: null,
  };
  return [{ point, height, path: `heights.public-walks.${id}.transition` }];
}
