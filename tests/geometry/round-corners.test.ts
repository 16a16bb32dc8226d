import { describe, expect, test } from 'vitest';
import {
  arcOf,
  bendEdges,
  distanceIn,
  kinksOf,
  polygonRing,
  type Ring,
  type Rounding,
  rectangleRing,
  reverseRing,
  ringAreaSqIn,
  roundCorners,
  type Vertex,
} from '../../src/geometry/index.ts';

const square = rectangleRing({ lengthIn: 100, widthIn: 100 });
const points = (...pairs: readonly (readonly [number, number])[]) =>
  polygonRing(pairs.map(([xIn, yIn]) => ({ xIn, yIn })));
const radOf = (deg: number) => (deg * Math.PI) / 180;

function rounded(ring: Ring, corner: number, rounding: Rounding) {
  const result = roundCorners(ring, new Map([[corner, rounding]]));
  if (!result.ok) throw new Error(`does not fit: ${JSON.stringify(result)}`);
  const [layout] = result.corners;
  if (layout === undefined) throw new Error('no corner');
  return { ring: result.ring, layout };
}

describe('roundCorners by radius', () => {
  test('exact: a square corner is set back by its radius', () => {
    const { layout, ring } = rounded(square, 3, { kind: 'radius', radiusIn: 36 });
    expect(layout.setbackBeforeIn).toBeCloseTo(36, 12);
    expect(layout.setbackAfterIn).toBeCloseTo(36, 12);
    expect(layout.kinkRad).toBe(0);
    const [arc] = layout.arcs;
    expect(arc?.centre.xIn).toBeCloseTo(64, 10);
    expect(arc?.centre.yIn).toBeCloseTo(64, 10);
    expect(arc?.from).toEqual({ xIn: 100, yIn: 64 });
    expect(arc?.to).toEqual({ xIn: 64, yIn: 100 });
    expect(arc?.externalIn).toBeCloseTo(36 * (Math.SQRT2 - 1), 12);
    expect(Math.max(...kinksOf(ring).map(({ kinkRad }) => kinkRad))).toBeLessThan(1e-9);
  });

  test('exact: a corner of 60 degrees inside, run either way', () => {
    const side = 200;
    const triangle = points([0, 0], [side, 0], [side / 2, (side * Math.sqrt(3)) / 2]);
    for (const ring of [triangle, reverseRing(triangle)]) {
      const { layout } = rounded(ring, 1, { kind: 'radius', radiusIn: 40 });
      expect(layout.deflectionRad).toBeCloseTo(radOf(120), 12);
      expect(layout.setbackBeforeIn).toBeCloseTo(40 * Math.sqrt(3), 10);
      expect(layout.areaLostSqIn).toBeCloseTo(1600 * (Math.sqrt(3) - Math.PI / 3), 8);
    }
  });
});

describe('roundCorners by chord and rise', () => {
  const setbackIn = 36;
  const chordIn = 36 * Math.SQRT2;
  const smoothRiseIn = (chordIn / 2) * Math.tan(Math.PI / 8);

  test('exact: the chord and rise of a quarter circle give that quarter circle, without a kink', () => {
    const { layout, ring } = rounded(square, 3, { kind: 'chord', chordIn, riseIn: smoothRiseIn });
    expect(layout.setbackBeforeIn).toBeCloseTo(setbackIn, 12);
    expect(layout.setbackAfterIn).toBeCloseTo(setbackIn, 12);
    expect(layout.arcs[0]?.radiusIn).toBeCloseTo(setbackIn, 10);
    expect(layout.kinkRad).toBe(0);
    expect(ringAreaSqIn(ring)).toBeCloseTo(10_000 - 1296 * (1 - Math.PI / 4), 8);
  });

  test.each([
    { name: 'a flat arc', riseIn: 5 },
    { name: 'an arc that bulges past the corner', riseIn: 20 },
  ])('$name meets both straight edges with the kink it reports', ({ riseIn }) => {
    const { layout, ring } = rounded(square, 3, { kind: 'chord', chordIn, riseIn });
    const sweepRad = 4 * Math.atan((2 * riseIn) / chordIn);
    expect(layout.kinkRad).toBeCloseTo(Math.abs(Math.PI / 2 - sweepRad) / 2, 12);
    const kinks = kinksOf(ring);
    expect(kinks.map(({ vertex }) => vertex)).toEqual([3, 4]);
    for (const { kinkRad } of kinks) expect(kinkRad).toBeCloseTo(layout.kinkRad, 9);
    const [arc] = layout.arcs;
    expect(arc?.chordIn).toBeCloseTo(chordIn, 10);
    expect(arc?.riseIn).toBeCloseTo(riseIn, 10);
    // From the corner to the middle of the chord is half the chord at a square corner.
    expect(arc?.externalIn).toBeCloseTo(chordIn / 2 - riseIn, 10);
    expect(ringAreaSqIn(square) - layout.areaLostSqIn).toBeCloseTo(ringAreaSqIn(ring), 8);
  });
});

