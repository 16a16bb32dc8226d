import type { WorkDay } from '../../calculate/crew/index.ts';
import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { orderedTons, orderedVolume } from '../parts/ordered.ts';
import { plateHours } from '../parts/plate-hours.ts';
import { showDate } from '../show/index.ts';
import type { CheckListView, FactView, WorkOrderView } from '../views.ts';
import { beforeYouLeave, beforeYouStart } from './day-checks.ts';
import { machineFacts } from './day-machines.ts';
import { workList } from './day-tasks.ts';
import { piecesFacts } from './pieces.ts';
import { waitsFacts } from './pour-day/waits.ts';

type DayView = WorkOrderView['days'][number];

/** One page a date: phases that share a date stand on one page, in the order of the work. */
export function daysView(made: Made): readonly DayView[] {
  const dates = [...new Set(workDays(made).map(({ on }) => on))];
  return dates.map((on) =>
    dayView(
      made,
      on,
      workDays(made).filter((day) => day.on === on),
    ),
  );
}

function workDays({ results }: Made): readonly WorkDay[] {
  return results.crew.data.days.filter(({ kind }) => kind === 'work');
}

function dayView(made: Made, on: string, parts: readonly WorkDay[]): DayView {
  const { words } = made;
  const say = words.workOrder.day;
  const phases = parts.map(({ phase }) => phase);
  const [weekday = '', ...rest] = showDate(on, words.common).split(' ');
  return {
    date: rest.join(' '),
    weekday,
    phase: phases.map((phase) => words.common.phases[phase]).join(' · '),
    facts: dayFacts(made, parts),
    before: checks(
      say.before,
      parts.flatMap((part) => beforeYouStart(made, part)),
    ),
    work: workList(made, parts),
    after: checks(
      say.after,
      parts.flatMap((part) => beforeYouLeave(made, part)),
    ),
    wroteDown: { heading: say.wroteDown, labels: say.labels },
  };
}

function checks(heading: string, texts: readonly string[]): CheckListView {
  return { heading, items: [...new Set(texts)].map((text) => ({ text, quantity: null, isHold: false })) };
}

function dayFacts(made: Made, parts: readonly WorkDay[]): readonly FactView[] {
  const { job, show, words } = made;
  const say = words.workOrder.day;
  const laborHr = parts.flatMap(({ tasks }) => tasks).reduce((sumHr, task) => sumHr + task.laborHr, 0);
  const crew = job.plan.crew.map((id) => thingNamed(job.company.labor.people, id, 'person').label);
  const arrives = parts.flatMap((part) => arrivals(made, part));
  return [
    { label: say.crew, value: crew.join(', ') },
    { label: say.hours, value: say.hoursValue(show.hours(laborHr), job.plan.crew.length) },
    ...machineFacts(
      made,
      parts.flatMap(({ tasks }) => tasks),
    ),
    ...piecesFacts(made, parts),
    ...compacting(made, parts),
    ...(parts.some(({ phase }) => phase === 'strip-and-clean') ? waitsFacts(made) : []),
    ...(arrives.length > 0 ? [{ label: say.arrives, value: arrives.join('; ') }] : []),
  ];
}

/** On a day with base: how often over a lift, and how long the plate runs for all of the base. */
function compacting({ results, show, words }: Made, parts: readonly WorkDay[]): readonly FactView[] {
  const [slab] = Object.values(results.base.figures.slabs);
  const hasBase = parts.some(({ tasks }) => tasks.some(({ task }) => task === 'base'));
  if (slab === undefined || !hasBase) return [];
  const say = words.workOrder.day;
  const passes = show.count(num(slab.passes));
  return [{ label: say.compact, value: say.compactValue(passes, plateHours(results, show)) }];
}

function arrivals(made: Made, { phase, on }: WorkDay): readonly string[] {
  const { job, results, show, words } = made;
  const say = words.workOrder.day;
  const { suppliers } = job.company;
  if (phase === 'pour') {
    const { supply } = results.concrete.data;
    return supply === 'truck'
      ? [
          say.truckArrives(
            suppliers.concrete.label,
            orderedVolume(num(results.concrete.figures.truck.order), made),
          ),
        ]
      : [say.bagsArrive(show.count(num(results.concrete.figures.bags.count)))];
  }
  // Once, on the first of its days: a second line would be a second order.
  const first = results.crew.data.days.find((day) => day.phase === 'base-and-forms');
  if (first?.on !== on || phase !== 'base-and-forms') return [];
  // Fetched base rides back on the trailer and is no arrival of its own.
  const broughtLb = results.haul.data.deliveredLb;
  return broughtLb > 0 ? [say.baseArrives(orderedTons(broughtLb, made))] : [];
}
