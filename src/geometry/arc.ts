import { crossSqIn, distanceIn, type Edge, type Point, type Vertex } from './outline.ts';

export type Arc = {
  readonly centre: Point;
  readonly radiusIn: number;
  /** Angle turned from start to end [rad], anticlockwise positive, never 0. */
  readonly sweepRad: number;
  /** Direction from the centre to the start [rad]. */
  readonly startRad: number;
};

/**
 * The circle behind a curved edge.
 *
 * @param vertex Start of the edge; its bulge must not be 0.
 * @param next   End of the edge, elsewhere than the start.
 * @throws {RangeError} If the edge is straight or has no length.
 *
 * sweep = 4 atan(bulge); R = chord / (2 sin(|sweep| / 2)); the centre lies
 * chord / (4 bulge) * (1 - bulge²) to the left of the middle of the chord.
 * Source: the bulge of the DXF drawing format (Autodesk, "DXF Reference", LWPOLYLINE group 42),
 * from memory; the centre follows from the geometry of the chord.
 */
export function arcOf(vertex: Vertex, next: Point): Arc {
  const circle = circleOf(vertex, next);
  const { centre } = circle;
  return {
    ...circle,
    sweepRad: 4 * Math.atan(vertex.bulge),
    startRad: Math.atan2(vertex.yIn - centre.yIn, vertex.xIn - centre.xIn),
  };
}

/** The circle of `arcOf` alone, without its angles: asked very often. @throws As `arcOf`. */
export function circleOf(vertex: Vertex, next: Point): Pick<Arc, 'centre' | 'radiusIn'> {
  const { bulge } = vertex;
  const chordIn = distanceIn(vertex, next);
  if (!(Math.abs(bulge) > 0 && Math.abs(bulge) < Infinity)) {
    throw new RangeError(`bulge must be a number other than 0 on a curved edge, got ${bulge}`);
  }
  if (!(chordIn > 0 && chordIn < Infinity)) {
    throw new RangeError(`a curved edge needs two different ends, got a chord of ${chordIn} in`);
  }

  const leftOfChordRatio = (1 - bulge ** 2) / (4 * bulge);
  const centre = {
    xIn: (vertex.xIn + next.xIn) / 2 - leftOfChordRatio * (next.yIn - vertex.yIn),
    yIn: (vertex.yIn + next.yIn) / 2 + leftOfChordRatio * (next.xIn - vertex.xIn),
  };
  return { centre, radiusIn: (chordIn * (1 + bulge ** 2)) / (4 * Math.abs(bulge)) };
}

/**
 * Whether a direction from the centre meets an arc: that of a point, at an end either way. Told by sides alone,
 * without an angle: asked very often.
 *
 * @param start The start of the arc, with its bulge.
 */
export function meetsArc(start: Vertex, end: Point, centre: Point, towards: Point): boolean {
  const isPastStart = start.bulge * crossSqIn(centre, start, towards) >= 0;
  const isBeforeEnd = start.bulge * crossSqIn(centre, towards, end) >= 0;
  // Of more than half a circle only what lies between its end and its start is left out.
  return Math.abs(start.bulge) <= 1 ? isPastStart && isBeforeEnd : isPastStart || isBeforeEnd;
}

/** The point at `share` (0 to 1) of the way along an arc. */
export function pointOnArc(arc: Arc, share: number): Point {
  const directionRad = arc.startRad + arc.sweepRad * share;
  return {
    xIn: arc.centre.xIn + arc.radiusIn * Math.cos(directionRad),
    yIn: arc.centre.yIn + arc.radiusIn * Math.sin(directionRad),
  };
}

/** Length of a straight or curved edge [in]; arc length = R * |sweep|. */
export function edgeLengthIn(edge: Pick<Edge, 'from' | 'to'>): number {
  if (edge.from.bulge === 0) return distanceIn(edge.from, edge.to);
  return circleOf(edge.from, edge.to).radiusIn * Math.abs(4 * Math.atan(edge.from.bulge));
}

