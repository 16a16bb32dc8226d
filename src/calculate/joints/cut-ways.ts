import {
  arcOf,
  boundsOf,
  distanceIn,
  edgeLengthIn,
  edgesOf,
  isOnEdge,
  type Outline,
  type Point,
  pointOnArc,
  turnOutline,
  unitAlong,
} from '../../geometry/index.ts';
import { type Cut, cutFrom, cutsAlong, rayFrom } from './line-cuts.ts';
import { isRectangle, type PanelShape } from './panel-shape.ts';
import { splitIntoPanels } from './panels.ts';
import { evenShares, shares } from './shares.ts';
import { fanCuts, ruledCuts } from './side-cuts.ts';

/** Where a joint ends, and how it runs. */
export type Mark = { readonly at: Point; readonly alongRad: number };

/** A joint ends on the edge of a panel where it is nearer than this [in]. */
const ON_EDGE_IN = 1e-4;
/** Directions of edges nearer than this are one [rad]. */
const SAME_RAD = (3 * Math.PI) / 180;
/** Two directions are opposite to within 30 degrees. */
const OPPOSITE_COS = -Math.sqrt(3) / 2;
/** An edge of less than this share of the longer side of a panel gives no direction. */
const LEAST_EDGE_RATIO = 1 / 3;

/**
 * The ways in which a panel could be cut, by what asks for a cut, in an order that is always the same. First
 * from each re-entrant corner and over each hole, since joints there decide where the others can be; then on
 * from each joint that ends at it, between its sides, square to its curves, and evenly.
 */
export function cutWays(
  shape: PanelShape,
  marks: readonly Mark[],
  limitIn: number,
): readonly (() => readonly Cut[])[] {
  const { outline } = shape;
  if (isRectangle(shape) && marks.length === 0) return [() => gridCuts(shape, limitIn)];
  return [
    () => [
      ...shape.reEntrant.flatMap((corner) => cornerCuts(shape, corner)),
      ...holeCuts(shape),
      ...pinwheelCuts(shape),
    ],
    () => [
      ...marks.flatMap((mark) => markCuts(outline, mark)),
      ...ruledCuts(shape, limitIn),
      ...fanCuts(shape),
      ...arcEndCuts(outline),
      ...evenCuts(shape, limitIn),
      ...squareToArcs(outline, limitIn),
    ],
  ];
}

/** The joints that end on the edge of a panel, between its corners. */
export function marksOn({ outline, corners }: PanelShape, marks: readonly Mark[]): readonly Mark[] {
  const bounds = boundsOf(outline);
  const edges = outline.rings.flatMap((ring) => edgesOf(ring));
  return marks.filter(({ at }) => {
    const isNear =
      at.xIn > bounds.minXIn - ON_EDGE_IN &&
      at.xIn < bounds.maxXIn + ON_EDGE_IN &&
      at.yIn > bounds.minYIn - ON_EDGE_IN &&
      at.yIn < bounds.maxYIn + ON_EDGE_IN;
    if (!isNear || corners.some((corner) => distanceIn(corner.at, at) < ON_EDGE_IN)) return false;
    return edges.some((edge) => isOnEdge(edge, at, ON_EDGE_IN));
  });
}

/** On along either edge, halfway between, square to the sides it faces, and to the other such corners. */
function cornerCuts(shape: PanelShape, corner: PanelShape['corners'][number]): readonly Cut[] {
  const { outline, reEntrant } = shape;
  const { at, inRad, outRad } = corner;
  const directions = [
    inRad,
    outRad + Math.PI,
    halfway(inRad, outRad + Math.PI),
    ...straightEdges(outline).map(({ alongRad }) => alongRad - Math.PI / 2),
    ...arcCentres(outline).flatMap((centre) => {
      const toRad = Math.atan2(centre.yIn - at.yIn, centre.xIn - at.xIn);
      return [toRad, toRad + Math.PI];
    }),
    ...reEntrant
      .filter((other) => other !== corner)
      .map((other) => Math.atan2(other.at.yIn - at.yIn, other.at.xIn - at.xIn)),
  ];
  return distinct(directions).flatMap((directionRad) => {
    const cut = cutFrom(outline, at, directionRad);
    return cut === null ? [] : [cut];
  });
}

