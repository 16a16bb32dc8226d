import { describe, expect, test } from 'vitest';
import {
  arcOf,
  boundsOf,
  circularSegmentAreaSqIn,
  clipLineToOutline,
  clipSegmentToOutline,
  containsPoint,
  distanceToEdgeIn,
  edgeLengthsByKindIn,
  labelPointOf,
  type Outline,
  orient,
  outlineAreaSqIn,
  polygonRing,
  type Ring,
  rectangleRing,
  reverseRing,
  ringAreaSqIn,
  roundCorners,
  selfCrossing,
  withEdgeKinds,
} from '../../src/geometry/index.ts';

/** Roundings by setback, as corner and setback. */
const setbacks = (...pairs: readonly (readonly [number, number])[]) =>
  new Map(pairs.map(([corner, setbackIn]) => [corner, { kind: 'setback' as const, setbackIn }]));
const points = (...pairs: readonly (readonly [number, number])[]) =>
  polygonRing(pairs.map(([xIn, yIn]) => ({ xIn, yIn })));
const square = rectangleRing({ lengthIn: 100, widthIn: 100 });
const ell = points([0, 0], [200, 0], [200, 80], [120, 80], [120, 200], [0, 200]);
const circle = (xIn: number, yIn: number, radiusIn: number): Ring => [
  { xIn: xIn + radiusIn, yIn, bulge: 1, edge: 'formed' },
  { xIn: xIn - radiusIn, yIn, bulge: 1, edge: 'formed' },
];
const withPlanter: Outline = { rings: [square, reverseRing(circle(50, 50, 20))] };

describe('circularSegmentAreaSqIn', () => {
  // Published (seen): E. W. Weisstein, "Quarter-Tank Problem", MathWorld: a circle is a
  // quarter full at h/R = 0.596027..., digits cut off, so the area is low by at most
  // 1e-6 times its slope there (1.83).
  test('a quarter of the circle lies below h/R = 0.596027', () => {
    const shortBy = Math.PI / 4 - circularSegmentAreaSqIn({ radiusIn: 1, riseIn: 0.596027 });
    expect(shortBy).toBeGreaterThanOrEqual(0);
    expect(shortBy).toBeLessThan(1.9e-6);
  });

  test.each([
    { riseRadii: 0, share: 0 },
    { riseRadii: 1, share: 1 / 2 },
    { riseRadii: 2, share: 1 },
  ])('exact: a rise of $riseRadii radii covers $share of the circle', ({ riseRadii, share }) => {
    expect(circularSegmentAreaSqIn({ radiusIn: 1, riseIn: riseRadii })).toBeCloseTo(share * Math.PI, 12);
  });

  test.each([
    { radiusIn: 0, riseIn: 0 },
    { radiusIn: Number.NaN, riseIn: 0 },
    { radiusIn: Infinity, riseIn: 1 },
    { radiusIn: 1, riseIn: -0.001 },
    { radiusIn: 1, riseIn: 2.001 },
    { radiusIn: 1, riseIn: Number.NaN },
  ])('refuses radius $radiusIn, rise $riseIn', (segment) => {
    expect(() => circularSegmentAreaSqIn(segment)).toThrow(RangeError);
  });
});

describe('arcOf', () => {
  test('exact: a quarter turn to the left about the origin', () => {
    const arc = arcOf({ xIn: 5, yIn: 0, bulge: Math.tan(Math.PI / 8), edge: 'formed' }, { xIn: 0, yIn: 5 });
    expect(arc.centre.xIn).toBeCloseTo(0, 12);
    expect(arc.centre.yIn).toBeCloseTo(0, 12);
    expect(arc.radiusIn).toBeCloseTo(5, 12);
    expect(arc.sweepRad).toBeCloseTo(Math.PI / 2, 12);
    expect(arc.startRad).toBeCloseTo(0, 12);
  });

  test('exact: three quarters of a turn to the right', () => {
    const bulge = Math.tan((-3 * Math.PI) / 8);
    const arc = arcOf({ xIn: 5, yIn: 0, bulge, edge: 'formed' }, { xIn: 0, yIn: 5 });
    expect(arc.centre.xIn).toBeCloseTo(0, 12);
    expect(arc.centre.yIn).toBeCloseTo(0, 12);
    expect(arc.sweepRad).toBeCloseTo((-3 * Math.PI) / 2, 12);
  });

  test('refuses a straight edge and one without length', () => {
    expect(() => arcOf({ xIn: 0, yIn: 0, bulge: 0, edge: 'formed' }, { xIn: 1, yIn: 0 })).toThrow(/bulge/);
    expect(() => arcOf({ xIn: 0, yIn: 0, bulge: 1, edge: 'formed' }, { xIn: 0, yIn: 0 })).toThrow(/two/);
  });
});

