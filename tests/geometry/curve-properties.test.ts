import { Arc, Point, Polygon, Segment } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcOf,
  bendEdges,
  containsPoint,
  distanceIn,
  edgesOf,
  isWithin,
  joinAlongEdge,
  kinksOf,
  moveOutline,
  type Outline,
  orient,
  outlineAreaSqIn,
  outlinePerimeterIn,
  overlapAreaSqIn,
  polygonRing,
  type Ring,
  type Rounding,
  rectangleRing,
  ringAreaSqIn,
  roundCorners,
  stretchOutline,
  turnOutline,
  unionAreaSqIn,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const seed = Number(process.env.FAST_CHECK_SEED ?? 20260504);
/** 200 in every run, 2,000 in the full one. */
const settings = { numRuns: Math.min(2000, runCount(200)), seed };

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A ring of straight edges around a point, that never crosses itself: neighbours at least 180 in apart. */
const polygons: fc.Arbitrary<Ring> = fc
  .record({ outsIn: fc.array(between(220, 400), { minLength: 4, maxLength: 8 }), turn: between(0, 6) })
  .map(({ outsIn, turn }) =>
    polygonRing(
      outsIn.map((outIn, index) => {
        const directionRad = turn + (index * 2 * Math.PI) / outsIn.length;
        return { xIn: outIn * Math.cos(directionRad), yIn: outIn * Math.sin(directionRad) };
      }),
    ),
  );

const roundings: fc.Arbitrary<Rounding> = fc.oneof(
  between(5, 50).map((setbackIn) => ({ kind: 'setback' as const, setbackIn })),
  between(5, 60).map((radiusIn) => ({ kind: 'radius' as const, radiusIn })),
  fc
    .tuple(between(5, 40), between(0.05, 0.3))
    .map(([chordIn, rise]) => ({ kind: 'chord' as const, chordIn, riseIn: rise * chordIn })),
  fc
    .tuple(between(5, 40), between(5, 40), between(0.05, 0.5))
    .map(([firstRadiusIn, secondRadiusIn, firstTurnRad]) => ({
      kind: 'two-arcs' as const,
      firstRadiusIn,
      firstTurnRad,
      secondRadiusIn,
    })),
);

/** Polygons with corners rounded in every way that fits. */
const curved: fc.Arbitrary<Outline> = fc
  .tuple(polygons, fc.array(roundings, { minLength: 1, maxLength: 8 }))
  .map(([ring, chosen]) => {
    const wanted = new Map(chosen.slice(0, ring.length).map((by, index) => [index + 1, by]));
    for (;;) {
      const result = roundCorners(ring, wanted);
      if (result.ok) return { rings: [result.ring] };
      wanted.delete(result.corner);
    }
  })
  .filter(({ rings }) => (rings[0] ?? []).some(({ bulge }) => bulge !== 0));

function oracleOf(ring: Ring): Polygon {
  const polygon = new Polygon();
  polygon.addFace(
    edgesOf(ring).map(({ from, to }) => {
      if (from.bulge === 0) return new Segment(new Point(from.xIn, from.yIn), new Point(to.xIn, to.yIn));
      const { centre, radiusIn, startRad, sweepRad } = arcOf(from, to);
      return new Arc(
        new Point(centre.xIn, centre.yIn),
        radiusIn,
        startRad,
        startRad + sweepRad,
        sweepRad > 0,
      );
    }),
  );
  return polygon;
}

function mirror(outline: Outline): Outline {
  return orient({
    rings: outline.rings.map((ring) =>
      ring.map((vertex) => ({ ...vertex, xIn: -vertex.xIn, bulge: -vertex.bulge })),
    ),
  });
}

/** As a share of the larger; 0 where they agree. */
const off = (one: number, other: number) =>
  Math.abs(one - other) / Math.max(Math.abs(one), Math.abs(other), 1);

