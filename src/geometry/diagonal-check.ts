import { type FourSidesIn, otherDiagonalIn as otherDiagonalOf } from './four-sides.ts';
import { solveNearestIn } from './solve-nearest.ts';
import { type TapeSlip, tapeSlipOf } from './tape-slip.ts';
import { closingRange } from './two-distances.ts';

export type DiagonalCulprit = {
  readonly what: 'side' | 'diagonal';
  /** Side 1 to 4; diagonal 1 runs from corner 1 to 3, diagonal 2 from corner 2 to 4. */
  readonly number: number;
  /** The length that by itself would make the two diagonals agree. */
  readonly wouldBeIn: number;
  /** That length less the one taped. */
  readonly changeIn: number;
  readonly slip: TapeSlip | null;
};

export type DiagonalCheck = {
  /** The other diagonal as taped, less as it follows from the sides and the first. */
  readonly missIn: number;
  /** Smallest change first; empty where nothing is missing. */
  readonly culprits: readonly DiagonalCulprit[];
  readonly likely: {
    readonly culprit: DiagonalCulprit;
    readonly because: TapeSlip['kind'] | 'smallest-change';
  } | null;
};

type Taped = {
  readonly sidesIn: FourSidesIn;
  readonly diagonalIn: number;
  readonly otherDiagonalIn: number;
};

/** A reading further off than this is a different edge, not a slip. Common practice, no source. */
const FARTHEST_RATIO = 0.1;

/** Most telling first: how an easily made slip shows itself outweighs how small the change is. */
const TELLING: readonly TapeSlip['kind'][] = ['whole-foot', 'swapped-digits', 'six-for-nine'];

/**
 * Holds the second diagonal of four taped sides against the first, and says which one reading, changed
 * alone, would make them agree.
 *
 * @param taped As for `fourSidesRing`, whose answer for it must be ok, and the diagonal from corner 2 to
 *              corner 4 as taped [in], above 0.
 * @returns All six readings can be the culprit; one with no such length within a tenth of it is left out.
 *          Opposite sides of a parallelogram cannot be told apart: the one with the lower number comes first.
 * @throws {RangeError} If a length is not above 0 or the shape cannot be.
 *
 * The likely one is the reading whose change comes nearest to a slip of the tape (see `tapeSlipOf`);
 * without one, the smallest change. One wrong reading being likelier than two: common practice, no source. It
 * tells what to tape again, not what to correct.
 */
export function diagonalCheck(taped: Taped): DiagonalCheck {
  const { otherDiagonalIn } = taped;
  if (!(otherDiagonalIn > 0 && otherDiagonalIn < Infinity)) {
    throw new RangeError(`otherDiagonalIn must be a length above 0, got ${otherDiagonalIn}`);
  }
  const missIn = otherDiagonalIn - otherDiagonalOf(taped);
  if (missIn === 0) return { missIn, culprits: [], likely: null };

  const culprits = readingsOf(taped)
    .flatMap(({ what, number, tapedIn, wouldBeIn }): DiagonalCulprit[] => {
      if (wouldBeIn === null || !(Math.abs(wouldBeIn - tapedIn) <= FARTHEST_RATIO * tapedIn)) return [];
      const slip = tapeSlipOf({ tapedIn, wouldBeIn });
      return [{ what, number, wouldBeIn, changeIn: wouldBeIn - tapedIn, slip }];
    })
    .sort((one, other) => Math.abs(one.changeIn) - Math.abs(other.changeIn));
  return { missIn, culprits, likely: likelyOf(culprits) };
}

function likelyOf(culprits: readonly DiagonalCulprit[]): DiagonalCheck['likely'] {
  for (const because of TELLING) {
    const [nearest] = culprits
      .filter(({ slip }) => slip?.kind === because)
      .sort((one, other) => (one.slip?.offIn ?? 0) - (other.slip?.offIn ?? 0));
    if (nearest !== undefined) return { culprit: nearest, because };
  }
  const [smallest] = culprits;
  return smallest === undefined ? null : { culprit: smallest, because: 'smallest-change' };
}

type Reading = Pick<DiagonalCulprit, 'what' | 'number'> & {
  readonly tapedIn: number;
  readonly wouldBeIn: number | null;
};

function readingsOf(taped: Taped): Reading[] {
  const { sidesIn, diagonalIn } = taped;
  const [side1In, side2In, side3In, side4In] = sidesIn;
  const withSide = (index: number) => (tryIn: number) => {
    const tried = [...sidesIn] as [number, number, number, number];
    tried[index] = tryIn;
    return otherDiagonalOf({ sidesIn: tried, diagonalIn });
  };
  const reading = (
    what: DiagonalCulprit['what'],
    number: number,
    tapedIn: number,
    otherDiagonalFor: (tryIn: number) => number,
    possible: { readonly leastIn: number; readonly mostIn: number },
  ): Reading => ({
    what,
    number,
    tapedIn,
    wouldBeIn: solveNearestIn({
      fromIn: tapedIn,
      leastIn: Math.max(possible.leastIn, tapedIn * (1 - FARTHEST_RATIO)),
      mostIn: Math.min(possible.mostIn, tapedIn * (1 + FARTHEST_RATIO)),
      missOf: (tryIn) => otherDiagonalFor(tryIn) - taped.otherDiagonalIn,
    }),
  });

  const oneTriangle = closingRange(side1In, side2In);
  const otherTriangle = closingRange(side3In, side4In);
  const bothTriangles = {
    leastIn: Math.max(oneTriangle.leastIn, otherTriangle.leastIn),
    mostIn: Math.min(oneTriangle.mostIn, otherTriangle.mostIn),
  };
  return [
    reading('side', 1, side1In, withSide(0), closingRange(diagonalIn, side2In)),
    reading('side', 2, side2In, withSide(1), closingRange(diagonalIn, side1In)),
    reading('side', 3, side3In, withSide(2), closingRange(diagonalIn, side4In)),
    reading('side', 4, side4In, withSide(3), closingRange(diagonalIn, side3In)),
    reading(
      'diagonal',
      1,
      diagonalIn,
      (tryIn) => otherDiagonalOf({ sidesIn, diagonalIn: tryIn }),
      bothTriangles,
    ),
    { what: 'diagonal', number: 2, tapedIn: taped.otherDiagonalIn, wouldBeIn: otherDiagonalOf(taped) },
  ];
}
