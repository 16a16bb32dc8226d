import { cuFtToCuYd } from '../../units/index.ts';
import { COMMON_PRACTICE, COMPANY_FIGURE, constant, type Figure, figure, given, num } from '../figure.ts';
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
import { MATERIALS } from './materials.ts';
import { loadFactor, looseVolume } from './swell.ts';
import { flatVolumeCuFt, weightLb, weightLbPerSqFt } from './weight.ts';

export type ExistingFigures = {
  /** In place [lb/cu ft]. */
  readonly 'unit-weight': Figure;
  /** In the box [lb/cu ft]. */
  readonly 'loose-unit-weight': Figure;
  readonly 'weight-per-sq-ft': Figure;
  /** In place [cu ft]. */
  readonly volume: Figure;
  /** [lb] */
  readonly weight: Figure;
  /** In the box [yd3]. */
  readonly 'loose-volume': Figure;
  /** Full depth, along the house and what stays [ft]. */
  readonly 'saw-cut': Figure;
  /** Side of a square piece that two hands lift [in]. */
  readonly 'hand-piece': Figure;
};

/** What one existing thing weighs, fills and takes to cut free. */
export function existingFigures(existing: Existing, shape: ShapeFigures): ExistingFigures {
  const path = `site.existing.${existing.id}`;
  const { thicknessIn } = existing;
  const swellRatio = swellConstant(existing.material);
  const thickness = given(`${path}.thickness`, thicknessIn, 'in');

  const unitWeight = unitWeightFigure(existing, path);
  const unitWeightLbPerCuFt = num(unitWeight);
  const perSqFt = figure({
    value: weightLbPerSqFt({ thicknessIn, unitWeightLbPerCuFt }),
    unit: 'lb/sq ft',
    decimals: 1,
    formula: 'thicknessIn * unitWeightLbPerCuFt / 12',
    inputs: { thicknessIn: thickness, unitWeightLbPerCuFt: unitWeight },
  });
  const volume = figure({
    value: flatVolumeCuFt({ areaSqFt: num(shape.area), thicknessIn }),
    unit: 'cu ft',
    decimals: 1,
    formula: 'areaSqFt * thicknessIn / 12',
    inputs: { areaSqFt: shape.area, thicknessIn: thickness },
  });
  return {
    'unit-weight': unitWeight,
    'loose-unit-weight': looseUnitWeightFigure(unitWeight, swellRatio),
    'weight-per-sq-ft': perSqFt,
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

function unitWeightFigure(existing: Existing, path: string): Figure {
  const { material, unitWeightLbPerCuFt: ownLbPerCuFt } = existing;
  const row = MATERIALS[material];
  const input =
    ownLbPerCuFt === null
      ? constant(`${material} in place`, row.unitWeightLbPerCuFt, 'lb/cu ft', row.unitWeightSource)
      : given(`${path}.unit-weight`, ownLbPerCuFt, 'lb/cu ft');
  return figure({
    value: num(input),
    unit: 'lb/cu ft',
    decimals: 1,
    formula: 'unitWeightLbPerCuFt',
    inputs: { unitWeightLbPerCuFt: input },
    source: ownLbPerCuFt === null ? row.unitWeightSource : COMPANY_FIGURE,
  });
}

export function swellConstant(material: keyof typeof MATERIALS) {
  const row = MATERIALS[material];
  return constant(`${material} swell in the box`, row.swellRatio, 'ratio', row.swellSource);
}

type SwellConstant = ReturnType<typeof swellConstant>;

export function looseUnitWeightFigure(
  unitWeightLbPerCuFt: Figure | SwellConstant,
  swellRatio: SwellConstant,
): Figure {
  return figure({
    value: num(unitWeightLbPerCuFt) * loadFactor(num(swellRatio)),
    unit: 'lb/cu ft',
    decimals: 1,
    formula: 'unitWeightLbPerCuFt * (1 / (1 + swellRatio))',
    inputs: { unitWeightLbPerCuFt, swellRatio },
    source: swellRatio.source,
  });
}

export function weightFigure(volumeCuFt: Figure, unitWeightLbPerCuFt: Figure | SwellConstant): Figure {
  return figure({
    value: weightLb({ volumeCuFt: num(volumeCuFt), unitWeightLbPerCuFt: num(unitWeightLbPerCuFt) }),
    unit: 'lb',
    decimals: 0,
    formula: 'volumeCuFt * unitWeightLbPerCuFt',
    inputs: { volumeCuFt, unitWeightLbPerCuFt },
    source: unitWeightLbPerCuFt.source,
  });
}

export function looseVolumeFigure(volumeCuFt: Figure, swellRatio: SwellConstant): Figure {
  return figure({
    value: cuFtToCuYd(looseVolume(num(volumeCuFt), num(swellRatio))),
    unit: 'yd3',
    decimals: 1,
    formula: 'volumeCuFt * (1 + swellRatio) / 27',
    inputs: { volumeCuFt, swellRatio },
    source: swellRatio.source,
  });
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
