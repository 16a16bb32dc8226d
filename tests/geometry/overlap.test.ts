import { describe, expect, test } from 'vitest';
import {
  arcOf,
  edgesOf,
  isWithin,
  moveOutline,
  type Outline,
  outlineAreaSqIn,
  outlinePerimeterIn,
  overlapAreaSqIn,
  pointOnArc,
  polygonRing,
  type Ring,
  rectangleRing,
  reverseRing,
  stretchOutline,
  unionAreaSqIn,
} from '../../src/geometry/index.ts';

const circle = (xIn: number, yIn: number, radiusIn: number): Ring => [
  { xIn: xIn + radiusIn, yIn, bulge: 1, edge: 'formed' },
  { xIn: xIn - radiusIn, yIn, bulge: 1, edge: 'formed' },
];
const square: Outline = { rings: [rectangleRing({ lengthIn: 100, widthIn: 100 })] };
const disc = (xIn: number, yIn: number, radiusIn: number): Outline => ({
  rings: [circle(xIn, yIn, radiusIn)],
});
const withHole: Outline = { rings: [...square.rings, reverseRing(circle(50, 50, 20))] };

describe('overlapAreaSqIn', () => {
  test('exact: two squares that share a quarter, an edge, a corner, nothing', () => {
    const shifted = (dxIn: number, dyIn: number) => moveOutline(square, { dxIn, dyIn });
    expect(overlapAreaSqIn(square, shifted(50, 50))).toBeCloseTo(2500, 6);
    expect(overlapAreaSqIn(square, shifted(100, 0))).toBe(0);
    expect(overlapAreaSqIn(square, shifted(100, 100))).toBe(0);
    expect(overlapAreaSqIn(square, shifted(300, 0))).toBe(0);
  });

  // Two circles of radius r, centres d apart share 2 r² acos(d / 2r) - d/2 sqrt(4 r² - d²):
  // E. W. Weisstein, "Circle-Circle Intersection", MathWorld (memory).
  test('exact: the lens of two circles', () => {
    const lensSqIn = 2 * 3600 * Math.acos(50 / 120) - 25 * Math.sqrt(4 * 3600 - 2500);
    expect(overlapAreaSqIn(disc(0, 0, 60), disc(50, 0, 60))).toBeCloseTo(lensSqIn, 2);
  });

  test('exact: a hole counts for nothing; one just filled is not overlapped', () => {
    expect(overlapAreaSqIn(withHole, disc(50, 50, 10))).toBe(0);
    expect(overlapAreaSqIn(withHole, disc(50, 50, 20))).toBeCloseTo(0, 3);
    expect(overlapAreaSqIn(withHole, disc(50, 50, 40))).toBeCloseTo(Math.PI * 1200, 2);
  });

  test('whichever way the rings run, a hole is a hole', () => {
    const alike: Outline = { rings: [...square.rings, circle(50, 50, 20)] };
    for (const outline of [alike, { rings: alike.rings.map(reverseRing) }]) {
      expect(overlapAreaSqIn(outline, disc(50, 50, 10))).toBe(0);
      expect(overlapAreaSqIn(outline, square)).toBeCloseTo(10_000 - Math.PI * 400, 4);
    }
  });

  test('a step of a hundredth of an inch is seen', () => {
    expect(overlapAreaSqIn(square, moveOutline(square, { dxIn: 99.99, dyIn: 0 }))).toBeCloseTo(1, 6);
  });
});

describe('unionAreaSqIn', () => {
  test('exact: the same twice, two apart, a hole covered', () => {
    expect(unionAreaSqIn([square, square])).toBeCloseTo(10_000, 6);
    expect(unionAreaSqIn([square, moveOutline(square, { dxIn: 200, dyIn: 0 })])).toBeCloseTo(20_000, 6);
    expect(unionAreaSqIn([withHole, disc(50, 50, 30)])).toBeCloseTo(10_000, 3);
    expect(unionAreaSqIn([withHole])).toBeCloseTo(outlineAreaSqIn(withHole), 4);
    expect(unionAreaSqIn([])).toBe(0);
  });
});

describe('isWithin', () => {
  test.each([
    { name: 'in the middle', inner: circle(50, 50, 20) },
    { name: 'run the other way', inner: reverseRing(circle(50, 50, 20)) },
    { name: 'touching an edge', inner: circle(50, 20, 20) },
    { name: 'the same ring', inner: square.rings[0] ?? [] },
  ])('$name: yes', ({ inner }) => {
    expect(isWithin(square, inner)).toEqual({ ok: true });
  });

  test('a ring on the same arcs, joined elsewhere, is within', () => {
    const r = 60;
    const turnedJoints: Ring = [
      { xIn: 0, yIn: r, bulge: 1, edge: 'formed' },
      { xIn: 0, yIn: -r, bulge: 1, edge: 'formed' },
    ];
    expect(isWithin(disc(0, 0, r), turnedJoints)).toEqual({ ok: true });
  });

  test.each([
    { name: 'over an edge by 5 in', inner: circle(50, 15, 20), byIn: 5 },
    { name: 'over an edge by 1/16 in', inner: circle(50, 20 - 1 / 16, 20), byIn: 1 / 16 },
    { name: 'all of it outside', inner: circle(50, -100, 20), byIn: 120 },
  ])('$name: no, and by how much', ({ inner, byIn }) => {
    const result = isWithin(square, inner);
    if (result.ok) throw new Error('sticks out');
    expect(result.byIn).toBeCloseTo(byIn, 2);
  });

  test('across a notch whose edges its corners only touch: no, as far as the gap is wide', () => {
    const u: Outline = {
      rings: [
        polygonRing(
          (
            [
              [0, 0],
              [100, 0],
              [100, 90],
              [70, 90],
              [70, 20],
              [30, 20],
              [30, 90],
              [0, 90],
            ] as const
          ).map(([xIn, yIn]) => ({ xIn, yIn })),
        ),
      ],
    };
    const bridge = moveOutline(
      { rings: [rectangleRing({ lengthIn: 100, widthIn: 20 })] },
      { dxIn: 0, dyIn: 60 },
    );
    const result = isWithin(u, bridge.rings[0] ?? []);
    expect(result.ok ? 0 : result.byIn).toBeCloseTo(20, 6);
  });

  test('laid over a hole: no', () => {
    const result = isWithin(withHole, circle(50, 50, 30));
    expect(result.ok ? 0 : result.byIn).toBeGreaterThan(5);
  });
});

