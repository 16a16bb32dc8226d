import { polygonRing } from './build.ts';
import type { Ring } from './outline.ts';

/**
 * Two parallel sides and the distance between them; all edges formed.
 *
 * @param taped.baseIn   Corner 1, the origin, to corner 2, along x [in], above 0.
 * @param taped.topIn    Corner 4 to corner 3, parallel to the base [in], above 0.
 * @param taped.depthIn  From base to top, square to both [in], above 0.
 * @param taped.offsetIn How far along the base corner 4 stands [in]; below 0 it stands before corner 1.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * Area = depth (base + top) / 2, whatever the offset.
 */
export function trapezoidRing(taped: {
  readonly baseIn: number;
  readonly topIn: number;
  readonly depthIn: number;
  readonly offsetIn: number;
}): Ring {
  const { baseIn, topIn, depthIn, offsetIn } = taped;
  for (const [name, lengthIn] of Object.entries({ baseIn, topIn, depthIn })) {
    if (!(lengthIn > 0 && lengthIn < Infinity)) {
      throw new RangeError(`${name} must be a length above 0, got ${lengthIn}`);
    }
  }
  return polygonRing([
    { xIn: 0, yIn: 0 },
    { xIn: baseIn, yIn: 0 },
    { xIn: offsetIn + topIn, yIn: depthIn },
    { xIn: offsetIn, yIn: depthIn },
  ]);
}