function halfway(oneRad: number, otherRad: number): number {
  const one = unitAlong(oneRad);
  const other = unitAlong(otherRad);
  return Math.atan2(one.yIn + other.yIn, one.xIn + other.xIn);
}

/** Over the middle of each hole, along the panel and across it, and from corner to corner of the hole. */
function holeCuts({ outline, box, corners }: PanelShape): readonly Cut[] {
  return outline.rings.slice(1).flatMap((hole, index) => {
    const bounds = boundsOf({ rings: [hole] });
    const middle = {
      xIn: (bounds.minXIn + bounds.maxXIn) / 2,
      yIn: (bounds.minYIn + bounds.maxYIn) / 2,
    };
    const own = corners.filter(({ ring }) => ring === index + 1);
    const diagonals = own.map(({ at }) => Math.atan2(at.yIn - middle.yIn, at.xIn - middle.xIn));
    return distinct([box.alongRad, box.alongRad + Math.PI / 2, ...diagonals], Math.PI).flatMap((alongRad) =>
      cutsAlong(outline, middle, alongRad).filter((cut) => cut.length > 1),
    );
  });
}

/**
 * From two corners of a hole in opposite directions, on along its sides: round a square hole four such joints
 * follow each other, and none runs close beside another.
 */
function pinwheelCuts({ outline, corners }: PanelShape): readonly Cut[] {
  return outline.rings.slice(1).flatMap((_, index) => {
    const own = corners.filter(({ ring }) => ring === index + 1);
    return own.flatMap((one, place) =>
      own.slice(place + 1).flatMap((other) =>
        [one.inRad, one.outRad + Math.PI].flatMap((oneRad) =>
          [other.inRad, other.outRad + Math.PI].flatMap((otherRad) => {
            if (Math.cos(oneRad - otherRad) > OPPOSITE_COS) return [];
            const [first, second] = [rayFrom(outline, one.at, oneRad), rayFrom(outline, other.at, otherRad)];
            return first === null || second === null ? [] : [[first, second]];
          }),
        ),
      ),
    );
  });
}

/** Square to the edge where an arc starts or ends: there a slab begins to widen. */
function arcEndCuts(outline: Outline): readonly Cut[] {
  const ring = outline.rings[0] ?? [];
  const edges = edgesOf(ring);
  return edges.flatMap((edge, index) => {
    const before = edges[(index + edges.length - 1) % edges.length];
    if (before === undefined || (before.from.bulge === 0) === (edge.from.bulge === 0)) return [];
    const straight = edge.from.bulge === 0 ? edge : before;
    const alongRad = Math.atan2(straight.to.yIn - straight.from.yIn, straight.to.xIn - straight.from.xIn);
    const cut = cutFrom(outline, edge.from, alongRad + Math.PI / 2);
    return cut === null ? [] : [cut];
  });
}

/** On in the same direction, and square to the edge. */
function markCuts(outline: Outline, { at, alongRad }: Mark): readonly Cut[] {
  const edge = outline.rings.flatMap((ring) => edgesOf(ring)).find((one) => isOnEdge(one, at, ON_EDGE_IN));
  if (edge === undefined) return [];
  const squareRad =
    edge.from.bulge === 0
      ? Math.atan2(edge.to.yIn - edge.from.yIn, edge.to.xIn - edge.from.xIn) + Math.PI / 2
      : Math.atan2(
          at.yIn - arcOf(edge.from, edge.to).centre.yIn,
          at.xIn - arcOf(edge.from, edge.to).centre.xIn,
        );
  return distinct([alongRad, squareRad], Math.PI).flatMap((directionRad) => {
    const cut = cutFrom(outline, at, directionRad) ?? cutFrom(outline, at, directionRad + Math.PI);
    return cut === null ? [] : [cut];
  });
}

