import type { Bay } from '../../calculate/bays/index.ts';
import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import { existingAreas } from '../parts/plan-areas.ts';
import type { PlanArea } from '../parts/plan-drawing.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { FiguredDrawing, TableView, WorkOrderView } from '../views.ts';
import { crewPlan } from './crew-plan.ts';

/**
 * The bays to chalk on what goes: how, a plan with the number of each load, and the lines by the tape.
 * Where nothing is split between loads there is nothing to chalk, and that is said; null where nothing is
 * loaded by area.
 */
export function baysView(made: Made): WorkOrderView['bays'] {
  if (made.results.bays.data.bays.length === 0) return null;
  const { heading, whole, how } = made.words.workOrder.bays;
  const lines = linesTable(made);
  if (lines === null) return { notes: { heading, items: [whole] }, chalked: null };
  return { notes: { heading, items: how }, chalked: { plan: bayPlan(made), lines } };
}

function bayPlan(made: Made): FiguredDrawing {
  const { job, results, words } = made;
  const { bays } = results.bays.data;
  const cut = new Set(bays.map(({ existingId }) => existingId));
  const things = Object.values(job.site.existing).filter(({ id }) => cut.has(id));
  const areas = existingAreas({ ...job, site: { ...job.site, existing: byId(things) } }, results);
  return crewPlan(
    {
      id: 'work-order-bays',
      heading: words.common.drawing.bayPlan,
      areas: areas.map((area, index) => withBays(area, things[index]?.id ?? '', made)),
    },
    made,
  );
}

function byId<T extends { readonly id: string }>(things: readonly T[]): Readonly<Record<string, T>> {
  return Object.fromEntries(things.map((thing) => [thing.id, thing]));
}

function withBays(area: PlanArea, id: string, { results, show, words }: Made): PlanArea {
  const { bays, marks } = results.bays.data;
  const own = bays.filter(({ existingId }) => existingId === id);
  return {
    ...area,
    bays: {
      hooks: (marks[id] ?? []).map(({ mark, at }) => ({ text: hookName(mark, words), at })),
      lines: own.flatMap(({ lines }) => lines),
      marks: own.map((bay) => ({
        number: loadNumber(bay, results),
        area: show.area(bay.areaSqFt),
        at: bay.label,
      })),
    },
  };
}

/** The letter of a corner, on the plan and in the table. */
function hookName(mark: string, words: Words): PublicText {
  return words.common.drawing.hook(mark.toUpperCase() as PublicText);
}

/** From 1, as in the table of loads. */
function loadNumber({ load }: Bay, results: JobResults): PublicText {
  return `${results.haul.data.loads.findIndex(({ name }) => name === load) + 1}` as PublicText;
}

/** Where each bay of a thing that is cut starts, by the tape. */
function linesTable(made: Made): TableView | null {
  const { job, results, show, words } = made;
  const say = words.workOrder.bays;
  const { bays } = results.bays.data;
  const isCut = ({ existingId }: Bay) => bays.filter((bay) => bay.existingId === existingId).length > 1;
  return tableOrNull(
    say.caption,
    [end(say.load), start(say.what), end(say.area), start(say.line)],
    bays
      .filter(isCut)
      .map((bay) =>
        row(
          loadNumber(bay, results),
          thingNamed(job.site.existing, bay.existingId, 'existing thing').label,
          show.area(bay.areaSqFt),
          tiesText(bay, made) ?? say.first,
        ),
      ),
  );
}

/** Ends that are as far from their corners are told together; null for a first bay, which has no line. */
function tiesText(bay: Bay, { results, show, words }: Made): string | null {
  const say = words.workOrder.bays;
  const cornersOf = new Map<string, Set<string>>();
  for (const { figure, mark } of bay.ties) {
    const ofThing = thingNamed(results.bays.figures, bay.existingId, 'existing thing');
    const length = show.length(num(thingNamed(thingNamed(ofThing, bay.load, 'load'), figure, 'figure')));
    const corners = cornersOf.get(length) ?? new Set();
    cornersOf.set(length, corners.add(hookName(mark, words)));
  }
  const texts = [...cornersOf].map(([length, corners]) => say.tape(length, [...corners].join(say.and)));
  return texts.length === 0 ? null : texts.join('; ');
}
