import type { CoreProblem } from '../../problems/index.ts';
import { weekdayOf } from '../../units/index.ts';
import type { BaseResult } from '../base/index.ts';
import { type Figure, num } from '../figure.ts';
import type { BaseSupplier, BreakOut, Company, DumpPlace, Stream, TowVehicle, Trailer } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import { STREAMS, type TearOutResult } from '../tear-out/index.ts';
import type { TopicResult } from '../topic.ts';
import { baseBrought, baseLoads } from './base-brought.ts';
import { type HaulBaseFigures, haulBaseFigures } from './base-figures.ts';
import type { ChalkSteps } from './chalk-steps.ts';
import type { HaulRates } from './cost-figures.ts';
import { type DrivenTrip, drivenTrips } from './driven.ts';
import { baseFrom, type ReChalkTree, reChalked, streamsOf, thingsOf, totalsOf, waysOf } from './hauled.ts';
import { inTime } from './in-time.ts';
import { type HaulLoad, loadTable } from './load-table.ts';
import type { MachineFigures } from './machine-figures.ts';
import { type MachineLeg, type Rides, ridesHr, ridesOf, ridingMachines, type Yard } from './machine-legs.ts';
import { machinesOf } from './machines.ts';
import { driverCount, type Plan, type PlanProblem, swapSavesHr } from './plan/index.ts';
import { planProblem } from './plan-problem.ts';
import { haulProblems } from './problems.ts';
import type { ReChalkRow } from './re-chalk.ts';
import type { Trucks, WorkingDay } from './schedule.ts';
import type { HaulStreamFigures } from './stream-figures.ts';
import type { Limit } from './trailer.ts';
import { type TrailerFigures, trailerFigures } from './trailer-figures.ts';
import type { WayFigures } from './way-figures.ts';
import type { Planned } from './why.ts';
import { type WorkingFigures, workingFigures } from './working-figures.ts';

export type { HaulBaseFigures } from './base-figures.ts';
export { CHALK_STEPS, type ChalkSteps } from './chalk-steps.ts';
export type { DrivenTrip } from './driven.ts';
export {
  boxLimitLbPerCuYd,
  loadCount,
  splitWeightLb,
  sqFtPerLoad,
  volumeOfWeightCuYd,
  weightOfVolumeLb,
} from './load-count.ts';
export type { HaulLoad } from './load-table.ts';
export type { MachineLeg } from './machine-legs.ts';
export { pieceFits } from './piece.ts';
export { type ReChalkFigures, type ReChalkRow, thicknessOffsetsIn } from './re-chalk.ts';
export { type ScheduledTrip, type TripTimes, tripTimes, type WorkingDay } from './schedule.ts';
export type { LoadPiece } from './split.ts';
export type { HaulStreamFigures } from './stream-figures.ts';
export { ticketsUsd, ticketUsd } from './ticket.ts';
export { calcTieDowns, type TieDownFigures } from './tie-down-figures.ts';
export {
  aggregateWorkingLoadLb,
  machineTiedownCount,
  SAME_SIDE_RATIO,
  tiedownCount,
} from './tie-downs.ts';
export { boxVolumeCuYd, fillHeightIn, type Limit, limitsLb, payloadLb, tongueLb } from './trailer.ts';
export type { TrailerFigures } from './trailer-figures.ts';
export { roundTripCount, tripHr } from './trip.ts';
export type { WayFigures } from './way-figures.ts';
export { type HaulWhyFigures, haulWhy } from './why.ts';
export { loaderSets, type WorkingFigures } from './working-figures.ts';