describe('measures', () => {
  test('exact: a round planter is taken off, and its edge counted', () => {
    expect(outlineAreaSqIn(withPlanter)).toBeCloseTo(10_000 - Math.PI * 400, 8);
    const lengths = edgeLengthsByKindIn(withPlanter);
    expect(lengths.formed.straightIn).toBe(400);
    expect(lengths.formed.curvedIn).toBeCloseTo(2 * Math.PI * 20, 10);
    expect(lengths.house).toEqual({ straightIn: 0, curvedIn: 0 });
  });

  test('lengths go to the kind of each edge', () => {
    const ring = withEdgeKinds(
      ell,
      new Map([
        [1, 'house'],
        [4, 'joint'],
      ]),
    );
    const lengths = edgeLengthsByKindIn({ rings: [ring] });
    expect(lengths.house.straightIn).toBe(200);
    expect(lengths.joint.straightIn).toBe(120);
    expect(lengths.formed.straightIn).toBe(80 + 80 + 120 + 200);
  });

  test('exact: bounds follow an arc past its ends', () => {
    expect(boundsOf({ rings: [circle(10, 20, 5)] })).toEqual({
      minXIn: 5,
      maxXIn: 15,
      minYIn: 15,
      maxYIn: 25,
    });
  });

  test('inside and outside, about an arc, a hole and a notch', () => {
    expect(containsPoint(withPlanter, { xIn: 10, yIn: 10 })).toBe(true);
    expect(containsPoint(withPlanter, { xIn: 50, yIn: 50 })).toBe(false);
    expect(containsPoint(withPlanter, { xIn: 50, yIn: 69 })).toBe(false);
    expect(containsPoint(withPlanter, { xIn: 50, yIn: 71 })).toBe(true);
    expect(containsPoint({ rings: [ell] }, { xIn: 160, yIn: 120 })).toBe(false);
    // A bite out of the right-hand edge: beyond the chord no, between arc and chord no, short of the arc yes.
    const bitten = square.map((vertex, index) => (index === 1 ? { ...vertex, bulge: -0.5 } : vertex));
    expect(containsPoint({ rings: [bitten] }, { xIn: 90, yIn: 50 })).toBe(false);
    expect(containsPoint({ rings: [bitten] }, { xIn: 74, yIn: 50 })).toBe(true);
    expect(containsPoint({ rings: [bitten] }, { xIn: 101, yIn: 50 })).toBe(false);
  });

  test('the label point of a U lies in the U, of a square in its middle', () => {
    const u = points([0, 0], [100, 0], [100, 90], [70, 90], [70, 20], [30, 20], [30, 90], [0, 90]);
    const point = labelPointOf({ rings: [u] });
    expect(containsPoint({ rings: [u] }, point)).toBe(true);
    expect(point.clearanceIn).toBeGreaterThan(14.9);
    expect(distanceToEdgeIn({ rings: [u] }, point)).toBeCloseTo(point.clearanceIn, 9);

    const middle = labelPointOf({ rings: [square] });
    expect(middle.xIn).toBeCloseTo(50, 6);
    expect(middle.yIn).toBeCloseTo(50, 6);
  });

  test('the label point of a long walk is near its middle, of a thin slanted one inside', () => {
    const walk = labelPointOf({ rings: [rectangleRing({ lengthIn: 720, widthIn: 48 })] });
    expect(walk.clearanceIn).toBeCloseTo(24, 1);
    expect(Math.abs(walk.xIn - 360)).toBeLessThan(48);
    const sliver = points([0, 0], [1000, 700], [999, 703]);
    expect(containsPoint({ rings: [sliver] }, labelPointOf({ rings: [sliver] }))).toBe(true);
  });
});

