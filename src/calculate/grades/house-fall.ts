import {
  cellsWithin,
  chordsOf,
  climbTowards,
  distanceIn,
  leftOf,
  type Outline,
  opposite,
  orient,
  type Surface,
} from '../../geometry/index.ts';

/** How far from a foundation the published fall away from it reaches: 10 ft [in]. */
const REACH_IN = 120;

/**
 * The least fall of a surface away from the house [rise over run], square to each edge along it and within
 * 10 ft of it; below 0 where it falls towards the house. Null where no outer edge stands along the house: round
 * a column water always runs to one side of it.
 *
 * Source of the reach: International Residential Code, section R401.3 (seen as quoted in a forum of
 * inspectors).
 */
export function leastFallFromHouse(surface: Surface, outline: Outline): number | null {
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
          return cellsWithin(surface, outline, sides).map(({ plane }) => -climbTowards(plane, awayRad));
        }),
    );
  return falls.length === 0 ? null : Math.min(...falls);
}
