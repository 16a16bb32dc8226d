import { describe, expect, test } from 'vitest';
import {
  bendEdges,
  circleRing,
  polygonRing,
  type Ring,
  rectangleRing,
  roundCorners,
  tapeCorner,
} from '../../src/geometry/index.ts';

const box = rectangleRing({ lengthIn: 400, widthIn: 200 });
const at = (xIn: number, yIn: number) => ({ xIn, yIn });

function rounded(ring: Ring, corners: readonly number[], radiusIn: number): Ring {
  const made = roundCorners(ring, new Map(corners.map((corner) => [corner, { kind: 'radius', radiusIn }])));
  if (!made.ok) throw new Error('these corners fit');
  return made.ring;
}

describe('tapeCorner', () => {
  test.each([
    { towardsDeg: 0, point: at(150, 0), corner: at(0, 0), lengthIn: 150 },
    { towardsDeg: 0, point: at(150, 200), corner: at(0, 200), lengthIn: 150 },
    { towardsDeg: 180, point: at(150, 0), corner: at(400, 0), lengthIn: 250 },
    { towardsDeg: 180, point: at(150, 200), corner: at(400, 200), lengthIn: 250 },
    { towardsDeg: 90, point: at(400, 60), corner: at(400, 0), lengthIn: 60 },
  ])('of a box, towards $towardsDeg degrees', ({ towardsDeg, point, corner, lengthIn }) => {
    expect(tapeCorner({ ring: box, at: point, towardsDeg })).toEqual({ corner, lengthIn });
  });

  test('a rounded corner is where its sides would meet, on both sides and whichever way', () => {
    const ring = rounded(box, [1, 2, 3, 4], 30);
    for (const [towardsDeg, cornerXIn] of [
      [0, 0],
      [180, 400],
    ] as const) {
      for (const yIn of [0, 200]) {
        const found = tapeCorner({ ring, at: at(150, yIn), towardsDeg });
        expect(found?.corner.xIn).toBeCloseTo(cornerXIn, 9);
        expect(found?.corner.yIn).toBeCloseTo(yIn, 9);
        expect(found?.lengthIn).toBeCloseTo(Math.abs(150 - cornerXIn), 9);
      }
    }
  });

  test('a half round end has no such place: the straight starts where the curve ends', () => {
    const [, , , fourth] = box;
    if (fourth === undefined) throw new Error('a box has four corners');
    const ring = [...box.slice(0, 3), { ...fourth, bulge: 1 }];
    expect(tapeCorner({ ring, at: at(150, 0), towardsDeg: 0 })).toEqual({ corner: at(0, 0), lengthIn: 150 });
    expect(tapeCorner({ ring, at: at(150, 200), towardsDeg: 0 })?.corner).toEqual(at(0, 200));
  });

  test('a sharp tip that is rounded is not taped from: its sides meet too far off', () => {
    const tip = polygonRing([at(0, 0), at(400, -35), at(400, 35)]);
    const ring = rounded(tip, [1], 10);
    // The curve starts R / tan(half the corner) back: 10 * 400 / 35 along a side.
    const fromTipIn = 4000 / 35;
    const sideIn = Math.hypot(400, 35);
    const found = tapeCorner({ ring, at: at(300, (-300 * 35) / 400), towardsDeg: 0 });
    expect(found?.lengthIn).toBeCloseTo((300 / 400) * sideIn - fromTipIn, 6);
  });

  test('a point on one straight line is no corner', () => {
    const ring = polygonRing([at(0, 0), at(100, 0), at(250, 0.5), at(400, 0), at(400, 200), at(0, 200)]);
    expect(tapeCorner({ ring, at: at(300, 1 / 3), towardsDeg: 0 })?.corner).toEqual(at(0, 0));
  });

  test('from a bend of a walk: where its straights meet, not its far end', () => {
    const walk = polygonRing([at(0, 0), at(200, 0), at(300, 100), at(250, 150), at(170, 70), at(0, 70)]);
    const found = tapeCorner({ ring: rounded(walk, [2], 60), at: at(260, 60), towardsDeg: 0 });
    expect(found?.corner.xIn).toBeCloseTo(200, 9);
    expect(found?.corner.yIn).toBeCloseTo(0, 9);
    expect(found?.lengthIn).toBeCloseTo(60 * Math.SQRT2, 9);
  });

  test('a point on an arc is taped straight from the corner before it', () => {
    const made = bendEdges(box, new Map([[1, { kind: 'rise', riseIn: 40, bends: 'out' }]]));
    if (!made.ok) throw new Error('this edge bends');
    expect(tapeCorner({ ring: made.ring, at: at(200, -40), towardsDeg: 0 })).toEqual({
      corner: at(0, 0),
      lengthIn: expect.closeTo(Math.hypot(200, 40), 9),
    });
  });

  test('a circle is taped from where it begins', () => {
    const ring = circleRing({ diameterIn: 200 });
    const found = tapeCorner({ ring, at: at(100, 200), towardsDeg: 0 });
    expect(found).toEqual({ corner: at(0, 100), lengthIn: expect.closeTo(100 * Math.SQRT2, 9) });
  });

  test('a point off the ring has no corner', () => {
    expect(tapeCorner({ ring: box, at: at(150, 100), towardsDeg: 0 })).toBeNull();
    expect(tapeCorner({ ring: box, at: at(150, 0.02), towardsDeg: 0 })).toBeNull();
    expect(tapeCorner({ ring: box, at: at(150, 0.005), towardsDeg: 0 })).not.toBeNull();
  });
});
