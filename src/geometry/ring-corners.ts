import { edgeLengthIn } from './arc.ts';
import { type Outline, type Point, type Ring, vertexAt } from './outline.ts';
import { turnAtRad } from './tangents.ts';

/** Where two edges meet at an angle. */
export type RingCorner = {
  readonly at: Point;
  /** Of the ring in its outline, and of the vertex in the ring. */
  readonly ring: number;
  readonly index: number;
  /** Angle of the concrete there [rad]: below pi it sticks out, above pi it is re-entrant. */
  readonly insideRad: number;
  /** Direction in which the edge before arrives, and the edge after leaves [rad]. */
  readonly inRad: number;
  readonly outRad: number;
  /** Along the ring to the next corner [in]; the whole ring where there is no other. */
  readonly toNextIn: number;
};

/** Directions at a vertex of a ring and the angle between them on its inside, 0 to 2 pi [rad]. */
export function directionsAt(
  ring: Ring,
  index: number,
): { readonly inRad: number; readonly outRad: number; readonly insideRad: number } {
  const here = vertexAt(ring, index);
  const after = vertexAt(ring, index + 1);
  const outRad = Math.atan2(after.yIn - here.yIn, after.xIn - here.xIn) - 2 * Math.atan(here.bulge);
  const turnRad = turnAtRad(ring, index);
  // A ring that turns back on itself does so round a line that ends in the concrete.
  const insideRad = turnRad >= Math.PI - 1e-9 ? 2 * Math.PI : Math.PI - turnRad;
  return { inRad: outRad - turnRad, outRad, insideRad };
}

/**
 * The corners of an outline, holes included, in their order: where its direction changes by more than a hair.
 *
 * @param leastTurnRad What counts as a corner [rad].
 */
export function ringCorners(outline: Outline, leastTurnRad: number): readonly RingCorner[] {
  return outline.rings.flatMap((ring, ringIndex) => {
    const corners: Omit<RingCorner, 'toNextIn'>[] = [];
    const startsIn: number[] = [];
    let alongIn = 0;
    for (let index = 0; index < ring.length; index += 1) {
      const from = vertexAt(ring, index);
      const { inRad, outRad, insideRad } = directionsAt(ring, index);
      if (Math.abs(insideRad - Math.PI) > leastTurnRad) {
        const at = { xIn: from.xIn, yIn: from.yIn };
        corners.push({ at, ring: ringIndex, index, insideRad, inRad, outRad });
        startsIn.push(alongIn);
      }
      alongIn += edgeLengthIn({ from, to: vertexAt(ring, index + 1) });
    }
    return corners.map(({ at, ring: onRing, index, insideRad, inRad, outRad }, place) => {
      const toNextIn = (startsIn[place + 1] ?? alongIn + (startsIn[0] ?? 0)) - (startsIn[place] ?? 0);
      return { at, ring: onRing, index, insideRad, inRad, outRad, toNextIn };
    });
  });
}
