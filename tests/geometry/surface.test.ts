import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areInLine,
  boundsOf,
  cellsWithin,
  climbAlong,
  climbTowards,
  containsPoint,
  fallOf,
  type HeightPoint,
  heightAt,
  lowered,
  type Outline,
  outlineAreaSqIn,
  planeAt,
  polygonRing,
  rectangleRing,
  reverseRing,
  surfaceThrough,
  volumeBetween,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const settings = { numRuns: runCount(25), seed: 20260504 };
const within = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });

function high(xIn: number, yIn: number, heightIn: number): HeightPoint {
  return { xIn, yIn, heightIn };
}

function through(points: readonly HeightPoint[], breaklines: readonly (readonly [number, number])[] = []) {
  const surface = surfaceThrough(points, breaklines);
  if (surface === null) throw new Error('the points are in a line');
  return surface;
}

function box(lengthIn: number, widthIn: number): Outline {
  return { rings: [rectangleRing({ lengthIn, widthIn })] };
}

/** An L with a square hole. */
const holed: Outline = {
  rings: [
    polygonRing([
      { xIn: -10, yIn: -20 },
      { xIn: 230, yIn: -20 },
      { xIn: 230, yIn: 60 },
      { xIn: 90, yIn: 60 },
      { xIn: 90, yIn: 190 },
      { xIn: -10, yIn: 190 },
    ]),
    reverseRing(
      polygonRing([
        { xIn: 20, yIn: 10 },
        { xIn: 50, yIn: 10 },
        { xIn: 50, yIn: 40 },
        { xIn: 20, yIn: 40 },
      ]),
    ),
  ],
};

/** Points on a grid pushed about, so that none comes near another, with any heights. */
const scattered = fc.array(fc.record({ dx: within(-20, 20), dy: within(-20, 20), z: within(1180, 1230) }), {
  minLength: 9,
  maxLength: 9,
});
const surfaces = scattered.map((spots) =>
  through(
    spots.map(({ dx, dy, z }, index) => high((index % 3) * 90 + dx, Math.floor(index / 3) * 90 + dy, z)),
  ),
);

const planes = fc.record({ z: within(-50, 1300), x: within(-0.2, 0.2), y: within(-0.2, 0.2) });

/** The middles of small squares: a way to integrate that knows nothing of triangles. */
function summed(outline: Outline, valueAt: (point: { xIn: number; yIn: number }) => number, stepIn: number) {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(outline);
  let sum = 0;
  for (let xIn = minXIn + stepIn / 2; xIn < maxXIn; xIn += stepIn) {
    for (let yIn = minYIn + stepIn / 2; yIn < maxYIn; yIn += stepIn) {
      const point = { xIn, yIn };
      if (containsPoint(outline, point)) sum += valueAt(point) * stepIn * stepIn;
    }
  }
  return sum;
}

