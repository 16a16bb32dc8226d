import { circleOf } from './arc.ts';
import { containsPoint } from './measure.ts';
import { distanceIn, type Outline, type Point, type Vertex, vertexAt } from './outline.ts';

export type Line = {
  readonly fromXIn: number;
  readonly fromYIn: number;
  readonly toXIn: number;
  readonly toYIn: number;
};

/** A stretch of a line, as distances from the line's first point [in]. */
export type Stretch = { readonly fromIn: number; readonly toIn: number };

/** How far beside a line both sides must be inside; running along an edge is not inside. */
const besideIn = 1e-6;

/**
 * The stretches of an endless line that lie inside an outline, in order along it. Exact with arcs.
 * A stretch that runs along an edge does not count as inside.
 *
 * @param line Two different points the line runs through.
 * @returns Distances from the first point towards the second [in]; negative before the first.
 * @throws {RangeError} If the two points are the same or not finite.
 */
export function clipLineToOutline(line: Line, outline: Outline): Stretch[] {
  const from = { xIn: line.fromXIn, yIn: line.fromYIn };
  const lengthIn = distanceIn(from, { xIn: line.toXIn, yIn: line.toYIn });
  if (!(lengthIn > 0 && lengthIn < Infinity)) {
    throw new RangeError(`a line needs two different points, got ${JSON.stringify(line)}`);
  }
  const along = { xIn: (line.toXIn - line.fromXIn) / lengthIn, yIn: (line.toYIn - line.fromYIn) / lengthIn };

  const hitsIn: number[] = [];
  for (const ring of outline.rings) {
    for (let index = 0; index < ring.length; index += 1) {
      addHitsOnEdge(hitsIn, vertexAt(ring, index), vertexAt(ring, index + 1), from, along);
    }
  }
  hitsIn.sort((a, b) => a - b);
  const stretches: Stretch[] = [];
  for (let index = 0; index + 1 < hitsIn.length; index += 1) {
    const [fromIn, toIn] = [hitsIn[index], hitsIn[index + 1]];
    if (fromIn === undefined || toIn === undefined || toIn - fromIn < besideIn) continue;
    const middleIn = (fromIn + toIn) / 2;
    const beside = (offIn: number): Point => ({
      xIn: from.xIn + along.xIn * middleIn - along.yIn * offIn,
      yIn: from.yIn + along.yIn * middleIn + along.xIn * offIn,
    });
    if (!containsPoint(outline, beside(besideIn)) || !containsPoint(outline, beside(-besideIn))) continue;
    const last = stretches.at(-1);
    if (last !== undefined && fromIn - last.toIn < besideIn) {
      stretches[stretches.length - 1] = { fromIn: last.fromIn, toIn };
    } else stretches.push({ fromIn, toIn });
  }
  return stretches;
}

/** As `clipLineToOutline`, but only between the two points; distances are 0 to the line's length. */
export function clipSegmentToOutline(line: Line, outline: Outline): Stretch[] {
  const lengthIn = Math.hypot(line.toXIn - line.fromXIn, line.toYIn - line.fromYIn);
  return clipLineToOutline(line, outline)
    .map(({ fromIn, toIn }) => ({ fromIn: Math.max(0, fromIn), toIn: Math.min(lengthIn, toIn) }))
    .filter(({ fromIn, toIn }) => toIn > fromIn);
}

/** Adds the distances along the line at which it meets an edge; maybe some more, where nothing changes. */
function addHitsOnEdge(hitsIn: number[], start: Vertex, end: Point, from: Point, along: Point): void {
  const offIn = (point: Point) => along.xIn * (point.yIn - from.yIn) - along.yIn * (point.xIn - from.xIn);
  const alongIn = (point: Point) => along.xIn * (point.xIn - from.xIn) + along.yIn * (point.yIn - from.yIn);

  if (start.bulge === 0) {
    const startOffIn = offIn(start);
    const endOffIn = offIn(end);
    if (startOffIn * endOffIn > 0) return;
    if (startOffIn === 0 && endOffIn === 0) {
      hitsIn.push(alongIn(start), alongIn(end));
      return;
    }
    const share = startOffIn / (startOffIn - endOffIn);
    hitsIn.push(alongIn(start) + share * (alongIn(end) - alongIn(start)));
    return;
  }

  const arc = circleOf(start, end);
  const halfChordSqIn = arc.radiusIn ** 2 - offIn(arc.centre) ** 2;
  if (!(halfChordSqIn >= 0)) return;
  const halfChordIn = Math.sqrt(halfChordSqIn);
  // The whole circle's hits: one beyond the arc's ends only splits a stretch, which is joined again.
  hitsIn.push(alongIn(arc.centre) - halfChordIn, alongIn(arc.centre) + halfChordIn);
}
