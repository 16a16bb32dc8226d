import { TASK_OF } from '../../calculate/breaking/index.ts';
import type { DayTask, WorkDay } from '../../calculate/crew/index.ts';
import { type Figure, num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { productionRow } from '../../calculate/production-row.ts';
import type { Words } from '../../words/index.ts';
import { plateHours } from '../parts/plate-hours.ts';
import type { Show } from '../show/index.ts';
import { showDate } from '../show/index.ts';
import type { CheckListView, FactView, WorkOrderView } from '../views.ts';
import { belowBase } from './below-base.ts';
import { piecesFacts } from './pieces.ts';
import { waitsFacts } from './pour-day/waits.ts';

type Made = { readonly job: Job; readonly results: JobResults; readonly show: Show; readonly words: Words };
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
      phases.flatMap((phase) => words.workOrder.beforeYouStart[phase]),
    ),
    work: workList(made, parts),
    after: checks(
      say.after,
      phases.flatMap((phase) => words.workOrder.beforeYouLeave[phase]),
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
  const machines = machinesOf(
    job,
    parts.flatMap(({ tasks }) => tasks),
    words,
  );
  const arrives = parts.flatMap((part) => arrivals(made, part));
  return [
    { label: say.crew, value: crew.join(', ') },
    { label: say.hours, value: say.hoursValue(show.hours(laborHr), job.plan.crew.length) },
    ...(machines.length > 0 ? [{ label: say.machines, value: machines.join('; ') }] : []),
    ...tiedDown(made, parts),
    ...piecesFacts(made, parts),
    ...compacting(made, parts),
    ...(parts.some(({ phase }) => phase === 'strip-and-clean') ? waitsFacts(made) : []),
    ...(arrives.length > 0 ? [{ label: say.arrives, value: arrives.join('; ') }] : []),
  ];
}

