import { describe, expect, test } from 'vitest';
import {
  boundsOf,
  circleRing,
  gridLines,
  lineLengthIn,
  type Outline,
  polygonRing,
} from '../../src/geometry/index.ts';

const corners = (...points: readonly (readonly [number, number])[]): Outline => ({
  rings: [polygonRing(points.map(([xIn, yIn]) => ({ xIn, yIn })))],
});
const lengthsOf = (outline: Outline, xCount: number, yCount: number) =>
  gridLines({ outline, bounds: boundsOf(outline), xCount, yCount }).map(lineLengthIn);

describe('lines of a grid over an outline', () => {
  test('exact: one part has no line; 4 by 2 parts of 40 by 20 have 3 lines of 20 and one of 40', () => {
    const box = corners([0, 0], [40, 0], [40, 20], [0, 20]);
    expect(lengthsOf(box, 1, 1)).toEqual([]);
    expect(lengthsOf(box, 4, 2)).toEqual([20, 20, 20, 40]);
  });

  test('exact: an L cuts the lines short, and a U parts them', () => {
    const el = corners([0, 0], [40, 0], [40, 10], [10, 10], [10, 40], [0, 40]);
    expect(lengthsOf(el, 2, 1)).toEqual([10]);
    const u = corners([0, 0], [40, 0], [40, 40], [30, 40], [30, 10], [10, 10], [10, 40], [0, 40]);
    expect(lengthsOf(u, 1, 2)).toEqual([10, 10]);
  });

  test('exact: the middle line of a circle is its diameter', () => {
    const round: Outline = { rings: [circleRing({ diameterIn: 12 })] };
    const [line = 0, ...more] = lengthsOf(round, 2, 1);
    expect(more).toEqual([]);
    expect(line).toBeCloseTo(12, 9);
  });
});
