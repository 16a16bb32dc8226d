import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcOf,
  distanceIn,
  edgeLengthsByKindIn,
  edgesOf,
  type Point,
  pointOnArc,
  type Ring,
  ringAreaSqIn,
  type StripPiece,
  selfCrossing,
  stripRing,
  type TurnRounding,
} from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

const settings = { numRuns: runCount(200), seed: Number(process.env.FAST_CHECK_SEED ?? 20260504) };
const edges = { start: 'house', end: 'stays', left: 'formed', right: 'joint' } as const;
const quarter = Math.PI / 2;

const straight = (lengthIn: number): StripPiece => ({ kind: 'straight', lengthIn });
const arc = (radiusIn: number, turnRad: number): StripPiece => ({ kind: 'arc', radiusIn, turnRad });
const turn = (turnRad: number, rounding: TurnRounding | null = null): StripPiece => ({
  kind: 'turn',
  turnRad,
  rounding,
});

function strip(line: readonly StripPiece[], widthIn = 48, endWidthIn: number | null = null) {
  return stripRing({ widthIn, endWidthIn, line, edges });
}

function built(line: readonly StripPiece[], widthIn = 48, endWidthIn: number | null = null) {
  const result = strip(line, widthIn, endWidthIn);
  if (!result.ok) throw new Error(`piece ${result.piece}: ${result.reason}`);
  return result;
}

/** Sharp corner or middle of the arc on one side of a walk with one turn and nothing else. */
function turnPoint(ring: Ring, kind: 'formed' | 'joint'): Point {
  const side = edgesOf(ring).filter(({ from }) => from.edge === kind);
  const [first, second] = side;
  if (first === undefined || second === undefined)
    throw new Error('a side with a turn has two edges or more');
  const curved = side.find(({ from }) => from.bulge !== 0);
  return curved === undefined ? first.to : pointOnArc(arcOf(curved.from, curved.to), 0.5);
}

function distanceFromLineIn(point: Point, from: Point, to: Point): number {
  const alongXIn = to.xIn - from.xIn;
  const alongYIn = to.yIn - from.yIn;
  const crossSqIn = alongXIn * (point.yIn - from.yIn) - alongYIn * (point.xIn - from.xIn);
  return Math.abs(crossSqIn) / Math.hypot(alongXIn, alongYIn);
}

const length = fc.double({ min: 100, max: 600, noNaN: true });
const width = fc.double({ min: 24, max: 60, noNaN: true });
const sideways = fc.constantFrom(1, -1);

