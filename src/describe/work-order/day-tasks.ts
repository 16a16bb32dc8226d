import { TASK_OF } from '../../calculate/breaking/index.ts';
import type { DayTask, WorkDay } from '../../calculate/crew/index.ts';
import { type Figure, num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { sawDayOn } from '../parts/saw-day.ts';
import type { Show } from '../show/index.ts';
import type { CheckListView } from '../views.ts';
import { belowBase } from './below-base.ts';
import { whatThereIs } from './what-there-is.ts';

/** The work of a day, in its order, with how much of each. */
export function workList(made: Made, parts: readonly WorkDay[]): CheckListView {
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
  if (task === 'finish' && has.tooledJoints) return say.finishTooled;
  if (task === 'finish' && has.onlyBroom) return say.finishBroom;
  if (task === 'saw-joints' && sawDayOn(results) !== null) return say.sawNextDay;
  if (task === 'set-up' && has.oldSlab) return say.setUpWithBays;
  if ((task === 'break-out' || task === 'break-out-by-hand') && slabsGoneBy(task, job).length > 0)
    return say.byBays[task];
  const hasGrid = num(results.breaking.figures.total['cut-length']) > 0;
  return task === 'saw-cut' && hasGrid ? say.sawGrid : say.tasks[task];
}

/** Old slabs that are taken out so; not what is hollow, and no old steps. */
function slabsGoneBy(task: DayTask['task'], { site }: Made['job']): readonly { readonly id: string }[] {
  return Object.values(site.existing).filter(({ breakOut }) => TASK_OF[breakOut] === task);
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

const BREAKS: ReadonlySet<DayTask['task']> = new Set(Object.values(TASK_OF));

/**
 * How much of a task there is; of base, what lies under slabs. Breaking and lifting out are planned by an area that counts steel
 * and thickness in; the crew is told the area that lies there, and of what only stands, nothing.
 */
function quantityOf(task: DayTask['task'], { job, results }: Made): Quantity | null {
  const gone = slabsGoneBy(task, job);
  if (gone.length > 0) {
    const areas = gone.map(({ id }) => num(thingNamed(results.outline.figures.existing, id, 'outline').area));
    return { amount: areas.reduce((sumSqFt, areaSqFt) => sumSqFt + areaSqFt, 0), unit: 'sq ft' };
  }
  if (BREAKS.has(task)) return null;
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