describe('stretchOutline', () => {
  test('exact: straight edges by the ratio of their direction', () => {
    const stretched = stretchOutline(square, { alongRatio: 0.995, acrossRatio: 1 });
    expect(stretched.rings[0]?.map(({ xIn, yIn }) => [xIn, yIn])).toEqual([
      [0, 0],
      [99.5, 0],
      [99.5, 100],
      [0, 100],
    ]);
  });

  test.each([
    { alongRatio: 0.9806, acrossRatio: 1 },
    { alongRatio: 1, acrossRatio: 1.02 },
    { alongRatio: 0.5, acrossRatio: 2 },
  ])('the area of arcs goes by both ratios, $alongRatio and $acrossRatio', (ratios) => {
    const before = outlineAreaSqIn(withHole);
    const after = outlineAreaSqIn(stretchOutline(withHole, ratios));
    expect(after / (before * ratios.alongRatio * ratios.acrossRatio)).toBeCloseTo(1, 12);
  });

  test('exact: a stretched circle has the length of an ellipse', () => {
    const stretched = stretchOutline(disc(0, 0, 60), { alongRatio: 1.1, acrossRatio: 1 });
    // Ramanujan's second formula; its error at this ratio is below 1e-12.
    const h = ((66 - 60) / (66 + 60)) ** 2;
    const ellipseIn = Math.PI * 126 * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
    const lengthIn = outlinePerimeterIn(stretched);
    expect(lengthIn / ellipseIn).toBeCloseTo(1, 5);
  });

  test.each([
    { alongRatio: 1.001, acrossRatio: 1, atMost: 2 },
    { alongRatio: 1.1, acrossRatio: 1, atMost: 24 },
  ])(
    'a circle of 10 ft stays one of arcs, within 1/64 in of the ellipse: $alongRatio',
    ({ atMost, ...ratios }) => {
      const [ring = []] = stretchOutline(disc(0, 0, 60), ratios).rings;
      expect(ring.every(({ bulge }) => bulge !== 0)).toBe(true);
      expect(ring.length).toBeLessThanOrEqual(atMost);
      const [alongIn, acrossIn] = [60 * ratios.alongRatio, 60 * ratios.acrossRatio];
      for (const { from, to } of edgesOf(ring)) {
        for (const share of [0, 0.2, 0.4, 0.6, 0.8]) {
          const { xIn, yIn } = pointOnArc(arcOf(from, to), share);
          // Its distance from the ellipse along the radius, which is no less than the shortest.
          const radiusIn = Math.hypot(xIn, yIn);
          const [cosine, sine] = [xIn / radiusIn, yIn / radiusIn];
          const ellipseIn = 1 / Math.hypot(cosine / alongIn, sine / acrossIn);
          expect(Math.abs(radiusIn - ellipseIn)).toBeLessThan(1 / 60);
        }
      }
    },
  );

  test('by one ratio both ways arcs stay arcs; by 1 nothing changes', () => {
    expect(stretchOutline(withHole, { alongRatio: 1, acrossRatio: 1 })).toBe(withHole);
    const doubled = stretchOutline(withHole, { alongRatio: 2, acrossRatio: 2 });
    expect(doubled.rings[1]).toHaveLength(2);
    expect(outlineAreaSqIn(doubled)).toBeCloseTo(4 * outlineAreaSqIn(withHole), 8);
  });

  test('keeps the kinds of the edges', () => {
    const kinds: Outline = { rings: [circle(0, 0, 60).map((vertex) => ({ ...vertex, edge: 'house' }))] };
    const [ring] = stretchOutline(kinds, { alongRatio: 2, acrossRatio: 1 }).rings;
    expect(new Set(ring?.map(({ edge }) => edge))).toEqual(new Set(['house']));
  });

  test.each([0, -1, Number.NaN, Infinity])('refuses a ratio of %d', (ratio) => {
    expect(() => stretchOutline(square, { alongRatio: ratio, acrossRatio: 1 })).toThrow(RangeError);
    expect(() => stretchOutline(square, { alongRatio: 1, acrossRatio: ratio })).toThrow(RangeError);
  });
});
