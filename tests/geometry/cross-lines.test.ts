import { describe, expect, test } from 'vitest';
import {
  crossLines,
  distanceIn,
  largestBreak,
  polygonRing,
  rectangleRing,
  surfaceThrough,
} from '../../src/geometry/index.ts';

const at = (xIn: number, yIn: number) => ({ xIn, yIn });
const point = (xIn: number, yIn: number, heightIn: number) => ({ xIn, yIn, heightIn });

describe('lines across a walk', () => {
  test('exact: of a walk of 20 by 4 ft one every two feet from each long edge, all 4 ft long', () => {
    const lines = crossLines({ rings: [rectangleRing({ lengthIn: 240, widthIn: 48 })] });
    expect(lines).toHaveLength(20);
    for (const { from, to } of lines) {
      expect(distanceIn(from, to)).toBeCloseTo(48, 9);
      expect(from.xIn).toBeCloseTo(to.xIn, 9);
    }
  });

  test('exact: round a corner they turn with it, and none runs along a leg', () => {
    // An L of two legs, 4 ft wide.
    const ell = polygonRing([at(0, 0), at(240, 0), at(240, 240), at(192, 240), at(192, 48), at(0, 48)]);
    const lines = crossLines({ rings: [ell] });
    const directions = new Set(lines.map(({ from, to }) => Math.round(Math.abs(to.xIn - from.xIn))));
    expect(directions).toEqual(new Set([0, 48]));
  });

  test('exact: of a panel that is nearly square the shorter way is across', () => {
    const lines = crossLines({ rings: [rectangleRing({ lengthIn: 60, widthIn: 48 })] });
    expect(lines.every(({ from, to }) => Math.abs(distanceIn(from, to) - 48) < 1e-9)).toBe(true);
  });
});

describe('how much a surface bends', () => {
  const outline = { rings: [rectangleRing({ lengthIn: 200, widthIn: 100 })] };
  /** @throws {Error} If there is none. */
  const through = (points: readonly ReturnType<typeof point>[]) => {
    const surface = surfaceThrough(points);
    if (surface === null) throw new Error('no surface');
    return surface;
  };

  test('exact: up 2 % and then down 1 % is a break of 3 %; a plane has none', () => {
    const ridge = through([
      point(0, 0, 0),
      point(0, 100, 0),
      point(100, 0, 2),
      point(100, 100, 2),
      point(200, 0, 1),
      point(200, 100, 1),
    ]);
    expect(largestBreak(ridge, outline)).toBeCloseTo(0.03, 12);
    const plane = through([point(0, 0, 0), point(200, 0, 2), point(200, 100, 2), point(0, 100, 0)]);
    expect(largestBreak(plane, outline)).toBeCloseTo(0, 12);
  });

  test('exact: what bends outside of the slab is not counted', () => {
    const beyond = through([
      point(0, 0, 0),
      point(0, 100, 0),
      point(300, 0, 3),
      point(300, 100, 3),
      point(400, 0, 0),
      point(400, 100, 0),
    ]);
    expect(largestBreak(beyond, outline)).toBe(0);
  });
});
