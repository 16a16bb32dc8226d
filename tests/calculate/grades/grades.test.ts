import { describe, expect, test } from 'vitest';
import { type FigureTree, num } from '../../../src/calculate/figure.ts';
import { calcGrades } from '../../../src/calculate/grades/index.ts';
import type { LevelPoint, Slab } from '../../../src/calculate/job.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab, at, rectangle } from '../slabs.ts';
import { graded, oldAtOrigin, pointsAt } from './a-grade.ts';

/** 40 by 18 ft at the origin, the house along its left side. */
const drive = aSlab({
  shape: rectangle(480, 216, { at: { xIn: 0, yIn: 0 }, edges: [{ edge: 4, kind: 'house' }] }),
});
const level = (heightIn: number) =>
  pointsAt({ a: [0, 0, heightIn], b: [480, 0, heightIn], c: [0, 216, heightIn] }, 'finish');
/** 10 in lower at the street. */
const falling = pointsAt({ a: [0, 0, 1200], b: [480, 0, 1190], c: [0, 216, 1200] }, 'finish');

function dirtAt(heightIn: number): readonly LevelPoint[] {
  const spots = { d1: [-50, -50, heightIn], d2: [600, -50, heightIn], d3: [0, 400, heightIn] } as const;
  return pointsAt(spots, 'existing', { kind: 'dirt' });
}

function oldAt(heightIn: number, id = 'old'): readonly LevelPoint[] {
  const spots = {
    [`${id}-1`]: [0, 0, heightIn],
    [`${id}-2`]: [480, 0, heightIn],
    [`${id}-3`]: [0, 216, heightIn],
  } as const;
  return pointsAt(spots, 'existing', { kind: 'existing', id });
}

function driveOf(made: Omit<Parameters<typeof graded>[0], 'slabs'> & { readonly slab?: Slab }) {
  const result = graded({ slabs: [made.slab ?? drive], ...made });
  expect(result.problems).toEqual([]);
  return at(result.figures.driveway ?? {}, 'drive');
}

