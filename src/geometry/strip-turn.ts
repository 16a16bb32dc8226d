import type { TurnRounding } from './strip-pieces.ts';

/** Across the walk at a turn, from inner to outer corner or arc, on the line that halves the turn [in]. */
export type TurnWidths = {
  /** Both corners left sharp. */
  readonly sharpIn: number;
  readonly equalIn: number;
  readonly parallelIn: number;
  readonly outerIn: number;
  readonly innerIn: number;
};

export type TurnLayout = {
  /** Each way of rounding, all with the setback of this turn; with none, as with a setback of 0. */
  readonly widths: TurnWidths;
  /** The one of them that is built. */
  readonly chosenWidthIn: number;
  /** 0 where that corner stays sharp. */
  readonly innerSetbackIn: number;
  readonly outerSetbackIn: number;
};

/**
 * How wide a walk is at a turn, by the way its corners are rounded.
 *
 * @param turn.widthIn  Width of the walk [in], above 0. Where it changes along the line, the width at the
 *                      turn; the edges then lean k to the line, and the widths here are off by about k²
 *                      of themselves (under 0.1 % for a foot in 20).
 * @param turn.turnRad  Change of direction d [rad], either way, not 0, below half a turn.
 * @param turn.rounding Its setback S above 0 [in], measured from the corner it rounds.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * sharp = W / cos(d/2). An arc set back S has R = S / tan(d/2), and its middle lies E = R (1/cos(d/2) - 1)
 * from the corner (see `simpleCurve`), always towards the inside of the turn. So inner = sharp + E,
 * outer = sharp - E, equal = sharp + E - E; parallel, with the outer radius R + W, keeps W. Derived.
 */
export function turnLayout(turn: {
  readonly widthIn: number;
  readonly turnRad: number;
  readonly rounding: TurnRounding | null;
}): TurnLayout {
  const { widthIn, turnRad, rounding } = turn;
  if (!(widthIn > 0 && widthIn < Infinity)) {
    throw new RangeError(`widthIn must be a length above 0, got ${widthIn}`);
  }
  if (!(Math.abs(turnRad) > 0 && Math.abs(turnRad) < Math.PI)) {
    throw new RangeError(`turnRad must be other than 0 and below half a turn, got ${turnRad}`);
  }
  if (rounding !== null && !(rounding.setbackIn > 0 && rounding.setbackIn < Infinity)) {
    throw new RangeError(`setbackIn must be a length above 0, got ${rounding.setbackIn}`);
  }

  const halfRad = Math.abs(turnRad) / 2;
  const setbackIn = rounding === null ? 0 : rounding.setbackIn;
  const sharpIn = widthIn / Math.cos(halfRad);
  const externalIn = (setbackIn / Math.tan(halfRad)) * (1 / Math.cos(halfRad) - 1);
  const widths = {
    sharpIn,
    equalIn: sharpIn,
    parallelIn: widthIn,
    outerIn: sharpIn - externalIn,
    innerIn: sharpIn + externalIn,
  };
  if (rounding === null) return { widths, chosenWidthIn: sharpIn, innerSetbackIn: 0, outerSetbackIn: 0 };

  const { how } = rounding;
  const parallelOuterIn = setbackIn + widthIn * Math.tan(halfRad);
  return {
    widths,
    chosenWidthIn: {
      equal: widths.equalIn,
      parallel: widths.parallelIn,
      outer: widths.outerIn,
      inner: widths.innerIn,
    }[how],
    innerSetbackIn: how === 'outer' ? 0 : setbackIn,
    outerSetbackIn: { equal: setbackIn, parallel: parallelOuterIn, outer: setbackIn, inner: 0 }[how],
  };
}

/**
 * Setback at which an arc on the outer corner alone reaches the inner corner and leaves no width [in].
 * From sharp = E: R = W / (1 - cos(d/2)).
 */
export function pinchingSetbackIn(turn: { readonly widthIn: number; readonly turnRad: number }): number {
  const halfRad = Math.abs(turn.turnRad) / 2;
  return (turn.widthIn / (1 - Math.cos(halfRad))) * Math.tan(halfRad);
}
