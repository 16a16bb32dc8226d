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
  /** Loading starts. */
  readonly startsHr: number;
  readonly arrivesHr: number;
  readonly backHr: number;
};

export type WorkingDay = {
  /** The first day. */
  readonly firstOn: string;
  readonly startsHr: number;
  readonly lengthHr: number;
};

/** Ten years of days on which a place is closed: it is never open. */
const MOST_DAYS = 3650;
/** Hours that are nothing but the noise of floating point. */
const NOISE_HR = 1e-9;

/**
 * One truck and its driver, one trip after the other in their order. A trip is begun where it is back
 * within the working day and is at the gate before the last load; else on the next workday on which the
 * place is open. A trip longer than a day is begun in the morning.
 *
 * @returns Of each trip; null where the place lets nobody in who leaves in the morning.
 */
export function tripTimes(trips: readonly ScheduledTrip[], day: WorkingDay): readonly (TripTimes | null)[] {
  let on = day.firstOn;
  let freeHr = day.startsHr;
  return trips.map((trip) => {
    const today = timesFrom(freeHr, on, trip);
    if (isIn(today, trip, day)) {
      freeHr = today.backHr;
      return today;
    }
    const isFresh = freeHr === day.startsHr;
    const nextOn = isFresh && isOpenOn(on, trip) ? on : nextOpenOn(on, trip);
    if (nextOn === null) return null;
    const fresh = timesFrom(day.startsHr, nextOn, trip);
    if (isLate(fresh, trip)) return null;
    on = nextOn;
    freeHr = fresh.backHr;
    return fresh;
  });
}

function timesFrom(freeHr: number, on: string, { place, loadingHr, withBase }: ScheduledTrip): TripTimes {
  const openHr = place.open?.fromHr ?? 0;
  const startsHr = Math.max(freeHr, openHr - loadingHr - place.driveHr);
  const arrivesHr = startsHr + loadingHr + place.driveHr;
  const backHr = arrivesHr + place.turnHr * (withBase && loadingHr > 0 ? 2 : 1) + place.driveHr;
  return { on, startsHr, arrivesHr, backHr };
}

function isIn(times: TripTimes, trip: ScheduledTrip, day: WorkingDay): boolean {
  return (
    isOpenOn(times.on, trip) && !isLate(times, trip) && times.backHr <= day.startsHr + day.lengthHr + NOISE_HR
  );
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
