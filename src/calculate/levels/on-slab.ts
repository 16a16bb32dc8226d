import {
  containsPoint,
  distanceIn,
  distanceToEdgeIn,
  type Outline,
  type Point,
} from '../../geometry/index.ts';
import type { StringCorner } from '../outline/index.ts';

/** What a point may lie beside an edge or a corner and still be on it [in]: how well a plan is taped. */
const ON_EDGE_IN = 1;

/** Whether a point lies on a slab: within it, at its edge, or at a sharp corner that is rounded later. */
export function isOnSlab(outline: Outline, corners: readonly StringCorner[], at: Point): boolean {
  return (
    containsPoint(outline, at) ||
    distanceToEdgeIn(outline, at) <= ON_EDGE_IN ||
    corners.some((corner) => distanceIn(corner.at, at) <= ON_EDGE_IN)
  );
}