describe('stripRing, straights and arcs', () => {
  test('exact: a straight walk, right side first, each edge of its kind', () => {
    const { ring, lengthIn, turns } = built([straight(240)]);
    expect(ring).toEqual([
      { xIn: 0, yIn: -24, bulge: 0, edge: 'joint' },
      { xIn: 240, yIn: -24, bulge: 0, edge: 'stays' },
      { xIn: 240, yIn: 24, bulge: 0, edge: 'formed' },
      { xIn: 0, yIn: 24, bulge: 0, edge: 'house' },
    ]);
    expect(lengthIn).toBe(240);
    expect(turns).toEqual([]);
  });

  // By hand: 4 ft wide, a quarter turn to the left at an inner radius of 6 ft: radii 72, 96 and 120 in.
  test('exact: a quarter turn', () => {
    const { ring, lengthIn } = built([arc(96, quarter)]);
    expect(lengthIn).toBeCloseTo(96 * quarter, 12);
    expect(ringAreaSqIn(ring)).toBeCloseTo((quarter / 2) * (120 ** 2 - 72 ** 2), 9);
    const lengths = edgeLengthsByKindIn({ rings: [ring] });
    expect(lengths.formed.curvedIn).toBeCloseTo(72 * quarter, 10);
    expect(lengths.joint.curvedIn).toBeCloseTo(120 * quarter, 10);
    for (const [index, [xIn = 0, yIn = 0]] of [
      [0, -24],
      [120, 96],
      [72, 96],
      [0, 24],
    ].entries()) {
      expect(ring[index]?.xIn).toBeCloseTo(xIn, 10);
      expect(ring[index]?.yIn).toBeCloseTo(yIn, 10);
    }
  });

  test('exact: straights in a row are one', () => {
    expect(built([straight(100), straight(140)])).toEqual(built([straight(240)]));
    const rounding = { how: 'inner', setbackIn: 60 } as const;
    const parted = built([straight(40), straight(80), turn(quarter, rounding), straight(30), straight(90)]);
    expect(parted.ring).toEqual(built([straight(120), turn(quarter, rounding), straight(120)]).ring);
  });

  const piece = fc.oneof(
    length.map(straight),
    fc
      .tuple(
        fc.double({ min: 31, max: 300, noNaN: true }),
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        sideways,
      )
      .map(([radiusIn, turnRad, hand]) => arc(radiusIn, hand * turnRad)),
  );
  const lines = fc.array(piece, { minLength: 1, maxLength: 6 });
  const mirrored = (line: readonly StripPiece[]) =>
    line.map((one) => (one.kind === 'straight' ? one : { ...one, turnRad: -one.turnRad }));

  test('area is the width times the length of the centre line', () => {
    fc.assert(
      fc.property(lines, width, (line, widthIn) => {
        const { ring, lengthIn } = built(line, widthIn);
        expect(ringAreaSqIn(ring) / (widthIn * lengthIn)).toBeCloseTo(1, 9);
        const mirror = built(mirrored(line), widthIn);
        expect(ringAreaSqIn(mirror.ring) / ringAreaSqIn(ring)).toBeCloseTo(1, 9);
      }),
      settings,
    );
  });

  test('the two edges of an arc share a centre, a width apart', () => {
    fc.assert(
      fc.property(lines, width, (line, widthIn) => {
        const all = edgesOf(built(line, widthIn).ring).filter(({ from }) => from.bulge !== 0);
        const right = all.filter(({ from }) => from.edge === 'joint');
        const left = all.filter(({ from }) => from.edge === 'formed').reverse();
        expect(right.length).toBe(line.filter(({ kind }) => kind === 'arc').length);
        expect(left.length).toBe(right.length);
        for (const [index, edge] of right.entries()) {
          const opposite = left[index];
          if (opposite === undefined) throw new Error('as many arcs left as right');
          const one = arcOf(edge.from, edge.to);
          const other = arcOf(opposite.from, opposite.to);
          expect(distanceIn(one.centre, other.centre)).toBeLessThan(1e-7);
          expect(Math.abs(one.radiusIn - other.radiusIn)).toBeCloseTo(widthIn, 7);
        }
      }),
      settings,
    );
  });

  test('a width that changes does so on straights alone, evenly over all of them', () => {
    fc.assert(
      fc.property(length, length, width, width, sideways, (firstIn, lastIn, widthIn, endWidthIn, hand) => {
        const { ring } = built([straight(firstIn), arc(150, hand), straight(lastIn)], widthIn, endWidthIn);
        const middleIn = widthIn + ((endWidthIn - widthIn) * firstIn) / (firstIn + lastIn);
        const byPartsSqIn =
          (firstIn * (widthIn + middleIn)) / 2 + 150 * middleIn + (lastIn * (middleIn + endWidthIn)) / 2;
        expect(ringAreaSqIn(ring) / byPartsSqIn).toBeCloseTo(1, 9);
        const lengths = edgeLengthsByKindIn({ rings: [ring] });
        expect(lengths.house.straightIn).toBeCloseTo(widthIn, 9);
        expect(lengths.stays.straightIn).toBeCloseTo(endWidthIn, 9);
      }),
      settings,
    );
  });
});

