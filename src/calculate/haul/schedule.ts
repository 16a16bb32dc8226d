import { addDaysOn, nextWorkdayOn, weekdayOf } from '../../units/index.ts';
import type { DumpPlace } from '../job.ts';

/** A trip to be driven: with rubble, or for base alone. */
export type ScheduledTrip = {
  readonly trailer: string;
  readonly place: Pick<DumpPlace, 'id' | 'driveHr' | 'turnHr' | 'open' | 'openOn'>;
  /** 0 where nothing is loaded on the job [h]. */
  readonly loadingHr: number;
  readonly withBase: boolean;
};

/** When a trip is driven, in hours from midnight. */
export type TripTimes = {
  readonly on: string;
  /** Loading starts; null where it was filled the evening before. */
  readonly startsHr: number | null;
  readonly leavesHr: number;
  readonly arrivesHr: number;
  readonly backHr: number;
};

export type WorkingDay = {
  /** The first day. */
  readonly firstOn: string;
  readonly startsHr: number;
  readonly lengthHr: number;
  /** On the first day nothing is loaded before this, where machines have to come first; else as on others [h]. */
  readonly firstFreeHr?: number;
};

/** Who drives, with one loader. */
export type Trucks = {
  readonly count: number;
  /** One truck drops a trailer and takes another that is full; null where trailers stay hitched [h]. */
  readonly swapHr: number | null;
};

type Truck = { readonly freeHr: number; readonly trailer: string | null };
/** Where everything stands on one day. */
type State = {
  readonly on: string;
  readonly trucks: readonly Truck[];
  readonly loaderFreeHr: number;
  /** When each trailer was dropped, those that were today. */
  readonly droppedHr: Readonly<Record<string, number>>;
};
type Driven = { readonly times: TripTimes; readonly after: State };

/** Ten years of days on which a place is closed: it is never open. */
const MOST_DAYS = 3650;
/** Hours that are nothing but the noise of floating point. */
const NOISE_HR = 1e-9;

/**
 * Trips in their order, filled by one loader one after the other, each driven by the truck that has its
 * trailer or else is free first. A trip is begun where it is back within the working day and is at the
 * gate before the last load; else on the next workday on which the place is open. A trip longer than a
 * day is begun in the morning.
 *
 * @returns Of each trip; null where the place lets nobody in who leaves in the morning.
 */
export function tripTimes(
  trips: readonly ScheduledTrip[],
  day: WorkingDay,
  trucks: Trucks = { count: 1, swapHr: null },
): readonly (TripTimes | null)[] {
  let state = morning(
    day.firstOn,
    day,
    Array.from({ length: trucks.count }, () => null),
  );
  return trips.map((trip) => {
    const driven = today(trip, state, { day, trucks }) ?? later(trip, state, { day, trucks });
    if (driven === null) return null;
    state = driven.after;
    return driven.times;
  });
}

type Setting = { readonly day: WorkingDay; readonly trucks: Trucks };

/** When loading may start on a day. */
function startOn(on: string, { firstOn, firstFreeHr, startsHr }: WorkingDay): number {
  return on === firstOn ? (firstFreeHr ?? startsHr) : startsHr;
}

function morning(on: string, day: WorkingDay, hitched: readonly (string | null)[]): State {
  const startsHr = startOn(on, day);
  const trucks = hitched.map((trailer) => ({ freeHr: startsHr, trailer }));
  return { on, trucks, loaderFreeHr: startsHr, droppedHr: {} };
}

function today(trip: ScheduledTrip, state: State, setting: Setting): Driven | null {
  const driven = drive(trip, state, setting);
  const { day } = setting;
  const isIn =
    isOpenOn(state.on, trip) &&
    !isLate(driven.times, trip) &&
    driven.times.backHr <= day.startsHr + day.lengthHr + NOISE_HR;
  return isIn ? driven : null;
}

