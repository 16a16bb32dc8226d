import type { CoreProblem } from '../../problems/index.ts';
import { cuFtToCuYd, cuMToCuFt, mToFt, type Pace, rationalToNumber, sqMToSqFt } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { Company, ProductionRow } from '../job.ts';
import { productionRow } from '../production-row.ts';
import type { WorkFigures } from './quantities.ts';
import { CREW_TASKS, type CrewTask, TASKS, type TaskUnit } from './tasks.ts';

export type TaskFigures = {
  readonly quantity: Figure;
  readonly 'clock-hours': Figure;
  readonly 'labor-hours': Figure;
  /** Of placing alone, where those who carry work beside it. */
  readonly 'placing-clock-hours'?: Figure;
  readonly 'placing-labor-hours'?: Figure;
};
export type TaskHours = Readonly<Partial<Record<CrewTask, TaskFigures>>>;

const QUANTITY_KEY: Readonly<Record<TaskUnit, string>> = {
  each: 'quantityCount',
  'sq ft': 'quantitySqFt',
  ft: 'quantityFt',
  yd3: 'quantityCuYd',
};

/** How the metric twin of a unit comes to the unit of the task. */
const METRIC: Readonly<
  Partial<Record<Pace['unit'], { readonly unit: TaskUnit; readonly convert: (x: number) => number }>>
> = {
  m2: { unit: 'sq ft', convert: sqMToSqFt },
  m: { unit: 'ft', convert: mToFt },
  m3: { unit: 'yd3', convert: (volumeCuM) => cuFtToCuYd(cuMToCuFt(volumeCuM)) },
};

/**
 * Clock hours and labor hours of every task that has a quantity.
 *
 * clock = quantity / pace; labor = clock x people. Haul takes the hours that were driven, one
 * person a truck. Bagged concrete is mixed and placed by one person at the pace of the bags, so its
 * labor is the mixing hours and its clock is shared by the people of the row.
 */
export function taskHours(input: {
  readonly quantities: Readonly<Record<CrewTask, Figure>>;
  readonly production: Company['production'];
  readonly work: Pick<WorkFigures, 'haul' | 'concrete'>;
  readonly supply: 'truck' | 'bags';
}): { readonly tasks: TaskHours; readonly problems: readonly CoreProblem[] } {
  const present = CREW_TASKS.filter((task) => num(input.quantities[task]) > 0);
  const problems: CoreProblem[] = [];
  const tasks: Partial<Record<CrewTask, TaskFigures>> = {};
  for (const task of present) {
    const quantity = input.quantities[task];
    if (task === 'haul') tasks[task] = drivenHours(quantity, input.work.haul);
    else if (task === 'place' && input.supply === 'bags') {
      const mixing = input.work.concrete.bags['mixing-hours'];
      tasks[task] = mixedHours(quantity, mixing, input.production.place.people);
    } else {
      const paced = pacedHours(task, quantity, productionRow(input.production, task));
      const { placing } = input.work.concrete;
      tasks[task] =
        task === 'place' && placing !== undefined
          ? carriedHours(paced.figures, placing.total)
          : paced.figures;
      problems.push(...paced.problems);
    }
  }
  return { tasks, problems };
}

/**
 * The pace in the unit of the task, an hour; null where the pace counts something else.
 *
 * @example paceIn('ft', 9 m an hour) // 29.53
 */
export function paceIn(unit: TaskUnit, pace: Pick<Pace, 'perHour' | 'unit'>): number | null {
  const perHour = rationalToNumber(pace.perHour);
  if (pace.unit === unit) return perHour;
  const metric = METRIC[pace.unit];
  return metric?.unit === unit ? metric.convert(perHour) : null;
}

function pacedHours(task: Exclude<CrewTask, 'haul'>, quantity: Figure, row: ProductionRow) {
  const path = `company.production.${task}.pace`;
  const { unit } = TASKS[task];
  const pacePerHr = paceIn(unit, row.pace);
  const problems: CoreProblem[] =
    pacePerHr === null
      ? [{ code: 'pace-unit', path, parts: { task, unit: row.pace.unit, wanted: unit } }]
      : [];
  // With the problem nothing is written; the pace as it stands lets the other topics run and report.
  const perHour = pacePerHr ?? rationalToNumber(row.pace.perHour);
  const key = QUANTITY_KEY[unit];
  const clock = figure({
    value: num(quantity) / perHour,
    unit: 'h',
    decimals: 1,
    formula: `${key} / pacePerHr`,
    inputs: { [key]: quantity, pacePerHr: given(path, perHour, 'per h') },
    source: COMPANY_FIGURE,
  });
  const labor = figure({
    value: num(clock) * row.people,
    unit: 'h',
    decimals: 1,
    formula: 'clockHr * peopleCount',
    inputs: { clockHr: clock, peopleCount: given(`company.production.${task}.people`, row.people, 'each') },
    source: COMPANY_FIGURE,
  });
  return { figures: { quantity, 'clock-hours': clock, 'labor-hours': labor }, problems };
}

/** Placing waits for what is carried, and those who carry work beside those who place. */
function carriedHours(
  { quantity, ...placed }: TaskFigures,
  carried: { readonly 'clock-hours': Figure; readonly 'labor-hours': Figure },
): TaskFigures {
  const hours = (value: number, formula: string, inputs: Readonly<Record<string, Figure>>) =>
    figure({ value, unit: 'h', decimals: 1, formula, inputs, source: COMPANY_FIGURE });
  const { 'clock-hours': placeClockHr, 'labor-hours': placeLaborHr } = placed;
  const { 'clock-hours': wayClockHr, 'labor-hours': carryLaborHr } = carried;
  return {
    quantity,
    'placing-clock-hours': placeClockHr,
    'placing-labor-hours': placeLaborHr,
    'clock-hours': hours(Math.max(num(placeClockHr), num(wayClockHr)), 'max(placeClockHr, wayClockHr)', {
      placeClockHr,
      wayClockHr,
    }),
    'labor-hours': hours(num(placeLaborHr) + num(carryLaborHr), 'placeLaborHr + carryLaborHr', {
      placeLaborHr,
      carryLaborHr,
    }),
  };
}

function drivenHours(quantity: Figure, { hours, trucks }: WorkFigures['haul']): TaskFigures {
  const driven = { unit: 'h', decimals: 1 } as const;
  const inputs = { driverHr: hours };
  const labor = figure({ ...driven, value: hours.value, formula: 'driverHr', inputs });
  const clock =
    trucks === undefined || num(trucks) === 1
      ? figure({ ...driven, value: hours.value, formula: 'driverHr', inputs })
      : figure({
          ...driven,
          value: num(hours) / num(trucks),
          formula: 'driverHr / trucks',
          inputs: { ...inputs, trucks },
        });
  return { quantity, 'clock-hours': clock, 'labor-hours': labor };
}

function mixedHours(quantity: Figure, mixing: Figure, peopleCount: number): TaskFigures {
  const labor = figure({
    value: mixing.value,
    unit: 'h',
    decimals: 1,
    formula: 'mixingHr',
    inputs: { mixingHr: mixing },
  });
  const clock = figure({
    value: num(mixing) / peopleCount,
    unit: 'h',
    decimals: 1,
    formula: 'mixingHr / peopleCount',
    inputs: { mixingHr: mixing, peopleCount: given('company.production.place.people', peopleCount, 'each') },
    source: COMPANY_FIGURE,
  });
  return { quantity, 'clock-hours': clock, 'labor-hours': labor };
}
