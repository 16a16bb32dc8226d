import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { Slab, TapedShape, ThickenedEdge } from '../../../src/calculate/job.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import { calcThickened, thickenedCuFt } from '../../../src/calculate/thickened/index.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab, asTaped, at, byId, propertyRuns, rectangle, TAPE_LIMITS, tapedIn } from '../slabs.ts';

const edge = (number: number, changed: Partial<ThickenedEdge> = {}): ThickenedEdge => ({
  edge: number,
  depthIn: 10,
  widthIn: 12,
  taperIn: 0,
  ...changed,
});

function thickened(slab: Partial<Slab>) {
  const slabs = byId(aSlab(slab));
  const outline = calcOutline({ slabs, existing: {}, limits: TAPE_LIMITS });
  return calcThickened({ slabs, outlines: outline.data.slabs, edges: outline.data.edges });
}

const volumeCuFt = (shape: TapedShape, ...edges: readonly ThickenedEdge[]) =>
  num(at(thickened({ shape, thickenedEdges: edges }).figures, 'drive').volume);

describe('calcThickened', () => {
  // A 4 in slab of 40 by 18 ft; the edge is 10 in deep: half a foot below it.
  const drive = rectangle(480, 216);

  test('exact: one edge is its length by its width', () => {
    expect(volumeCuFt(drive, edge(1))).toBeCloseTo(40 * 1 * 0.5, 6);
    expect(volumeCuFt(drive, edge(2))).toBeCloseTo(18 * 1 * 0.5, 6);
  });

  test('exact: with a taper as wide again the section is a trapezoid', () => {
    expect(volumeCuFt(drive, edge(1, { taperIn: 12 }))).toBeCloseTo(40 * 1.5 * 0.5, 6);
  });

  test('exact: where two edges meet, their corner counts once', () => {
    expect(volumeCuFt(drive, edge(1), edge(2))).toBeCloseTo((40 + 18 - 1) * 0.5, 6);
    expect(volumeCuFt(drive, ...[1, 2, 3, 4].map((number) => edge(number)))).toBeCloseTo(
      (2 * (40 + 18) - 4) * 0.5,
      6,
    );
  });

  test('exact: all round with a taper is a frustum turned over', () => {
    // Hole of 38 by 16 ft at the bottom, 36 by 14 at the underside, 37 by 15 between: bands round them.
    const band = (long: number, wide: number) => 40 * 18 - long * wide;
    const expected = (0.5 * (band(38, 16) + 4 * band(37, 15) + band(36, 14))) / 6;
    const all = [1, 2, 3, 4].map((number) => edge(number, { taperIn: 12 }));
    expect(volumeCuFt(drive, ...all)).toBeCloseTo(expected, 5);
  });

  test('two sections count each for itself', () => {
    const two = volumeCuFt(drive, edge(1), edge(3, { depthIn: 7 }));
    expect(two).toBeCloseTo(40 * 0.5 + 40 * 0.25, 6);
  });

  test('a rounded corner between two thickened edges goes with them, beside one it does not', () => {
    const rounded = rectangle(480, 216, {
      rounded: [{ corner: 2, by: { kind: 'setback', setbackIn: 36 } }],
    });
    // Along the edges 37 and 15 ft, and a quarter ring of 3 ft outside and 2 ft inside between them.
    const quarter = (Math.PI * (3 ** 2 - 2 ** 2)) / 4;
    expect(volumeCuFt(rounded, edge(1), edge(2))).toBeCloseTo((37 + 15 + quarter) * 0.5, 3);
    expect(volumeCuFt(rounded, edge(1))).toBeCloseTo(37 * 0.5, 3);
  });

  test('exact: a circle all round is a ring', () => {
    const round = asTaped({ kind: 'circle', diameterIn: 120 });
    expect(volumeCuFt(round, edge(1))).toBeCloseTo(Math.PI * (5 ** 2 - 4 ** 2) * 0.5, 3);
  });

  test('a band wider than the slab ends with the slab', () => {
    expect(volumeCuFt(drive, edge(1, { widthIn: 600 }))).toBeCloseTo(40 * 18 * 0.5, 6);
  });

  test('turned on the plan nothing changes', () => {
    const turned = rectangle(480, 216, { turnedRad: 0.7, at: { xIn: 300, yIn: -90 } });
    expect(volumeCuFt(turned, edge(1), edge(2))).toBeCloseTo(volumeCuFt(drive, edge(1), edge(2)), 4);
  });

  test('no deeper than the slab is a problem', () => {
    expect(thickened({ thickenedEdges: [edge(2, { depthIn: 4 })] }).problems).toEqual([
      {
        code: 'thickened-edge-not-deeper',
        path: 'build.slabs.drive.thickened-edges.2.depth',
        parts: { depth: '4.00', thickness: '4.00' },
      },
    ]);
    expect(thickened({ thickenedEdges: [edge(2)] }).problems).toEqual([]);
  });

  test('a slab without any has no figures', () => {
    expect(thickened({}).figures).toEqual({});
  });

  testExpressions(
    'thickened edges',
    thickened({ shape: drive, thickenedEdges: [edge(1), edge(2, { taperIn: 6 })] }).figures,
    3,
  );

  test('invariant: deeper, wider or with a taper is never less, and never more than the whole slab', () => {
    fc.assert(
      fc.property(tapedIn(5, 30), tapedIn(2, 60), tapedIn(0, 40), (depthIn, widthIn, taperIn) => {
        const some = [1, 2, 3].map((number) => edge(number, { depthIn, widthIn, taperIn }));
        const cuFt = volumeCuFt(drive, ...some);
        const more = some.map((one) => ({ ...one, depthIn: depthIn + 1, taperIn: taperIn + 3 }));
        expect(volumeCuFt(drive, ...more)).toBeGreaterThan(cuFt);
        expect(cuFt).toBeLessThanOrEqual(((40 * 18 * (depthIn - 4)) / 12) * (1 + 1e-9));
      }),
      propertyRuns,
    );
  });
});

test('refused: what is below 0 or no number', () => {
  const good = { extraIn: 6, bottomSqFt: 1, middleSqFt: 1, topSqFt: 1 };
  expect(thickenedCuFt(good)).toBeCloseTo(0.5, 12);
  expect(() => thickenedCuFt({ ...good, extraIn: -1 })).toThrow(RangeError);
  expect(() => thickenedCuFt({ ...good, topSqFt: Number.NaN })).toThrow(/topSqFt/);
});
