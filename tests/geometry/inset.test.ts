import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  circleRing,
  cornerFactor,
  insetRing,
  type Outline,
  orient,
  outlinePerimeterIn,
  polygonRing,
  type Ring,
  rectangleRing,
  ringAreaSqIn,
  roundCorners,
  sectorRing,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const SEED = 20_261_127;

function out(ring: Ring): Ring {
  const [first] = orient({ rings: [ring] }).rings;
  if (first === undefined) throw new Error('a ring stays a ring');
  return first;
}

function inset(ring: Ring, byIn: number): Ring {
  const made = insetRing(ring, byIn);
  if (!made.ok) throw new Error(`${byIn} in: ${made.reason}`);
  return made.ring;
}

const outlineOf = (ring: Ring): Outline => ({ rings: [ring] });
const box = out(rectangleRing({ lengthIn: 60, widthIn: 36 }));
const ell = out(
  polygonRing([
    { xIn: 0, yIn: 0 },
    { xIn: 60, yIn: 0 },
    { xIn: 60, yIn: 24 },
    { xIn: 24, yIn: 24 },
    { xIn: 24, yIn: 48 },
    { xIn: 0, yIn: 48 },
  ]),
);

function rounded(ring: Ring, corner: number, setbackIn: number): Ring {
  const made = roundCorners(ring, new Map([[corner, { kind: 'setback', setbackIn } as const]]));
  if (!made.ok) throw new Error('the corner fits');
  return made.ring;
}

describe('insetRing', () => {
  test('exact: a rectangle loses the distance on every side', () => {
    const inner = inset(box, 8);
    expect(ringAreaSqIn(inner)).toBeCloseTo(44 * 20, 9);
    expect(inner.map(({ xIn, yIn }) => [xIn, yIn])).toEqual(
      [
        [8, 8],
        [52, 8],
        [52, 28],
        [8, 28],
      ].map((at) => at.map((value) => expect.closeTo(value, 9))),
    );
    expect(cornerFactor(box)).toBeCloseTo(4, 12);
  });

  test('exact: a circle loses it of its radius', () => {
    const circle = out(circleRing({ diameterIn: 40 }));
    expect(ringAreaSqIn(inset(circle, 6))).toBeCloseTo(Math.PI * 14 ** 2, 9);
    expect(cornerFactor(circle)).toBeCloseTo(Math.PI, 12);
  });

  // 60 x 24 and 24 x 24 above it; moved in by 4: 52 x 16 and 16 x 24 above.
  test('exact: an inner corner moves out of the corner', () => {
    expect(ringAreaSqIn(inset(ell, 4))).toBeCloseTo(52 * 16 + 16 * 24, 9);
    expect(cornerFactor(ell)).toBeCloseTo(4, 12);
  });

  test.each([
    { name: 'a rectangle', ring: box, mostIn: 18 },
    { name: 'a circle', ring: out(circleRing({ diameterIn: 40 })), mostIn: 20 },
    { name: 'an arm of an L', ring: ell, mostIn: 12 },
  ])('$name: as far as half of where it is narrowest, and no further', ({ ring, mostIn }) => {
    expect(insetRing(ring, mostIn * 0.999).ok).toBe(true);
    expect(insetRing(ring, mostIn)).toEqual({ ok: false, reason: 'too-far' });
    expect(insetRing(ring, mostIn * 1.001)).toEqual({ ok: false, reason: 'too-far' });
  });

  test('a neck whose edges all stay is found too', () => {
    // Two rooms of 40 in, joined by a neck of 8 in.
    const neck = out(
      polygonRing(
        [
          [0, 0],
          [40, 0],
          [40, 16],
          [60, 16],
          [60, 0],
          [100, 0],
          [100, 40],
          [60, 40],
          [60, 24],
          [40, 24],
          [40, 40],
          [0, 40],
        ].map(([xIn = 0, yIn = 0]) => ({ xIn, yIn })),
      ),
    );
    expect(insetRing(neck, 3.9).ok).toBe(true);
    expect(insetRing(neck, 4.1)).toEqual({ ok: false, reason: 'too-far' });
  });

  test('an arc that meets its neighbour at an angle is refused', () => {
    const sector = out(sectorRing({ radiusIn: 40, angleRad: Math.PI / 2 }));
    expect(insetRing(sector, 1)).toEqual({ ok: false, reason: 'arc-at-an-angle' });
  });

  test.each([-1, Number.NaN, Infinity])('a distance of %s is refused', (byIn) => {
    expect(() => insetRing(box, byIn)).toThrow(RangeError);
  });

  test(`invariant: area and length follow from the corner factor (seed ${SEED})`, () => {
    const side = fc.double({ min: 30, max: 200, noNaN: true });
    const share = fc.double({ min: 0.01, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(side, side, share, share, (lengthIn, widthIn, setbackShare, insetShare) => {
        const halfIn = Math.min(lengthIn, widthIn) / 2;
        const setbackIn = halfIn * setbackShare;
        const ring = rounded(out(rectangleRing({ lengthIn, widthIn })), 2, setbackIn);
        // A square corner set back so far has an arc of that radius.
        const byIn = Math.min(halfIn, setbackIn) * insetShare;
        const inner = inset(ring, byIn);
        const factor = cornerFactor(ring);
        const perimeterIn = outlinePerimeterIn(outlineOf(ring));
        const areaSqIn = ringAreaSqIn(ring) - perimeterIn * byIn + factor * byIn ** 2;
        expect(ringAreaSqIn(inner) / areaSqIn).toBeCloseTo(1, 9);
        expect(outlinePerimeterIn(outlineOf(inner)) / (perimeterIn - 2 * factor * byIn)).toBeCloseTo(1, 9);
      }),
      { numRuns: runCount(100), seed: SEED },
    );
  });
});
