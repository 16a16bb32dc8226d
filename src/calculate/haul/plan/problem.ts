import type { Stream } from '../../job.ts';

/*
 * The plan of trips as plain numbers: what is to go, what may carry it, where it may go, what that
 * costs. Everything that has a name is planned in the order of its name, so that the order in which
 * it is written changes nothing.
 */

export type PlanTrailer = { readonly id: string; readonly payloadLb: number; readonly boxCuYd: number };

export type PlanStream = {
  readonly stream: Stream;
  /** Above 0 [lb]. */
  readonly weightLb: number;
  /** Mean of what it is made of, in the box [lb/yd3]. */
  readonly looseLbPerCuYd: number;
};

/** What a load pays at the gate: so much a load, a short ton and a loose yard, together. */
export type Tariff = {
  readonly usdPerLoad: number;
  readonly usdPerTon: number;
  readonly usdPerCuYd: number;
};

export type PlanPlace = {
  readonly id: string;
  readonly accepts: readonly Stream[];
  readonly tariff: Tariff;
  /** For a load that goes back with base; the same as `tariff` where it makes no difference. */
  readonly tariffWithBase: Tariff;
  readonly minimumUsd: number;
  /** Added for a load that holds any of the stream. */
  readonly surcharges: { readonly [stream in Stream]?: Tariff };
  /** Whether what it accepts may share a load. */
  readonly mixedLoads: boolean;
  readonly distanceMi: number;
  readonly driveHr: number;
  readonly turnHr: number;
  readonly sellsBase: boolean;
  /** Of base that is bought there, and the least for a visit [$]. */
  readonly baseUsdPerLb: number;
  readonly baseMinimumUsd: number;
};

export type PlanBase = {
  /** To be brought in all, above 0 [lb]. */
  readonly weightLb: number;
  /** In the box [lb/yd3]. */
  readonly looseLbPerCuYd: number;
  /** At the supplier's. */
  readonly usdPerLb: number;
  readonly deliveryUsd: number;
  /** What one delivery brings [lb]. */
  readonly deliveryLb: number;
  /** The most that may come while rubble still leaves; null where there is room for all [lb]. */
  readonly roomLb: number | null;
};

export type PlanRates = {
  readonly driverUsdPerHr: number;
  /** One of the two is 0. */
  readonly truckUsdPerHr: number;
  readonly truckUsdPerMi: number;
  readonly loadingHr: number;
  /** Dropping one trailer and taking another that is full; null where the truck waits while it is loaded [h]. */
  readonly swapHr: number | null;
  /** Each with a truck; there is one loader. */
  readonly driverCount: number;
};

export type PlanProblem = {
  readonly trailers: readonly PlanTrailer[];
  readonly places: readonly PlanPlace[];
  readonly streams: readonly PlanStream[];
  /** Null where none is laid. */
  readonly base: PlanBase | null;
  readonly rates: PlanRates;
  /** The most that all drivers may take together; null where nothing limits it [h]. */
  readonly mostHr: number | null;
  /** The most that the driver of any one trailer may take, where each keeps his own; null likewise [h]. */
  readonly mostTrailerHr: number | null;
};

/** Trips of one kind: with this trailer to this place and back, empty or with base. */
export type PlannedTrips = {
  readonly trailer: string;
  readonly place: string;
  readonly withBase: boolean;
  /** 1 or more. */
  readonly count: number;
};

/** A load that several streams share. */
export type SharedLoad = Omit<PlannedTrips, 'count'> & {
  readonly parts: readonly { readonly stream: Stream; readonly weightLb: number }[];
};

export type Plan = {
  /** Fees, drivers and truck, base and its deliveries, each ticket to the fraction of a cent [$]. */
  readonly costUsd: number;
  readonly tripCount: number;
  readonly byStream: readonly {
    readonly stream: Stream;
    /** What goes on them; the rest shares a load [lb]. */
    readonly weightLb: number;
    readonly trips: readonly PlannedTrips[];
  }[];
  readonly shared: readonly SharedLoad[];
  /** Trips for base alone. */
  readonly baseTrips: readonly PlannedTrips[];
  readonly deliveryCount: number;
};
