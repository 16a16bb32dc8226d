import { nearestFacing, unitOf } from './facing.ts';
import { distanceIn, type Edge, edgesOf, type Outline } from './outline.ts';

/**
 * By how much two shapes miss at a joint they share.
 *
 * @param a Stays; both oriented, the outer ring anticlockwise.
 * @param b Is moved.
 * @returns The greatest gap or lap between the two straight edges of kind `joint` that face each other
 *          nearest [in], and the move of `b` square to them that brings them together; null if no two do.
 *          Where they are a hair off parallel, the move closes the nearer end and leaves no lap.
 */
export function jointMiss(
  a: Outline,
  b: Outline,
): { readonly missIn: number; readonly move: { readonly dxIn: number; readonly dyIn: number } } | null {
  const facing = nearestFacing(jointsOf(a), jointsOf(b));
  if (facing === null) return null;
  const { edge, gapsIn, missIn } = facing;
  const along = unitOf(edge.from, edge.to, distanceIn(edge.from, edge.to));
  const gapIn = Math.min(...gapsIn);
  // Back across the gap, which is measured to the right of the edge; adding 0 turns -0 into 0.
  return { missIn, move: { dxIn: -gapIn * along.yIn + 0, dyIn: gapIn * along.xIn + 0 } };
}

function jointsOf(outline: Outline): readonly Edge[] {
  return outline.rings.flatMap(edgesOf).filter((edge) => edge.from.edge === 'joint');
}
