import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Existing, Hollow, Job, Slab } from '../../calculate/job.ts';
import { type CutOutOnPlan, type Lies, surfaceToPlan } from '../../calculate/outline/index.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { PublicText } from '../../calculate/text.ts';
import {
  containsPoint,
  distanceToEdgeIn,
  type Line,
  labelPointOf,
  type Outline,
  type Point,
} from '../../geometry/index.ts';
import type { Words } from '../../words/index.ts';
import type { Show } from '../show/index.ts';
import { jointTags, panelLetters } from './joint-names.ts';
import type { PlanArea } from './plan-drawing.ts';

const NO_BAYS: PlanArea['bays'] = { lines: [], marks: [], hooks: [] };

/** A slab on the level plan, for anyone: its outline, joints, and what is left out of it. */
export function slabArea(results: JobResults, slab: Slab): PlanArea {
  const { data } = results.outline;
  const lies = thingNamed(data.lies, slab.id, 'slab');
  return {
    label: withPieces(slab),
    outline: thingNamed(data.plans.slabs, slab.id, 'slab'),
    isForeshortened: isForeshortened(lies),
    role: 'new',
    joints: thingNamed(results.joints.data.lines, slab.id, 'slab').map((line) => ({
      line: onPlan(line, lies),
      tag: null,
    })),
    tags: [],
    corners: [],
    holes: holesOf(data.cutOuts.slabs[slab.id]),
    bays: NO_BAYS,
  };
}

/** The slabs as the crew lays them out: curves and joints by the tags of the tables. */
export function slabAreasForCrew(
  job: Job,
  results: JobResults,
  show: Show,
  words: Words,
): readonly PlanArea[] {
  const numbers = jointTags(job, results, words);
  const letters = panelLetters(job, results, words);
  return Object.values(job.build.slabs).map((slab): PlanArea => {
    const area = slabArea(results, slab);
    const { curves } = thingNamed(results.layout.figures.slabs, slab.id, 'slab');
    return {
      ...area,
      joints: area.joints.map(({ line }, index) => ({ line, tag: numbers[slab.id]?.[index] ?? null })),
      panels: thingNamed(results.joints.data.panels, slab.id, 'slab').flatMap(({ outline }, index, all) => {
        const text = letters[slab.id]?.[index];
        if (text === undefined || all.length === 1) return [];
        return [{ text, ...middleOf(outline, thingNamed(results.outline.data.lies, slab.id, 'slab')) }];
      }),
      corners: thingNamed(results.layout.data.corners, slab.id, 'slab').map(({ number, at }) => ({
        text: `${number}` as PublicText,
        at,
      })),
      tags: thingNamed(results.layout.data.curves, slab.id, 'slab').flatMap(({ tag, middle, centre }) => {
        const figures = curves?.[tag];
        if (figures === undefined) return [];
        const radius = words.common.drawing.radius(show.length(num(figures.radius)));
        const name = words.common.drawing.curve(tag.slice(1) as PublicText);
        return [{ text: `${name} ${radius}` as PublicText, at: middle, centre }];
      }),
    };
  });
}

/** Flat things that go, on the level plan. */
export function existingAreas(job: Job, results: JobResults): readonly PlanArea[] {
  return areasOf(Object.values(job.site.existing), results);
}

/** All that goes, flat or hollow, on the level plan. */
export function goneAreas({ site }: Job, results: JobResults): readonly PlanArea[] {
  return areasOf([...Object.values(site.existing), ...Object.values(site.hollow)], results);
}

function areasOf(things: readonly (Existing | Hollow)[], results: JobResults): readonly PlanArea[] {
  const { data } = results.outline;
  return things.map((thing) => ({
    label: withPieces(thing),
    outline: thingNamed(data.plans.existing, thing.id, 'thing'),
    isForeshortened: isForeshortened(thingNamed(data.existingLies, thing.id, 'thing')),
    role: 'goes' as const,
    joints: [],
    tags: [],
    corners: [],
    holes: holesOf(data.cutOuts.existing[thing.id]),
    bays: NO_BAYS,
  }));
}

function isForeshortened({ plan }: Lies): boolean {
  return plan.alongRatio !== plan.acrossRatio;
}

/** A shape by its name, and the names of the pieces that were added to it: no word of ours between them. */
function withPieces({ label, shape }: Slab | Existing | Hollow): PublicText {
  const pieces = Object.values(shape.added).map((piece) => piece.label);
  return [label, ...pieces].join(' + ') as PublicText;
}

function holesOf(cutOuts: readonly CutOutOnPlan[] | undefined): PlanArea['holes'] {
  return (cutOuts ?? []).map(({ label, at }) => ({ label, at }));
}

/** A line of the surface on the level plan. */
export function onPlan(line: Line, lies: Lies): Line {
  const from = surfaceToPlan({ xIn: line.fromXIn, yIn: line.fromYIn }, lies);
  const to = surfaceToPlan({ xIn: line.toXIn, yIn: line.toYIn }, lies);
  return { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: to.xIn, toYIn: to.yIn };
}

/** About the middle of a panel on the level plan, and how far that is from its edges. */
function middleOf(outline: Outline, lies: Lies): { readonly at: Point; readonly clearanceIn: number } {
  const [ring = []] = outline.rings;
  const mean = (key: 'xIn' | 'yIn') => ring.reduce((sum, vertex) => sum + vertex[key], 0) / ring.length;
  const corners = { xIn: mean('xIn'), yIn: mean('yIn') };
  const middle = containsPoint(outline, corners) ? corners : labelPointOf(outline);
  return { at: surfaceToPlan(middle, lies), clearanceIn: distanceToEdgeIn(outline, middle) };
}
