import { distanceToEdgeIn, type Outline, type Point, segmentsMeet } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatFeetInches } from '../../units/index.ts';
import type { GarageFloor, LevelPoint } from '../job.ts';
import { isOnSlab } from '../levels/index.ts';
import type { StringCorner } from '../outline/index.ts';
import type { GarageFigures } from './garage-figures.ts';
import type { TiedPoint } from './walk-points.ts';

type PointOf = (id: string) => LevelPoint;

/** The surface where it comes up to a garage floor: so far below it. */
export function garagePoints(
  { id, points }: GarageFloor,
  { tops }: GarageFigures,
  pointOf: PointOf,
): readonly TiedPoint[] {
  const path = `heights.garages.${id}.lip`;
  return points.flatMap((point) => {
    const height = tops[point];
    return height === undefined ? [] : [{ point: pointOf(point), height, path }];
  });
}

/** Points of a floor that its slab does not meet. */
export function garageProblems(
  { id, points }: GarageFloor,
  slab: { readonly label: string; readonly outline: Outline; readonly corners: readonly StringCorner[] },
  pointOf: PointOf,
): readonly CoreProblem[] {
  return points.flatMap((point, index): CoreProblem[] => {
    const { at } = pointOf(point);
    if (isOnSlab(slab.outline, slab.corners, at)) return [];
    const parts = { slab: slab.label, by: formatFeetInches(distanceToEdgeIn(slab.outline, at), 8) };
    return [{ code: 'tie-in-off-slab', path: `heights.garages.${id}.points.${index}`, parts }];
  });
}

type Stretch = { readonly from: Point; readonly to: Point; readonly line: number };

/** Two lines that cross: a surface cannot bend along both where no point says how high they meet. */
export function bendProblems(
  bends: readonly (readonly string[])[],
  pointOf: PointOf,
): readonly CoreProblem[] {
  const stretches = bends.flatMap((ids, line) =>
    ids.slice(1).map((to, step): Stretch => {
      return { from: pointOf(ids[step] ?? to).at, to: pointOf(to).at, line };
    }),
  );
  return stretches.flatMap((one, index): CoreProblem[] => {
    const other = stretches.slice(0, index).find((before) => cross(before, one));
    if (other === undefined) return [];
    const parts = { first: String(other.line + 1), second: String(one.line + 1) };
    return [{ code: 'bends-cross', path: `heights.bends-along.${one.line}`, parts }];
  });
}

/** Whether they meet elsewhere than at an end that both have. */
function cross(one: Stretch, other: Stretch): boolean {
  const ends = [one.from, one.to];
  const share = [other.from, other.to].some((end) =>
    ends.some(({ xIn, yIn }) => xIn === end.xIn && yIn === end.yIn),
  );
  return !share && segmentsMeet(one, other);
}