describe('stripRing, turns', () => {
  const ell = (rounding: TurnRounding | null) => [straight(240), turn(quarter, rounding), straight(180)];

  test('exact: a square turn to the left, mitred', () => {
    const { ring, lengthIn, turns } = built(ell(null));
    expect(ring.map(({ xIn, yIn }) => [xIn, yIn])).toEqual([
      [0, -24],
      [264, expect.closeTo(-24, 10)],
      [264, 180],
      [216, 180],
      [expect.closeTo(216, 10), expect.closeTo(24, 10)],
      [0, 24],
    ]);
    expect(lengthIn).toBe(420);
    expect(turns).toMatchObject([{ number: 1, piece: 2, widthIn: 48, innerSetbackIn: 0, outerSetbackIn: 0 }]);
    expect(turns[0]?.chosenWidthIn).toBeCloseTo(48 * Math.SQRT2, 10);
  });

  // By hand, 48 in wide, set back 36 in at a square turn: sharp 48 sqrt 2, arcs of radius 36 in whose middle
  // lies 36 (sqrt 2 - 1) from the corner; the parallel outer arc has a radius of 84 in.
  const external = 36 * (Math.SQRT2 - 1);
  test.each([
    { how: 'equal', widthIn: 48 * Math.SQRT2, innerIn: 36, outerIn: 36 },
    { how: 'parallel', widthIn: 48, innerIn: 36, outerIn: 84 },
    { how: 'outer', widthIn: 48 * Math.SQRT2 - external, innerIn: 0, outerIn: 36 },
    { how: 'inner', widthIn: 48 * Math.SQRT2 + external, innerIn: 36, outerIn: 0 },
  ] as const)('exact: $how at a square turn', ({ how, widthIn, innerIn, outerIn }) => {
    const [laid] = built(ell({ how, setbackIn: 36 })).turns;
    expect(laid?.chosenWidthIn).toBeCloseTo(widthIn, 10);
    expect(laid?.innerSetbackIn).toBeCloseTo(innerIn, 10);
    expect(laid?.outerSetbackIn).toBeCloseTo(outerIn, 10);
    expect(laid?.widths.sharpIn).toBeCloseTo(48 * Math.SQRT2, 10);
    expect(laid?.widths.equalIn).toBeCloseTo(48 * Math.SQRT2, 10);
    expect(laid?.widths.parallelIn).toBe(48);
    expect(laid?.widths.outerIn).toBeCloseTo(48 * Math.SQRT2 - external, 10);
    expect(laid?.widths.innerIn).toBeCloseTo(48 * Math.SQRT2 + external, 10);
  });

  const how = fc.constantFrom('equal', 'parallel', 'outer', 'inner');
  const angle = fc.double({ min: 0.1, max: 2, noNaN: true });
  const setback = fc.double({ min: 1, max: 60, noNaN: true });

  test('the width told is the one built, across the turn', () => {
    fc.assert(
      fc.property(how, angle, sideways, setback, width, (chosen, angleRad, hand, setbackIn, widthIn) => {
        const rounding = { how: chosen, setbackIn };
        const { ring, turns } = built(
          [straight(400), turn(hand * angleRad, rounding), straight(300)],
          widthIn,
        );
        const across = distanceIn(turnPoint(ring, 'formed'), turnPoint(ring, 'joint'));
        expect(across).toBeCloseTo(turns[0]?.chosenWidthIn ?? Number.NaN, 7);
        expect(selfCrossing(ring)).toBeNull();
      }),
      settings,
    );
  });

  test('mitred or with equal setbacks a turn covers width times length; parallel, as an arc would', () => {
    fc.assert(
      fc.property(angle, sideways, setback, width, (angleRad, hand, setbackIn, widthIn) => {
        const made = (rounding: TurnRounding | null) =>
          built([straight(400), turn(hand * angleRad, rounding), straight(300)], widthIn);
        for (const rounding of [null, { how: 'equal', setbackIn } as const]) {
          expect(ringAreaSqIn(made(rounding).ring) / (widthIn * 700)).toBeCloseTo(1, 9);
        }
        const radiusIn = setbackIn / Math.tan(angleRad / 2) + widthIn / 2;
        const tangentIn = radiusIn * Math.tan(angleRad / 2);
        const bent = built(
          [straight(400 - tangentIn), arc(radiusIn, hand * angleRad), straight(300 - tangentIn)],
          widthIn,
        );
        const parallel = made({ how: 'parallel', setbackIn });
        expect(parallel.ring.length).toBe(bent.ring.length);
        for (const [index, vertex] of parallel.ring.entries()) {
          const same = bent.ring[index];
          expect(vertex.xIn).toBeCloseTo(same?.xIn ?? Number.NaN, 7);
          expect(vertex.yIn).toBeCloseTo(same?.yIn ?? Number.NaN, 7);
          expect(vertex.bulge).toBeCloseTo(same?.bulge ?? Number.NaN, 9);
        }
      }),
      settings,
    );
  });

  test('where the width changes, both edges turn by the turn, and widths hold but for the lean squared', () => {
    fc.assert(
      fc.property(angle, sideways, width, width, (angleRad, hand, widthIn, endWidthIn) => {
        const { ring, turns } = built(
          [straight(400), turn(hand * angleRad), straight(300)],
          widthIn,
          endWidthIn,
        );
        for (const kind of ['formed', 'joint'] as const) {
          const [first, second] = edgesOf(ring).filter(({ from }) => from.edge === kind);
          if (first === undefined || second === undefined) throw new Error('two edges a side');
          const headings = [first, second].map(({ from, to }) =>
            Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn),
          );
          const turnedRad = (headings[1] ?? 0) - (headings[0] ?? 0);
          // The left side is walked backwards; both ways round it turns to the same hand about the inside.
          const expected = kind === 'joint' ? hand * angleRad : -hand * angleRad;
          expect(Math.cos(turnedRad - expected)).toBeCloseTo(1, 9);
        }
        const lean = (endWidthIn - widthIn) / 2 / 700;
        const across = distanceIn(turnPoint(ring, 'formed'), turnPoint(ring, 'joint'));
        const told = turns[0]?.chosenWidthIn ?? Number.NaN;
        expect(across * (1 + lean ** 2)).toBeCloseTo(told, 7);
        expect(turns[0]?.widthIn).toBeCloseTo(widthIn + ((endWidthIn - widthIn) * 400) / 700, 9);
      }),
      settings,
    );
  });

  test('where the width changes, rounded corners start and end on the edges of the sharp ones', () => {
    fc.assert(
      fc.property(how, angle, sideways, setback, width, (chosen, angleRad, hand, setbackIn, endWidthIn) => {
        const made = (rounding: TurnRounding | null) =>
          built([straight(400), turn(hand * angleRad, rounding), straight(300)], 36, endWidthIn);
        const rounded = made({ how: chosen, setbackIn });
        const sharp = made(null).ring;
        for (const arcEdge of edgesOf(rounded.ring).filter(({ from }) => from.bulge !== 0)) {
          const corner = turnPoint(sharp, arcEdge.from.edge === 'joint' ? 'joint' : 'formed');
          const inner = (arcEdge.from.edge === 'formed') === hand > 0;
          const laid = rounded.turns[0];
          const expectedIn = (inner ? laid?.innerSetbackIn : laid?.outerSetbackIn) ?? Number.NaN;
          for (const end of [arcEdge.from, arcEdge.to]) {
            expect(distanceIn(end, corner)).toBeCloseTo(expectedIn, 8);
            const nearest = edgesOf(sharp).map(({ from, to }) => distanceFromLineIn(end, from, to));
            expect(Math.min(...nearest)).toBeLessThan(1e-8);
          }
        }
      }),
      settings,
    );
  });

  test('exact: setbacks that use an edge up make the arcs meet', () => {
    // The inner edge between the turns is 200 - 24 - 24 long.
    const rounding = { how: 'inner', setbackIn: 76 } as const;
    const line = [
      straight(200),
      turn(quarter, rounding),
      straight(200),
      turn(quarter, rounding),
      straight(200),
    ];
    const { ring } = built(line);
    expect(edgesOf(ring).every(({ from, to }) => distanceIn(from, to) > 1)).toBe(true);
    expect(ring.filter(({ bulge }) => bulge !== 0).length).toBe(2);
    expect(ring.filter(({ edge }) => edge === 'formed').length).toBe(4);
  });
});

