import { constant, type Figure, figure, given } from '../figure.ts';
import type { Chip } from '../job.ts';
import { LAYERS } from './coatings.ts';
import { weightFigure } from './volume-figures.ts';

export type ChipFigures = {
  /** In place [cu ft]. */
  readonly volume: Figure;
  /** Taken as mortar [lb]. */
  readonly weight: Figure;
};

/**
 * What comes off concrete that stays: V = A t / 12, weighed as mortar. It is carried off in bags and
 * is in no stream: a few pounds would ask for a load of their own.
 */
export function chipFigures({ id, areaSqFt, thicknessIn }: Chip): ChipFigures {
  const { unitWeightLbPerCuFt, source } = LAYERS.overlay;
  const volume = figure({
    value: (areaSqFt * thicknessIn) / 12,
    unit: 'cu ft',
    decimals: 3,
    formula: 'areaSqFt * thicknessIn / 12',
    inputs: {
      areaSqFt: given(`site.chip.${id}.area`, areaSqFt, 'sq ft'),
      thicknessIn: given(`site.chip.${id}.thickness`, thicknessIn, 'in'),
    },
  });
  return {
    volume,
    weight: weightFigure(
      volume,
      constant('coating, taken as mortar', unitWeightLbPerCuFt, 'lb/cu ft', source),
    ),
  };
}
