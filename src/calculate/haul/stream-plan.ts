import type { RateUnit } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, type FigureUnit, figure, given, num } from '../figure.ts';
import type { DumpPlace, Trailer } from '../job.ts';
import type { ExistingFigures, StreamFigures as TornStreamFigures } from '../tear-out/index.ts';
import { type ChalkSteps, chalkStep } from './chalk-steps.ts';
import { type HaulRates, haulCostFigure, placeInputs } from './cost-figures.ts';
import { boxLimitLbPerCuYd, loadCount, sqFtPerLoad, weightOfVolumeLb } from './load-count.ts';
import { type HauledThing, type SplitLoad, splitStream } from './split.ts';
import { ticketsUsd } from './ticket.ts';
import type { TrailerFigures } from './trailer-figures.ts';
import { tripHr } from './trip.ts';

export type HaulStreamFigures = {
  readonly loads: Figure;
  /** Of each existing thing, as much as makes a full load, down to a step to chalk; none for soil. */
  readonly 'sq-ft-per-load': Readonly<Record<string, Figure>>;
  /** Mean [lb]. */
  readonly 'weight-per-load': Figure;
  /** What a level box of it would weigh [lb]. */
  readonly 'level-box-weight': Figure;
  /** All tickets of the stream [$]. */
  readonly fee: Figure;
  readonly trips: Figure;
  /** Of the driver [h]. */
  readonly hours: Figure;
  /** [mi] */
  readonly miles: Figure;
  /** Fees, driver and truck [$]. */
  readonly cost: Figure;
};

/** One way to haul a stream: with this trailer to this place. */
export type StreamPlan = {
  readonly trailer: Trailer;
  readonly trailerFigures: TrailerFigures;
  readonly place: DumpPlace;
  readonly loads: readonly SplitLoad[];
  readonly limitedBy: 'weight' | 'box';
  readonly figures: HaulStreamFigures;
};

export type UsableTrailer = { readonly trailer: Trailer; readonly figures: TrailerFigures };

/** A stream to haul, with the things it is made of. */
export type HauledStream = {
  readonly torn: TornStreamFigures;
  readonly things: readonly HauledThing[];
  readonly existing: Readonly<Record<string, ExistingFigures>>;
  readonly chalk: ChalkSteps;
};

/**
 * The cheapest way to haul a stream: fees, driver and truck. Ties go to fewer trips, then to the
 * trailer and the place first by name. Null where there is no trailer or no place.
 */
export function cheapestPlan(
  stream: HauledStream,
  trailers: readonly UsableTrailer[],
  places: readonly DumpPlace[],
  rates: HaulRates,
): StreamPlan | null {
  const plans = trailers.flatMap((trailer) =>
    places.map((place) => planStream(stream, trailer, place, rates)),
  );
  return plans.reduce<StreamPlan | null>(
    (best, plan) => (best === null || isBetter(plan, best) ? plan : best),
    null,
  );
}

function isBetter(plan: StreamPlan, other: StreamPlan): boolean {
  const moreCents = Math.sign(num(plan.figures.cost) - num(other.figures.cost));
  if (moreCents !== 0) return moreCents < 0;
  if (plan.loads.length !== other.loads.length) return plan.loads.length < other.loads.length;
  if (plan.trailer.id !== other.trailer.id) return plan.trailer.id < other.trailer.id;
  return plan.place.id < other.place.id;
}

