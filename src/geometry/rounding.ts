import { bulgeFromRise } from './arc.ts';
import { radiusFromSetbackIn, simpleCurve } from './curve.ts';
import { compoundTangents } from './two-arcs.ts';

/** How one corner is rounded. */
export type Rounding =
  | { readonly kind: 'setback'; readonly setbackIn: number }
  | { readonly kind: 'radius'; readonly radiusIn: number }
  /** Chord from mark to mark, and the rise of the arc over its middle. */
  | { readonly kind: 'chord'; readonly chordIn: number; readonly riseIn: number }
  /** Two arcs in a row, both turning the way of the corner; the second takes the rest of its angle. */
  | {
      readonly kind: 'two-arcs';
      readonly firstRadiusIn: number;
      readonly firstTurnRad: number;
      readonly secondRadiusIn: number;
    };

/** A rounding laid out at a corner of a certain deflection. */
export type RoundingLayout = {
  readonly setbackBeforeIn: number;
  readonly setbackAfterIn: number;
  /** One, or two in a row; sweeps always positive. */
  readonly arcs: readonly { readonly radiusIn: number; readonly sweepRad: number }[];
};

/**
 * Setbacks and arcs of a rounding.
 *
 * @param rounding      Every length and angle above 0.
 * @param deflectionRad Change of direction d at the corner [rad], above 0, below pi; with two arcs
 *                      above the first turn.
 * @throws {RangeError} If the deflection is outside its range.
 *
 * By setback S: R = S / tan(d/2). By radius: S = R tan(d/2). By chord c and rise m: the ends stand
 * alike about the corner, so S = c / (2 cos(d/2)); R = c² / (8 m) + m / 2; sweep = 4 atan(2 m / c).
 * The arc meets the straight edges smoothly only where that sweep is d, at m = c/2 tan(d/4).
 * Source: `simpleCurve`, `compoundTangents`; S of a chord from C = 2 R sin(d/2) and T = R tan(d/2).
 */
export function layOutRounding(rounding: Rounding, deflectionRad: number): RoundingLayout {
  const even = (setbackIn: number, radiusIn: number, sweepRad: number): RoundingLayout => ({
    setbackBeforeIn: setbackIn,
    setbackAfterIn: setbackIn,
    arcs: [{ radiusIn, sweepRad }],
  });
  switch (rounding.kind) {
    case 'setback': {
      const { setbackIn } = rounding;
      return even(setbackIn, radiusFromSetbackIn({ setbackIn, deflectionRad }), deflectionRad);
    }
    case 'radius': {
      const { radiusIn } = rounding;
      return even(simpleCurve({ radiusIn, deflectionRad }).tangentIn, radiusIn, deflectionRad);
    }
    case 'chord': {
      const { chordIn, riseIn } = rounding;
      const sweepRad = 4 * Math.atan(bulgeFromRise({ chordIn, riseIn }));
      const setbackIn = chordIn / (2 * Math.cos(deflectionRad / 2));
      return even(setbackIn, chordIn ** 2 / (8 * riseIn) + riseIn / 2, sweepRad);
    }
    case 'two-arcs': {
      const { firstRadiusIn, firstTurnRad, secondRadiusIn } = rounding;
      const secondTurnRad = deflectionRad - firstTurnRad;
      const tangents = compoundTangents({ firstRadiusIn, firstTurnRad, secondRadiusIn, secondTurnRad });
      return {
        setbackBeforeIn: tangents.beforeIn,
        setbackAfterIn: tangents.afterIn,
        arcs: [
          { radiusIn: firstRadiusIn, sweepRad: firstTurnRad },
          { radiusIn: secondRadiusIn, sweepRad: secondTurnRad },
        ],
      };
    }
  }
}

/** Every length and angle of a rounding, by name. */
export function givenOf(rounding: Rounding): Readonly<Record<string, number>> {
  const { kind: _, ...given } = rounding;
  return given;
}
