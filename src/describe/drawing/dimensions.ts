import { distanceIn, type Edge, type Point } from '../../geometry/index.ts';
import { crossesAny, isClear, isOutside, type Placed, take } from './candidate.ts';
import { dimensionAt, type Measured } from './dimension-line.ts';
import { overallSides } from './overall-sides.ts';
import type { Placement } from './paper.ts';
import type { PlanArea } from './plan-view.ts';
import type { Room } from './room.ts';
import { tapedEdges } from './taped-edges.ts';

/** The last one for the overall dimensions outside those of the sides. */
const offsetsIn = [0.24, 0.42, 0.62];
const overallOffsetsIn = [0.42, 0.24, 0.62];

/**
 * A dimension line outside each straight edge long enough for its text, new slabs first, from corner to
 * corner as it is taped, also where a corner is rounded. An edge that
 * two areas share is dimensioned once, and of two edges of an area that face each other and are equally
 * long, as in a rectangle, one. A place inside another area or across something is not used, and an edge
 * without a free place goes without. Then the overall length and width of an area with many sides.
 */
export function placeDimensions(areas: readonly PlanArea[], placement: Placement, room: Room): Placed {
  const placed: Placed = [];
  const done = new Set<string>();
  const edges = areas.map((area) => ({
    area,
    straight: area.outline.rings.flatMap((ring) => tapedEdges(ring)),
    dimensioned: [] as Edge[],
  }));
  const place = (measured: Measured, area: PlanArea, offsetIn: number, mayCrossThin: boolean): boolean => {
    const dimension = dimensionAt(measured, area, placement, offsetIn);
    if (dimension === null) return false;
    if (!isOutside(dimension, areas, placement) || !isClear(dimension, room)) return false;
    if (crossesAny(dimension, room.segments)) return false;
    if (!mayCrossThin && crossesAny(dimension, room.thinLines)) return false;
    placed.push(...take(dimension, room));
    return true;
  };
  // All edges near by first: of two facing edges, the one with free space beside it gets the dimension.
  // In a notch two dimensions may have to cross; better so than one missing.
  const passes = [false, true].flatMap((mayCrossThin) =>
    offsetsIn.map((offsetIn) => ({ mayCrossThin, offsetIn })),
  );
  for (const { mayCrossThin, offsetIn } of passes) {
    for (const { area, straight, dimensioned } of edges) {
      for (const edge of straight) {
        if (done.has(edgeKey(edge)) || dimensioned.some((other) => faceEachOther(edge, other))) continue;
        if (!place(edge, area, offsetIn, mayCrossThin)) continue;
        done.add(edgeKey(edge));
        dimensioned.push(edge);
      }
    }
  }
  for (const area of areas) {
    for (const sides of overallSides(area.outline)) {
      overallOffsetsIn.some((offsetIn) => sides.some((side) => place(side, area, offsetIn, false)));
    }
  }
  return placed;
}

/** Whether one edge is the other moved square to itself, run backwards. */
function faceEachOther(edge: Edge, other: Edge): boolean {
  const lengthIn = distanceIn(edge.from, edge.to);
  const across = (from: Point, to: Point) =>
    ((to.xIn - from.xIn) * (edge.to.xIn - edge.from.xIn) +
      (to.yIn - from.yIn) * (edge.to.yIn - edge.from.yIn)) /
    lengthIn;
  const hairIn = 1e-4;
  return (
    Math.abs(distanceIn(other.from, other.to) - lengthIn) < hairIn &&
    Math.abs(across(edge.from, other.to)) < hairIn &&
    Math.abs(across(edge.to, other.from)) < hairIn
  );
}

function edgeKey({ from, to }: Edge): string {
  return [from, to]
    .map((end) => `${end.xIn.toFixed(4)} ${end.yIn.toFixed(4)}`)
    .sort()
    .join(' ');
}
