import type { Outline } from '../../geometry/index.ts';
import type { Box } from './boxes.ts';
import type { PaperPoint } from './drawing.ts';
import type { Sides } from './grid-around.ts';
import { outlineSegments, type Placement } from './paper.ts';

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
    const offIn = Math.sqrt(rightIn * rightIn + downIn * downIn);
    if (!faces || offIn >= leastIn) continue;
    nearest = middle;
    leastIn = offIn;
  }
  return nearest;
}

function middleOf(a: PaperPoint, b: PaperPoint): PaperPoint {
  return { xIn: (a.xIn + b.xIn) / 2, yIn: (a.yIn + b.yIn) / 2 };
}
