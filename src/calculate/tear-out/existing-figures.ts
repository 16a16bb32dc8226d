import { COMMON_PRACTICE, constant, type Figure, figure, given, num } from '../figure.ts';
import type { Existing } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import {
  CU_M_PER_CU_FT,
  HAND_RATE_SOURCE,
  type HandRate,
  handLaborHr,
  handPieceSideIn,
  TWO_HAND_LIFT_LB,
  TWO_HAND_LIFT_SOURCE,
} from './hand-work.ts';
import { type AsHauledFigures, asHauledFigures } from './load-figures.ts';
import {
  looseVolumeFigure,
  ownUnitWeight,
  swellConstant,
  unitWeightFigure,
  weightFigure,
} from './volume-figures.ts';
import { flatVolumeCuFt } from './weight.ts';

export type ExistingFigures = AsHauledFigures & {
  /** Of the thing alone, in place [lb/cu ft]. */
  readonly 'unit-weight': Figure;
  /** In place, at the stated thickness [cu ft]. */
  readonly volume: Figure;
  /** At the stated thickness, without what sticks to it [lb]. */
  readonly weight: Figure;
  /** In the box, as `weight` [yd3]. */
  readonly 'loose-volume': Figure;
  /** Full depth, along the house and what stays [ft]. */
  readonly 'saw-cut': Figure;
  /** Side of a square piece that two hands lift, as hauled [in]. */
  readonly 'hand-piece': Figure;
};

/** What one existing thing weighs, fills and takes to cut free. */
export function existingFigures(existing: Existing, shape: ShapeFigures): ExistingFigures {
  const path = `site.existing.${existing.id}`;
  const { thicknessIn } = existing;
  const swellRatio = swellConstant(existing.material);
  const thickness = given(`${path}.thickness`, thicknessIn, 'in');

  const unitWeight = unitWeightFigure({
    material: existing.material,
    own: ownUnitWeight(path, existing.unitWeightLbPerCuFt),
  });
  const asHauled = asHauledFigures({
    existing,
    shape,
    thicknessIn: thickness,
    unitWeightLbPerCuFt: unitWeight,
    swellRatio,
  });
  const perSqFt = asHauled['weight-per-sq-ft'];
  const volume = figure({
    value: flatVolumeCuFt({ areaSqFt: num(shape.area), thicknessIn }),
    unit: 'cu ft',
    decimals: 1,
    formula: 'areaSqFt * thicknessIn / 12',
    inputs: { areaSqFt: shape.area, thicknessIn: thickness },
  });
  return {
    'unit-weight': unitWeight,
    ...asHauled,
    volume,
    weight: weightFigure(volume, unitWeight),
    'loose-volume': looseVolumeFigure(volume, swellRatio),
    'saw-cut': figure({
      value: num(shape['along-house']) + num(shape['along-stays']),
      unit: 'ft',
      decimals: 1,
      formula: 'alongHouseFt + alongStaysFt',
      inputs: { alongHouseFt: shape['along-house'], alongStaysFt: shape['along-stays'] },
      source: COMMON_PRACTICE,
    }),
    'hand-piece': figure({
      value: handPieceSideIn({ limitLb: TWO_HAND_LIFT_LB, weightLbPerSqFt: num(perSqFt) }),
      unit: 'in',
      decimals: 1,
      formula: '12 * sqrt(limitLb / weightLbPerSqFt)',
      inputs: {
        limitLb: constant('two-hand lift', TWO_HAND_LIFT_LB, 'lb', TWO_HAND_LIFT_SOURCE),
        weightLbPerSqFt: perSqFt,
      },
      source: TWO_HAND_LIFT_SOURCE,
    }),
  };
}

/** Labor by hand tools, from the fast to the slow crew of the published row. */
export type HandLaborFigures = { readonly fast: Figure; readonly slow: Figure };

export function handLaborFigures(volumeCuFt: Figure, rate: HandRate): HandLaborFigures {
  const labor = (crew: 'fast' | 'slow', hrPerCuM: number) =>
    figure({
      value: handLaborHr({ volumeCuFt: num(volumeCuFt), hrPerCuM }),
      unit: 'h',
      decimals: 1,
      formula: 'volumeCuFt * cuMPerCuFt * laborHrPerCuM',
      inputs: {
        volumeCuFt,
        cuMPerCuFt: constant('cubic metres in a cubic foot', CU_M_PER_CU_FT, 'ratio', 'definition'),
        laborHrPerCuM: constant(`labor hours a cubic metre, ${crew} crew`, hrPerCuM, 'h', HAND_RATE_SOURCE),
      },
      source: HAND_RATE_SOURCE,
    });
  return { fast: labor('fast', rate.fastHrPerCuM), slow: labor('slow', rate.slowHrPerCuM) };
}
