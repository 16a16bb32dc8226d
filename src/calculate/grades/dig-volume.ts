import { lowered, volumeBetween } from '../../geometry/index.ts';
import { type Figure, figure, given } from '../figure.ts';
import type { OldPart } from './old-ground.ts';
import { heightsOf } from './place-figures.ts';
import type { SlabSurface } from './surfaces.ts';

const CU_IN_PER_CU_FT = 1728;

export type DigVolumeFigures = {
  /** In place [cu ft]. */
  readonly 'dig-volume': Figure;
  /** Compacted [cu ft]. */
  readonly 'fill-volume': Figure;
};

/**
 * What is dug and filled under a slab between what is left of the ground and the underside of its base,
 * over the area of the slab itself, on the level plan.
 */
export function digVolumes(
  { slab, surface, points }: SlabSurface,
  parts: readonly OldPart[],
): DigVolumeFigures {
  const bottom = lowered(surface, slab.thicknessIn + slab.baseIn);
  let digCuIn = 0;
  let fillCuIn = 0;
  for (const { left, pieces } of parts) {
    for (const piece of pieces) {
      const { aboveCuIn, belowCuIn } = volumeBetween({ upper: left, lower: bottom }, piece);
      digCuIn += aboveCuIn;
      fillCuIn += belowCuIn;
    }
  }
  const inputs = {
    ...heightsOf([...points, ...parts.flatMap((part) => part.points)]),
    thicknessIn: given(`build.slabs.${slab.id}.thickness`, slab.thicknessIn, 'in'),
    baseIn: given(`build.slabs.${slab.id}.base`, slab.baseIn, 'in'),
  };
  const volume = (valueCuIn: number, what: string) =>
    figure({
      value: valueCuIn / CU_IN_PER_CU_FT,
      unit: 'cu ft',
      decimals: 1,
      formula: { method: `prisms between what is left of the ground and the underside of the base, ${what}` },
      inputs,
    });
  return {
    'dig-volume': volume(digCuIn, 'where the ground is higher'),
    'fill-volume': volume(fillCuIn, 'where it is lower'),
  };
}
