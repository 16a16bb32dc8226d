import { distanceIn, type Edge, edgesOf, type HeightPoint, type Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import { type Figure, num } from '../figure.ts';
import type { LevelPoint } from '../job.ts';

/** A point with the figure of its height, as a surface runs through it. */
export type GradePoint = HeightPoint & {
  readonly point: LevelPoint;
  readonly height: Figure;
  /** Where the job says how high it is. */
  readonly path: string;
};

/** A point that near to an edge is on it, and two that near to one another are at one place [in]. */
export const NEAR_IN = 1;

/** Heights that near to one another are one height: finer than a rod is read [in]. */
const SAME_HEIGHT_IN = 1 / 8;

export function gradePoint(
  point: LevelPoint,
  height: Figure,
  path = `heights.points.${point.id}`,
): GradePoint {
  return { xIn: point.at.xIn, yIn: point.at.yIn, heightIn: num(height), point, height, path };
}

/** Each place once; two heights at one place are a problem. */
export function distinctPoints(points: readonly GradePoint[]): {
  readonly points: readonly GradePoint[];
  readonly problems: readonly CoreProblem[];
} {
  const kept: GradePoint[] = [];
  const problems: CoreProblem[] = [];
  for (const one of points) {
    const twin = kept.find((other) => distanceIn(other, one) <= NEAR_IN);
    if (twin === undefined) {
      kept.push(one);
      continue;
    }
    const byIn = Math.abs(one.heightIn - twin.heightIn);
    if (byIn <= SAME_HEIGHT_IN) continue;
    const parts = { first: twin.point.label, second: one.point.label, by: formatInches(byIn, 8) };
    problems.push({ code: 'heights-disagree', path: one.path, parts });
  }
  return { points: kept, problems };
}

/**
 * The lines that a surface does not bend across: along each straight edge from point to point, so that it
 * runs evenly there.
 */
export function breaklinesOf(
  outline: Outline,
  points: readonly GradePoint[],
): readonly (readonly [number, number])[] {
  return outline.rings.flatMap((ring) =>
    edgesOf(ring)
      .filter(({ from }) => from.bulge === 0)
      .flatMap((edge) => {
        const along = pointsAlong(edge, points);
        return along.slice(1).map((index, step) => [along[step] ?? index, index] as const);
      }),
  );
}

/** Lines from place to place as pairs of indexes; a line with a place that is no point is left out there. */
export function linesAmong(
  lines: readonly (readonly HeightPoint[])[],
  points: readonly GradePoint[],
): readonly (readonly [number, number])[] {
  const indexOf = (place: HeightPoint) => points.findIndex((point) => distanceIn(point, place) <= NEAR_IN);
  return lines.flatMap((line) =>
    line.slice(1).flatMap((to, step) => {
      const from = line[step] ?? to;
      const pair = [indexOf(from), indexOf(to)] as const;
      return pair.includes(-1) || pair[0] === pair[1] ? [] : [pair];
    }),
  );
}

function pointsAlong({ from, to }: Edge, points: readonly GradePoint[]): readonly number[] {
  const lengthIn = distanceIn(from, to);
  const unit = { x: (to.xIn - from.xIn) / lengthIn, y: (to.yIn - from.yIn) / lengthIn };
  return points
    .map(({ xIn, yIn }, index) => {
      const dx = xIn - from.xIn;
      const dy = yIn - from.yIn;
      return { index, alongIn: dx * unit.x + dy * unit.y, offIn: Math.abs(dy * unit.x - dx * unit.y) };
    })
    .filter(({ alongIn, offIn }) => offIn <= NEAR_IN && alongIn >= -NEAR_IN && alongIn <= lengthIn + NEAR_IN)
    .toSorted((one, other) => one.alongIn - other.alongIn)
    .map(({ index }) => index);
}
