import {
  arcOf,
  boundsOf,
  containsPoint,
  type Edge,
  edgeLengthIn,
  edgesOf,
  labelPointOf,
  type Outline,
  type Point,
  pointOnArc,
} from '../../geometry/index.ts';
import type { StringCorner } from '../outline/index.ts';

/** A crew wants so many depths of a slab at least: common practice, no source. */
const LEAST_PLACES = 5;

/**
 * Where on a slab depths are told: its sharp corners, its middle, and where these are few the halves of its
 * longest edges, `edge-2`.
 */
export function placesOf(
  outline: Outline,
  corners: readonly StringCorner[],
): Readonly<Record<string, Point>> {
  const few = Math.max(0, LEAST_PLACES - corners.length - 1);
  const longestFirst = outline.rings
    .slice(0, 1)
    .flatMap(edgesOf)
    .toSorted((one, other) => edgeLengthIn(other) - edgeLengthIn(one));
  return {
    ...Object.fromEntries(corners.map(({ number, at }) => [`corner-${number}`, at])),
    ...Object.fromEntries(longestFirst.slice(0, few).map((edge) => [`edge-${edge.number}`, halfOf(edge)])),
    middle: middleOf(outline),
  };
}

function halfOf({ from, to }: Edge): Point {
  if (from.bulge !== 0) return pointOnArc(arcOf(from, to), 1 / 2);
  return { xIn: (from.xIn + to.xIn) / 2, yIn: (from.yIn + to.yIn) / 2 };
}

/** Halfway along and across, or as near to that as there is room. */
function middleOf(outline: Outline): Point {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(outline);
  const middle = { xIn: (minXIn + maxXIn) / 2, yIn: (minYIn + maxYIn) / 2 };
  if (containsPoint(outline, middle)) return middle;
  const { xIn, yIn } = labelPointOf(outline);
  return { xIn, yIn };
}
