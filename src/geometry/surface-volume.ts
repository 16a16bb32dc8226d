import { orient } from './build.ts';
import { type HalfPlane, keptIn, opposite, valueOf } from './half-plane.ts';
import { crossSqIn, type Outline, type Point, type Ring } from './outline.ts';
import type { Plane, Surface } from './surface.ts';
import { cellsOf, higherBy } from './surface-cells.ts';
import { straightened } from './tessellate.ts';

/** Chords this near their arcs [in], of the same area as the arcs. */
const OFF_ARC_IN = 1e-3;

export type VolumeBetween = {
  /** Where the upper surface lies above the lower one [in³]. */
  readonly aboveCuIn: number;
  /** Where it lies below it [in³]. */
  readonly belowCuIn: number;
};

/**
 * Volume between two surfaces over an outline: prisms over the parts where both are one plane, each split
 * along the line where they cut each other, so that what is above and what is below do not cancel.
 * Exact but for arcs, which count as chords of the same area.
 *
 * V = sum of A (d1 + d2 + d3) / 3 over triangles, with d the distances between the surfaces at the corners.
 * Source: definition of a truncated triangular prism.
 */
export function volumeBetween(
  surfaces: { readonly upper: Surface; readonly lower: Surface },
  outline: Outline,
): VolumeBetween {
  const rings = ringsOf(outline);
  const lowers = cellsOf(surfaces.lower);
  let aboveCuIn = 0;
  let belowCuIn = 0;
  for (const upper of cellsOf(surfaces.upper)) {
    for (const ring of rings) {
      const below = keptIn(ring, upper.sides);
      if (below.length === 0) continue;
      for (const lower of lowers) {
        const piece = keptIn(below, lower.sides);
        const apart = higherBy(upper.plane, lower.plane);
        aboveCuIn += prismsCuIn(keptIn(piece, [apart]), apart);
        belowCuIn += prismsCuIn(keptIn(piece, [opposite(apart)]), opposite(apart));
      }
    }
  }
  // A hole takes away what its outer ring gave: noise may be left below 0.
  return { aboveCuIn: Math.max(0, aboveCuIn), belowCuIn: Math.max(0, belowCuIn) };
}

/** Signed volume below a linear form over a ring: above 0 for an anticlockwise ring. */
function prismsCuIn([origin, ...rest]: readonly Point[], form: HalfPlane): number {
  if (origin === undefined) return 0;
  const atOriginIn = valueOf(form, origin);
  let sumCuIn = 0;
  for (const [index, from] of rest.entries()) {
    const to = rest[index + 1];
    if (to === undefined) break;
    sumCuIn += (crossSqIn(origin, from, to) / 6) * (atOriginIn + valueOf(form, from) + valueOf(form, to));
  }
  return sumCuIn;
}

/**
 * The parts of a surface within an outline: the plane of each, its area [in²] and its centre of area.
 *
 * @param sides Only what lies on the kept side of all of these.
 */
export function cellsWithin(
  surface: Surface,
  outline: Outline,
  sides: readonly HalfPlane[] = [],
): readonly { readonly plane: Plane; readonly areaSqIn: number; readonly middle: Point }[] {
  const rings = ringsOf(outline).map((ring) => keptIn(ring, sides));
  return cellsOf(surface).flatMap((cell) => {
    const { plane } = cell;
    const { areaSqIn, middle } = middleOf(rings.map((ring) => keptIn(ring, cell.sides)));
    return areaSqIn > LEAST_CELL_SQ_IN ? [{ plane, areaSqIn, middle }] : [];
  });
}

function ringsOf(outline: Outline): readonly Ring[] {
  return orient(outline).rings.map((ring) => straightened(ring, OFF_ARC_IN));
}

/** Less of a cell within an outline is noise of its edges [in²]. */
const LEAST_CELL_SQ_IN = 1;

/** Area and centre of area of rings, holes clockwise. */
function middleOf(pieces: readonly (readonly Point[])[]): { areaSqIn: number; middle: Point } {
  const at = pieces.flat()[0] ?? { xIn: 0, yIn: 0 };
  const moment = (a: number, b: number, c: number) =>
    pieces.reduce((sum, piece) => sum + prismsCuIn(piece, { at, a, b, c }), 0);
  const areaSqIn = moment(0, 0, 1);
  if (!(areaSqIn > 0)) return { areaSqIn, middle: at };
  return {
    areaSqIn,
    middle: { xIn: at.xIn + moment(1, 0, 0) / areaSqIn, yIn: at.yIn + moment(0, 1, 0) / areaSqIn },
  };
}
