import {
  arcOf,
  containsPoint,
  distanceIn,
  type Edge,
  edgesOf,
  type Point,
  pointOnArc,
} from '../../geometry/index.ts';
import { type Box, baselineDropIn, type Segment, textBox } from './boxes.ts';
import {
  type DotPrimitive,
  type LinePrimitive,
  lineWeightsMm,
  type PaperPoint,
  type TextPrimitive,
} from './drawing.ts';
import { type Placement, toGround, toPaper } from './paper.ts';
import type { PlanArea } from './plan.ts';
import { isClearOfBoxes, isFree, type Room, segmentsCross } from './room.ts';
import { tapedEdges } from './taped-edges.ts';
import { textWidthIn } from './text-width.ts';

export const dimensionStyle = { sizePt: 8, weight: 400 } as const;

/** Room outside the shape that a dimension line and its text need. */
export const dimensionRoomIn = 0.46;

const offsetsIn = [0.24, 0.42, 0.62];
const extensionGapIn = 0.04;
const overrunIn = 0.05;
const textAboveLineIn = 0.04;
const tickIn = 0.08;

type Placed = (LinePrimitive | TextPrimitive | DotPrimitive)[];

/**
 * A dimension line outside each straight edge long enough for its text, new slabs first, from corner to
 * corner as it is taped, also where a corner is rounded. An edge that
 * two areas share is dimensioned once, and of two edges of an area that face each other and are equally
 * long, as in a rectangle, one. A place inside another area or across something is not used, and an edge
 * without a free place goes without.
 */
export function placeDimensions(areas: readonly PlanArea[], placement: Placement, room: Room): Placed {
  const placed: Placed = [];
  const done = new Set<string>();
  const edges = inOrderOfRole(areas).map((area) => ({
    area,
    straight: area.outline.rings.flatMap((ring) => tapedEdges(ring)),
    dimensioned: [] as Edge[],
  }));
  // All edges near by first: of two facing edges, the one with free space beside it gets the dimension.
  // In a notch two dimensions may have to cross; better so than one missing.
  const passes = [false, true].flatMap((mayCrossThin) =>
    offsetsIn.map((offsetIn) => ({ mayCrossThin, offsetIn })),
  );
  for (const { mayCrossThin, offsetIn } of passes) {
    for (const { area, straight, dimensioned } of edges) {
      for (const edge of straight) {
        if (done.has(edgeKey(edge)) || dimensioned.some((other) => faceEachOther(edge, other))) continue;
        const dimension = dimensionAt(edge, area, placement, offsetIn);
        if (dimension === null || !hasRoom(dimension, areas, placement, room)) continue;
        if (!mayCrossThin && crossesAny(dimension, room.thinLines)) continue;
        done.add(edgeKey(edge));
        dimensioned.push(edge);
        room.boxes.push(dimension.box);
        room.thinLines.push(...dimension.segments);
        placed.push(...dimension.primitives);
      }
    }
  }
  return placed;
}

/** The radius of each arc, written outside it, with a leader to the arc and on to a dot at its centre. */
export function placeRadii(
  areas: readonly PlanArea[],
  radiusText: (length: string) => string,
  placement: Placement,
  room: Room,
): Placed {
  const placed: Placed = [];
  const done = new Set<string>();
  for (const area of inOrderOfRole(areas)) {
    for (const { from, to } of area.outline.rings.flatMap((ring) => edgesOf(ring))) {
      if (from.bulge === 0) continue;
      const arc = arcOf(from, to);
      const key = [arc.centre.xIn, arc.centre.yIn, arc.radiusIn].map((value) => value.toFixed(3)).join(' ');
      if (done.has(key)) continue;
      const centre = toPaper(placement, arc.centre);
      const candidates = [0.5, 0.3, 0.7].flatMap((share) => {
        const foot = toPaper(placement, pointOnArc(arc, share));
        const label = radiusText(area.dimension(arc.radiusIn));
        return [0.1, 0.22, -0.1, -0.22, -0.4, -0.6].flatMap((awayIn) => [
          radiusAt({ foot, centre, awayIn, label, withCentre: true }),
          radiusAt({ foot, centre, awayIn, label, withCentre: false }),
        ]);
      });
      const free = candidates.filter(
        (candidate) =>
          candidate.fits(room.zone) && hasRoom({ ...candidate, mayNotCross: [] }, areas, placement, room),
      );
      // Better a leader across a thin line than an arc without its radius.
      const radius =
        free.find((candidate) => !crossesAny(candidate, [...room.segments, ...room.thinLines])) ?? free[0];
      if (radius === undefined) continue;
      done.add(key);
      room.boxes.push(radius.box);
      room.thinLines.push(...radius.segments);
      placed.push(...radius.primitives);
    }
  }
  return placed;
}

