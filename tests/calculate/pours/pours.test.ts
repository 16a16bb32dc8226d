import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figure, num } from '../../../src/calculate/figure.ts';
import type { Slab } from '../../../src/calculate/job.ts';
import { calcJoints } from '../../../src/calculate/joints/index.ts';
import { calcPours, divided, stripsOf } from '../../../src/calculate/pours/index.ts';
import { distanceIn, distanceToEdgeIn, edgesOf, type Outline } from '../../../src/geometry/index.ts';
import { testExpressions } from '../evaluate.ts';
import { AWKWARD } from '../joints/awkward.ts';
import { aSlab, at, lShape, outlined, propertyRuns, rectangle } from '../slabs.ts';

const of = (value: number, unit: 'sq ft' | 'yd3' | 'h') =>
  figure({ value, unit, decimals: 1, formula: { method: 'of the test' }, inputs: {} });

/** How much of the edges of one lies on those of the other, looked at every inch [in]. */
function sharedIn(one: Outline, other: Outline): number {
  return one.rings
    .flatMap((ring) => edgesOf(ring))
    .filter(({ from }) => from.bulge === 0)
    .reduce((sumIn, { from, to }) => {
      const steps = Math.ceil(distanceIn(from, to));
      const on = Array.from({ length: steps }, (_, step) => (step + 0.5) / steps).filter(
        (share) =>
          distanceToEdgeIn(other, {
            xIn: from.xIn + (to.xIn - from.xIn) * share,
            yIn: from.yIn + (to.yIn - from.yIn) * share,
          }) < 0.05,
      );
      return sumIn + on.length;
    }, 0);
}

type Changed = Partial<Pick<Parameters<typeof calcPours>[0], 'finishPeople' | 'rules' | 'inTime'>>;

/** Slabs with the joints that are proposed for them; one finisher where nothing else is said. */
function pours(slabs: readonly Slab[], changed: Changed = {}) {
  const laid = outlined(...slabs);
  const joints = calcJoints({ ...laid, mix: { slumpIn: 4, aggregateIn: 0.75 } });
  return calcPours({
    joints: joints.data,
    areas: laid.shapes.slabs,
    slabs: Object.fromEntries(slabs.map((slab) => [slab.id, slab])),
    // A third of an inch short of 4 in deep: 1 yd3 for 81 sq ft.
    net: Object.fromEntries(
      Object.entries(laid.shapes.slabs).map(([id, { area }]) => [id, { net: of(num(area) / 81, 'yd3') }]),
    ),
    finishPeople: 1,
    rules: [],
    inTime: null,
    ...changed,
  });
}

function partsOf(result: ReturnType<typeof pours>) {
  return (result?.data.parts ?? []).map(({ slabs, endsAt }) => [
    slabs.map(({ id, panels }) => `${id} ${panels.join(',')}`).join('; '),
    endsAt,
  ]);
}

