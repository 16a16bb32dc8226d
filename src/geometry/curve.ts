/** The layout numbers of an arc that meets two straight edges smoothly. */
export type SimpleCurve = {
  /** From where the straight edges would meet, back to the start or end of the arc. */
  readonly tangentIn: number;
  readonly arcLengthIn: number;
  readonly chordIn: number;
  /** From the middle of the chord to the arc. */
  readonly riseIn: number;
  /** From where the straight edges would meet, to the middle of the arc. */
  readonly externalIn: number;
  /** Area between the two straight edges and the arc. */
  readonly cutOffSqIn: number;
};

/**
 * Layout of a circular curve between two straight edges.
 *
 * @param curve.radiusIn      Radius [in], above 0.
 * @param curve.deflectionRad Change of direction d: half a turn minus the inner angle [rad],
 *                            above 0, below pi.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * T = R tan(d/2); L = R d; C = 2 R sin(d/2); M = R (1 - cos(d/2)); E = R (1 / cos(d/2) - 1).
 * Source: J. V. Mahun, "Open Access Surveying", Horizontal Curves, ch. C (seen).
 * Cut off = R² (tan(d/2) - d/2): the kite R T minus the sector; derived.
 */
export function simpleCurve(curve: { radiusIn: number; deflectionRad: number }): SimpleCurve {
  const { radiusIn, deflectionRad } = curve;
  if (!(radiusIn > 0 && radiusIn < Infinity)) {
    throw new RangeError(`radiusIn must be a length above 0, got ${radiusIn}`);
  }
  if (!(deflectionRad > 0 && deflectionRad < Math.PI)) {
    throw new RangeError(`deflectionRad must be above 0 and below pi, got ${deflectionRad}`);
  }

  const halfRad = deflectionRad / 2;
  return {
    tangentIn: radiusIn * Math.tan(halfRad),
    arcLengthIn: radiusIn * deflectionRad,
    chordIn: 2 * radiusIn * Math.sin(halfRad),
    riseIn: radiusIn * (1 - Math.cos(halfRad)),
    externalIn: radiusIn * (1 / Math.cos(halfRad) - 1),
    cutOffSqIn: radiusIn ** 2 * (Math.tan(halfRad) - halfRad),
  };
}

/**
 * Radius of the arc that starts the same distance back from a corner on both straight edges.
 *
 * @param corner.setbackIn     Distance back from the corner [in], above 0.
 * @param corner.deflectionRad As in `simpleCurve`.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * R = S / tan(d/2), from T = R tan(d/2); at a square corner R = S. Laying a corner out by equal
 * setbacks is common practice, no source.
 */
export function radiusFromSetbackIn(corner: { setbackIn: number; deflectionRad: number }): number {
  const { setbackIn, deflectionRad } = corner;
  if (!(setbackIn > 0 && setbackIn < Infinity)) {
    throw new RangeError(`setbackIn must be a length above 0, got ${setbackIn}`);
  }
  if (!(deflectionRad > 0 && deflectionRad < Math.PI)) {
    throw new RangeError(`deflectionRad must be above 0 and below pi, got ${deflectionRad}`);
  }
  return setbackIn / Math.tan(deflectionRad / 2);
}
