const STEPS_EACH_WAY = 200;
const HALVINGS = 60;

/**
 * The length nearest to `fromIn` at which a difference is 0, or null where there is none in the range.
 *
 * Steps outwards from `fromIn`, a two-hundredth of the way to the end of the range at a time, until the
 * difference changes sign, then halves that step. Two solutions within one step are not found.
 *
 * @param search.leastIn Lower end, at most `fromIn`.
 * @param search.mostIn  Upper end, at least `fromIn`.
 * @param search.missOf  The difference at a length; must be a number over the range, and a hair beyond.
 * @throws {RangeError} If `fromIn` is not in the range or an end is not finite.
 */
export function solveNearestIn(search: {
  readonly fromIn: number;
  readonly leastIn: number;
  readonly mostIn: number;
  readonly missOf: (tryIn: number) => number;
}): number | null {
  const { fromIn, leastIn, mostIn, missOf } = search;
  if (!(leastIn <= fromIn && fromIn <= mostIn && leastIn > -Infinity && mostIn < Infinity)) {
    throw new RangeError(`fromIn must lie between ${leastIn} and ${mostIn}, got ${fromIn}`);
  }
  const up = firstZero(fromIn, mostIn, missOf);
  const down = firstZero(fromIn, leastIn, missOf);
  if (up === null || down === null) return up ?? down;
  return Math.abs(up - fromIn) <= Math.abs(down - fromIn) ? up : down;
}

function firstZero(fromIn: number, toIn: number, missOf: (tryIn: number) => number): number | null {
  let nearIn = fromIn;
  let nearMiss = missOf(nearIn);
  if (nearMiss === 0) return nearIn;
  for (let step = 1; step <= STEPS_EACH_WAY; step += 1) {
    const farIn = fromIn + ((toIn - fromIn) * step) / STEPS_EACH_WAY;
    const farMiss = missOf(farIn);
    if (Math.sign(farMiss) !== Math.sign(nearMiss)) return halve(nearIn, farIn, missOf);
    nearIn = farIn;
    nearMiss = farMiss;
  }
  return null;
}

function halve(nearIn: number, farIn: number, missOf: (tryIn: number) => number): number {
  const nearSign = Math.sign(missOf(nearIn));
  let lowIn = nearIn;
  let highIn = farIn;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middleIn = (lowIn + highIn) / 2;
    if (Math.sign(missOf(middleIn)) === nearSign) lowIn = middleIn;
    else highIn = middleIn;
  }
  return (lowIn + highIn) / 2;
}
