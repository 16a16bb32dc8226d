import { ceilToStep } from '../../units/index.ts';

/** Bars across a joint: how thick and long, and how far apart at most. */
export type JointSteel = {
  /** For slabs up to so thick [in]. */
  readonly upToIn: number;
  readonly diameterIn: number;
  readonly lengthIn: number;
  readonly spacingIn: number;
  readonly source: string;
};

const DOWELS = 'Concrete Construction, Joint movement and spalling from lift truck traffic (seen)';
const THIN = 'common practice, no source; the published rows begin at 5 in';
const TIES = 'ACI 330R, tie bars: 1/2 in, 24 in long, 30 in apart (memory)';
const THICK_TIES = 'UFC 3-250-01FA, para 16-1: 30 in long, 30 in apart (seen), 5/8 in (memory)';

/** Smooth round bars. UFC 3-260-02, table 12-8, has 3/4 x 16 at 12 in for all pavements below 8 in (seen). */
const dowelRows: readonly JointSteel[] = [
  { upToIn: 4.5, diameterIn: 0.5, lengthIn: 12, spacingIn: 12, source: THIN },
  { upToIn: 5.5, diameterIn: 0.625, lengthIn: 12, spacingIn: 12, source: DOWELS },
  { upToIn: 6.5, diameterIn: 0.75, lengthIn: 14, spacingIn: 12, source: DOWELS },
  { upToIn: 7.5, diameterIn: 0.875, lengthIn: 14, spacingIn: 12, source: DOWELS },
  { upToIn: Infinity, diameterIn: 1, lengthIn: 14, spacingIn: 12, source: DOWELS },
];

/** Deformed bars. */
const tieRows: readonly JointSteel[] = [
  { upToIn: 6, diameterIn: 0.5, lengthIn: 24, spacingIn: 30, source: TIES },
  { upToIn: Infinity, diameterIn: 0.625, lengthIn: 30, spacingIn: 30, source: THICK_TIES },
];

/** How much wider than the bar the hole is. UFC 3-270-04: 1/8 in or less with epoxy (seen). */
export const HOLE_OVER_IN = 1 / 8;

/**
 * The bars across a joint of a slab.
 *
 * @param thicknessIn Of the slab [in], above 0.
 * @throws {RangeError} If the thickness is not above 0.
 */
export function jointSteel(how: 'dowelled' | 'tied', thicknessIn: number): JointSteel {
  if (!(thicknessIn > 0 && thicknessIn < Infinity))
    throw new RangeError(`thicknessIn must be above 0, got ${thicknessIn}`);
  const found = (how === 'tied' ? tieRows : dowelRows).find(({ upToIn }) => thicknessIn <= upToIn);
  if (found === undefined) throw new RangeError(`no bars for a slab of ${thicknessIn} in`);
  return found;
}

/**
 * Bars along an edge, evenly, half a space from its ends.
 *
 * @param made.lengthIn  Of the edge [in], 0 or more.
 * @param made.spacingIn At most [in], above 0.
 * @throws {RangeError} If a value is outside its range.
 *
 * n = ceil(length / spacing).
 */
export function barsAlong(made: { lengthIn: number; spacingIn: number }): number {
  const { lengthIn, spacingIn } = made;
  if (!(lengthIn >= 0 && lengthIn < Infinity))
    throw new RangeError(`lengthIn must be 0 or more, got ${lengthIn}`);
  return ceilToStep(lengthIn / spacingIn, 1);
}
