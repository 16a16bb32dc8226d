import {
  arcOf,
  clipSegmentToOutline,
  distanceIn,
  edgeLengthIn,
  edgesOf,
  labelPointOf,
  nearestOnEdge,
  type Outline,
  type Point,
  pointOnArc,
  type RingCorner,
} from '../../geometry/index.ts';
import type { Cut } from './line-cuts.ts';
import type { PanelShape } from './panel-shape.ts';
import { shares } from './shares.ts';

/** A corner this blunt is one of the sides [rad]. */
const BLUNT_RAD = (160 * Math.PI) / 180;

/** In a panel of four sides: lines that divide two opposite sides evenly, so that they fan where it tapers. */
export function ruledCuts(shape: PanelShape, limitIn: number): readonly Cut[] {
  const corners = sidesOf(shape, 4);
  if (corners === null) return [];
  const [a, b, c, d] = corners;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  return [...between(shape.outline, a, c, limitIn), ...between(shape.outline, b, d, limitIn)];
}

function between(outline: Outline, one: Side, other: Side, limitIn: number): readonly Cut[] {
  return shares(Math.max(one.lengthIn, other.lengthIn), limitIn).flatMap((share) => {
    const path = [
      pointAlong(outline, one, one.lengthIn * share),
      pointAlong(outline, other, other.lengthIn * (1 - share)),
    ];
    return isInside(outline, path) ? [[path]] : [];
  });
}

/**
 * In a panel of three sides, such as a piece of pie: from a point inside square to each side, so that no
 * corner is sharper than those that are there.
 */
export function fanCuts(shape: PanelShape): readonly Cut[] {
  const sides = sidesOf(shape, 3);
  if (sides === null) return [];
  const { xIn, yIn } = labelPointOf(shape.outline);
  const middle = { xIn, yIn };
  return [middle, ...nearer(sides, middle)].flatMap((at) => {
    const feet = sides.map((side) => nearestOn(shape.outline, side, at));
    const [first, second, third] = feet;
    if (first === undefined || second === undefined || third === undefined) return [];
    const paths = [
      [first, at, second],
      [at, third],
    ];
    const isSound = feet.every((foot) => isInside(shape.outline, [at, foot]));
    return isSound ? [paths] : [];
  });
}

/** Points on the way from the middle to each corner: where one side is long, the other parts are more even so. */
function nearer(sides: readonly Side[], middle: Point): readonly Point[] {
  return sides.map(({ corner }) => ({
    xIn: middle.xIn + (corner.at.xIn - middle.xIn) * 0.15,
    yIn: middle.yIn + (corner.at.yIn - middle.yIn) * 0.15,
  }));
}

type Side = { readonly corner: RingCorner; readonly lengthIn: number };

/** The sides of a panel with so many sharp corners, blunt ones left out; null where it has more or fewer. */
function sidesOf({ corners, reEntrant, holeCount }: PanelShape, count: number): readonly Side[] | null {
  if (holeCount > 0 || reEntrant.length > 0) return null;
  const sharp = corners.filter(({ insideRad }) => insideRad < BLUNT_RAD);
  if (sharp.length !== count) return null;
  return sharp.map((corner, index) => {
    const from = corners.indexOf(corner);
    const next = corners.indexOf(sharp[(index + 1) % count] ?? corner);
    const stepCount = (next - from + corners.length) % corners.length;
    const lengthIn = Array.from(
      { length: stepCount },
      (_, step) => corners[(from + step) % corners.length],
    ).reduce((sumIn, one) => sumIn + (one?.toNextIn ?? 0), 0);
    return { corner, lengthIn };
  });
}

function pointAlong(outline: Outline, { corner }: Side, distance: number): Point {
  const edges = edgesOf(outline.rings[corner.ring] ?? []);
  let leftIn = distance;
  for (let step = 0; step < edges.length; step += 1) {
    const edge = edges[(corner.index + step) % edges.length];
    if (edge === undefined) break;
    const lengthIn = edgeLengthIn(edge);
    if (leftIn <= lengthIn) return pointOnEdge(edge, leftIn / lengthIn);
    leftIn -= lengthIn;
  }
  return corner.at;
}

function pointOnEdge({ from, to }: ReturnType<typeof edgesOf>[number], share: number): Point {
  if (from.bulge !== 0) return pointOnArc(arcOf(from, to), share);
  return {
    xIn: from.xIn + (to.xIn - from.xIn) * share,
    yIn: from.yIn + (to.yIn - from.yIn) * share,
  };
}

/** The point of a side nearest to a point inside: there a line to it is square to the side. */
function nearestOn(outline: Outline, side: Side, at: Point): Point {
  const edges = edgesOf(outline.rings[side.corner.ring] ?? []);
  let best: { readonly point: Point; readonly offIn: number } | null = null;
  let leftIn = side.lengthIn;
  for (let step = 0; step < edges.length && leftIn > 1e-6; step += 1) {
    const edge = edges[(side.corner.index + step) % edges.length];
    if (edge === undefined) break;
    const { point } = nearestOnEdge(edge, at);
    const offIn = distanceIn(point, at);
    if (best === null || offIn < best.offIn) best = { point, offIn };
    leftIn -= edgeLengthIn(edge);
  }
  return best?.point ?? side.corner.at;
}

/** Whether a straight path lies inside from end to end. */
function isInside(outline: Outline, [from, to]: readonly Point[]): boolean {
  if (from === undefined || to === undefined) return false;
  const lengthIn = distanceIn(from, to);
  if (!(lengthIn > 1e-3)) return false;
  const line = { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: to.xIn, toYIn: to.yIn };
  const insideIn = clipSegmentToOutline(line, outline).reduce(
    (sumIn, { fromIn, toIn }) => sumIn + toIn - fromIn,
    0,
  );
  return insideIn > lengthIn - 1e-3;
}