export function inOrderOfRole(areas: readonly PlanArea[]): PlanArea[] {
  const roles = ['new', 'goes', 'stays'];
  return [...areas].sort((a, b) => roles.indexOf(a.role) - roles.indexOf(b.role));
}

type Candidate = {
  readonly box: Box;
  readonly segments: readonly Segment[];
  /** The pieces that may not run across an edge; the others start at one. */
  readonly mayNotCross: readonly Segment[];
  readonly primitives: Placed;
};

function hasRoom(
  candidate: Candidate,
  areas: readonly PlanArea[],
  placement: Placement,
  room: Room,
): boolean {
  const isOutside = candidate.box.every(
    (corner) => !areas.some((area) => containsPoint(area.outline, toGround(placement, corner))),
  );
  return (
    isOutside &&
    isFree(room, candidate.box) &&
    candidate.segments.every((segment) => isClearOfBoxes(room, segment)) &&
    !crossesAny(candidate, room.segments)
  );
}

function crossesAny(candidate: Candidate, taken: readonly Segment[]): boolean {
  return candidate.mayNotCross.some((segment) => taken.some((other) => segmentsCross(segment, other)));
}

/** One dimension at a distance outside the edge, or null if the edge is too short for its text. */
function dimensionAt(edge: Edge, area: PlanArea, placement: Placement, offsetIn: number): Candidate | null {
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
  const extensions = [from, to].map((end) => ({
    from: off(end, extensionGapIn),
    to: off(end, offsetIn + overrunIn),
  }));
  const ticks = [main.from, main.to].map((end) => ({
    from: off(end, -tickIn / 2, -tickIn / 2),
    to: off(end, tickIn / 2, tickIn / 2),
  }));
  return {
    box: textBox(text),
    segments: [main, ...extensions],
    mayNotCross: [{ from: off(main.from, 0, 0.02), to: off(main.to, 0, -0.02) }, ...extensions],
    primitives: [
      ...[main, ...extensions].map((segment) => thinLine(segment, lineWeightsMm.thin)),
      ...ticks.map((segment) => thinLine(segment, lineWeightsMm.existing)),
      text,
    ],
  };
}

function radiusAt(given: {
  foot: PaperPoint;
  centre: PaperPoint;
  awayIn: number;
  label: string;
  withCentre: boolean;
}): Candidate & { fits: (zone: Room['zone']) => boolean } {
  const { foot, centre, awayIn, label, withCentre } = given;
  const radiusIn = Math.hypot(foot.xIn - centre.xIn, foot.yIn - centre.yIn);
  const away = { xIn: (foot.xIn - centre.xIn) / radiusIn, yIn: (foot.yIn - centre.yIn) / radiusIn };
  const end = { xIn: foot.xIn + away.xIn * awayIn, yIn: foot.yIn + away.yIn * awayIn };
  const isToTheRight = away.xIn * awayIn >= 0;
  const text: TextPrimitive = {
    kind: 'text',
    xIn: end.xIn + (isToTheRight ? 0.03 : -0.03),
    yIn: end.yIn + baselineDropIn(dimensionStyle.sizePt),
    text: label,
    anchor: isToTheRight ? 'start' : 'end',
    ...dimensionStyle,
    turnDeg: 0,
  };
  const outer = { from: foot, to: end };
  const segments = withCentre ? [outer, { from: centre, to: foot }] : [outer];
  const dot: DotPrimitive = { kind: 'dot', ...centre, radiusIn: 0.022 };
  return {
    box: textBox(text),
    segments,
    mayNotCross: segments,
    primitives: [
      ...segments.map((segment) => thinLine(segment, lineWeightsMm.thin)),
      ...(withCentre ? [dot] : []),
      text,
    ],
    // A label on the centre's side would sit on the line to the centre.
    fits: (zone) =>
      !withCentre ||
      (awayIn > 0 &&
        centre.xIn > zone.leftIn &&
        centre.xIn < zone.rightIn &&
        centre.yIn > zone.topIn &&
        centre.yIn < zone.bottomIn),
  };
}

/** The same direction, read from below or from the right: -90 up to, not including, 90. */
function readableDeg(turnDeg: number): number {
  const hairDeg = 1e-6;
  if (turnDeg >= 90 - hairDeg) return turnDeg - 180;
  if (turnDeg < -90 - hairDeg) return turnDeg + 180;
  return turnDeg;
}

function thinLine({ from, to }: Segment, weightMm: number): LinePrimitive {
  return { kind: 'line', from, to, weightMm, dash: 'solid' };
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
