import { type Figure, figure, num } from '../figure.ts';
import type { Stream } from '../job.ts';
import type { ExistingFigures, StreamFigures as TornStreamFigures } from '../tear-out/index.ts';
import { type ChalkSteps, chalkStep } from './chalk-steps.ts';
import { boxLimitLbPerCuYd, sqFtPerLoad, weightOfVolumeLb } from './load-count.ts';
import type { HaulLoad } from './load-table.ts';
import type { TrailerFigures } from './trailer-figures.ts';
import type { UsableTrailer } from './usable-trailer.ts';

export type HaulStreamFigures = {
  /** On which there is any of it, of the plan that costs least. */
  readonly loads: Figure;
  /** Payloads of a trailer and boxes of it that it would fill, unrounded: by the trailer. */
  readonly 'full-loads': Readonly<Record<string, Figure>>;
  /** [lb] */
  readonly 'heaviest-load': Figure;
  /** By the trailer that it rides on: what a level box of it would weigh [lb]. */
  readonly 'level-box-weight': Readonly<Record<string, Figure>>;
  /**
   * Of each existing thing, as much as makes a full load, down to a step to chalk: by the trailer that
   * it rides on. None for what is not loaded by the square foot.
   */
  readonly 'sq-ft-per-load': Readonly<Record<string, Readonly<Record<string, Figure>>>>;
};

/** What of a stream is hauled, and its things that are loaded by the square foot. */
export type HauledStream = {
  readonly stream: Stream;
  readonly torn: TornStreamFigures;
  readonly existing: Readonly<Record<string, ExistingFigures>>;
  /** Trailers that its loads ride on, by id. */
  readonly trailers: Readonly<Record<string, UsableTrailer>>;
  readonly loads: readonly HaulLoad[];
  readonly chalk: ChalkSteps;
};

export function haulStreamFigures(hauled: HauledStream): HaulStreamFigures {
  const { torn, loads, trailers, existing, chalk } = hauled;
  const byTrailer = (figureOf: (figures: TrailerFigures) => Figure) =>
    Object.fromEntries(Object.entries(trailers).map(([id, { figures }]) => [id, figureOf(figures)]));
  return {
    loads: figure({
      value: loads.length,
      unit: 'each',
      decimals: 0,
      formula: { method: 'loads with any of it, of the plan of trips that costs least' },
      inputs: { weightLb: torn.weight, looseCuYd: torn['loose-volume'] },
    }),
    'full-loads': byTrailer((figures) => fullLoadsFigure(torn, figures)),
    'heaviest-load': figure({
      value: Math.max(...loads.map(({ weightLb }) => weightLb)),
      unit: 'lb',
      decimals: 0,
      formula: { method: 'the heaviest of its loads: equally full where they cost the same' },
      inputs: { weightLb: torn.weight },
    }),
    'level-box-weight': byTrailer((figures) => levelBoxFigure(torn, figures)),
    'sq-ft-per-load': Object.fromEntries(
      Object.entries(existing).map(([id, thing]) => [
        id,
        byTrailer((figures) => sqFtFigure(thing, figures, chalk)),
      ]),
    ),
  };
}

/** Which of payload and box is full first. */
export function limitedBy(torn: TornStreamFigures, trailer: TrailerFigures): 'weight' | 'box' {
  const looseLbPerCuYd = num(torn.weight) / num(torn['loose-volume']);
  return looseLbPerCuYd >= boxLimitLbPerCuYd(num(trailer.payload), num(trailer['box-volume']))
    ? 'weight'
    : 'box';
}

function fullLoadsFigure(torn: TornStreamFigures, trailer: TrailerFigures): Figure {
  const { payload, 'box-volume': box } = trailer;
  return figure({
    value: Math.max(num(torn.weight) / num(payload), num(torn['loose-volume']) / num(box)),
    unit: 'each',
    decimals: 2,
    formula: 'max(weightLb / payloadLb, looseCuYd / boxCuYd)',
    inputs: { weightLb: torn.weight, payloadLb: payload, looseCuYd: torn['loose-volume'], boxCuYd: box },
  });
}

function levelBoxFigure(torn: TornStreamFigures, { 'box-volume': box }: TrailerFigures): Figure {
  const looseLbPerCuYd = num(torn.weight) / num(torn['loose-volume']);
  return figure({
    value: weightOfVolumeLb(num(box), looseLbPerCuYd),
    unit: 'lb',
    decimals: 0,
    formula: 'boxCuYd * (weightLb / looseCuYd)',
    inputs: { boxCuYd: box, weightLb: torn.weight, looseCuYd: torn['loose-volume'] },
  });
}

function sqFtFigure(thing: ExistingFigures, trailer: TrailerFigures, chalk: ChalkSteps): Figure {
  const { payload, 'box-volume': box } = trailer;
  return figure({
    value: sqFtPerLoad({
      payloadLb: num(payload),
      boxCuYd: num(box),
      looseLbPerCuFt: num(thing['loose-unit-weight']),
      weightLbPerSqFt: num(thing['weight-per-sq-ft']),
      stepSqFt: chalk.areaSqFt,
    }),
    unit: 'sq ft',
    decimals: chalk.areaDecimals,
    formula: 'floorStep(min(payloadLb, boxCuYd * 27 * looseLbPerCuFt) / weightLbPerSqFt, stepSqFt)',
    inputs: {
      payloadLb: payload,
      boxCuYd: box,
      looseLbPerCuFt: thing['loose-unit-weight'],
      weightLbPerSqFt: thing['weight-per-sq-ft'],
      stepSqFt: chalkStep(chalk),
    },
    rounding: 'down',
  });
}
