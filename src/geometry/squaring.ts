const IN_PER_FT = 12;

/** Marks on two sides from their corner, and the length between them when the corner is square. */
export type SquareTriple = {
  readonly firstIn: number;
  readonly secondIn: number;
  readonly diagonalIn: number;
};

/**
 * The largest triangle of 3, 4 and 5 parts, each part whole units, whose legs fit on two sides.
 *
 * @param lengthsIn The two sides that meet at the corner [in], above 0.
 * @param unitIn    What the tape counts in [in], above 0: a foot, a tenth of a metre.
 * @returns The longer leg on the longer side; null where not even 3 and 4 units fit.
 * @throws {RangeError} If a side is not a length above 0.
 *
 * 3² + 4² = 5². Source: Army carpentry course EN0069, Squaring Building Lines (seen); the larger the
 * multiple, the less an error of the tape turns the corner: "Building Layout", a1cr.net (seen).
 */
export function squareTriple(
  lengthsIn: readonly [number, number],
  unitIn: number = IN_PER_FT,
): SquareTriple | null {
  for (const lengthIn of [...lengthsIn, unitIn]) {
    if (!(lengthIn > 0 && lengthIn < Infinity)) {
      throw new RangeError(`a side and a unit must be a length above 0, got ${lengthIn}`);
    }
  }
  const [firstIn, secondIn] = lengthsIn;
  const shortIn = Math.min(firstIn, secondIn);
  const longIn = Math.max(firstIn, secondIn);
  // The noise of a side in inches must not cost a unit.
  const unitsCount = Math.floor(Math.min(shortIn / 3, longIn / 4) / unitIn + 1e-9);
  if (unitsCount < 1) return null;
  const legIn = (parts: number) => parts * unitsCount * unitIn;
  const longerIsFirst = firstIn >= secondIn;
  return {
    firstIn: legIn(longerIsFirst ? 4 : 3),
    secondIn: legIn(longerIsFirst ? 3 : 4),
    diagonalIn: legIn(5),
  };
}

/**
 * How far a taped four-sided shape with equal opposite sides is out of square.
 *
 * @param taped.aIn         One side [in], above 0.
 * @param taped.bIn         The side beside it [in], above 0.
 * @param taped.diagonal1In One diagonal [in], above 0.
 * @param taped.diagonal2In The other one [in], above 0.
 * @returns The angle off a right angle, and how far that puts the end of side b sideways; null where
 *          no such shape has those diagonals.
 * @throws {RangeError} If a value is not a length above 0.
 *
 * cos(inner angle) = (d1² - d2²) / (4 a b); sideways = b |cos|. Source: the law of cosines for both diagonals.
 */
export function outOfSquare(taped: {
  aIn: number;
  bIn: number;
  diagonal1In: number;
  diagonal2In: number;
}): { readonly offRad: number; readonly sidewaysIn: number } | null {
  for (const [name, lengthIn] of Object.entries(taped)) {
    if (!(lengthIn > 0 && lengthIn < Infinity)) {
      throw new RangeError(`${name} must be a length above 0, got ${lengthIn}`);
    }
  }
  const { aIn, bIn, diagonal1In, diagonal2In } = taped;
  const cosine = ((diagonal1In - diagonal2In) * (diagonal1In + diagonal2In)) / (4 * aIn * bIn);
  if (!(Math.abs(cosine) < 1)) return null;
  return { offRad: Math.asin(Math.abs(cosine)), sidewaysIn: bIn * Math.abs(cosine) };
}
