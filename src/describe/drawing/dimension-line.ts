import { distanceIn, type Point } from '../../geometry/index.ts';
import { textBox } from './boxes.ts';
import { type Candidate, dimensionStyle, thinLine } from './candidate.ts';
import { lineWeightsMm, type PaperPoint, type TextPrimitive } from './drawing.ts';
import { type Placement, toPaper } from './paper.ts';
import type { PlanArea } from './plan-view.ts';
import { textWidthIn } from './text-width.ts';

const extensionGapIn = 0.04;
const overrunIn = 0.05;
const textAboveLineIn = 0.04;
const tickIn = 0.08;

/** From one point on the ground to another, with concrete to the left. */
export type Measured = {
  readonly from: Point;
  readonly to: Point;
  /** Where the lines out to the dimension begin, straight inward of its ends; at the ends if not given. */
  readonly feet?: readonly [Point, Point];
};

/** One dimension at a distance outside the edge, or null if the edge is too short for its text. */
export function dimensionAt(
  edge: Measured,
  area: PlanArea,
  placement: Placement,
  offsetIn: number,
): Candidate | null {
  const from = toPaper(placement, edge.from);
  const to = toPaper(placement, edge.to);
  const label = area.dimension(distanceIn(edge.from, edge.to));
  const lengthIn = Math.hypot(to.xIn - from.xIn, to.yIn - from.yIn);
  if (lengthIn < textWidthIn(label, dimensionStyle) + 2 * tickIn) return null;
  const along = { xIn: (to.xIn - from.xIn) / lengthIn, yIn: (to.yIn - from.yIn) / lengthIn };
  // Concrete lies left of an edge on the ground; on the paper, with y down, outside is this way.
  const out = { xIn: -along.yIn, yIn: along.xIn };
  const off = (point: PaperPoint, outIn: number, alongIn = 0): PaperPoint => ({
    xIn: point.xIn + out.xIn * outIn + along.xIn * alongIn,
    yIn: point.yIn + out.yIn * outIn + along.yIn * alongIn,
  });

  const turnDeg = readableDeg((Math.atan2(along.yIn, along.xIn) * 180) / Math.PI);
  const turnRad = (turnDeg * Math.PI) / 180;
  const middle = off({ xIn: (from.xIn + to.xIn) / 2, yIn: (from.yIn + to.yIn) / 2 }, offsetIn);
  const text: TextPrimitive = {
    kind: 'text',
    xIn: middle.xIn + Math.sin(turnRad) * textAboveLineIn,
    yIn: middle.yIn - Math.cos(turnRad) * textAboveLineIn,
    text: label,
    anchor: 'middle',
    ...dimensionStyle,
    turnDeg,
  };
  const main = { from: off(from, offsetIn), to: off(to, offsetIn) };
  const [fromFoot, toFoot] = edge.feet ?? [edge.from, edge.to];
  const extensions = [
    { from: off(toPaper(placement, fromFoot), extensionGapIn), to: off(from, offsetIn + overrunIn) },
    { from: off(toPaper(placement, toFoot), extensionGapIn), to: off(to, offsetIn + overrunIn) },
  ];
  const ticks = [main.from, main.to].map((end) => ({
    from: off(end, -tickIn / 2, -tickIn / 2),
    to: off(end, tickIn / 2, tickIn / 2),
  }));
  return {
    box: textBox(text, 0.015),
    segments: [main, ...extensions],
    ticks,
    mayNotCross: [{ from: off(main.from, 0, 0.02), to: off(main.to, 0, -0.02) }, ...extensions],
    primitives: [
      ...[main, ...extensions].map((segment) => thinLine(segment, lineWeightsMm.thin)),
      ...ticks.map((segment) => thinLine(segment, lineWeightsMm.existing)),
      text,
    ],
  };
}

/** The same direction, read from below or from the right: -90 up to, not including, 90. */
function readableDeg(turnDeg: number): number {
  const hairDeg = 1e-6;
  if (turnDeg >= 90 - hairDeg) return turnDeg - 180;
  if (turnDeg < -90 - hairDeg) return turnDeg + 180;
  return turnDeg;
}
