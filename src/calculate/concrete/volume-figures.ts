import { type Figure, figure, given, num } from '../figure.ts';
import type { BuiltSteps } from '../flights/index.ts';
import type { Slab } from '../job.ts';
import { slabCuYd, stepsCuYd } from './volumes.ts';

export type PouredSlab = Pick<Slab, 'id' | 'thicknessIn' | 'probedIn'>;

export type SlabFigures = {
  /** How deep the concrete is: as probed, or as thick as the slab [in]. */
  readonly depth: Figure;
  readonly net: Figure;
};

/** @param thickenedCuFt What thickened edges take below the slab; null where it has none. */
export function slabFigures(slab: PouredSlab, areaSqFt: Figure, thickenedCuFt: Figure | null): SlabFigures {
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
  };
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
