import { bulgeFromRise } from './arc.ts';
import { ringAreaSqIn } from './measure.ts';
import { distanceIn, type Edge, edgesOf, type Point, type Ring } from './outline.ts';
import { turnBetweenRad } from './tangents.ts';

/** How one edge is bent instead of running straight. */
export type Bend =
  | { readonly kind: 'rise'; readonly riseIn: number; readonly bends: 'out' | 'in' }
  | { readonly kind: 'radius'; readonly radiusIn: number; readonly bends: 'out' | 'in' }
  /** By a third point, beside the two ends of the edge. */
  | { readonly kind: 'through'; readonly at: Point };

export type BendEdgesResult =
  | { readonly ok: true; readonly ring: Ring }
  | {
      readonly ok: false;
      readonly edge: number;
      readonly reason: 'radius-too-small';
      /** Half the chord. */
      readonly leastRadiusIn: number;
    }
  | {
      readonly ok: false;
      readonly edge: number;
      /** `not-straight`: the edge is an arc already. */
      readonly reason: 'point-on-line' | 'point-at-end' | 'not-straight';
      readonly leastRadiusIn: null;
    };

/** Nearer than this to the line or to an end of the edge, a point says nothing about an arc. */
const AT_IN = 1e-6;

/**
 * Makes arcs of straight edges; the corners stay where they are.
 *
 * @param ring  Any ring with an area; `out` bends away from its inside, `in` towards it.
 * @param bends By edge number, from 1; rise and radius above 0.
 * @returns The bent ring; or, as a value, the first edge that cannot be bent so.
 * @throws {RangeError} If an edge number is not in the ring, a length not above 0, a point not finite,
 *                      or the ring without area.
 *
 * By rise h: bulge = 2 h / c, c the chord. By radius R: the lesser of the two arcs,
 * bulge = (c/2) / (R + sqrt(R² - c²/4)), from tan(t/4) with sin(t/2) = c / (2 R). Through a point: the
 * line through it turns there by half the sweep, so bulge = tan(turn / 2); the inscribed angle, Euclid III.20.
 */
export function bendEdges(ring: Ring, bends: ReadonlyMap<number, Bend>): BendEdgesResult {
  const ringTurn = Math.sign(ringAreaSqIn(ring));
  if (ringTurn === 0) throw new RangeError('a ring without area has no inside to bend away from');
  for (const [edge, bend] of bends) checkBend(ring, edge, bend);

  const bulges = new Map<number, number>();
  for (const edge of edgesOf(ring)) {
    const bend = bends.get(edge.number);
    if (bend === undefined) continue;
    if (edge.from.bulge !== 0) return failed(edge, 'not-straight');
    const bent = bulgeOf(bend, edge);
    if (typeof bent !== 'number') return bent;
    const outwards = bend.kind === 'through' ? 1 : ringTurn * (bend.bends === 'out' ? 1 : -1);
    bulges.set(edge.number, bent * outwards);
  }
  return {
    ok: true,
    ring: ring.map((vertex, index) => ({ ...vertex, bulge: bulges.get(index + 1) ?? vertex.bulge })),
  };
}

/** Bulge of the bent edge: its size by rise or radius, with its sign through a point. */
function bulgeOf(bend: Bend, edge: Edge): number | Extract<BendEdgesResult, { ok: false }> {
  const chordIn = distanceIn(edge.from, edge.to);
  switch (bend.kind) {
    case 'rise':
      return bulgeFromRise({ chordIn, riseIn: bend.riseIn });
    case 'radius': {
      const leastRadiusIn = chordIn / 2;
      // The noise of a radius that is just half the chord is not a radius too small.
      if (bend.radiusIn < leastRadiusIn * (1 - 1e-12)) {
        return { ok: false, edge: edge.number, reason: 'radius-too-small', leastRadiusIn };
      }
      const toCentreIn = Math.sqrt(Math.max(0, bend.radiusIn ** 2 - leastRadiusIn ** 2));
      return leastRadiusIn / (bend.radiusIn + toCentreIn);
    }
    case 'through': {
      const nearestEndIn = Math.min(distanceIn(edge.from, bend.at), distanceIn(edge.to, bend.at));
      if (nearestEndIn < AT_IN) return failed(edge, 'point-at-end');
      const turnRad = turnBetweenRad(edge.from, bend.at, edge.to);
      const farthestEndIn = Math.max(distanceIn(edge.from, bend.at), distanceIn(edge.to, bend.at));
      const offLineIn = (nearestEndIn * farthestEndIn * Math.abs(Math.sin(turnRad))) / chordIn;
      if (!(offLineIn >= AT_IN)) return failed(edge, 'point-on-line');
      return Math.tan(turnRad / 2);
    }
  }
}

function failed(
  edge: Edge,
  reason: 'point-on-line' | 'point-at-end' | 'not-straight',
): BendEdgesResult & { ok: false } {
  return { ok: false, edge: edge.number, reason, leastRadiusIn: null };
}

function checkBend(ring: Ring, edge: number, bend: Bend): void {
  if (!(Number.isInteger(edge) && edge >= 1 && edge <= ring.length)) {
    throw new RangeError(`edge must be 1 to ${ring.length}, got ${edge}`);
  }
  if (bend.kind === 'through') {
    if (Number.isFinite(bend.at.xIn) && Number.isFinite(bend.at.yIn)) return;
    throw new RangeError(`the point of edge ${edge} must be finite, got ${bend.at.xIn}, ${bend.at.yIn}`);
  }
  const lengthIn = bend.kind === 'rise' ? bend.riseIn : bend.radiusIn;
  if (!(lengthIn > 0 && lengthIn < Infinity)) {
    throw new RangeError(`${bend.kind} of edge ${edge} must be a length above 0, got ${lengthIn}`);
  }
}
