import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  boundsOf,
  circleRing,
  edgeLengthsByKindIn,
  outlinePerimeterIn,
  rectangleRing,
  ringAreaSqIn,
  sectorRing,
  trapezoidRing,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const settings = { numRuns: runCount(200), seed: Number(process.env.FAST_CHECK_SEED ?? 20260504) };
const length = fc.double({ min: 1, max: 1000, noNaN: true });

describe('trapezoidRing', () => {
  const taped = { baseIn: 240, topIn: 180, depthIn: 60, offsetIn: 30 };

  test('exact: corners in their order, all formed', () => {
    expect(trapezoidRing(taped).map(({ xIn, yIn }) => [xIn, yIn])).toEqual([
      [0, 0],
      [240, 0],
      [210, 60],
      [30, 60],
    ]);
    expect(edgeLengthsByKindIn({ rings: [trapezoidRing(taped)] }).house.straightIn).toBe(0);
  });

  test('exact: equal sides without offset are a rectangle', () => {
    expect(trapezoidRing({ baseIn: 120, topIn: 120, depthIn: 48, offsetIn: 0 })).toEqual(
      rectangleRing({ lengthIn: 120, widthIn: 48 }),
    );
  });

  test('area is half the sum of the sides times the depth, whatever the offset', () => {
    const offset = fc.double({ min: -1000, max: 1000, noNaN: true });
    fc.assert(
      fc.property(length, length, length, offset, (baseIn, topIn, depthIn, offsetIn) => {
        const areaSqIn = ringAreaSqIn(trapezoidRing({ baseIn, topIn, depthIn, offsetIn }));
        expect(areaSqIn / ((depthIn * (baseIn + topIn)) / 2)).toBeCloseTo(1, 9);
      }),
      settings,
    );
  });

  test.each([
    { ...taped, baseIn: 0 },
    { ...taped, topIn: 0 },
    { ...taped, depthIn: -1 },
    { ...taped, depthIn: Infinity },
    { ...taped, baseIn: Number.NaN },
    { ...taped, offsetIn: Number.NaN },
  ])('refuses $baseIn, $topIn, $depthIn, $offsetIn', (wrong) => {
    expect(() => trapezoidRing(wrong)).toThrow(RangeError);
  });
});

describe('circleRing', () => {
  test('exact: fills a square from the origin, anticlockwise', () => {
    const ring = circleRing({ diameterIn: 96 });
    expect(boundsOf({ rings: [ring] })).toEqual({ minXIn: 0, minYIn: 0, maxXIn: 96, maxYIn: 96 });
    expect(ringAreaSqIn(ring)).toBeCloseTo(Math.PI * 48 ** 2, 9);
    expect(outlinePerimeterIn({ rings: [ring] })).toBeCloseTo(Math.PI * 96, 10);
  });

  test.each([0, -1, Infinity, Number.NaN])('refuses a diameter of %d', (diameterIn) => {
    expect(() => circleRing({ diameterIn })).toThrow(RangeError);
  });
});

describe('sectorRing', () => {
  // Published (seen): F. A. Griffiths, "The Artillerist's Manual and British Soldier's Compendium": a
  // sector of radius 30 and arc 36.6 covers 549.
  test('radius 30, arc 36.6', () => {
    const ring = sectorRing({ radiusIn: 30, angleRad: 36.6 / 30 });
    expect(ringAreaSqIn(ring)).toBeCloseTo(549, 9);
    expect(outlinePerimeterIn({ rings: [ring] })).toBeCloseTo(30 + 36.6 + 30, 9);
  });

  test('exact: a quarter has its corners on the axes', () => {
    const ring = sectorRing({ radiusIn: 60, angleRad: Math.PI / 2 });
    expect(ring.map(({ xIn, yIn }) => [xIn, yIn])).toEqual([
      [0, 0],
      [60, 0],
      [0, 60],
    ]);
    expect(ring.map(({ bulge }) => bulge === 0)).toEqual([true, false, true]);
  });

  test('area is half the angle times the radius squared, past half a turn too', () => {
    const angle = fc.double({ min: 0.01, max: 6.25, noNaN: true });
    fc.assert(
      fc.property(length, angle, (radiusIn, angleRad) => {
        const areaSqIn = ringAreaSqIn(sectorRing({ radiusIn, angleRad }));
        expect(areaSqIn / ((angleRad * radiusIn ** 2) / 2)).toBeCloseTo(1, 9);
      }),
      settings,
    );
  });

  test.each([
    { radiusIn: 0, angleRad: 1 },
    { radiusIn: Number.NaN, angleRad: 1 },
    { radiusIn: 10, angleRad: 0 },
    { radiusIn: 10, angleRad: 2 * Math.PI },
    { radiusIn: 10, angleRad: -1 },
    { radiusIn: 10, angleRad: Number.NaN },
  ])('refuses radius $radiusIn, angle $angleRad', (sector) => {
    expect(() => sectorRing(sector)).toThrow(RangeError);
  });
});
