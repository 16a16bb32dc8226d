import type { Figure, Given } from '../figure.ts';
import type { MATERIALS } from './materials.ts';
import {
  looseUnitWeightFigure,
  looseVolumeFigure,
  swellConstant,
  unitWeightFigure,
  weightFigure,
} from './volume-figures.ts';

/** Something of one material that goes by its volume: walls, a footing, a flight of steps. */
export type PartFigures = {
  /** In place [cu ft]. */
  readonly volume: Figure;
  /** In place [lb/cu ft]. */
  readonly 'unit-weight': Figure;
  /** In the box [lb/cu ft]. */
  readonly 'loose-unit-weight': Figure;
  /** [lb] */
  readonly weight: Figure;
  /** In the box [yd3]. */
  readonly 'loose-volume': Figure;
};

/** What a volume in place weighs, and fills in the box. */
export function partFigures(
  volume: Figure,
  of: { readonly material: keyof typeof MATERIALS; readonly own: Given | null },
): PartFigures {
  const unitWeight = unitWeightFigure(of);
  const swellRatio = swellConstant(of.material);
  return {
    volume,
    'unit-weight': unitWeight,
    'loose-unit-weight': looseUnitWeightFigure(unitWeight, swellRatio),
    weight: weightFigure(volume, unitWeight),
    'loose-volume': looseVolumeFigure(volume, swellRatio),
  };
}
