import { distanceIn, type Point } from './outline.ts';

/** Lengths between which, ends left out, a third side makes a triangle with two others. */
export type ClosingRange = { readonly leastIn: number; readonly mostIn: number };

export function closingRange(oneIn: number, otherIn: number): ClosingRange {
  return { leastIn: Math.abs(oneIn - otherIn), mostIn: oneIn + otherIn };
}

/** Whether three lengths make a triangle with any area. */
export function closesTriangle(oneIn: number, otherIn: number, thirdIn: number): boolean {
  const { leastIn, mostIn } = closingRange(oneIn, otherIn);
  return thirdIn > leastIn && thirdIn < mostIn;
}

/**
 * The point at two given distances from two known points.
 *
 * @param taped.from        Two different points.
 * @param taped.distancesIn From the first and from the second [in], above 0; together they may just reach.
 * @param taped.side        Of the line from the first to the second.
 * @throws {RangeError} If no point has both distances, or a number is not finite.
 *
 * along = (p² - q² + d²) / (2 d), off = sqrt(p² - along²), with p, q the distances and d between the points.
 * Source: T. Klemm, "Geometry: Triangulation for Measuring a Lot/Yard", a calculator forum, 2018 (seen);
 * it is Euclid, Elements II.12 and II.13.
 */
export function pointByDistances(taped: {
  readonly from: readonly [Point, Point];
  readonly distancesIn: readonly [number, number];
  readonly side: 'left' | 'right';
}): Point {
  const [first, second] = taped.from;
  const [firstIn, secondIn] = taped.distancesIn;
  const betweenIn = distanceIn(first, second);
  const alongIn = ((firstIn - secondIn) * (firstIn + secondIn) + betweenIn ** 2) / (2 * betweenIn);
  const offSqIn = (firstIn - alongIn) * (firstIn + alongIn);
  if (!(betweenIn > 0 && offSqIn >= -1e-9 * firstIn ** 2)) {
    throw new RangeError(`no point is ${firstIn} and ${secondIn} in from two points ${betweenIn} in apart`);
  }

  // Where the distances just reach, rounding can leave a tiny negative.
  const offIn = Math.sqrt(Math.max(0, offSqIn)) * (taped.side === 'left' ? 1 : -1);
  const unit = { xIn: (second.xIn - first.xIn) / betweenIn, yIn: (second.yIn - first.yIn) / betweenIn };
  return {
    xIn: first.xIn + alongIn * unit.xIn - offIn * unit.yIn,
    yIn: first.yIn + alongIn * unit.yIn + offIn * unit.xIn,
  };
}
