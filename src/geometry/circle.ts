import { stepFrom } from './heading.ts';
import type { Ring } from './outline.ts';

/**
 * A circle as two half circles, its centre at half the diameter along and across; edges formed.
 *
 * @param taped.diameterIn Diameter [in], above 0.
 * @throws {RangeError} If the diameter is not a length above 0.
 */
export function circleRing(taped: { readonly diameterIn: number }): Ring {
  const { diameterIn } = taped;
  if (!(diameterIn > 0 && diameterIn < Infinity)) {
    throw new RangeError(`diameterIn must be a length above 0, got ${diameterIn}`);
  }
  return [
    { xIn: diameterIn, yIn: diameterIn / 2, bulge: 1, edge: 'formed' },
    { xIn: 0, yIn: diameterIn / 2, bulge: 1, edge: 'formed' },
  ];
}

/**
 * A piece of pie: corner 1 is the centre, at the origin; edge 1 a radius along x, edge 2 the arc, to the
 * left, edge 3 the radius back. All edges formed.
 *
 * @param taped.radiusIn Radius [in], above 0.
 * @param taped.angleRad Angle at the centre [rad], above 0, below a full turn.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 */
export function sectorRing(taped: { readonly radiusIn: number; readonly angleRad: number }): Ring {
  const { radiusIn, angleRad } = taped;
  if (!(radiusIn > 0 && radiusIn < Infinity)) {
    throw new RangeError(`radiusIn must be a length above 0, got ${radiusIn}`);
  }
  if (!(angleRad > 0 && angleRad < 2 * Math.PI)) {
    throw new RangeError(`angleRad must be above 0 and below a full turn, got ${angleRad}`);
  }
  const centre = { xIn: 0, yIn: 0 };
  return [
    { ...centre, bulge: 0, edge: 'formed' },
    { xIn: radiusIn, yIn: 0, bulge: Math.tan(angleRad / 4), edge: 'formed' },
    { ...stepFrom(centre, angleRad, radiusIn), bulge: 0, edge: 'formed' },
  ];
}
