import { ceilToStep, floorToStep } from '../../units/index.ts';

/** What a tape and a saw are read to [in]. */
export const TAPE_STEP_IN = 1 / 16;

/** A piece as it is cut: not shorter than what it has to cover. */
export const upToTapeIn = (lengthIn: number) => ceilToStep(lengthIn, TAPE_STEP_IN);
/** A board as it is counted on: not longer than it is. */
export const downToTapeIn = (lengthIn: number) => floorToStep(lengthIn, TAPE_STEP_IN);

/** One board that is cut: the pieces out of it, by their place in the list, and what is left of it. */
export type CutBoard = { readonly pieces: readonly number[]; readonly leftIn: number };

/**
 * Boards that all pieces can be cut from, the saw cut lost between two pieces: the longest piece
 * first, each into the first board that still has room (first fit decreasing).
 *
 * @param made.piecesIn Lengths [in] to 1/16, each above 0 and not above the stock.
 * @param made.stockIn  [in] to 1/16, above 0.
 * @param made.kerfIn   Width of a saw cut [in] to 1/16, 0 or more.
 * @throws {RangeError} If a length is outside its range.
 *
 * Lengths in sixteenths are exact doubles, so that nothing is let off.
 * Source: D. S. Johnson, "Near-optimal bin packing algorithms", MIT, 1973 (memory): never more than
 * 11/9 of the fewest, and some.
 */
export function cutFromStock(made: {
  piecesIn: readonly number[];
  stockIn: number;
  kerfIn: number;
}): readonly CutBoard[] {
  const { piecesIn, stockIn, kerfIn } = made;
  if (!(kerfIn >= 0 && kerfIn < Infinity)) throw new RangeError(`kerfIn must be 0 or more, got ${kerfIn}`);
  const longestFirst = [...piecesIn.entries()].toSorted(([, oneIn], [, otherIn]) => otherIn - oneIn);
  const boards: { readonly pieces: number[]; leftIn: number }[] = [];
  for (const [piece, pieceIn] of longestFirst) {
    if (!(pieceIn > 0 && pieceIn <= stockIn)) {
      throw new RangeError(`a piece must be above 0 and at most the stock of ${stockIn}, got ${pieceIn}`);
    }
    const board = boards.find(({ leftIn }) => pieceIn + kerfIn <= leftIn);
    if (board === undefined) boards.push({ pieces: [piece], leftIn: stockIn - pieceIn });
    else {
      board.pieces.push(piece);
      board.leftIn -= pieceIn + kerfIn;
    }
  }
  return boards;
}

/** Saw cuts of a plan: one behind each piece, but none where the board ends with its last piece. */
export function cutCount(boards: readonly CutBoard[]): number {
  return boards.reduce((sum, { pieces, leftIn }) => sum + pieces.length - (leftIn === 0 ? 1 : 0), 0);
}

/**
 * No plan needs fewer boards: every piece but the last of a board loses a saw cut with it.
 *
 * @returns ceil((sum of pieces + count kerf) / (stock + kerf)), 0 for no piece.
 * @throws {RangeError} If the stock is not above 0.
 */
export function leastBoards(made: { sumIn: number; count: number; stockIn: number; kerfIn: number }): number {
  const { sumIn, count, stockIn, kerfIn } = made;
  if (!(stockIn > 0 && stockIn < Infinity)) {
    throw new RangeError(`stockIn must be a length above 0, got ${stockIn}`);
  }
  return ceilToStep((sumIn + count * kerfIn) / (stockIn + kerfIn), 1);
}
