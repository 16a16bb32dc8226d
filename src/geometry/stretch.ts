import { type Arc, arcOf, edgeSegmentAreaSqIn, pointOnArc } from './arc.ts';
import { distanceIn, edgesOf, type Outline, type Point, type Ring, type Vertex } from './outline.ts';

/** How far the arcs may be from a stretched one [in]: 1/64 in, finer than any form is set. */
const OFF_ARC_IN = 1 / 64;
/** Shares of an arc at which it is held against the stretched one. */
const HELD_AT = [1 / 8, 1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 7 / 8];
/** A circle of 500 ft stretched a hundred times becomes 336 arcs, which is eight or nine of them. */
const MOST_HALVINGS = 12;

type Ratios = { readonly alongRatio: number; readonly acrossRatio: number };

/**
 * The outline stretched along x and across it, from the origin.
 *
 * Straight edges stay exact. Where the two ratios differ, an arc of a circle becomes one of an ellipse, and
 * that one arc of a circle of the same ends and area where they are within 1/64 in of each other, else several;
 * the area is that of the outline times both ratios to the last digits.
 *
 * @param ratios.alongRatio  Of every x, above 0.
 * @param ratios.acrossRatio Of every y, above 0.
 * @throws {RangeError} If a ratio is not a number above 0.
 */
export function stretchOutline(outline: Outline, ratios: Ratios): Outline {
  const { alongRatio, acrossRatio } = ratios;
  for (const [name, ratio] of Object.entries({ alongRatio, acrossRatio })) {
    if (!(ratio > 0 && ratio < Infinity)) throw new RangeError(`${name} must be above 0, got ${ratio}`);
  }
  if (alongRatio === 1 && acrossRatio === 1) return outline;
  return { rings: outline.rings.map((ring) => stretchedRing(ring, ratios)) };
}

function stretchedRing(ring: Ring, ratios: Ratios): Ring {
  const isSimilar = ratios.alongRatio === ratios.acrossRatio;
  return edgesOf(ring).flatMap(({ from, to }): readonly Vertex[] =>
    isSimilar || from.bulge === 0
      ? [{ ...from, ...stretched(from, ratios) }]
      : stretchedArc(from, to, ratios, 0),
  );
}

function stretched({ xIn, yIn }: Point, { alongRatio, acrossRatio }: Ratios): Point {
  return { xIn: xIn * alongRatio, yIn: yIn * acrossRatio };
}

/** Halved until each part is near enough. */
function stretchedArc(from: Vertex, to: Point, ratios: Ratios, halvings: number): readonly Vertex[] {
  const arc = arcOf(from, to);
  const [start, end] = [stretched(from, ratios), stretched(to, ratios)];
  const segmentSqIn =
    edgeSegmentAreaSqIn({ from, to: { ...from, ...to } }) * ratios.alongRatio * ratios.acrossRatio;
  const bulge = bulgeOfSegment(distanceIn(start, end), segmentSqIn, from.bulge);
  const made = { ...from, ...start, bulge };
  const isNear = isNearTo(arcOf(made, end), arc, ratios);
  if (isNear || halvings === MOST_HALVINGS) return [made];
  const middle = pointOnArc(arc, 0.5);
  const half = Math.tan(Math.atan(from.bulge) / 2);
  return [
    ...stretchedArc({ ...from, bulge: half }, middle, ratios, halvings + 1),
    ...stretchedArc({ ...from, ...middle, bulge: half }, to, ratios, halvings + 1),
  ];
}

function isNearTo(circle: Arc, arc: Arc, ratios: Ratios): boolean {
  return HELD_AT.every((share) => {
    const at = stretched(pointOnArc(arc, share), ratios);
    return Math.abs(distanceIn(circle.centre, at) - circle.radiusIn) <= OFF_ARC_IN;
  });
}

/** The bulge with which an arc over a chord has a segment of an area: it grows with the bulge. */
function bulgeOfSegment(chordIn: number, segmentSqIn: number, startBulge: number): number {
  const wantedSqIn = Math.abs(segmentSqIn);
  let [low, high] = [0, Math.abs(startBulge)];
  while (segmentOver(chordIn, high) < wantedSqIn) high *= 2;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle * Math.sign(startBulge);
    if (segmentOver(chordIn, middle) < wantedSqIn) low = middle;
    else high = middle;
  }
}

function segmentOver(chordIn: number, bulge: number): number {
  if (bulge === 0) return 0;
  const from: Vertex = { xIn: 0, yIn: 0, bulge, edge: 'formed' };
  return edgeSegmentAreaSqIn({ from, to: { ...from, xIn: chordIn } });
}
