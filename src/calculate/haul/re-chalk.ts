import { ceilCount } from '../../units/index.ts';
import { COMMON_PRACTICE, constant, type Figure, figure, num } from '../figure.ts';
import type { ExistingFigures } from '../tear-out/index.ts';
import { type ChalkSteps, chalkStep } from './chalk-steps.ts';
import { sqFtPerLoad } from './load-count.ts';
import type { TrailerFigures } from './trailer-figures.ts';

const STEPS_THINNER = 2;
const STEPS_THICKER = 4;
/** Two lengths that differ by less are one [in]. */
const NOISE_IN = 1e-9;

/** The bay of one load and how many of them, at one thickness. */
export type ReChalkFigures = {
  readonly 'area-per-load': Figure;
  /** For the whole thing in such bays. */
  readonly loads: Figure;
};

export type ReChalkRow = {
  /** Of the row among the figures: `t-4-5` at 4 1/2 in, `t-110` at 110 mm. */
  readonly name: string;
  readonly thicknessIn: number;
  readonly isPlanned: boolean;
};

/** What to chalk of one thing once its true thickness is seen. */
export type ReChalk = {
  readonly rows: readonly ReChalkRow[];
  readonly figures: Readonly<Record<string, ReChalkFigures>>;
};

/** The thicknesses round the planned one, thin to thick, as distances from it [in]. */
export function thicknessOffsetsIn(plannedIn: number, steps: ChalkSteps): readonly number[] {
  if (!(plannedIn > 0)) throw new RangeError(`plannedIn must be above 0, got ${plannedIn}`);
  return Array.from({ length: STEPS_THINNER + 1 + STEPS_THICKER }, (_, index) => index - STEPS_THINNER)
    .map((stepCount) => stepCount * steps.thicknessIn)
    .filter((offsetIn) => offsetIn >= 0 || plannedIn + offsetIn >= steps.thinnestIn - NOISE_IN);
}

/** What is hauled of a thing, and what it is hauled on. */
export type ChalkedThing = {
  readonly torn: ExistingFigures;
  readonly area: Figure;
  readonly trailer: TrailerFigures;
  readonly steps: ChalkSteps;
};

/**
 * How much of a thing one load carries and how many loads it takes, if it is thicker or thinner than
 * loads are planned for. Weights in the box and in place are those of the plan; thicknesses of which a
 * load would not carry one step of area have no row.
 */
export function reChalk(thing: ChalkedThing): ReChalk {
  const { torn, area, steps } = thing;
  const plannedIn = num(torn['load-thickness']);
  const bays = thicknessOffsetsIn(plannedIn, steps)
    .map((offsetIn) => ({ offsetIn, areaPerLoad: areaPerLoadFigure(thing, offsetIn) }))
    .filter(({ areaPerLoad }) => num(areaPerLoad) > 0);
  const rows = bays.map(({ offsetIn, areaPerLoad }) => {
    const thicknessIn = plannedIn + offsetIn;
    const name = `t-${Number(steps.named(thicknessIn).toFixed(2))}`.replace('.', '-');
    return {
      row: { name, thicknessIn, isPlanned: offsetIn === 0 },
      figures: { 'area-per-load': areaPerLoad, loads: loadsFigure(area, areaPerLoad) },
    };
  });
  return {
    rows: rows.map(({ row }) => row),
    figures: Object.fromEntries(rows.map(({ row, figures }) => [row.name, figures])),
  };
}

function areaPerLoadFigure({ torn, trailer, steps }: ChalkedThing, offsetIn: number): Figure {
  const { payload, 'box-volume': box } = trailer;
  const {
    'unit-weight': unitWeight,
    'loose-unit-weight': looseUnitWeight,
    'weight-per-sq-ft': weightLbPerSqFt,
  } = torn;
  return figure({
    value: sqFtPerLoad({
      payloadLb: num(payload),
      boxCuYd: num(box),
      looseLbPerCuFt: num(looseUnitWeight),
      weightLbPerSqFt: num(weightLbPerSqFt) + (offsetIn * num(unitWeight)) / 12,
      stepSqFt: steps.areaSqFt,
    }),
    unit: 'sq ft',
    decimals: steps.areaDecimals,
    formula:
      'floorStep(min(payloadLb, boxCuYd * 27 * looseLbPerCuFt) / (weightLbPerSqFt + offsetIn * unitWeightLbPerCuFt / 12), stepSqFt)',
    inputs: {
      payloadLb: payload,
      boxCuYd: box,
      looseLbPerCuFt: looseUnitWeight,
      weightLbPerSqFt,
      offsetIn: constant('thicker than planned by', offsetIn, 'in', COMMON_PRACTICE),
      unitWeightLbPerCuFt: unitWeight,
      stepSqFt: chalkStep(steps),
    },
    rounding: 'down',
  });
}

function loadsFigure(area: Figure, areaPerLoad: Figure): Figure {
  return figure({
    value: ceilCount(num(area) / num(areaPerLoad)),
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(areaSqFt / areaPerLoadSqFt, 1)',
    inputs: { areaSqFt: area, areaPerLoadSqFt: areaPerLoad },
    rounding: 'up',
  });
}
