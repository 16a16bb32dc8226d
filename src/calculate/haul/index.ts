import type { CoreProblem } from '../../problems/index.ts';
import type { BaseResult } from '../base/index.ts';
import { type Figure, num } from '../figure.ts';
import type { BaseSupplier, DumpPlace, Existing, Stream, TowVehicle, Trailer } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { sumFigure, thingNamed } from '../parts.ts';
import { inputKey, sumOfUsdParts } from '../sum-figure.ts';
import { STREAMS, type TearOutResult } from '../tear-out/index.ts';
import type { TopicResult } from '../topic.ts';
import { type BasePlan, type HaulBaseFigures, planBase } from './base-plan.ts';
import type { ChalkSteps } from './chalk-steps.ts';
import type { HaulRates } from './cost-figures.ts';
import { type HaulLoad, loadTable } from './load-table.ts';
import { type ReChalkFigures, type ReChalkRow, reChalkPlans } from './re-chalk.ts';
import type { HauledThing } from './split.ts';
import { cheapestPlan, type HauledStream, type HaulStreamFigures, type StreamPlan } from './stream-plan.ts';
import type { Limit } from './trailer.ts';
import { type TrailerFigures, trailerFigures } from './trailer-figures.ts';

export type { HaulBaseFigures } from './base-plan.ts';
export { CHALK_STEPS, type ChalkSteps } from './chalk-steps.ts';
export {
  boxLimitLbPerCuYd,
  loadCount,
  splitWeightLb,
  sqFtPerLoad,
  volumeOfWeightCuYd,
  weightOfVolumeLb,
} from './load-count.ts';
export type { HaulLoad } from './load-table.ts';
export { type ReChalkFigures, type ReChalkRow, thicknessOffsetsIn } from './re-chalk.ts';
export type { LoadPiece } from './split.ts';
export type { HaulStreamFigures } from './stream-plan.ts';
export { ticketsUsd, ticketUsd } from './ticket.ts';
export { boxVolumeCuYd, fillHeightIn, type Limit, limitsLb, payloadLb, tongueLb } from './trailer.ts';
export type { TrailerFigures } from './trailer-figures.ts';
export { roundTripCount, tripHr } from './trip.ts';

export type HaulFigures = {
  readonly trailers: Readonly<Record<string, TrailerFigures>>;
  /** Only the streams of this job. */
  readonly streams: { readonly [stream in Stream]?: HaulStreamFigures };
  /** By existing thing, then by thickness. */
  readonly 're-chalk': Readonly<Record<string, Readonly<Record<string, ReChalkFigures>>>>;
  readonly base: HaulBaseFigures;
  /** Debris and base together; what a supplier asks for a delivery is not in it. */
  readonly total: {
    readonly trips: Figure;
    /** Of the driver [h]. */
    readonly hours: Figure;
    /** [mi] */
    readonly miles: Figure;
    /** [$] */
    readonly fees: Figure;
    /** [$] */
    readonly cost: Figure;
  };
};

export type HaulChoice = {
  readonly trailer: string;
  readonly place: string;
  /** Which of payload and box is full first. */
  readonly limitedBy: 'weight' | 'box';
};

export type HaulData = {
  readonly loads: readonly HaulLoad[];
  /** The rating that sets the payload of each trailer. */
  readonly governing: Readonly<Record<string, Limit>>;
  readonly choices: { readonly [stream in Stream]?: HaulChoice };
  /** By existing thing that is hauled: the thicknesses that `re-chalk` has figures for, thin to thick. */
  readonly reChalk: Readonly<
    Record<string, { readonly trailer: string; readonly rows: readonly ReChalkRow[] }>
  >;
  /** Where base is fetched and on what; null where it is delivered or none is laid. */
  readonly baseFrom: { readonly trailer: string; readonly place: string } | null;
};

export type HaulResult = TopicResult<HaulFigures, HaulData>;

export type HaulInput = {
  readonly tearOut: TearOutResult['figures'];
  readonly cargo: TearOutResult['data']['cargo'];
  readonly existing: Readonly<Record<string, Existing>>;
  readonly shapes: Pick<OutlineResult['figures'], 'existing'>;
  readonly chalk: ChalkSteps;
  readonly base: BaseResult['figures'];
  readonly baseSupplier: BaseSupplier;
  /** Those that come to this job. */
  readonly trailers: Readonly<Record<string, Trailer>>;
  readonly towVehicle: TowVehicle;
  readonly loadReserveLb: number;
  readonly loadingHr: number;
  readonly places: Readonly<Record<string, DumpPlace>>;
  readonly laborUsdPerHr: Figure;
};

/**
 * What is hauled, on which trailer, to which place, in how many loads, and how the base comes.
 *
 * Each stream goes the way that costs least in fees, driver and truck. Without a trailer or a
 * place for a stream there is a problem, and the stream has no figures.
 */
