import { ceilCount } from '../../units/index.ts';

/**
 * How much a form board is lower than the slab is thick.
 *
 * A 2x4 is 3 1/2 in high, so on a 4 in slab the base lies 1/2 in lower or the gap is packed.
 *
 * @param made.thicknessIn   Slab [in], above 0.
 * @param made.boardHeightIn True (dressed) height of the board [in], above 0; not the nominal size.
 * @returns [in], 0 where the board is as high as the slab or higher.
 * @throws {RangeError} If a value is not a length above 0.
 */
export function formShortByIn(made: { thicknessIn: number; boardHeightIn: number }): number {
  const { thicknessIn, boardHeightIn } = made;
  for (const [name, lengthIn] of Object.entries({ thicknessIn, boardHeightIn })) {
    if (!(lengthIn > 0 && lengthIn < Infinity)) {
      throw new RangeError(`${name} must be a length above 0, got ${lengthIn}`);
    }
  }
  return Math.max(0, thicknessIn - boardHeightIn);
}

/**
 * Stakes along one form: one at each end, at each meeting of boards or lap of strips, and between
 * those at the spacing. A stake shared by a straight and a curve is counted with both.
 *
 * @param made.sectionsIn Lengths between ends and meetings [in], above 0, each so many times.
 * @param made.spacingIn  Stake to stake [in], above 0.
 * @param made.isClosed   Whether the last section ends at the first stake.
 * @throws {RangeError} If a value is outside its range.
 *
 * stakes = sum of ceil(section / spacing), and 1 for an open form; none without a section
 */
export function stakeCount(made: {
  sectionsIn: readonly { readonly lengthIn: number; readonly count: number }[];
  spacingIn: number;
  isClosed: boolean;
}): number {
  const { sectionsIn, spacingIn, isClosed } = made;
  if (!(spacingIn > 0 && spacingIn < Infinity)) {
    throw new RangeError(`spacingIn must be a length above 0, got ${spacingIn}`);
  }
  if (sectionsIn.length === 0) return 0;
  return sectionsIn.reduce(
    (sum, { lengthIn, count }) => {
      if (!(lengthIn > 0 && lengthIn < Infinity)) {
        throw new RangeError(`a section must be a length above 0, got ${lengthIn}`);
      }
      return sum + count * ceilCount(lengthIn / spacingIn);
    },
    isClosed ? 0 : 1,
  );
}
