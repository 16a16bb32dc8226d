import { distanceIn, distanceToEdgeIn, type Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatFeetInches, formatInches, formatNumber } from '../../units/index.ts';
import { num } from '../figure.ts';
import type { LevelPoint, PublicWalk } from '../job.ts';
import { isOnSlab } from '../levels/index.ts';
import type { StringCorner } from '../outline/index.ts';
import { WALK_ENDS } from '../tie-in-things.ts';
import type { PublicWalkFigures } from './public-walk-figures.ts';
import type { WalkEndFigures } from './walk-end-figures.ts';

/** Nearer than that two points are at one place [in]. */
const ONE_PLACE_IN = 1;

type Slab = {
  readonly label: string;
  readonly outline: Outline;
  readonly corners: readonly StringCorner[];
};

/** Points of a walk between which nothing runs, or that its slab does not meet: nothing follows from those. */
export function walkPlaceProblems(
  { id, ends }: PublicWalk,
  slab: Slab,
  pointOf: (id: string) => LevelPoint,
): readonly CoreProblem[] {
  const path = `heights.public-walks.${id}`;
  const pairs = [
    { at: `${path}.right.now`, first: ends.left.now, second: ends.right.now },
    ...WALK_ENDS.map((end) => ({ at: `${path}.${end}.up`, first: ends[end].now, second: ends[end].up })),
  ];
  const atOnePlace = pairs.flatMap(({ at, ...ids }): CoreProblem[] => {
    const [first, second] = [pointOf(ids.first), pointOf(ids.second)];
    if (distanceIn(first.at, second.at) >= ONE_PLACE_IN) return [];
    const parts = { first: first.label, second: second.label };
    return [{ code: 'ends-at-one-place', path: at, parts }];
  });
  const off = WALK_ENDS.flatMap((end): CoreProblem[] => {
    const { at } = pointOf(ends[end].now);
    if (isOnSlab(slab.outline, slab.corners, at)) return [];
    const parts = { slab: slab.label, by: formatFeetInches(distanceToEdgeIn(slab.outline, at), 8) };
    return [{ code: 'tie-in-off-slab', path: `${path}.${end}.now`, parts }];
  });
  return [...atOnePlace, ...off];
}

/** Why the way that is chosen cannot be gone. */
export function wayProblems(walk: PublicWalk, { ends }: PublicWalkFigures): readonly CoreProblem[] {
  const path = `heights.public-walks.${walk.id}`;
  const each = WALK_ENDS.map((end) => ends[end]);
  if (walk.way === 'transition') return each.flatMap((end) => transitionProblem(walk, end)).slice(0, 1);
  if (walk.way === 'hold-back') {
    const short = each.find((end) => end['panel-start'] === undefined);
    if (short === undefined) return [];
    return [tooLong(`${path}.last-panel`, walk.lastPanelIn, short)];
  }
  if (walk.way !== 'grind') return [];
  const settledIn = each.map(({ now, should }) => num(should) - num(now));
  if (settledIn.some((byIn) => byIn < 0)) return [];
  const parts = { by: formatInches(Math.max(...settledIn), 8) };
  return [{ code: 'grind-what-is-low', path: `${path}.way`, parts }];
}

function transitionProblem(walk: PublicWalk, end: WalkEndFigures): readonly CoreProblem[] {
  if (end.transition !== undefined) return [];
  const path = `heights.public-walks.${walk.id}.transition`;
  const settledIn = num(end.should) - num(end.now);
  const own = end['as-it-should-be'];
  const ownSlope = 'falls' in own ? num(own.falls) : -num(own.rises);
  const gained = settledIn > 0 ? walk.transitionSlope - ownSlope : walk.transitionSlope + ownSlope;
  if (gained > 0) return [tooLong(path, Math.abs(settledIn) / gained, end)];
  const percent = (slope: number) => `${formatNumber(100 * slope, 1)} %`;
  const parts = { slope: percent(walk.transitionSlope), own: percent(Math.abs(ownSlope)) };
  return [{ code: 'no-way-down', path, parts }];
}

function tooLong(path: string, lengthIn: number, { run }: WalkEndFigures): CoreProblem {
  const parts = { length: formatFeetInches(lengthIn, 8), run: formatFeetInches(num(run), 8) };
  return { code: 'way-too-long', path, parts };
}