export function calcHaul(input: HaulInput): HaulResult {
  const rates: HaulRates = input;
  const trailers = Object.values(input.trailers).map((trailer) => ({
    trailer,
    ...trailerFigures(trailer, input.towVehicle, input.loadReserveLb),
  }));
  const usable = trailers.filter(({ problem }) => problem === null);
  const places = Object.values(input.places);
  const present = STREAMS.filter((stream) => input.tearOut.streams[stream] !== undefined);

  const plans = present.flatMap((stream) => {
    const accepting = places.filter((place) => place.accepts.includes(stream));
    const plan = cheapestPlan(hauledStream(stream, input), usable, accepting, rates);
    return plan === null ? [] : [{ stream, plan }];
  });
  const tripsTo = (trailerId: string, placeId: string) =>
    plans
      .filter(({ plan }) => plan.trailer.id === trailerId && plan.place.id === placeId)
      .reduce((sum, { plan }) => sum + plan.loads.length, 0);
  const base = planBase({
    base: input.base,
    supplier: input.baseSupplier,
    trailers: usable,
    places,
    tripsTo,
    rates,
  });

  const chalked = reChalkPlans(
    plans.map(({ plan }) => plan),
    input,
  );

  return {
    figures: {
      trailers: Object.fromEntries(trailers.map(({ trailer, figures }) => [trailer.id, figures])),
      streams: Object.fromEntries(plans.map(({ stream, plan }) => [stream, plan.figures])),
      're-chalk': Object.fromEntries(chalked.map(({ id, table }) => [id, table.figures])),
      base: base.figures,
      total: totalFigures(plans, base),
    },
    data: {
      loads: loadTable(plans, base, num(base.figures.paired)),
      governing: Object.fromEntries(trailers.map(({ trailer, governing }) => [trailer.id, governing])),
      choices: Object.fromEntries(plans.map(({ stream, plan }) => [stream, choiceOf(plan)])),
      reChalk: Object.fromEntries(
        chalked.map(({ id, trailer, table }) => [id, { trailer, rows: table.rows }]),
      ),
      baseFrom:
        base.trailer === null || base.place === null
          ? null
          : { trailer: base.trailer.id, place: base.place.id },
    },
    problems: [
      ...trailers.flatMap(({ problem }) => (problem === null ? [] : [problem])),
      ...missing(present, input),
    ],
  };
}

/** What lacks for the streams of the job: a trailer at all, or a place for one of them. */
function missing(present: readonly Stream[], input: HaulInput): CoreProblem[] {
  const noTrailer =
    present.length > 0 && Object.keys(input.trailers).length === 0
      ? [{ code: 'no-trailer', path: 'plan.trailers', parts: {} }]
      : [];
  const noPlace = present
    .filter((stream) => !Object.values(input.places).some((place) => place.accepts.includes(stream)))
    .map((stream) => ({ code: 'no-place-for-stream', path: 'company.places', parts: { stream } }));
  return [...noTrailer, ...noPlace];
}

function hauledStream(stream: Stream, input: HaulInput): HauledStream {
  const torn = input.tearOut.streams[stream];
  if (torn === undefined) throw new RangeError(`there is no ${stream} to haul`);
  const cargo = input.cargo.filter((one) => one.stream === stream);
  const things = cargo.map(
    (one): HauledThing => ({
      existingId: one.existingId,
      weightLb: num(one.weight),
      looseLbPerCuFt: num(one['loose-unit-weight']),
      weightLbPerSqFt: one['weight-per-sq-ft'] === null ? null : num(one['weight-per-sq-ft']),
    }),
  );
  const existing = Object.fromEntries(
    cargo.flatMap(({ existingId, 'weight-per-sq-ft': perSqFt }) =>
      existingId === null || perSqFt === null
        ? []
        : [[existingId, thingNamed(input.tearOut.existing, existingId, 'existing thing')] as const],
    ),
  );
  return { torn, things, existing, chalk: input.chalk };
}

function totalFigures(
  plans: readonly { readonly stream: Stream; readonly plan: StreamPlan }[],
  base: BasePlan,
): HaulFigures['total'] {
  const ofStreams = (name: 'trips' | 'hours' | 'miles' | 'fee' | 'cost') =>
    plans.map(({ stream, plan }) => [stream, plan.figures[name]] as const);
  const sum = (
    name: 'trips' | 'hours' | 'miles',
    own: Figure,
    shown: { unitSuffix: string; unit: 'each' | 'h' | 'mi'; decimals: number },
  ) => sumFigure({ parts: Object.fromEntries([...ofStreams(name), ['base', own]]), ...shown });
  const fees = ofStreams('fee').map(([id, input]) => ({ key: inputKey('fee', id, 'Usd'), input }));
  const costs = [...ofStreams('cost'), ['base', base.figures.cost] as const];
  return {
    trips: sum('trips', base.figures['own-trips'], { unitSuffix: 'Trips', unit: 'each', decimals: 0 }),
    hours: sum('hours', base.figures.hours, { unitSuffix: 'Hr', unit: 'h', decimals: 1 }),
    miles: sum('miles', base.figures.miles, { unitSuffix: 'Mi', unit: 'mi', decimals: 0 }),
    fees: sumOfUsdParts(fees),
    cost: sumOfUsdParts(costs.map(([id, input]) => ({ key: inputKey('cost', id, 'Usd'), input }))),
  };
}

function choiceOf({ trailer, place, limitedBy }: StreamPlan): HaulChoice {
  return { trailer: trailer.id, place: place.id, limitedBy };
}