describe('where a pour is divided', () => {
  // 40 by 18 ft in 4 by 2 panels: letters in two rows of four, joints 0 to 2 across and 3 along.
  const drive = aSlab();

  test('by hand: 720 sq ft for one finisher are two pours of 360, up to the middle joint', () => {
    const result = pours([drive]);
    expect(partsOf(result)).toEqual([
      ['drive 0,1,4,5', { id: 'drive', joint: 1 }],
      ['drive 2,3,6,7', null],
    ]);
    expect(num(result!.figures['most-area'])).toBe(400);
    expect(num(result!.figures.count)).toBe(2);
    const parts = Object.values(result!.figures.parts);
    for (const { area, concrete } of parts) {
      expect(num(area)).toBeCloseTo(360, 9);
      expect(num(concrete)).toBeCloseTo(360 / 81, 9);
    }
    expect(num(result!.figures['over-most'])).toBe(0);
  });

  test('exact: as much as one pour takes is one pour, and a finisher more makes it one', () => {
    const limit = (limitSqFt: number) => [
      { code: 'area-large-for-finishers', limit: limitSqFt, source: 'of the test' },
    ];
    expect(pours([drive], { rules: limit(720) })).toBeNull();
    expect(pours([drive], { rules: limit(719) })).not.toBeNull();
    expect(pours([drive], { rules: limit(360), finishPeople: 2 })).toBeNull();
    expect(pours([drive], { rules: limit(180) })!.data.parts).toHaveLength(4);
    // 180 sq ft between two joints across; the joint along is not one that a row of panels ends at.
    const small = pours([drive], { rules: limit(90) })!;
    expect(small.data.parts).toHaveLength(4);
    expect(num(small.figures['over-most'])).toBeCloseTo(90, 9);
  });

  // 720 sq ft x 3 people x 2 h / 12 h of work = 360.
  test('the day of the pour may leave time for less', () => {
    const inTime = { timeToFinishHr: of(2, 'h'), crewCount: 3, finishLaborHr: of(12, 'h') };
    const result = pours([drive], { finishPeople: 3, inTime })!;
    expect(num(result.figures['most-area'])).toBe(360);
    expect(result.data.parts).toHaveLength(2);
    expect(pours([drive], { finishPeople: 3, inTime: { ...inTime, finishLaborHr: of(6, 'h') } })).toBeNull();
  });

  // 400 sq ft of a broom finish a finisher, 250 of exposed aggregate: 720 x 1.6 = 1152.
  test('exposed aggregate counts 1.6 times', () => {
    const exposed = aSlab({ finish: 'exposed-aggregate' });
    const limit = (limitSqFt: number) => [
      { code: 'area-large-for-finishers', limit: limitSqFt, source: 'of the test' },
    ];
    expect(pours([exposed], { rules: limit(1152) })).toBeNull();
    const two = pours([exposed], { rules: limit(1151) })!;
    expect(num(two.figures.count)).toBe(2);
    expect(num(two.figures.parts['pour-1']!.area)).toBeCloseTo(360, 9);
    expect(num(two.figures.parts['pour-1']!.counted!)).toBeCloseTo(576, 9);
    // 180 sq ft of it count as 288.
    const small = pours([exposed], { rules: limit(280) })!;
    expect(small.data.parts).toHaveLength(4);
    expect(num(small.figures['over-most'])).toBeCloseTo(8, 9);
    // With a broomed walk of 120 sq ft: 1272, and what time there is, is shared as they count.
    const walk = aSlab({ id: 'walk', use: 'walk', shape: rectangle(48, 360) });
    expect(pours([walk, exposed], { rules: limit(1272) })).toBeNull();
    const inTime = { timeToFinishHr: of(2, 'h'), crewCount: 3, finishLaborHr: of(12, 'h') };
    const both = pours([walk, exposed], { finishPeople: 9, inTime })!;
    expect(num(both.figures['most-area'])).toBeCloseTo(636, 9);
    expect(both.figures.parts['pour-1']!.counted).toBeDefined();
    expect(pours([walk, aSlab()], { rules: limit(500) })!.figures.parts['pour-1']!.counted).toBeUndefined();
  });

  test('slabs that go together are poured together, and a pour may end with a slab', () => {
    const walk = aSlab({ id: 'walk', use: 'walk', shape: rectangle(48, 360) });
    expect(partsOf(pours([walk, drive], { finishPeople: 2 }))).toEqual([
      ['walk 0,1,2,3,4,5; drive 0,1,4,5', { id: 'drive', joint: 1 }],
      ['drive 2,3,6,7', null],
    ]);
    const patio = aSlab({ id: 'patio', use: 'patio', shape: rectangle(240, 216) });
    expect(partsOf(pours([patio, { ...patio, id: 'other' }]))).toEqual([
      [expect.stringMatching(/^patio/), null],
      [expect.stringMatching(/^other/), null],
    ]);
  });

  test('of two ways to divide it, as many each, that with the shorter joints', () => {
    // 20 by 16 ft in 2 by 2 panels.
    const block = aSlab({ shape: rectangle(240, 192) });
    const sides = ['drive 0,2', 'drive 1,3'];
    const limit = [{ code: 'area-large-for-finishers', limit: 200, source: 'of the test' }];
    expect(partsOf(pours([block], { rules: limit })).map(([panels]) => panels)).toEqual(sides);
    const turned = aSlab({ shape: rectangle(192, 240) });
    const rows = ['drive 0,1', 'drive 2,3'];
    expect(partsOf(pours([turned], { rules: limit })).map(([panels]) => panels)).toEqual(rows);
  });

  test.each([
    ['s-walk', 8],
    ['l-walk', 8],
    ['turned-walk', 10],
    ['round-turns', 9],
    ['wide-bend', 6],
    ['big-drive', 6],
    // Round a well joints follow each other, and none parts the slab.
    ['square-well', 1],
  ])('the strips of %s follow each other: %d', (name, count) => {
    const { shape, limitFt } = at(AWKWARD, name);
    const laid = outlined(aSlab({ shape, jointSpacingIn: limitFt * 12 }));
    const { lines, panels } = calcJoints({ ...laid, mix: { slumpIn: 4, aggregateIn: 0.75 } }).data;
    const strips = stripsOf(at(lines, 'drive'), at(panels, 'drive'));
    expect(strips).toHaveLength(count);
    const places = strips.flatMap((strip) => strip.panels).toSorted((one, other) => one - other);
    expect(places).toEqual([...at(panels, 'drive').keys()]);
    expect(strips.map(({ endsAt }) => endsAt === null)).toEqual(
      strips.map((_, index) => index === count - 1),
    );
    // A strip and the next one touch along the joint between them, and no other two strips do.
    const touches = (one: number, other: number) =>
      (strips[one]?.panels ?? []).some((panel) =>
        (strips[other]?.panels ?? []).some(
          (beside) => sharedIn(at(panels, 'drive')[panel]!.outline, at(panels, 'drive')[beside]!.outline) > 6,
        ),
      );
    for (let one = 0; one < count; one += 1) {
      for (let other = one + 1; other < count; other += 1)
        expect(touches(one, other)).toBe(other === one + 1);
    }
  });

  test('a slab without joints is never divided', () => {
    const whole = aSlab({ joints: { cut: 'wet-sawn', lines: {}, propose: 'nothing', sealed: false } });
    const result = pours([whole])!;
    expect(partsOf(result)).toEqual([['drive 0', null]]);
    expect(num(result.figures['over-most'])).toBeCloseTo(320, 9);
  });

  const shape = fc
    .record({
      lengthIn: fc.integer({ min: 60, max: 900 }),
      widthIn: fc.integer({ min: 60, max: 500 }),
      isL: fc.boolean(),
    })
    .map(({ lengthIn, widthIn, isL }) =>
      isL
        ? lShape({ lengthIn, widthIn, legIn: lengthIn / 2, armIn: widthIn / 3 })
        : rectangle(lengthIn, widthIn),
    );

  test('invariant: each panel is in one pour, areas and concrete add up, and none is above the most unless alone', () => {
    fc.assert(
      fc.property(
        fc.array(shape, { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 40, max: 800 }),
        (shapes, limit) => {
          const slabs = shapes.map((one, index) => aSlab({ id: `slab-${index}`, shape: one }));
          const rules = [{ code: 'area-large-for-finishers', limit, source: 'of the test' }];
          const laid = outlined(...slabs);
          const totalSqFt = Object.values(laid.shapes.slabs).reduce((sum, { area }) => sum + num(area), 0);
          const result = pours(slabs, { rules });
          expect(result === null).toBe(totalSqFt <= limit);
          if (result === null) return;
          const parts = Object.values(result.figures.parts);
          expect(parts.reduce((sum, { area }) => sum + num(area), 0)).toBeCloseTo(totalSqFt, 6);
          expect(parts.reduce((sum, { concrete }) => sum + num(concrete), 0)).toBeCloseTo(totalSqFt / 81, 6);
          const { panels, lines } = calcJoints({ ...laid, mix: { slumpIn: 4, aggregateIn: 0.75 } }).data;
          for (const { id } of slabs) {
            const taken = result.data.parts
              .flatMap((part) => part.slabs)
              .filter((one) => one.id === id)
              .flatMap((one) => one.panels);
            expect(taken.toSorted((one, other) => one - other)).toEqual([...at(panels, id).keys()]);
          }
          for (const [index, { area }] of parts.entries()) {
            const part = result.data.parts[index]!;
            if (num(area) <= limit * (1 + 1e-9)) continue;
            // No joint right across is within it: it is one strip.
            expect(part.slabs).toHaveLength(1);
            const [only] = part.slabs;
            const strips = stripsOf(at(lines, only!.id), at(panels, only!.id));
            expect(strips.map((strip) => strip.panels.toSorted((one, other) => one - other))).toContainEqual(
              only!.panels,
            );
          }
        },
      ),
      propertyRuns,
    );
  });
});

