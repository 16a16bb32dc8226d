import { distanceToEdgeIn, type Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatFeetInches, formatNumber } from '../../units/index.ts';
import type { LevelPoint } from '../job.ts';
import type { StringCorner } from '../outline/index.ts';
import { isOnSlab } from './on-slab.ts';
import type { ReducedNotes, Sight } from './reduce.ts';

/** Of the arithmetic of a chain of doubles [in]: a miss on the limit is not over it. */
const NOISE_IN = 1e-9;

/**
 * Sights on known heights that miss them by more than is allowed, and stations that two sights put at
 * heights further apart than that. No height that follows from such notes can be built on.
 *
 * @param knownIn Heights of stations that are known [in].
 * @param allowedIn What a height may be missed by [in].
 */
export function noteProblems(
  { sights }: ReducedNotes,
  knownIn: Readonly<Record<string, number>>,
  allowedIn: number,
): readonly CoreProblem[] {
  return sights.flatMap((sight, index): CoreProblem[] => {
    const { on, note, readIn } = sight;
    const known = Object.hasOwn(knownIn, on) ? knownIn[on] : undefined;
    const path = `heights.notes.${note}.foresight`;
    if (known !== undefined) {
      const parts = missParts({ oneIn: readIn, otherIn: known, allowedIn });
      return parts === null ? [] : [{ code: 'levels-do-not-close', path, parts: { station: on, ...parts } }];
    }
    const first = sights.slice(0, index).find((other) => other.on === on);
    if (first === undefined) return [];
    const parts = missParts({ oneIn: sight.heightIn, otherIn: first.heightIn, allowedIn });
    return parts === null ? [] : [{ code: 'sights-disagree', path, parts: { station: on, ...parts } }];
  });
}

function missParts(heights: {
  readonly oneIn: Sight['readIn'];
  readonly otherIn: number;
  readonly allowedIn: number;
}): Record<'read' | 'other' | 'miss' | 'allowed', string> | null {
  const { oneIn, otherIn, allowedIn } = heights;
  const missIn = Math.abs(oneIn - otherIn);
  if (missIn <= allowedIn + NOISE_IN) return null;
  return {
    read: inFeet(oneIn),
    other: inFeet(otherIn),
    miss: `${inFeet(missIn)} (${formatNumber(missIn, 2)} in)`,
    allowed: `${inFeet(allowedIn)} (${formatNumber(allowedIn, 2)} in)`,
  };
}

const inFeet = (heightIn: number) => `${formatNumber(heightIn / 12, 3)} ft`;

/**
 * Points of the finished surface that lie on no slab, nor at a sharp corner of one that is rounded later:
 * there the string is, and the rod.
 */
export function finishProblems(
  points: Readonly<Record<string, LevelPoint>>,
  slabs: Readonly<Record<string, Outline>>,
  corners: readonly StringCorner[],
): readonly CoreProblem[] {
  return Object.values(points).flatMap(({ id, kind, at }): CoreProblem[] => {
    if (kind !== 'finish' || Object.values(slabs).some((outline) => isOnSlab(outline, corners, at)))
      return [];
    const [nearest] = Object.entries(slabs)
      .map(([slab, outline]) => ({ slab, byIn: distanceToEdgeIn(outline, at) }))
      .toSorted((one, other) => one.byIn - other.byIn);
    if (nearest === undefined) return [];
    const parts = { slab: nearest.slab, by: formatFeetInches(nearest.byIn, 8) };
    return [{ code: 'finish-outside-slabs', path: `heights.points.${id}.at`, parts }];
  });
}