function planStream(
  stream: HauledStream,
  { trailer, figures: trailerFigures }: UsableTrailer,
  place: DumpPlace,
  rates: HaulRates,
): StreamPlan {
  const { torn } = stream;
  const { payload, 'box-volume': box } = trailerFigures;
  const room = { payloadLb: num(payload), boxCuYd: num(box) };
  const split = splitStream(stream.things, room);
  const loads = loadsFigure(torn, trailerFigures, split.length);
  const looseLbPerCuYd = num(torn.weight) / num(torn['loose-volume']);
  const fee = feeFigure(place, split, loads, torn);
  const trips = figure({ value: num(loads), unit: 'each', decimals: 0, formula: 'loads', inputs: { loads } });
  const { driveHr, turnHr, distanceMi } = placeInputs(place);
  const hours = figure({
    value:
      num(trips) *
      tripHr({
        loadingHr: rates.loadingHr,
        outHr: place.driveHr,
        turnHr: place.turnHr,
        backHr: place.driveHr,
      }),
    unit: 'h',
    decimals: 1,
    formula: 'trips * (loadingHr + driveHr + turnHr + driveHr)',
    inputs: { trips, loadingHr: given('company.loading-time', rates.loadingHr, 'h'), driveHr, turnHr },
    source: COMPANY_FIGURE,
  });
  const miles = figure({
    value: num(trips) * 2 * place.distanceMi,
    unit: 'mi',
    decimals: 0,
    formula: 'trips * 2 * distanceMi',
    inputs: { trips, distanceMi },
    source: COMPANY_FIGURE,
  });
  return {
    trailer,
    trailerFigures,
    place,
    loads: split,
    limitedBy: looseLbPerCuYd >= boxLimitLbPerCuYd(room.payloadLb, room.boxCuYd) ? 'weight' : 'box',
    figures: {
      loads,
      'sq-ft-per-load': Object.fromEntries(
        Object.entries(stream.existing).map(([id, thing]) => [
          id,
          sqFtFigure(thing, trailerFigures, stream.chalk),
        ]),
      ),
      'weight-per-load': figure({
        value: num(torn.weight) / num(loads),
        unit: 'lb',
        decimals: 0,
        formula: 'weightLb / loads',
        inputs: { weightLb: torn.weight, loads },
      }),
      'level-box-weight': figure({
        value: weightOfVolumeLb(room.boxCuYd, looseLbPerCuYd),
        unit: 'lb',
        decimals: 0,
        formula: 'boxCuYd * (weightLb / looseCuYd)',
        inputs: { boxCuYd: box, weightLb: torn.weight, looseCuYd: torn['loose-volume'] },
      }),
      fee,
      trips,
      hours,
      miles,
      cost: haulCostFigure({ hours, miles, fee }, rates),
    },
  };
}

function loadsFigure(torn: TornStreamFigures, trailer: TrailerFigures, splitCount: number): Figure {
  const { payload, 'box-volume': box } = trailer;
  const counted = loadCount({
    weightLb: num(torn.weight),
    looseCuYd: num(torn['loose-volume']),
    payloadLb: num(payload),
    boxCuYd: num(box),
  });
  return figure({
    value: splitCount,
    unit: 'each',
    decimals: 0,
    formula:
      splitCount === counted
        ? 'max(ceilStep(weightLb / payloadLb, 1), ceilStep(looseCuYd / boxCuYd, 1))'
        : { method: 'loads of equal weight, as few as keep the loosest of them within the box' },
    inputs: { weightLb: torn.weight, payloadLb: payload, looseCuYd: torn['loose-volume'], boxCuYd: box },
    source: 'common practice, no source',
    rounding: 'up',
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

const FEE_UNITS: Partial<Record<RateUnit, FigureUnit>> = { load: '$/load', ton: '$/ton', yd3: '$/yd3' };

function feeFigure(
  place: DumpPlace,
  split: readonly SplitLoad[],
  loads: Figure,
  torn: TornStreamFigures,
): Figure {
  const path = `company.places.${place.id}`;
  const per = place.fee.perUnit;
  const tariff = {
    loads,
    minimumUsd: given(`${path}.minimum`, place.minimumUsd, '$/visit'),
    feeUsd: given(`${path}.fee`, place.fee.amountUsd, FEE_UNITS[per] ?? '$'),
  };
  const made = { value: ticketsUsd(place, split), unit: '$', decimals: 2, source: COMPANY_FIGURE } as const;
  if (per === 'load') {
    const formula = 'loads * roundCent(max(minimumUsd, feeUsd))';
    return figure({ ...made, formula, inputs: tariff, rounding: 'cent' });
  }
  const billed = per === 'ton' ? 'tons' : 'loose yards';
  const method = `sum over the loads, each to the cent: the fee times the ${billed} of the load, and no less than the minimum`;
  const quantity = per === 'ton' ? { weightLb: torn.weight } : { looseCuYd: torn['loose-volume'] };
  return figure({ ...made, formula: { method }, inputs: { ...tariff, ...quantity }, rounding: 'cent' });
}
