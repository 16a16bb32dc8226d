import type { EdgeKind, Ring, Vertex } from './outline.ts';
import type { StripPiece } from './strip-pieces.ts';
import { type StripRoomProblem, stripRoomProblem } from './strip-room.ts';
import { sideOf } from './strip-side.ts';
import { type TurnLayout, turnLayout } from './strip-turn.ts';
import { type WalkProblem, walkLine } from './strip-walk.ts';

export type StripEdges = {
  readonly start: EdgeKind;
  readonly end: EdgeKind;
  readonly left: EdgeKind;
  readonly right: EdgeKind;
};

export type StripTurn = TurnLayout & {
  /** Among the turns, from 1. */
  readonly number: number;
  /** Among the pieces of the line, from 1. */
  readonly piece: number;
  readonly turnRad: number;
  /** Of the walk at the turn, square to its line. */
  readonly widthIn: number;
};

export type StripProblem = WalkProblem | StripRoomProblem;

export type StripResult =
  | {
      readonly ok: true;
      readonly ring: Ring;
      /** Of the centre line; at a turn to its sharp corner and on. */
      readonly lengthIn: number;
      readonly turns: readonly StripTurn[];
    }
  | StripProblem;

/**
 * A walk: a centre line of straights, arcs and sudden turns, with half the width to either side.
 *
 * @param strip.widthIn    At the start, square to the line [in], above 0.
 * @param strip.endWidthIn At the end; the width changes evenly along the straights and stays along arcs.
 *                         Null keeps it.
 * @param strip.line       Straights longer than 0; arcs tangent to what is before them, radius of the centre
 *                         line above 0, turning less than a full turn; turns by less than half a turn. Left
 *                         is positive, and no turn or arc is 0.
 * @param strip.edges      What each side runs along.
 * @returns The ring, anticlockwise: right side forwards, end, left side back, start; the line starts at
 *          the origin along x. Or, as a value, the first piece that cannot be built, what it has and what
 *          would work: `leastIn` is to be exceeded, `mostIn` may be reached. A walk that runs into itself is
 *          for the caller to find (`selfCrossing`). Where the width changes, edges of a straight meet those
 *          of an arc at a slight angle: the lean of the edge.
 * @throws {RangeError} If there is no piece, or a value is outside its range or not a finite number.
 *
 * One width, no sharp turns: area = width times length of the centre line, the second theorem of Pappus.
 */
export function stripRing(strip: {
  readonly widthIn: number;
  readonly endWidthIn: number | null;
  readonly line: readonly StripPiece[];
  readonly edges: StripEdges;
}): StripResult {
  const walk = walkLine(strip);
  if (!walk.ok) return walk;
  const problem = stripRoomProblem(walk);
  if (problem !== null) return problem;

  const right = sideOf(walk, -1);
  const left = sideOf(walk, 1).reverse();
  const ring: Vertex[] = [
    ...right.map((point, index) => ({
      ...point,
      edge: index === right.length - 1 ? strip.edges.end : strip.edges.right,
    })),
    ...left.map((point, index) => ({
      ...point,
      // Walked backwards the bulge belongs to the point after, and arcs turn the other way; + 0 turns -0 into 0.
      bulge: -(left[index + 1]?.bulge ?? 0) + 0,
      edge: index === left.length - 1 ? strip.edges.start : strip.edges.left,
    })),
  ];
  const turns = walk.legs
    .flatMap(({ turnBefore }) => turnBefore ?? [])
    .map((turn, index) => ({
      number: index + 1,
      piece: turn.piece,
      turnRad: turn.turnRad,
      widthIn: turn.widthIn,
      ...turnLayout(turn),
    }));
  return { ok: true, ring, lengthIn: walk.lengthIn, turns };
}
