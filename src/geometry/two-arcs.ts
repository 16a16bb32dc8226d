/**
 * Where two arcs in a row, both turning the same way, start and end on the straight edges they join.
 *
 * @param curve.firstRadiusIn  Radius of the first arc [in], above 0.
 * @param curve.firstTurnRad   Angle it turns d1 [rad], above 0.
 * @param curve.secondRadiusIn Radius of the second arc [in], above 0.
 * @param curve.secondTurnRad  Angle it turns d2 [rad], above 0; d = d1 + d2 below pi.
 * @returns Tangent lengths [in]: of each arc by itself (t1, t2), and from where the straight edges
 *          would meet back to the start of the first arc (T1) and on to the end of the second (T2).
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * t1 = R1 tan(d1/2), t2 = R2 tan(d2/2); T1 = t1 + (t1 + t2) sin(d2) / sin(d);
 * T2 = t2 + (t1 + t2) sin(d1) / sin(d).
 * Source: route surveying, compound curve by the law of sines (memory).
 */
export function compoundTangents(curve: {
  firstRadiusIn: number;
  firstTurnRad: number;
  secondRadiusIn: number;
  secondTurnRad: number;
}): { firstTangentIn: number; secondTangentIn: number; beforeIn: number; afterIn: number } {
  const { firstRadiusIn, firstTurnRad, secondRadiusIn, secondTurnRad } = curve;
  for (const [name, value] of Object.entries(curve)) {
    if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} must be above 0, got ${value}`);
  }
  const turnRad = firstTurnRad + secondTurnRad;
  if (!(turnRad < Math.PI)) throw new RangeError(`the two turns together must be below pi, got ${turnRad}`);

  const firstTangentIn = firstRadiusIn * Math.tan(firstTurnRad / 2);
  const secondTangentIn = secondRadiusIn * Math.tan(secondTurnRad / 2);
  const perSineIn = (firstTangentIn + secondTangentIn) / Math.sin(turnRad);
  return {
    firstTangentIn,
    secondTangentIn,
    beforeIn: firstTangentIn + perSineIn * Math.sin(secondTurnRad),
    afterIn: secondTangentIn + perSineIn * Math.sin(firstTurnRad),
  };
}

/**
 * Two arcs turning one way and then as far back, from one straight line to another parallel to it,
 * with no straight between them.
 *
 * @param curve.offsetIn  Distance p between the two lines [in], above 0, below the sum of the radii.
 * @param curve.radius1In Radius of the first arc [in], above 0.
 * @param curve.radius2In Radius of the second arc [in], above 0.
 * @returns The turn of each arc; the run along the lines from start to end; the straight distance from
 *          start to end; the length of each arc [in].
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * cos(d) = 1 - p / (R1 + R2); run = (R1 + R2) sin(d); chord = sqrt(2 p (R1 + R2)).
 * Source: route surveying, reverse curve between parallel tangents (memory).
 */
export function reverseCurve(curve: { offsetIn: number; radius1In: number; radius2In: number }): {
  turnRad: number;
  runIn: number;
  longChordIn: number;
  arc1In: number;
  arc2In: number;
} {
  const { offsetIn, radius1In, radius2In } = curve;
  for (const [name, radiusIn] of Object.entries({ radius1In, radius2In })) {
    if (!(radiusIn > 0 && radiusIn < Infinity)) {
      throw new RangeError(`${name} must be a length above 0, got ${radiusIn}`);
    }
  }
  const bothIn = radius1In + radius2In;
  if (!(offsetIn > 0 && offsetIn < bothIn)) {
    throw new RangeError(
      `offsetIn must be above 0 and below ${bothIn} (the radii together), got ${offsetIn}`,
    );
  }

  const turnRad = Math.acos(1 - offsetIn / bothIn);
  return {
    turnRad,
    runIn: bothIn * Math.sin(turnRad),
    longChordIn: Math.sqrt(2 * offsetIn * bothIn),
    arc1In: radius1In * turnRad,
    arc2In: radius2In * turnRad,
  };
}
