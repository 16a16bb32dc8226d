import { type Chord, chordsOf } from './flatten.ts';
import { crossSqIn, type Point, type Ring } from './outline.ts';

/**
 * The first two edges of a ring that cross, touch away from their common corner, or fold back on each
 * other, by edge number from 1; null for a sound ring. Arcs are taken as fine chords.
 *
 * Chords are swept along the longer side of the box around the ring, so that each meets only those
 * beside it: the time grows as n log n where the ring does not double back on itself all along.
 */
export function selfCrossing(ring: Ring): readonly [number, number] | null {
  const chords = chordsOf(ring).filter((chord) => !isSamePoint(chord.from, chord.to));
  const count = chords.length;
  let first: Pair | null = null;
  for (const [index, other] of nearPairs(chords)) {
    const [one, two] = [chords[index], chords[other]];
    if (one === undefined || two === undefined) continue;
    const follows = other === index + 1;
    const closes = index === 0 && other === count - 1;
    const crosses =
      follows || closes ? foldsBack(follows ? one : two, follows ? two : one) : segmentsMeet(one, two);
    if (crosses && (first === null || isBefore([index, other], first))) first = [index, other];
  }
  if (first === null) return null;
  const [one, two] = [chords[first[0]], chords[first[1]]];
  return one === undefined || two === undefined ? null : [one.edgeNumber, two.edgeNumber];
}

type Pair = readonly [number, number];

function isBefore(one: Pair, other: Pair): boolean {
  return one[0] < other[0] || (one[0] === other[0] && one[1] < other[1]);
}

/** Pairs of chords whose boxes meet, the one with the lower index first. */
function* nearPairs(chords: readonly Chord[]): Generator<Pair> {
  const boxes = chords.map(({ from, to }, index) => ({
    index,
    x: [Math.min(from.xIn, to.xIn), Math.max(from.xIn, to.xIn)] as const,
    y: [Math.min(from.yIn, to.yIn), Math.max(from.yIn, to.yIn)] as const,
  }));
  const extent = (axis: 'x' | 'y') =>
    boxes.reduce((most, box) => Math.max(most, box[axis][1]), -Infinity) -
    boxes.reduce((least, box) => Math.min(least, box[axis][0]), Infinity);
  const [along, across] = extent('x') >= extent('y') ? (['x', 'y'] as const) : (['y', 'x'] as const);
  let open: typeof boxes = [];
  for (const box of boxes.toSorted((one, other) => one[along][0] - other[along][0])) {
    open = open.filter((other) => other[along][1] >= box[along][0]);
    for (const other of open) {
      const meet = other[across][1] >= box[across][0] && other[across][0] <= box[across][1];
      if (meet) yield box.index < other.index ? [box.index, other.index] : [other.index, box.index];
    }
    open.push(box);
  }
}

/** Whether two straight pieces have a point in common, ends included. */
export function segmentsMeet(
  first: { readonly from: Point; readonly to: Point },
  second: { readonly from: Point; readonly to: Point },
): boolean {
  const a = Math.sign(crossSqIn(first.from, first.to, second.from));
  const b = Math.sign(crossSqIn(first.from, first.to, second.to));
  const c = Math.sign(crossSqIn(second.from, second.to, first.from));
  const d = Math.sign(crossSqIn(second.from, second.to, first.to));
  if (a !== b && c !== d) return true;
  return (
    (a === 0 && isInBox(first, second.from)) ||
    (b === 0 && isInBox(first, second.to)) ||
    (c === 0 && isInBox(second, first.from)) ||
    (d === 0 && isInBox(second, first.to))
  );
}

function foldsBack(before: Chord, after: Chord): boolean {
  const along =
    (before.to.xIn - before.from.xIn) * (after.to.xIn - after.from.xIn) +
    (before.to.yIn - before.from.yIn) * (after.to.yIn - after.from.yIn);
  return crossSqIn(before.from, before.to, after.to) === 0 && along < 0;
}

function isInBox({ from, to }: { from: Point; to: Point }, point: Point): boolean {
  return (
    point.xIn >= Math.min(from.xIn, to.xIn) &&
    point.xIn <= Math.max(from.xIn, to.xIn) &&
    point.yIn >= Math.min(from.yIn, to.yIn) &&
    point.yIn <= Math.max(from.yIn, to.yIn)
  );
}

function isSamePoint(a: Point, b: Point): boolean {
  return a.xIn === b.xIn && a.yIn === b.yIn;
}
