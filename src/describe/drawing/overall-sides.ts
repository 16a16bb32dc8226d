import { boundsOf, chordsOf, type Edge, type Outline, type Point } from '../../geometry/index.ts';
import type { Measured } from './dimension-line.ts';
import { tapedEdges } from './taped-edges.ts';

/** How far two lengths may be apart and still be written once. */
const sameLengthIn = 0.01;

/**
 * Overall length and width, each at two sides to choose from; none where an edge is as long, or the
 * outline has so few sides that it needs none.
 */
export function overallSides(outline: Outline): readonly (readonly Measured[])[] {
  const [ring = []] = outline.rings;
  const edges = tapedEdges(ring);
  const isManySided = edges.length > 4 || (edges.length > 0 && edges.length < ring.length);
  if (!isManySided) return [];

  const { minXIn, minYIn, maxXIn, maxYIn } = boundsOf(outline);
  const at = (xIn: number, yIn: number): Point => ({ xIn, yIn });
  const points = chordsOf(ring).map(({ from }) => from);
  const leftmost = nearestTo('xIn', minXIn, points);
  const rightmost = nearestTo('xIn', maxXIn, points);
  const lowest = nearestTo('yIn', minYIn, points);
  const highest = nearestTo('yIn', maxYIn, points);
  const across: Measured[] = [
    { from: at(minXIn, minYIn), to: at(maxXIn, minYIn), feet: [leftmost.low, rightmost.low] },
    { from: at(maxXIn, maxYIn), to: at(minXIn, maxYIn), feet: [rightmost.high, leftmost.high] },
  ];
  const up: Measured[] = [
    { from: at(maxXIn, minYIn), to: at(maxXIn, maxYIn), feet: [lowest.high, highest.high] },
    { from: at(minXIn, maxYIn), to: at(minXIn, minYIn), feet: [highest.low, lowest.low] },
  ];
  return [
    ...(isAmong(edges, maxXIn - minXIn, 0) ? [] : [across]),
    ...(isAmong(edges, 0, maxYIn - minYIn) ? [] : [up]),
  ];
}

/** Of the points at a side of the bounds, the ones at its two ends, moved onto the side. */
function nearestTo(
  axis: keyof Point,
  sideIn: number,
  points: readonly Point[],
): { readonly low: Point; readonly high: Point } {
  const other = axis === 'xIn' ? 'yIn' : 'xIn';
  const offIn = (point: Point) => Math.abs(point[axis] - sideIn);
  // The chords of an arc miss its farthest point by a little.
  const leastIn = Math.min(...points.map(offIn));
  const placesIn = points
    .filter((point) => offIn(point) < leastIn + sameLengthIn)
    .map((point) => point[other]);
  const on = (placeIn: number): Point =>
    axis === 'xIn' ? { xIn: sideIn, yIn: placeIn } : { xIn: placeIn, yIn: sideIn };
  return { low: on(Math.min(...placesIn)), high: on(Math.max(...placesIn)) };
}

function isAmong(edges: readonly Edge[], alongXIn: number, alongYIn: number): boolean {
  return edges.some(
    ({ from, to }) =>
      Math.abs(Math.abs(to.xIn - from.xIn) - alongXIn) < sameLengthIn &&
      Math.abs(Math.abs(to.yIn - from.yIn) - alongYIn) < sameLengthIn,
  );
}
