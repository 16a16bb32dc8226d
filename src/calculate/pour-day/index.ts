import { addDaysOn } from '../../units/index.ts';
import type { TaskHours, WorkDay } from '../crew/index.ts';
import { type Figure, figure, type Given, given, num } from '../figure.ts';
import type { Company, Finish, Job, JointCut, Slab } from '../job.ts';
import type { Rule } from '../rule.ts';
import { WAITS, type Wait } from '../strength/index.ts';
import {
  type ClockFigures,
  clockFigures,
  type FinishClockFigures,
  finishClock,
  hours,
  type PourTasks,
  type SettingFigures,
  settingFigures,
} from './clock-figures.ts';
import { type EvaporationFigures, evaporationFigures, type PourHour } from './evaporation-figures.ts';
import { type FinisherFigures, finisherFigures } from './finishers.ts';
import { type CutLengths, NO_SAWS, type Saws, type SawsFigures, sawsOf } from './saws.ts';
import { type Step, timetable } from './timetable.ts';
import { meanAirF } from './weather-at.ts';
import { COLD_AIR_F, HOT_AIR_F, openHours, type WeatherFigures, weatherFigures } from './weather-figures.ts';

export { evaporationLbPerSqFtHr, vaporPressurePsi } from './evaporation.ts';
export type { PourHour } from './evaporation-figures.ts';
export type { SawFigures, SawPlan } from './saw-figures.ts';
export { type Span, sawTimes } from './saw-times.ts';
export { type SawMethod, sawClosesHr, sawOpensHr, settingHr } from './setting.ts';
export { STEP_NAMES, type Step } from './timetable.ts';
export { weatherAt } from './weather-at.ts';

export type PourDayFigures = {
  readonly clock: ClockFigures & Partial<FinishClockFigures> & { readonly 'put-off-by'?: Figure };
  /** All of these only with a forecast. */
  readonly weather?: WeatherFigures;
  readonly evaporation?: EvaporationFigures;
  readonly setting?: SettingFigures;
  readonly finishers?: FinisherFigures;
} & SawsFigures;

export type PourDayData = {
  readonly on: string;
  /** The first day on which each may be done. */
  readonly waitsUntil: Readonly<Record<Wait, string>>;
  readonly hours: readonly PourHour[];
  readonly steps: readonly Step[];
  /** Whether the air asks for the measures of hot or cold weather. */
  readonly isHot: boolean;
  readonly isCold: boolean;
} & Saws;

export type PourDayResult = { readonly figures: PourDayFigures; readonly data: PourDayData };

/** Hours whose air the concrete sets in. */
const SETTING_AIR_HR = 6;

/**
 * The day concrete is placed: its clock, what the weather does to it, and when the joints are sawn.
 *
 * @returns Null where nothing is placed.
 */
