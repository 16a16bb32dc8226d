import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clearStretches,
  clipLineToOutline,
  containsPoint,
  distanceToEdgeIn,
  type Outline,
  orient,
  polygonRing,
  rectangleRing,
  segmentCrossingIn,
  sharpCorners,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const square: Outline = { rings: [rectangleRing({ lengthIn: 100, widthIn: 100 })] };

function level(yIn: number) {
  return { fromXIn: 0, fromYIn: yIn, toXIn: 1, toYIn: yIn };
}

/** A rectangle whose right end is a half circle, with a round hole: arcs that bulge out and in. */
function slot(lengthIn: number, widthIn: number, holeIn: number): Outline {
  const formed = { edge: 'formed' as const };
  const outer = [
    { xIn: 0, yIn: 0, bulge: 0, ...formed },
    { xIn: lengthIn, yIn: 0, bulge: 1, ...formed },
    { xIn: lengthIn, yIn: widthIn, bulge: 0, ...formed },
    { xIn: 0, yIn: widthIn, bulge: -0.3, ...formed },
  ];
  const [atXIn, atYIn] = [lengthIn * 0.6, widthIn / 2];
  const hole = [
    { xIn: atXIn - holeIn, yIn: atYIn, bulge: 1, ...formed },
    { xIn: atXIn + holeIn, yIn: atYIn, bulge: 1, ...formed },
  ];
  return orient({ rings: [outer, hole] });
}

describe('clearStretches', () => {
  test('exact: across a square, and none nearer to a side than the distance', () => {
    expect(clearStretches(level(50), square, 3)).toEqual([{ fromIn: 3, toIn: 97 }]);
    expect(clearStretches(level(2), square, 3)).toEqual([]);
    expect(clearStretches(level(50), square, 0)).toEqual(clipLineToOutline(level(50), square));
  });

  test('exact: on a slope the distance is square to the edge', () => {
    const triangle: Outline = {
      rings: [
        polygonRing([
          { xIn: 0, yIn: 0 },
          { xIn: 100, yIn: 0 },
          { xIn: 0, yIn: 100 },
        ]),
      ],
    };
    // The long side is x + y = 100: 3 in off it is x + y = 100 - 3 sqrt 2.
    const [only] = clearStretches(level(20), triangle, 3);
    expect(only?.toIn).toBeCloseTo(80 - 3 * Math.SQRT2, 9);
    expect(only?.fromIn).toBeCloseTo(3, 9);
  });

  test('exact: round an inner corner the distance is a circle', () => {
    const points = [
      [0, 0],
      [100, 0],
      [100, 50],
      [50, 50],
      [50, 100],
      [0, 100],
    ] as const;
    const ell: Outline = { rings: [polygonRing(points.map(([xIn, yIn]) => ({ xIn, yIn })))] };
    const [only] = clearStretches(level(48), ell, 5);
    // Below the corner at 50, 50, inside the band of the side above: to the circle of 5 in about it.
    expect(only?.toIn).toBeCloseTo(50 - Math.sqrt(25 - 4), 9);
    expect(clearStretches(level(45), ell, 5)).toEqual([{ fromIn: 5, toIn: 95 }]);
  });

  test('invariant: clear inside, not clear just beyond, and nothing clear is left out', () => {
    const size = fc.double({ min: 40, max: 300, noNaN: true });
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    const turn = fc.double({ min: 0, max: Math.PI, noNaN: true });
    fc.assert(
      fc.property(
        size,
        size,
        share,
        turn,
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        (lengthIn, widthIn, at, turnRad, clearIn) => {
          const outline = slot(lengthIn, widthIn, widthIn / 5);
          const from = { xIn: lengthIn * at, yIn: widthIn * (1 - at) };
          const along = { xIn: Math.cos(turnRad), yIn: Math.sin(turnRad) };
          const pointAt = (atIn: number) => ({
            xIn: from.xIn + along.xIn * atIn,
            yIn: from.yIn + along.yIn * atIn,
          });
          const end = pointAt(1);
          const line = { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: end.xIn, toYIn: end.yIn };
          const stretches = clearStretches(line, outline, clearIn);
          const isClear = (atIn: number) =>
            containsPoint(outline, pointAt(atIn)) && distanceToEdgeIn(outline, pointAt(atIn)) >= clearIn;
          for (let step = 0; step <= 200; step += 1) {
            const atIn = -700 + step * 7;
            const nearestEndIn = Math.min(
              ...stretches.flatMap(({ fromIn, toIn }) => [Math.abs(atIn - fromIn), Math.abs(atIn - toIn)]),
            );
            if (nearestEndIn < 1e-4) continue;
            const isIn = stretches.some(({ fromIn, toIn }) => atIn > fromIn && atIn < toIn);
            expect([atIn, isIn]).toEqual([atIn, isClear(atIn)]);
          }
          for (const { fromIn, toIn } of stretches) {
            expect(distanceToEdgeIn(outline, pointAt(fromIn))).toBeCloseTo(clearIn, 5);
            expect(distanceToEdgeIn(outline, pointAt(toIn))).toBeCloseTo(clearIn, 5);
          }
        },
      ),
      { numRuns: runCount(100), seed: 20261126 },
    );
  });

  test('refuses a distance below 0', () => {
    expect(() => clearStretches(level(50), square, -1)).toThrow(RangeError);
    expect(() => clearStretches(level(50), square, Number.NaN)).toThrow(RangeError);
  });
});

