import { cuFtToCuYd } from '../../units/index.ts';
import { type Figure, type FigureInput, figure, type Given, num } from '../figure.ts';
import type { Existing } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import { coatingLayer, type Layer, type LayerFigures, stuckSoilLayer } from './layer-figures.ts';
import { loadThicknessFigure } from './load-thickness.ts';
import { looseVolume } from './swell.ts';
import { looseUnitWeightFigure, type SwellConstant } from './volume-figures.ts';
import { flatVolumeCuFt, weightLbPerSqFt } from './weight.ts';

/** A flat thing as it is hauled: on the heavy side where its thickness is assumed, with all that sticks to it. */
export type AsHauledFigures = {
  /** That loads are planned for [in]. */
  readonly 'load-thickness': Figure;
  /** As hauled [lb/sq ft]. */
  readonly 'weight-per-sq-ft': Figure;
  /** In the box, as hauled [lb/cu ft]. */
  readonly 'loose-unit-weight': Figure;
  /** As hauled [lb]; only where it is not the weight of the slab as stated. */
  readonly 'load-weight'?: Figure;
  /** In the box, as hauled [yd3]; as `load-weight`. */
  readonly 'load-loose-volume'?: Figure;
  /** Tile or an overlay on it. */
  readonly coating?: LayerFigures;
  readonly 'soil-stuck'?: LayerFigures;
};

type Layers = { readonly coating: Layer | null; readonly soil: Layer | null };

/**
 * What a flat thing weighs and fills on a trailer.
 *
 * @param made.thicknessIn         As stated.
 * @param made.unitWeightLbPerCuFt Of the thing alone, in place.
 */
export function asHauledFigures(made: {
  readonly existing: Existing;
  readonly shape: ShapeFigures;
  readonly thicknessIn: Given;
  readonly unitWeightLbPerCuFt: Figure;
  readonly swellRatio: SwellConstant;
}): AsHauledFigures {
  const { existing, shape, unitWeightLbPerCuFt, swellRatio } = made;
  const layers: Layers = {
    coating: coatingLayer(existing, shape),
    soil: stuckSoilLayer(existing, shape),
  };
  const thickness = loadThicknessFigure(existing, made.thicknessIn);
  const perSqFt = perSqFtFigure(thickness, unitWeightLbPerCuFt, layers);
  const common = { 'load-thickness': thickness, 'weight-per-sq-ft': perSqFt };
  const hasLayers = layers.coating !== null || layers.soil !== null;
  const looseAlone = looseUnitWeightFigure(unitWeightLbPerCuFt, swellRatio);
  if (existing.thicknessIs === 'measured' && !hasLayers) {
    return { ...common, 'loose-unit-weight': looseAlone };
  }
  const weight = figure({
    value: num(shape.area) * num(perSqFt),
    unit: 'lb',
    decimals: 0,
    formula: 'areaSqFt * weightLbPerSqFt',
    inputs: { areaSqFt: shape.area, weightLbPerSqFt: perSqFt },
  });
  const loose = looseFigure({ shape, thickness, swellRatio, layers });
  return {
    ...common,
    'loose-unit-weight': hasLayers ? mixedLooseFigure(weight, loose) : looseAlone,
    'load-weight': weight,
    'load-loose-volume': loose,
    ...(layers.coating === null ? {} : { coating: layers.coating.figures }),
    ...(layers.soil === null ? {} : { 'soil-stuck': layers.soil.figures }),
  };
}

function perSqFtFigure(thicknessIn: Figure, unitWeightLbPerCuFt: Figure, layers: Layers): Figure {
  const named = [
    ['coating', layers.coating],
    ['soil', layers.soil],
  ] as const;
  const terms = named.flatMap(([name, layer]) => (layer === null ? [] : [{ name, layer }]));
  const ofLayers = terms.map(({ layer }) =>
    weightLbPerSqFt({
      thicknessIn: num(layer.thicknessIn),
      unitWeightLbPerCuFt: num(layer.unitWeightLbPerCuFt),
    }),
  );
  const alone = weightLbPerSqFt({
    thicknessIn: num(thicknessIn),
    unitWeightLbPerCuFt: num(unitWeightLbPerCuFt),
  });
  return figure({
    value: ofLayers.reduce((sum, one) => sum + one, alone),
    unit: 'lb/sq ft',
    decimals: 1,
    formula: [
      'thicknessIn * unitWeightLbPerCuFt / 12',
      ...terms.map(({ name }) => `${name}In * ${name}LbPerCuFt / 12`),
    ].join(' + '),
    inputs: {
      thicknessIn,
      unitWeightLbPerCuFt,
      ...Object.fromEntries(
        terms.flatMap(({ name, layer }): (readonly [string, FigureInput])[] => [
          [`${name}In`, layer.thicknessIn],
          [`${name}LbPerCuFt`, layer.unitWeightLbPerCuFt],
        ]),
      ),
    },
  });
}

function looseFigure(made: {
  readonly shape: ShapeFigures;
  readonly thickness: Figure;
  readonly swellRatio: SwellConstant;
  readonly layers: Layers;
}): Figure {
  const { shape, thickness, swellRatio, layers } = made;
  const extra = {
    ...(layers.coating === null ? {} : { coatingCuYd: layers.coating.figures['loose-volume'] }),
    ...(layers.soil === null ? {} : { soilCuYd: layers.soil.figures['loose-volume'] }),
  };
  const volumeCuFt = flatVolumeCuFt({ areaSqFt: num(shape.area), thicknessIn: num(thickness) });
  const alone = cuFtToCuYd(looseVolume(volumeCuFt, num(swellRatio)));
  return figure({
    value: Object.values(extra).reduce((sum, one) => sum + num(one), alone),
    unit: 'yd3',
    decimals: 1,
    formula: ['areaSqFt * loadThicknessIn / 12 * (1 + swellRatio) / 27', ...Object.keys(extra)].join(' + '),
    inputs: { areaSqFt: shape.area, loadThicknessIn: thickness, swellRatio, ...extra },
    source: swellRatio.source,
  });
}

/** Of things that ride mixed: their weight over their volume. */
function mixedLooseFigure(weightLb: Figure, looseCuYd: Figure): Figure {
  return figure({
    value: num(weightLb) / (num(looseCuYd) * 27),
    unit: 'lb/cu ft',
    decimals: 1,
    formula: 'weightLb / (looseCuYd * 27)',
    inputs: { weightLb, looseCuYd },
  });
}
