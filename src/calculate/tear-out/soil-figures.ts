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

/** Less is not dug [cu ft]: a wheelbarrow; common practice, no source. */
const LEAST_DUG_CU_FT = 1;

/**
 * The soil dug out under one slab, over the area of the slab itself [cu ft]; null where none is.
 *
 * @param dug As the heights of the job have it; undefined where they do not say, and the stated depth counts.
 */
export function soilVolume(slab: Slab, shape: ShapeFigures, dug: Figure | undefined): Figure | null {
  const { id, digIn } = slab;
  if (dug !== undefined) {
    if (num(dug) < LEAST_DUG_CU_FT) return null;
    return figure({
      value: num(dug),
      unit: 'cu ft',
      decimals: 1,
      formula: 'dugCuFt',
      inputs: { dugCuFt: dug },
    });
  }
  if (digIn <= 0) return null;
  return figure({
    value: flatVolumeCuFt({ areaSqFt: num(shape.area), thicknessIn: digIn }),
    unit: 'cu ft',
    decimals: 1,
    formula: 'areaSqFt * digIn / 12',
    inputs: { areaSqFt: shape.area, digIn: given(`build.slabs.${id}.dig`, digIn, 'in') },
  });
}

/** Weight and loose volume of soil, from its volume in place. */
export function soilFigures(volume: Figure): SoilFigures {
  const row = MATERIALS.soil;
  const swellRatio = swellConstant('soil');
  const unitWeight = constant('soil in place', row.unitWeightLbPerCuFt, 'lb/cu ft', row.unitWeightSource);
  return {
    volume,
    weight: weightFigure(volume, unitWeight),
    'loose-volume': looseVolumeFigure(volume, swellRatio),
    'loose-unit-weight': looseUnitWeightFigure(unitWeight, swellRatio),
  };
}
