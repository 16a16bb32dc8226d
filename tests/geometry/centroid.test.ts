import { expect, test } from 'vitest';
import { centroidOf, circleRing, polygonRing, rectangleRing, reverseRing } from '../../src/geometry/index.ts';

test('exact: the middle of a rectangle, a third of a triangle, the centre of a circle', () => {
  expect(centroidOf({ rings: [rectangleRing({ lengthIn: 480, widthIn: 216 })] })).toEqual({
    xIn: 240,
    yIn: 108,
  });
  const triangle = polygonRing([
    { xIn: 10, yIn: 10 },
    { xIn: 40, yIn: 10 },
    { xIn: 10, yIn: 70 },
  ]);
  expect(centroidOf({ rings: [triangle] })).toEqual({ xIn: 20, yIn: 30 });
  const { xIn, yIn } = centroidOf({ rings: [circleRing({ diameterIn: 100 })] });
  expect([xIn, yIn]).toEqual([expect.closeTo(50, 6), expect.closeTo(50, 6)]);
});

test('exact: a hole at one end moves it towards the other', () => {
  // 20 by 10 less the right 10 by 10 but for a border of nothing: what is left is the left half.
  const outer = rectangleRing({ lengthIn: 20, widthIn: 10 });
  const hole = polygonRing([
    { xIn: 10, yIn: 0 },
    { xIn: 20, yIn: 0 },
    { xIn: 20, yIn: 10 },
    { xIn: 10, yIn: 10 },
  ]);
  expect(centroidOf({ rings: [outer, reverseRing(hole)] })).toEqual({ xIn: 5, yIn: 5 });
});

test('refused: no corners, no area', () => {
  expect(() => centroidOf({ rings: [] })).toThrow(RangeError);
  const line = [0, 1, 2].map((xIn) => ({ xIn, yIn: 0, bulge: 0, edge: 'formed' as const }));
  expect(() => centroidOf({ rings: [line] })).toThrow(/area/);
});
