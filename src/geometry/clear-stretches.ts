import { type Arc, arcOf } from './arc.ts';
import { clipLineToOutline, type Line, type Stretch } from './clip.ts';
import { distanceToOneEdgeIn } from './measure.ts';
import { distanceIn, type Edge, edgesOf, type Outline, type Point } from './outline.ts';

/** Below this a stretch is noise of the cuts [in]. */
const NOISE_IN = 1e-6;

type Ray = { readonly from: Point; readonly along: Point };

/**
 * The stretches of an endless line that lie inside an outline and nowhere nearer to any of its edges than
 * a distance, holes included, in order along it. Exact with arcs.
 *
 * @param clearIn From every edge, measured square to it and round its corners [in], 0 or more.
 * @returns As `clipLineToOutline`.
 * @throws {RangeError} If the distance is below 0, or the line has no direction.
 *
 * What is nearer to an edge ends where the line meets a parallel or a concentric arc of it, or a circle
 * about one of its ends; between two of those the middle tells.
 */
export function clearStretches(line: Line, outline: Outline, clearIn: number): Stretch[] {
  if (!(clearIn >= 0 && clearIn < Infinity)) {
    throw new RangeError(`clearIn must be a length of 0 or more, got ${clearIn}`);
  }
  const inside = clipLineToOutline(line, outline);
  if (clearIn === 0 || inside.length === 0) return inside;
  const from = { xIn: line.fromXIn, yIn: line.fromYIn };
  const lengthIn = distanceIn(from, { xIn: line.toXIn, yIn: line.toYIn });
  const along = { xIn: (line.toXIn - line.fromXIn) / lengthIn, yIn: (line.toYIn - line.fromYIn) / lengthIn };
  const near = outline.rings.flatMap((ring) =>
    edgesOf(ring).flatMap((edge) => nearStretches(edge, { from, along }, clearIn)),
  );
  return near.reduce(without, inside).filter(({ fromIn, toIn }) => toIn - fromIn > NOISE_IN);
}

/** Where a line is nearer to one edge than a distance. */
function nearStretches(edge: Edge, ray: Ray, clearIn: number): Stretch[] {
  const cutsIn = [
    ...hitsOnCircleIn(ray, edge.from, clearIn),
    ...hitsOnCircleIn(ray, edge.to, clearIn),
    ...(edge.from.bulge === 0
      ? hitsOnParallelsIn(ray, edge, clearIn)
      : hitsOnArcsIn(ray, arcOf(edge.from, edge.to), clearIn)),
  ].sort((a, b) => a - b);
  return cutsIn.slice(1).flatMap((toIn, index): Stretch[] => {
    const fromIn = cutsIn[index] ?? toIn;
    const isNear = distanceToOneEdgeIn(edge, pointAt(ray, (fromIn + toIn) / 2)) < clearIn;
    return isNear && toIn > fromIn ? [{ fromIn, toIn }] : [];
  });
}

/** Every stretch less what another takes of it. */
function without(stretches: readonly Stretch[], taken: Stretch): Stretch[] {
  return stretches.flatMap(({ fromIn, toIn }) => {
    if (taken.toIn <= fromIn || taken.fromIn >= toIn) return [{ fromIn, toIn }];
    return [
      { fromIn, toIn: Math.min(toIn, taken.fromIn) },
      { fromIn: Math.max(fromIn, taken.toIn), toIn },
    ].filter((part) => part.toIn > part.fromIn);
  });
}

function pointAt({ from, along }: Ray, atIn: number): Point {
  return { xIn: from.xIn + along.xIn * atIn, yIn: from.yIn + along.yIn * atIn };
}

function hitsOnCircleIn({ from, along }: Ray, centre: Point, radiusIn: number): number[] {
  if (radiusIn <= 0) return [];
  const toCentre = { xIn: centre.xIn - from.xIn, yIn: centre.yIn - from.yIn };
  const offIn = along.xIn * toCentre.yIn - along.yIn * toCentre.xIn;
  const middleIn = along.xIn * toCentre.xIn + along.yIn * toCentre.yIn;
  const halfSqIn = radiusIn ** 2 - offIn ** 2;
  return halfSqIn > 0 ? [middleIn - Math.sqrt(halfSqIn), middleIn + Math.sqrt(halfSqIn)] : [];
}

function hitsOnArcsIn(ray: Ray, { centre, radiusIn }: Arc, clearIn: number): number[] {
  return [radiusIn - clearIn, radiusIn + clearIn].flatMap((atIn) => hitsOnCircleIn(ray, centre, atIn));
}

/** On the two lines beside a straight edge, as far as it is long. */
function hitsOnParallelsIn({ from, along }: Ray, edge: Edge, clearIn: number): number[] {
  const lengthIn = distanceIn(edge.from, edge.to);
  if (lengthIn === 0) return [];
  const way = {
    xIn: (edge.to.xIn - edge.from.xIn) / lengthIn,
    yIn: (edge.to.yIn - edge.from.yIn) / lengthIn,
  };
  const sine = along.xIn * way.yIn - along.yIn * way.xIn;
  // A line that runs beside the edge is cut by the circles about its ends alone.
  if (Math.abs(sine) < 1e-12) return [];
  return [-clearIn, clearIn].flatMap((besideIn) => {
    const start = {
      xIn: edge.from.xIn - way.yIn * besideIn - from.xIn,
      yIn: edge.from.yIn + way.xIn * besideIn - from.yIn,
    };
    const edgeIn = (along.yIn * start.xIn - along.xIn * start.yIn) / sine;
    const atIn = (way.yIn * start.xIn - way.xIn * start.yIn) / sine;
    return edgeIn >= 0 && edgeIn <= lengthIn ? [atIn] : [];
  });
}
