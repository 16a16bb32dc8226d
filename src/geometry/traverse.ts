import { polygonRing } from './build.ts';
import { stepFrom } from './heading.ts';
import type { Point, Ring } from './outline.ts';

export type WalkedSide = {
  readonly lengthIn: number;
  /** Change of direction from the side before, left positive [rad]; that of the first side is not used. */
  readonly turnRad: number;
};

/** How far a walk around an edge ends from where it began: the end less the beginning. */
export type Closure = {
  readonly errorIn: number;
  /** From where the walk began towards where it ended [rad], anticlockwise from the first side; 0 without error. */
  readonly directionRad: number;
  /** Along the first side, as walked. */
  readonly alongIn: number;
  /** To the left of the first side. */
  readonly acrossIn: number;
  /** The sides as taped. */
  readonly perimeterIn: number;
  /** Error as a share of the perimeter; 0.001 is 1 in 1000. */
  readonly errorRatio: number;
};

export type ClosedTraverse = { readonly ring: Ring; readonly closure: Closure };

/**
 * Closes a walk around an edge, side after side, that by small errors does not end where it began.
 *
 * @param sides Three or more, each longer than 0 [in]. Corner 1 is the origin, side 1 is walked along x.
 * @returns The balanced ring, its corners in the order of the walk (so clockwise where the walk is), and
 *          the error before balancing. Balancing also turns side 1 a little off x. A shape that crosses
 *          itself, or an error too large to share out, is for the caller to refuse.
 * @throws {RangeError} If there are fewer than three sides, a length is not above 0, or a turn is not finite.
 *
 * Compass (Bowditch) rule: the correction of a side is the closing error, reversed, times its length over
 * the perimeter; the corrections of the sides before it add up at a corner.
 * Source: J. V. Mahun, "Open Access Surveying", Traverse Computations ch. I (seen).
 */
export function closeTraverse(sides: readonly WalkedSide[]): ClosedTraverse {
  if (sides.length < 3) throw new RangeError(`a walk needs three sides or more, got ${sides.length}`);

  const walked: (Point & { readonly walkedIn: number })[] = [];
  let here: Point = { xIn: 0, yIn: 0 };
  let walkedIn = 0;
  let directionRad = 0;
  for (const [index, { lengthIn, turnRad }] of sides.entries()) {
    if (!(lengthIn > 0 && lengthIn < Infinity)) {
      throw new RangeError(`length of side ${index + 1} must be above 0, got ${lengthIn}`);
    }
    if (index > 0 && !Number.isFinite(turnRad)) {
      throw new RangeError(`turn before side ${index + 1} must be a finite angle, got ${turnRad}`);
    }
    walked.push({ ...here, walkedIn });
    if (index > 0) directionRad += turnRad;
    here = stepFrom(here, directionRad, lengthIn);
    walkedIn += lengthIn;
  }

  const error = here;
  const perimeterIn = walkedIn;
  const errorIn = Math.hypot(error.xIn, error.yIn);
  return {
    ring: polygonRing(
      walked.map((corner) => ({
        xIn: corner.xIn - (error.xIn * corner.walkedIn) / perimeterIn,
        yIn: corner.yIn - (error.yIn * corner.walkedIn) / perimeterIn,
      })),
    ),
    closure: {
      errorIn,
      directionRad: Math.atan2(error.yIn, error.xIn),
      alongIn: error.xIn,
      acrossIn: error.yIn,
      perimeterIn,
      errorRatio: errorIn / perimeterIn,
    },
  };
}
