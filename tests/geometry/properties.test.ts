import { Arc, Line, Point, Polygon, Segment } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcOf,
  clipLineToOutline,
  edgesOf,
  moveOutline,
  type Outline,
  orient,
  outlineAreaSqIn,
  outlinePerimeterIn,
  type Ring,
  reverseRing,
  roundCorners,
  selfCrossing,
  turnOutline,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const seed = Number(process.env.FAST_CHECK_SEED ?? 20260504);
const settings = { numRuns: runCount(200), seed };
console.info(`geometry properties: seed ${seed}, 200 cases each`);

/** A star-shaped ring about a point: never crosses itself, edges bulge a little either way. */
function starRing(aboutIn: { x: number; y: number }, leastIn: number, mostIn: number, bulges: boolean) {
  const spoke = fc.record({
    shareOut: fc.double({ min: 0, max: 1, noNaN: true }),
    bulge: bulges ? fc.constantFrom(0, 0, 0.1, -0.1, 0.2, -0.05) : fc.constant(0),
  });
  return fc
    .record({
      spokes: fc.array(spoke, { minLength: 5, maxLength: 9 }),
      turn: fc.double({ min: 0, max: 6, noNaN: true }),
    })
    .map(
      ({ spokes, turn }): Ring =>
        spokes.map(({ shareOut, bulge }, index) => {
          const directionRad = turn + (index * 2 * Math.PI) / spokes.length;
          const outIn = leastIn + shareOut * (mostIn - leastIn);
          return {
            xIn: aboutIn.x + outIn * Math.cos(directionRad),
            yIn: aboutIn.y + outIn * Math.sin(directionRad),
            bulge,
            edge: 'formed',
          };
        }),
    )
    .filter((ring) => selfCrossing(ring) === null);
}

const outlines: fc.Arbitrary<Outline> = fc
  .tuple(starRing({ x: 0, y: 0 }, 150, 400, true), starRing({ x: 10, y: -5 }, 10, 40, true), fc.boolean())
  .map(([outer, hole, hasHole]) => ({ rings: hasHole ? [outer, reverseRing(hole)] : [outer] }));

function oracleOf(ring: Ring): Polygon {
  const edges = edgesOf(ring).map(({ from, to }) => {
    if (from.bulge === 0) return new Segment(new Point(from.xIn, from.yIn), new Point(to.xIn, to.yIn));
    const arc = arcOf(from, to);
    const endRad = arc.startRad + arc.sweepRad;
    return new Arc(
      new Point(arc.centre.xIn, arc.centre.yIn),
      arc.radiusIn,
      arc.startRad,
      endRad,
      arc.sweepRad > 0,
    );
  });
  const polygon = new Polygon();
  polygon.addFace(edges);
  return polygon;
}

function mirror(outline: Outline): Outline {
  const mirrored = outline.rings.map((ring) =>
    ring.map((vertex) => ({ ...vertex, xIn: -vertex.xIn, bulge: -vertex.bulge })),
  );
  return orient({ rings: mirrored });
}

function expectSameSize(changed: Outline, original: Outline) {
  expect(outlineAreaSqIn(changed) / outlineAreaSqIn(original)).toBeCloseTo(1, 10);
  expect(outlinePerimeterIn(changed) / outlinePerimeterIn(original)).toBeCloseTo(1, 10);
}

