import { TASK_OF } from '../../calculate/breaking/index.ts';
import type { DayTask, WorkDay } from '../../calculate/crew/index.ts';
import { type Figure, num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { orderedTons, orderedVolume } from '../parts/ordered.ts';
import { plateHours } from '../parts/plate-hours.ts';
import { sawDayOn } from '../parts/saw-day.ts';
import type { Show } from '../show/index.ts';
import { showDate } from '../show/index.ts';
import type { CheckListView, FactView, WorkOrderView } from '../views.ts';
import { belowBase } from './below-base.ts';
import { beforeYouLeave, beforeYouStart } from './day-checks.ts';
import { machineFacts } from './day-machines.ts';
import { piecesFacts } from './pieces.ts';
import { waitsFacts } from './pour-day/waits.ts';
import { whatThereIs } from './what-there-is.ts';

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

function workList(made: Made, parts: readonly WorkDay[]): CheckListView {
  const { show, words } = made;
  const say = words.workOrder;
  const items = parts.flatMap(({ on, tasks }) =>
    tasks.flatMap(({ task, share }) => {
      const text = taskText(task, made);
      const trips = task === 'haul' ? tripsOn(on, made) : null;
      if (trips !== null) return [{ text, quantity: trips, isHold: false }];
      const item = {
        text: share < 1 - 1e-9 ? say.day.share(text, show.percent(Math.round(share * 100) / 100)) : text,
        quantity: quantityText(quantityOf(task, made), share, show),
        isHold: task === 'place',
      };
      if (task === 'base') return [...belowBase(made), item];
      return task === 'form' ? [item, ...softStrip(made, on)] : [item];
    }),
  );
  return { heading: say.day.work, items };
}

function taskText(task: DayTask['task'], { job, results, words }: Made): string {
  const say = words.crewDays;
  const has = whatThereIs(job, results);
  if (task === 'place' && has.bags) return say.mixBags;
  if (task === 'finish' && has.onlyBroom) return say.finishBroom;
  if (task === 'saw-joints' && sawDayOn(results) !== null) return say.sawNextDay;
  const hasGrid = num(results.breaking.figures.total['cut-length']) > 0;
  return task === 'saw-cut' && hasGrid ? say.sawGrid : say.tasks[task];
}

/** What keeps the slab free of what stays goes in once the last form stands. */
function softStrip({ job, results, show, words }: Made, on: string): CheckListView['items'] {
  const formed = results.crew.data.days.filter(({ tasks }) => tasks.some(({ task }) => task === 'form'));
  if (!whatThereIs(job, results).softStrip || formed.at(-1)?.on !== on) return [];
  const quantity = show.run(num(results.edges.figures.total.isolation));
  return [{ text: words.crewDays.softStrip, quantity, isHold: false }];
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
