import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcOf,
  boundsOf,
  containsPoint,
  distanceIn,
  distanceToEdgeIn,
  distanceToOneEdgeIn,
  labelPointOf,
  type Outline,
  type Point,
  pointOnArc,
  rectangleRing,
  turnOutline,
  type Vertex,
} from '../../src/geometry/index.ts';
import { anyShape, aSlab, at, outlined, propertyRuns } from '../calculate/slabs.ts';

/** The most room of the points of a coarse grid, each looked at in full. */
function mostRoomOnGridIn(outline: Outline): number {
  const { minXIn, minYIn, maxXIn, maxYIn } = boundsOf(outline);
  const along = (leastIn: number, mostIn: number) =>
    Array.from({ length: 16 }, (_, step) => leastIn + ((mostIn - leastIn) * step) / 15);
  const inside = along(minXIn, maxXIn)
    .flatMap((xIn) => along(minYIn, maxYIn).map((yIn) => ({ xIn, yIn })))
    .filter((point) => containsPoint(outline, point));
  return Math.max(0, ...inside.map((point) => distanceToEdgeIn(outline, point)));
}

describe('where a label has most room', () => {
  test('property: inside, as far from the edges as it says, and no point of a coarse grid has more room', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const outline = at(outlined(aSlab({ shape })).outlines, 'drive');
        const point = labelPointOf(outline);
        expect(containsPoint(outline, point)).toBe(true);
        expect(point.clearanceIn).toBeCloseTo(distanceToEdgeIn(outline, point), 9);
        expect(point.clearanceIn).toBeGreaterThanOrEqual(mostRoomOnGridIn(outline) * (1 - 1e-9));
      }),
      propertyRuns,
    );
  });

  test('property: the same in a narrow one that lies askew, where the next place of the grid is outside', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: 900 }),
        fc.integer({ min: 8, max: 40 }),
        fc.integer({ min: 1, max: 89 }),
        (lengthIn, widthIn, turnDeg) => {
          const outline = turnOutline({ rings: [rectangleRing({ lengthIn, widthIn })] }, turnDeg);
          const { clearanceIn } = labelPointOf(outline);
          expect(clearanceIn).toBeGreaterThanOrEqual(mostRoomOnGridIn(outline) * (1 - 1e-9));
          expect(clearanceIn).toBeLessThanOrEqual(widthIn / 2 + 1e-9);
        },
      ),
      propertyRuns,
    );
  });
});

const place = fc.record({
  xIn: fc.double({ min: -100, max: 100, noNaN: true }),
  yIn: fc.double({ min: -100, max: 100, noNaN: true }),
});
const bulge = fc.double({ min: 0.05, max: 4, noNaN: true }).chain((size) => fc.constantFrom(size, -size));

describe('how far a point is from an arc', () => {
  test('property: as far as the nearest of many points of it, flat and more than a half circle, either way round', () => {
    fc.assert(
      fc.property(place, place, bulge, place, (start, to, bend, point) => {
        fc.pre(distanceIn(start, to) > 1);
        const from: Vertex = { ...start, bulge: bend, edge: 'formed' };
        const arc = arcOf(from, to);
        const count = 2000;
        const nearestIn = Array.from({ length: count + 1 }, (_, step): Point => pointOnArc(arc, step / count))
          .map((on) => distanceIn(on, point))
          .reduce((least, offIn) => Math.min(least, offIn), Infinity);
        const offIn = distanceToOneEdgeIn({ from, to: { ...to, bulge: 0, edge: 'formed' } }, point);
        const stepIn = (arc.radiusIn * Math.abs(arc.sweepRad)) / count;
        expect(offIn).toBeLessThanOrEqual(nearestIn + 1e-6);
        expect(offIn).toBeGreaterThanOrEqual(nearestIn - stepIn);
      }),
      propertyRuns,
    );
  });

  test('property: the box round an arc holds all of it, and each of its sides is touched', () => {
    fc.assert(
      fc.property(place, place, bulge, (start, to, bend) => {
        fc.pre(distanceIn(start, to) > 1);
        const from: Vertex = { ...start, bulge: bend, edge: 'formed' };
        const end: Vertex = { ...to, bulge: 0, edge: 'formed' };
        const { minXIn, minYIn, maxXIn, maxYIn } = boundsOf({ rings: [[from, end]] });
        const arc = arcOf(from, to);
        const on = Array.from({ length: 4001 }, (_, step) => pointOnArc(arc, step / 4000));
        // Between two points an arc rises above their chord by less than this.
        const hairIn = (arc.radiusIn * (arc.sweepRad / 4000) ** 2) / 8 + 1e-6 * arc.radiusIn;
        const most = (of: (point: Point) => number) =>
          on.reduce((found, point) => Math.max(found, of(point)), -Infinity);
        expect(Math.abs(maxXIn - most(({ xIn }) => xIn))).toBeLessThan(hairIn);
        expect(Math.abs(maxYIn - most(({ yIn }) => yIn))).toBeLessThan(hairIn);
        expect(Math.abs(-minXIn - most(({ xIn }) => -xIn))).toBeLessThan(hairIn);
        expect(Math.abs(-minYIn - most(({ yIn }) => -yIn))).toBeLessThan(hairIn);
      }),
      propertyRuns,
    );
  });
});
