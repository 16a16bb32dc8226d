import type { CoreProblem } from '../../problems/index.ts';
import { nextWorkdayOn } from '../../units/index.ts';
import type { DumpPlace } from '../job.ts';
import { thingNamed } from '../parts.ts';
import type { DrivenTrip } from './driven.ts';
import { couldCarry, type Plan, type PlanProblem, plainestPlan, planHr, quickestPlan } from './plan/index.ts';
import { type Trucks, tripTimes, type WorkingDay } from './schedule.ts';

/** A second less than a plan takes, so that another one is found [h]. */
const LESS_HR = 1 / 3600;

/** The cheapest plan whose last trip is driven in time. */
type InTime =
  | { readonly kind: 'planned'; readonly problem: PlanProblem; readonly plan: Plan | null }
  /** Not even the quickest one is. */
  | { readonly kind: 'late'; readonly quickest: Plan; readonly lastOn: string };

type Made = {
  readonly problem: PlanProblem;
  readonly lastOnOf: (plan: Plan) => string | null;
  readonly byOn: string | null;
  /** Of all drivers, within the days there are [h]. */
  readonly availableHr: number;
  /** Of each, where each keeps a trailer of his own; null where there is one [h]. */
  readonly trailerHr: number | null;
};

/**
 * The cheapest plan of those whose last trip is driven by a day. Where the plan that is cheapest of all
 * takes longer, the hours of the drivers are limited to those of the days there are, and where its trips
 * do not go into the days for all that, to fewer than it takes, until they do. Where none of these is in time
 * and the quickest is, it is that one.
 *
 * @param made.lastOnOf The day of the last trip of a plan; null where it has none.
 * @param made.byOn     Null where nothing limits it.
 */
export function planInTime(made: Made): InTime {
  const { problem, byOn } = made;
  const isLate = (plan: Plan) => byOn !== null && (made.lastOnOf(plan) ?? byOn) > byOn;
  const cheapest = plainestPlan(problem);
  if (cheapest === null || !isLate(cheapest)) return { kind: 'planned', problem, plan: cheapest };

  // Hours that are even over the trailers; where they cannot be, the day of the last trip decides alone.
  const even = { ...problem, mostTrailerHr: made.trailerHr };
  const limited = couldCarry(even) ? even : problem;
  const quick = quickestPlan(problem) ?? cheapest;
  const quickest =
    limited === problem || !isLate(quick) ? quick : sooner(quick, quickestPlan(limited), made.lastOnOf);
  if (isLate(quickest)) return { kind: 'late', quickest, lastOn: made.lastOnOf(quickest) ?? '' };

  const leastHr = planHr(problem, quickest);
  for (const within of new Set([limited, problem])) {
    let mostHr = made.availableHr;
    while (mostHr >= leastHr) {
      const hurried = { ...within, mostHr };
      const plan = plainestPlan(hurried);
      if (plan === null) break;
      if (!isLate(plan)) return { kind: 'planned', problem: hurried, plan };
      mostHr = planHr(problem, plan) - LESS_HR;
    }
  }
  // Half a second more, since whole seconds are what a plan is held to.
  return { kind: 'planned', problem: { ...problem, mostHr: leastHr + LESS_HR / 2 }, plan: quickest };
}

/** The one whose last trip is on the earlier day; the first where that is the same. */
function sooner(one: Plan, other: Plan | null, lastOnOf: Made['lastOnOf']): Plan {
  return other !== null && (lastOnOf(other) ?? '') < (lastOnOf(one) ?? '') ? other : one;
}

type Days = {
  readonly day: WorkingDay;
  readonly haulByOn: string | null;
  readonly trucks: Trucks;
  readonly loadingHr: number;
  readonly places: Readonly<Record<string, DumpPlace>>;
  readonly drivenBy: (plan: Plan) => { readonly trips: readonly DrivenTrip[] };
};

/** The plan that is in time; with a problem the cheapest one, and how far even the quickest misses. */
export function inTime(
  problem: PlanProblem,
  days: Days,
): { readonly problem: PlanProblem; readonly plan: Plan | null; readonly problems: readonly CoreProblem[] } {
  const { day, haulByOn, trucks } = days;
  const lastOnOf = (plan: Plan) => lastOf(days.drivenBy(plan).trips.map(({ on }) => on));
  const dayCount = haulByOn === null ? 0 : workdayCount(day.firstOn, haulByOn);
  const eachHr = dayCount * day.lengthHr;
  const found = planInTime({
    problem,
    lastOnOf,
    byOn: haulByOn,
    availableHr: eachHr * trucks.count,
    trailerHr: trucks.count > 1 ? eachHr : null,
  });
  if (found.kind === 'planned') return { ...found, problems: [] };
  const { quickest, lastOn } = found;
  const parts = {
    haulBy: haulByOn ?? '',
    days: `${dayCount}`,
    trips: `${quickest.tripCount}`,
    lastOn,
    perDay: tripsADay(quickest, days)
      .map(({ place, trips }) => `${place} ${trips}`)
      .join(', '),
  };
  return {
    problem,
    plan: plainestPlan(problem),
    problems: [{ code: 'haul-not-in-time', path: 'plan.haul-by', parts }],
  };
}

function lastOf(dates: readonly string[]): string | null {
  return dates.toSorted().at(-1) ?? null;
}

/** To each place of a plan, so many trips as a day of it alone has room for. */
function tripsADay(plan: Plan, { day, trucks, places, loadingHr }: Days) {
  const trips = [...plan.byStream.flatMap((stream) => stream.trips), ...plan.shared];
  const mostCount = Math.ceil(day.lengthHr * 60) * trucks.count;
  return [...new Set(trips.map(({ place }) => place))].map((id) => {
    const place = thingNamed(places, id, 'place');
    const trailers = [...new Set(trips.filter((trip) => trip.place === id).map(({ trailer }) => trailer))];
    const sent = Array.from({ length: mostCount }, (_, index) => {
      const trailer = trailers[index % trailers.length] ?? '';
      return { trailer, place, loadingHr, withBase: false };
    });
    const times = tripTimes(sent, day, trucks);
    return { place: place.label, trips: times.filter((trip) => trip?.on === times[0]?.on).length };
  });
}

/** Workdays from one day to another, both counted. */
export function workdayCount(firstOn: string, lastOn: string): number {
  let count = 0;
  for (let on = firstOn; on <= lastOn; on = nextWorkdayOn(on)) count += 1;
  return count;
}
