import { ceilCount } from '../../units/index.ts';
import { COMMON_PRACTICE, constant, type Figure, figure, given, num } from '../figure.ts';
import type { Existing } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import { type ExistingFigures, type TearOutResult, weightLbPerSqFt } from '../tear-out/index.ts';
import { type ChalkSteps, chalkStep } from './chalk-steps.ts';
import { sqFtPerLoad } from './load-count.ts';
import type { StreamPlan } from './stream-plan.ts';
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

/** What to chalk of everything that is hauled, for the trailer its loads ride on. */
export function reChalkPlans(
  plans: readonly Pick<StreamPlan, 'trailer' | 'trailerFigures' | 'figures'>[],
  made: {
    readonly existing: Readonly<Record<string, Existing>>;
    readonly tearOut: Pick<TearOutResult['figures'], 'existing'>;
    readonly shapes: Pick<OutlineResult['figures'], 'existing'>;
    readonly chalk: ChalkSteps;
  },
): readonly { readonly id: string; readonly trailer: string; readonly table: ReChalk }[] {
  return plans.flatMap(({ trailer, trailerFigures, figures }) =>
    Object.keys(figures['sq-ft-per-load']).map((id) => ({
      id,
      trailer: trailer.id,
      table: reChalk({
        existing: thingNamed(made.existing, id, 'existing thing'),
        torn: thingNamed(made.tearOut.existing, id, 'existing thing'),
        area: thingNamed(made.shapes.existing, id, 'outline').area,
        trailer: trailerFigures,
        steps: made.chalk,
      }),
    })),
  );
}

/**
 * How much of a thing one load carries and how many loads it takes, if it is thicker or thinner than
 * planned. Weights in the box and in place are those of the plan; thicknesses of which a load would
 * not carry one step of area have no row.
 */
function reChalk(made: {
  readonly existing: Existing;
  readonly torn: ExistingFigures;
  readonly area: Figure;
  readonly trailer: TrailerFigures;
  readonly steps: ChalkSteps;
}): ReChalk {
  const { existing, area, steps } = made;
  const bays = thicknessOffsetsIn(existing.thicknessIn, steps)
    .map((offsetIn) => ({ offsetIn, areaPerLoad: areaPerLoadFigure({ ...made, offsetIn }) }))
    .filter(({ areaPerLoad }) => num(areaPerLoad) > 0);
  const rows = bays.map(({ offsetIn, areaPerLoad }) => {
    const thicknessIn = existing.thicknessIn + offsetIn;
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

function areaPerLoadFigure(made: {
  readonly existing: Existing;
  readonly torn: ExistingFigures;
  readonly trailer: TrailerFigures;
  readonly steps: ChalkSteps;
  readonly offsetIn: number;
}): Figure {
  const { existing, torn, trailer, steps, offsetIn } = made;
  const { payload, 'box-volume': box } = trailer;
  const { 'unit-weight': unitWeight, 'loose-unit-weight': looseUnitWeight } = torn;
  return figure({
    value: sqFtPerLoad({
      payloadLb: num(payload),
      boxCuYd: num(box),
      looseLbPerCuFt: num(looseUnitWeight),
      weightLbPerSqFt: weightLbPerSqFt({
        thicknessIn: existing.thicknessIn + offsetIn,
        unitWeightLbPerCuFt: num(unitWeight),
      }),
      stepSqFt: steps.areaSqFt,
    }),
    unit: 'sq ft',
    decimals: steps.areaDecimals,
    formula:
      'floorStep(min(payloadLb, boxCuYd * 27 * looseLbPerCuFt) / ((plannedIn + offsetIn) * unitWeightLbPerCuFt / 12), stepSqFt)',
    inputs: {
      payloadLb: payload,
      boxCuYd: box,
      looseLbPerCuFt: looseUnitWeight,
      plannedIn: given(`site.existing.${existing.id}.thickness`, existing.thicknessIn, 'in'),
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
