import { constant, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
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
 * The soil dug out under one slab, over the area of the slab itself, and below that for its thickened
 * edges [cu ft]; null where none is.
 *
 * @param ground.dug As the heights of the job have it; undefined where they do not say, and the stated
 *                   depth counts.
 */
export function soilVolume(
  slab: Slab,
  shape: ShapeFigures,
  ground: { readonly dug: Figure | undefined; readonly thickened: Figure | undefined },
): Figure | null {
  const flat = flatSoil(slab, shape, ground.dug);
  const { thickened } = ground;
  if (thickened === undefined) return flat === null ? null : soilFigure(flat);
  return soilFigure({
    valueCuFt: (flat?.valueCuFt ?? 0) + num(thickened),
    formula: flat === null ? 'edgesCuFt' : `${flat.formula} + edgesCuFt`,
    inputs: { ...flat?.inputs, edgesCuFt: thickened },
  });
}

type Soil = {
  readonly valueCuFt: number;
  readonly formula: string;
  readonly inputs: Readonly<Record<string, FigureInput>>;
};

function flatSoil({ id, digIn }: Slab, shape: ShapeFigures, dug: Figure | undefined): Soil | null {
  if (dug !== undefined) {
    if (num(dug) < LEAST_DUG_CU_FT) return null;
    return { valueCuFt: num(dug), formula: 'dugCuFt', inputs: { dugCuFt: dug } };
  }
  if (digIn <= 0) return null;
  return {
    valueCuFt: flatVolumeCuFt({ areaSqFt: num(shape.area), thicknessIn: digIn }),
    formula: 'areaSqFt * digIn / 12',
    inputs: { areaSqFt: shape.area, digIn: given(`build.slabs.${id}.dig`, digIn, 'in') },
  };
}

function soilFigure({ valueCuFt, formula, inputs }: Soil): Figure {
  return figure({ value: valueCuFt, unit: 'cu ft', decimals: 1, formula, inputs });
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
