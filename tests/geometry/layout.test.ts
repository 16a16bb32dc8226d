import { describe, expect, test } from 'vitest';
import {
  chordOffsets,
  compoundTangents,
  deflectionsAlong,
  outOfSquare,
  reverseCurve,
  squareTriple,
  swingTies,
  tangentOffsets,
} from '../../src/geometry/index.ts';

describe('chordOffsets', () => {
  const arc = { radiusIn: 130, chordIn: 100, stepIn: 12 };

  test('exact: from the rise in the middle to 0 at the end, whole steps and then the end', () => {
    const rows = chordOffsets(arc);
    expect(rows.map(({ alongIn }) => alongIn)).toEqual([0, 12, 24, 36, 48, 50]);
    expect(rows[0]?.offsetIn).toBeCloseTo(10, 12);
    expect(rows.at(-1)?.offsetIn).toBe(0);
  });

  test('every point lies on the circle', () => {
    for (const { alongIn, offsetIn } of chordOffsets(arc)) {
      expect(Math.hypot(alongIn, offsetIn + 120)).toBeCloseTo(130, 10);
    }
  });

  test('a step that ends at the end gives no row twice; a half circle reaches its radius', () => {
    expect(chordOffsets({ radiusIn: 50, chordIn: 100, stepIn: 25 }).map(({ alongIn }) => alongIn)).toEqual([
      0, 25, 50,
    ]);
    expect(chordOffsets({ radiusIn: 50, chordIn: 100, stepIn: 25 })[0]?.offsetIn).toBeCloseTo(50, 12);
    expect(chordOffsets({ radiusIn: 50, chordIn: 100, stepIn: 200 }).map(({ alongIn }) => alongIn)).toEqual([
      0, 50,
    ]);
  });

  // The difference of two roots near 1e7 would keep no more than eight decimals of it.
  test('a flat arc keeps its digits', () => {
    const [middle] = chordOffsets({ radiusIn: 1e7, chordIn: 100, stepIn: 10 });
    expect((middle?.offsetIn ?? 0) / (2500 / 2e7)).toBeCloseTo(1, 10);
  });

  test.each([
    { ...arc, radiusIn: 49 },
    { ...arc, chordIn: 0 },
    { ...arc, stepIn: 0 },
    { ...arc, stepIn: 1e-6 },
    { ...arc, radiusIn: Number.NaN },
  ])('refuses %j', (wrong) => {
    expect(() => chordOffsets(wrong)).toThrow(RangeError);
  });
});

describe('tangentOffsets', () => {
  test('every point lies on the circle that touches the line; the last row is the end', () => {
    const rows = tangentOffsets({ radiusIn: 60, mostIn: 42, stepIn: 12 });
    expect(rows.map(({ alongIn }) => alongIn)).toEqual([12, 24, 36, 42]);
    for (const { alongIn, offsetIn } of rows) expect(Math.hypot(alongIn, 60 - offsetIn)).toBeCloseTo(60, 10);
  });

  test('an end that is off a whole step by noise gives no row twice', () => {
    const rows = tangentOffsets({ radiusIn: 60, mostIn: 36 + 1e-9, stepIn: 12 });
    expect(rows.map(({ alongIn }) => Math.round(alongIn))).toEqual([12, 24, 36]);
  });

  test('exact: at the radius the arc is a radius off', () => {
    expect(tangentOffsets({ radiusIn: 60, mostIn: 60, stepIn: 60 })).toEqual([{ alongIn: 60, offsetIn: 60 }]);
  });

  test('refuses to go past the radius', () => {
    expect(() => tangentOffsets({ radiusIn: 60, mostIn: 60.001, stepIn: 12 })).toThrow(RangeError);
    expect(() => tangentOffsets({ radiusIn: 60, mostIn: Number.NaN, stepIn: 12 })).toThrow(RangeError);
  });
});

describe('deflectionsAlong', () => {
  test('every point lies on the circle that touches the line at the start, so far along it', () => {
    const rows = deflectionsAlong({ radiusIn: 60, arcLengthIn: 100, stepIn: 30 });
    expect(rows.map(({ alongIn }) => alongIn)).toEqual([30, 60, 90, 100]);
    for (const { alongIn, deflectionRad, chordIn } of rows) {
      const x = chordIn * Math.cos(deflectionRad);
      const y = chordIn * Math.sin(deflectionRad);
      expect(x).toBeCloseTo(60 * Math.sin(alongIn / 60), 10);
      expect(y).toBeCloseTo(60 - 60 * Math.cos(alongIn / 60), 10);
    }
  });

  test('refuses more than the circle', () => {
    expect(() => deflectionsAlong({ radiusIn: 10, arcLengthIn: 63, stepIn: 1 })).toThrow(RangeError);
  });
});

