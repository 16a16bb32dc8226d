import { distanceIn, type Point } from '../../geometry/index.ts';

/** A crew reads so many depths of a slab at most: common practice, no source. */
const MOST_PLACES = 9;

/**
 * The places of a slab that the crew is told the depth of: all, or of many the middle and the eight others that
 * lie farthest from one another, in the order given.
 */
export function digPlaces(places: Readonly<Record<string, Point>>): readonly string[] {
  const names = Object.keys(places);
  if (names.length <= MOST_PLACES) return names;
  const corners = names.filter((name) => name !== 'middle');
  const kept = new Set(corners.slice(0, 1));
  const aloneIn = (name: string) =>
    Math.min(...[...kept].map((other) => between(places[name], places[other])));
  while (kept.size < MOST_PLACES - 1) {
    kept.add(corners.reduce((best, name) => (aloneIn(name) > aloneIn(best) ? name : best)));
  }
  kept.add('middle');
  return names.filter((name) => kept.has(name));
}

function between(one: Point | undefined, other: Point | undefined): number {
  return one === undefined || other === undefined ? 0 : distanceIn(one, other);
}
