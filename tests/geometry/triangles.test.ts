import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceIn, ringAreaSqIn, trianglesRing } from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const settings = { numRuns: runCount(200), seed: Number(process.env.FAST_CHECK_SEED ?? 20260504) };

function ringOf(taped: Parameters<typeof trianglesRing>[0]) {
  const result = trianglesRing(taped);
  if (!result.ok) throw new Error(`corner ${result.corner} does not meet`);
  return result.ring;
}

const heronSqIn = (a: number, b: number, c: number) => {
  const half = (a + b + c) / 2;
  return Math.sqrt(half * (half - a) * (half - b) * (half - c));
};

describe('trianglesRing', () => {
  // Published (seen): T. Klemm in the thread "Geometry: Triangulation for Measuring a Lot/Yard", 2018:
  // base 8, 11 from its start, 7 from its end, gives 8.5 along; the other coordinate follows, sqrt(48.75).
  test('base 8, distances 11 and 7', () => {
    const corners = [{ from: [1, 2], distancesIn: [11, 7], side: 'left' }] as const;
    const third = ringOf({ baseIn: 8, corners })[2];
    expect(third?.xIn).toBeCloseTo(8.5, 12);
    expect(third?.yIn).toBeCloseTo(Math.sqrt(48.75), 12);
  });

  // Published (seen): civilstudents.com, "How to Calculate Land Area with Triangulation": sides 5, 8, 12
  // cover 14.5237.
  test('sides 5, 8 and 12 cover 14.5237', () => {
    const corners = [{ from: [1, 2], distancesIn: [8, 12], side: 'left' }] as const;
    expect(ringAreaSqIn(ringOf({ baseIn: 5, corners }))).toBeCloseTo(14.5237, 4);
  });

  test('exact: a rectangle from its sides and a diagonal, corners on either side', () => {
    const ring = ringOf({
      baseIn: 40,
      corners: [
        { from: [1, 2], distancesIn: [50, 30], side: 'left' },
        // From corner 3 towards corner 1 the fourth lies on the right.
        { from: [3, 1], distancesIn: [40, 30], side: 'right' },
      ],
    });
    const expected = [
      [0, 0],
      [40, 0],
      [40, 30],
      [0, 30],
    ];
    for (const [index, [xIn = 0, yIn = 0]] of expected.entries()) {
      expect(ring[index]?.xIn).toBeCloseTo(xIn, 12);
      expect(ring[index]?.yIn).toBeCloseTo(yIn, 12);
    }
  });

  const length = fc.double({ min: 10, max: 1000, noNaN: true });
  const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
  const side = fc.constantFrom('left', 'right');

  test('distances come out as taped, the area by Heron, its sign by the side', () => {
    fc.assert(
      fc.property(length, length, share, side, (baseIn, firstIn, between, seen) => {
        const secondIn =
          Math.abs(baseIn - firstIn) + between * (baseIn + firstIn - Math.abs(baseIn - firstIn));
        const corners = [{ from: [1, 2], distancesIn: [firstIn, secondIn], side: seen }] as const;
        const ring = ringOf({ baseIn, corners });
        const [one, two, three] = ring;
        if (one === undefined || two === undefined || three === undefined) throw new Error('three corners');
        expect(distanceIn(one, three)).toBeCloseTo(firstIn, 8);
        expect(distanceIn(two, three)).toBeCloseTo(secondIn, 8);
        const signed = ringAreaSqIn(ring) * (seen === 'left' ? 1 : -1);
        expect(signed / heronSqIn(baseIn, firstIn, secondIn)).toBeCloseTo(1, 9);
      }),
      settings,
    );
  });

  test.each([
    { name: 'together too short', distancesIn: [30, 40], which: 1, leastIn: 70, mostIn: 130 },
    { name: 'just reaching', distancesIn: [60, 40], which: 0, leastIn: 60, mostIn: 140 },
    { name: 'the first too long', distancesIn: [200, 40], which: 0, leastIn: 60, mostIn: 140 },
    { name: 'the second too long', distancesIn: [50, 151], which: 1, leastIn: 50, mostIn: 150 },
  ] as const)('refuses distances $name, with what would work', ({ distancesIn, which, leastIn, mostIn }) => {
    const tie = (pair: readonly [number, number]) =>
      trianglesRing({ baseIn: 100, corners: [{ from: [1, 2], distancesIn: pair, side: 'left' }] });
    expect(tie(distancesIn)).toEqual({ ok: false, corner: 3, which, leastIn, mostIn });
    for (const good of [leastIn + 1e-6, mostIn - 1e-6]) {
      expect(tie(which === 0 ? [good, distancesIn[1]] : [distancesIn[0], good]).ok).toBe(true);
    }
  });

  test('names the later corner that does not meet', () => {
    const corners = [
      { from: [1, 2], distancesIn: [50, 80], side: 'left' },
      { from: [1, 3], distancesIn: [10, 20], side: 'left' },
    ] as const;
    const result = trianglesRing({ baseIn: 100, corners });
    expect(result).toMatchObject({ ok: false, corner: 4, which: 1 });
    // Corner 3 is 50 from corner 1, as taped.
    expect(result.ok ? 0 : result.leastIn).toBeCloseTo(40, 9);
  });

  const tied = { from: [1, 2], distancesIn: [60, 60], side: 'left' } as const;
  test.each([
    { name: 'a base of 0', baseIn: 0, corners: [tied] },
    { name: 'a base of NaN', baseIn: Number.NaN, corners: [tied] },
    { name: 'no third corner', baseIn: 100, corners: [] },
    { name: 'a distance of 0', baseIn: 100, corners: [{ ...tied, distancesIn: [0, 60] as const }] },
    {
      name: 'a distance of NaN',
      baseIn: 100,
      corners: [{ ...tied, distancesIn: [60, Number.NaN] as const }],
    },
    { name: 'the same corner twice', baseIn: 100, corners: [{ ...tied, from: [2, 2] as const }] },
    { name: 'a corner tied to itself', baseIn: 100, corners: [{ ...tied, from: [1, 3] as const }] },
    { name: 'a corner 0', baseIn: 100, corners: [{ ...tied, from: [0, 2] as const }] },
    { name: 'a corner between numbers', baseIn: 100, corners: [{ ...tied, from: [1.5, 2] as const }] },
  ])('refuses $name', ({ baseIn, corners }) => {
    expect(() => trianglesRing({ baseIn, corners })).toThrow(RangeError);
  });
});
