import { describe, expect, test } from 'vitest';
import { solveNearestIn } from '../../src/geometry/solve-nearest.ts';

describe('solveNearestIn', () => {
  const twoZeros = (tryIn: number) => (tryIn - 9) * (tryIn - 12);
  const search = { leastIn: 8, mostIn: 13, missOf: twoZeros };

  test.each([
    { fromIn: 10, nearestIn: 9 },
    { fromIn: 11, nearestIn: 12 },
    { fromIn: 8.5, nearestIn: 9 },
    { fromIn: 9, nearestIn: 9 },
    { fromIn: 13, nearestIn: 12 },
  ])('exact: from $fromIn to the nearer zero, $nearestIn', ({ fromIn, nearestIn }) => {
    expect(solveNearestIn({ ...search, fromIn })).toBeCloseTo(nearestIn, 12);
  });

  test('a zero at the very end of the range counts, one beyond it does not', () => {
    expect(solveNearestIn({ ...search, fromIn: 10.4, leastIn: 9, mostIn: 11 })).toBeCloseTo(9, 12);
    expect(solveNearestIn({ ...search, fromIn: 10.4, leastIn: 9.001, mostIn: 11.999 })).toBeNull();
  });

  test.each([7.9, 13.1, Number.NaN])('throws on a start of %d', (fromIn) => {
    expect(() => solveNearestIn({ ...search, fromIn })).toThrow(RangeError);
  });

  test('throws on an open range', () => {
    expect(() => solveNearestIn({ ...search, fromIn: 10, mostIn: Infinity })).toThrow(RangeError);
  });
});