describe('segmentCrossingIn', () => {
  const stretch = { from: { xIn: 10, yIn: 0 }, to: { xIn: 10, yIn: 40 } };
  const line = (fromXIn: number, fromYIn: number, toXIn: number, toYIn: number) => ({
    fromXIn,
    fromYIn,
    toXIn,
    toYIn,
  });

  test('how far along they cross; an end that touches counts; else null', () => {
    expect(segmentCrossingIn(stretch, line(0, 15, 20, 15))).toBe(15);
    expect(segmentCrossingIn(stretch, line(0, 15, 10, 15))).toBe(15);
    expect(segmentCrossingIn(stretch, line(0, 15, 9.9, 15))).toBeNull();
    expect(segmentCrossingIn(stretch, line(0, 41, 20, 41))).toBeNull();
    expect(segmentCrossingIn(stretch, line(10, 0, 10, 40))).toBeNull();
  });
});

describe('sharpCorners', () => {
  test('outer corners turn left, inner ones right, and both point into the shape', () => {
    const points = [
      [0, 0],
      [100, 0],
      [100, 50],
      [50, 50],
      [50, 100],
      [0, 100],
    ] as const;
    const ell: Outline = { rings: [polygonRing(points.map(([xIn, yIn]) => ({ xIn, yIn })))] };
    const corners = sharpCorners(ell, Math.PI / 6);
    expect(corners.map(({ turnRad }) => Math.sign(turnRad))).toEqual([1, 1, 1, -1, 1, 1]);
    for (const { at, inward } of corners) {
      expect(Math.hypot(inward.xIn, inward.yIn)).toBeCloseTo(1, 12);
      expect(containsPoint(ell, { xIn: at.xIn + inward.xIn, yIn: at.yIn + inward.yIn })).toBe(true);
    }
    expect(corners[3]?.inward.xIn).toBeCloseTo(-Math.SQRT1_2, 12);
  });

  test('a corner of a hole points into the concrete', () => {
    const hole = rectangleRing({ lengthIn: 20, widthIn: 20 }).map((vertex) => ({
      ...vertex,
      xIn: vertex.xIn + 40,
      yIn: vertex.yIn + 40,
    }));
    const corners = sharpCorners(
      orient({ rings: [rectangleRing({ lengthIn: 100, widthIn: 100 }), hole] }),
      Math.PI / 6,
    );
    expect(corners.filter(({ turnRad }) => turnRad < 0).length).toBe(4);
  });
});
