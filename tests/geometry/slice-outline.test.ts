import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaLeftOfSqIn, lineOfAreaXIn } from '../../src/geometry/area-left.ts';
import {
  boundsOf,
  circleRing,
  containsPoint,
  distanceToEdgeIn,
  moveOutline,
  type Outline,
  outlineAreaSqIn,
  overlapAreaSqIn,
  polygonRing,
  type Ring,
  rectangleRing,
  reverseRing,
  type Slice,
  selfCrossing,
  sliceDirectionDeg,
  sliceOutline,
  turnOutline,
  withEdgeKinds,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const seed = Number(process.env['FAST_CHECK_SEED'] ?? 20260504);
/** A millionth of a square foot [in²]. */
const NEAR_SQ_IN = 144e-6;

const box = (lengthIn: number, widthIn: number): Outline => ({
  rings: [rectangleRing({ lengthIn, widthIn })],
});
const disc: Outline = { rings: [circleRing({ diameterIn: 200 })] };
const equal = (outline: Outline, count: number) =>
  Array.from({ length: count }, () => outlineAreaSqIn(outline) / count);
const xsOf = (slices: readonly Slice[]) => slices.map(({ lines }) => lines.map(({ from }) => from.xIn));

describe('areaLeftOfSqIn', () => {
  // Regression: an arc that touches the line in its middle was left out, with the area between it and the line.
  test('an arc lies left of a line that touches it in its middle', () => {
    const bowed = {
      rings: [
        rectangleRing({ lengthIn: 100, widthIn: 80 }).map((corner, at) =>
          at === 1 ? { ...corner, bulge: 0.1 } : corner,
        ),
      ],
    };
    const { maxXIn } = boundsOf(bowed);
    expect(maxXIn).toBeCloseTo(104, 12);
    for (const turnDeg of [0, 37, 90, 180, -180, 211]) {
      const turned = turnOutline(turnOutline(bowed, turnDeg), -turnDeg);
      const touchIn = boundsOf(turned).maxXIn;
      for (const offIn of [-1e-13, 0, 1e-13]) {
        expect(areaLeftOfSqIn(turned, touchIn + offIn)).toBeCloseTo(outlineAreaSqIn(bowed), 6);
      }
    }
  });

  // Published (seen): E. W. Weisstein, "Quarter-Tank Problem", MathWorld: a circle is a quarter full at
  // h/R = 0.596027..., digits cut off; the area there grows by 1.83 R a unit of h.
  test('a quarter of the circle lies left of 0.596027 R', () => {
    const shortBySqIn = (Math.PI * 100 ** 2) / 4 - areaLeftOfSqIn(disc, 59.6027);
    expect(shortBySqIn).toBeGreaterThanOrEqual(0);
    expect(shortBySqIn).toBeLessThan(1e-4 * 183);
  });

  test('exact: half of a disc, of a ring, of a box with a slanted end', () => {
    expect(areaLeftOfSqIn(disc, 100)).toBeCloseTo((Math.PI * 100 ** 2) / 2, 8);
    const hole = reverseRing(
      moveOutline({ rings: [circleRing({ diameterIn: 80 })] }, { dxIn: 60, dyIn: 60 }).rings[0] ?? [],
    );
    const ring = { rings: [...disc.rings, hole] };
    expect(areaLeftOfSqIn(ring, 100)).toBeCloseTo((Math.PI * (100 ** 2 - 40 ** 2)) / 2, 8);
    expect(areaLeftOfSqIn(ring, 60)).toBeCloseTo(areaLeftOfSqIn(disc, 60), 8);
    const wedge = {
      rings: [
        polygonRing(
          [
            [0, 0],
            [100, 0],
            [60, 40],
            [0, 40],
          ].map(([x = 0, y = 0]) => ({ xIn: x, yIn: y })),
        ),
      ],
    };
    // Left of 80: 60 by 40, and a trapezoid 20 wide, 40 and 20 high.
    expect(areaLeftOfSqIn(wedge, 80)).toBeCloseTo(60 * 40 + 600, 9);
  });

  test('nothing lies left of the outline, and all of it left of its far side', () => {
    expect(areaLeftOfSqIn(disc, 0)).toBeCloseTo(0, 9);
    expect(areaLeftOfSqIn(disc, -5)).toBe(0);
    expect(areaLeftOfSqIn(disc, 200)).toBeCloseTo(outlineAreaSqIn(disc), 8);
  });

  // A rise of 1 in 10,000 of the chord: the radius is 1250 chords, and its square must not eat the digits.
  test('exact: a very flat arc adds two thirds of chord and rise, near enough', () => {
    const [corner, ...rest] = rectangleRing({ lengthIn: 2400, widthIn: 100 });
    if (corner === undefined) throw new Error('a rectangle has corners');
    const bent: Outline = { rings: [[{ ...corner, bulge: 2e-4 }, ...rest]] };
    const segmentSqIn = (2 / 3) * 2400 * 0.24;
    expect(areaLeftOfSqIn(bent, 2400) - 240_000).toBeCloseTo(segmentSqIn, 3);
    expect(areaLeftOfSqIn(bent, 1200) - 120_000).toBeCloseTo(segmentSqIn / 2, 3);
  });

  test('refuses an area that the outline has not', () => {
    for (const areaSqIn of [0, -1, 10_001, Number.NaN]) {
      expect(() => lineOfAreaXIn(box(100, 100), areaSqIn), String(areaSqIn)).toThrow(/areaSqIn/);
    }
    expect(lineOfAreaXIn(box(100, 100), 9_999)).toBeCloseTo(99.99, 6);
  });
});

describe('sliceOutline', () => {
  test('exact: a box in five, its lines from side to side', () => {
    const slices = sliceOutline({
      outline: box(432, 216),
      towardsDeg: 0,
      areasSqIn: equal(box(432, 216), 5),
    });
    expect(xsOf(slices).flat()).toEqual([86.4, 172.8, 259.2, 345.6].map((xIn) => expect.closeTo(xIn, 6)));
    expect(slices[0]?.lines).toEqual([]);
    for (const { lines } of slices.slice(1)) {
      expect(lines.map(({ from, to }) => [from.yIn, to.yIn])).toEqual([
        [expect.closeTo(0, 9), expect.closeTo(216, 9)],
      ]);
    }
  });

  test('exact: unequal slices, from the other end', () => {
    const slices = sliceOutline({ outline: box(100, 10), towardsDeg: 180, areasSqIn: [100, 300, 600] });
    expect(xsOf(slices).flat()).toEqual([expect.closeTo(90, 6), expect.closeTo(60, 6)]);
    // Seen towards the left, the right hand is up.
    expect(slices[1]?.lines[0]?.from.yIn).toBeCloseTo(10, 9);
    expect(slices[1]?.lines[0]?.to.yIn).toBeCloseTo(0, 9);
  });

  test('a line through a hole stops at it and goes on behind it', () => {
    const hole = reverseRing(moveOutline(box(20, 20), { dxIn: 40, dyIn: 40 }).rings[0] ?? []);
    const outline: Outline = { rings: [...box(100, 100).rings, hole] };
    const [, second] = sliceOutline({ outline, towardsDeg: 0, areasSqIn: equal(outline, 2) });
    const spans = second?.lines.map(({ from, to }) => [from.yIn, to.yIn].map((yIn) => Math.round(yIn)));
    expect(spans).toEqual([
      [0, 40],
      [60, 100],
    ]);
  });

  test('a slice in two pieces has its label in the larger', () => {
    // Two legs on a bar at the left, one 30 and one 10 wide.
    const points = [
      [0, 0],
      [100, 0],
      [100, 30],
      [20, 30],
      [20, 90],
      [100, 90],
      [100, 100],
      [0, 100],
    ];
    const outline = { rings: [polygonRing(points.map(([x = 0, y = 0]) => ({ xIn: x, yIn: y })))] };
    const [, legs] = sliceOutline({ outline, towardsDeg: 0, areasSqIn: [3600, 1600] });
    expect(legs?.lines).toHaveLength(2);
    expect(legs?.label.yIn).toBeGreaterThan(0);
    expect(legs?.label.yIn).toBeLessThan(30);
  });

  test('one area is the whole: no line', () => {
    expect(sliceOutline({ outline: disc, towardsDeg: 30, areasSqIn: equal(disc, 1) })).toEqual([
      { lines: [], label: { xIn: expect.closeTo(100, 3), yIn: expect.closeTo(100, 3) } },
    ]);
  });

  test.each([
    ['no areas', []],
    ['an area of 0', [0, 1000]],
    ['one below 0', [-1, 1001]],
    ['NaN', [Number.NaN]],
    ['too little', [400, 599]],
    ['too much', [400, 601]],
  ])('refuses %s', (_, areasSqIn) => {
    expect(() => sliceOutline({ outline: box(100, 10), towardsDeg: 0, areasSqIn })).toThrow(/areasSqIn/);
  });
});

/** A star about a point: never crosses itself, edges bulge a little either way. */
function starRing(aboutIn: number, leastIn: number, mostIn: number): fc.Arbitrary<Ring> {
  const spoke = fc.record({
    shareOut: fc.double({ min: 0, max: 1, noNaN: true }),
    bulge: fc.constantFrom(0, 0, 0.1, -0.1, 0.2, -0.05, 1e-4),
  });
  return fc
    .array(spoke, { minLength: 5, maxLength: 8 })
    .map(
      (spokes): Ring =>
        spokes.map(({ shareOut, bulge }, index) => {
          const directionRad = (index * 2 * Math.PI) / spokes.length;
          const outIn = leastIn + shareOut * (mostIn - leastIn);
          return {
            xIn: aboutIn + outIn * Math.cos(directionRad),
            yIn: aboutIn + outIn * Math.sin(directionRad),
            bulge,
            edge: 'formed',
          };
        }),
    )
    .filter((ring) => selfCrossing(ring) === null);
}

const cuts = fc.record({
  outline: fc
    .tuple(starRing(5, 150, 400), starRing(10, 10, 40), fc.boolean())
    .map(([outer, hole, hasHole]): Outline => ({ rings: hasHole ? [outer, reverseRing(hole)] : [outer] })),
  towardsDeg: fc.integer({ min: -180, max: 180 }),
  shares: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 5 }),
});