describe('invariants', () => {
  const far = fc.double({ min: -1e5, max: 1e5, noNaN: true });

  test('moving changes neither area nor perimeter', () => {
    fc.assert(
      fc.property(outlines, far, far, (outline, dxIn, dyIn) => {
        expectSameSize(moveOutline(outline, { dxIn, dyIn }), outline);
      }),
      settings,
    );
  });

  test('turning changes neither area nor perimeter', () => {
    fc.assert(
      fc.property(outlines, fc.double({ min: -720, max: 720, noNaN: true }), (outline, turnDeg) => {
        expectSameSize(turnOutline(outline, turnDeg), outline);
      }),
      settings,
    );
  });

  test('the mirror image has the same area and perimeter', () => {
    fc.assert(
      fc.property(outlines, (outline) => expectSameSize(mirror(outline), outline)),
      settings,
    );
  });

  test('rounding takes off exactly the area it reports, and shortens the edge', () => {
    const straight = starRing({ x: 0, y: 0 }, 150, 400, false);
    fc.assert(
      fc.property(
        straight,
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 30 }),
        (ring, corner, setbackIn) => {
          const result = roundCorners(ring, new Map([[corner, { kind: 'setback', setbackIn }]]));
          if (!result.ok) throw new Error('edges of these rings are longer than the setback');
          const [rounded] = result.corners;
          const before = { rings: [ring] };
          const after = { rings: [result.ring] };
          expect(outlineAreaSqIn(before) - (rounded?.areaLostSqIn ?? 0)).toBeCloseTo(
            outlineAreaSqIn(after),
            5,
          );
          const cutIn = 2 * setbackIn - (rounded?.arcs[0]?.arcLengthIn ?? 0);
          expect(cutIn).toBeGreaterThan(0);
          expect(outlinePerimeterIn(before) - cutIn).toBeCloseTo(outlinePerimeterIn(after), 7);
        },
      ),
      settings,
    );
  });
});

describe('against @flatten-js/core', () => {
  test('area and perimeter', () => {
    fc.assert(
      fc.property(outlines, (outline) => {
        const [outer, ...holes] = outline.rings.map(oracleOf);
        const holesSqIn = holes.reduce((sum, hole) => sum + hole.area(), 0);
        expect(outlineAreaSqIn(outline)).toBeCloseTo((outer?.area() ?? 0) - holesSqIn, 5);
        const lengthsIn = outline.rings.flatMap((ring) =>
          [...oracleOf(ring).edges].map((edge) => edge.length),
        );
        expect(outlinePerimeterIn(outline)).toBeCloseTo(
          lengthsIn.reduce((sum, length) => sum + length, 0),
          6,
        );
      }),
      settings,
    );
  });

  test('where a line enters and leaves', () => {
    const place = fc.double({ min: -140, max: 140, noNaN: true });
    const direction = fc.double({ min: 0, max: Math.PI, noNaN: true });
    fc.assert(
      fc.property(outlines, place, direction, (outline, offIn, turnRad) => {
        const along = { x: Math.cos(turnRad), y: Math.sin(turnRad) };
        const start = { x: -along.y * offIn, y: along.x * offIn };
        // The oracle rounds angles and lengths to 1e-6 and loses a hit beside a corner; such lines are left out.
        const offLineIn = (corner: { xIn: number; yIn: number }) =>
          Math.abs(along.x * (corner.yIn - start.y) - along.y * (corner.xIn - start.x));
        fc.pre(outline.rings.flat().every((corner) => offLineIn(corner) > 0.01));
        const line = {
          fromXIn: start.x,
          fromYIn: start.y,
          toXIn: start.x + along.x,
          toYIn: start.y + along.y,
        };
        const ours = clipLineToOutline(line, outline).flatMap(({ fromIn, toIn }) => [fromIn, toIn]);
        const oracleLine = new Line(new Point(start.x, start.y), new Point(line.toXIn, line.toYIn));
        const theirs = outline.rings
          .flatMap((ring) => [...oracleOf(ring).edges].flatMap((edge) => edge.shape.intersect(oracleLine)))
          .map((point) => (point.x - start.x) * along.x + (point.y - start.y) * along.y)
          .sort((a, b) => a - b)
          // A corner on the line belongs to two edges and comes twice.
          .filter((hit, index, all) => index === 0 || hit - (all[index - 1] ?? 0) > 1e-6);
        expect(ours.length).toBe(theirs.length);
        for (const [index, hit] of ours.entries()) expect(hit).toBeCloseTo(theirs[index] ?? Number.NaN, 5);
      }),
      settings,
    );
  });
});