describe('orient', () => {
  test('turns the outer ring anticlockwise and holes clockwise, keeping corner 1 and the kinds', () => {
    const wrong: Outline = { rings: [reverseRing(ell), circle(50, 50, 10)] };
    const right = orient(wrong);
    expect(right.rings.map((ring) => Math.sign(ringAreaSqIn(ring)))).toEqual([1, -1]);
    expect(right.rings[0]).toEqual(ell);
    const kinds = withEdgeKinds(square, new Map([[1, 'house' as const]]));
    const reversed = reverseRing(kinds);
    // Edge 1 ran from corner 1 to corner 2; run backwards it is the last, and ends at corner 1.
    expect(reversed.map((vertex) => vertex.edge)).toEqual(['formed', 'formed', 'formed', 'house']);
    expect(reversed[0]).toMatchObject({ xIn: 0, yIn: 0 });
  });
});

describe('roundCorners', () => {
  test('exact: a square corner has its setback as radius', () => {
    const result = roundCorners(square, setbacks([3, 36]));
    if (!result.ok) throw new Error('should fit');
    const [corner] = result.corners;
    expect(corner?.arcs[0]?.radiusIn).toBeCloseTo(36, 12);
    expect(corner?.arcs[0]?.arcLengthIn).toBeCloseTo((Math.PI / 2) * 36, 12);
    expect(corner?.areaLostSqIn).toBeCloseTo(36 ** 2 * (1 - Math.PI / 4), 10);
    expect(result.ring).toHaveLength(5);
    expect(result.ring[2]).toMatchObject({ xIn: 100, yIn: 64 });
    expect(result.ring[3]).toMatchObject({ xIn: 64, yIn: 100, bulge: 0 });
    const arc = arcOf(result.ring[2] as never, result.ring[3] as never);
    expect(arc.centre.xIn).toBeCloseTo(64, 10);
    expect(arc.centre.yIn).toBeCloseTo(64, 10);
  });

  test('a re-entrant corner gains area; area and layout agree', () => {
    const result = roundCorners(ell, setbacks([1, 20], [4, 30], [6, 10]));
    if (!result.ok) throw new Error('should fit');
    expect(result.corners.map(({ areaLostSqIn }) => Math.sign(areaLostSqIn))).toEqual([1, -1, 1]);
    const lostSqIn = result.corners.reduce((sum, corner) => sum + corner.areaLostSqIn, 0);
    expect(ringAreaSqIn(result.ring)).toBeCloseTo(ringAreaSqIn(ell) - lostSqIn, 8);
    const backwards = roundCorners(reverseRing(ell), setbacks([4, 30]));
    if (!backwards.ok) throw new Error('should fit');
    expect(backwards.corners[0]?.areaLostSqIn).toBeLessThan(0);
  });

  test('an arc between two kinds of edges is formed, between two of one kind it is of that kind', () => {
    const kindsAt = (kinds: ReadonlyMap<number, 'house'>) => {
      const result = roundCorners(withEdgeKinds(square, kinds), setbacks([2, 10]));
      return result.ok ? result.ring.map((vertex) => vertex.edge) : [];
    };
    expect(kindsAt(new Map([[1, 'house']]))).toEqual(['house', 'formed', 'formed', 'formed', 'formed']);
    const both = new Map([
      [1, 'house'],
      [2, 'house'],
    ] as const);
    expect(kindsAt(both)).toEqual(['house', 'house', 'house', 'formed', 'formed']);
  });

  test('setbacks may use an edge up to its last bit: the arcs meet', () => {
    const result = roundCorners(square, setbacks([1, 50], [2, 50], [3, 50], [4, 50]));
    expect(result.ok && result.ring.length).toBe(4);
    expect(result.ok && ringAreaSqIn(result.ring)).toBeCloseTo(Math.PI * 2500, 8);
  });

  test.each([
    [0, 10],
    [5, 10],
    [1.5, 10],
    [1, 0],
    [1, Number.NaN],
  ])('refuses corner %d, setback %d', (corner, setback) => {
    expect(() => roundCorners(square, setbacks([corner, setback]))).toThrow(RangeError);
  });
});

