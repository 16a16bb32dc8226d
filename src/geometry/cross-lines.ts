import { orient } from './build.ts';
import { clipLineToOutline } from './clip.ts';
import { chordsOf } from './flatten.ts';
import { leftOf } from './half-plane.ts';
import { distanceIn, type Outline, type Point } from './outline.ts';

export type CrossLine = { readonly from: Point; readonly to: Point };

/** So far apart along an edge [in]. */
const STEP_IN = 24;
/** A chord lies that far inside of its arc at the most [in]. */
const OFF_ARC_IN = 1 / 4;
/** What is longer than this many times the usual width runs along, not across. */
const MOST_WIDTHS = 1.2;

/**
 * Lines square across a long shape, from one of its long edges to the other, every two feet along each.
 *
 * Square to every edge a line goes in as far as the shape reaches; the median of these lengths is its width,
 * since the long edges give the most, and what is much longer was square to an end. Common practice, no source.
 */
export function crossLines(outline: Outline): readonly CrossLine[] {
  const [ring = []] = orient(outline).rings;
  const all = chordsOf(ring).flatMap(({ from, to }) => {
    const lengthIn = distanceIn(from, to);
    const count = Math.max(1, Math.ceil(lengthIn / STEP_IN));
    return Array.from({ length: count }, (_, index) => lineIn(outline, { from, to }, (index + 0.5) / count));
  });
  const lines = all.filter((line) => line !== null);
  const widthsIn = lines.map(({ from, to }) => distanceIn(from, to)).toSorted((one, other) => one - other);
  const widthIn = widthsIn[Math.floor((widthsIn.length - 1) / 2)] ?? 0;
  return lines.filter(({ from, to }) => distanceIn(from, to) <= MOST_WIDTHS * widthIn);
}

/** From a point of an edge square to it as far as the shape reaches; null where it reaches nowhere. */
function lineIn(outline: Outline, edge: CrossLine, share: number): CrossLine | null {
  const { a, b } = leftOf(edge.from, edge.to);
  const from = {
    xIn: edge.from.xIn + share * (edge.to.xIn - edge.from.xIn),
    yIn: edge.from.yIn + share * (edge.to.yIn - edge.from.yIn),
  };
  const line = { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: from.xIn + a, toYIn: from.yIn + b };
  const stretch = clipLineToOutline(line, outline).find(
    ({ fromIn, toIn }) => Math.abs(fromIn) <= OFF_ARC_IN && toIn > OFF_ARC_IN,
  );
  if (stretch === undefined) return null;
  return { from, to: { xIn: from.xIn + stretch.toIn * a, yIn: from.yIn + stretch.toIn * b } };
}
