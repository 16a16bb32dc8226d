import { stepFrom } from './heading.ts';
import type { Point } from './outline.ts';
import type { StripPiece, TurnRounding } from './strip-pieces.ts';

export type WalkTurn = {
  /** Piece of the line, from 1. */
  readonly piece: number;
  readonly turnRad: number;
  readonly rounding: TurnRounding | null;
  readonly widthIn: number;
};

/** A stretch of centre line between two turns, arcs or ends. */
export type Leg = {
  readonly piece: number;
  readonly from: Point;
  readonly headingRad: number;
  readonly lengthIn: number;
  readonly to: Point;
  readonly toHeadingRad: number;
  /** 0 on a straight. */
  readonly turnRad: number;
  readonly fromHalfIn: number;
  readonly toHalfIn: number;
  readonly turnBefore: WalkTurn | null;
};

export type WalkProblem = {
  readonly ok: false;
  readonly piece: number;
  readonly haveIn: number;
} & (
  | { readonly reason: 'radius-too-small' | 'turn-without-straight'; readonly leastIn: number }
  /** The width cannot change, there being no straight to change it on: only `mostIn` would do. */
  | { readonly reason: 'width-changes-on-arc'; readonly leastIn: number; readonly mostIn: number }
);

export type Walk = {
  readonly ok: true;
  readonly legs: readonly Leg[];
  /** Change of half the width for an inch of straight. */
  readonly halfPerIn: number;
  readonly lengthIn: number;
};

/**
 * The centre line of a strip, walked from the origin along x; straights in a row become one.
 *
 * The width changes along straights only, evenly over all of them, so that arcs have true concentric edges.
 * @throws {RangeError} If there is no piece, or a piece or width is outside its range.
 */
export function walkLine(strip: {
  readonly widthIn: number;
  readonly endWidthIn: number | null;
  readonly line: readonly StripPiece[];
}): Walk | WalkProblem {
  const { widthIn, line } = strip;
  const endWidthIn = strip.endWidthIn ?? widthIn;
  mustBeLength('widthIn', widthIn);
  mustBeLength('endWidthIn', endWidthIn);
  if (line.length === 0) throw new RangeError('a line needs at least one piece');
  for (const [index, piece] of line.entries()) mustBePiece(piece, index + 1);

  const straightIn = line.reduce(
    (sumIn, piece) => sumIn + (piece.kind === 'straight' ? piece.lengthIn : 0),
    0,
  );
  if (straightIn === 0 && endWidthIn !== widthIn) {
    const same = { leastIn: widthIn, mostIn: widthIn };
    return { ok: false, piece: 1, reason: 'width-changes-on-arc', haveIn: endWidthIn, ...same };
  }
  const halfPerIn = straightIn === 0 ? 0 : (endWidthIn - widthIn) / 2 / straightIn;

  const legs: Leg[] = [];
  let at = { to: { xIn: 0, yIn: 0 }, toHeadingRad: 0, toHalfIn: widthIn / 2 };
  let turnBefore: WalkTurn | null = null;
  for (const [index, piece] of line.entries()) {
    const number = index + 1;
    if (piece.kind === 'turn') {
      if (line[index - 1]?.kind !== 'straight' || line[index + 1]?.kind !== 'straight') {
        const leastIn = at.toHalfIn * Math.tan(Math.abs(piece.turnRad) / 2);
        return { ok: false, piece: number, reason: 'turn-without-straight', haveIn: 0, leastIn };
      }
      const { turnRad, rounding } = piece;
      turnBefore = { piece: number, turnRad, rounding, widthIn: 2 * at.toHalfIn };
      at = { ...at, toHeadingRad: at.toHeadingRad + turnRad };
      continue;
    }
    if (piece.kind === 'arc' && !(piece.radiusIn > at.toHalfIn)) {
      const { radiusIn } = piece;
      return { ok: false, piece: number, reason: 'radius-too-small', haveIn: radiusIn, leastIn: at.toHalfIn };
    }
    const last = legs.at(-1);
    const isMore = piece.kind === 'straight' && turnBefore === null && last?.turnRad === 0;
    const start = { piece: number, from: at.to, headingRad: at.toHeadingRad, fromHalfIn: at.toHalfIn };
    const leg: Leg =
      isMore && last !== undefined
        ? { ...last, lengthIn: last.lengthIn + piece.lengthIn, ...endOf(piece, at, halfPerIn) }
        : { ...start, turnBefore, ...along(piece), ...endOf(piece, at, halfPerIn) };
    if (isMore) legs.pop();
    legs.push(leg);
    at = leg;
    turnBefore = null;
  }
  const lengthIn = legs.reduce((sumIn, leg) => sumIn + leg.lengthIn, 0);
  return { ok: true, legs, halfPerIn, lengthIn };
}

type Place = Pick<Leg, 'to' | 'toHeadingRad' | 'toHalfIn'>;
type Stretch = Exclude<StripPiece, { kind: 'turn' }>;

function along(piece: Stretch): Pick<Leg, 'lengthIn' | 'turnRad'> {
  return piece.kind === 'straight'
    ? { lengthIn: piece.lengthIn, turnRad: 0 }
    : { lengthIn: piece.radiusIn * Math.abs(piece.turnRad), turnRad: piece.turnRad };
}

function endOf(piece: Stretch, start: Place, halfPerIn: number): Place {
  if (piece.kind === 'straight') {
    return {
      to: stepFrom(start.to, start.toHeadingRad, piece.lengthIn),
      toHeadingRad: start.toHeadingRad,
      toHalfIn: start.toHalfIn + halfPerIn * piece.lengthIn,
    };
  }
  // The chord leaves at half the turn: 2 R sin(|turn| / 2), see `simpleCurve`.
  const chordIn = 2 * piece.radiusIn * Math.sin(Math.abs(piece.turnRad) / 2);
  return {
    to: stepFrom(start.to, start.toHeadingRad + piece.turnRad / 2, chordIn),
    toHeadingRad: start.toHeadingRad + piece.turnRad,
    toHalfIn: start.toHalfIn,
  };
}

function mustBePiece(piece: StripPiece, number: number): void {
  if (piece.kind === 'straight') return mustBeLength(`lengthIn of piece ${number}`, piece.lengthIn);
  if (piece.kind === 'arc') mustBeLength(`radiusIn of piece ${number}`, piece.radiusIn);
  const mostRad = piece.kind === 'arc' ? 2 * Math.PI : Math.PI;
  if (!(Math.abs(piece.turnRad) > 0 && Math.abs(piece.turnRad) < mostRad)) {
    throw new RangeError(
      `turnRad of piece ${number} must be other than 0 and below ${mostRad}, got ${piece.turnRad}`,
    );
  }
}

function mustBeLength(name: string, lengthIn: number): void {
  if (!(lengthIn > 0 && lengthIn < Infinity)) {
    throw new RangeError(`${name} must be a length above 0, got ${lengthIn}`);
  }
}
