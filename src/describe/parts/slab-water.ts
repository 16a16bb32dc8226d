import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Slab } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { labelPointOf, type Point } from '../../geometry/index.ts';
import { drawnFalls } from './drawn-falls.ts';

export type SlabWater = {
  readonly slope: number;
  readonly standsDeepIn: number;
  readonly atHouse: 'from-it' | 'to-it' | null;
};

/** How water runs on a slab by the surface through its heights; null where it has none. */
export function slabWater(slab: Slab, results: JobResults): SlabWater | null {
  const figures = results.grades.data.slabs[slab.id]?.figures;
  if (figures === undefined) return null;
  const isToHouse = figures['fall-to-house'] !== undefined;
  return {
    slope: num(figures.slope),
    standsDeepIn: num(figures['stands-deep']),
    atHouse: isToHouse ? 'to-it' : figures['fall-from-house'] === undefined ? null : 'from-it',
  };
}

/** Arrows where water runs: by the heights, else one as it is planned, else none. */
export function waterArrows(
  slab: Slab,
  results: JobResults,
): readonly { readonly at: Point; readonly towardsRad: number }[] {
  const graded = results.grades.data.slabs[slab.id];
  if (graded !== undefined) {
    return drawnFalls(graded.falls).map(({ at, towardsRad }) => ({ at, towardsRad }));
  }
  const { directionDeg } = slab.fall;
  if (directionDeg === null) return [];
  const { xIn, yIn } = labelPointOf(thingNamed(results.outline.data.plans.slabs, slab.id, 'slab'));
  return [{ at: { xIn, yIn }, towardsRad: ((90 - directionDeg) * Math.PI) / 180 }];
}