export type HaulFigures = {
  readonly trailers: Readonly<Record<string, TrailerFigures>>;
  /** Only the streams of this job. */
  readonly streams: { readonly [stream in Stream]?: HaulStreamFigures };
  /** By trailer and place: `long-box-to-crusher`. */
  readonly ways: Readonly<Record<string, WayFigures>>;
  /** By existing thing, by the trailer it rides on, then by thickness. */
  readonly 're-chalk': ReChalkTree;
  readonly base: HaulBaseFigures;
  /** Machines on a trailer, by way and number; only where one rides. */
  readonly rides?: Readonly<Record<string, MachineFigures>>;
  /** Only where something is hauled. */
  readonly working?: WorkingFigures;
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

export type HaulData = {
  readonly loads: readonly HaulLoad[];
  /** The rating that sets the payload of each trailer. */
  readonly governing: Readonly<Record<string, Limit>>;
  /** Which of payload and box is full first, of each stream by the trailer it rides on. */
  readonly limitedBy: { readonly [stream in Stream]?: Readonly<Record<string, 'weight' | 'box'>> };
  /** By existing thing that is hauled: the thicknesses that `re-chalk` has figures for, thin to thick. */
  readonly reChalk: Readonly<
    Record<string, readonly { readonly trailer: string; readonly rows: readonly ReChalkRow[] }[]>
  >;
  /** Every trip in driving order, debris first: when it is driven. */
  readonly trips: readonly DrivenTrip[];
  /** Machines on their trailers, to the job and back. */
  readonly legs: readonly MachineLeg[];
  /** Where base is fetched and on what; empty where all is delivered or none is laid. */
  readonly baseFrom: readonly { readonly trailer: string; readonly place: string }[];
  /** Of base, by the supplier [lb]. */
  readonly deliveredLb: number;
  /** Null where there is none. */
  readonly planned: Planned | null;
};

export type HaulResult = TopicResult<HaulFigures, HaulData>;

export type HaulInput = {
  readonly tearOut: TearOutResult['figures'];
  readonly cargo: TearOutResult['data']['cargo'];
  readonly shapes: Pick<OutlineResult['figures'], 'existing'>;
  readonly chalk: ChalkSteps;
  readonly base: BaseResult['figures'];
  readonly baseSupplier: BaseSupplier;
  /** The most base that may come before the rubble is gone; null where there is room for all [lb]. */
  readonly baseRoomLb: number | null;
  /** Those that come to this job. */
  readonly trailers: Readonly<Record<string, Trailer>>;
  readonly towVehicle: TowVehicle;
  readonly loadReserveLb: number;
  readonly loadingHr: number;
  readonly swapHr: number | null;
  readonly driverCount: number;
  readonly yard: Yard | null;
  readonly machines: Company['machines'];
  readonly production: Company['production'];
  /** How what goes is broken out, each way once. */
  readonly brokenBy: readonly BreakOut[];
  readonly places: Readonly<Record<string, DumpPlace>>;
  readonly day: WorkingDay;
  /** By when all is to be hauled; null where nobody said. */
  readonly haulByOn: string | null;
  readonly laborUsdPerHr: Figure;
};

const NOTHING: Plan = {
  costUsd: 0,
  tripCount: 0,
  byStream: [],
  shared: [],
  baseTrips: [],
  deliveryCount: 0,
};

/**
 * What is hauled, on which trailers, to which places, in how many loads, and how the base comes: the
 * plan of trips that costs least in fees, drivers, truck and deliveries.
 *
 * Without a trailer or an open place for a stream there is a problem, and the stream has no figures.
 */
export function calcHaul(input: HaulInput): HaulResult {
  const rates: HaulRates = input;
  const trailers = Object.values(input.trailers).map((trailer) => ({
    trailer,
    ...trailerFigures(trailer, input.towVehicle, input.loadReserveLb),
  }));
  const usable = trailers.filter(({ problem }) => problem === null);
  const open = Object.values(input.places).filter(({ openOn }) =>
    openOn.includes(weekdayOf(input.day.firstOn)),
  );
  const present = STREAMS.filter((stream) => input.tearOut.streams[stream] !== undefined);
  const going =
    usable.length === 0
      ? []
      : present.filter((stream) => open.some(({ accepts }) => accepts.includes(stream)));
  const allTime = planProblem({
    trailers: usable,
    places: open,
    streams: going.map((stream) => ({
      stream,
      torn: thingNamed(input.tearOut.streams, stream, 'stream'),
    })),
    base: input.base,
    supplier: input.baseSupplier,
    baseRoomLb: input.baseRoomLb,
    rates,
  });
  const byId = Object.fromEntries(usable.map((one) => [one.trailer.id, one]));
  const riding = ridingMachines({
    ...input,
    isDug: input.tearOut.streams.soil !== undefined,
    hasBase: num(input.base.total['order-tons']) > 0,
  });
  const { rides, problems: rideProblems } = ridesOf(riding, usable, input.production);
  const trucks = trucksOf(allTime, input);
  const day = dayAfter(rides, input);
  const drivenBy = (some: Plan) => {
    const setting = { problem: allTime, trailers: byId, places: input.places };
    const loads = loadTable(some, { ...setting, thingsOf: (stream) => thingsOf(input.cargo, stream) });
    return { loads, ...drivenTrips(loads, some, { ...input, day, trucks }) };
  };
  const { problem, plan, problems: lateProblems } = inTime(allTime, { ...input, day, trucks, drivenBy });
  const driven = drivenBy(plan ?? NOTHING);
  const { loads } = driven;
  const laden = { ...input, loads, trailers: byId };
  const streams = streamsOf(laden, going);
  const chalked = reChalked(laden);
  const brought = baseBrought(
    plan ?? NOTHING,
    plan === null ? { ...problem, base: null } : problem,
    loads.filter(({ returns }) => returns === 'base'),
  );
  const machines = machinesOf(rides, { ...input, rates, trailers: byId, loads, trips: driven.trips });
  const working = workingFigures({ problem, loads, places: input.places, rates });
  const ways = waysOf(laden, { rates, working });
  const base = haulBaseFigures({
    plan: plan ?? NOTHING,
    loads,
    brought: baseLoads(loads, plan ?? NOTHING, brought.ownLb),
    base: input.base,
    supplier: input.baseSupplier,
    places: input.places,
    rates,
  });

  return {
    figures: {
      trailers: Object.fromEntries(trailers.map(({ trailer, figures }) => [trailer.id, figures])),
      streams: streams.figures,
      ways,
      're-chalk': chalked.figures,
      base,
      ...(working === null ? {} : { working }),
      ...(machines.legs.length === 0 ? {} : { rides: machines.figures }),
      total: totalsOf(ways, base, { swapped: working?.swapped ?? null, rides: machines.figures }),
    },
    data: {
      loads,
      governing: Object.fromEntries(trailers.map(({ trailer, governing }) => [trailer.id, governing])),
      limitedBy: streams.limitedBy,
      reChalk: chalked.rows,
      trips: driven.trips,
      legs: machines.legs,
      baseFrom: baseFrom(loads, plan ?? NOTHING),
      deliveredLb: brought.deliveredLb,
      planned: plan === null ? null : { problem, plan },
    },
    problems: [
      ...trailers.flatMap((one): CoreProblem[] => (one.problem === null ? [] : [one.problem])),
      ...haulProblems(present, input),
      ...driven.problems,
      ...lateProblems,
      ...rideProblems,
    ],
  };
}

/** Nothing is loaded before the machines are there. */
function dayAfter({ 'to-job': rides }: Rides, { day, yard }: Pick<HaulInput, 'day' | 'yard'>): WorkingDay {
  return yard === null || rides.length === 0
    ? day
    : { ...day, firstFreeHr: day.startsHr + ridesHr(rides, yard) };
}

function trucksOf(problem: PlanProblem, { swapHr }: Pick<HaulInput, 'swapHr'>): Trucks {
  return { count: driverCount(problem), swapHr: swapSavesHr(problem) > 0 ? swapHr : null };
}
