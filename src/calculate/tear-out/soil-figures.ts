import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { Slab } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import { MATERIALS } from './materials.ts';
import { looseUnitWeightFigure, looseVolumeFigure, swellConstant, weightFigure } from './volume-figures.ts';
import { flatVolumeCuFt } from './weight.ts';

export type SoilFigures = {
  /** In place [cu ft]. */
  readonly volume: Figure;
  /** [lb] */
  readonly weight: Figure;
  /** In the box [yd3]. */
  readonly 'loose-volume': Figure;
  /** In the box [lb/cu ft]. */
  readonly 'loose-unit-weight': Figure;
};

/** The soil dug out under one slab, over the area of the slab itself. */
export function soilFigures(slab: Slab, shape: ShapeFigures): SoilFigures {
  const row = MATERIALS.soil;
  const swellRatio = swellConstant('soil');
  const unitWeight = constant('soil in place', row.unitWeightLbPerCuFt, 'lb/cu ft', row.unitWeightSource);
  const volume = figure({
    value: flatVolumeCuFt({ areaSqFt: num(shape.area), thicknessIn: slab.digIn }),
    unit: 'cu ft',
    decimals: 1,
    formula: 'areaSqFt * digIn / 12',
    inputs: { areaSqFt: shape.area, digIn: given(`build.slabs.${slab.id}.dig`, slab.digIn, 'in') },
  });
  return {
    volume,
    weight: weightFigure(volume, unitWeight),
    'loose-volume': looseVolumeFigure(volume, swellRatio),
    'loose-unit-weight': looseUnitWeightFigure(unitWeight, swellRatio),
  };
}
