import { ceilCount } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, figure, type Given, num } from '../figure.ts';
import { inputKey, inputsOf, sumOfParts } from '../sum-figure.ts';
import type { TaskHours } from './hours.ts';
import { PHASES, type Phase, tasksOf } from './tasks.ts';

export type PhaseFigures = { readonly 'labor-hours': Figure; readonly days: Figure };
export type CrewSize = { readonly crewCount: Given; readonly dayHr: Given };

/** Hours and days of each phase; a phase without work has 0 of both. */
export function phaseFigures(tasks: TaskHours, crew: CrewSize): Record<Phase, PhaseFigures> {
  return Object.fromEntries(PHASES.map((phase) => [phase, onePhase(phase, tasks, crew)])) as Record<
    Phase,
    PhaseFigures
  >;
}

/**
 * Days a phase takes.
 *
 * days = the larger of: labor hours / (crew x day), rounded up; and the longest task's clock
 * hours / day, rounded up, since one driver or one breaker cannot do in a day more than a day.
 *
 * @param phase.laborHr        Labor hours of the phase [h], 0 or above.
 * @param phase.longestClockHr Clock hours of its longest task [h].
 * @param phase.crewCount      People of the crew, 1 or more.
 * @param phase.dayHr          Length of a day [h], above 0.
 */
export function phaseDays(phase: {
  laborHr: number;
  longestClockHr: number;
  crewCount: number;
  dayHr: number;
}): number {
  const { laborHr, longestClockHr, crewCount, dayHr } = phase;
  return Math.max(ceilCount(laborHr / (crewCount * dayHr)), ceilCount(longestClockHr / dayHr));
}

/** Whether the two phases before the pour fit in one day together; the base goes in as the last load goes out. */
export function sharesDay(phases: Record<Phase, PhaseFigures>, crew: CrewSize): boolean {
  const [first, second] = [phases['tear-out'], phases['base-and-forms']];
  if (num(first.days) !== 1 || num(second.days) !== 1) return false;
  const laborHr = num(first['labor-hours']) + num(second['labor-hours']);
  return ceilCount(laborHr / (num(crew.crewCount) * num(crew.dayHr))) <= 1;
}

/** Work days of the job: a day two phases share counts once, and a pour is one day by its nature. */
export function workDaysFigure(phases: Record<Phase, PhaseFigures>, shared: boolean): Figure {
  const tearOutDays = phases['tear-out'].days;
  const baseAndFormsDays = phases['base-and-forms'].days;
  const pourDays = phases.pour.days;
  const stripDays = phases['strip-and-clean'].days;
  const [before, first] = shared
    ? (['max(tearOutDays, baseAndFormsDays)', Math.max(num(tearOutDays), num(baseAndFormsDays))] as const)
    : (['tearOutDays + baseAndFormsDays', num(tearOutDays) + num(baseAndFormsDays)] as const);
  return figure({
    value: first + Math.min(1, num(pourDays)) + num(stripDays),
    unit: 'days',
    decimals: 0,
    formula: `${before} + min(1, pourDays) + stripDays`,
    inputs: { tearOutDays, baseAndFormsDays, pourDays, stripDays },
  });
}

function onePhase(phase: Phase, tasks: TaskHours, crew: CrewSize): PhaseFigures {
  const present = tasksOf(phase).flatMap((task) => {
    const figures = tasks[task];
    return figures === undefined ? [] : [{ task, figures }];
  });
  const labor = sumOfParts({
    parts: present.map(({ task, figures }) => ({
      key: inputKey('labor', task, 'Hr'),
      input: figures['labor-hours'],
    })),
    unit: 'h',
    decimals: 1,
  });
  const clocks = present.map(({ task, figures }) => ({
    key: inputKey('clock', task, 'Hr'),
    input: figures['clock-hours'],
  }));
  const longest = clocks.length === 0 ? '0' : `max(${clocks.map(({ key }) => key).join(', ')})`;
  const days = figure({
    value: phaseDays({
      laborHr: num(labor),
      longestClockHr: Math.max(0, ...clocks.map(({ input }) => num(input))),
      crewCount: num(crew.crewCount),
      dayHr: num(crew.dayHr),
    }),
    unit: 'days',
    decimals: 0,
    formula: `max(ceilStep(laborHr / (crewCount * dayHr), 1), ceilStep(${longest} / dayHr, 1))`,
    inputs: { laborHr: labor, crewCount: crew.crewCount, dayHr: crew.dayHr, ...inputsOf(clocks) },
    source: COMPANY_FIGURE,
    rounding: 'up',
  });
  return { 'labor-hours': labor, days };
}
