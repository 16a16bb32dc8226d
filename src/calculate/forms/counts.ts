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
 * Boards laid end to end along the forms.
 *
 * @param made.lengthFt      Formed edge [ft], 0 or more.
 * @param made.boardLengthIn [in], above 0.
 * @throws {RangeError} If a value is outside its range.
 *
 * boards = ceil(12 length / board length)
 */
export function boardCount(made: { lengthFt: number; boardLengthIn: number }): number {
  const { lengthFt, boardLengthIn } = made;
  return ceilCount(stepsAlong(lengthFt, boardLengthIn));
}

/**
 * Stakes along the forms, one at each spacing and one at the end.
 *
 * @param made.lengthFt       Formed edge [ft], 0 or more; nothing formed takes no stake.
 * @param made.stakeSpacingIn [in], above 0.
 * @throws {RangeError} If a value is outside its range.
 *
 * stakes = ceil(12 length / spacing) + 1
 */
export function stakeCount(made: { lengthFt: number; stakeSpacingIn: number }): number {
  const { lengthFt, stakeSpacingIn } = made;
  const spaces = ceilCount(stepsAlong(lengthFt, stakeSpacingIn));
  return spaces === 0 ? 0 : spaces + 1;
}

function stepsAlong(lengthFt: number, stepIn: number): number {
  if (!(lengthFt >= 0 && lengthFt < Infinity)) {
    throw new RangeError(`lengthFt must be 0 or more, got ${lengthFt}`);
  }
  if (!(stepIn > 0 && stepIn < Infinity)) {
    throw new RangeError(`boards and stake spacing must be a length above 0, got ${stepIn}`);
  }
  return (lengthFt * 12) / stepIn;
}
