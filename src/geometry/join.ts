import { reverseRing } from './build.ts';
import { type Facing, nearestFacing, placeOn, unitOf } from './facing.ts';
import { ringAreaSqIn } from './measure.ts';
import { distanceIn, type EdgeKind, edgesOf, type Ring, type Vertex, vertexAt } from './outline.ts';
import { type Joined, tidied } from './tidy.ts';

export type JoinResult =
  | {
      readonly ok: true;
      readonly ring: Ring;
      /** The gap or lap that was closed [in], 0 or more. */
      readonly missIn: number;
      /** Of the main ring, from 1. */
      readonly edge: number;
    }
  /** The nearest miss of two edges that face each other; null if none do. */
  | { readonly ok: false; readonly missIn: number | null };

/**
 * Joins a piece to a ring along a straight edge they share wholly or in part, as a widening of a walk.
 *
 * @param main      Keeps its place, its direction, and its corner 1 unless that is joined away.
 * @param piece     Runs either way; moved square to the edge, and turned by a hair where it is not
 *                  quite parallel, until the two edges lie on each other.
 * @param mostGapIn Greatest gap or lap closed so [in], 0 or more.
 * @returns One ring around both, arcs kept, without the shared stretch; edges keep their kinds. Straight
 *          edges of the piece and the ring that lie on each other beside the shared one, as in a
 *          notch, are left out too; a gap or lap there stays.
 * @throws {RangeError} If `mostGapIn` is not a length of 0 or more.
 */
export function joinAlongEdge(main: Ring, piece: Ring, mostGapIn: number): JoinResult {
  if (!(mostGapIn >= 0 && mostGapIn < Infinity)) {
    throw new RangeError(`mostGapIn must be a length of 0 or more, got ${mostGapIn}`);
  }
  const runsAlike = ringAreaSqIn(main) > 0 === ringAreaSqIn(piece) > 0;
  const beside = runsAlike ? piece : reverseRing(piece);
  const facing = nearestFacing(edgesOf(main), edgesOf(beside));
  // The noise of turning and moving the piece is not a gap.
  if (facing === null || facing.missIn > mostGapIn + 1e-9) {
    return { ok: false, missIn: facing?.missIn ?? null };
  }
  const { edge, other, missIn } = facing;
  const closed = broughtTo(facing, beside);
  const ring = tidied(around(main, edge.number - 1, closed, other.number - 1));
  return { ok: true, ring, missIn, edge: edge.number };
}

/** The piece turned about the middle of the shared stretch, then moved onto the edge. */
function broughtTo(facing: Facing, piece: Ring): Ring {
  const { edge, fromIn, toIn, gapsIn, turnRad } = facing;
  const along = unitOf(edge.from, edge.to, distanceIn(edge.from, edge.to));
  const middleIn = (fromIn + toIn) / 2;
  const gapIn = (gapsIn[0] + gapsIn[1]) / 2;
  const target = {
    xIn: edge.from.xIn + along.xIn * middleIn,
    yIn: edge.from.yIn + along.yIn * middleIn,
  };
  const about = { xIn: target.xIn + along.yIn * gapIn, yIn: target.yIn - along.xIn * gapIn };
  const cosine = Math.cos(turnRad);
  const sine = Math.sin(turnRad);
  return piece.map((vertex) => {
    const xIn = vertex.xIn - about.xIn;
    const yIn = vertex.yIn - about.yIn;
    return {
      ...vertex,
      xIn: target.xIn + xIn * cosine - yIn * sine,
      yIn: target.yIn + xIn * sine + yIn * cosine,
    };
  });
}

/**
 * Around both: the main ring to the start of its edge, on to the end of the piece's edge, around the
 * piece to its start, back to the main ring. What one edge has more than the other keeps its kind.
 */
function around(main: Ring, mainIndex: number, piece: Ring, pieceIndex: number): Joined[] {
  const start = vertexAt(main, mainIndex);
  const end = vertexAt(main, mainIndex + 1);
  const lengthIn = distanceIn(start, end);
  const along = unitOf(start, end, lengthIn);
  const alongIn = (vertex: Vertex) => placeOn(start, along, vertex).alongIn;
  const pieceEdge = vertexAt(piece, pieceIndex);
  const pieceEnd = vertexAt(piece, pieceIndex + 1);

  const startEdge = alongIn(pieceEnd) > 0 ? start.edge : pieceEdge.edge;
  const endEdge = alongIn(pieceEdge) < lengthIn ? start.edge : pieceEdge.edge;
  const mainParts = partsOf(main, mainIndex, startEdge);
  const pieceParts = partsOf(piece, pieceIndex, endEdge);
  return [
    ...mainParts.slice(0, mainIndex + 1),
    ...pieceParts.slice(pieceIndex + 1),
    ...pieceParts.slice(0, pieceIndex + 1),
    ...mainParts.slice(mainIndex + 1),
  ];
}

/** The vertices of a ring, the ends of the shared edge as joints, with what is left of it of a kind. */
function partsOf(ring: Ring, index: number, kind: EdgeKind): Joined[] {
  return ring.map((vertex, place) => ({
    vertex: place === index ? { ...vertex, edge: kind } : vertex,
    isJoint: place === index || place === (index + 1) % ring.length,
  }));
}
