import { distanceIn, edgesOf, nearestOnEdge, type Outline, type Point } from '../../geometry/index.ts';
import type { JointLine } from '../job.ts';
import { type Placing, placedPoint } from '../outline/index.ts';
import type { Piece } from './split-panels.ts';

/** How far into the slab a joint is said to run that starts square to an edge [in]; it runs on from there. */
const INTO_IN = 4;

/** The joints of a job where they lie on the surface. */
export function ownLines(
  lines: Readonly<Record<string, JointLine>>,
  laid: { readonly outline: Outline; readonly placing: Placing },
): readonly Piece[] {
  const { outline, placing } = laid;
  return Object.values(lines).map(({ from, to }) => {
    const start = placedPoint(from, placing);
    return to === null ? squareFrom(outline, start) : { from: start, to: placedPoint(to, placing) };
  });
}

/** From the nearest point of an edge, square to it and into the concrete. */
function squareFrom(outline: Outline, start: Point): Piece {
  const edges = outline.rings.flatMap((ring) => edgesOf(ring));
  const near = edges.map((edge) => ({ edge, ...nearestOnEdge(edge, start) }));
  const offsIn = near.map(({ point }) => distanceIn(point, start));
  const found = near[offsIn.indexOf(Math.min(...offsIn))];
  if (found === undefined) throw new RangeError('an outline has edges');
  const { point, alongRad } = found;
  // The concrete is on the left of every edge, holes run the other way.
  const inRad = alongRad + Math.PI / 2;
  return {
    from: point,
    to: { xIn: point.xIn + INTO_IN * Math.cos(inRad), yIn: point.yIn + INTO_IN * Math.sin(inRad) },
  };
}
