import { type Chord, chordsOf } from './flatten.ts';
import { crossSqIn, type Point, type Ring } from './outline.ts';

/**
 * The first two edges of a ring that cross, touch away from their common corner, or fold back on each
 * other, by edge number from 1; null for a sound ring. Arcs are taken as fine chords.
 */
export function selfCrossing(ring: Ring): readonly [number, number] | null {
  const chords = chordsOf(ring).filter((chord) => !isSamePoint(chord.from, chord.to));
  for (const [index, first] of chords.entries()) {
    for (let other = index + 1; other < chords.length; other += 1) {
      const second = chords[other];
      if (second === undefined) continue;
      const follows = other === index + 1;
      const closes = index === 0 && other === chords.length - 1;
      const crosses =
        follows || closes
          ? foldsBack(follows ? first : second, follows ? second : first)
          : segmentsMeet(first, second);
      if (crosses) return [first.edgeNumber, second.edgeNumber];
    }
  }
  return null;
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
