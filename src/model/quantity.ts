import { divideR, type Quantity, type Rational, rationalToNumber } from '../units/index.ts';

/** A measured value in the unit of the core (in, sq ft, lb, h, ratio…), as the nearest double. */
export function inCoreUnit(quantity: Quantity): number {
  return rationalToNumber(quantity.value);
}

/** A measured value in a unit of so many base units, divided exactly before it becomes a double. */
export function inUnitOf(quantity: Quantity, baseUnits: Rational): number {
  return rationalToNumber(divideR(quantity.value, baseUnits));
}

/** As `inCoreUnit`, null where nothing is given. */
export function inCoreUnitOrNull(quantity: Quantity | undefined): number | null {
  return quantity === undefined ? null : inCoreUnit(quantity);
}

/** Each thing of a map with its id, mapped. */
export function mapThings<I, O>(
  things: Readonly<Record<string, I>>,
  map: (id: string, thing: I) => O,
): Record<string, O> {
  return Object.fromEntries(Object.entries(things).map(([id, thing]) => [id, map(id, thing)]));
}
