import {
  boundsOf,
  chordsOf,
  containsPoint,
  fallOf,
  type Line,
  type Outline,
  type Point,
  planeOf,
  type Surface,
  segmentCrossingIn,
  type Triangle,
  triangleAt,
} from '../../geometry/index.ts';
import { rememberByValue } from '../remember.ts';
import type { Outlets } from './house-fall.ts';

/** A slab is looked at from so many places, about. */
const PLACES = 400;
const LEAST_STEP_IN = 3;
const MOST_STEP_IN = 24;
/** How far water is followed past the edge of a slab: common practice, no source. */
const REACH_IN = 120;
/** Half of a grate, which takes what passes over it: 12 in wide, common practice, no source. */
const HALF_GRATE_IN = 6;
/** Flatter than that water has no direction [rise over run]. */
const LEVEL = 1e-6;

/**
 * How much of a slab sends its water to a line: the share of its area, from places a step apart, each followed
 * down the surface and then straight on for 10 ft. A drain with an outlet takes the water that comes to it, a
 * channel along its length and a grate what passes within 6 in of its middle; a wall along an edge stops it.
 *
 * @param line Two points or more.
 * @returns 0 to 1; 0 where the slab is too small for a place.
 */
export function shareTowards(
  line: readonly Point[],
  surface: Surface,
  outline: Outline,
  outlets: Outlets,
): number {
  return remembered({ line, surface, outline, outlets });
}

type Asked = {
  readonly line: readonly Point[];
  readonly surface: Surface;
  readonly outline: Outline;
  readonly outlets: Outlets;
};

/** More slabs and lines than a job has: what lies below a slab may change without another way of its water. */
const KEPT_SHARES = 100;
const remembered = rememberByValue('water', shareOf, KEPT_SHARES);

function shareOf({ line, surface, outline, outlets }: Asked): number {
  const stepIn = stepOf(outline);
  const places = placesOn(outline, stepIn);
  const edges = outline.rings.flatMap((ring) =>
    chordsOf(ring).map(({ from, to, edgeNumber }) => ({
      line: lineOf(from, to),
      isWall: ring[edgeNumber - 1]?.edge === 'house',
    })),
  );
  const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(outline);
  const mostSteps = Math.ceil((4 * (maxXIn - minXIn + maxYIn - minYIn)) / stepIn);
  const stepFrom = stepDown(surface);
  const slab = { stepFrom, outline, edges: edges.map((edge) => edge.line), stepIn, mostSteps };
  const asked = linesOf(line);
  const stops = [
    ...outlets.flatMap(linesOf),
    ...edges.filter(({ isWall }) => isWall).map((edge) => edge.line),
  ];
  const grates = outlets.flatMap(([at, ...more]) => (at === undefined || more.length > 0 ? [] : [at]));
  const reaches = (from: Point) => {
    for (const stretch of wayDown(from, slab)) {
      const metIn = firstMetIn(asked, stretch);
      const stoppedIn = Math.min(
        firstMetIn(stops, stretch),
        ...grates.map((grate) => passesIn(grate, stretch)),
      );
      if (metIn < Infinity && metIn <= stoppedIn) return true;
      if (stoppedIn < Infinity) return false;
    }
    return false;
  };
  return places.length === 0 ? 0 : places.filter(reaches).length / places.length;
}

type Stretch = { readonly from: Point; readonly to: Point };
/** Where a step of some length leads from a place, straight down; null where nothing falls. */
type StepDown = (from: Point) => ((lengthIn: number) => Point) | null;

/** Each triangle falls one way, however many steps are on it. */
function stepDown(surface: Surface): StepDown {
  const known = new Map<Triangle, { readonly cos: number; readonly sin: number } | null>();
  const towards = (triangle: Triangle) => {
    const before = known.get(triangle);
    if (before !== undefined) return before;
    const { slope, towardsRad } = fallOf(planeOf(triangle));
    const found = slope < LEVEL ? null : { cos: Math.cos(towardsRad), sin: Math.sin(towardsRad) };
    known.set(triangle, found);
    return found;
  };
  return (from) => {
    const way = towards(triangleAt(surface, from));
    if (way === null) return null;
    return (lengthIn) => ({ xIn: from.xIn + lengthIn * way.cos, yIn: from.yIn + lengthIn * way.sin });
  };
}

/** The way of the water from a place, in steps and in the end straight on; it ends where nothing falls any more. */
function* wayDown(
  start: Point,
  slab: {
    readonly stepFrom: StepDown;
    readonly outline: Outline;
    readonly edges: readonly Line[];
    readonly stepIn: number;
    /** Water that runs in a ring is not followed for ever. */
    readonly mostSteps: number;
  },
): Generator<Stretch> {
  const { stepFrom, outline, edges, stepIn, mostSteps } = slab;
  let from = start;
  for (let steps = 0; steps < mostSteps; steps += 1) {
    const ahead = stepFrom(from);
    if (ahead === null) return;
    const to = ahead(stepIn);
    if (!containsPoint(outline, to)) {
      const edgeIn = firstMetIn(edges, { from, to });
      yield { from, to: ahead(Math.min(edgeIn, stepIn) + REACH_IN) };
      return;
    }
    yield { from, to };
    from = to;
  }
}

function lineOf(from: Point, to: Point): Line {
  return { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: to.xIn, toYIn: to.yIn };
}

function linesOf(places: readonly Point[]): readonly Line[] {
  return places.slice(1).map((to, index) => lineOf(places[index] ?? to, to));
}

/** How far along a stretch the first of some lines is met [in]; Infinity where none is. */
function firstMetIn(lines: readonly Line[], stretch: Stretch): number {
  let leastIn = Infinity;
  for (const line of lines) leastIn = Math.min(leastIn, segmentCrossingIn(stretch, line) ?? Infinity);
  return leastIn;
}

/** How far along a stretch it is nearest to a grate [in]; Infinity where it passes beside it. */
function passesIn(grate: Point, { from, to }: Stretch): number {
  const [dxIn, dyIn] = [to.xIn - from.xIn, to.yIn - from.yIn];
  const lengthIn = Math.hypot(dxIn, dyIn);
  const alongIn = ((grate.xIn - from.xIn) * dxIn + (grate.yIn - from.yIn) * dyIn) / lengthIn;
  const nearestIn = Math.min(lengthIn, Math.max(0, alongIn));
  const offIn = Math.hypot(
    from.xIn + (dxIn * nearestIn) / lengthIn - grate.xIn,
    from.yIn + (dyIn * nearestIn) / lengthIn - grate.yIn,
  );
  return offIn <= HALF_GRATE_IN ? nearestIn : Infinity;
}

function stepOf(outline: Outline): number {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(outline);
  const stepIn = Math.sqrt(((maxXIn - minXIn) * (maxYIn - minYIn)) / PLACES);
  return Math.min(MOST_STEP_IN, Math.max(LEAST_STEP_IN, stepIn));
}

/** The middles of squares of a step that lie on a slab. */
function placesOn(outline: Outline, stepIn: number): readonly Point[] {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(outline);
  const along = (leastIn: number, mostIn: number) => {
    const count = Math.max(1, Math.round((mostIn - leastIn) / stepIn));
    return Array.from(
      { length: count },
      (_, index) => leastIn + ((index + 0.5) * (mostIn - leastIn)) / count,
    );
  };
  return along(minXIn, maxXIn)
    .flatMap((xIn) => along(minYIn, maxYIn).map((yIn) => ({ xIn, yIn })))
    .filter((place) => containsPoint(outline, place));
}
