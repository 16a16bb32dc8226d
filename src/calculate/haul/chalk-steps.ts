import { inToMm, mmToIn, sqMToSqFt } from '../../units/index.ts';
import { COMMON_PRACTICE, constant } from '../figure.ts';
import type { UnitSystem } from '../job.ts';

/** In what steps a slab is taped and chalked. */
export type ChalkSteps = {
  /** Of an area to chalk, down [sq ft]. */
  readonly areaSqFt: number;
  readonly areaDecimals: number;
  /** Between two rows [in]. */
  readonly thicknessIn: number;
  /** No row is thinner, but for the planned thickness [in]. */
  readonly thinnestIn: number;
  /** The thickness as its row is named by. */
  readonly named: (thicknessIn: number) => number;
};

/** What a tape laid on a broken edge and a chalk line tell apart; common practice, no source. */
export const CHALK_STEPS: Readonly<Record<UnitSystem, ChalkSteps>> = {
  us: { areaSqFt: 1, areaDecimals: 0, thicknessIn: 0.5, thinnestIn: 2, named: (thicknessIn) => thicknessIn },
  // A tenth of a square metre, since that is what is shown: a whole square foot could be shown as more.
  metric: {
    areaSqFt: sqMToSqFt(0.1),
    areaDecimals: 2,
    thicknessIn: mmToIn(10),
    thinnestIn: mmToIn(50),
    named: inToMm,
  },
};

/** The step of an area, as an input of a figure. */
export function chalkStep(steps: ChalkSteps) {
  return constant('step of an area to chalk', steps.areaSqFt, 'sq ft', COMMON_PRACTICE);
}
