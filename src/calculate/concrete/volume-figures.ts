import { type Figure, figure, given, num } from '../figure.ts';
import type { BuiltSteps } from '../flights/index.ts';
import type { Slab } from '../job.ts';
import { slabCuYd, stepsCuYd } from './volumes.ts';

export type PouredSlab = Pick<Slab, 'id' | 'thicknessIn' | 'probedIn'>;

export type SlabFigures = {
  /** How deep the concrete is: as probed, or as thick as the slab [in]. */
  readonly depth: Figure;
  readonly net: Figure;
  /** What a yard covers, the base as it lies [sq ft]. */
  readonly 'area-per-yard': Figure;
};

/** @param thickenedCuFt What thickened edges take below the slab; null where it has none. */
export function slabFigures(
  slab: PouredSlab,
  areaSqFt: Figure,
  thickenedCuFt: Figure | null,
  baseUnevennessIn: number,
): SlabFigures {
  const depth = depthFigure(slab);
  const slabAlone = slabCuYd({ areaSqFt: num(areaSqFt), thicknessIn: num(depth) });
  return {
    depth,
    net: figure({
      value: slabAlone + (thickenedCuFt === null ? 0 : num(thickenedCuFt) / 27),
      unit: 'yd3',
      decimals: 2,
      formula: `areaSqFt * depthIn / 324${thickenedCuFt === null ? '' : ' + thickenedCuFt / 27'}`,
      inputs: { areaSqFt, depthIn: depth, ...(thickenedCuFt === null ? {} : { thickenedCuFt }) },
    }),
    'area-per-yard': areaPerYard(depth, slab.probedIn === null ? baseUnevennessIn : 0),
  };
}

/** 324 / depth: 27 cu ft of 12 in; what is not level goes with it where nobody has probed. */
function areaPerYard(depthIn: Figure, lowIn: number): Figure {
  const low = given('company.allowances.base-unevenness', lowIn, 'in');
  return figure({
    value: 324 / (num(depthIn) + lowIn),
    unit: 'sq ft',
    decimals: 1,
    formula: lowIn === 0 ? '324 / depthIn' : '324 / (depthIn + lowIn)',
    inputs: { depthIn, ...(lowIn === 0 ? {} : { lowIn: low }) },
  });
}

function depthFigure({ id, thicknessIn, probedIn }: PouredSlab): Figure {
  const path = `build.slabs.${id}`;
  const input =
    probedIn === null
      ? given(`${path}.thickness`, thicknessIn, 'in')
      : given(`${path}.probed-depth`, probedIn, 'in');
  return figure({
    value: num(input),
    unit: 'in',
    decimals: 3,
    formula: probedIn === null ? 'thicknessIn' : 'probedIn',
    inputs: { [probedIn === null ? 'thicknessIn' : 'probedIn']: input },
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
