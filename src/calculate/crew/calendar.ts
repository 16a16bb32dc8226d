import { addDaysOn, nextWorkdayOn, weekdayOf } from '../../units/index.ts';
import { num } from '../figure.ts';
import type { TaskHours } from './hours.ts';
import type { PhaseFigures } from './phases.ts';
import { type CrewTask, type Phase, tasksOf } from './tasks.ts';

export type DayTask = {
  readonly task: CrewTask;
  readonly laborHr: number;
  readonly clockHr: number;
  /** The part of the whole task that is done on this day, above 0 to 1. */
  readonly share: number;
};

/** A day of work of one phase, or a day on which the concrete only cures. Two phases may share a date. */
export type WorkDay = {
  readonly on: string;
  readonly kind: 'work' | 'cure';
  readonly phase: Phase;
  readonly tasks: readonly DayTask[];
};

export type Openings = { readonly walkOn: string; readonly driveOn: string };
export type Calendar = {
  readonly days: readonly WorkDay[];
  readonly openings: Openings | null;
  /** The first day on which the pour can be. */
  readonly freeOn: string;
};

/** When forms come off, people walk and cars drive. */
export type Waits = { readonly stripDays: number; readonly walkDays: number; readonly driveDays: number };

type PlannedTask = { readonly task: CrewTask; readonly laborHr: number; readonly clockHr: number };

const SATURDAY = 6;
/** Hours that are nothing but the noise of floating point. */
const NOISE_HR = 1e-9;

/**
 * Puts the phases on dates: Monday to Friday from the start, the pour on a day of its own or on the one
 * that was chosen, forms off on the first workday they may. Curing runs on calendar days, to the day cars
 * may drive. Holidays are not counted: the office moves the start.
 *
 * @returns openings null where nothing is poured.
 */
export function planCalendar(input: {
  readonly startsOn: string;
  /** The day of the pour where it was chosen; null for the first one that is free. */
  readonly poursOn: string | null;
  readonly tasks: TaskHours;
  readonly phases: Readonly<Record<Phase, PhaseFigures>>;
  readonly shared: boolean;
  readonly crewCount: number;
  readonly dayHr: number;
  /** Days after the pour. */
  readonly waits: Waits;
}): Calendar {
  const { stripDays, walkDays, driveDays } = input.waits;
  const plan = (phase: Phase, firstOn: string, dayCount: number) =>
    workDays(phase, firstOn, spread(plannedTasks(phase, input.tasks), { ...input, dayCount }));
  const dayCount = (phase: Phase) => num(input.phases[phase].days);

  const firstOn = workdayOnOrAfter(input.startsOn);
  const tearOut = plan('tear-out', firstOn, dayCount('tear-out'));
  const baseOn = input.shared ? firstOn : after(tearOut, firstOn);
  const base = plan('base-and-forms', baseOn, dayCount('base-and-forms'));
  const freeOn = after([...tearOut, ...base], firstOn);
  // A day that comes before base and forms are done waits for them; dates as written sort as they follow.
  const pourOn = input.poursOn !== null && input.poursOn > freeOn ? input.poursOn : freeOn;
  const pour = plan('pour', pourOn, Math.min(1, dayCount('pour')));
  const stripOn = pour.length === 0 ? pourOn : workdayOnOrAfter(addDaysOn(pourOn, stripDays));
  const strip = plan('strip-and-clean', stripOn, dayCount('strip-and-clean'));
  if (pour.length === 0) return { days: [...tearOut, ...base, ...strip], openings: null, freeOn };

  const openings = {
    walkOn: addDaysOn(pourOn, walkDays),
    driveOn: addDaysOn(pourOn, driveDays),
  };
  const curing = Array.from({ length: driveDays - 1 }, (_, index): WorkDay => {
    return { on: addDaysOn(pourOn, index + 1), kind: 'cure', phase: 'pour', tasks: [] };
  });
  return { days: byDate([...tearOut, ...base, ...pour, ...strip, ...curing]), openings, freeOn };
}

/** The day itself, or the Monday after it where it is a Saturday or a Sunday. */
export function workdayOnOrAfter(on: string): string {
  return weekdayOf(on) < SATURDAY ? on : nextWorkdayOn(on);
}

/**
 * Shares the tasks of a phase out over its days, in their order: the crew takes up a task when
 * the one before it leaves people free. Haul runs beside the others, evenly. Where the order
 * cannot be kept within the days, every task is spread evenly.
 *
 * The parts of a task add up to it; no task takes more of a day than the day is long.
 */
export function spread(
  tasks: readonly PlannedTask[],
  room: { readonly dayCount: number; readonly crewCount: number; readonly dayHr: number },
): readonly (readonly DayTask[])[] {
  const { dayCount, crewCount, dayHr } = room;
  if (dayCount <= 1) return dayCount === 0 ? [] : [tasks.map((task) => ({ ...task, share: 1 }))];
  const even = (task: PlannedTask) => partOf(task, 1 / dayCount);
  const evenly = Array.from({ length: dayCount }, () => tasks.map(even));

  const left = new Map(tasks.map((task) => [task, 1]));
  const days = evenly.map((_, index) => {
    let freeHr = crewCount * dayHr;
    const today: DayTask[] = [];
    for (const task of tasks.toSorted(
      (one, other) => Number(other.task === 'haul') - Number(one.task === 'haul'),
    )) {
      const restShare = left.get(task) ?? 0;
      const fitsShare = Math.min(restShare, freeHr / task.laborHr, dayHr / task.clockHr);
      const share = task.task === 'haul' ? (index === dayCount - 1 ? restShare : 1 / dayCount) : fitsShare;
      if (!(share * task.laborHr > NOISE_HR)) continue;
      left.set(task, restShare - share);
      freeHr -= share * task.laborHr;
      today.push(partOf(task, share));
    }
    return today.toSorted((one, other) => orderOf(one, tasks) - orderOf(other, tasks));
  });
  const restHr = tasks.reduce((sumHr, task) => sumHr + (left.get(task) ?? 0) * task.laborHr, 0);
  return restHr > NOISE_HR * tasks.length ? evenly : days;
}

function partOf({ task, laborHr, clockHr }: PlannedTask, share: number): DayTask {
  return { task, laborHr: laborHr * share, clockHr: clockHr * share, share };
}

function orderOf(part: DayTask, tasks: readonly PlannedTask[]): number {
  return tasks.findIndex(({ task }) => task === part.task);
}

function plannedTasks(phase: Phase, tasks: TaskHours): readonly PlannedTask[] {
  return tasksOf(phase).flatMap((task) => {
    const figures = tasks[task];
    if (figures === undefined) return [];
    return [{ task, laborHr: num(figures['labor-hours']), clockHr: num(figures['clock-hours']) }];
  });
}

function workDays(phase: Phase, firstOn: string, days: readonly (readonly DayTask[])[]): readonly WorkDay[] {
  let on = firstOn;
  return days.map((tasks, index) => {
    if (index > 0) on = nextWorkdayOn(on);
    return { on, kind: 'work', phase, tasks };
  });
}

/** The workday after the last of the days, or `firstOn` where there are none yet. */
function after(days: readonly WorkDay[], firstOn: string): string {
  const last = days.at(-1);
  return last === undefined ? firstOn : nextWorkdayOn(last.on);
}

function byDate(days: readonly WorkDay[]): readonly WorkDay[] {
  return days.toSorted((one, other) => (one.on < other.on ? -1 : one.on > other.on ? 1 : 0));
}
