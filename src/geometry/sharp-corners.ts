import { edgesOf, type Outline, type Point, vertexAt } from './outline.ts';
import { turnAtRad } from './tangents.ts';

/** A corner of an outline, its holes included. */
export type SharpCorner = {
  readonly at: Point;
  /** Above 0 at an outer corner, below 0 at one that points into the shape: a crack starts there. */
  readonly turnRad: number;
  /** Along the edge that starts there, anticlockwise from x. */
  readonly leavesRad: number;
  /** Away from both edges, into the shape, one long. */
  readonly inward: Point;
};

/**
 * The corners at which an outline turns by so much or more.
 *
 * @param outline Outer ring anticlockwise, holes clockwise.
 * @param leastTurnRad Smaller turns are no corners [rad], above 0.
 */
export function sharpCorners(outline: Outline, leastTurnRad: number): readonly SharpCorner[] {
  return outline.rings.flatMap((ring) =>
    edgesOf(ring).flatMap(({ from, to }, index): SharpCorner[] => {
      const turnRad = turnAtRad(ring, index);
      if (!(Math.abs(turnRad) >= leastTurnRad)) return [];
      const chordRad = Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn);
      const leavesRad = chordRad - 2 * Math.atan(vertexAt(ring, index).bulge);
      const inwardRad = leavesRad - turnRad / 2 + Math.PI / 2;
      return [
        {
          at: { xIn: from.xIn, yIn: from.yIn },
          turnRad,
          leavesRad,
          inward: { xIn: Math.cos(inwardRad), yIn: Math.sin(inwardRad) },
        },
      ];
    }),
  );
}