describe('the new surface of a slab', () => {
  test('exact: a plane through three corners, read off at the fourth and in the middle', () => {
    const { places, slope, steepest, flattest } = driveOf({ points: falling });
    expect(Object.keys(places)).toEqual(['corner-1', 'corner-2', 'corner-3', 'corner-4', 'middle']);
    expect(num(at(places, 'corner-3').finish)).toBeCloseTo(1190, 9);
    expect(num(at(places, 'corner-4').finish)).toBeCloseTo(1200, 9);
    expect(num(at(places, 'middle').finish)).toBeCloseTo(1195, 6);
    for (const one of [slope, steepest, flattest]) expect(num(one)).toBeCloseTo(10 / 480, 12);
    expect(at(places, 'middle').dig).toBeUndefined();
  });

  test('a fixed point counts, an existing one does not', () => {
    const [a, b, c] = falling;
    if (a === undefined || b === undefined || c === undefined) throw new Error('three points');
    const fixed = { ...a, kind: 'fixed' as const, stoodOn: { kind: 'stays' as const } };
    expect(num(driveOf({ points: [fixed, b, c] }).slope)).toBeCloseTo(10 / 480, 12);
    const more = pointsAt({ e: [240, 100, 1300] }, 'existing', { kind: 'stays' });
    expect(num(driveOf({ points: [...falling, ...more] }).steepest)).toBeCloseTo(10 / 480, 12);
  });

  test('no heights give nothing, and so do heights elsewhere', () => {
    const nothing = { figures: {}, data: { slabs: {}, soil: {} }, problems: [] };
    const none = {
      points: undefined,
      slabs: {},
      existing: {},
      plans: { slabs: {}, existing: {} },
      corners: {},
    };
    expect(calcGrades({ heights: null, ...none })).toEqual(nothing);
    expect(graded({ slabs: [drive], points: pointsAt({ f: [900, 900, 10] }, 'fixed') })).toEqual(nothing);
    expect(graded({ slabs: [drive], points: pointsAt({ f: [0, 0, 10] }, 'fixed') })).toEqual(nothing);
  });

  test('two finish points, or three in a line, are too few, and it says which there are', () => {
    const two = graded({ slabs: [drive], points: falling.slice(0, 2) });
    expect(two.problems).toEqual([
      {
        code: 'surface-short-of-points',
        path: 'build.slabs.drive',
        parts: { slab: 'Driveway', known: '"Point a", "Point b"' },
      },
    ]);
    const inLine = pointsAt({ a: [0, 0, 10], b: [480, 0, 9], c: [240, 0.5, 9] }, 'finish');
    expect(graded({ slabs: [drive], points: inLine }).problems).toHaveLength(1);
  });

  test('a point at a sharp corner that is rounded later counts, one further out does not', () => {
    const rounded = { corner: 2, by: { kind: 'setback', setbackIn: 36 } } as const;
    const shape = rectangle(480, 216, { at: { xIn: 0, yIn: 0 }, rounded: [rounded] });
    const slab = { ...drive, shape };
    expect(num(driveOf({ slab, points: falling }).slope)).toBeCloseTo(10 / 480, 12);
    const out = pointsAt({ a: [0, 0, 1200], b: [482, 0, 1190], c: [0, 216, 1200] }, 'finish');
    expect(graded({ slabs: [slab], points: out }).problems.map(({ code }) => code)).toEqual([
      'surface-short-of-points',
    ]);
  });

  test('a point of the neighbour asks for nothing of its own', () => {
    const walk = aSlab({ id: 'walk', shape: rectangle(100, 40, { at: { xIn: 480, yIn: 0 } }) });
    const { problems, data } = graded({ slabs: [drive, walk], points: falling });
    expect(problems).toEqual([]);
    expect(Object.keys(data.slabs)).toEqual(['drive']);
  });

  test('two heights at one place are named, with how far they are apart', () => {
    const twin = pointsAt({ d: [0.5, 0, 1200.5] }, 'finish');
    expect(graded({ slabs: [drive], points: [...falling, ...twin] }).problems).toEqual([
      {
        code: 'heights-disagree',
        path: 'heights.points.d',
        parts: { first: 'Point a', second: 'Point d', by: '1/2″' },
      },
    ]);
    const near = pointsAt({ d: [0.5, 0, 1200.125] }, 'finish');
    expect(graded({ slabs: [drive], points: [...falling, ...near] }).problems).toEqual([]);
  });
});

