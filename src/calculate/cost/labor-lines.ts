import { Usd } from '../../units/index.ts';
import { CREW_TASKS, type CrewTask, type TaskHours } from '../crew/index.ts';
import { COMPANY_FIGURE, type Figure, figure } from '../figure.ts';
import { exactSum, inputKey, inputsOf, sumExpression } from '../sum-figure.ts';
import { COST_GROUPS, TASK_GROUP } from './groups.ts';
import { type CostLine, lineCostUsd } from './line.ts';

/** Labor of each group, and of hauling apart from the tear-out: labor hours x labor cost an hour. */
export function laborLines(tasks: TaskHours, laborUsdPerHr: Figure): readonly CostLine[] {
  const groups = COST_GROUPS.map((group) => ({
    name: `${group === 'tear-out-and-haul' ? 'tear-out' : group}-labor`,
    group,
    of: CREW_TASKS.filter((task) => TASK_GROUP[task] === group && task !== 'haul'),
  }));
  const haul = { name: 'haul-labor', group: TASK_GROUP.haul, of: ['haul'] as const };
  return [...groups, haul].flatMap(({ name, group, of }) => {
    const cost = laborFigure(of, tasks, laborUsdPerHr);
    return cost === null ? [] : [{ name, group, kind: 'labor' as const, cost }];
  });
}

function laborFigure(of: readonly CrewTask[], tasks: TaskHours, laborUsdPerHr: Figure): Figure | null {
  const hours = of.flatMap((task) => {
    const figures = tasks[task];
    return figures === undefined
      ? []
      : [{ key: inputKey('labor', task, 'Hr'), input: figures['labor-hours'] }];
  });
  if (hours.length === 0) return null;
  return figure({
    value: lineCostUsd({ quantity: exactSum(hours), priceUsd: new Usd(laborUsdPerHr.value) }),
    unit: '$',
    decimals: 2,
    formula: `roundCent((${sumExpression(hours)}) * laborUsdPerHr)`,
    inputs: { ...inputsOf(hours), laborUsdPerHr },
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
}
