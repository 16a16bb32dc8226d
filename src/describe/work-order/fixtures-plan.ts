import type { PublicText } from '../../calculate/text.ts';
import {
  type Bounds,
  boundsOf,
  clipSegmentToOutline,
  distanceIn,
  type Line,
  type Outline,
  type Point,
  polygonRing,
} from '../../geometry/index.ts';
import type { Made } from '../made.ts';
import { slabArea } from '../parts/plan-areas.ts';
import type { PlanArea } from '../parts/plan-drawing.ts';
import type { FiguredDrawing } from '../views.ts';
import { crewPlan } from './crew-plan.ts';

type Tagged = { readonly tag: PublicText; readonly places: readonly Point[] };

/** Half of the cross that stands for one place [in on the ground]. */
const CROSS_IN = 9;
/** So far out of the slabs a pipe is still drawn [in on the ground]. */
const OUTSIDE_IN = 24;

/** The slabs with what lies in and under them, by the numbers of the tables; null where there is nothing. */
export function fixturesPlan(made: Made): FiguredDrawing | null {
  const { job, results, words } = made;
  const tagged = allTagged(made);
  const [first, ...others] = Object.values(job.build.slabs).map(
    (slab): PlanArea => ({
      ...slabArea(results, slab),
      joints: [],
    }),
  );
  if (tagged.length === 0 || first === undefined) return null;
  const around = roundAll([first, ...others].map(({ outline }) => outline));
  const lines = tagged.flatMap(({ tag, places }) => drawnLines(places, tag, around));
  const spots = tagged.flatMap(({ tag, places }) =>
    places.length === 1 ? places.map((at) => ({ text: tag, at })) : [],
  );
  return crewPlan(
    {
      id: 'work-order-fixtures',
      heading: words.tieIns.plan as PublicText,
      areas: [{ ...first, joints: lines, corners: spots }, ...others],
    },
    made,
  );
}

function allTagged({ job, words, show }: Made): readonly Tagged[] {
  const { drains, lids, pipes } = words.tieIns;
  const number = (index: number) => show.count(index + 1);
  return [
    ...Object.values(job.tieIns.drains).map(({ at }, index) => ({
      tag: drains.tag(number(index)) as PublicText,
      places: at,
    })),
    ...Object.values(job.lids).map(({ at }, index) => ({
      tag: lids.tag(number(index)) as PublicText,
      places: [at],
    })),
    ...Object.values(job.site.underSlab).map(({ along }, index) => ({
      tag: pipes.tag(number(index)) as PublicText,
      places: along,
    })),
  ];
}

/** The lines from place to place, the longest with the tag; a cross at one place. */
function drawnLines(places: readonly Point[], tag: PublicText, around: Outline): PlanArea['joints'] {
  const [only] = places;
  if (places.length === 1 && only !== undefined) return crossAt(only).map((line) => ({ line, tag: null }));
  const lines = places.slice(1).flatMap((to, step) => within(places[step] ?? to, to, around));
  const longest = lines.toSorted((one, other) => lengthIn(other) - lengthIn(one))[0];
  return lines.map((line) => ({ line, tag: line === longest ? tag : null }));
}

function crossAt({ xIn, yIn }: Point): readonly Line[] {
  return [
    { fromXIn: xIn - CROSS_IN, fromYIn: yIn, toXIn: xIn + CROSS_IN, toYIn: yIn },
    { fromXIn: xIn, fromYIn: yIn - CROSS_IN, toXIn: xIn, toYIn: yIn + CROSS_IN },
  ];
}

function within(from: Point, to: Point, around: Outline): readonly Line[] {
  const wholeIn = distanceIn(from, to);
  if (wholeIn === 0) return [];
  const line = { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: to.xIn, toYIn: to.yIn };
  const at = (alongIn: number) => ({
    xIn: from.xIn + (alongIn / wholeIn) * (to.xIn - from.xIn),
    yIn: from.yIn + (alongIn / wholeIn) * (to.yIn - from.yIn),
  });
  return clipSegmentToOutline(line, around).map(({ fromIn, toIn }) => {
    const [start, end] = [at(fromIn), at(toIn)];
    return { fromXIn: start.xIn, fromYIn: start.yIn, toXIn: end.xIn, toYIn: end.yIn };
  });
}

function roundAll(outlines: readonly Outline[]): Outline {
  const each = outlines.map(boundsOf);
  const least = (pick: (bounds: Bounds) => number) => Math.min(...each.map(pick)) - OUTSIDE_IN;
  const most = (pick: (bounds: Bounds) => number) => Math.max(...each.map(pick)) + OUTSIDE_IN;
  const [left, right] = [least(({ minXIn }) => minXIn), most(({ maxXIn }) => maxXIn)];
  const [low, high] = [least(({ minYIn }) => minYIn), most(({ maxYIn }) => maxYIn)];
  return {
    rings: [
      polygonRing([
        { xIn: left, yIn: low },
        { xIn: right, yIn: low },
        { xIn: right, yIn: high },
        { xIn: left, yIn: high },
      ]),
    ],
  };
}

function lengthIn({ fromXIn, fromYIn, toXIn, toYIn }: Line): number {
  return Math.hypot(toXIn - fromXIn, toYIn - fromYIn);
}
