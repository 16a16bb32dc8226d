import type { CoreProblem } from '../../problems/index.ts';
import { nextWorkdayOn } from '../../units/index.ts';
import { num } from '../figure.ts';
import type { BreakOut, Company, Machine, TaskId } from '../job.ts';
import { thingNamed } from '../parts.ts';
import type { TripTimes, WorkingDay } from './schedule.ts';
import type { UsableTrailer } from './usable-trailer.ts';

/** A machine that rides on a trailer: heavy enough that somebody wrote down how it is tied down. */
export type Riding = Machine & { readonly tiedDown: NonNullable<Machine['tiedDown']> };

/** A machine and the trailer that carries it, from the yard and back. */
export type Carried = { readonly machine: Riding; readonly trailer: string; readonly isNeededLater: boolean };

/** One way of a machine on its trailer. */
export type MachineLeg = {
  readonly machine: string;
  readonly trailer: string;
  readonly way: 'to-job' | 'to-yard';
  /** Null where it is fetched once all work is done. */
  readonly times: Pick<TripTimes, 'on' | 'leavesHr' | 'arrivesHr'> | null;
};

export type Yard = NonNullable<Company['yard']>;

const BREAKS: Readonly<Record<BreakOut, TaskId>> = {
  breaker: 'break-out',
  jackhammer: 'break-out-by-hand',
  'saw-and-lift': 'saw-and-lift',
};
/** Tasks after the hauling that a machine may stay for. */
const LATER: readonly TaskId[] = [
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

/** The machines that break out, load and dig here, those that ride, each once; none without a yard. */
export function ridingMachines(made: {
  readonly yard: Yard | null;
  readonly machines: Company['machines'];
  readonly production: Company['production'];
  readonly brokenBy: readonly BreakOut[];
  readonly isDug: boolean;
}): readonly Riding[] {
  const { yard, machines, production, brokenBy, isDug } = made;
  if (yard === null) return [];
  const tasks = [...brokenBy.map((way) => BREAKS[way]), ...(isDug ? (['dig'] as const) : [])];
  const ids = new Set(tasks.flatMap((task) => production[task]?.machine ?? []));
  return [...ids].map((id) => thingNamed(machines, id, 'machine')).filter(isRiding);
}

function isRiding(machine: Machine): machine is Riding {
  return machine.tiedDown !== null;
}

/**
 * The trailer that carries each machine: of those whose payload and box take it the one that hauls
 * the first load, else the one that carries least. With a problem where none does.
 */
export function carriedMachines(
  riding: readonly Riding[],
  made: {
    readonly trailers: Readonly<Record<string, UsableTrailer>>;
    /** Of the first load; null where there is none. */
    readonly first: string | null;
    readonly production: Company['production'];
  },
): { readonly carried: readonly Carried[]; readonly problems: readonly CoreProblem[] } {
  const { trailers, first, production } = made;
  const all = Object.values(trailers);
  const found = riding.map((machine) => {
    const able = all
      .filter((one) => carries(one, machine))
      .sort((one, other) => payloadOf(one) - payloadOf(other));
    const chosen = able.find(({ trailer }) => trailer.id === first) ?? able[0];
    return { machine, trailer: chosen?.trailer.id ?? null };
  });
  return {
    carried: found.flatMap(({ machine, trailer }) =>
      trailer === null ? [] : [{ machine, trailer, isNeededLater: isNeededLater(machine.id, production) }],
    ),
    problems: found.flatMap(({ machine, trailer }) => (trailer === null ? [tooHeavy(machine, all)] : [])),
  };
}

function carries({ trailer, figures }: UsableTrailer, { tiedDown }: Riding): boolean {
  return num(figures.payload) >= tiedDown.weightLb && trailer.box.lengthIn >= tiedDown.lengthIn;
}

function payloadOf({ figures }: UsableTrailer): number {
  return num(figures.payload);
}

function isNeededLater(id: string, production: Company['production']): boolean {
  return LATER.some((task) => production[task]?.machine === id);
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
        .map((one) => `${one.trailer.label} ${payloadOf(one)} lb, ${inFt(one.trailer.box.lengthIn)}`)
        .join('; '),
    },
  };
}

/** From tying down at the start of a leg to taking it off at its end [h]. */
export function legHr({ driveHr, tieDownHr }: Yard): number {
  return tieDownHr + driveHr + tieDownHr;
}

/** Until the last of so many machines is there; between two the truck drives back empty [h]. */
export function legsHr(count: number, yard: Yard): number {
  return count === 0 ? 0 : count * legHr(yard) + (count - 1) * yard.driveHr;
}

/** On the first day, before anything is loaded. */
export function legsToJob(carried: readonly Carried[], yard: Yard, day: WorkingDay): readonly MachineLeg[] {
  return carried.map(({ machine, trailer }, index) => ({
    machine: machine.id,
    trailer,
    way: 'to-job',
    times: legTimes(day.firstOn, day.startsHr + index * (legHr(yard) + yard.driveHr), yard),
  }));
}

/** After the last trip, on its day where that is long enough; those that stay for other work once it is done. */
export function legsToYard(
  carried: readonly Carried[],
  made: {
    readonly yard: Yard;
    readonly day: WorkingDay;
    /** Null where nothing is hauled. */
    readonly last: Pick<TripTimes, 'on' | 'backHr'> | null;
  },
): readonly MachineLeg[] {
  const { yard, day, last } = made;
  const leaving = carried.filter(({ isNeededLater: later }) => !later);
  const allHr = legsHr(leaving.length, yard);
  const isToday = last !== null && last.backHr + allHr <= day.startsHr + day.lengthHr + 1e-9;
  const on = last === null ? day.firstOn : isToday ? last.on : nextWorkdayOn(last.on);
  const fromHr = last !== null && isToday ? last.backHr : day.startsHr;
  return carried.map(({ machine, trailer }) => {
    const index = leaving.findIndex((one) => one.machine.id === machine.id);
    const startsHr = fromHr + index * (legHr(yard) + yard.driveHr);
    return {
      machine: machine.id,
      trailer,
      way: 'to-yard',
      times: index < 0 ? null : legTimes(on, startsHr, yard),
    };
  });
}

function legTimes(
  on: string,
  startsHr: number,
  { driveHr, tieDownHr }: Yard,
): NonNullable<MachineLeg['times']> {
  const leavesHr = startsHr + tieDownHr;
  return { on, leavesHr, arrivesHr: leavesHr + driveHr };
}