describe('roundCorners by two arcs', () => {
  const two = (firstRadiusIn: number, firstDeg: number, secondRadiusIn: number): Rounding => ({
    kind: 'two-arcs',
    firstRadiusIn,
    firstTurnRad: radOf(firstDeg),
    secondRadiusIn,
  });

  test.each([
    { name: 'a square corner', ring: square, corner: 3, turnDeg: 90 },
    { name: 'the same, run the other way', ring: reverseRing(square), corner: 3, turnDeg: 90 },
    {
      name: 'a re-entrant corner',
      ring: points([0, 0], [200, 0], [200, 80], [120, 80], [120, 200], [0, 200]),
      corner: 4,
      turnDeg: 90,
    },
    { name: 'a sharp corner', ring: points([0, 0], [200, 0], [100, 173]), corner: 2, turnDeg: 120.03 },
  ])(
    '$name: both arcs are smooth, turn what they should, and end on the edges',
    ({ ring, corner, turnDeg }) => {
      const { layout, ring: made } = rounded(ring, corner, two(30, 35, 12));
      expect(layout.arcs.map(({ radiusIn }) => radiusIn)).toEqual([30, 12]);
      expect(layout.arcs[0]?.sweepRad).toBeCloseTo(radOf(35), 12);
      expect(layout.arcs.map(({ externalIn }) => externalIn)).toEqual([null, null]);
      expect((layout.deflectionRad * 180) / Math.PI).toBeCloseTo(turnDeg, 1);
      expect(layout.kinkRad).toBe(0);
      const kinks = kinksOf(made);
      expect(kinks).toHaveLength(3);
      for (const { kinkRad } of kinks) expect(kinkRad).toBeLessThan(1e-9);
      expect(kinks.map(({ centreGapIn }) => centreGapIn === null)).toEqual([true, false, true]);
      expect(kinks[1]?.centreGapIn).toBeCloseTo(0, 9);
      // The second arc is drawn from point to point: its radius comes out only if the points are right.
      const from = made[corner] as Vertex;
      const to = made[(corner + 1) % made.length] as Vertex;
      expect(arcOf(from, to).radiusIn).toBeCloseTo(12, 8);
      expect(ringAreaSqIn(ring) - layout.areaLostSqIn * Math.sign(ringAreaSqIn(ring))).toBeCloseTo(
        ringAreaSqIn(made),
        7,
      );
      const here = ring[corner - 1] as Vertex;
      expect(distanceIn(here, made[corner - 1] as Vertex)).toBeCloseTo(layout.setbackBeforeIn, 9);
      expect(distanceIn(here, made[corner + 1] as Vertex)).toBeCloseTo(layout.setbackAfterIn, 9);
    },
  );

  test('exact: two arcs of one radius are one arc', () => {
    const { layout } = rounded(square, 3, two(30, 35, 30));
    expect(layout.setbackBeforeIn).toBeCloseTo(30, 10);
    expect(layout.setbackAfterIn).toBeCloseTo(30, 10);
    expect(layout.areaLostSqIn).toBeCloseTo(900 * (1 - Math.PI / 4), 8);
  });

  test('as a value: a first turn that leaves nothing to the second', () => {
    expect(roundCorners(square, new Map([[3, two(30, 90, 12)]]))).toMatchObject({
      ok: false,
      corner: 3,
      reason: 'first-turn-too-large',
      availableIn: 100,
    });
  });
});