describe('rounded outlines', () => {
  test('area and perimeter agree with @flatten-js/core', () => {
    fc.assert(
      fc.property(curved, (outline) => {
        const oracles = outline.rings.map(oracleOf);
        const areaSqIn = oracles.reduce((sum, oracle) => sum + oracle.area(), 0);
        const perimeterIn = oracles
          .flatMap((oracle) => [...oracle.edges])
          .reduce((sum, { length }) => sum + length, 0);
        expect(off(outlineAreaSqIn(outline), areaSqIn)).toBeLessThan(1e-9);
        expect(off(outlinePerimeterIn(outline), perimeterIn)).toBeLessThan(1e-9);
      }),
      settings,
    );
  });

  test('moving, turning and mirroring change neither area nor perimeter', () => {
    fc.assert(
      fc.property(
        curved,
        between(-1e4, 1e4),
        between(-1e4, 1e4),
        between(-360, 360),
        (outline, dxIn, dyIn, turnDeg) => {
          for (const changed of [
            moveOutline(outline, { dxIn, dyIn }),
            turnOutline(outline, turnDeg),
            mirror(outline),
          ]) {
            expect(off(outlineAreaSqIn(changed), outlineAreaSqIn(outline))).toBeLessThan(1e-9);
            expect(off(outlinePerimeterIn(changed), outlinePerimeterIn(outline))).toBeLessThan(1e-9);
          }
        },
      ),
      settings,
    );
  });

  test('what the corners lose is what the ring loses; a smooth rounding leaves no kink', () => {
    fc.assert(
      fc.property(polygons, roundings, (ring, by) => {
        const result = roundCorners(ring, new Map([[1, by]]));
        fc.pre(result.ok);
        const [layout] = result.corners;
        expect(off(ringAreaSqIn(ring) - (layout?.areaLostSqIn ?? 0), ringAreaSqIn(result.ring))).toBeLessThan(
          1e-10,
        );
        const kinksRad = kinksOf(result.ring).map(({ kinkRad }) => kinkRad);
        expect(Math.max(...kinksRad)).toBeLessThan((layout?.kinkRad ?? 0) + 1e-7);
        for (const { centreGapIn } of kinksOf(result.ring)) {
          if (by.kind === 'two-arcs' && centreGapIn !== null)
            expect(Math.abs(centreGapIn)).toBeLessThan(1e-6);
        }
      }),
      settings,
    );
  });

  test('a corner by its setback is the same corner by its radius, and by its chord and rise', () => {
    fc.assert(
      fc.property(polygons, between(5, 50), (ring, setbackIn) => {
        const one = roundCorners(ring, new Map([[2, { kind: 'setback', setbackIn }]]));
        if (!one.ok) throw new Error('edges of these rings are longer than the setback');
        const arc = one.corners[0]?.arcs[0];
        if (arc === undefined) throw new Error('no arc');
        const { radiusIn, chordIn, riseIn } = arc;
        for (const by of [
          { kind: 'radius', radiusIn },
          { kind: 'chord', chordIn, riseIn },
        ] as const) {
          const other = roundCorners(ring, new Map([[2, by]]));
          if (!other.ok) throw new Error('the same corner fits');
          expect(off(other.corners[0]?.setbackBeforeIn ?? 0, setbackIn)).toBeLessThan(1e-8);
          expect(off(other.corners[0]?.areaLostSqIn ?? 0, one.corners[0]?.areaLostSqIn ?? 0)).toBeLessThan(
            1e-6,
          );
          expect(other.corners[0]?.kinkRad ?? 1).toBeLessThan(1e-6);
          for (const [index, vertex] of other.ring.entries()) {
            expect(distanceIn(vertex, one.ring[index] ?? vertex)).toBeLessThan(1e-6);
          }
        }
      }),
      settings,
    );
  });
});

