/** A row of a layout table: so far along a straight line, so far square from it to the arc. */
export type Offset = { readonly alongIn: number; readonly offsetIn: number };

/** A step that ends nearer the end than this is the end [in]. */
const SAME_IN = 1e-6;

/** A step this much finer than the line is a mistake of the caller, not a table to work from. */
const MOST_ROWS = 10_000;

/**
 * Offsets from a chord to its arc at a regular step from the middle of the chord to its end; the other
 * half is the same.
 *
 * @param arc.radiusIn Radius [in], at least half the chord; the arc is the lesser one, at most a half circle.
 * @param arc.chordIn  Chord c [in], above 0.
 * @param arc.stepIn   Step [in], above 0.
 * @returns From the middle, where the offset is the rise, to the end of the chord, where it is 0.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * o = sqrt(R² - x²) - sqrt(R² - c²/4), computed as the difference of squares over the sum of roots, which
 * keeps the digits of a flat arc. Source: ordinates from the long chord, route surveying (memory).
 */
export function chordOffsets(arc: { radiusIn: number; chordIn: number; stepIn: number }): readonly Offset[] {
  const { radiusIn, chordIn, stepIn } = arc;
  checkLengths({ radiusIn, chordIn, stepIn });
  const halfIn = chordIn / 2;
  if (!(radiusIn >= halfIn * (1 - 1e-12))) {
    throw new RangeError(`radiusIn must be ${halfIn} or more (half the chord), got ${radiusIn}`);
  }
  // A radius of half the chord may be a hair less: then the root at the end is 0.
  const toCentreIn = Math.sqrt(Math.max(0, radiusIn ** 2 - halfIn ** 2));
  return [0, ...stepsTo(halfIn, stepIn)].map((alongIn) => {
    const sumIn = Math.sqrt(Math.max(0, radiusIn ** 2 - alongIn ** 2)) + toCentreIn;
    return { alongIn, offsetIn: alongIn === halfIn ? 0 : (halfIn ** 2 - alongIn ** 2) / sumIn };
  });
}

/**
 * Offsets square to a straight edge to the arc that starts on it, at a regular step from where it starts.
 *
 * @param arc.radiusIn Radius [in], above 0.
 * @param arc.mostIn   How far along the edge [in], above 0, at most the radius; half an arc of sweep d
 *                     reaches R sin(d/2) along each of its two edges.
 * @param arc.stepIn   Step [in], above 0.
 * @returns From the first step to `mostIn`.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * y = R - sqrt(R² - x²), computed as x² / (R + sqrt(R² - x²)). Source: tangent offsets, route surveying (memory).
 */
export function tangentOffsets(arc: { radiusIn: number; mostIn: number; stepIn: number }): readonly Offset[] {
  const { radiusIn, mostIn, stepIn } = arc;
  checkLengths({ radiusIn, mostIn, stepIn });
  if (!(mostIn <= radiusIn)) {
    throw new RangeError(`mostIn must be at most ${radiusIn} (the radius), got ${mostIn}`);
  }
  return stepsTo(mostIn, stepIn).map((alongIn) => ({
    alongIn,
    offsetIn: alongIn ** 2 / (radiusIn + Math.sqrt(radiusIn ** 2 - alongIn ** 2)),
  }));
}

/** A row of a table by angles: what to turn off the tangent at the start, and how far to measure. */
export type Deflection = {
  /** Along the arc from its start. */
  readonly alongIn: number;
  readonly deflectionRad: number;
  /** Straight, from the start of the arc. */
  readonly chordIn: number;
};

/**
 * Points along an arc by the angle off the tangent at its start and the chord from there.
 *
 * @param arc.radiusIn    Radius R [in], above 0.
 * @param arc.arcLengthIn Length [in], above 0, at most the full circle.
 * @param arc.stepIn      Step along the arc [in], above 0.
 * @returns From the first step to the end of the arc.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * deflection = s / (2 R); chord = 2 R sin(s / (2 R)), s along the arc.
 * Source: J. V. Mahun, "Open Access Surveying", Horizontal Curves ch. C sec. 3 (seen).
 */
export function deflectionsAlong(arc: {
  radiusIn: number;
  arcLengthIn: number;
  stepIn: number;
}): readonly Deflection[] {
  const { radiusIn, arcLengthIn, stepIn } = arc;
  checkLengths({ radiusIn, arcLengthIn, stepIn });
  if (!(arcLengthIn <= 2 * Math.PI * radiusIn * (1 + 1e-12))) {
    throw new RangeError(`arcLengthIn must be at most ${2 * Math.PI * radiusIn}, got ${arcLengthIn}`);
  }
  return stepsTo(arcLengthIn, stepIn).map((alongIn) => {
    const deflectionRad = alongIn / (2 * radiusIn);
    return { alongIn, deflectionRad, chordIn: 2 * radiusIn * Math.sin(deflectionRad) };
  });
}

/** Whole steps, then the end. */
function stepsTo(endIn: number, stepIn: number): number[] {
  const count = Math.ceil((endIn - SAME_IN) / stepIn);
  if (!(count <= MOST_ROWS)) throw new RangeError(`stepIn of ${stepIn} gives more than ${MOST_ROWS} rows`);
  return [...Array.from({ length: Math.max(0, count - 1) }, (_, step) => (step + 1) * stepIn), endIn];
}

function checkLengths(lengths: Readonly<Record<string, number>>): void {
  for (const [name, lengthIn] of Object.entries(lengths)) {
    if (!(lengthIn > 0 && lengthIn < Infinity)) {
      throw new RangeError(`${name} must be a length above 0, got ${lengthIn}`);
    }
  }
}
