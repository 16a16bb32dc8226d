/**
 * Parts of a row of areas, as few as there can be with none above the most, and of so few the most even: the largest
 * of them is as small as it can be. An area that is above the most by itself is a part alone.
 *
 * @param areas Each 0 or more.
 * @param most  Above 0.
 * @returns Where each part ends: the places after its last area, the last of them how many areas there are.
 */
export function divided(areas: readonly number[], most: number): readonly number[] {
  const fewest = endsWithin(areas, most);
  const mosts = areas.flatMap((_, from) =>
    areas.slice(from).map((__, to) => sumOf(areas.slice(from, from + to + 1))),
  );
  const least = mosts
    .filter((sum) => sum <= Math.max(most, ...areas))
    .toSorted((one, other) => one - other)
    .find((sum) => sum >= Math.max(...areas) && endsWithin(areas, sum).length <= fewest.length);
  return least === undefined || least > most ? fewest : endsWithin(areas, least);
}

function endsWithin(areas: readonly number[], most: number): readonly number[] {
  const ends: number[] = [];
  let sum = 0;
  for (const [place, area] of areas.entries()) {
    if (place > 0 && sum + area > most * (1 + NOISE)) {
      ends.push(place);
      sum = 0;
    }
    sum += area;
  }
  return areas.length === 0 ? ends : [...ends, areas.length];
}

/** Areas that fill the most exactly go into it. */
const NOISE = 1e-9;

function sumOf(areas: readonly number[]): number {
  return areas.reduce((sum, area) => sum + area, 0);
}