function later(trip: ScheduledTrip, state: State, setting: Setting): Driven | null {
  const { day } = setting;
  const isFresh = state.trucks.every(({ freeHr }) => freeHr === day.startsHr);
  const on = isFresh && isOpenOn(state.on, trip) ? state.on : nextOpenOn(state.on, trip);
  if (on === null) return null;
  const isFilled = on !== state.on && isFilledBy(day.startsHr + day.lengthHr, trip, state, setting);
  const hitched = state.trucks.map(({ trailer }) => trailer);
  const driven = drive(trip, morning(on, day, hitched), setting, isFilled);
  return isLate(driven.times, trip) ? null : driven;
}

/** Whether a trailer that stands there is full before the evening. */
function isFilledBy(eveningHr: number, trip: ScheduledTrip, state: State, { day, trucks }: Setting): boolean {
  if (trucks.swapHr === null || isHitched(trip, state)) return false;
  return fillFromHr(trip, state, day) + trip.loadingHr <= eveningHr + NOISE_HR;
}

function isHitched({ trailer }: ScheduledTrip, { trucks }: State): boolean {
  return trucks.some((truck) => truck.trailer === trailer);
}

/** A trailer that stands there is filled as soon as the loader is free. */
function fillFromHr({ trailer }: ScheduledTrip, state: State, day: WorkingDay): number {
  return Math.max(state.loaderFreeHr, state.droppedHr[trailer] ?? startOn(state.on, day));
}

function drive(trip: ScheduledTrip, state: State, setting: Setting, isFilled = false): Driven {
  const { place, trailer, loadingHr, withBase } = trip;
  const { day, trucks } = setting;
  const [truck, index] = truckFor(trip, state);
  const swaps =
    trucks.swapHr !== null && truck.trailer !== null && truck.trailer !== trailer && loadingHr > 0;
  const openHr = place.open?.fromHr ?? 0;
  const waitsHr = openHr - place.driveHr - loadingHr;
  const startsHr = swaps
    ? fillFromHr(trip, state, day)
    : Math.max(truck.freeHr, loadingHr > 0 ? state.loaderFreeHr : 0, waitsHr);
  const filledHr = isFilled ? day.startsHr : startsHr + loadingHr;
  const leavesHr = Math.max(
    swaps ? Math.max(filledHr, truck.freeHr) + (trucks.swapHr ?? 0) : filledHr,
    openHr - place.driveHr,
  );
  const arrivesHr = leavesHr + place.driveHr;
  const backHr = arrivesHr + place.turnHr * (withBase && loadingHr > 0 ? 2 : 1) + place.driveHr;
  return {
    times: { on: state.on, startsHr: isFilled ? null : startsHr, leavesHr, arrivesHr, backHr },
    after: {
      on: state.on,
      trucks: state.trucks.map((one, at) => (at === index ? { freeHr: backHr, trailer } : one)),
      loaderFreeHr: loadingHr > 0 ? Math.max(state.loaderFreeHr, filledHr) : state.loaderFreeHr,
      droppedHr: swaps ? { ...state.droppedHr, [truck.trailer ?? '']: leavesHr } : state.droppedHr,
    },
  };
}

/** The truck that has the trailer, or else the first that is free; its place among the trucks. */
function truckFor({ trailer }: ScheduledTrip, { trucks }: State): readonly [Truck, number] {
  const hitched = trucks.findIndex((truck) => truck.trailer === trailer);
  const first = trucks.reduce(
    (best, { freeHr }, at) => (freeHr < (trucks[best]?.freeHr ?? Number.POSITIVE_INFINITY) ? at : best),
    0,
  );
  const index = hitched >= 0 ? hitched : first;
  const truck = trucks[index];
  if (truck === undefined) throw new RangeError('there is no truck');
  return [truck, index];
}

function isLate({ arrivesHr }: TripTimes, { place }: ScheduledTrip): boolean {
  return place.open !== null && arrivesHr > place.open.lastLoadHr + NOISE_HR;
}

function isOpenOn(on: string, { place }: ScheduledTrip): boolean {
  return place.openOn.includes(weekdayOf(on));
}

function nextOpenOn(on: string, trip: ScheduledTrip): string | null {
  const lastOn = addDaysOn(on, MOST_DAYS);
  for (let next = nextWorkdayOn(on); next < lastOn; next = nextWorkdayOn(next)) {
    if (isOpenOn(next, trip)) return next;
  }
  return null;
}
