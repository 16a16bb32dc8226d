import { ringAreaSqIn } from './measure.ts';
import type { EdgeKind, Outline, Point, Ring, Vertex } from './outline.ts';
import { vertexAt } from './outline.ts';

/**
 * Corner 1 at the origin, corner 2 along x by the length, then up by the width; all edges formed.
 * @throws {RangeError} If a side is not a length above 0.
 */
export function rectangleRing(sides: { lengthIn: number; widthIn: number }): Ring {
  const { lengthIn, widthIn } = sides;
  for (const [name, sideIn] of Object.entries({ lengthIn, widthIn })) {
    if (!(sideIn > 0 && sideIn < Infinity)) {
      throw new RangeError(`${name} must be a length above 0, got ${sideIn}`);
    }
  }
  return polygonRing([
    { xIn: 0, yIn: 0 },
    { xIn: lengthIn, yIn: 0 },
    { xIn: lengthIn, yIn: widthIn },
    { xIn: 0, yIn: widthIn },
  ]);
}

/**
 * Straight, formed edges through the points in their order.
 * @throws {RangeError} If there are fewer than three points, or one is not finite.
 */
export function polygonRing(points: readonly Point[]): Ring {
  if (points.length < 3) throw new RangeError(`a ring needs three points or more, got ${points.length}`);
  return points.map(({ xIn, yIn }) => {
    if (!(Number.isFinite(xIn) && Number.isFinite(yIn))) {
      throw new RangeError(`a point must be two finite numbers, got ${xIn}, ${yIn}`);
    }
    return { xIn, yIn, bulge: 0, edge: 'formed' };
  });
}

/** The same ring with the kinds of some edges changed, by edge number from 1. */
export function withEdgeKinds(ring: Ring, kinds: ReadonlyMap<number, EdgeKind>): Ring {
  for (const number of kinds.keys()) {
    if (!(Number.isInteger(number) && number >= 1 && number <= ring.length)) {
      throw new RangeError(`edge must be 1 to ${ring.length}, got ${number}`);
    }
  }
  return ring.map((vertex, index) => ({ ...vertex, edge: kinds.get(index + 1) ?? vertex.edge }));
}

export function moveRing(ring: Ring, by: { readonly dxIn: number; readonly dyIn: number }): Ring {
  return ring.map((vertex) => ({ ...vertex, xIn: vertex.xIn + by.dxIn, yIn: vertex.yIn + by.dyIn }));
}

export function moveOutline(outline: Outline, by: { readonly dxIn: number; readonly dyIn: number }): Outline {
  return { rings: outline.rings.map((ring) => moveRing(ring, by)) };
}

/** Turned about the origin, anticlockwise positive. */
export function turnOutline(outline: Outline, turnDeg: number): Outline {
  const turn = turnBy(turnDeg);
  return {
    rings: outline.rings.map((ring) => ring.map((vertex) => turnedVertex(vertex, turn(vertex)))),
  };
}

function turnedVertex({ bulge, edge }: Vertex, { xIn, yIn }: Point): Vertex {
  return { xIn, yIn, bulge, edge };
}

/** As `turnOutline`. */
export function turnPoint(point: Point, turnDeg: number): Point {
  return turnBy(turnDeg)(point);
}

function turnBy(turnDeg: number): (point: Point) => Point {
  const turnRad = (turnDeg * Math.PI) / 180;
  // The quarter turns exact, so that a square shape stays square.
  const cosine = turnDeg % 180 === 90 || turnDeg % 180 === -90 ? 0 : Math.cos(turnRad);
  const sine = turnDeg % 180 === 0 ? 0 : Math.sin(turnRad);
  return ({ xIn, yIn }) => ({ xIn: xIn * cosine - yIn * sine, yIn: xIn * sine + yIn * cosine });
}

/** The same shape run the other way round; corner 1 stays corner 1. */
export function reverseRing(ring: Ring): Ring {
  return ring.map((_, index) => {
    const here = vertexAt(ring, -index);
    const edgeBefore = vertexAt(ring, -index - 1);
    // Adding 0 turns -0 into 0: a straight edge is told by bulge === 0 everywhere, -0 would only look odd.
    return { xIn: here.xIn, yIn: here.yIn, bulge: -edgeBefore.bulge + 0, edge: edgeBefore.edge };
  });
}

/** First ring anticlockwise, every other one clockwise. */
export function orient(outline: Outline): Outline {
  return {
    rings: outline.rings.map((ring, index) => {
      const shouldBePositive = index === 0;
      return ringAreaSqIn(ring) > 0 === shouldBePositive ? ring : reverseRing(ring);
    }),
  };
}
