import type { Outline } from '../../geometry/index.ts';
import type { Box } from './boxes.ts';
import type { PaperPoint } from './drawing.ts';
import { outlineSegments, type Placement } from './paper.ts';

type Sides = {
  readonly leftIn: number;
  readonly topIn: number;
  readonly rightIn: number;
  readonly bottomIn: number;
};

/** Grid points within a box, nearest to a point first; the same box always gives the same order. */
export function gridAround(point: PaperPoint, within: Sides, stepIn: number): PaperPoint[] {
  const places: (PaperPoint & { offIn: number })[] = [];
  const first = (edgeIn: number, fromIn: number) => fromIn - Math.floor((fromIn - edgeIn) / stepIn) * stepIn;
  for (let yIn = first(within.topIn, point.yIn); yIn <= within.bottomIn; yIn += stepIn) {
    for (let xIn = first(within.leftIn, point.xIn); xIn <= within.rightIn; xIn += stepIn) {
      places.push({ xIn, yIn, offIn: Math.round(Math.hypot(xIn - point.xIn, yIn - point.yIn) * 1e6) });
    }
  }
  return places.sort((a, b) => a.offIn - b.offIn).map(({ xIn, yIn }) => ({ xIn, yIn }));
}

/** The sides of a shape on the paper. */
export function shapeBox(shape: Outline, placement: Placement): Sides {
  const ends = outlineSegments(placement, shape).map((segment) => segment.from);
  return {
    leftIn: Math.min(...ends.map((end) => end.xIn)),
    rightIn: Math.max(...ends.map((end) => end.xIn)),
    topIn: Math.min(...ends.map((end) => end.yIn)),
    bottomIn: Math.max(...ends.map((end) => end.yIn)),
  };
}

/** The middle of a side that faces the target, so that the leader does not run back over the letters. */
export function facingSideMiddle(box: Box, target: PaperPoint): PaperPoint {
  const [topLeft, topRight, bottomRight, bottomLeft] = box;
  const centre = middleOf(topLeft, bottomRight);
  // A target outside the box has a side that faces it; one inside would be told from the centre.
  let nearest = centre;
  let leastIn = Infinity;
  for (const middle of [
    middleOf(topLeft, topRight),
    middleOf(topRight, bottomRight),
    middleOf(bottomRight, bottomLeft),
    middleOf(bottomLeft, topLeft),
  ]) {
    const [rightIn, downIn] = [target.xIn - middle.xIn, target.yIn - middle.yIn];
    const faces = (middle.xIn - centre.xIn) * rightIn + (middle.yIn - centre.yIn) * downIn > 0;
    const offIn = Math.hypot(rightIn, downIn);
    if (!faces || offIn >= leastIn) continue;
    nearest = middle;
    leastIn = offIn;
  }
  return nearest;
}

function middleOf(a: PaperPoint, b: PaperPoint): PaperPoint {
  return { xIn: (a.xIn + b.xIn) / 2, yIn: (a.yIn + b.yIn) / 2 };
}