describe('selfCrossing', () => {
  test.each([
    { name: 'a sound L', ring: ell, wants: null },
    { name: 'a circle', ring: circle(0, 0, 10), wants: null },
    { name: 'a bow tie', ring: points([0, 0], [10, 10], [10, 0], [0, 10]), wants: [1, 3] },
    { name: 'a spike', ring: points([0, 0], [10, 0], [5, 0], [5, 8]), wants: [1, 2] },
    {
      name: 'a corner on another edge',
      ring: points([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]),
      wants: [1, 3],
    },
    {
      name: 'an arc through the far side',
      ring: square.map((v, i) =>
        i === 0 ? { ...v, xIn: 0, yIn: 70, bulge: -0.9 } : i === 1 ? { ...v, yIn: 70 } : v,
      ),
      wants: [1, 3],
    },
  ])('$name', ({ ring, wants }) => {
    expect(selfCrossing(ring)).toEqual(wants);
  });
});

describe('clipping lines', () => {
  const across = (yIn: number) => ({ fromXIn: 0, fromYIn: yIn, toXIn: 1, toYIn: yIn });

  test('exact: through a hole, either side of it', () => {
    const [left, right, ...more] = clipLineToOutline(across(50), withPlanter);
    expect(more).toEqual([]);
    expect(left?.fromIn).toBeCloseTo(0, 12);
    expect(left?.toIn).toBeCloseTo(30, 12);
    expect(right?.fromIn).toBeCloseTo(70, 12);
    expect(right?.toIn).toBeCloseTo(100, 12);
  });

  test('through corners: a line over the corner of the notch stays one stretch', () => {
    const slanted = { fromXIn: 0, fromYIn: 0, toXIn: 120, toYIn: 80 };
    const stretches = clipLineToOutline(slanted, { rings: [ell] });
    expect(stretches).toHaveLength(1);
    expect(stretches[0]?.toIn).toBeCloseTo(Math.hypot(120, 80), 9);
  });

  test('along an edge, beside the shape and touching a circle: nothing', () => {
    expect(clipLineToOutline(across(0), { rings: [square] })).toEqual([]);
    expect(clipLineToOutline(across(101), { rings: [square] })).toEqual([]);
    expect(clipLineToOutline(across(10), { rings: [circle(0, 0, 10)] })).toEqual([]);
  });

  test('touching a hole does not split a stretch', () => {
    expect(clipLineToOutline(across(70), withPlanter)).toHaveLength(1);
  });

  test('in an L at the height of the notch edge, only the arm is inside', () => {
    const stretches = clipLineToOutline(across(80), { rings: [ell] });
    expect(stretches).toEqual([{ fromIn: 0, toIn: 120 }]);
  });

  test('a segment keeps to its ends', () => {
    const line = { fromXIn: 40, fromYIn: 20, toXIn: 240, toYIn: 20 };
    expect(clipSegmentToOutline(line, { rings: [ell] })).toEqual([{ fromIn: 0, toIn: 160 }]);
    expect(clipSegmentToOutline({ ...line, fromXIn: 201 }, { rings: [ell] })).toEqual([]);
  });

  test('refuses a line without a direction', () => {
    expect(() => clipLineToOutline({ fromXIn: 1, fromYIn: 1, toXIn: 1, toYIn: 1 }, withPlanter)).toThrow(
      RangeError,
    );
  });
});
