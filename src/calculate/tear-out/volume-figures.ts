import { cuFtToCuYd } from '../../units/index.ts';
import {
  COMPANY_FIGURE,
  type Constant,
  constant,
  type Figure,
  figure,
  type Given,
  given,
  num,
} from '../figure.ts';
import { MATERIALS } from './materials.ts';
import { loadFactor, looseVolume } from './swell.ts';
import { weightLb } from './weight.ts';

/** The swell of a material, as an input. */
export function swellConstant(material: keyof typeof MATERIALS) {
  const row = MATERIALS[material];
  return constant(`${material} swell in the box`, row.swellRatio, 'ratio', row.swellSource);
}

export type SwellConstant = ReturnType<typeof swellConstant>;

/** A unit weight of the job's own, of the thing at a path; null where it has none. */
export function ownUnitWeight(path: string, unitWeightLbPerCuFt: number | null): Given | null {
  return unitWeightLbPerCuFt === null ? null : given(`${path}.unit-weight`, unitWeightLbPerCuFt, 'lb/cu ft');
}

/** [lb/cu ft] in place: the job's own, where it has one, else the table's. */
export function unitWeightFigure(of: {
  readonly material: keyof typeof MATERIALS;
  /** Null takes the table's. */
  readonly own: Given | null;
}): Figure {
  const { material, own } = of;
  const row = MATERIALS[material];
  const input =
    own ?? constant(`${material} in place`, row.unitWeightLbPerCuFt, 'lb/cu ft', row.unitWeightSource);
  return figure({
    value: num(input),
    unit: 'lb/cu ft',
    decimals: 1,
    formula: 'unitWeightLbPerCuFt',
    inputs: { unitWeightLbPerCuFt: input },
    source: own === null ? row.unitWeightSource : COMPANY_FIGURE,
  });
}

/** [lb/cu ft] in the box. */
export function looseUnitWeightFigure(
  unitWeightLbPerCuFt: Figure | Constant,
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

/** [lb] of a volume in place. */
export function weightFigure(volumeCuFt: Figure, unitWeightLbPerCuFt: Figure | Constant): Figure {
  return figure({
    value: weightLb({ volumeCuFt: num(volumeCuFt), unitWeightLbPerCuFt: num(unitWeightLbPerCuFt) }),
    unit: 'lb',
    decimals: 0,
    formula: 'volumeCuFt * unitWeightLbPerCuFt',
    inputs: { volumeCuFt, unitWeightLbPerCuFt },
    source: unitWeightLbPerCuFt.source,
  });
}

/** [yd3] in the box of a volume in place. */
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
