import { crossSqIn, edgesOf, type Outline, type Point } from './outline.ts';
import { straightened } from './tessellate.ts';

/** Chords this near their arcs [in]. */
const OFF_ARC_IN = 0.01;

/**
 * The centroid of the area of an outline, holes left out.
 *
 * @throws {RangeError} If it has no area.
 *
 * x = sum((x_i + x_(i+1)) (x_i y_(i+1) - x_(i+1) y_i)) / (6 A), y likewise. Source: P. Bourke, "Calculating
 * the area and centroid of a polygon" (from memory); taken about the first corner, so that a shape far
 * from zero keeps its digits.
 */
export function centroidOf(outline: Outline): Point {
  const origin = outline.rings[0]?.[0];
  if (origin === undefined) throw new RangeError('an outline without vertices has no centroid');
  const sum = { twiceSqIn: 0, x: 0, y: 0 };
  for (const { from, to } of outline.rings.flatMap((ring) => edgesOf(straightened(ring, OFF_ARC_IN)))) {
    const cross = crossSqIn(origin, from, to);
    sum.twiceSqIn += cross;
    sum.x += (from.xIn + to.xIn - 2 * origin.xIn) * cross;
    sum.y += (from.yIn + to.yIn - 2 * origin.yIn) * cross;
  }
  if (!(Math.abs(sum.twiceSqIn) > 0)) throw new RangeError('an outline without area has no centroid');
  return {
    xIn: origin.xIn + sum.x / (3 * sum.twiceSqIn),
    yIn: origin.yIn + sum.y / (3 * sum.twiceSqIn),
  };
}
