import { type Outline, type Surface, surfaceThrough } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import type { Slab } from '../job.ts';
import { isOnSlab } from '../levels/index.ts';
import type { StringCorner } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import { breaklinesOf, distinctPoints, type GradePoint, linesAmong } from './points.ts';

/** The new surface of a slab on the level plan, and the points it runs through. */
export type SlabSurface = {
  readonly slab: Slab;
  readonly outline: Outline;
  readonly points: readonly GradePoint[];
  readonly surface: Surface;
};

/**
 * The new surface of each slab, through the fixed and the finish points on it.
 *
 * A slab with fewer than three such points, or with all of them in a line, has none. That is a problem
 * where one of them is a finish height that serves no other slab: it was chosen for this one.
 */
export function slabSurfaces(made: {
  readonly slabs: readonly Slab[];
  readonly plans: Readonly<Record<string, Outline>>;
  /** Sharp ones, on the plan. */
  readonly corners: Readonly<Record<string, readonly StringCorner[]>>;
  readonly points: readonly GradePoint[];
  /** Some of the points, in lines that a surface may bend at. */
  readonly lines: readonly (readonly GradePoint[])[];
}): { readonly surfaces: readonly SlabSurface[]; readonly problems: readonly CoreProblem[] } {
  const each = made.slabs.map((slab) => {
    const outline = thingNamed(made.plans, slab.id, 'slab');
    const corners = thingNamed(made.corners, slab.id, 'slab');
    const { points, problems } = distinctPoints(
      made.points.filter((point) => isOnSlab(outline, corners, point)),
    );
    const surface = surfaceThrough(points, [
      ...breaklinesOf(outline, points),
      ...linesAmong(made.lines, points),
    ]);
    return { slab, outline, points, surface, problems };
  });
  const surfaces = each.flatMap(({ surface, slab, outline, points }) =>
    surface === null ? [] : [{ slab, outline, points, surface }],
  );
  const served = new Set(surfaces.flatMap(({ points }) => points.map(({ point }) => point.id)));
  const short = each.flatMap(({ slab, points, surface }): CoreProblem[] => {
    const forThis = points.filter(({ point }) => point.kind === 'finish' && !served.has(point.id));
    if (surface !== null || forThis.length === 0) return [];
    const known = points.map(({ point }) => `"${point.label}"`).join(', ');
    const parts = { slab: slab.label, known };
    return [{ code: 'surface-short-of-points', path: `build.slabs.${slab.id}`, parts }];
  });
  return { surfaces, problems: [...each.flatMap(({ problems }) => problems), ...short] };
}
