import { roomAt } from './corner-room.ts';
import { ringAreaSqIn } from './measure.ts';
import { distanceIn, type Ring, type Vertex, vertexAt } from './outline.ts';
import { type RoundedCorner, roundedCorner } from './rounded-corner.ts';
import { givenOf, layOutRounding, type Rounding, type RoundingLayout } from './rounding.ts';
import { turnAtRad } from './tangents.ts';

export type CornerDoesNotFit = {
  readonly ok: false;
  readonly corner: number;
  /**
   * `no-room`: the setback is longer than what is left of the edge; `not-a-corner`: the edges run
   * straight on or fold back; `beside-arc`: one of them is not straight; `first-turn-too-large`: the
   * first of two arcs leaves nothing of the corner to the second.
   */
  readonly reason: 'no-room' | 'not-a-corner' | 'beside-arc' | 'first-turn-too-large';
  /** Change of direction there, always positive. */
  readonly deflectionRad: number;
  /**
   * Setback wanted on the edge where it does not fit; where nothing can be rounded the first length
   * given; with a first turn too large the setback of the first arc if it took the whole corner.
   */
  readonly wantedIn: number;
  /** What is left on that edge after the setback at its other end; 0 where nothing can be rounded. */
  readonly availableIn: number;
  /** Radius of the largest single arc that fits between the neighbours as they are. */
  readonly mostRadiusIn: number;
};

export type RoundCornersResult =
  | { readonly ok: true; readonly ring: Ring; readonly corners: readonly RoundedCorner[] }
  | CornerDoesNotFit;

type Laid = { readonly turnRad: number; readonly layout: RoundingLayout };

/**
 * Rounds corners between straight edges, by one arc each or by two in a row.
 *
 * @param ring      Any ring; edges keep their kind, an arc takes that of its edges where both have one, else it is formed.
 * @param roundings By corner number, from 1; every length and angle above 0.
 * @returns The rounded ring and the layout of its arcs in the order of the corners; or, as a value, the
 *          first corner that does not fit on its edges.
 * @throws {RangeError} If a corner number is not in the ring or a length or angle is not above 0.
 *
 * See `layOutRounding` for the formulas, `RoundedCorner` for the layout.
 */
export function roundCorners(ring: Ring, roundings: ReadonlyMap<number, Rounding>): RoundCornersResult {
  const laid = layOutAll(ring, roundings);
  const setbackAt = (corner: number, side: 'setbackBeforeIn' | 'setbackAfterIn') =>
    laid.get(corner)?.layout[side] ?? 0;

  const ringTurn = Math.sign(ringAreaSqIn(ring));
  const rounded: Vertex[] = [];
  const corners: RoundedCorner[] = [];
  for (const [index, here] of ring.entries()) {
    const corner = index + 1;
    const rounding = roundings.get(corner);
    if (rounding === undefined) {
      rounded.push(here);
      continue;
    }
    const fit = laid.get(corner);
    const room = roomAt(ring, index, setbackAt);
    if (fit === undefined) return cannotRound(ring, index, rounding, room);
    const deflectionRad = Math.abs(fit.turnRad);
    const wants = [
      { wantedIn: fit.layout.setbackBeforeIn, availableIn: room.beforeIn },
      { wantedIn: fit.layout.setbackAfterIn, availableIn: room.afterIn },
    ].sort((one, other) => one.availableIn - one.wantedIn - (other.availableIn - other.wantedIn));
    const [worst] = wants;
    // The noise of a setback that uses an edge up to its end is not a lack of room.
    if (worst !== undefined && worst.wantedIn > worst.availableIn * (1 + 1e-12)) {
      const mostRadiusIn = Math.min(room.beforeIn, room.afterIn) / Math.tan(deflectionRad / 2);
      return { ok: false, corner, reason: 'no-room', deflectionRad, ...worst, mostRadiusIn };
    }
    const made = roundedCorner({ ring, index, ringTurn, ...fit });
    rounded.push(...made.vertices);
    corners.push(made.corner);
  }
  return { ok: true, ring: withoutEmptyEdges(rounded), corners };
}

/** The layout of each corner that can be rounded; the others are missing, and want nothing of their edges. */
function layOutAll(ring: Ring, roundings: ReadonlyMap<number, Rounding>): ReadonlyMap<number, Laid> {
  const laid = new Map<number, Laid>();
  for (const [corner, rounding] of roundings) {
    if (!(Number.isInteger(corner) && corner >= 1 && corner <= ring.length)) {
      throw new RangeError(`corner must be 1 to ${ring.length}, got ${corner}`);
    }
    for (const [name, value] of Object.entries(givenOf(rounding))) {
      if (!(value > 0 && value < Infinity)) {
        throw new RangeError(`${name} of corner ${corner} must be above 0, got ${value}`);
      }
    }
    if (whyNot(ring, corner - 1, rounding) !== null) continue;
    const turnRad = turnAtRad(ring, corner - 1);
    laid.set(corner, { turnRad, layout: layOutRounding(rounding, Math.abs(turnRad)) });
  }
  return laid;
}

function whyNot(ring: Ring, index: number, rounding: Rounding): CornerDoesNotFit['reason'] | null {
  if (vertexAt(ring, index - 1).bulge !== 0 || vertexAt(ring, index).bulge !== 0) return 'beside-arc';
  const deflectionRad = Math.abs(turnAtRad(ring, index));
  if (!(deflectionRad > 1e-9 && deflectionRad < Math.PI - 1e-9)) return 'not-a-corner';
  const leavesNothing = rounding.kind === 'two-arcs' && !(rounding.firstTurnRad < deflectionRad);
  return leavesNothing ? 'first-turn-too-large' : null;
}

function cannotRound(
  ring: Ring,
  index: number,
  rounding: Rounding,
  room: { readonly beforeIn: number; readonly afterIn: number },
): CornerDoesNotFit {
  const deflectionRad = Math.abs(turnAtRad(ring, index));
  const reason = whyNot(ring, index, rounding) ?? 'not-a-corner';
  const [firstGivenIn = 0] = Object.values(givenOf(rounding));
  const failure = { ok: false, corner: index + 1, reason, deflectionRad } as const;
  if (reason !== 'first-turn-too-large') {
    return { ...failure, wantedIn: firstGivenIn, availableIn: 0, mostRadiusIn: 0 };
  }
  const perRadius = Math.tan(deflectionRad / 2);
  const availableIn = Math.min(room.beforeIn, room.afterIn);
  return {
    ...failure,
    wantedIn: firstGivenIn * perRadius,
    availableIn,
    mostRadiusIn: availableIn / perRadius,
  };
}

/** Two setbacks that use an edge up leave it without length: drop it, the arcs meet. */
function withoutEmptyEdges(ring: Ring): Ring {
  return ring.filter((vertex, index) => {
    const next = vertexAt(ring, index + 1);
    return vertex.bulge !== 0 || distanceIn(vertex, next) > 1e-9;
  });
}
