import { clipLineToOutline, distanceIn, type Outline } from '../../geometry/index.ts';
import type { Form, FormedRun } from './runs.ts';

/** A board may stand past its own concrete by this much before it is held to be in the way [in]. */
const BESIDE_IN = 0.01;

/** Where the last, uncut board of a straight runs on. */
export type RunsPast = 'before' | 'after';

/**
 * How far a board may run past an end of a straight [in]: 0 but at an outside corner to another
 * straight, and there until it would meet the slab itself again. Common practice, no source.
 *
 * @param mostIn What the company lets stick out; null where it sets no limit.
 */
export function roomPastIn(form: Form, end: RunsPast, outline: Outline, mostIn: number | null): number {
  if (form.kind !== 'straight' || form[end] !== 'outside') return 0;
  const lengthIn = distanceIn(form.from, form.to);
  const sign = end === 'after' ? 1 : -1;
  const along = {
    xIn: (sign * (form.to.xIn - form.from.xIn)) / lengthIn,
    yIn: (sign * (form.to.yIn - form.from.yIn)) / lengthIn,
  };
  const corner = end === 'after' ? form.to : form.from;
  // Within the concrete, so that an edge further on along the same line is met too.
  const fromXIn = corner.xIn - sign * along.yIn * BESIDE_IN;
  const fromYIn = corner.yIn + sign * along.xIn * BESIDE_IN;
  const line = { fromXIn, fromYIn, toXIn: fromXIn + along.xIn, toYIn: fromYIn + along.yIn };
  const metIn = clipLineToOutline(line, outline)
    .map(({ fromIn }) => fromIn)
    .filter((fromIn) => fromIn > 2 * BESIDE_IN);
  return Math.min(mostIn ?? Infinity, ...metIn);
}

/**
 * Which straights of a run are closed by a board that runs past a corner, as many as can be: past a
 * corner only one of its two boards runs on, the other butts against its face.
 *
 * @param wants Of each form, whether its last board may run past its one and its other end.
 * @returns Of each form, the end it runs past, or null.
 *
 * Along an open run each takes the first corner that is free, which no other way betters. A closed
 * run is cut open at its first form, once with the corner before it and once without.
 */
export function runsPast(
  run: FormedRun,
  wants: readonly { readonly before: boolean; readonly after: boolean }[],
): readonly (RunsPast | null)[] {
  if (!run.isClosed) return alongRun(wants, false);
  const [without, withFirst] = [alongRun(wants, false), wants[0]?.before ? alongRun(wants, true) : []];
  return countOf(withFirst) > countOf(without) ? withFirst : without;
}

function alongRun(
  wants: readonly { readonly before: boolean; readonly after: boolean }[],
  firstRunsBack: boolean,
): readonly (RunsPast | null)[] {
  let isCornerFree = firstRunsBack;
  return wants.map(({ before, after }, index) => {
    const isLast = index === wants.length - 1;
    if (before && isCornerFree) {
      isCornerFree = true;
      return 'before';
    }
    // The corner behind the last form is the one before the first.
    if (after && !(isLast && firstRunsBack)) {
      isCornerFree = false;
      return 'after';
    }
    isCornerFree = true;
    return null;
  });
}

function countOf(ends: readonly (RunsPast | null)[]): number {
  return ends.filter((end) => end !== null).length;
}
