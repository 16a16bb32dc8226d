import type { CoreProblem } from '../../problems/index.ts';
import { daysBetween, weekdayOf } from '../../units/index.ts';
import { exposedTimes } from '../exposed.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import type { Company, Plan } from '../job.ts';
import { thingNamed } from '../parts.ts';
import { productionRows } from '../production-row.ts';
import { inputKey, inputsOf, sumExpression, sumOfParts } from '../sum-figure.ts';
import type { TopicResult } from '../topic.ts';
import { type Openings, planCalendar, type WorkDay } from './calendar.ts';
import { type TaskHours, taskHours } from './hours.ts';
import { type PhaseFigures, phaseFigures, sharesDay, workDaysFigure } from './phases.ts';
import { taskQuantities, type WorkFigures, type WorkThings } from './quantities.ts';
import { PHASES, type Phase } from './tasks.ts';

export type { DayTask, Openings, WorkDay } from './calendar.ts';
export type { TaskFigures, TaskHours } from './hours.ts';
export { calcLaborRate, type LaborRateFigures } from './labor-rate.ts';
export type { WorkFigures } from './quantities.ts';
export { CREW_TASKS, type CrewTask, PHASES, type Phase, TASKS } from './tasks.ts';

export type CrewFigures = {
  readonly tasks: TaskHours;
  readonly phases: Readonly<Record<Phase, PhaseFigures>>;
  readonly total: {
    readonly 'labor-hours': Figure;
    readonly 'work-days': Figure;
    /** People a task asks for beyond those of the crew. */
    readonly 'people-short': Figure;
    /** Area to finish for each of the people who finish; exposed aggregate counts for more. */
    readonly 'area-per-finisher': Figure;
    /** Only where the day of the pour is chosen. */
    readonly 'pour-early'?: Figure;
  };
};

export type CrewData = {
  readonly days: readonly WorkDay[];
  /** Null where nothing is poured. */
  readonly openings: Openings | null;
  /** Tear-out and base-and-forms are done on one date. */
  readonly firstPhasesShareDay: boolean;
};

export type CrewResult = TopicResult<CrewFigures, CrewData>;

/**
 * Hours of every task, days of every phase, and the calendar of the job.
 *
 * Work days are Monday to Friday; holidays are not counted. Cure days are calendar days.
 * A start on a weekend is a problem.
 */
export function calcCrew(
  input: WorkFigures &
    WorkThings & {
      readonly plan: Pick<Plan, 'startsOn' | 'poursOn' | 'crew'>;
      readonly labor: Pick<Company['labor'], 'dayHr'>;
      readonly production: Company['production'];
      readonly supply: 'truck' | 'bags';
      /** What the concrete has to wait for, days after the pour. */
      readonly waits: Readonly<Record<'strip' | 'walk' | 'drive', { readonly days: Figure }>>;
    },
): CrewResult {
  const { plan, production } = input;
  const quantities = taskQuantities(input, input);
  const { tasks, problems } = taskHours({ quantities, production, work: input, supply: input.supply });
  const crewCount = given('plan.crew', plan.crew.length, 'each');
  const dayHr = given('company.labor.day', input.labor.dayHr, 'h');
  const phases = phaseFigures(tasks, { crewCount, dayHr });
  const shared = sharesDay(phases, { crewCount, dayHr });
  const { freeOn, ...calendar } = planCalendar({
    startsOn: plan.startsOn,
    poursOn: plan.poursOn,
    tasks,
    phases,
    shared,
    crewCount: plan.crew.length,
    dayHr: input.labor.dayHr,
    waits: {
      stripDays: num(input.waits.strip.days),
      walkDays: num(input.waits.walk.days),
      driveDays: num(input.waits.drive.days),
    },
  });
  return {
    figures: {
      tasks,
      phases,
      total: {
        'labor-hours': sumOfParts({
          parts: PHASES.map((phase) => ({
            key: inputKey('labor', phase, 'Hr'),
            input: phases[phase]['labor-hours'],
          })),
          unit: 'h',
          decimals: 1,
        }),
        'work-days': workDaysFigure(phases, shared),
        'people-short': peopleShort(tasks, production, crewCount),
        'area-per-finisher': areaPerFinisher(quantities.finish, production.finish.people, input),
        ...(plan.poursOn === null ? {} : { 'pour-early': pourEarly(plan.startsOn, plan.poursOn, freeOn) }),
      },
    },
    data: { ...calendar, firstPhasesShareDay: shared },
    problems: [...problems, ...startProblems(plan.startsOn)],
  };
}

function startProblems(startsOn: string): CoreProblem[] {
  const weekday = weekdayOf(startsOn);
  if (weekday < 6) return [];
  const parts = { on: startsOn, weekday: weekday === 6 ? 'saturday' : 'sunday' };
  return [{ code: 'starts-on-weekend', path: 'plan.starts-on', parts }];
}

/** How many days before base and forms are done the day chosen for the pour lies. */
function pourEarly(startsOn: string, poursOn: string, freeOn: string): Figure {
  return figure({
    value: Math.max(0, daysBetween(poursOn, freeOn)),
    unit: 'days',
    decimals: 0,
    formula: { method: 'days from the day chosen to the first one on which base and forms are done' },
    inputs: { poursOnDays: given('plan.pours-on', daysBetween(startsOn, poursOn), 'days') },
  });
}

function peopleShort(
  tasks: TaskHours,
  production: Company['production'],
  crewCount: ReturnType<typeof given>,
): Figure {
  const asked = productionRows(production)
    .filter(({ task }) => tasks[task] !== undefined)
    .map(({ task, people }) => ({
      key: inputKey('people', task, 'Count'),
      input: given(`company.production.${task}.people`, people, 'each'),
    }));
  const most = asked.map(({ key }) => key).join(', ');
  return figure({
    value: Math.max(0, Math.max(0, ...asked.map(({ input }) => num(input))) - num(crewCount)),
    unit: 'each',
    decimals: 0,
    formula: `max(0, max(0, ${most}) - crewCount)`,
    inputs: { ...inputsOf(asked), crewCount },
  });
}

function areaPerFinisher(
  areaSqFt: Figure,
  peopleCount: number,
  { shapes, slabs }: Pick<WorkFigures, 'shapes'> & Pick<WorkThings, 'slabs'>,
): Figure {
  const exposed = Object.entries(shapes.slabs).flatMap(([id, { area }]) => {
    const times = exposedTimes(thingNamed(slabs, id, 'slab').finish);
    return times === null ? [] : [{ key: inputKey('exposed', id, 'SqFt'), input: area, times }];
  });
  const [first] = exposed;
  const inputs = { areaSqFt, peopleCount: given('company.production.finish.people', peopleCount, 'each') };
  const made = (value: number, formula: string, more: Figure['inputs']) =>
    figure({ value, unit: 'sq ft', decimals: 0, formula, inputs: { ...inputs, ...more } });
  if (first === undefined) return made(num(areaSqFt) / peopleCount, 'areaSqFt / peopleCount', {});

  const exposedSqFt = exposed.reduce((sum, { input }) => sum + num(input), 0);
  return made(
    (num(areaSqFt) + exposedSqFt * (num(first.times) - 1)) / peopleCount,
    `(areaSqFt + (${sumExpression(exposed)}) * (exposedTimes - 1)) / peopleCount`,
    { ...inputsOf(exposed), exposedTimes: first.times },
  );
}