describe('a surface through points', () => {
  // Exact: the plane through (0, 0, 100), (20, 0, 99.8), (0, 30, 99.4) has z = 100 - x/100 - y/50.
  test('exact: three points make a plane, inside and outside of them', () => {
    const surface = through([high(0, 0, 100), high(20, 0, 99.8), high(0, 30, 99.4)]);
    expect(heightAt(surface, { xIn: 10, yIn: 15 })).toBeCloseTo(99.6, 12);
    expect(heightAt(surface, { xIn: -40, yIn: 60 })).toBeCloseTo(99.2, 12);
    expect(heightAt(surface, { xIn: 300, yIn: 200 })).toBeCloseTo(93, 12);
    const { slope, towardsRad } = fallOf(planeAt(surface, { xIn: 500, yIn: -500 }));
    expect(slope).toBeCloseTo(Math.sqrt(0.0005), 14);
    expect(Math.tan(towardsRad)).toBeCloseTo(2, 10);
    expect(Math.cos(towardsRad)).toBeGreaterThan(0);
    expect(climbTowards(planeAt(surface, { xIn: 1, yIn: 1 }), towardsRad)).toBeCloseTo(-slope, 14);
    expect(climbAlong(surface, { from: { xIn: 0, yIn: 0 }, to: { xIn: 0, yIn: 50 } })).toBeCloseTo(-0.02, 14);
    expect(climbAlong(surface, { from: { xIn: 0, yIn: 50 }, to: { xIn: 0, yIn: 0 } })).toBeCloseTo(0.02, 14);
  });

  test('invariant: points on a plane change nothing of it, wherever one looks', () => {
    fc.assert(
      fc.property(planes, scattered, within(-300, 500), within(-300, 500), (plane, spots, xIn, yIn) => {
        const on = (x: number, y: number) => high(x, y, plane.z + plane.x * x + plane.y * y);
        const surface = through(
          spots.map(({ dx, dy }, index) => on((index % 3) * 90 + dx, Math.floor(index / 3) * 90 + dy)),
        );
        expect(heightAt(surface, { xIn, yIn })).toBeCloseTo(on(xIn, yIn).heightIn, 8);
      }),
      settings,
    );
  });

  test('invariant: it runs through its points, and lower by a thickness it is lower everywhere', () => {
    fc.assert(
      fc.property(surfaces, within(-100, 300), within(-100, 300), (surface, xIn, yIn) => {
        for (const corner of surface.triangles.flat()) {
          expect(heightAt(surface, corner)).toBeCloseTo(corner.heightIn, 8);
        }
        const at = { xIn, yIn };
        expect(heightAt(lowered(surface, 4), at)).toBeCloseTo(heightAt(surface, at) - 4, 8);
      }),
      settings,
    );
  });

  // Exact: over four corners of a warped square the middle lies on the diagonal that is an edge.
  test('exact: a breakline decides which way a warped square is folded', () => {
    const corners = [high(0, 0, 0), high(100, 0, 4), high(100, 100, 0), high(0, 100, 4)];
    const middle = { xIn: 50, yIn: 50 };
    expect(heightAt(through(corners, [[0, 2]]), middle)).toBeCloseTo(0, 12);
    expect(heightAt(through(corners, [[1, 3]]), middle)).toBeCloseTo(4, 12);
  });

  test('exact: a long breakline turns every edge in its way', () => {
    const pairs = [0, 1, 2, 3, 4].flatMap((step) => [
      high(20 + step * 40, 12 + step, 10),
      high(30 + step * 40, -12 - step, 10),
    ]);
    const surface = through([high(0, 0, 0), high(240, 0, 0), ...pairs], [[0, 1]]);
    for (const xIn of [1, 60, 120, 200, 239]) {
      expect(heightAt(surface, { xIn, yIn: 0 })).toBeCloseTo(0, 9);
    }
    const areaSqIn = surface.triangles.reduce((sum, [a, b, c]) => {
      const twice = (b.xIn - a.xIn) * (c.yIn - a.yIn) - (b.yIn - a.yIn) * (c.xIn - a.xIn);
      expect(twice).toBeGreaterThan(0);
      return sum + twice / 2;
    }, 0);
    // Exact: the hull is (0, 0), (30, -12), (190, -16), (240, 0), (180, 16), (20, 12).
    expect(areaSqIn).toBeCloseTo(5660, 9);
  });

  // Exact: ground that falls 0.01 to the right and 0.02 away from a wall, with a reading 3/4 in off the line of
  // the wall that is 2 in low. The triangle between them falls 2 in on 3/4 in; the ground out there does not.
  test('exact: past a point that stands nearly on an edge the ground behind it goes on', () => {
    const ground = (xIn: number, yIn: number) => high(xIn, yIn, 1200 - xIn / 100 - yIn / 50);
    const wall = [ground(0, 0), ground(100, 0), ground(200, 0)];
    const yard = [ground(0, 150), ground(200, 150), ground(100, 100)];
    const out = [-90, 5, 60, 100, 140, 195, 290].flatMap((xIn) => [
      { xIn, yIn: -1 },
      { xIn, yIn: -120 },
    ]);
    for (const offIn of [0, 1e-11, 1e-6, 0.75, 1]) {
      const surface = through([
        ground(0, 0),
        high(100, offIn, ground(100, offIn).heightIn),
        ground(200, 0),
        ...yard,
      ]);
      const straight = through([...wall, ...yard]);
      for (const at of out) expect(heightAt(surface, at)).toBeCloseTo(heightAt(straight, at), 6);
    }
    // As with the low reading on the wall itself: it makes the yard lean, and the lean goes on.
    for (const offIn of [1e-9, 1e-3, 0.01]) {
      const surface = through([ground(0, 0), high(100, offIn, 1197), ground(200, 0), ...yard]);
      const straight = through([ground(0, 0), high(100, 0, 1197), ground(200, 0), ...yard]);
      for (const at of out) {
        expect(Math.abs(heightAt(surface, at) - heightAt(straight, at))).toBeLessThan(offIn);
      }
    }
  });

  test('invariant: out of the hull it never leans more than a triangle that is no sliver', () => {
    const nearlyOn = fc.array(
      fc.record({ t: within(0.1, 0.9), off: within(-0.4, 0.4), z: within(1195, 1205) }),
      {
        minLength: 1,
        maxLength: 4,
      },
    );
    fc.assert(
      fc.property(nearlyOn, within(-300, 500), within(-300, -1), (points, xIn, yIn) => {
        const along = points.map(({ t, off, z }) => high(200 * t, off, z));
        const apart = along.filter((one, index) =>
          along.every((other, at) => at >= index || Math.abs(one.xIn - other.xIn) > 12),
        );
        const surface = through([
          high(0, 0, 1200),
          ...apart,
          high(200, 0, 1200),
          high(0, 150, 1200),
          high(200, 150, 1200),
        ]);
        // Over 12 in along the wall and 149 in away from it, heights differ by 10 in at most.
        expect(fallOf(planeAt(surface, { xIn, yIn })).slope).toBeLessThan(1);
      }),
      settings,
    );
  });

  test('many readings along a wall, all a little off its line, and a cluster of them, lean the ground out there not', () => {
    const off = (index: number) => ((index * 37) % 19) / 20 - 0.45;
    const wall = Array.from({ length: 120 }, (_, index) =>
      high(8 + index * 2, off(index), 1200 + off(index * 5 + 7)),
    );
    const cluster = Array.from({ length: 25 }, (_, index) =>
      high(300 + (index % 5) * 0.2 + off(index) / 50, Math.floor(index / 5) * 0.2, 1200),
    );
    const yard = [high(0, 300, 1194), high(400, 300, 1194)];
    const surface = through([high(0, 0, 1200), ...wall, ...cluster, high(400, 0, 1200), ...yard]);
    // The yard falls 6 in on 300; readings 2 in apart differ by 0.9 in at most.
    for (let xIn = -100; xIn <= 500; xIn += 7) {
      for (const yIn of [-2, -50, -400]) {
        expect(fallOf(planeAt(surface, { xIn, yIn })).slope).toBeLessThan(0.7);
      }
    }
  });

  test('what counts is how far a reading stands off the edge of the hull, also behind another one', () => {
    const around = [high(0, 0, 1200), high(200, 0, 1200), high(0, 150, 1200), high(200, 150, 1200)];
    const low = (offIn: number) => through([...around, high(100, 0.9, 1200), high(50, offIn, 1195)]);
    const slope = (offIn: number) => fallOf(planeAt(low(offIn), { xIn: 50, yIn: -10 })).slope;
    // 5 in low: 0.95 in off, it is on the edge, and the lean is that along the wall; 1.3 in off, the plane through
    // (0, 0), (50, 1.3) and (100, 0.9) counts: 5 in over 1.3 - 0.45.
    expect(slope(0.95)).toBeLessThan(0.2);
    expect(slope(1.3)).toBeCloseTo(Math.hypot(5 / 0.85, (5 / 0.85) * 0.009), 6);
  });

  test('points within an inch of a line hold no surface', () => {
    expect(surfaceThrough([high(0, 0, 1), high(100, 0, 2)])).toBeNull();
    expect(surfaceThrough([high(0, 0, 1), high(100, 0, 2), high(50, 1, 3)])).toBeNull();
    expect(surfaceThrough([high(0, 0, 1), high(100, 0, 2), high(50, 1.01, 3)])).not.toBeNull();
    expect(areInLine([])).toBe(true);
  });

  test.each([
    { what: 'two at one place', points: [high(0, 0, 1), high(0.05, 0, 1), high(9, 9, 1)] },
    { what: 'no number', points: [high(0, 0, Number.NaN), high(9, 0, 1), high(9, 9, 1)] },
    { what: 'no place', points: [high(0, 0, 1), high(Infinity, 0, 1), high(9, 9, 1)] },
  ])('refuses points: $what', ({ points }) => {
    expect(() => surfaceThrough(points)).toThrow(RangeError);
  });
});