describe('which way water runs', () => {
  test('exact: the fall away from the house, and towards it, within 10 ft', () => {
    const away = driveOf({ points: falling });
    expect(num(away['fall-from-house'] ?? away.slope)).toBeCloseTo(10 / 480, 12);
    expect(away['fall-to-house']).toBeUndefined();
    const back = driveOf({ points: pointsAt({ a: [0, 0, 10], b: [480, 0, 22], c: [0, 216, 10] }, 'finish') });
    expect(num(back['fall-to-house'] ?? back.steepest)).toBeCloseTo(12 / 480, 12);
    expect(back['fall-from-house']).toBeUndefined();
    expect(num(back['stands-deep'])).toBeCloseTo(0, 9);
  });

  test('exact: beyond 10 ft it counts no longer, and only square to the house', () => {
    // Falls 2 in over the first 10 ft, then climbs; and it leans along the house, which counts for nothing.
    const spots = (turnAtIn: number) =>
      pointsAt(
        {
          a: [0, 0, 10],
          b: [0, 216, 12],
          c: [turnAtIn, 0, 8],
          d: [turnAtIn, 216, 10],
          e: [480, 0, 20],
          f: [480, 216, 22],
        },
        'finish',
      );
    const beyond = driveOf({ points: spots(120) });
    expect(num(beyond['fall-from-house'] ?? beyond.slope)).toBeCloseTo(2 / 120, 9);
    const within = driveOf({ points: spots(118) });
    expect(num(within['fall-to-house'] ?? within.flattest)).toBeCloseTo(12 / 362, 9);
  });

  test('exact: without an edge along the house there is neither', () => {
    const free = driveOf({ points: falling, slab: aSlab({ shape: rectangle(480, 216) }) });
    expect([free['fall-from-house'], free['fall-to-house']]).toEqual([undefined, undefined]);
  });

  test('exact: a hollow is as deep as it lies below the way out', () => {
    const rim = { a: [0, 0, 10], b: [480, 0, 10], c: [480, 216, 10], d: [0, 216, 10] } as const;
    const dished = driveOf({ points: pointsAt({ ...rim, e: [200, 100, 9.25] }, 'finish') });
    expect(num(dished['stands-deep'])).toBeCloseTo(0.75, 9);
    expect(num(dished.flattest)).toBeCloseTo(0.75 / 280, 9);
  });

  test('exact: how far the slope is from the fall that is stated, not of a walk', () => {
    const slab = { ...drive, fall: { ...drive.fall, slope: 1 / 24 } };
    const figures = driveOf({ points: falling, slab });
    expect(num(figures['off-stated-fall'] ?? figures['stands-deep'])).toBeCloseTo(1 / 48, 12);
    const walk = graded({ slabs: [{ ...slab, use: 'walk' }], points: falling }).figures.walk;
    expect(at(walk ?? {}, 'drive')['off-stated-fall']).toBeUndefined();
  });

  test('exact: a lip and a break at a joint, where a short edge lies along a long one', () => {
    const slabs = [
      aSlab({ id: 'one', shape: rectangle(100, 400, { at: { xIn: 0, yIn: 0 } }) }),
      aSlab({ id: 'two', shape: rectangle(100, 60, { at: { xIn: 100, yIn: 0 } }) }),
      aSlab({ id: 'far', shape: rectangle(100, 60, { at: { xIn: 103, yIn: 70 } }) }),
    ];
    const first = pointsAt({ a: [0, 0, 12], b: [97, 0, 9.09], c: [0, 400, 12] }, 'finish');
    const second = pointsAt({ d: [103, 0, 9.44], e: [200, 0, 14.29], f: [103, 60, 9.44] }, 'finish');
    const third = pointsAt({ g: [103, 70, 1], h: [200, 70, 1], i: [103, 130, 1] }, 'finish');
    const { joints } = graded({ slabs, points: [...first, ...second, ...third] }).figures;
    expect(Object.keys(joints ?? {})).toEqual(['one-to-two']);
    // The first falls 3 % to 9.00 in at the joint, the second climbs 5 % from 9.29 in there.
    const joint = at(joints ?? {}, 'one-to-two');
    expect(num(joint.lip)).toBeCloseTo(0.29, 9);
    expect(num(joint.break)).toBeCloseTo(0.08, 9);
    expect(graded({ slabs: slabs.slice(0, 1), points: first }).figures.joints).toBeUndefined();
  });
});

