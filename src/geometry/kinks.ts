import { arcOf } from './arc.ts';
import { distanceIn, type Ring, type Vertex, vertexAt } from './outline.ts';
import { turnAtRad } from './tangents.ts';

/** How an arc meets the edge beside it. */
export type Kink = {
  /** Number of the vertex where they meet, from 1. */
  readonly vertex: number;
  /** Angle between the tangents, 0 to pi; 0 where one runs smoothly into the other. */
  readonly kinkRad: number;
  /**
   * Between two arcs: how far their centres are from where a smooth joint has them, that is from
   * |R1 - R2| apart where both turn the same way and R1 + R2 where they do not; above 0 too far
   * apart, below 0 too near. Null where one of the two edges is straight.
   */
  readonly centreGapIn: number | null;
};

/**
 * The joints of a ring at which an arc starts or ends, in the order of the vertices.
 *
 * A line meets an arc smoothly when the radius at the joint is square to it, two arcs when the joint
 * and both centres lie on one line. Source: J. V. Mahun, "Open Access Surveying", COGO ch. F sec. 3 (seen).
 */
export function kinksOf(ring: Ring): readonly Kink[] {
  return ring.flatMap((here, index): Kink[] => {
    const before = vertexAt(ring, index - 1);
    if (before.bulge === 0 && here.bulge === 0) return [];
    return [
      {
        vertex: index + 1,
        kinkRad: Math.abs(turnAtRad(ring, index)),
        centreGapIn: centreGapIn(before, here, vertexAt(ring, index + 1)),
      },
    ];
  });
}

function centreGapIn(before: Vertex, here: Vertex, after: Vertex): number | null {
  if (before.bulge === 0 || here.bulge === 0) return null;
  const first = arcOf(before, here);
  const second = arcOf(here, after);
  const turnsOn = before.bulge * here.bulge > 0;
  const smoothIn = turnsOn ? Math.abs(first.radiusIn - second.radiusIn) : first.radiusIn + second.radiusIn;
  return distanceIn(first.centre, second.centre) - smoothIn;
}
