import { type HalfPlane, sidesOf } from './half-plane.ts';
import { type Plane, planeHeightIn, planeOf, type Surface } from './surface.ts';

/** A convex part of the plan, by its sides, over which a surface is one plane. */
export type Cell = { readonly sides: readonly HalfPlane[]; readonly plane: Plane };

/** A surface as cells that fill the plan without overlap: its triangles, and what lies beyond its hull. */
export function cellsOf(surface: Surface): readonly Cell[] {
  const inside = surface.triangles.map((triangle) => ({ sides: sidesOf(triangle), triangle }));
  return [...inside, ...surface.beyond].map(({ sides, triangle }) => ({ sides, plane: planeOf(triangle) }));
}

/** How much higher one plane lies than another [in], as a linear form. */
export function higherBy(upper: Plane, lower: Plane): HalfPlane {
  return {
    at: upper.at,
    a: upper.climbX - lower.climbX,
    b: upper.climbY - lower.climbY,
    c: upper.at.heightIn - planeHeightIn(lower, upper.at),
  };
}
