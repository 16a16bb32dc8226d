import type { DayTask } from '../../calculate/crew/index.ts';
import { num } from '../../calculate/figure.ts';
import type { ProductionRow, TaskId } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { productionRow } from '../../calculate/production-row.ts';
import type { Made } from '../made.ts';
import type { FactView } from '../views.ts';

type Run = Pick<ProductionRow, 'operator'> & { readonly machine: string };

/** Who runs which machine in these tasks; trailers are loaded with what breaks and digs on this job. */
export function machineRuns({ job, results }: Made, tasks: readonly DayTask[]): readonly Run[] {
  const { machines, production } = job.company;
  const runsOf = (asked: readonly TaskId[]) =>
    asked.flatMap((task): Run[] => {
      const { machine, operator } = productionRow(production, task);
      return machine === null ? [] : [{ machine, operator }];
    });
  const loads = ({ machine }: Run) => thingNamed(machines, machine, 'machine').kind === 'loader-with-breaker';
  return tasks.flatMap(({ task }) =>
    task === 'haul'
      ? runsOf(pacedTasks(results.crew.data.days.flatMap((day) => day.tasks))).filter(loads)
      : runsOf([task]),
  );
}

function pacedTasks(tasks: readonly DayTask[]): readonly TaskId[] {
  return tasks.flatMap(({ task }) => (task === 'haul' ? [] : [task]));
}

/** Each machine once for each person who runs it, then how those are tied down that ride. */
export function machineFacts(made: Made, tasks: readonly DayTask[]): readonly FactView[] {
  const { job, results, show, words } = made;
  const { machines, labor } = job.company;
  const say = words.workOrder.day;
  const runs = machineRuns(made, tasks);
  const labelOf = (id: string) => thingNamed(machines, id, 'machine').label;
  const named = runs.map(({ machine, operator }) =>
    operator === null
      ? labelOf(machine)
      : say.runBy(labelOf(machine), thingNamed(labor.people, operator, 'person').label),
  );
  const used = new Set(runs.map(({ machine }) => machine));
  const tied = Object.entries(results.tieDowns)
    .filter(([id]) => used.has(id))
    .map(([id, figures]) =>
      say.tiedDownValue(
        labelOf(id),
        show.count(num(figures.count)),
        show.leastWeight(num(figures['working-load-each'])),
      ),
    );
  return [
    ...(named.length > 0 ? [{ label: say.machines, value: [...new Set(named)].join('; ') }] : []),
    ...(tied.length > 0 ? [{ label: say.tiedDown, value: tied.join('; ') }] : []),
  ];
}