describe('divided', () => {
  test.each([
    [[1, 1, 1, 1], 2, [2, 4]],
    [[3, 1, 1, 1], 4, [1, 4]],
    [[5, 1, 1], 4, [1, 3]],
    [[1, 1, 1, 1, 1], 3, [2, 5]],
    [[0.1, 0.2, 0.3], 0.6, [3]],
    [[7], 4, [1]],
  ] as const)('%j within %d', (areas, most, ends) => {
    const found = divided(areas, most);
    expect(found.at(-1)).toBe(areas.length);
    expect(found).toHaveLength(ends.length);
    const largest = (places: readonly number[]) =>
      Math.max(
        ...places.map((end, index) =>
          areas.slice(places[index - 1] ?? 0, end).reduce<number>((sum, area) => sum + area, 0),
        ),
      );
    expect(largest(found)).toBeCloseTo(largest(ends), 12);
  });

  test('invariant: as few as any way has, and of those the largest is the smallest', () => {
    const ways = (count: number): readonly (readonly number[])[] =>
      Array.from({ length: 2 ** (count - 1) }, (_, bits) => [
        ...Array.from({ length: count - 1 }, (__, place) => place + 1).filter(
          (place) => (bits >> (place - 1)) % 2 === 1,
        ),
        count,
      ]);
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 3, max: 20 }),
        (areas, most) => {
          const sums = (ends: readonly number[]) =>
            ends.map((end, index) =>
              areas.slice(ends[index - 1] ?? 0, end).reduce((sum, area) => sum + area, 0),
            );
          const isKept = (ends: readonly number[]) =>
            sums(ends).every((sum, index) => sum <= most || ends[index]! - (ends[index - 1] ?? 0) === 1);
          const kept = ways(areas.length).filter(isKept);
          const fewest = Math.min(...kept.map((ends) => ends.length));
          const best = Math.min(
            ...kept.filter((ends) => ends.length === fewest).map((ends) => Math.max(...sums(ends))),
          );
          const found = divided(areas, most);
          expect(isKept(found)).toBe(true);
          expect(found).toHaveLength(fewest);
          expect(Math.max(...sums(found))).toBe(best);
        },
      ),
      propertyRuns,
    );
  });
});

const walk = aSlab({ id: 'walk', use: 'walk', shape: rectangle(48, 360) });
const inTime = { timeToFinishHr: of(2, 'h'), crewCount: 3, finishLaborHr: of(12, 'h') };
testExpressions('pours by the finishers', pours([aSlab(), walk])!.figures, 2);
testExpressions(
  'pours with exposed aggregate',
  pours([aSlab({ finish: 'exposed-aggregate' }), walk], { inTime, finishPeople: 3 })!.figures,
  2,
);
testExpressions('pours by the day', pours([aSlab(), walk], { inTime, finishPeople: 3 })!.figures, 2);
