import {
  cellsWithin,
  chordsOf,
  climbTowards,
  distanceIn,
  type HalfPlane,
  leftOf,
  type Outline,
  opposite,
  orient,
  type Point,
  type Surface,
  segmentsMeet,
} from '../../geometry/index.ts';

/** How far from a foundation the published fall away from it reaches: 10 ft [in]. */
const REACH_IN = 120;

/** Where drains with an outlet lie: the places of each, in the line it runs. */
export type Outlets = readonly (readonly Point[])[];

/**
 * The least fall of a surface away from the house [rise over run], square to each edge along it and within
 * 10 ft of it; below 0 where it falls towards the house. Null where no outer edge stands along the house: round
 * a column water always runs to one side of it. A part that falls towards it and has a drain between, square
 * to the edge, does not count.
 *
 * Source of the reach: International Residential Code, section R401.3 (seen as quoted in a forum of
 * inspectors).
 */
export function leastFallFromHouse(surface: Surface, outline: Outline, outlets: Outlets = []): number | null {
  const falls = orient(outline)
    .rings.slice(0, 1)
    .flatMap((ring) =>
      chordsOf(ring)
        .filter(({ edgeNumber }) => ring[edgeNumber - 1]?.edge === 'house')
        .flatMap(({ from, to }) => {
          const lengthIn = distanceIn(from, to);
          const inside = leftOf(from, to);
          const along = { at: from, a: inside.b, b: -inside.a, c: 0 };
          const sides = [
            inside,
            { ...opposite(inside), c: REACH_IN },
            along,
            { ...opposite(along), c: lengthIn },
          ];
          const awayRad = Math.atan2(inside.b, inside.a);
          return cellsWithin(surface, outline, sides).flatMap(({ plane, middle }) => {
            const fall = -climbTowards(plane, awayRad);
            return fall < 0 && isDrained(middle, inside, outlets) ? [] : [fall];
          });
        }),
    );
  return falls.length === 0 ? null : Math.min(...falls);
}

/** Whether a drain lies between a place and the line of an edge, square to it. */
function isDrained(from: Point, edge: HalfPlane, outlets: Outlets): boolean {
  const offIn = edge.a * (from.xIn - edge.at.xIn) + edge.b * (from.yIn - edge.at.yIn) + edge.c;
  const foot = { xIn: from.xIn - offIn * edge.a, yIn: from.yIn - offIn * edge.b };
  return outlets.some((line) =>
    line.slice(1).some((to, step) => segmentsMeet({ from, to: foot }, { from: line[step] ?? to, to })),
  );
}