describe('volume between two surfaces', () => {
  test('invariant: it is what small squares add up to, above and below apart', () => {
    fc.assert(
      fc.property(surfaces, surfaces, (upper, lower) => {
        const volume = volumeBetween({ upper, lower }, holed);
        const apartIn = (at: { xIn: number; yIn: number }) => heightAt(upper, at) - heightAt(lower, at);
        const above = summed(holed, (at) => Math.max(0, apartIn(at)), 5);
        const below = summed(holed, (at) => Math.max(0, -apartIn(at)), 5);
        // Squares of 5 in miss a little along every fold: 0.2 % of the area by the largest distance between them.
        const corners = cellsWithin(upper, holed).concat(cellsWithin(lower, holed));
        const mostIn = Math.max(50, ...corners.map(({ middle }) => Math.abs(apartIn(middle))));
        const mostOff = 0.002 * outlineAreaSqIn(holed) * mostIn;
        expect(Math.abs(volume.aboveCuIn - above)).toBeLessThan(mostOff);
        expect(Math.abs(volume.belowCuIn - below)).toBeLessThan(mostOff);
        // To 0.01 %: a triangle a hair wide and inches high has few digits left.
        const turned = volumeBetween({ upper: lower, lower: upper }, holed);
        const noiseCuIn = 1e-4 * (volume.aboveCuIn + volume.belowCuIn);
        expect(Math.abs(turned.aboveCuIn - volume.belowCuIn)).toBeLessThan(noiseCuIn);
        expect(Math.abs(turned.belowCuIn - volume.aboveCuIn)).toBeLessThan(noiseCuIn);
      }),
      { ...settings, numRuns: runCount(5) },
    );
  });

  test('exact: a surface and itself lower by 6 in hold the area times 6 in, arcs too', () => {
    const rounded: Outline = {
      rings: [rectangleRing({ lengthIn: 120, widthIn: 60 }).map((corner) => ({ ...corner, bulge: 0.2 }))],
    };
    const upper = through([high(0, 0, 3), high(70, 11, 9), high(40, 50, -2), high(110, 45, 4)]);
    const { aboveCuIn, belowCuIn } = volumeBetween({ upper, lower: lowered(upper, 6) }, rounded);
    expect(aboveCuIn).toBeCloseTo(6 * outlineAreaSqIn(rounded), 6);
    expect(belowCuIn).toBe(0);
  });

  // Exact: a plane that crosses another along the middle line leaves two wedges, a b²/8 tan each.
  test('exact: what is above does not cancel what is below', () => {
    const level = through([high(0, 0, 0), high(100, 0, 0), high(0, 100, 0)]);
    const tilted = through([high(0, 0, -5), high(100, 0, 5), high(0, 100, -5)]);
    const { aboveCuIn, belowCuIn } = volumeBetween({ upper: tilted, lower: level }, box(100, 40));
    expect(aboveCuIn).toBeCloseTo(((50 * 5) / 2) * 40, 8);
    expect(belowCuIn).toBeCloseTo(((50 * 5) / 2) * 40, 8);
  });

  test('exact: the parts of a surface within an outline fill it', () => {
    const surface = through([high(0, 0, 3), high(70, 11, 9), high(40, 50, -2), high(110, 45, 4)]);
    const parts = cellsWithin(surface, holed);
    expect(parts.reduce((sum, { areaSqIn }) => sum + areaSqIn, 0)).toBeCloseTo(outlineAreaSqIn(holed), 6);
    for (const axis of ['xIn', 'yIn'] as const) {
      const moment = parts.reduce((sum, { areaSqIn, middle }) => sum + areaSqIn * middle[axis], 0);
      expect(moment).toBeCloseTo(
        summed(holed, (at) => at[axis], 10),
        4,
      );
    }
  });
});
