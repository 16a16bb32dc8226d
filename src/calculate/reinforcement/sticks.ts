/** Far below what is cut, far above the noise of adding up a stick. */
const NOISE_IN = 1e-6;

/**
 * Sticks of stock that all pieces can be cut from: the longest piece first, each into the first
 * stick that still has room (first fit decreasing). No saw width is counted: bars are sheared.
 *
 * @param piecesIn Lengths [in], each above 0 and not above the stock.
 * @param stockIn  [in], above 0.
 * @returns Of each stick, the pieces cut from it.
 * @throws {RangeError} If a piece does not fit into the stock.
 *
 * Source: D. S. Johnson, "Near-optimal bin packing algorithms", MIT, 1973 (memory): never more than
 * 11/9 of the fewest, and some.
 */
export function cutFromSticks(piecesIn: readonly number[], stockIn: number): number[][] {
  const sticks: { readonly cutsIn: number[]; leftIn: number }[] = [];
  for (const pieceIn of piecesIn.toSorted((a, b) => b - a)) {
    if (!(pieceIn > 0 && pieceIn <= stockIn + NOISE_IN)) {
      throw new RangeError(`a piece must be above 0 and at most the stock of ${stockIn}, got ${pieceIn}`);
    }
    const stick = sticks.find(({ leftIn }) => pieceIn <= leftIn + NOISE_IN);
    if (stick === undefined) sticks.push({ cutsIn: [pieceIn], leftIn: stockIn - pieceIn });
    else {
      stick.cutsIn.push(pieceIn);
      stick.leftIn -= pieceIn;
    }
  }
  return sticks.map(({ cutsIn }) => cutsIn);
}
