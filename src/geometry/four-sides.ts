import { polygonRing } from './build.ts';
import { distanceIn, type Point, type Ring } from './outline.ts';
import { type ClosingRange, closesTriangle, closingRange, pointByDistances } from './two-distances.ts';

/** Sides 1-2, 2-3, 3-4, 4-1 [in]. */
export type FourSidesIn = readonly [number, number, number, number];

export type FourSidesResult =
  | { readonly ok: true; readonly ring: Ring; readonly otherDiagonalIn: number }
  | ({
      readonly ok: false;
      /** The longer side of the triangle that cannot be; the range is for it, ends left out. */
      readonly edge: 1 | 2 | 3 | 4;
    } & ClosingRange);

/**
 * Four sides and one diagonal, as two triangles on that diagonal.
 *
 * @param taped.sidesIn    Each above 0.
 * @param taped.diagonalIn Corner 1 to corner 3 [in], above 0; it runs inside the shape, so a corner that
 *                         points inwards must be corner 1 or 3.
 * @returns Anticlockwise, corner 1 the origin, side 1 along x, all edges formed, with the other diagonal,
 *          corner 2 to 4; or, as a value, a side that cannot be right beside the other two of its triangle.
 * @throws {RangeError} If a length is not above 0.
 */
export function fourSidesRing(taped: {
  readonly sidesIn: FourSidesIn;
  readonly diagonalIn: number;
}): FourSidesResult {
  const { sidesIn, diagonalIn } = taped;
  for (const lengthIn of [...sidesIn, diagonalIn]) {
    if (!(lengthIn > 0 && lengthIn < Infinity)) {
      throw new RangeError(`sides and diagonal must be lengths above 0, got ${lengthIn}`);
    }
  }
  const [side1In, side2In, side3In, side4In] = sidesIn;
  if (!closesTriangle(diagonalIn, side1In, side2In)) {
    const [edge, keptIn] = side1In >= side2In ? ([1, side2In] as const) : ([2, side1In] as const);
    return { ok: false, edge, ...closingRange(diagonalIn, keptIn) };
  }
  if (!closesTriangle(diagonalIn, side3In, side4In)) {
    const [edge, keptIn] = side3In >= side4In ? ([3, side4In] as const) : ([4, side3In] as const);
    return { ok: false, edge, ...closingRange(diagonalIn, keptIn) };
  }
  const corners = cornersOf(taped);
  return { ok: true, ring: polygonRing(corners), otherDiagonalIn: distanceIn(corners[1], corners[3]) };
}

/** Corner 2 to corner 4 [in]; here a triangle may be flat. Throws as `pointByDistances` does. */
export function otherDiagonalIn(taped: {
  readonly sidesIn: FourSidesIn;
  readonly diagonalIn: number;
}): number {
  const corners = cornersOf(taped);
  return distanceIn(corners[1], corners[3]);
}

function cornersOf(taped: {
  readonly sidesIn: FourSidesIn;
  readonly diagonalIn: number;
}): [Point, Point, Point, Point] {
  const { diagonalIn } = taped;
  const [side1In, side2In, side3In, side4In] = taped.sidesIn;
  const one = { xIn: 0, yIn: 0 };
  const two = { xIn: side1In, yIn: 0 };
  const three = pointByDistances({ from: [one, two], distancesIn: [diagonalIn, side2In], side: 'left' });
  const four = pointByDistances({ from: [one, three], distancesIn: [side4In, side3In], side: 'left' });
  return [one, two, three, four];
}