export function calcPourDay(input: {
  readonly pour: Job['pour'];
  readonly slabs: Readonly<Record<string, Pick<Slab, 'id' | 'finish'>>>;
  /** The ways in which the joints there are are cut, each with the lengths that are, by slab [ft]. */
  readonly cutFt: CutLengths;
  readonly rules: readonly Pick<Rule, 'code' | 'limit'>[];
  /** How long before the first truck it can be put off; null where nobody said, or no truck comes. */
  readonly freeCancelHr: number | null;
  /** When the last truck is empty, after the first one came; null where none comes. */
  readonly lastEmptyHr: Figure | null;
  /** What the concrete has to wait for, days after the pour. */
  readonly waits: Readonly<Record<Wait, { readonly days: Figure }>>;
  readonly plan: Pick<Job['plan'], 'crew'>;
  readonly labor: Pick<Company['labor'], 'dayStartsHr'>;
  readonly tasks: TaskHours;
  readonly days: readonly Pick<WorkDay, 'on' | 'kind' | 'phase'>[];
}): PourDayResult | null {
  const { pour } = input;
  const on = input.days.find(({ kind, phase }) => kind === 'work' && phase === 'pour')?.on;
  const tasks = pourTasks(input.tasks);
  if (on === undefined || tasks === null) return null;

  const firstTruckHr =
    pour.firstTruckHr === null
      ? given('company.labor.day-starts', input.labor.dayStartsHr, 'h')
      : given('pour.first-truck', pour.firstTruckHr, 'h');
  const clock = {
    ...clockFigures(firstTruckHr, tasks, input.lastEmptyHr),
    ...putOff(firstTruckHr, input.freeCancelHr),
  };
  const finishes = Object.values(input.slabs).map(({ finish }) => finish);
  const { weather } = pour;
  const days = {
    on,
    waitsUntil: Object.fromEntries(
      WAITS.map((wait) => [wait, addDaysOn(on, num(input.waits[wait].days))]),
    ) as Record<Wait, string>,
  };
  if (weather === null) return withoutForecast(days, clock, finishes, sawnCuts(input.cutFt, tasks));

  const airF = meanAirF(weather.times, num(firstTruckHr), num(firstTruckHr) + SETTING_AIR_HR);
  const setting = settingFigures(given('pour.weather.concrete', weather.concreteF, '°F'), airF);
  const finish = finishClock(clock, setting, tasks);
  const evaporation = evaporationFigures(weather, openHours(weather, clock, finish), input.rules);
  const forecast = weatherFigures(weather, clock, finish, on);
  const crewCount = given('plan.crew', input.plan.crew.length, 'each');
  const sawn = { finish, setting, tasks, noiseAllowed: pour.noiseAllowed };
  const saws = sawsOf(input.cutFt, sawn);
  return {
    figures: {
      clock: { ...clock, ...finish },
      weather: forecast,
      ...(evaporation === null ? {} : { evaporation: evaporation.figures }),
      setting,
      finishers: finisherFigures(finish, setting, tasks, crewCount),
      ...saws.figures,
    },
    data: {
      ...days,
      hours: evaporation?.hours ?? [],
      steps: timetable({
        finishes,
        clock,
        finish,
        setting,
        saws: saws.plans,
        cuts: sawnCuts(input.cutFt, tasks),
      }),
      isHot: num(forecast['highest-air']) >= HOT_AIR_F,
      isCold: num(forecast['lowest-air']) < COLD_AIR_F,
      ...saws.plans,
    },
  };
}

function withoutForecast(
  days: Pick<PourDayData, 'on' | 'waitsUntil'>,
  clock: PourDayFigures['clock'],
  finishes: readonly Finish[],
  cuts: ReadonlySet<JointCut>,
): PourDayResult {
  const steps = timetable({ finishes, clock, finish: null, setting: null, saws: NO_SAWS, cuts });
  const data = { ...days, hours: [], steps, isHot: false, isCold: false, ...NO_SAWS };
  return { figures: { clock }, data };
}

/** None where nothing is sawn. */
function sawnCuts(cutFt: CutLengths, tasks: PourTasks): ReadonlySet<JointCut> {
  return new Set(tasks.sawHr === null ? [] : cutFt.keys());
}

/** The last hour in which the truck costs nothing; below 0 it is on the day before. */
function putOff(firstTruckHr: Given, freeCancelHr: number | null): { readonly 'put-off-by'?: Figure } {
  if (freeCancelHr === null) return {};
  const inputs = {
    firstTruckHr,
    noticeHr: given('company.suppliers.concrete.free-cancel', freeCancelHr, 'h'),
  };
  return { 'put-off-by': hours(num(firstTruckHr) - freeCancelHr, 'firstTruckHr - noticeHr', inputs) };
}

/** The hours of what is done on the day; null where nothing is placed. */
function pourTasks(tasks: TaskHours): PourTasks | null {
  const { place, finish, cure } = tasks;
  if (place === undefined) return null;
  const none: Figure = figure({ value: 0, unit: 'h', decimals: 1, formula: '0', inputs: {} });
  return {
    placeHr: place['clock-hours'],
    finishHr: finish?.['clock-hours'] ?? none,
    finishLaborHr: finish?.['labor-hours'] ?? none,
    cureHr: cure?.['clock-hours'] ?? none,
    sawHr: tasks['saw-joints']?.['clock-hours'] ?? null,
  };
}
