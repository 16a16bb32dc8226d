import { describe, expect, test } from 'vitest';
import {
  bendEdges,
  boundsOf,
  type EdgeKind,
  edgeLengthsByKindIn,
  joinAlongEdge,
  jointMiss,
  moveOutline,
  type Outline,
  overlapAreaSqIn,
  polygonRing,
  type Ring,
  rectangleRing,
  reverseRing,
  ringAreaSqIn,
  selfCrossing,
  turnOutline,
  withEdgeKinds,
} from '../../src/geometry/index.ts';

const walk = rectangleRing({ lengthIn: 240, widthIn: 48 });
const pad = (xIn: number, yIn: number, lengthIn = 60, widthIn = 30): Ring =>
  moved(rectangleRing({ lengthIn, widthIn }), xIn, yIn);

function moved(ring: Ring, dxIn: number, dyIn: number): Ring {
  return moveOutline({ rings: [ring] }, { dxIn, dyIn }).rings[0] ?? [];
}

function turned(ring: Ring, turnDeg: number): Ring {
  return turnOutline({ rings: [ring] }, turnDeg).rings[0] ?? [];
}

function joined(main: Ring, piece: Ring, mostGapIn = 0.5) {
  const result = joinAlongEdge(main, piece, mostGapIn);
  if (!result.ok) throw new Error(`does not join, miss ${result.missIn}`);
  return result;
}

const cornersOf = (ring: Ring) =>
  ring.map(({ xIn, yIn }) => [Number(xIn.toFixed(6)) + 0, Number(yIn.toFixed(6)) + 0]);

