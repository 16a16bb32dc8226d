import { ceilToStep } from '../../units/index.ts';

/**
 * Equal risers over a rise, as few as the highest that is allowed needs.
 *
 * @param rise.totalIn From the surface at the foot to the landing [in], above 0.
 * @param rise.mostIn  The highest riser [in], above 0.
 * @returns How many, and the height of each [in].
 * @throws {RangeError} If a length is outside its range.
 *
 * n = ceil(H / r), each H / n, with H totalIn and r mostIn; the top riser ends on the landing. The quotient is
 * let off the noise of doubles: 31 in over 7 3/4 in is 4. Source: definition.
 *
 * @example equalRisers({ totalIn: 31, mostIn: 7.75 }) // { count: 4, riserIn: 7.75 }
 */
export function equalRisers(rise: { readonly totalIn: number; readonly mostIn: number }): {
  readonly count: number;
  readonly riserIn: number;
} {
  const { totalIn, mostIn } = rise;
  requireAboveZero({ totalIn, mostIn });
  const count = ceilToStep(totalIn / mostIn, 1);
  return { count, riserIn: totalIn / count };
}

/**
 * Height to form each riser where the treads rise from front to back so that water runs off.
 *
 * @param flight.totalIn     From the surface at the foot to the front of the landing [in], above 0.
 * @param flight.count       Risers, a whole number of 1 or more.
 * @param flight.treadRiseIn How much one tread rises from front to back [in], 0 or more.
 * @returns [in]
 * @throws {RangeError} If a value is outside its range, or the treads alone rise as high.
 *
 * r = (H - (n - 1) s) / n, with H totalIn, n count and s treadRiseIn: n - 1 treads take their part of the rise.
 * From edge to edge every riser but the lowest is then r + s. Source: geometry.
 *
 * @example formedRiserIn({ totalIn: 21.75, count: 3, treadRiseIn: 0.25 }) // 7.0833
 */
export function formedRiserIn(flight: {
  readonly totalIn: number;
  readonly count: number;
  readonly treadRiseIn: number;
}): number {
  const { totalIn, count, treadRiseIn } = flight;
  requireAboveZero({ totalIn });
  if (!(Number.isInteger(count) && count >= 1))
    throw new RangeError(`count must be a whole number of 1 or more, got ${count}`);
  const byTreadsIn = (count - 1) * treadRiseIn;
  if (!(treadRiseIn >= 0 && byTreadsIn < totalIn))
    throw new RangeError(`treadRiseIn must be 0 or more and leave some rise, got ${treadRiseIn}`);
  return (totalIn - byTreadsIn) / count;
}

/**
 * How well a stride fits a step: two risers and a tread.
 *
 * @returns [in]; 24 to 25 is comfortable (Masonry and Concrete, 2004, figure 8-5, seen).
 * @throws {RangeError} If a length is not above 0.
 */
export function strideIn(step: { readonly riserIn: number; readonly treadIn: number }): number {
  const { riserIn, treadIn } = step;
  requireAboveZero({ riserIn, treadIn });
  return 2 * riserIn + treadIn;
}

function requireAboveZero(lengths: Readonly<Record<string, number>>): void {
  for (const [name, lengthIn] of Object.entries(lengths)) {
    if (!(lengthIn > 0 && lengthIn < Infinity))
      throw new RangeError(`${name} must be above 0, got ${lengthIn}`);
  }
}