/** The tie-downs of each machine that works on the day, for the drive there and back. */
function tiedDown({ job, results, show, words }: Made, parts: readonly WorkDay[]): readonly FactView[] {
  const { machines, production } = job.company;
  const say = words.workOrder.day;
  const used = new Set(
    parts
      .flatMap(({ tasks }) => tasks)
      .map(({ task }) => (task === 'haul' ? null : productionRow(production, task).machine)),
  );
  const texts = Object.entries(results.tieDowns)
    .filter(([id]) => used.has(id))
    .map(([id, figures]) =>
      say.tiedDownValue(
        thingNamed(machines, id, 'machine').label,
        show.count(num(figures.count)),
        show.leastWeight(num(figures['working-load-each'])),
      ),
    );
  return texts.length === 0 ? [] : [{ label: say.tiedDown, value: texts.join('; ') }];
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

/** Each machine once for each person who runs it. */
function machinesOf(job: Job, tasks: readonly DayTask[], words: Words): readonly string[] {
  const { machines, labor, production } = job.company;
  const texts = tasks.flatMap(({ task }) => {
    if (task === 'haul') return [];
    const { machine, operator } = productionRow(production, task);
    if (machine === null) return [];
    const { label } = thingNamed(machines, machine, 'machine');
    if (operator === null) return [label];
    return [words.workOrder.day.runBy(label, thingNamed(labor.people, operator, 'person').label)];
  });
  return [...new Set(texts)];
}

function arrivals({ job, results, show, words }: Made, { phase, on }: WorkDay): readonly string[] {
  const say = words.workOrder.day;
  const { suppliers } = job.company;
  if (phase === 'pour') {
    const { supply } = results.concrete.data;
    return supply === 'truck'
      ? [say.truckArrives(suppliers.concrete.label, show.volume(num(results.concrete.figures.truck.order)))]
      : [say.bagsArrive(show.count(num(results.concrete.figures.bags.count)))];
  }
  // Once, on the first of its days: a second line would be a second order.
  const first = results.crew.data.days.find((day) => day.phase === 'base-and-forms');
  if (first?.on !== on || phase !== 'base-and-forms') return [];
  // Fetched base rides back on the trailer and is no arrival of its own.
  const broughtLb = results.haul.data.deliveredLb;
  return broughtLb > 0 ? [say.baseArrives(show.tons(broughtLb))] : [];
}

function workList(made: Made, parts: readonly WorkDay[]): CheckListView {
  const { results, show, words } = made;
  const say = words.workOrder;
  const isBagged = results.concrete.data.supply === 'bags';
  const hasGrid = num(results.breaking.figures.total['cut-length']) > 0;
  const textOf = (task: DayTask['task']) => {
    if (task === 'place' && isBagged) return say.mixBags;
    return task === 'saw-cut' && hasGrid ? say.sawGrid : say.tasks[task];
  };
  const items = parts.flatMap(({ on, tasks }) =>
    tasks.flatMap(({ task, share }) => {
      const text = textOf(task);
      const trips = task === 'haul' ? tripsOn(on, made) : null;
      if (trips !== null) return [{ text, quantity: trips, isHold: false }];
      const item = {
        text: share < 1 - 1e-9 ? say.day.share(text, show.percent(Math.round(share * 100) / 100)) : text,
        quantity: quantityText(quantityOf(task, made), share, show),
        isHold: task === 'place',
      };
      return task === 'base' ? [...belowBase(made), item] : [item];
    }),
  );
  return { heading: say.day.work, items };
}

/** Which trips are driven on a day; null where trips are driven on days that are not planned for hauling. */
function tripsOn(on: string, { results, words }: Made): string | null {
  const { trips } = results.haul.data;
  const planned = new Set(
    results.crew.data.days.flatMap((day) => (day.tasks.some(({ task }) => task === 'haul') ? [day.on] : [])),
  );
  const today = trips.flatMap((trip, index) => (trip.on === on ? [index + 1] : []));
  const [first] = today;
  const last = today.at(-1);
  if (first === undefined || last === undefined || trips.some((trip) => !planned.has(trip.on))) return null;
  return words.workOrder.day.trips(first, last);
}

type Quantity = { readonly amount: number; readonly unit: Figure['unit'] };

/**
 * How much of a task there is; of base, what lies under slabs. Breaking and lifting out are planned by an area that counts steel
 * and thickness in; the crew is told the area that lies there, and of what only stands, nothing.
 */
function quantityOf(task: DayTask['task'], { job, results }: Made): Quantity | null {
  const gone = Object.values(job.site.existing).filter(({ breakOut }) => TASK_OF[breakOut] === task);
  if (gone.length > 0) {
    const areas = gone.map(({ id }) => num(thingNamed(results.outline.figures.existing, id, 'outline').area));
    return { amount: areas.reduce((sumSqFt, areaSqFt) => sumSqFt + areaSqFt, 0), unit: 'sq ft' };
  }
  if (Object.values(job.site.hollow).some(({ breakOut }) => TASK_OF[breakOut] === task)) return null;
  if (task === 'base') {
    const areas = Object.values(results.base.figures.slabs).map(({ area }) => num(area));
    if (areas.length === 0) return null;
    return { amount: areas.reduce((sumSqFt, areaSqFt) => sumSqFt + areaSqFt, 0), unit: 'sq ft' };
  }
  const quantity = results.crew.figures.tasks[task]?.quantity;
  return quantity === undefined ? null : { amount: num(quantity), unit: quantity.unit };
}

/** The part of a quantity that is today's; nothing for what is done once. */
function quantityText(quantity: Quantity | null, share: number, show: Show): string | null {
  if (quantity === null) return null;
  const today = quantity.amount * share;
  switch (quantity.unit) {
    case 'sq ft':
      return show.area(today);
    case 'ft':
      return show.run(today);
    case 'yd3':
      return show.volume(today);
    default:
      return quantity.amount > 1 ? `${show.count(Math.ceil(today - 1e-9))} ×` : null;
  }
}
