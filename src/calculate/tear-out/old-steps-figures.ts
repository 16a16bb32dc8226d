import { figure, given } from '../figure.ts';
import type { OldSteps } from '../job.ts';
import { type PartFigures, partFigures } from './part-figures.ts';

/**
 * A solid straight flight that goes, up to a landing as wide as it.
 *
 * V = W r (T n (n - 1) / 2 + n D): n risers r high carry n - 1 treads T deep, and the landing D deep stands
 * on all of them. Source: geometry.
 */
export function oldStepsFigures(steps: OldSteps): PartFigures {
  const { id, material, widthIn, riserCount, riserIn, treadIn, landingIn } = steps;
  const path = `site.old-steps.${id}`;
  const volume = figure({
    value:
      (widthIn * riserIn * ((treadIn * riserCount * (riserCount - 1)) / 2 + riserCount * landingIn)) / 1728,
    unit: 'cu ft',
    decimals: 2,
    formula: 'widthIn * riserIn * (treadIn * risers * (risers - 1) / 2 + risers * landingIn) / 1728',
    inputs: {
      widthIn: given(`${path}.width`, widthIn, 'in'),
      riserIn: given(`${path}.riser`, riserIn, 'in'),
      treadIn: given(`${path}.tread`, treadIn, 'in'),
      risers: given(`${path}.risers`, riserCount, 'each'),
      landingIn: given(`${path}.landing`, landingIn, 'in'),
    },
  });
  return partFigures(volume, { material, own: null });
}