describe('how deep to dig', () => {
  // Exact: 4 in slab and 4 in base under a finish level with the old 4 in slab leave 4 in to dig: 720 sq ft / 3.
  test('exact: the old slab is not dug twice', () => {
    const figures = driveOf({ points: [...level(1200), ...oldAt(1200)], existing: [oldAtOrigin()] });
    expect(num(figures['dig-volume'] ?? figures.slope)).toBeCloseTo(240, 6);
    expect(num(figures['fill-volume'] ?? figures.slope)).toBe(0);
    expect(num(figures['deepest-dig'] ?? figures.slope)).toBeCloseTo(4, 9);
    const middle = at(figures.places, 'middle');
    expect(num(middle.existing ?? middle.finish)).toBeCloseTo(1200, 9);
    expect(num(middle['slab-bottom'] ?? middle.finish)).toBeCloseTo(1196, 9);
    expect(num(middle['base-bottom'] ?? middle.finish)).toBeCloseTo(1192, 9);
    expect(num(middle.dig ?? middle.finish)).toBeCloseTo(4, 9);
    expect(num(middle.fill ?? middle.finish)).toBe(0);
  });

  test('exact: where the new surface is 4 in higher, nothing is dug; 6 in higher, 2 in are filled', () => {
    const old = { points: oldAt(1200), existing: [oldAtOrigin()] };
    const even = driveOf({ ...old, points: [...level(1204), ...old.points] });
    expect(num(even['dig-volume'] ?? even.slope)).toBeCloseTo(0, 6);
    const higher = driveOf({ ...old, points: [...level(1206), ...old.points] });
    expect(num(higher['dig-volume'] ?? higher.slope)).toBe(0);
    expect(num(higher['fill-volume'] ?? higher.slope)).toBeCloseTo(120, 6);
    const corner = at(higher.places, 'corner-3');
    expect(num(corner.fill ?? corner.finish)).toBeCloseTo(2, 9);
    expect(num(corner.dig ?? corner.finish)).toBe(0);
  });

  test('exact: a layer and soil that come up with the old slab are gone too', () => {
    const existing = [oldAtOrigin({ coating: { kind: 'overlay', thicknessIn: 1 }, soilStuckIn: 0.5 })];
    const result = graded({ slabs: [drive], points: [...level(1200), ...oldAt(1200)], existing });
    expect(num(at(result.figures.old ?? {}, 'old').gone)).toBe(5.5);
    expect(num(at(result.data.soil, 'drive'))).toBeCloseTo(720 * (2.5 / 12), 6);
  });

  test('exact: half under an old slab and half in the lawn, each from its own underside', () => {
    const existing = [oldAtOrigin({ shape: rectangle(240, 216, { at: { xIn: 0, yIn: 0 } }) })];
    const points = [...level(1200), ...oldAt(1200), ...dirtAt(1199)];
    const figures = driveOf({ points, existing });
    expect(num(figures['dig-volume'] ?? figures.slope)).toBeCloseTo(360 * (4 / 12) + 360 * (7 / 12), 4);
    const corner = (name: string) => at(figures.places, name);
    expect(num(corner('corner-1').dig ?? corner('corner-1').finish)).toBeCloseTo(4, 9);
    expect(num(corner('corner-2').dig ?? corner('corner-2').finish)).toBeCloseTo(7, 9);
  });

  test('exact: cut and fill do not cancel', () => {
    // From 8 in below to 8 in above the underside of the base, even in the middle.
    const ground = pointsAt({ d1: [0, 0, 1184], d2: [480, 0, 1200], d3: [0, 216, 1184] }, 'existing', {
      kind: 'dirt',
    });
    const figures = driveOf({ points: [...level(1200), ...ground] });
    expect(num(figures['dig-volume'] ?? figures.slope)).toBeCloseTo((360 * 4) / 12, 6);
    expect(num(figures['fill-volume'] ?? figures.slope)).toBeCloseTo((360 * 4) / 12, 6);
  });

  test('what is not known is not figured', () => {
    const without = driveOf({
      points: [...level(1200), ...oldAt(1200).slice(0, 2)],
      existing: [oldAtOrigin()],
    });
    expect(without['dig-volume']).toBeUndefined();
    const half = [oldAtOrigin({ shape: rectangle(240, 216, { at: { xIn: 0, yIn: 0 } }) })];
    const noGround = graded({ slabs: [drive], points: [...level(1200), ...oldAt(1200)], existing: half });
    expect(noGround.data.soil).toEqual({});
    const otherThing = graded({ slabs: [drive], points: [...level(1200), ...dirtAt(1200)], existing: half });
    expect(otherThing.data.soil).toEqual({});
  });
});

describe('formulas', () => {
  const existing = [
    oldAtOrigin({ shape: rectangle(240, 216, { at: { xIn: 0, yIn: 0 } }) }),
    oldAtOrigin({
      id: 'layered',
      shape: rectangle(240, 216, { at: { xIn: 240, yIn: 0 } }),
      coating: { kind: 'tile', thicknessIn: 1.25 },
    }),
  ];
  const points = [...falling, ...oldAt(1199), ...oldAt(1210, 'layered')];
  testExpressions('grades', graded({ slabs: [drive], points, existing }).figures as FigureTree, 24);
});
