import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { aSlab, asTaped, rectangle } from '../slabs.ts';
import { graded, pointsAt, type Spots } from './a-grade.ts';

const ORIGIN = { at: { xIn: 0, yIn: 0 } };

function slabOf(spots: Spots, changed: Parameters<typeof aSlab>[0] = {}) {
  const slab = aSlab({ shape: rectangle(480, 216, ORIGIN), ...changed });
  const { data } = graded({ slabs: [slab], points: pointsAt(spots, 'finish') });
  const found = data.slabs[slab.id];
  if (found === undefined) throw new Error('no surface');
  return found;
}

describe('strings from corner to corner', () => {
  // 2 % for 10 ft and 1 % for 30 ft, level across: 6 in in 40 ft, so that a string falls 1.25 %.
  const broken = slabOf({
    a: [0, 0, 100],
    b: [0, 216, 100],
    c: [120, 0, 97.6],
    d: [120, 216, 97.6],
    e: [480, 0, 94],
    f: [480, 216, 94],
  });

  test('exact: each straight edge, how it falls, and how far the top hangs below it', () => {
    expect(broken.strings.map(({ from, to, lengthIn }) => [from, to, lengthIn])).toEqual([
      [1, 2, 480],
      [2, 3, 216],
      [3, 4, 480],
      [4, 1, 216],
    ]);
    const [along, across] = broken.strings;
    expect(along?.climb).toBeCloseTo(-6 / 480, 12);
    expect(across?.climb).toBeCloseTo(0, 12);
    // 10 ft out the string is at 98.5 in.
    expect(along?.off.aboveIn).toBeCloseTo(97.6 - 98.5, 9);
    expect(along?.off.alongIn).toBeCloseTo(120, 9);
    expect(across?.off.aboveIn).toBeCloseTo(0, 9);
    expect(along === undefined ? null : num(along.figures.slope)).toBeCloseTo(0.0125, 12);
    expect(along === undefined ? null : num(along.figures['off-string'])).toBeCloseTo(0.9, 9);
  });

  test('exact: the change of slope within it', () => {
    expect(num(broken.figures['largest-break'])).toBeCloseTo(0.01, 12);
    const plane = slabOf({ a: [0, 0, 100], b: [0, 216, 100], c: [480, 0, 94] });
    expect(num(plane.figures['largest-break'])).toBe(0);
  });

  test('an edge that is bent has no string', () => {
    const round = slabOf(
      { a: [0, 0, 100], b: [0, 216, 100], c: [480, 0, 94] },
      {
        shape: rectangle(480, 216, {
          ...ORIGIN,
          bent: [{ edge: 2, by: { kind: 'rise', riseIn: 40, bends: 'out' } }],
        }),
      },
    );
    expect(round.strings.map(({ from, to }) => [from, to])).not.toContainEqual([2, 3]);
  });
});

describe('a walk, across and along', () => {
  const walk = { id: 'walk', use: 'walk', shape: rectangle(240, 48, ORIGIN) } as const;
  // 2 % across and 4 % along.
  const spots: Spots = { a: [0, 0, 100], b: [0, 48, 99.04], c: [240, 0, 90.4] };

  test('exact: both are told, and of nothing but a walk', () => {
    const { across } = slabOf(spots, walk).figures;
    expect(across === undefined ? null : num(across.slope)).toBeCloseTo(0.02, 9);
    expect(across === undefined ? null : num(across.along)).toBeCloseTo(0.04, 9);
    expect(slabOf(spots, { ...walk, use: 'patio' }).figures.across).toBeUndefined();
  });

  test('the same are held against the rules of public ways only where the job says so', () => {
    expect(slabOf(spots, walk).figures['public-way']).toBeUndefined();
    const held = slabOf(spots, { ...walk, publicWay: true }).figures['public-way'];
    expect(held === undefined ? null : num(held.slope)).toBeCloseTo(0.02, 9);
  });
});

describe('places to dig at', () => {
  test('a slab of few sharp corners has halves of its edges too, up to five places', () => {
    const spots: Spots = { a: [0, 0, 100], b: [0, 216, 100], c: [480, 0, 94] };
    expect(Object.keys(slabOf(spots).places)).toEqual([
      'corner-1',
      'corner-2',
      'corner-3',
      'corner-4',
      'middle',
    ]);
    const points = [ORIGIN.at, { xIn: 480, yIn: 0 }, { xIn: 0, yIn: 216 }];
    const triangle = slabOf(spots, { shape: asTaped({ kind: 'corners', points }, ORIGIN) });
    expect(Object.keys(triangle.places)).toEqual(['corner-1', 'corner-2', 'corner-3', 'edge-2', 'middle']);
    expect(triangle.places['edge-2']).toEqual({ xIn: 240, yIn: 108 });
  });
});
