import { describe, expect, test } from 'vitest';
import { tapedEdges } from '../../../src/describe/drawing/taped-edges.ts';
import {
  distanceIn,
  polygonRing,
  type Ring,
  rectangleRing,
  roundCorners,
  withEdgeKinds,
} from '../../../src/geometry/index.ts';

const rounded = (ring: Ring, setbacks: readonly [number, number][]): Ring => {
  const made = roundCorners(
    ring,
    new Map(setbacks.map(([corner, setbackIn]) => [corner, { kind: 'setback', setbackIn }])),
  );
  if (!made.ok) throw new Error('does not fit');
  return made.ring;
};
const lengths = (ring: Ring) => tapedEdges(ring).map(({ from, to }) => distanceIn(from, to));

describe('tapedEdges', () => {
  // Exact: rounding takes nothing off a side as it is taped; the strings still meet at the corner.
  test('a drive of 36 x 18 ft with two rounded corners is still 36 x 18 ft', () => {
    const drive = rounded(rectangleRing({ lengthIn: 432, widthIn: 216 }), [
      [2, 36],
      [3, 36],
    ]);
    const sides = lengths(drive);
    expect(sides).toHaveLength(4);
    for (const [index, sideIn] of [432, 216, 432, 216].entries()) expect(sides[index]).toBeCloseTo(sideIn, 6);
  });

  test('a corner that is not square comes back too', () => {
    const points = [
      { xIn: 0, yIn: 0 },
      { xIn: 240, yIn: 0 },
      { xIn: 180, yIn: 120 },
      { xIn: 0, yIn: 120 },
    ];
    const sharp = polygonRing(points);
    const soft = rounded(sharp, [
      [2, 24],
      [3, 18],
    ]);
    for (const [index, sideIn] of lengths(sharp).entries())
      expect(lengths(soft)[index]).toBeCloseTo(sideIn, 6);
  });

  test('without arcs the edges are as they are', () => {
    expect(lengths(rectangleRing({ lengthIn: 120, widthIn: 60 }))).toEqual([120, 60, 120, 60]);
  });

  test('an arc that is no rounded corner leaves the edges beside it alone', () => {
    const bulged = withEdgeKinds(rectangleRing({ lengthIn: 120, widthIn: 60 }), new Map()).map(
      (vertex, index) => (index === 1 ? { ...vertex, bulge: 0.2 } : vertex),
    );
    expect(lengths(bulged)).toEqual([120, 120, 60]);
  });
});