describe('booleans', () => {
  const pairs = fc
    .tuple(curved, curved, between(-500, 500), between(-500, 500))
    .map(([a, b, dxIn, dyIn]) => [a, moveOutline(b, { dxIn, dyIn })] as const);

  test('union and overlap add up to both; each covers no more than it can', () => {
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        const sumSqIn = outlineAreaSqIn(a) + outlineAreaSqIn(b);
        const overlapSqIn = overlapAreaSqIn(a, b);
        expect(off(unionAreaSqIn([a, b]) + overlapSqIn, sumSqIn)).toBeLessThan(1e-6);
        expect(off(overlapAreaSqIn(b, a), overlapSqIn)).toBeLessThan(1e-6);
        const smallerSqIn = Math.min(outlineAreaSqIn(a), outlineAreaSqIn(b));
        expect(overlapSqIn).toBeLessThan(smallerSqIn * (1 + 1e-6));
      }),
      settings,
    );
  });

  test('an outline with itself: the overlap is its area, and it lies within itself', () => {
    fc.assert(
      fc.property(curved, (outline) => {
        expect(off(overlapAreaSqIn(outline, outline), outlineAreaSqIn(outline))).toBeLessThan(1e-8);
        expect(isWithin(outline, outline.rings[0] ?? [])).toEqual({ ok: true });
      }),
      settings,
    );
  });

  test('a small square is within just where all its sides are; what sticks out is no more than its size', () => {
    fc.assert(
      fc.property(curved, between(-420, 420), between(-420, 420), (outline, dxIn, dyIn) => {
        const little = moveOutline({ rings: [rectangleRing({ lengthIn: 20, widthIn: 20 })] }, { dxIn, dyIn });
        const ring = little.rings[0] ?? [];
        const insideSqIn = overlapAreaSqIn(outline, little);
        const within = isWithin(outline, ring);
        if (within.ok) {
          expect(insideSqIn).toBeCloseTo(400, 0);
        } else {
          expect(insideSqIn).toBeLessThan(400);
          const touches = ring.some((corner) => containsPoint(outline, corner));
          if (touches) expect(within.byIn).toBeLessThan(20 * Math.SQRT2 + 0.01);
        }
      }),
      settings,
    );
  });

  test('stretching scales the area by both ratios', () => {
    fc.assert(
      fc.property(curved, between(0.8, 1.25), between(0.8, 1.25), (outline, alongRatio, acrossRatio) => {
        const stretched = stretchOutline(outline, { alongRatio, acrossRatio });
        const wantedSqIn = outlineAreaSqIn(outline) * alongRatio * acrossRatio;
        expect(off(outlineAreaSqIn(stretched), wantedSqIn)).toBeLessThan(1e-9);
      }),
      settings,
    );
  });
});

describe('joining', () => {
  /** A walk, and a piece with one bent far side, laid along its long side with a small gap or lap. */
  const widenings = fc.record({
    lengthIn: between(120, 400),
    startIn: between(-100, 380),
    pieceIn: between(30, 200),
    depthIn: between(20, 60),
    riseIn: between(1, 12),
    missIn: between(-0.4, 0.4),
    turnDeg: between(0, 360),
  });

  test('the area of the join is the sum, the overlap of the closed parts 0', () => {
    fc.assert(
      fc.property(widenings, ({ lengthIn, startIn, pieceIn, depthIn, riseIn, missIn, turnDeg }) => {
        const sharedIn = Math.min(lengthIn, startIn + pieceIn) - Math.max(0, startIn);
        fc.pre(sharedIn > 2);
        const walk = rectangleRing({ lengthIn, widthIn: 48 });
        const bent = bendEdges(
          rectangleRing({ lengthIn: pieceIn, widthIn: depthIn }),
          new Map([[3, { kind: 'rise', riseIn, bends: 'out' }]]),
        );
        if (!bent.ok) throw new Error('bends');
        const pieceAt = (dyIn: number) =>
          turnOutline(moveOutline({ rings: [bent.ring] }, { dxIn: startIn, dyIn }), turnDeg);
        const main = turnOutline({ rings: [walk] }, turnDeg);
        const result = joinAlongEdge(main.rings[0] ?? [], pieceAt(48 + missIn).rings[0] ?? [], 0.5);
        if (!result.ok) throw new Error(`does not join: ${result.missIn}`);
        expect(result.missIn).toBeCloseTo(Math.abs(missIn), 8);
        const sumSqIn = ringAreaSqIn(walk) + ringAreaSqIn(bent.ring);
        expect(off(ringAreaSqIn(result.ring), sumSqIn)).toBeLessThan(1e-8);
        const both = [main, pieceAt(48)] as const;
        expect(overlapAreaSqIn(...both)).toBeLessThan(1e-3);
        expect(off(unionAreaSqIn([...both]), ringAreaSqIn(result.ring))).toBeLessThan(1e-6);
        expect(off(overlapAreaSqIn({ rings: [result.ring] }, both[1]), ringAreaSqIn(bent.ring))).toBeLessThan(
          1e-6,
        );
      }),
      settings,
    );
  });
});
