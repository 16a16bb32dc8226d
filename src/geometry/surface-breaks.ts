import { containsPoint } from './measure.ts';
import { distanceIn, type Outline, type Point } from './outline.ts';
import { climbTowards, type HeightPoint, planeOf, type Surface, type Triangle } from './surface.ts';

/**
 * How much a surface bends at most where two of its planes meet within an outline: the difference of their
 * climbs square to the line between them [rise over run], 0 on one plane.
 *
 * Algebraic difference of two grades, g2 - g1. Source: definition.
 */
export function largestBreak(surface: Surface, outline: Outline): number {
  const { triangles } = surface;
  const breaks = triangles.flatMap((one, index) =>
    triangles.slice(index + 1).flatMap((other) => {
      const shared = one.filter((point) => other.includes(point));
      const [from, to] = shared;
      if (shared.length !== 2 || from === undefined || to === undefined) return [];
      return runsWithin(from, to, outline) ? [breakAt(from, to, [one, other])] : [];
    }),
  );
  return Math.max(0, ...breaks);
}

function breakAt(from: HeightPoint, to: HeightPoint, [one, other]: readonly [Triangle, Triangle]): number {
  const squareRad = Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn) + Math.PI / 2;
  return Math.abs(climbTowards(planeOf(one), squareRad) - climbTowards(planeOf(other), squareRad));
}

/** Looked at every tenth of it: an edge that only runs along the outline divides nothing. */
function runsWithin(from: Point, to: Point, outline: Outline): boolean {
  if (!(distanceIn(from, to) > 0)) return false;
  return Array.from({ length: 9 }, (_, index) => (index + 1) / 10).some((share) =>
    containsPoint(outline, {
      xIn: from.xIn + share * (to.xIn - from.xIn),
      yIn: from.yIn + share * (to.yIn - from.yIn),
    }),
  );
}