describe('joinAlongEdge', () => {
  test('exact: a pad in the middle of a side gives eight corners, corner 1 first', () => {
    const { ring, missIn, edge } = joined(walk, pad(90, 48));
    expect(cornersOf(ring)).toEqual([
      [0, 0],
      [240, 0],
      [240, 48],
      [150, 48],
      [150, 78],
      [90, 78],
      [90, 48],
      [0, 48],
    ]);
    expect(missIn).toBe(0);
    expect(edge).toBe(3);
    expect(ringAreaSqIn(ring)).toBeCloseTo(240 * 48 + 60 * 30, 9);
  });

  test.each([
    { name: 'flush at one end: the sides run on', piece: pad(180, 48), corners: 6 },
    { name: 'over the whole side', piece: pad(0, 48, 240, 30), corners: 4 },
    { name: 'past an end', piece: pad(200, 48), corners: 8 },
    { name: 'past both ends', piece: pad(-20, 48, 300, 30), corners: 8 },
    { name: 'at the short side', piece: pad(240, 0, 30, 48), corners: 4 },
    { name: 'at the side from corner 1', piece: pad(0, -30, 60, 30), corners: 6 },
    { name: 'at the side that ends at corner 1', piece: pad(-30, 0, 30, 20), corners: 6 },
  ])('$name: the area is the sum, no corner is left over', ({ piece, corners }) => {
    for (const either of [piece, reverseRing(piece)]) {
      const { ring } = joined(walk, either);
      expect(ring).toHaveLength(corners);
      expect(selfCrossing(ring)).toBeNull();
      expect(ringAreaSqIn(ring)).toBeCloseTo(ringAreaSqIn(walk) + ringAreaSqIn(piece), 8);
    }
  });

  test('a main ring that runs clockwise still does', () => {
    const { ring } = joined(reverseRing(walk), pad(90, 48));
    expect(ringAreaSqIn(ring)).toBeCloseTo(-(240 * 48 + 60 * 30), 9);
  });

  test('what is left of an edge keeps its kind, and different kinds keep the corner between them', () => {
    const house = withEdgeKinds(walk, new Map<number, EdgeKind>([[3, 'house']]));
    const { ring } = joined(house, withEdgeKinds(pad(180, 48), new Map<number, EdgeKind>([[2, 'joint']])));
    // The pad is flush with the end: its side runs on from the walk's, but is of another kind.
    expect(ring.map(({ edge }) => edge)).toEqual([
      'formed',
      'formed',
      'joint',
      'formed',
      'formed',
      'house',
      'formed',
    ]);
    const houseIn = (made: Ring) => edgeLengthsByKindIn({ rings: [made] }).house.straightIn;
    expect(houseIn(joined(house, pad(90, 48)).ring)).toBeCloseTo(180, 9);
    expect(houseIn(joined(house, pad(200, 48)).ring)).toBeCloseTo(200, 9);
    expect(houseIn(joined(house, pad(-20, 48)).ring)).toBeCloseTo(200, 9);
    const past = joined(house, pad(200, 48)).ring;
    expect(past.filter(({ edge }) => edge === 'house')).toHaveLength(1);
  });

  test('arcs are kept: a half round at the end of a walk', () => {
    const bent = bendEdges(pad(240, 0, 24, 48), new Map([[2, { kind: 'rise', riseIn: 24, bends: 'out' }]]));
    if (!bent.ok) throw new Error('bends');
    const { ring } = joined(walk, bent.ring);
    expect(ringAreaSqIn(ring)).toBeCloseTo(264 * 48 + (Math.PI * 24 ** 2) / 2, 8);
    expect(ring.filter(({ bulge }) => bulge !== 0)).toHaveLength(1);
    expect(ring).toHaveLength(4);
  });

  test.each([
    { name: 'gap', offIn: 0.25 },
    { name: 'lap', offIn: -0.25 },
  ])('a $name is closed by moving the piece, and reported', ({ offIn }) => {
    const { ring, missIn } = joined(walk, pad(90, 48 + offIn));
    expect(missIn).toBeCloseTo(0.25, 12);
    expect(ringAreaSqIn(ring)).toBeCloseTo(240 * 48 + 60 * 30, 8);
    expect(joinAlongEdge(walk, pad(90, 48 + offIn), 0.2)).toEqual({
      ok: false,
      missIn: expect.closeTo(0.25, 12),
    });
  });

  test('turned about together, the join is the same', () => {
    const { ring } = joined(turned(walk, 33.3), turned(pad(90, 48.125), 33.3));
    expect(ringAreaSqIn(ring)).toBeCloseTo(240 * 48 + 60 * 30, 7);
    expect(ring).toHaveLength(8);
  });

  test('a piece turned by a hair is turned back: one ring, the area the sum', () => {
    const hair = moved(turned(pad(0, 0), 0.1), 90, 48);
    const { ring, missIn } = joined(walk, hair);
    // Over 60 in, a tenth of a degree is 0.105 in.
    expect(missIn).toBeCloseTo(60 * Math.sin((0.1 * Math.PI) / 180), 3);
    expect(ringAreaSqIn(ring)).toBeCloseTo(240 * 48 + 60 * 30, 7);
    expect(selfCrossing(ring)).toBeNull();
  });

  test('exact: a piece that fills a notch leaves no slit', () => {
    const ell = polygonRing([
      { xIn: 0, yIn: 0 },
      { xIn: 200, yIn: 0 },
      { xIn: 200, yIn: 80 },
      { xIn: 120, yIn: 80 },
      { xIn: 120, yIn: 200 },
      { xIn: 0, yIn: 200 },
    ]);
    const whole = joined(ell, pad(120, 80, 80, 120)).ring;
    expect(whole).toHaveLength(4);
    expect(ringAreaSqIn(whole)).toBeCloseTo(40_000, 8);
    const part = joined(ell, pad(120, 80, 50, 40)).ring;
    expect(selfCrossing(part)).toBeNull();
    expect(part).toHaveLength(8);
    expect(ringAreaSqIn(part)).toBeCloseTo(ringAreaSqIn(ell) + 2000, 8);
    // It lies along two edges; the longer stretch is the one it is joined by.
    expect(joined(ell, pad(120, 80, 50, 40)).edge).toBe(3);
    expect(joined(ell, pad(120, 80, 40, 50)).edge).toBe(4);
    // What is left of the two edges of the notch is still what it was.
    const kinds = withEdgeKinds(
      ell,
      new Map<number, EdgeKind>([
        [3, 'stays'],
        [4, 'house'],
      ]),
    );
    for (const piece of [pad(120, 80, 50, 40), pad(120, 80, 50, 160), pad(120, 80, 110, 20)]) {
      const lengths = edgeLengthsByKindIn({ rings: [joined(kinds, piece).ring] });
      const { maxXIn, maxYIn } = boundsOf({ rings: [piece] });
      expect(lengths.stays.straightIn).toBeCloseTo(Math.max(0, 200 - maxXIn), 9);
      expect(lengths.house.straightIn).toBeCloseTo(Math.max(0, 200 - maxYIn), 9);
    }
  });

  test.each([
    { name: 'beside, but too far off', piece: pad(90, 54), missIn: 6 },
    { name: 'past the end of the side', piece: moved(turned(pad(0, 0), 45), 400, 200), missIn: null },
    { name: 'only at a corner', piece: pad(240, 48), missIn: null },
  ])('as a value: $name', ({ piece, missIn }) => {
    expect(joinAlongEdge(walk, piece, 0.5)).toEqual({ ok: false, missIn });
  });

  test('refuses a gap that is no length', () => {
    expect(() => joinAlongEdge(walk, pad(90, 48), Number.NaN)).toThrow(RangeError);
    expect(() => joinAlongEdge(walk, pad(90, 48), -1)).toThrow(RangeError);
  });
});

