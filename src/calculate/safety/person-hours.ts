import type { CrewTask, TaskHours, WorkDay } from '../crew/index.ts';
import { constant, type Figure, figure, num } from '../figure.ts';
import { inputKey, inputsOf, type Part } from '../sum-figure.ts';

export type ToolTask = { readonly task: CrewTask; readonly operator: string | null };

type Share = { readonly task: CrewTask; readonly shareRatio: number };
type Shift = { readonly on: string; readonly hours: number; readonly shares: readonly Share[] };

/**
 * Hours of Table 1 tasks of the person who does a task, on the worst day of the plan.
 *
 * 29 CFR 1926.1153(c)(3): the hours of all Table 1 tasks of one person in a shift are added.
 * Tasks whose operator is not named are taken to fall on that same person, which is the safe
 * side. A day of the plan does not split a task over people: whoever runs the tool runs it.
 */
export function personHoursFigure(made: {
  readonly of: ToolTask;
  readonly tools: readonly ToolTask[];
  readonly days: readonly WorkDay[];
  readonly tasks: TaskHours;
}): Figure {
  const worst = worstShift(made);
  const parts = worst.shares.flatMap(({ task, shareRatio }) =>
    termOf(task, shareRatio, worst.on, made.tasks),
  );
  const terms = parts.map(([clock, share]) => `${clock.key} * ${share.key}`);
  return figure({
    value: parts.reduce((sumHr, [clock, share]) => sumHr + num(clock.input) * num(share.input), 0),
    unit: 'h',
    decimals: 1,
    formula: terms.length === 0 ? '0' : terms.join(' + '),
    inputs: inputsOf(parts.flat()),
    source:
      '29 CFR 1926.1153(c)(3): hours of Table 1 tasks of one person in a shift are added (read in Oregon OAR 437-002-1057(4))',
  });
}

/**
 * The day on which one person is longest at tools that make dust: own tasks, and the tasks of
 * nobody in particular. A task of nobody falls on whichever named operator is worst off.
 */
function worstShift(made: Parameters<typeof personHoursFigure>[0]): Shift {
  const { of, tools, days } = made;
  const operators = [...new Set(tools.map(({ operator }) => operator))].filter((name) => name !== null);
  const people = of.operator !== null ? [of.operator] : operators.length > 0 ? operators : [null];
  const dates = [
    ...new Set(days.filter(({ tasks }) => tasks.some(({ task }) => task === of.task)).map(({ on }) => on)),
  ];
  const shifts = people.flatMap((person) => {
    const own = tools
      .filter(({ operator }) => operator === null || operator === person)
      .map(({ task }) => task);
    return dates.map((on) => shiftOn(on, own, days));
  });
  return shifts.reduce((worst, shift) => (shift.hours > worst.hours ? shift : worst), {
    on: '',
    hours: 0,
    shares: [],
  });
}

function shiftOn(on: string, own: readonly CrewTask[], days: readonly WorkDay[]): Shift {
  const parts = days
    .filter((day) => day.on === on)
    .flatMap(({ tasks }) => tasks.filter(({ task }) => own.includes(task)));
  return {
    on,
    hours: parts.reduce((sumHr, { clockHr }) => sumHr + clockHr, 0),
    shares: parts.map(({ task, share }) => ({ task, shareRatio: share })),
  };
}

function termOf(
  task: CrewTask,
  shareRatio: number,
  on: string,
  tasks: TaskHours,
): readonly (readonly [Part, Part])[] {
  const figures = tasks[task];
  if (figures === undefined) return [];
  const share = constant(`part of ${task} on ${on}`, shareRatio, 'ratio', 'the work days of this job');
  return [
    [
      { key: inputKey('clock', task, 'Hr'), input: figures['clock-hours'] },
      { key: inputKey('share', task, 'Ratio'), input: share },
    ],
  ];
}
