import { Usd } from '../../units/index.ts';
import { CREW_TASKS, type CrewFigures, type CrewTask, PHASES, type Phase, TASKS } from '../crew/index.ts';
import { COMPANY_FIGURE, type Figure, figure, num } from '../figure.ts';
import type { Company, Machine } from '../job.ts';
import { thingNamed } from '../parts.ts';
import { productionRow } from '../production-row.ts';
import { exactSum, inputKey, inputsOf, sumExpression } from '../sum-figure.ts';
import { TASK_GROUP } from './groups.ts';
import { type CostLine, joinLines, type Lines, lineCostUsd, priceOf, rateUnitProblems } from './line.ts';

type Use = { readonly phase: Phase; readonly machine: Machine; readonly tasks: readonly CrewTask[] };

/**
 * What the machines cost: clock hours of their tasks where the rate is an hour, days of the phase
 * where it is a day. A machine is paid once a phase, by the group of the first task that uses it,
 * and once for a day that two phases share. A pour is one day.
 */
export function machineLines(input: {
  readonly crew: CrewFigures;
  readonly firstPhasesShareDay: boolean;
  readonly production: Company['production'];
  readonly machines: Company['machines'];
}): Lines {
  const uses = PHASES.flatMap((phase) => usesIn(phase, input));
  const isPaidBefore = (use: Use) =>
    input.firstPhasesShareDay &&
    use.phase === 'base-and-forms' &&
    use.machine.cost.perUnit === 'day' &&
    uses.some(({ phase, machine }) => phase === 'tear-out' && machine.id === use.machine.id);
  return joinLines(uses.filter((use) => !isPaidBefore(use)).map((use) => lineOf(use, input.crew)));
}

function usesIn(phase: Phase, input: Parameters<typeof machineLines>[0]): readonly Use[] {
  const byMachine = new Map<string, CrewTask[]>();
  for (const task of CREW_TASKS) {
    if (task === 'haul' || TASKS[task].phase !== phase || input.crew.tasks[task] === undefined) continue;
    const { machine } = productionRow(input.production, task);
    if (machine !== null) byMachine.set(machine, [...(byMachine.get(machine) ?? []), task]);
  }
  return [...byMachine].map(([id, tasks]) => ({
    phase,
    machine: thingNamed(input.machines, id, 'machine'),
    tasks,
  }));
}

function lineOf(use: Use, crew: CrewFigures): Lines {
  const { phase, machine, tasks } = use;
  const path = `company.machines.${machine.id}.cost`;
  const problems = rateUnitProblems(path, machine.cost, ['h', 'day']);
  const cost = machine.cost.perUnit === 'day' ? byTheDay(use, crew, path) : byTheHour(use, crew, path);
  const [first] = tasks;
  if (first === undefined) return { lines: [], problems };
  const line: CostLine = {
    name: `machine-${phase}-${machine.id}`,
    group: TASK_GROUP[first],
    kind: 'machine',
    cost,
  };
  return { lines: [line], problems };
}

function byTheHour({ machine, tasks }: Use, crew: CrewFigures, path: string): Figure {
  const clocks = tasks.flatMap((task) => {
    const figures = crew.tasks[task];
    return figures === undefined
      ? []
      : [{ key: inputKey('clock', task, 'Hr'), input: figures['clock-hours'] }];
  });
  return figure({
    value: lineCostUsd({ quantity: exactSum(clocks), priceUsd: machine.cost.amountUsd }),
    unit: '$',
    decimals: 2,
    formula: `roundCent((${sumExpression(clocks)}) * machineUsdPerHr)`,
    inputs: { ...inputsOf(clocks), machineUsdPerHr: priceOf(path, machine.cost, '$/h') },
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
}

function byTheDay({ machine, phase }: Use, crew: CrewFigures, path: string): Figure {
  const phaseDays = crew.phases[phase].days;
  const isPour = phase === 'pour';
  const dayCount = isPour ? Math.min(1, num(phaseDays)) : num(phaseDays);
  return figure({
    value: lineCostUsd({ quantity: dayCount, priceUsd: new Usd(machine.cost.amountUsd) }),
    unit: '$',
    decimals: 2,
    formula: `roundCent(${isPour ? 'min(1, phaseDays)' : 'phaseDays'} * machineUsdPerDay)`,
    inputs: { phaseDays, machineUsdPerDay: priceOf(path, machine.cost, '$/day') },
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
}