describe('jointMiss', () => {
  const slab = (ring: Ring, edge: number): Outline => ({
    rings: [withEdgeKinds(ring, new Map<number, EdgeKind>([[edge, 'joint']]))],
  });
  const a = slab(walk, 2);

  test.each([
    { name: 'gap', offIn: 0.375 },
    { name: 'lap', offIn: -0.375 },
    { name: 'nothing', offIn: 0 },
  ])('exact: a $name between two joint edges, and the move that closes it', ({ offIn }) => {
    const b = slab(pad(240 + offIn, 5), 4);
    const miss = jointMiss(a, b);
    expect(miss?.missIn).toBeCloseTo(Math.abs(offIn), 12);
    expect(miss?.move.dxIn).toBeCloseTo(-offIn, 12);
    expect(miss?.move.dyIn).toBeCloseTo(0, 12);
    const closed = moveOutline(b, miss?.move ?? { dxIn: 0, dyIn: 0 });
    expect(overlapAreaSqIn(a, closed)).toBeCloseTo(0, 5);
    expect(jointMiss(a, closed)?.missIn).toBeCloseTo(0, 9);
  });

  test('the nearest of several pairs', () => {
    const both: Outline = {
      rings: [
        withEdgeKinds(
          walk,
          new Map<number, EdgeKind>([
            [2, 'joint'],
            [4, 'joint'],
          ]),
        ),
      ],
    };
    expect(jointMiss(both, slab(pad(-61, 0), 2))?.move.dxIn).toBeCloseTo(1, 12);
    expect(jointMiss(both, slab(pad(-61, 0), 2))?.missIn).toBeCloseTo(1, 12);
  });

  test('a hair off parallel: the nearer end is closed, nothing laps', () => {
    const b = slab(moved(turned(pad(0, 0, 60, 48), 0.1), 240.2, 0), 4);
    const miss = jointMiss(a, b);
    expect(miss?.missIn).toBeCloseTo(0.2, 6);
    const closed = moveOutline(b, miss?.move ?? { dxIn: 0, dyIn: 0 });
    expect(overlapAreaSqIn(a, closed)).toBeLessThan(1e-4);
  });

  test.each([
    { name: 'edges of another kind', b: slab(pad(240, 0), 2) },
    { name: 'joints that do not share a stretch', b: slab(pad(240, 60), 4) },
    { name: 'joints that are not parallel', b: slab(moved(turned(pad(0, 0), 3), 240, 0), 4) },
  ])('none: $name', ({ b }) => {
    expect(jointMiss(a, b)).toBeNull();
  });
});