describe('stripRing, what cannot be built', () => {
  test('an arc whose inner edge would have no radius left', () => {
    const refused = strip([straight(100), arc(24, 1)]);
    expect(refused).toEqual({ ok: false, piece: 2, reason: 'radius-too-small', haveIn: 24, leastIn: 24 });
    expect(strip([straight(100), arc(24.001, 1)]).ok).toBe(true);
    // The walk has narrowed to 36 in by then.
    expect(strip([straight(100), arc(24, 1)], 48, 36).ok).toBe(true);
  });

  test.each([
    { name: 'first', line: [turn(quarter), straight(100)], piece: 1 },
    { name: 'last', line: [straight(100), turn(quarter)], piece: 2 },
    { name: 'beside an arc', line: [straight(100), turn(quarter), arc(100, 1)], piece: 2 },
    { name: 'beside a turn', line: [straight(100), turn(1), turn(1), straight(100)], piece: 2 },
  ])('a turn that comes $name', ({ line, piece }) => {
    expect(strip(line)).toMatchObject({ ok: false, piece, reason: 'turn-without-straight', haveIn: 0 });
  });

  test('a straight too short for the corners of its turns', () => {
    const between = (lengthIn: number) => [
      straight(100),
      turn(quarter),
      straight(lengthIn),
      turn(quarter),
      straight(100),
    ];
    const refused = strip(between(48));
    expect(refused).toMatchObject({ ok: false, piece: 3, reason: 'straight-too-short', haveIn: 48 });
    expect(refused.ok || !('leastIn' in refused) ? 0 : refused.leastIn).toBeCloseTo(48, 9);
    expect(strip(between(48.001)).ok).toBe(true);
    // Turning back the other way the corners leave each other room.
    expect(strip([straight(100), turn(1), straight(5), turn(-1), straight(100)]).ok).toBe(true);
    expect(strip([straight(23), turn(quarter), straight(100)])).toMatchObject({
      piece: 1,
      reason: 'straight-too-short',
    });
  });

  test('a straight too short where the walk widens', () => {
    const line = [straight(200), turn(quarter), straight(40), turn(quarter), straight(200)];
    const refused = strip(line, 48, 136);
    expect(refused).toMatchObject({ ok: false, piece: 3, reason: 'straight-too-short', haveIn: 40 });
    // By hand: half the width grows k = 0.1 an inch, to 44 and 48 at the turns; on the inner edge the first
    // corner lies 44 (1 - k) / (1 + k²) past its turn, the second 48 (1 + k) / (1 + k²) before its own.
    const leastIn = (44 * 0.9 + 48 * 1.1) / 1.01;
    expect(refused.ok || !('leastIn' in refused) ? 0 : refused.leastIn).toBeCloseTo(leastIn, 9);
  });

  test('a parallel outer arc that does not fit, said in terms of the setback given', () => {
    const withSetback = (setbackIn: number) =>
      strip([
        straight(400),
        turn(quarter, { how: 'parallel', setbackIn }),
        straight(150),
        turn(-quarter),
        straight(400),
      ]);
    // By hand: both edges of the middle straight are 150 long; the outer arc takes the setback and 48 more.
    const refused = withSetback(120);
    expect(refused).toMatchObject({ ok: false, piece: 2, reason: 'setback-too-long', haveIn: 120 });
    expect(refused.ok || !('mostIn' in refused) ? 0 : refused.mostIn).toBeCloseTo(102, 9);
    expect(withSetback(102).ok).toBe(true);
  });

  // By hand, 48 in wide: a 100 in straight before a square turn has 76 in of inner and 124 in of outer edge;
  // the parallel outer arc takes 48 in more than its setback.
  test.each([
    { how: 'inner', mostIn: 76 },
    { how: 'equal', mostIn: 76 },
    { how: 'parallel', mostIn: 76 },
    { how: 'outer', mostIn: 124 },
  ] as const)('a setback longer than its edge, $how', ({ how, mostIn }) => {
    const withSetback = (setbackIn: number) =>
      strip([straight(100), turn(quarter, { how, setbackIn }), straight(300)]);
    const refused = withSetback(130);
    expect(refused).toMatchObject({ ok: false, piece: 2, reason: 'setback-too-long', haveIn: 130 });
    const saidIn = refused.ok || !('mostIn' in refused) ? 0 : refused.mostIn;
    expect(saidIn).toBeCloseTo(mostIn, 9);
    expect(withSetback(saidIn).ok).toBe(true);
    expect(withSetback(saidIn + 0.001).ok).toBe(false);
  });

  test('two setbacks that share an edge, the room for one being what the other leaves', () => {
    const line = (firstIn: number) => [
      straight(300),
      turn(quarter, { how: 'inner', setbackIn: firstIn }),
      straight(200),
      turn(quarter, { how: 'inner', setbackIn: 50 }),
      straight(300),
    ];
    const refused = strip(line(110));
    expect(refused).toMatchObject({ ok: false, piece: 2, reason: 'setback-too-long' });
    expect(refused.ok || !('mostIn' in refused) ? 0 : refused.mostIn).toBeCloseTo(200 - 48 - 50, 9);
    expect(strip(line(102)).ok).toBe(true);
  });

  test('an outer corner rounded until nothing is left of the walk', () => {
    const withSetback = (setbackIn: number) =>
      strip([straight(600), turn(quarter, { how: 'outer', setbackIn }), straight(600)]);
    const refused = withSetback(300);
    const saidIn = refused.ok || !('mostIn' in refused) ? 0 : refused.mostIn;
    // By hand: R = W / (1 - cos 45 degrees), and a square corner has S = R.
    expect(saidIn).toBeCloseTo(48 / (1 - Math.SQRT1_2), 5);
    const narrow = withSetback(saidIn);
    expect(narrow.ok && (narrow.turns[0]?.chosenWidthIn ?? 0) > 0).toBe(true);
  });

  test('a width that has no straight to change on', () => {
    const refused = strip([arc(200, 1), arc(200, -1)], 48, 60);
    const only = { leastIn: 48, mostIn: 48 };
    expect(refused).toEqual({ ok: false, piece: 1, reason: 'width-changes-on-arc', haveIn: 60, ...only });
    expect(strip([arc(200, 1), arc(200, -1)], 48, 48).ok).toBe(true);
  });

  test.each([
    { name: 'no piece', line: [] },
    { name: 'a straight of 0', line: [straight(0)] },
    { name: 'a straight of NaN', line: [straight(Number.NaN)] },
    { name: 'an arc of radius 0', line: [arc(0, 1)] },
    { name: 'an arc of radius NaN', line: [arc(Number.NaN, 1)] },
    { name: 'an arc that does not turn', line: [arc(100, 0)] },
    { name: 'an arc of a full turn', line: [arc(100, 2 * Math.PI)] },
    { name: 'an arc that turns by NaN', line: [arc(100, Number.NaN)] },
    { name: 'a turn of 0', line: [straight(100), turn(0), straight(100)] },
    { name: 'a turn right back', line: [straight(100), turn(-Math.PI), straight(100)] },
    { name: 'a turn of NaN', line: [straight(100), turn(Number.NaN), straight(100)] },
    {
      name: 'a setback of 0',
      line: [straight(100), turn(1, { how: 'equal', setbackIn: 0 }), straight(100)],
    },
    {
      name: 'a setback of NaN',
      line: [straight(100), turn(1, { how: 'equal', setbackIn: Number.NaN }), straight(100)],
    },
  ])('throws on $name', ({ line }) => {
    expect(() => strip(line)).toThrow(RangeError);
  });

  test.each([0, -1, Infinity, Number.NaN])('throws on a width of %d', (widthIn) => {
    expect(() => strip([straight(100)], widthIn)).toThrow(RangeError);
    expect(() => strip([straight(100)], 48, widthIn)).toThrow(RangeError);
  });
});
