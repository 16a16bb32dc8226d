import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type HeightPoint,
  lowPoints,
  type Outline,
  polygonRing,
  rectangleRing,
  surfaceThrough,
  withEdgeKinds,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const FREE = ['formed'] as const;

function through(points: readonly (readonly [number, number, number])[]) {
  const surface = surfaceThrough(points.map(([xIn, yIn, heightIn]): HeightPoint => ({ xIn, yIn, heightIn })));
  if (surface === null) throw new Error('the points are in a line');
  return surface;
}

const square: Outline = { rings: [rectangleRing({ lengthIn: 100, widthIn: 100 })] };
const corners = [
  [0, 0, 10],
  [100, 0, 10],
  [100, 100, 10],
  [0, 100, 10],
] as const;

describe('where water stands', () => {
  test('exact: a dished square is as deep as its middle lies below the rim', () => {
    const [low, ...more] = lowPoints(through([...corners, [40, 50, 7]]), square, FREE);
    expect(more).toEqual([]);
    expect(low?.xIn).toBeCloseTo(40, 9);
    expect(low?.yIn).toBeCloseTo(50, 9);
    expect(low?.depthIn).toBeCloseTo(3, 9);
  });

  test('exact: it runs off over the lowest place of the rim', () => {
    const notched = through([...corners, [40, 50, 7], [50, 0, 8.5]]);
    expect(lowPoints(notched, square, FREE)[0]?.depthIn).toBeCloseTo(1.5, 9);
  });

  test('exact: a middle above the rim, a plane and a level slab hold none', () => {
    expect(lowPoints(through([...corners, [40, 50, 12]]), square, FREE)).toEqual([]);
    expect(
      lowPoints(
        through([
          [0, 0, 1],
          [100, 0, 3],
          [0, 100, 7],
        ]),
        square,
        FREE,
      ),
    ).toEqual([]);
    expect(lowPoints(through(corners), square, FREE)).toEqual([]);
  });

  test('exact: against a wall it stands as deep as the rest of the rim is high', () => {
    const falls = through([
      [0, 0, 2],
      [100, 0, 2],
      [100, 100, 6],
      [0, 100, 6],
    ]);
    const walled = (...edges: number[]) => ({
      rings: [
        withEdgeKinds(
          rectangleRing({ lengthIn: 100, widthIn: 100 }),
          new Map(edges.map((edge) => [edge, 'house' as const])),
        ),
      ],
    });
    // The ends of the low wall belong to free edges too, so that one wall holds nothing.
    expect(lowPoints(falls, walled(1), FREE)).toEqual([]);
    const [low] = lowPoints(falls, walled(4, 1, 2), FREE);
    expect(low?.depthIn).toBeCloseTo(4, 9);
    expect(low?.yIn).toBeCloseTo(0, 9);
    expect(lowPoints(falls, walled(1, 2, 3, 4), FREE)[0]?.depthIn).toBeCloseTo(4, 9);
  });

  test('exact: two hollows in two arms of an L are two', () => {
    const ell: Outline = {
      rings: [
        polygonRing([
          { xIn: 0, yIn: 0 },
          { xIn: 200, yIn: 0 },
          { xIn: 200, yIn: 60 },
          { xIn: 60, yIn: 60 },
          { xIn: 60, yIn: 200 },
          { xIn: 0, yIn: 200 },
        ]),
      ],
    };
    const rim = [
      [0, 0, 5],
      [200, 0, 5],
      [200, 60, 5],
      [60, 60, 5],
      [60, 200, 5],
      [0, 200, 5],
    ] as const;
    const found = lowPoints(through([...rim, [150, 30, 3], [30, 150, 4]]), ell, FREE);
    expect(found.map(({ depthIn }) => Math.round(depthIn * 1e6) / 1e6).toSorted((a, b) => a - b)).toEqual([
      1, 2,
    ]);
  });

  test('invariant: raised or mirrored it holds the same water; a plane added may only empty it', () => {
    const height = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(height, { minLength: 9, maxLength: 9 }), height, (heights, byIn) => {
        const grid = (of: (x: number, y: number, z: number) => [number, number, number]) =>
          through(
            heights.map((z, index) => of((index % 3) * 50, Math.floor(index / 3) * 50 + (index % 2) * 4, z)),
          );
        const depths = (surface: ReturnType<typeof through>) =>
          lowPoints(surface, square, FREE)
            .map(({ depthIn }) => depthIn)
            .toSorted((a, b) => a - b);
        const before = depths(grid((x, y, z) => [x, y, z]));
        const raised = depths(grid((x, y, z) => [x, y, z + byIn]));
        const steep = depths(grid((x, y, z) => [x, y, z + x]));
        expect(raised).toHaveLength(before.length);
        for (const [index, depthIn] of raised.entries()) expect(depthIn).toBeCloseTo(before[index] ?? -1, 6);
        expect(steep).toEqual([]);
      }),
      { numRuns: runCount(25), seed: 20260504 },
    );
  });
});
