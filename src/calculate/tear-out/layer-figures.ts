import { type Constant, constant, type Figure, figure, type Given, given, num } from '../figure.ts';
import type { Existing } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import { LAYERS } from './coatings.ts';
import { MATERIALS } from './materials.ts';
import { looseVolumeFigure, type SwellConstant, swellConstant, weightFigure } from './volume-figures.ts';
import { flatVolumeCuFt } from './weight.ts';

/** A layer that comes up with a slab: tile or an overlay on it, soil stuck below it. */
export type LayerFigures = {
  /** In place [cu ft]. */
  readonly volume: Figure;
  /** [lb] */
  readonly weight: Figure;
  /** In the box [yd3]. */
  readonly 'loose-volume': Figure;
};

export type Layer = {
  readonly figures: LayerFigures;
  readonly thicknessIn: Given;
  readonly unitWeightLbPerCuFt: Constant;
};

/** Tile or an overlay on a slab; null where nothing or a film is on it. */
export function coatingLayer({ id, coating }: Existing, shape: ShapeFigures): Layer | null {
  if (coating === null || !('thicknessIn' in coating)) return null;
  const { unitWeightLbPerCuFt, source } = LAYERS[coating.kind];
  return layer(shape, {
    thicknessIn: given(`site.existing.${id}.coating-thickness`, coating.thicknessIn, 'in'),
    unitWeightLbPerCuFt: constant(`${coating.kind} in place`, unitWeightLbPerCuFt, 'lb/cu ft', source),
    swellRatio: swellConstant('concrete'),
  });
}

/** Soil that comes up with a slab and cannot be parted from it; null where none does. */
export function stuckSoilLayer({ id, soilStuckIn }: Existing, shape: ShapeFigures): Layer | null {
  if (soilStuckIn === 0) return null;
  const { unitWeightLbPerCuFt, unitWeightSource } = MATERIALS.soil;
  return layer(shape, {
    thicknessIn: given(`site.existing.${id}.soil-stuck`, soilStuckIn, 'in'),
    unitWeightLbPerCuFt: constant('soil in place', unitWeightLbPerCuFt, 'lb/cu ft', unitWeightSource),
    swellRatio: swellConstant('soil'),
  });
}

function layer(
  shape: ShapeFigures,
  made: Omit<Layer, 'figures'> & { readonly swellRatio: SwellConstant },
): Layer {
  const { thicknessIn, unitWeightLbPerCuFt, swellRatio } = made;
  const volume = figure({
    value: flatVolumeCuFt({ areaSqFt: num(shape.area), thicknessIn: num(thicknessIn) }),
    unit: 'cu ft',
    decimals: 1,
    formula: 'areaSqFt * thicknessIn / 12',
    inputs: { areaSqFt: shape.area, thicknessIn },
  });
  return {
    figures: {
      volume,
      weight: weightFigure(volume, unitWeightLbPerCuFt),
      'loose-volume': looseVolumeFigure(volume, swellRatio),
    },
    thicknessIn,
    unitWeightLbPerCuFt,
  };
}