/** Along the radius at even shares of each arc. */
function squareToArcs(outline: Outline, limitIn: number): readonly Cut[] {
  return edgesOf(outline.rings[0] ?? []).flatMap((edge) => {
    if (edge.from.bulge === 0) return [];
    const lengthIn = edgeLengthIn(edge);
    if (lengthIn < limitIn / 3) return [];
    const arc = arcOf(edge.from, edge.to);
    return shares(lengthIn, limitIn).flatMap((share) => {
      const at = pointOnArc(arc, share);
      const outRad = Math.atan2(at.yIn - arc.centre.yIn, at.xIn - arc.centre.xIn);
      const cut = cutFrom(outline, at, edge.from.bulge > 0 ? outRad + Math.PI : outRad);
      return cut === null ? [] : [cut];
    });
  });
}

/** Parallel lines that divide the panel evenly, along its box and across it, and square to its longer edges. */
function evenCuts({ outline, box }: PanelShape, limitIn: number): readonly Cut[] {
  const longIn = box.lengthIn * LEAST_EDGE_RATIO;
  const edges = straightEdges(outline).filter(({ lengthIn }) => lengthIn >= longIn);
  const { alongCount, acrossCount } = splitIntoPanels(box, limitIn);
  const counts = [alongCount, acrossCount];
  const directions = [box.alongRad, box.alongRad + Math.PI / 2, ...edges.map(({ alongRad }) => alongRad)];
  return distinct(directions, Math.PI).flatMap((alongRad, index) =>
    parallelCuts(outline, alongRad, (lengthIn) => shares(lengthIn, limitIn, counts[index])),
  );
}

/** The grid of equal panels of a rectangle. */
function gridCuts({ outline, box }: PanelShape, limitIn: number): readonly Cut[] {
  const { alongCount, acrossCount } = splitIntoPanels(box, limitIn);
  return [
    ...parallelCuts(outline, box.alongRad, () => evenShares(alongCount)),
    ...parallelCuts(outline, box.alongRad + Math.PI / 2, () => evenShares(acrossCount)),
  ];
}

/** Cuts square to a direction, at shares of how far the panel reaches in it. */
function parallelCuts(
  outline: Outline,
  alongRad: number,
  sharesOf: (lengthIn: number) => readonly number[],
): readonly Cut[] {
  const turnDeg = (alongRad * 180) / Math.PI;
  const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(turnOutline(outline, -turnDeg));
  const along = unitAlong(alongRad);
  return sharesOf(maxXIn - minXIn).flatMap((share) => {
    const xIn = minXIn + (maxXIn - minXIn) * share;
    const yIn = (minYIn + maxYIn) / 2;
    const at = { xIn: xIn * along.xIn - yIn * along.yIn, yIn: xIn * along.yIn + yIn * along.xIn };
    return cutsAlong(outline, at, alongRad + Math.PI / 2);
  });
}

function straightEdges(outline: Outline) {
  return outline.rings
    .flatMap((ring) => edgesOf(ring))
    .filter(({ from }) => from.bulge === 0)
    .map(({ from, to }) => ({
      lengthIn: edgeLengthIn({ from, to }),
      alongRad: Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn),
    }));
}

function arcCentres(outline: Outline): readonly Point[] {
  return outline.rings
    .flatMap((ring) => edgesOf(ring))
    .flatMap(({ from, to }) => (from.bulge === 0 ? [] : [arcOf(from, to).centre]));
}

/** Directions that differ, the first of those that do not; within half a turn where a line has no ends. */
function distinct(directionsRad: readonly number[], periodRad = 2 * Math.PI): readonly number[] {
  const found: number[] = [];
  for (const directionRad of directionsRad) {
    const isKnown = found.some((known) => {
      const offRad = Math.abs(known - directionRad) % periodRad;
      return Math.min(offRad, periodRad - offRad) < SAME_RAD;
    });
    if (!isKnown) found.push(directionRad);
  }
  return found;
}