test('invariant: slices have their areas and add up; every line lies inside, every label in its slice', () => {
  fc.assert(
    fc.property(cuts, ({ outline, towardsDeg, shares }) => {
      const wholeSqIn = outlineAreaSqIn(outline);
      const sum = shares.reduce((total, share) => total + share, 0);
      const areasSqIn = shares.map((share) => (wholeSqIn * share) / sum);
      const turned = turnOutline(outline, -towardsDeg);
      const slices = sliceOutline({ outline, towardsDeg, areasSqIn });
      expect(slices).toHaveLength(shares.length);
      const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(turned);
      const alongIn = ({ xIn, yIn }: { readonly xIn: number; readonly yIn: number }) =>
        xIn * Math.cos((towardsDeg * Math.PI) / 180) + yIn * Math.sin((towardsDeg * Math.PI) / 180);
      const startsIn = slices.map(({ lines: [first] }) =>
        first === undefined ? minXIn : alongIn(first.from),
      );
      for (const [index, { lines, label }] of slices.entries()) {
        const fromIn = startsIn[index] ?? Number.NaN;
        const toIn = startsIn[index + 1] ?? maxXIn;
        const areaSqIn = areaLeftOfSqIn(turned, toIn) - areaLeftOfSqIn(turned, fromIn);
        expect(Math.abs(areaSqIn - (areasSqIn[index] ?? 0))).toBeLessThan(NEAR_SQ_IN);
        // A second opinion: the band between the two lines, clipped by a library that takes chords for arcs.
        const band = moveOutline(
          { rings: [rectangleRing({ lengthIn: toIn - fromIn, widthIn: maxYIn - minYIn + 2 })] },
          { dxIn: fromIn, dyIn: minYIn - 1 },
        );
        expect(Math.abs(overlapAreaSqIn(turned, band) - areaSqIn)).toBeLessThan(1);

        expect(containsPoint(outline, label)).toBe(true);
        expect(alongIn(label)).toBeGreaterThan(fromIn);
        expect(alongIn(label)).toBeLessThan(toIn);
        expect(lines.length > 0).toBe(index > 0);
        for (const { from, to } of lines) {
          for (const end of [from, to]) {
            expect(distanceToEdgeIn(outline, end)).toBeLessThan(1e-6);
            expect(alongIn(end)).toBeCloseTo(fromIn, 6);
          }
          for (const share of [0.01, 0.5, 0.99]) {
            const xIn = from.xIn + (to.xIn - from.xIn) * share;
            const yIn = from.yIn + (to.yIn - from.yIn) * share;
            expect(containsPoint(outline, { xIn, yIn })).toBe(true);
          }
        }
      }
    }),
    { numRuns: runCount(15), seed },
  );
});

