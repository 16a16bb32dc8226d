import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { Job, Slab } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import { spacingCap, spacingMultiplier, walkSpacing } from './limits.ts';
import { jointSpacingLimitIn, meanWidthIn } from './panels.ts';

export type JointMix = Pick<Job['build']['mix'], 'slumpIn' | 'aggregateIn'>;
type SpacedSlab = Pick<Slab, 'id' | 'use' | 'thicknessIn' | 'jointSpacingIn'>;

/** How wide a walk is [in]; null of what is no walk. */
export function walkWidthFigure(slab: SpacedSlab, shape: ShapeFigures): Figure | null {
  if (slab.use !== 'walk') return null;
  const { perimeter: perimeterFt, area: areaSqFt } = shape;
  return figure({
    value: meanWidthIn({ perimeterFt: num(perimeterFt), areaSqFt: num(areaSqFt) }),
    unit: 'in',
    decimals: 1,
    formula: 'ceilStep(6 * (perimeterFt / 2 - max((perimeterFt / 2) ^ 2 - 4 * areaSqFt, 0) ^ 0.5), 0.001)',
    inputs: { perimeterFt, areaSqFt },
  });
}

/** The farthest apart that joints may be [in]: the job's own spacing, or what thickness, mix and use allow. */
export function spacingFigure(slab: SpacedSlab, walkWidthIn: Figure | null, mix: JointMix): Figure {
  const path = `build.slabs.${slab.id}`;
  if (slab.jointSpacingIn !== null) {
    return figure({
      value: slab.jointSpacingIn,
      unit: 'in',
      decimals: 1,
      formula: 'ownSpacingIn',
      inputs: { ownSpacingIn: given(`${path}.joint-spacing`, slab.jointSpacingIn, 'in') },
      source: 'a spacing of the job’s own',
    });
  }
  const { ratio, mix: mixWords, source } = spacingMultiplier(mix);
  const limits = {
    multiplierRatio: constant(`joint spacing over thickness, ${mixWords}`, ratio, 'ratio', source),
    thicknessIn: given(`${path}.thickness`, slab.thicknessIn, 'in'),
    capIn: constant('joint spacing, most', spacingCap.lengthIn, 'in', spacingCap.source),
  };
  const value = jointSpacingLimitIn({
    multiplier: ratio,
    thicknessIn: slab.thicknessIn,
    walkWidthIn: walkWidthIn === null ? null : num(walkWidthIn),
  });
  const shown = { value, unit: 'in', decimals: 1, source } as const;
  if (walkWidthIn === null) {
    return figure({ ...shown, formula: 'min(multiplierRatio * thicknessIn, capIn)', inputs: limits });
  }
  const { lengthIn, source: walkSource } = walkSpacing;
  return figure({
    ...shown,
    formula: 'min(multiplierRatio * thicknessIn, capIn, max(walkWidthIn, walkSpacingIn))',
    inputs: {
      ...limits,
      walkWidthIn,
      walkSpacingIn: constant('joint spacing of walks', lengthIn, 'in', walkSource),
    },
  });
}
