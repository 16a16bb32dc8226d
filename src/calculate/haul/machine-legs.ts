import type { CoreProblem } from '../../problems/index.ts';
import { nextWorkdayOn } from '../../units/index.ts';
import { num } from '../figure.ts';
import type { BreakOut, Company, Machine, TaskId } from '../job.ts';
import { thingNamed } from '../parts.ts';
import { fewestRides, type Riding, type Together, trailersFor } from './rides.ts';
import type { TripTimes, WorkingDay } from './schedule.ts';
import type { UsableTrailer } from './usable-trailer.ts';

/** When machines are driven back: once the hauling is done, or once all work is. */
type Way = 'to-job' | 'to-yard' | 'to-yard-last';

/** One ride between the yard and the job. */
export type MachineLeg = {
  readonly machines: readonly string[];
  readonly trailer: string;
  readonly way: Way;
  /** Null where it is fetched once all work is done. */
  readonly times: Pick<TripTimes, 'on' | 'leavesHr' | 'arrivesHr'> | null;
};

export type Yard = NonNullable<Company['yard']>;

/** What rides which way. */
export type Rides = { readonly [way in Way]: readonly Together[] };

const BREAKS: Readonly<Record<BreakOut, TaskId>> = {
  breaker: 'break-out',
  jackhammer: 'break-out-by-hand',
  'saw-and-lift': 'saw-and-lift',
};
/** Tasks after the hauling that a machine may stay for. */
const LATER: readonly TaskId[] = [
  'base',
  'form',
  'reinforce',
  'place',
  'finish',
  'cure',
  'saw-joints',
  'strip',
  'backfill',
  'clean',
];

/** The machines that break out, load, dig and compact here, those that ride, each once; none without a yard. */
export function ridingMachines(made: {
  readonly yard: Yard | null;
  readonly machines: Company['machines'];
  readonly production: Company['production'];
  readonly brokenBy: readonly BreakOut[];
  readonly isDug: boolean;
  readonly hasBase: boolean;
}): readonly Riding[] {
  const { yard, machines, production, brokenBy, isDug, hasBase } = made;
  if (yard === null) return [];
  const tasks: readonly TaskId[] = [
    ...brokenBy.map((way) => BREAKS[way]),
    ...(isDug ? (['dig'] as const) : []),
    ...(hasBase ? (['base'] as const) : []),
  ];
  const ids = new Set(tasks.flatMap((task) => production[task]?.machine ?? []));
  return [...ids].map((id) => thingNamed(machines, id, 'machine')).filter(isRiding);
}

function isRiding(machine: Machine): machine is Riding {
  return machine.tiedDown !== null;
}

/** In as few rides as the trailers allow, with a problem for each machine that none of them takes. */
export function ridesOf(
  riding: readonly Riding[],
  trailers: readonly UsableTrailer[],
  production: Company['production'],
): { readonly rides: Rides; readonly problems: readonly CoreProblem[] } {
  const fits = (machine: Riding) => trailersFor([machine], trailers).length > 0;
  const going = riding.filter(fits);
  const stays = ({ id }: Riding) => LATER.some((task) => production[task]?.machine === id);
  return {
    rides: {
      'to-job': fewestRides(going, trailers),
      'to-yard': fewestRides(
        going.filter((machine) => !stays(machine)),
        trailers,
      ),
      'to-yard-last': fewestRides(going.filter(stays), trailers),
    },
    problems: riding.filter((machine) => !fits(machine)).map((machine) => tooHeavy(machine, trailers)),
  };
}

function tooHeavy({ id, label, tiedDown }: Riding, trailers: readonly UsableTrailer[]): CoreProblem {
  const inFt = (lengthIn: number) => `${Math.round((lengthIn / 12) * 100) / 100} ft`;
  return {
    code: 'machine-on-no-trailer',
    path: `company.machines.${id}.tied-down.weight`,
    parts: {
      machine: label,
      weight: `${Math.round(tiedDown.weightLb)} lb`,
      length: inFt(tiedDown.lengthIn),
      trailers: trailers
        .map(
          ({ trailer, figures }) =>
            `${trailer.label} ${num(figures.payload)} lb, ${inFt(trailer.box.lengthIn)}`,
        )
        .join('; '),
    },
  };
}

/** From tying the first machine down to taking the last one off [h]. */
function rideHr(together: Together, { driveHr, tieDownHr }: Yard): number {
  return 2 * together.length * tieDownHr + driveHr;
}

/** Until the last of these rides is over; between two the truck drives back empty [h]. */
export function ridesHr(rides: readonly Together[], yard: Yard): number {
  return rides.reduce((sum, ride, index) => sum + rideHr(ride, yard) + (index === 0 ? 0 : yard.driveHr), 0);
}

/** The trailer that hauls the first load where it takes them, else the one that carries least. */
function trailerOf(together: Together, trailers: readonly UsableTrailer[], first: string | null): string {
  const able = trailersFor(together, trailers);
  const chosen = able.find(({ trailer }) => trailer.id === first) ?? able[0];
  if (chosen === undefined) throw new RangeError('no trailer takes what rides together');
  return chosen.trailer.id;
}

/**
 * All rides: to the job on the first day, before anything is loaded; back after the last trip, on its day where that
 * is long enough; what stays for other work once that is done.
 */
export function machineLegs(
  rides: Rides,
  made: {
    readonly yard: Yard;
    readonly day: WorkingDay;
    readonly trailers: readonly UsableTrailer[];
    /** Of the first load; null where there is none. */
    readonly first: string | null;
    /** Null where nothing is hauled. */
    readonly last: Pick<TripTimes, 'on' | 'backHr'> | null;
  },
): readonly MachineLeg[] {
  const { yard, day, trailers, first, last } = made;
  const allHr = ridesHr(rides['to-yard'], yard);
  const isToday = last !== null && last.backHr + allHr <= day.startsHr + day.lengthHr + 1e-9;
  const backOn = last === null ? day.firstOn : isToday ? last.on : nextWorkdayOn(last.on);
  const legs = (way: Way, from: { readonly on: string; readonly hr: number } | null): readonly MachineLeg[] =>
    rides[way].map((ride, index) => ({
      machines: ride.map(({ id }) => id),
      trailer: trailerOf(ride, trailers, first),
      way,
      times:
        from === null
          ? null
          : rideTimes(ride, from.on, from.hr + startHr(rides[way].slice(0, index), yard), yard),
    }));
  return [
    ...legs('to-job', { on: day.firstOn, hr: day.startsHr }),
    ...legs('to-yard', { on: backOn, hr: last !== null && isToday ? last.backHr : day.startsHr }),
    ...legs('to-yard-last', null),
  ];
}

/** When the truck stands where the next ride begins. */
function startHr(before: readonly Together[], yard: Yard): number {
  return before.length === 0 ? 0 : ridesHr(before, yard) + yard.driveHr;
}

function rideTimes(
  together: Together,
  on: string,
  startsHr: number,
  { driveHr, tieDownHr }: Yard,
): NonNullable<MachineLeg['times']> {
  const leavesHr = startsHr + together.length * tieDownHr;
  return { on, leavesHr, arrivesHr: leavesHr + driveHr };
}