describe('sliceDirectionDeg', () => {
  const directionOf = (outline: Outline, count = 4) =>
    sliceDirectionDeg({ outline, areasSqIn: equal(outline, count), awayFrom: ['house', 'stays'] });

  test('along the long side of a box, from the left or from below', () => {
    expect(directionOf(box(400, 200))).toBeCloseTo(0, 9);
    expect(directionOf(box(200, 400))).toBeCloseTo(90, 9);
    expect(directionOf(turnOutline(box(400, 200), 90 + 1e-9))).toBeCloseTo(90, 6);
    expect(directionOf(turnOutline(box(400, 200), 30))).toBeCloseTo(30, 9);
    expect(directionOf(turnOutline(box(400, 200), 120))).toBeCloseTo(-60, 9);
  });

  // Edge 2 is the right end, edge 4 the left one.
  test.each([
    [2, 0],
    [4, 180],
  ])('with the house along edge %i, towards %i degrees: from the other end', (edge, towardsDeg) => {
    for (const kind of ['house', 'stays'] as const) {
      const ring = withEdgeKinds(box(400, 200).rings[0] ?? [], new Map([[edge, kind]]));
      expect(directionOf({ rings: [ring] })).toBeCloseTo(towardsDeg, 9);
    }
  });

  test('a house along the whole side, or a joint at an end, turns nothing round', () => {
    const kinds = new Map([
      [1, 'house'],
      [4, 'joint'],
      [2, 'joint'],
    ] as const);
    expect(directionOf({ rings: [withEdgeKinds(box(400, 200).rings[0] ?? [], kinds)] })).toBeCloseTo(0, 9);
  });

  test('a bent walk goes from end to end, across the corner', () => {
    const points = [
      [0, 0],
      [300, 0],
      [300, 40],
      [40, 40],
      [40, 300],
      [0, 300],
    ];
    const walk = { rings: [polygonRing(points.map(([x = 0, y = 0]) => ({ xIn: x, yIn: y })))] };
    expect(directionOf(walk)).toBeCloseTo(-45, 6);
    expect(directionOf(turnOutline(walk, 90))).toBeCloseTo(45, 6);
  });

  test('a bump on a long side turns nothing', () => {
    const points = [
      [0, 0],
      [400, 0],
      [400, 100],
      [60, 100],
      [60, 130],
      [20, 130],
      [20, 100],
      [0, 100],
    ];
    const bumped = { rings: [polygonRing(points.map(([x = 0, y = 0]) => ({ xIn: x, yIn: y })))] };
    expect(directionOf(bumped)).toBeCloseTo(0, 9);
  });

  test('of two sides that are not parallel the longer one leads, though across the axis lines are shorter', () => {
    const points = [
      [0, 0],
      [400, 0],
      [400, 160],
      [0, 100],
    ];
    const tapered = { rings: [polygonRing(points.map(([x = 0, y = 0]) => ({ xIn: x, yIn: y })))] };
    expect(directionOf(tapered)).toBeCloseTo((Math.atan2(60, 400) * 180) / Math.PI, 9);
  });

  test('a slanted end and a notch leave it along the sides, though the axis leans', () => {
    const points = [
      [0, 0],
      [400, 0],
      [320, 120],
      [120, 120],
      [120, 60],
      [0, 60],
    ];
    const leaning = { rings: [polygonRing(points.map(([x = 0, y = 0]) => ({ xIn: x, yIn: y })))] };
    expect(directionOf(leaning)).toBeCloseTo(0, 9);
  });

  test('without a straight edge it is the long axis', () => {
    const bean = (xIn: number, yIn: number, bulge: number) => ({ xIn, yIn, bulge, edge: 'formed' as const });
    const lens: Outline = { rings: [[bean(0, 0, 0.4), bean(200, 200, 0.4)]] };
    expect(directionOf(lens)).toBeCloseTo(45, 6);
    expect(directionOf(disc)).toBe(0);
  });
});