/**
 * Bulge of an arc taped as a chord and its rise.
 *
 * @param taped.chordIn Straight distance between the ends [in], above 0.
 * @param taped.riseIn  Distance from the middle of the chord to the arc [in], 0 or more.
 * @returns tan(sweep / 4), positive. bulge = 2 h / c.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 */
export function bulgeFromRise(taped: { chordIn: number; riseIn: number }): number {
  const { chordIn, riseIn } = taped;
  if (!(chordIn > 0 && chordIn < Infinity)) {
    throw new RangeError(`chordIn must be a length above 0, got ${chordIn}`);
  }
  if (!(riseIn >= 0 && riseIn < Infinity)) {
    throw new RangeError(`riseIn must be a length of 0 or more, got ${riseIn}`);
  }
  return (2 * riseIn) / chordIn;
}

/**
 * Area between a chord and its arc.
 *
 * @param segment.radiusIn Radius of the circle [in], above 0.
 * @param segment.riseIn   Greatest distance from chord to arc, square to the chord [in],
 *                         0 to 2 R; past R it is the larger part of the circle.
 * @returns Area [in²].
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * A = R² acos((R - h) / R) - (R - h) sqrt(2 R h - h²), with R radiusIn, h riseIn.
 * Source: E. W. Weisstein, "Circular Segment", MathWorld.
 *
 * @example circularSegmentAreaSqIn({ radiusIn: 10, riseIn: 10 }) // 157.08, half of the circle
 */
export function circularSegmentAreaSqIn(segment: { radiusIn: number; riseIn: number }): number {
  const { radiusIn, riseIn } = segment;
  if (!(radiusIn > 0 && radiusIn < Infinity)) {
    throw new RangeError(`radiusIn must be a length above 0, got ${radiusIn}`);
  }
  if (!(riseIn >= 0 && riseIn <= 2 * radiusIn)) {
    throw new RangeError(`riseIn must be 0 to ${2 * radiusIn} (twice the radius), got ${riseIn}`);
  }

  const chordToCentreIn = radiusIn - riseIn;
  // Rounding can leave a tiny negative when the rise is the whole diameter.
  const halfChordIn = Math.sqrt(Math.max(0, 2 * radiusIn * riseIn - riseIn ** 2));
  const sectorSqIn = radiusIn ** 2 * Math.acos(chordToCentreIn / radiusIn);
  return sectorSqIn - chordToCentreIn * halfChordIn;
}

/**
 * Area of a sector, between two radii and the arc: A = R² t / 2.
 *
 * @param sector.radiusIn Radius [in], above 0.
 * @param sector.sweepRad Angle between the radii [rad], above 0, at most a full turn.
 * @throws {RangeError} If a value is outside its range or not a finite number.
 *
 * Source: "half of the radius times the arc", F. A. Griffiths, "The Artillerist's Manual".
 */
export function sectorAreaSqIn(sector: { radiusIn: number; sweepRad: number }): number {
  const { radiusIn, sweepRad } = sector;
  if (!(radiusIn > 0 && radiusIn < Infinity)) {
    throw new RangeError(`radiusIn must be a length above 0, got ${radiusIn}`);
  }
  if (!(sweepRad > 0 && sweepRad <= 2 * Math.PI)) {
    throw new RangeError(`sweepRad must be above 0 and at most a full turn, got ${sweepRad}`);
  }
  return (radiusIn ** 2 * sweepRad) / 2;
}

/**
 * Signed area between the chord and the arc of an edge [in²]; positive for an anticlockwise arc.
 * R² (t - sin t) / 2 with t the sweep. Source: E. W. Weisstein, "Circular Segment", MathWorld.
 */
export function edgeSegmentAreaSqIn(edge: Pick<Edge, 'from' | 'to'>): number {
  const sweepRad = 4 * Math.atan(edge.from.bulge);
  return (circleOf(edge.from, edge.to).radiusIn ** 2 * (sweepRad - Math.sin(sweepRad))) / 2;
}
