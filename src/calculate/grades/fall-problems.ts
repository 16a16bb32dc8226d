import { distanceIn } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatFeetInches, formatInches, formatNumber } from '../../units/index.ts';
import type { GradePoint } from './points.ts';
import type { SlabSurface } from './surfaces.ts';

/** Fixed points nearer to one another along the fall say little of it: common practice, no source [in]. */
const LEAST_RUN_IN = 36;
/** What a tape, a rod and a rounded percent may miss together: common practice, no source [in]. */
const MISS_IN = 1 / 2;
/** What falls less is level or climbs: finer than a rod is read [in]. */
const LEVEL_IN = 1 / 8;
/** As much as the rule leaves to a stated fall [rise over run]. */
const MISS_SLOPE = 1 / 96;

/**
 * A fall that is stated with its direction and that two fixed heights of its slab do not leave: no surface has
 * both. The two that miss it most are named; a walk is left out, whose fall is across.
 */
export function fallProblems({ slab, points }: SlabSurface): readonly CoreProblem[] {
  const { slope, directionDeg } = slab.fall;
  if (directionDeg === null || slab.use === 'walk') return [];
  const headingRad = ((90 - directionDeg) * Math.PI) / 180;
  const alongIn = ({ xIn, yIn }: GradePoint) => xIn * Math.cos(headingRad) + yIn * Math.sin(headingRad);
  const fixed = points.filter(
    ({ point, path }) => point.kind === 'fixed' && !path.startsWith('heights.drains.'),
  );
  const pairs = fixed.flatMap((one, index) =>
    fixed.slice(index + 1).map((other) => {
      const [high, low] = alongIn(one) <= alongIn(other) ? [one, other] : [other, one];
      const runIn = alongIn(low) - alongIn(high);
      const statedIn = slope * runIn;
      const dropIn = high.heightIn - low.heightIn;
      return { high, low, runIn, statedIn, dropIn, missIn: Math.abs(dropIn - statedIn) };
    }),
  );
  const [worst] = pairs
    .filter(
      ({ high, low, runIn, missIn }) =>
        runIn >= LEAST_RUN_IN &&
        // Side by side across the fall, what they tell of it is small against what they tell of the cross fall.
        runIn >= distanceIn(high, low) / 2 &&
        missIn > MISS_IN &&
        missIn > MISS_SLOPE * runIn,
    )
    .toSorted((one, other) => other.missIn - one.missIn);
  if (worst === undefined) return [];
  const { high, low, runIn, statedIn, dropIn, missIn } = worst;
  const path = `build.slabs.${slab.id}.fall`;
  const parts = {
    first: high.point.label,
    second: low.point.label,
    run: formatFeetInches(runIn, 8),
    stated: formatInches(statedIn, 8),
    by: formatInches(missIn, 8),
  };
  if (dropIn < LEVEL_IN)
    return [
      { code: 'fall-against-climb', path, parts: { ...parts, rise: formatInches(Math.max(0, -dropIn), 8) } },
    ];
  const left = `${formatNumber((100 * dropIn) / runIn, 1)} %`;
  return [
    { code: 'fall-against-heights', path, parts: { ...parts, drop: formatInches(dropIn, 8), slope: left } },
  ];
}
