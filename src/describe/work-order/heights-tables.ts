import { num } from '../../calculate/figure.ts';
import type { GradedSlab } from '../../calculate/grades/index.ts';
import type { LevelPoint } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { PublicText } from '../../calculate/text.ts';
import { cuFtToCuYd } from '../../units/index.ts';
import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import { depthText } from '../parts/depth-text.ts';
import { drawnFalls } from '../parts/drawn-falls.ts';
import { slabArea } from '../parts/plan-areas.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { FiguredDrawing, TableView, WorkOrderView } from '../views.ts';
import { crewPlan } from './crew-plan.ts';
import { digPlaces } from './dig-places.ts';
import { stringsTable } from './strings-table.ts';

/** New surfaces for the crew; null where no slab has one. */
export function gradesView(made: Made): WorkOrderView['grades'] {
  const slabs = Object.values(made.results.grades.data.slabs);
  if (slabs.length === 0) return null;
  const digs = digsTable(slabs, made);
  const { beyond, deep } = made.words.workOrder.grades;
  return {
    plan: gradesPlan(slabs, made),
    tops: topsTable(slabs, made),
    strings: stringsTable(slabs, made),
    digs,
    notes: [
      ...slabs.flatMap((slab) => acrossNotes(slab, made)),
      ...slabs.flatMap((slab) => digNotes(slab, made)),
      ...(digs === null ? [] : [deep]),
      beyond,
    ],
  };
}

function gradesPlan(slabs: readonly GradedSlab[], made: Made): FiguredDrawing {
  const { results, show, words } = made;
  const say = words.common.drawing;
  return crewPlan(
    {
      id: 'work-order-grades',
      heading: say.gradesPlan,
      areas: slabs.map(({ slab, places, figures }) => ({
        ...slabArea(results, slab),
        joints: [],
        corners: cornersOf(places).map(([name, number]) => ({
          text: say.cornerHeight(
            number as PublicText,
            show.height(num(thingNamed(figures.places, name, 'place').finish)),
          ),
          at: thingNamed(places, name, 'place'),
        })),
      })),
      falls: slabs.flatMap(({ falls }) =>
        drawnFalls(falls).map(({ at, towardsRad, slope }) => ({ text: show.slope(slope), at, towardsRad })),
      ),
    },
    made,
  );
}

/** Names of the places at corners, each with the number of its corner. */
function cornersOf(places: Readonly<Record<string, unknown>>): readonly (readonly [string, string])[] {
  return Object.keys(places).flatMap((name) => {
    const [, number] = /^corner-(\d+)$/.exec(name) ?? [];
    return number === undefined ? [] : [[name, number] as const];
  });
}

/** How high to set the forms: against the datum, and from the first point that cannot move. */
function topsTable(slabs: readonly GradedSlab[], made: Made): TableView | null {
  const { job, results, show, words } = made;
  const say = words.workOrder.grades.tops;
  const from = firstFixed(Object.values(job.heights?.points ?? {}));
  if (from === null) return null;
  const fromIn = num(thingNamed(results.levels.figures.points ?? {}, from.id, 'point').height);
  return tableOrNull(
    say.caption(from.label),
    [start(say.slab), start(say.corner), end(say.height), end(say.from), end(say.decimal)],
    slabs.flatMap((one) =>
      cornersOf(one.places).map(([name, number], index) => {
        const heightIn = num(thingNamed(one.figures.places, name, 'place').finish);
        return {
          ...row(
            one.slab.label,
            number,
            show.height(heightIn),
            difference(heightIn - fromIn, show.size, say),
            difference(heightIn - fromIn, show.height, say),
          ),
          note: index === 0 ? slopeNote(one, made) : null,
        };
      }),
    ),
  );
}

/** What others are measured from; where none is fixed, the first of all. */
function firstFixed(points: readonly LevelPoint[]): LevelPoint | null {
  return points.find(({ kind }) => kind === 'fixed') ?? points[0] ?? null;
}

function difference(
  byIn: number,
  shown: (sizeIn: number) => string,
  say: Words['workOrder']['grades']['tops'],
): string {
  const size = shown(Math.abs(byIn));
  if (size === shown(0)) return say.same;
  return byIn > 0 ? say.above(size) : say.below(size);
}

function slopeNote({ figures }: GradedSlab, { show, words }: Made): string {
  const say = words.workOrder.grades.tops;
  const [mean, least, most, deep] = [
    show.slope(num(figures.slope)),
    show.slope(num(figures.flattest)),
    show.slope(num(figures.steepest)),
    show.size(num(figures['stands-deep'])),
  ];
  const slopes = least === most ? say.slopes(mean) : say.uneven(mean, least, most);
  return deep === show.size(0) ? slopes : `${slopes} ${say.stands(deep)}`;
}

/** Each place with what is there now, what will be, and how deep to dig. */
function digsTable(slabs: readonly GradedSlab[], { show, words }: Made): TableView | null {
  const say = words.workOrder.grades.digs;
  return tableOrNull(
    say.caption,
    [
      start(say.place),
      end(say.existing),
      end(say.finish),
      end(say.slabBottom),
      end(say.baseBottom),
      end(say.dig),
    ],
    slabs.flatMap(({ slab, figures, places }) =>
      digPlaces(places).flatMap((name) => {
        const place = thingNamed(figures.places, name, 'place');
        const { existing, finish, dig, fill } = place;
        const { 'slab-bottom': slabBottom, 'base-bottom': baseBottom } = place;
        if (existing === undefined || slabBottom === undefined || baseBottom === undefined) return [];
        const heights = [existing, finish, slabBottom, baseBottom].map((height) => show.height(num(height)));
        const digText = depthText({ digIn: num(dig ?? existing), fillIn: num(fill ?? existing) }, show, say);
        return [row(say.at(slab.label, placeName(name, say)), ...heights, digText)];
      }),
    ),
  );
}

/** A corner or an edge by its number, or the middle. */
function placeName(name: string, say: Words['workOrder']['grades']['digs']): string {
  const [, what, number] = /^(corner|edge)-(\d+)$/.exec(name) ?? [];
  const { middle, corner, edge } = say;
  if (number === undefined) return middle;
  return (what === 'corner' ? corner : edge)(number);
}

/** How a walk falls across and along. */
function acrossNotes({ slab, figures: { across } }: GradedSlab, { show, words }: Made): readonly string[] {
  if (across === undefined) return [];
  const say = words.workOrder.grades;
  return [say.across(slab.label, show.slope(num(across.slope)), show.slope(num(across.along)))];
}

function digNotes({ slab, figures }: GradedSlab, { results, show, words }: Made): readonly string[] {
  const say = words.workOrder.grades;
  const { 'dig-volume': dig, 'fill-volume': fill } = figures;
  if (dig === undefined || fill === undefined) return [say.notKnown(slab.label)];
  const fillText = show.volume(cuFtToCuYd(num(fill)));
  return [
    results.tearOut.figures.soil[slab.id] === undefined
      ? say.noDig(slab.label)
      : say.volume(slab.label, show.volume(cuFtToCuYd(num(dig)))),
    ...(fillText === show.volume(0) ? [] : [say.fill(slab.label, fillText)]),
  ];
}
