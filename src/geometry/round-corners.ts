import { radiusFromSetbackIn, type SimpleCurve, simpleCurve } from './curve.ts';
import { ringAreaSqIn } from './measure.ts';
import { crossSqIn, distanceIn, type Point, type Ring, type Vertex, vertexAt } from './outline.ts';

export type RoundedCorner = Pick<SimpleCurve, 'arcLengthIn' | 'chordIn' | 'riseIn' | 'externalIn'> & {
  /** 1 for the first vertex of the ring as it was before rounding. */
  readonly corner: number;
  readonly setbackIn: number;
  readonly radiusIn: number;
  /** Change of direction at the corner, always positive. */
  readonly deflectionRad: number;
  /** Area the ring loses [in²]; negative at a re-entrant corner, where rounding adds. */
  readonly areaLostSqIn: number;
};

export type RoundCornersResult =
  | { readonly ok: true; readonly ring: Ring; readonly corners: readonly RoundedCorner[] }
  | {
      readonly ok: false;
      readonly corner: number;
      /** What is left on the shorter edge after the setback at its other end; 0 beside an arc. */
      readonly availableIn: number;
      readonly wantedIn: number;
    };

/**
 * Rounds corners by equal setbacks along both straight edges.
 *
 * @param ring       Any ring; edges keep their kind, an arc takes the kind of the edge before it.
 * @param setbacksIn Setback by corner number, from 1 [in], each above 0.
 * @returns The rounded ring and the layout of each arc in the order of the corners; or, as a value, the
 *          first corner whose setback does not fit on its edges.
 * @throws {RangeError} If a corner number is not in the ring or a setback is not a length above 0.
 *
 * R = S / tan(d/2), d the deflection; area lost = R² (tan(d/2) - d/2). See `simpleCurve`.
 */
export function roundCorners(ring: Ring, setbacksIn: ReadonlyMap<number, number>): RoundCornersResult {
  for (const [corner, setbackIn] of setbacksIn) {
    if (!(Number.isInteger(corner) && corner >= 1 && corner <= ring.length)) {
      throw new RangeError(`corner must be 1 to ${ring.length}, got ${corner}`);
    }
    if (!(setbackIn > 0 && setbackIn < Infinity)) {
      throw new RangeError(`setback of corner ${corner} must be a length above 0, got ${setbackIn}`);
    }
  }

  const ringTurn = Math.sign(ringAreaSqIn(ring));
  const rounded: Vertex[] = [];
  const corners: RoundedCorner[] = [];
  for (const [index, here] of ring.entries()) {
    const corner = index + 1;
    const setbackIn = setbacksIn.get(corner);
    if (setbackIn === undefined) {
      rounded.push(here);
      continue;
    }
    const availableIn = availableAt(ring, index, setbacksIn);
    if (setbackIn > availableIn * (1 + 1e-12)) return { ok: false, corner, availableIn, wantedIn: setbackIn };

    const before = vertexAt(ring, index - 1);
    const after = vertexAt(ring, index + 1);
    const turnRad = turnAt(before, here, after);
    const deflectionRad = Math.abs(turnRad);
    const radiusIn = radiusFromSetbackIn({ setbackIn, deflectionRad });
    const curve = simpleCurve({ radiusIn, deflectionRad });
    rounded.push({ ...towards(here, before, setbackIn), bulge: Math.tan(turnRad / 4), edge: before.edge });
    rounded.push({ ...towards(here, after, setbackIn), bulge: 0, edge: here.edge });
    corners.push({
      corner,
      setbackIn,
      radiusIn,
      deflectionRad,
      arcLengthIn: curve.arcLengthIn,
      chordIn: curve.chordIn,
      riseIn: curve.riseIn,
      externalIn: curve.externalIn,
      areaLostSqIn: Math.sign(turnRad) * ringTurn * curve.cutOffSqIn,
    });
  }
  return { ok: true, ring: withoutEmptyEdges(rounded), corners };
}

/** Room for a setback at a corner [in]: 0 where an edge is curved, runs straight on, or folds back. */
function availableAt(ring: Ring, index: number, setbacksIn: ReadonlyMap<number, number>): number {
  const before = vertexAt(ring, index - 1);
  const here = vertexAt(ring, index);
  const after = vertexAt(ring, index + 1);
  if (before.bulge !== 0 || here.bulge !== 0) return 0;
  const deflectionRad = Math.abs(turnAt(before, here, after));
  if (!(deflectionRad > 1e-9 && deflectionRad < Math.PI - 1e-9)) return 0;

  const setbackAt = (corner: number) => setbacksIn.get(((corner + ring.length) % ring.length) + 1) ?? 0;
  const beforeIn = distanceIn(before, here) - setbackAt(index - 1);
  const afterIn = distanceIn(here, after) - setbackAt(index + 1);
  // A neighbour that wants more than the whole edge leaves nothing here; it is not owed a negative length.
  return Math.max(0, Math.min(beforeIn, afterIn));
}

/** Change of direction from one edge to the next [rad], -pi to pi, left positive. */
function turnAt(before: Point, here: Point, after: Point): number {
  const crossing = crossSqIn(before, here, after);
  const along =
    (here.xIn - before.xIn) * (after.xIn - here.xIn) + (here.yIn - before.yIn) * (after.yIn - here.yIn);
  return Math.atan2(crossing, along);
}

function towards(from: Point, to: Point, stepIn: number): Point {
  const share = stepIn / distanceIn(from, to);
  return { xIn: from.xIn + (to.xIn - from.xIn) * share, yIn: from.yIn + (to.yIn - from.yIn) * share };
}

/** Two setbacks that use an edge up leave it without length: drop it, the arcs meet. */
function withoutEmptyEdges(ring: Ring): Ring {
  return ring.filter((vertex, index) => {
    const next = vertexAt(ring, index + 1);
    return vertex.bulge !== 0 || distanceIn(vertex, next) > 1e-9;
  });
}
