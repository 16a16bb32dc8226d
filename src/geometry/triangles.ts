import { polygonRing } from './build.ts';
import { distanceIn, type Point, type Ring } from './outline.ts';
import { type ClosingRange, closesTriangle, closingRange, pointByDistances } from './two-distances.ts';

export type TiedCorner = {
  /** Numbers of two different corners before this one. */
  readonly from: readonly [number, number];
  readonly distancesIn: readonly [number, number];
  /** Seen from the first of the two towards the second. */
  readonly side: 'left' | 'right';
};

export type TrianglesResult =
  | { readonly ok: true; readonly ring: Ring }
  | ({
      readonly ok: false;
      readonly corner: number;
      /** The longer of its two distances; the range is for this one, the other kept, ends left out. */
      readonly which: 0 | 1;
    } & ClosingRange);

/**
 * A shape taped in triangles: every corner from the third on by its distances from two before it.
 *
 * @param taped.baseIn  Corner 1, the origin, to corner 2, along x [in], above 0.
 * @param taped.corners Corner 3 and on, one or more.
 * @returns The ring through the corners in the order of their numbers, all edges formed, whichever way
 *          round they go; or, as a value, the first corner whose distances do not meet.
 * @throws {RangeError} If a length is not above 0, or a corner is tied to one that does not come before it.
 */
export function trianglesRing(taped: {
  readonly baseIn: number;
  readonly corners: readonly TiedCorner[];
}): TrianglesResult {
  if (!(taped.baseIn > 0 && taped.baseIn < Infinity)) {
    throw new RangeError(`baseIn must be a length above 0, got ${taped.baseIn}`);
  }
  const points: Point[] = [
    { xIn: 0, yIn: 0 },
    { xIn: taped.baseIn, yIn: 0 },
  ];
  for (const tied of taped.corners) {
    const corner = points.length + 1;
    const [firstIn, secondIn] = tied.distancesIn;
    if (!(firstIn > 0 && firstIn < Infinity && secondIn > 0 && secondIn < Infinity)) {
      throw new RangeError(`distances of corner ${corner} must be above 0, got ${firstIn}, ${secondIn}`);
    }
    const from = earlierCorners(points, tied.from, corner);
    const betweenIn = distanceIn(...from);
    if (!closesTriangle(betweenIn, firstIn, secondIn)) {
      const which = firstIn >= secondIn ? 0 : 1;
      return { ok: false, corner, which, ...closingRange(betweenIn, which === 0 ? secondIn : firstIn) };
    }
    points.push(pointByDistances({ from, distancesIn: tied.distancesIn, side: tied.side }));
  }
  return { ok: true, ring: polygonRing(points) };
}

function earlierCorners(
  points: readonly Point[],
  [first, second]: readonly [number, number],
  corner: number,
): readonly [Point, Point] {
  const one = points[first - 1];
  const other = points[second - 1];
  if (one === undefined || other === undefined || first === second) {
    throw new RangeError(
      `corner ${corner} needs two different corners before it, got ${first} and ${second}`,
    );
  }
  return [one, other];
}
