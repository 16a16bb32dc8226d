import { distanceIn, squareTriple } from '../../geometry/index.ts';
import type { StringCorner } from '../outline/index.ts';

/** A distance to tape before anything is nailed. */
export type CornerCheck = { readonly from: number; readonly to: number; readonly lengthIn: number };

/** A right angle to check with three whole lengths: along one side, along the next, and between the marks. */
export type SquareCheck = {
  readonly corner: number;
  readonly sidesIn: readonly [number, number];
  readonly betweenIn: number;
};

/** With more corners only those two apart are taped: the rest would be more tape than building. */
const MOST_FOR_ALL_PAIRS = 6;
const SQUARE_COSINE = 1e-6;

/** Diagonals: between all corners that are not neighbours, or every second one where there are many. */
export function cornerChecks(corners: readonly StringCorner[]): readonly CornerCheck[] {
  const count = corners.length;
  return corners.flatMap((from, index) =>
    corners.flatMap((to, other): CornerCheck[] => {
      const apart = other - index;
      const isNeighbour = apart === 1 || apart === count - 1;
      if (apart < 1 || isNeighbour || (count > MOST_FOR_ALL_PAIRS && apart !== 2)) return [];
      return [{ from: from.number, to: to.number, lengthIn: distanceIn(from.at, to.at) }];
    }),
  );
}

/** The first square corner, by the largest 3-4-5 that fits its two sides; null where none is square. */
export function squareCheck(corners: readonly StringCorner[], unitIn: number): SquareCheck | null {
  const count = corners.length;
  for (const [index, corner] of corners.entries()) {
    const before = corners[(index + count - 1) % count];
    const after = corners[(index + 1) % count];
    if (before === undefined || after === undefined || count < 3) return null;
    const backIn = distanceIn(before.at, corner.at);
    const onIn = distanceIn(corner.at, after.at);
    const cosine =
      ((before.at.xIn - corner.at.xIn) * (after.at.xIn - corner.at.xIn) +
        (before.at.yIn - corner.at.yIn) * (after.at.yIn - corner.at.yIn)) /
      (backIn * onIn);
    const triple = squareTriple([backIn, onIn], unitIn);
    if (Math.abs(cosine) > SQUARE_COSINE || triple === null) continue;
    return {
      corner: corner.number,
      sidesIn: [triple.firstIn, triple.secondIn],
      betweenIn: triple.diagonalIn,
    };
  }
  return null;
}