describe('swingTies', () => {
  const corner = (xIn: number, yIn: number) => ({ xIn, yIn });

  test('exact: a 3-4-5 triangle is swung at a right angle', () => {
    expect(swingTies(corner(36, 48), [corner(0, 48), corner(36, 0), corner(0, 0)])).toEqual({
      from: [0, 1],
      distancesIn: [36, 48],
      crossingRad: Math.PI / 2,
      isWeak: false,
      side: 'left',
    });
  });

  test('of equal crossings the shorter tapes; the side is seen from the first to the second', () => {
    const ties = swingTies(corner(0, 0), [corner(200, 0), corner(0, 200), corner(10, 0), corner(0, 10)]);
    expect(ties?.from).toEqual([2, 3]);
    expect(ties?.side).toBe('left');
    expect(swingTies(corner(0, 0), [corner(0, 10), corner(10, 0)])?.side).toBe('right');
  });

  test('below 30 degrees only where nothing better is there, and said so', () => {
    const far = [corner(100, 0), corner(100, 50)];
    expect(swingTies(corner(0, 0), far)).toMatchObject({ isWeak: true });
    expect(swingTies(corner(0, 0), far)?.crossingRad).toBeCloseTo(Math.atan(0.5), 12);
    expect(swingTies(corner(0, 0), [...far, corner(0, 300)])).toMatchObject({ isWeak: false, from: [0, 2] });
    // Arcs that cross at an obtuse angle cross as well as at its supplement.
    expect(swingTies(corner(0, 0), [corner(100, 50), corner(-100, 0)])?.crossingRad).toBeCloseTo(
      Math.atan(0.5),
      12,
    );
  });

  test('none: too few, all on one line with the point, or the point itself', () => {
    expect(swingTies(corner(0, 0), [])).toBeNull();
    expect(swingTies(corner(0, 0), [corner(5, 5)])).toBeNull();
    expect(swingTies(corner(0, 0), [corner(5, 5), corner(-9, -9), corner(0, 0)])).toBeNull();
  });
});

describe('compoundTangents', () => {
  test('exact: two arcs of one radius are one arc', () => {
    const curve = { firstRadiusIn: 50, firstTurnRad: 0.4, secondRadiusIn: 50, secondTurnRad: 0.9 };
    const { beforeIn, afterIn } = compoundTangents(curve);
    expect(beforeIn).toBeCloseTo(50 * Math.tan(0.65), 10);
    expect(afterIn).toBeCloseTo(50 * Math.tan(0.65), 10);
  });

  test('the sharper end starts nearer to the corner', () => {
    const { beforeIn, afterIn } = compoundTangents({
      firstRadiusIn: 50,
      firstTurnRad: 0.6,
      secondRadiusIn: 20,
      secondTurnRad: 0.6,
    });
    expect(afterIn).toBeLessThan(beforeIn);
  });

  test.each([
    { firstRadiusIn: 0, firstTurnRad: 1, secondRadiusIn: 1, secondTurnRad: 1 },
    { firstRadiusIn: 1, firstTurnRad: 2, secondRadiusIn: 1, secondTurnRad: Math.PI - 2 },
    { firstRadiusIn: 1, firstTurnRad: Number.NaN, secondRadiusIn: 1, secondTurnRad: 1 },
  ])('refuses %j', (curve) => {
    expect(() => compoundTangents(curve)).toThrow(RangeError);
  });
});

describe('reverseCurve', () => {
  test('the chord closes offset and run; both arcs turn alike', () => {
    const { runIn, longChordIn, turnRad, arc1In, arc2In } = reverseCurve({
      offsetIn: 30,
      radius1In: 72,
      radius2In: 48,
    });
    expect(Math.hypot(runIn, 30)).toBeCloseTo(longChordIn, 10);
    expect(arc1In / 72).toBeCloseTo(turnRad, 12);
    expect(arc2In / 48).toBeCloseTo(turnRad, 12);
  });

  test.each([0, 120, Number.NaN])('refuses an offset of %d', (offsetIn) => {
    expect(() => reverseCurve({ offsetIn, radius1In: 72, radius2In: 48 })).toThrow(RangeError);
  });
});

describe('squareTriple', () => {
  test.each([
    { sides: [144, 240], wants: { firstIn: 144, secondIn: 192, diagonalIn: 240 } },
    { sides: [240, 144], wants: { firstIn: 192, secondIn: 144, diagonalIn: 240 } },
    { sides: [143.9, 240], wants: { firstIn: 108, secondIn: 144, diagonalIn: 180 } },
    { sides: [600, 48], wants: { firstIn: 48, secondIn: 36, diagonalIn: 60 } },
    { sides: [100, 100], wants: { firstIn: 96, secondIn: 72, diagonalIn: 120 } },
  ] as const)('exact: $sides in', ({ sides, wants }) => {
    expect(squareTriple(sides)).toEqual(wants);
  });

  test('none on sides below 3 and 4 ft', () => {
    expect(squareTriple([35.9, 600])).toBeNull();
    // 4.2 and 6.0 m in tenths of a metre: 14 times 3, 4 and 5.
    expect(squareTriple([42, 60], 1)).toEqual({ firstIn: 42, secondIn: 56, diagonalIn: 70 });
    expect(squareTriple([47, 47])).toBeNull();
  });

  test('refuses a side that is no length', () => {
    expect(() => squareTriple([0, 100])).toThrow(RangeError);
    expect(() => squareTriple([100, Number.NaN])).toThrow(RangeError);
  });
});

describe('outOfSquare', () => {
  test('exact: equal diagonals are square; a rhombus of 60 degrees is off by 30', () => {
    const square = outOfSquare({ aIn: 30, bIn: 40, diagonal1In: 50, diagonal2In: 50 });
    expect(square).toEqual({ offRad: 0, sidewaysIn: 0 });
    const rhombus = outOfSquare({ aIn: 1, bIn: 1, diagonal1In: Math.sqrt(3), diagonal2In: 1 });
    expect(rhombus?.offRad).toBeCloseTo(Math.PI / 6, 12);
    expect(rhombus?.sidewaysIn).toBeCloseTo(0.5, 12);
  });

  test('none where no four sides have such diagonals', () => {
    expect(outOfSquare({ aIn: 10, bIn: 10, diagonal1In: 21, diagonal2In: 1 })).toBeNull();
  });

  test('refuses what is no length', () => {
    expect(() => outOfSquare({ aIn: 10, bIn: 0, diagonal1In: 1, diagonal2In: 1 })).toThrow(RangeError);
  });
});
