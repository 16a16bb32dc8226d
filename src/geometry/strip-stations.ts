import { stepFrom } from './heading.ts';
import type { Point } from './outline.ts';
import type { StripPiece } from './strip-pieces.ts';
import { type Leg, walkLine } from './strip-walk.ts';

type Strip = {
  readonly widthIn: number;
  readonly endWidthIn: number | null;
  readonly line: readonly StripPiece[];
};

/** A straight piece from one side of a strip to the other. */
export type StripLine = { readonly from: Point; readonly to: Point };

/**
 * Lines from edge to edge of a strip, square to its centre line, at distances along it.
 *
 * @param distancesIn From the start [in], 0 to the length of the line.
 * @throws {RangeError} If the strip cannot be walked, or a distance lies outside of it.
 */
export function linesAcross(strip: Strip, distancesIn: readonly number[]): readonly StripLine[] {
  const legs = legsOf(strip);
  return distancesIn.map((distanceIn) => {
    const { leg, alongIn } = legAt(legs, distanceIn);
    return {
      from: beside(leg, alongIn / leg.lengthIn, -1),
      to: beside(leg, alongIn / leg.lengthIn, 1),
    };
  });
}

function legsOf(strip: Strip): readonly Leg[] {
  const walk = walkLine(strip);
  if (!walk.ok) throw new RangeError(`piece ${walk.piece} of the strip cannot be walked: ${walk.reason}`);
  return walk.legs;
}

function legAt(legs: readonly Leg[], distanceIn: number): { readonly leg: Leg; readonly alongIn: number } {
  let leftIn = distanceIn;
  for (const [index, leg] of legs.entries()) {
    const isLast = index === legs.length - 1;
    if (leftIn >= 0 && (leftIn <= leg.lengthIn || (isLast && leftIn <= leg.lengthIn * (1 + 1e-9)))) {
      return { leg, alongIn: leftIn };
    }
    leftIn -= leg.lengthIn;
  }
  throw new RangeError(`distance must lie on the line, got ${distanceIn} in`);
}

/** A point beside a leg: `side` -1 is its right edge, 1 its left one. */
function beside(leg: Leg, share: number, side: number): Point {
  const turnedRad = leg.turnRad * share;
  const headingRad = leg.headingRad + turnedRad;
  const radiusIn = leg.turnRad === 0 ? 0 : leg.lengthIn / Math.abs(leg.turnRad);
  const on =
    leg.turnRad === 0
      ? stepFrom(leg.from, leg.headingRad, leg.lengthIn * share)
      : stepFrom(leg.from, leg.headingRad + turnedRad / 2, 2 * radiusIn * Math.sin(Math.abs(turnedRad) / 2));
  const halfIn = leg.fromHalfIn + (leg.toHalfIn - leg.fromHalfIn) * share;
  return stepFrom(on, headingRad + Math.PI / 2, halfIn * side);
}
