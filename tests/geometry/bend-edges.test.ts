import { describe, expect, test } from 'vitest';
import {
  arcOf,
  type Bend,
  bendEdges,
  distanceIn,
  type Ring,
  rectangleRing,
  reverseRing,
  ringAreaSqIn,
  type Vertex,
} from '../../src/geometry/index.ts';

const square = rectangleRing({ lengthIn: 100, widthIn: 100 });

function bent(ring: Ring, edge: number, bend: Bend): Ring {
  const result = bendEdges(ring, new Map([[edge, bend]]));
  if (!result.ok) throw new Error(`does not bend: ${result.reason}`);
  return result.ring;
}

const arcAt = (ring: Ring, edge: number) =>
  arcOf(ring[edge - 1] as Vertex, ring[edge % ring.length] as Vertex);

describe('bendEdges', () => {
  const halfCircleSqIn = (Math.PI * 2500) / 2;

  test.each([
    { name: 'anticlockwise', ring: square, sign: 1 },
    { name: 'clockwise', ring: reverseRing(square), sign: -1 },
  ])('exact: a half circle out adds its area, in takes it off; run $name', ({ ring, sign }) => {
    for (const bend of [
      { kind: 'rise', riseIn: 50 },
      { kind: 'radius', radiusIn: 50 },
    ] as const) {
      expect(ringAreaSqIn(bent(ring, 2, { ...bend, bends: 'out' }))).toBeCloseTo(
        sign * (10_000 + halfCircleSqIn),
        8,
      );
      expect(ringAreaSqIn(bent(ring, 2, { ...bend, bends: 'in' }))).toBeCloseTo(
        sign * (10_000 - halfCircleSqIn),
        8,
      );
    }
  });

  test('exact: chord 100 and rise 10 give radius 130, and radius 130 gives that rise', () => {
    expect(arcAt(bent(square, 1, { kind: 'rise', riseIn: 10, bends: 'out' }), 1).radiusIn).toBeCloseTo(
      130,
      10,
    );
    const byRadius = bent(square, 1, { kind: 'radius', radiusIn: 130, bends: 'out' });
    expect(byRadius[0]?.bulge).toBeCloseTo((2 * 10) / 100, 12);
  });

  test.each([
    { name: 'outside', at: { xIn: 130, yIn: 30 } },
    { name: 'inside', at: { xIn: 90, yIn: 80 } },
    { name: 'past an end', at: { xIn: 120, yIn: 110 } },
  ])('through a point $name: the arc is as far from its centre there as at its ends', ({ at }) => {
    const ring = bent(square, 2, { kind: 'through', at });
    const arc = arcAt(ring, 2);
    expect(distanceIn(arc.centre, at)).toBeCloseTo(arc.radiusIn, 8);
    // On the arc itself, not on the rest of its circle: the point's direction lies within the sweep.
    const turned = Math.atan2(at.yIn - arc.centre.yIn, at.xIn - arc.centre.xIn) - arc.startRad;
    const whole = (((turned * Math.sign(arc.sweepRad)) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    expect(whole).toBeLessThan(Math.abs(arc.sweepRad));
    expect(Math.sign(ring[1]?.bulge ?? 0)).toBe(at.xIn > 100 ? 1 : -1);
  });

  test('through the middle of the rise is by the rise', () => {
    const through = bent(square, 2, { kind: 'through', at: { xIn: 112, yIn: 50 } });
    const byRise = bent(square, 2, { kind: 'rise', riseIn: 12, bends: 'out' });
    expect(through[1]?.bulge).toBeCloseTo(byRise[1]?.bulge ?? Number.NaN, 12);
  });

  test.each<{ name: string; ring: Ring; bend: Bend; wants: object }>([
    {
      name: 'a radius below half the chord',
      ring: square,
      bend: { kind: 'radius', radiusIn: 49.9, bends: 'out' },
      wants: { reason: 'radius-too-small', leastRadiusIn: 50 },
    },
    {
      name: 'a point on the edge',
      ring: square,
      bend: { kind: 'through', at: { xIn: 100, yIn: 40 } },
      wants: { reason: 'point-on-line', leastRadiusIn: null },
    },
    {
      name: 'a point on the edge drawn out',
      ring: square,
      bend: { kind: 'through', at: { xIn: 100, yIn: 140 } },
      wants: { reason: 'point-on-line', leastRadiusIn: null },
    },
    {
      name: 'a point at an end',
      ring: square,
      bend: { kind: 'through', at: { xIn: 100, yIn: 100 } },
      wants: { reason: 'point-at-end', leastRadiusIn: null },
    },
    {
      name: 'an edge that is an arc already',
      ring: square.map((vertex) => ({ ...vertex, bulge: 0.1 })),
      bend: { kind: 'rise', riseIn: 1, bends: 'out' },
      wants: { reason: 'not-straight', leastRadiusIn: null },
    },
  ])('as a value: $name', ({ ring, bend, wants }) => {
    expect(bendEdges(ring, new Map([[2, bend]]))).toEqual({ ok: false, edge: 2, ...wants });
  });

  test('a radius of just half the chord is a half circle', () => {
    expect(bent(square, 2, { kind: 'radius', radiusIn: 50, bends: 'out' })[1]?.bulge).toBeCloseTo(1, 12);
  });

  test.each<[number, Bend]>([
    [0, { kind: 'rise', riseIn: 1, bends: 'out' }],
    [5, { kind: 'rise', riseIn: 1, bends: 'out' }],
    [1, { kind: 'rise', riseIn: 0, bends: 'out' }],
    [1, { kind: 'radius', radiusIn: Number.NaN, bends: 'out' }],
    [1, { kind: 'through', at: { xIn: Infinity, yIn: 0 } }],
  ])('refuses edge %d, %j', (edge, bend) => {
    expect(() => bendEdges(square, new Map([[edge, bend]]))).toThrow(RangeError);
  });
});
