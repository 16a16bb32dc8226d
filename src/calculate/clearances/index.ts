import { containsPoint, distanceToEdgeIn } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatFeetInches } from '../../units/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import { type GradedSlab, heightFigure } from '../grades/index.ts';
import type { Job, WallPart } from '../job.ts';
import { thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { leastClearance } from './limits.ts';

export { leastClearance } from './limits.ts';

export type ClearanceFigures = {
  /** Height of what is beside it above the datum [in]; below it where negative. */
  readonly surface: Figure;
  /** How far the part is above that, and how far below it [in]; one of them is 0. */
  readonly clearance: Figure;
  readonly buried: Figure;
  /** Only where a least clearance is known [in]. */
  readonly least?: Figure;
  readonly 'short-by'?: Figure;
};

export type ClearancesResult = TopicResult<
  Readonly<Record<string, ClearanceFigures>>,
  Readonly<Record<never, never>>
>;

/** A part of a wall that far from a slab is still beside it: common practice, no source [in]. */
const BESIDE_IN = 12;

/**
 * How far parts of walls stay above the new surface or the earth beside them.
 *
 * @param input.graded The slabs whose surface is known from the heights of the job.
 */
export function calcClearances(input: {
  readonly walls: Job['walls'];
  readonly slabs: Job['build']['slabs'];
  readonly graded: Readonly<Record<string, GradedSlab>>;
}): ClearancesResult {
  const made = Object.values(input.walls).map((part) => {
    const found = surfaceBeside(part, input);
    return 'problem' in found
      ? { figures: [], problems: [found.problem] }
      : { figures: [[part.id, clearanceFigures(part, found.surface)] as const], problems: [] };
  });
  return {
    figures: Object.fromEntries(made.flatMap(({ figures }) => figures)),
    data: {},
    problems: made.flatMap(({ problems }) => problems),
  };
}

function surfaceBeside(
  { id, at, beside }: WallPart,
  { slabs, graded }: Parameters<typeof calcClearances>[0],
): { readonly surface: Figure } | { readonly problem: CoreProblem } {
  const path = `heights.walls.${id}`;
  if (beside.kind === 'earth') {
    return {
      surface: figure({
        value: beside.heightIn,
        unit: 'in',
        decimals: 2,
        formula: 'groundIn',
        inputs: { groundIn: given(`${path}.ground`, beside.heightIn, 'in') },
      }),
    };
  }
  const { label } = thingNamed(slabs, beside.id, 'slab');
  const slab = graded[beside.id];
  if (slab === undefined)
    return {
      problem: { code: 'wall-without-surface', path: `${path}.beside`, parts: { slab: label } },
    };
  const offIn = containsPoint(slab.outline, at) ? 0 : distanceToEdgeIn(slab.outline, at);
  if (offIn > BESIDE_IN) {
    const parts = { slab: label, by: formatFeetInches(offIn, 8) };
    return { problem: { code: 'wall-off-slab', path: `${path}.at`, parts } };
  }
  return { surface: heightFigure(slab.surface, at, slab.points) };
}

function clearanceFigures(
  { id, kind, heightIn, beside, leastIn }: WallPart,
  surface: Figure,
): ClearanceFigures {
  const path = `heights.walls.${id}`;
  const bottom = given(`${path}.height`, heightIn, 'in');
  const inches = (value: number, formula: string, inputs: Figure['inputs']) =>
    figure({ value, unit: 'in', decimals: 2, formula, inputs });
  const between = { bottomIn: bottom, surfaceIn: surface };
  const clearance = inches(Math.max(0, heightIn - num(surface)), 'max(0, bottomIn - surfaceIn)', between);
  const buried = inches(Math.max(0, num(surface) - heightIn), 'max(0, surfaceIn - bottomIn)', between);
  const limit = leastIn === null ? leastClearance(kind, beside.kind) : given(`${path}.least`, leastIn, 'in');
  if (limit === null) return { surface, clearance, buried };
  const least = inches(num(limit), 'leastIn', { leastIn: limit });
  return {
    surface,
    clearance,
    buried,
    least,
    'short-by': inches(Math.max(0, num(least) - num(clearance)), 'max(0, leastIn - clearanceIn)', {
      leastIn: least,
      clearanceIn: clearance,
    }),
  };
}
