import {
  distanceIn,
  edgeLengthIn,
  edgesOf,
  type NumberedEdge,
  type Outline,
  type Point,
} from '../../geometry/index.ts';

/** The edges of a slab's rim, in the order of its ring, each with the number of the taped edge it is part of. */
type Rim = { readonly outline: Outline; readonly edges: readonly NumberedEdge[] };

/**
 * How much of a taped edge is left along a slab, between rounded corners and joined pieces [in].
 */
export function edgeLeftIn({ outline, edges }: Rim, edge: number): number {
  return edgesOf(outline.rings[0] ?? [])
    .filter((_, index) => edges[index]?.number === edge)
    .reduce((sum, one) => sum + edgeLengthIn(one), 0);
}

/** Nearer than this two edges lie on each other, and longer than this they run together [in]. */
const TOUCHING_IN = 1;

/** Whether two straight edges run along each other for more than a moment. */
export function runTogether(one: NumberedEdge, other: NumberedEdge): boolean {
  if (one.points.length !== 2 || other.points.length !== 2) return false;
  const [from, to] = one.points;
  if (from === undefined || to === undefined) return false;
  const lengthIn = distanceIn(from, to);
  const along = { xIn: (to.xIn - from.xIn) / lengthIn, yIn: (to.yIn - from.yIn) / lengthIn };
  const places = other.points.map(({ xIn, yIn }: Point) => {
    const [dxIn, dyIn] = [xIn - from.xIn, yIn - from.yIn];
    return {
      alongIn: dxIn * along.xIn + dyIn * along.yIn,
      offIn: Math.abs(dyIn * along.xIn - dxIn * along.yIn),
    };
  });
  const alongs = places.map(({ alongIn }) => alongIn);
  const sharedIn = Math.min(lengthIn, Math.max(...alongs)) - Math.max(0, Math.min(...alongs));
  return places.every(({ offIn }) => offIn < TOUCHING_IN) && sharedIn > TOUCHING_IN;
}
