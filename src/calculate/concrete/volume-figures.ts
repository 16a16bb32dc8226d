import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { BuiltSteps } from '../flights/index.ts';
import type { Company, Slab } from '../job.ts';
import { inputsByName, pick, sumExpression, sumOf } from '../parts.ts';
import { slabCuYd, spillCuYd, stepsCuYd, unevennessCuYd } from './volumes.ts';

export type TotalFigures = {
  readonly net: Figure;
  readonly unevenness: Figure;
  readonly spill: Figure;
  readonly needed: Figure;
};

export function slabNet(slab: Pick<Slab, 'id' | 'thicknessIn'>, areaSqFt: Figure): Figure {
  return figure({
    value: slabCuYd({ areaSqFt: num(areaSqFt), thicknessIn: slab.thicknessIn }),
    unit: 'yd3',
    decimals: 2,
    formula: 'areaSqFt * thicknessIn / 324',
    inputs: { areaSqFt, thicknessIn: given(`build.slabs.${slab.id}.thickness`, slab.thicknessIn, 'in') },
  });
}

export function stepsNet(flight: BuiltSteps): Figure {
  const path = `build.steps.${flight.id}`;
  return figure({
    value: stepsCuYd(flight),
    unit: 'yd3',
    decimals: 2,
    formula:
      'widthIn * riserIn * (treadIn * riserCount * (riserCount - 1) / 2 + riserCount * landingIn) / 46656',
    inputs: {
      widthIn: given(`${path}.width`, flight.widthIn, 'in'),
      riserCount: flight.risen.risers,
      riserIn: flight.risen.riser,
      treadIn: given(`${path}.tread`, flight.treadIn, 'in'),
      landingIn: given(`${path}.landing`, flight.landingIn, 'in'),
    },
    source: 'geometry: solid below every tread and the landing, above the ground',
  });
}

export function totals(made: {
  slabs: Record<string, { net: Figure }>;
  steps: Record<string, { net: Figure }>;
  areas: Record<string, Figure>;
  allowances: Pick<Company['allowances'], 'baseUnevennessIn' | 'spillRatio'>;
}): TotalFigures {
  const { slabs, steps, areas, allowances } = made;
  const netInputs = {
    ...inputsByName(pick(slabs, 'net'), 'SlabCuYd'),
    ...inputsByName(pick(steps, 'net'), 'StepsCuYd'),
  };
  const net = figure({
    value: sumOf(netInputs),
    unit: 'yd3',
    decimals: 2,
    formula: sumExpression(netInputs),
    inputs: netInputs,
  });
  const areaInputs = inputsByName(areas, 'SqFt');
  const unevenness = figure({
    value: unevennessCuYd({ lowIn: allowances.baseUnevennessIn, areaSqFt: sumOf(areas) }),
    unit: 'yd3',
    decimals: 2,
    formula: `baseUnevennessIn * (${sumExpression(areaInputs)}) / 324`,
    inputs: {
      baseUnevennessIn: given('company.allowances.base-unevenness', allowances.baseUnevennessIn, 'in'),
      ...areaInputs,
    },
    source: COMPANY_FIGURE,
  });
  const spill = figure({
    value: spillCuYd({ netCuYd: num(net), spillRatio: allowances.spillRatio }),
    unit: 'yd3',
    decimals: 2,
    formula: 'spillRatio * netCuYd',
    inputs: { spillRatio: given('company.allowances.spill', allowances.spillRatio, 'ratio'), netCuYd: net },
    source: COMPANY_FIGURE,
  });
  const needed = figure({
    value: num(net) + num(unevenness) + num(spill),
    unit: 'yd3',
    decimals: 2,
    formula: 'netCuYd + unevennessCuYd + spillCuYd',
    inputs: { netCuYd: net, unevennessCuYd: unevenness, spillCuYd: spill },
    source: 'NRMCA CIP 8 as republished by a producer: order 4 to 10 % above the plan dimensions (seen)',
  });
  return { net, unevenness, spill, needed };
}
