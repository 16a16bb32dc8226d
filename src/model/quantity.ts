import {
  divideR,
  ftPerMi,
  inPerFt,
  multiplyR,
  type Quantity,
  type Rational,
  rational,
  rationalToNumber,
  type Turn,
} from '../units/index.ts';

/** A measured value in the unit of the core (in, sq ft, lb, h, ratio…), as the nearest double. */
export function inCoreUnit(quantity: Quantity): number {
  return rationalToNumber(quantity.value);
}

/** Base units of length in a mile. */
export const inPerMi = multiplyR(inPerFt, ftPerMi);

/** A measured value in a unit of so many base units, divided exactly before it becomes a double. */
export function inUnitOf(quantity: Quantity, baseUnits: Rational): number {
  return rationalToNumber(divideR(quantity.value, baseUnits));
}

/** As `inCoreUnit`, null where nothing is given. */
export function inCoreUnitOrNull(quantity: Quantity | undefined): number | null {
  return quantity === undefined ? null : inCoreUnit(quantity);
}

const HALF_CIRCLE_DEG = rational(180);

/** Degrees in radians: the share of a half circle, exact, times pi. */
export function inRadians(angleDeg: Rational): number {
  return rationalToNumber(divideR(angleDeg, HALF_CIRCLE_DEG)) * Math.PI;
}

/** A turn in radians, to the left where positive. Straight is 0, never -0. */
export function turnRadOf(turn: Turn): number {
  const angleRad = inRadians(turn.angleDeg);
  return turn.side === 'left' ? angleRad : 0 - angleRad;
}

/** Each thing of a map with its id, mapped. */
export function mapThings<I, O>(
  things: Readonly<Record<string, I>>,
  map: (id: string, thing: I) => O,
): Record<string, O> {
  return Object.fromEntries(Object.entries(things).map(([id, thing]) => [id, map(id, thing)]));
}
