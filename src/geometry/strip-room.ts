import { type SideEdge, setbackOn, straightEdgesOf } from './strip-side.ts';
import { pinchingSetbackIn, turnLayout } from './strip-turn.ts';
import type { Walk, WalkTurn } from './strip-walk.ts';

export type StripRoomProblem = {
  readonly ok: false;
  readonly piece: number;
  readonly haveIn: number;
} & (
  | { readonly reason: 'straight-too-short'; readonly leastIn: number }
  /** `haveIn` and `mostIn` are the setback as given; 0 where none of this kind fits. */
  | { readonly reason: 'setback-too-long'; readonly mostIn: number }
);

/**
 * The first straight too short for the sharp corners of its turns, or else the first turn whose setback
 * does not fit on an edge beside it or leaves no width; null when all fit.
 *
 * Where the width changes, a longer straight would also change the lean, so `leastIn` is near, not exact.
 */
export function stripRoomProblem(walk: Walk): StripRoomProblem | null {
  const edges = [...straightEdgesOf(walk, -1), ...straightEdgesOf(walk, 1)];
  const [shortest] = edges
    .filter(({ lengthIn }) => !(lengthIn > 1e-9))
    .sort((one, other) => one.leg.piece - other.leg.piece || one.lengthIn - other.lengthIn);
  if (shortest !== undefined) {
    const { piece, lengthIn: haveIn } = shortest.leg;
    const leastIn = haveIn - shortest.lengthIn * Math.cos(Math.atan(walk.halfPerIn));
    return { ok: false, piece, reason: 'straight-too-short', haveIn, leastIn };
  }

  for (const { turnBefore } of walk.legs) {
    if (turnBefore === null || turnBefore.rounding === null) continue;
    const { setbackIn: haveIn, how } = turnBefore.rounding;
    // On the very corner nothing would be left of the walk, so that end is kept out by a hair.
    const pinchIn = how === 'outer' ? pinchingSetbackIn(turnBefore) * (1 - 1e-9) : Infinity;
    const mostIn = Math.max(0, Math.min(pinchIn, ...edges.map((edge) => roomOn(edge, turnBefore))));
    if (haveIn > mostIn * (1 + 1e-12)) {
      return { ok: false, piece: turnBefore.piece, reason: 'setback-too-long', haveIn, mostIn };
    }
  }
  return null;
}

/** Longest setback, as given for a turn, that an edge has room for beside what its other end takes [in]. */
function roomOn(edge: SideEdge, turn: WalkTurn): number {
  const { side, turnAfter } = edge;
  const { turnBefore } = edge.leg;
  if (turn !== turnAfter && turn !== turnBefore) return Infinity;
  const takenBy = (at: WalkTurn | null) => (at === null ? 0 : setbackOn(side, at, turnLayout(at)));
  const ownIn = takenBy(turn);
  if (ownIn === 0 || turn.rounding === null) return Infinity;
  // A parallel outer arc starts further back than the setback given, by the same length whatever that is.
  const furtherBackIn = ownIn - turn.rounding.setbackIn;
  return edge.lengthIn - takenBy(turn === turnAfter ? turnBefore : turnAfter) - furtherBackIn;
}