describe('roundCorners where a corner does not fit, as a value', () => {
  const setback = (setbackIn: number): Rounding => ({ kind: 'setback', setbackIn });
  const ell = points([0, 0], [50, 0], [100, 0], [100, 50]);
  const bent = square.map((vertex, index) => (index === 0 ? { ...vertex, bulge: 0.2 } : vertex));

  test.each([
    {
      name: 'two setbacks on one edge',
      ring: square,
      roundings: [
        [1, setback(60)],
        [2, setback(41)],
      ],
      wants: { corner: 1, reason: 'no-room', availableIn: 59, wantedIn: 60 },
      mostRadiusIn: 59,
    },
    {
      name: 'a radius too large for a blunt corner',
      ring: points([0, 0], [100, 0], [150, 86.602540378]),
      roundings: [[2, { kind: 'radius', radiusIn: 200 }]],
      wants: { corner: 2, reason: 'no-room' },
      mostRadiusIn: 100 / Math.tan(radOf(30)),
    },
    {
      name: 'a chord longer than the edges let it be',
      ring: square,
      roundings: [[4, { kind: 'chord', chordIn: 150, riseIn: 20 }]],
      wants: { corner: 4, reason: 'no-room', availableIn: 100 },
      mostRadiusIn: 100,
    },
    {
      name: 'a corner on a straight run',
      ring: ell,
      roundings: [[2, setback(10)]],
      wants: { corner: 2, reason: 'not-a-corner', availableIn: 0, wantedIn: 10 },
      mostRadiusIn: 0,
    },
    {
      name: 'a corner beside an arc',
      ring: bent,
      roundings: [[2, setback(10)]],
      wants: { corner: 2, reason: 'beside-arc', availableIn: 0, wantedIn: 10 },
      mostRadiusIn: 0,
    },
  ] as const)('$name', ({ ring, roundings, wants, mostRadiusIn }) => {
    const result = roundCorners(ring, new Map<number, Rounding>(roundings as never));
    expect(result).toMatchObject({ ok: false, ...wants });
    expect(result.ok ? Number.NaN : result.mostRadiusIn).toBeCloseTo(mostRadiusIn, 6);
  });

  test('each end of an edge takes what its own corner needs there', () => {
    const by: Rounding = { kind: 'two-arcs', firstRadiusIn: 60, firstTurnRad: 0.9, secondRadiusIn: 15 };
    const { layout } = rounded(square, 2, by);
    expect(layout.setbackBeforeIn).toBeGreaterThan(layout.setbackAfterIn + 10);
    const beside = (corner: number, setbackIn: number) =>
      roundCorners(
        square,
        new Map<number, Rounding>([
          [2, by],
          [corner, setback(setbackIn)],
        ]),
      );
    expect(beside(1, 100 - layout.setbackBeforeIn).ok).toBe(true);
    expect(beside(1, 100.01 - layout.setbackBeforeIn)).toMatchObject({ ok: false, corner: 1 });
    expect(beside(3, 100 - layout.setbackAfterIn).ok).toBe(true);
    expect(beside(3, 100.01 - layout.setbackAfterIn)).toMatchObject({ ok: false, corner: 2 });
  });

  test.each([2, 3])('the shorter edge is the one it names, before or after corner %d', (corner) => {
    const strip = rectangleRing({ lengthIn: 100, widthIn: 20 });
    for (const wantedIn of [30, 150]) {
      const result = roundCorners(strip, new Map([[corner, setback(wantedIn)]]));
      expect(result).toMatchObject({ ok: false, wantedIn, availableIn: 20 });
    }
  });

  test('the largest radius it names does fit, a hair more does not', () => {
    const failed = roundCorners(square, new Map([[1, { kind: 'radius', radiusIn: 500 }]]));
    if (failed.ok) throw new Error('should not fit');
    const by = (radiusIn: number) => roundCorners(square, new Map([[1, { kind: 'radius', radiusIn }]])).ok;
    expect(by(failed.mostRadiusIn)).toBe(true);
    expect(by(failed.mostRadiusIn + 1e-6)).toBe(false);
  });

  test.each<[string, Rounding]>([
    ['a radius of 0', { kind: 'radius', radiusIn: 0 }],
    ['a rise that is no number', { kind: 'chord', chordIn: 10, riseIn: Number.NaN }],
    [
      'an endless second radius',
      { kind: 'two-arcs', firstRadiusIn: 1, firstTurnRad: 1, secondRadiusIn: Infinity },
    ],
  ])('throws on %s', (_name, rounding) => {
    expect(() => roundCorners(square, new Map([[1, rounding]]))).toThrow(RangeError);
  });
});

describe('kinksOf', () => {
  test('exact: none on straight edges, none but a smooth joint on a circle', () => {
    expect(kinksOf(square)).toEqual([]);
    const circle: Ring = [
      { xIn: 5, yIn: 0, bulge: 1, edge: 'formed' },
      { xIn: -5, yIn: 0, bulge: 1, edge: 'formed' },
    ];
    for (const { kinkRad, centreGapIn } of kinksOf(circle)) {
      expect(kinkRad).toBeCloseTo(0, 12);
      expect(centreGapIn).toBeCloseTo(0, 12);
    }
    for (const { kinkRad } of kinksOf(reverseRing(circle))) expect(kinkRad).toBeCloseTo(0, 12);
  });

  test('exact: a half circle out of a side runs on from the sides beside it, one into it folds back', () => {
    const result = bendEdges(square, new Map([[2, { kind: 'rise', riseIn: 50, bends: 'out' }]]));
    if (!result.ok) throw new Error('bends');
    expect(kinksOf(result.ring).map(({ vertex }) => vertex)).toEqual([2, 3]);
    for (const { kinkRad, centreGapIn } of kinksOf(result.ring)) {
      expect(kinkRad).toBeCloseTo(0, 12);
      expect(centreGapIn).toBeNull();
    }
    const inwards = bendEdges(square, new Map([[2, { kind: 'rise', riseIn: 50, bends: 'in' }]]));
    if (!inwards.ok) throw new Error('bends');
    for (const { kinkRad } of kinksOf(inwards.ring)) expect(kinkRad).toBeCloseTo(Math.PI, 12);
  });

  test('exact: an S of two quarter circles is smooth; centres stand as far apart as the radii together', () => {
    const quarter = Math.tan(Math.PI / 8);
    const ess: Ring = [
      { xIn: 0, yIn: 0, bulge: quarter, edge: 'formed' },
      { xIn: 10, yIn: 10, bulge: -quarter, edge: 'formed' },
      { xIn: 30, yIn: 30, bulge: 0, edge: 'formed' },
      { xIn: -10, yIn: 30, bulge: 0, edge: 'formed' },
    ];
    const at = kinksOf(ess).find(({ vertex }) => vertex === 2);
    expect(at?.kinkRad).toBeCloseTo(0, 12);
    expect(at?.centreGapIn).toBeCloseTo(0, 12);
  });
});
