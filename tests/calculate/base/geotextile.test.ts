import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calcBase, fabricAreaSqFt, withLapsSqFt } from '../../../src/calculate/base/index.ts';
import { type FigureTree, num } from '../../../src/calculate/figure.ts';
import type { GeotextileSupplier, Posts, Slab } from '../../../src/calculate/job.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import { calcTearOut } from '../../../src/calculate/tear-out/index.ts';
import type { CrewText, PublicText } from '../../../src/calculate/text.ts';
import { runCount } from '../../support/property-runs.ts';
import { rate } from '../crew/a-plan.ts';
import { aBaseSupplier, aSlab, byId, rectangle } from '../haul/a-haul.ts';
import { expressionCount, wrongFormulas } from '../haul/reevaluate.ts';
import { TAPE_LIMITS } from '../slabs.ts';

const SEED = 20_261_203;

function aRoll(changed: Partial<GeotextileSupplier> = {}): GeotextileSupplier {
  return {
    label: 'Fabric yard' as CrewText,
    phone: '555-0100' as CrewText,
    rollWidthIn: 144,
    rollLengthIn: 600,
    lapIn: 12,
    price: rate('140.00', 'roll'),
    ...changed,
  };
}

/** A slab of 25 by 20 ft on 4 in of base. */
function onBase(changed: Partial<Slab> = {}): Slab {
  return aSlab({ baseIn: 4, shape: rectangle(25, 20), ...changed });
}

function laid(
  slabs: readonly Slab[],
  from: { readonly roll?: GeotextileSupplier | null; readonly posts?: readonly Posts[] } = {},
) {
  const bySlabId = byId(slabs);
  const { figures: shapes, data } = calcOutline({ slabs: bySlabId, existing: {}, limits: TAPE_LIMITS });
  const torn = calcTearOut({
    existing: {},
    hollow: {},
    posts: byId(from.posts ?? []),
    oldSteps: {},
    green: {},
    chip: {},
    slabs: bySlabId,
    shapes,
    outlines: data.existing,
  });
  return calcBase({
    slabs: bySlabId,
    shapes,
    posts: torn.figures.posts,
    allowances: { baseUnevennessIn: 0.25, spillRatio: 0.03, formBulgeIn: 0, baseMarginIn: 6, ...TAPE_LIMITS },
    supplier: aBaseSupplier(),
    geotextile: from.roll === undefined ? aRoll() : from.roll,
    machines: {},
    baseMachine: null,
  });
}

describe('fabric below the base', () => {
  // 90 ft round, formed: 545 sq ft with a margin of 6 in; the sides of the box are 90 ft by 4 in.
  // 575 sq ft at a lap of 1 ft off rolls of 12 by 50 ft, which are 600 sq ft each.
  test('exact: area, laps, whole rolls', () => {
    const { figures, problems } = laid([onBase({ geotextile: true }), onBase({ id: 'walk' })]);
    const fabric = figures.geotextile;
    if (fabric === undefined) throw new Error('there is fabric');
    expect(problems).toEqual([]);
    expect(Object.keys(fabric.slabs)).toEqual(['drive']);
    expect(num(fabric.total.area)).toBeCloseTo(545 + 30, 9);
    expect(num(fabric.total['with-laps'])).toBeCloseTo(((575 * 12) / 11) * (50 / 49), 9); // 640.07
    expect(num(fabric.total.rolls)).toBe(2);
    expect(num(fabric.total['bought-area'])).toBeCloseTo(1200, 9);
    expect(num(fabric.lap)).toBe(12);
  });

  test('two slabs share rolls; without fabric nothing is figured', () => {
    const both = laid([onBase({ geotextile: true }), onBase({ id: 'walk', geotextile: true })]).figures;
    expect(both.geotextile?.total.area.value).toBeCloseTo(1150, 9);
    expect(both.geotextile?.total.rolls.value).toBe(3); // 1,280 / 600
    expect(laid([onBase()], { roll: null }).figures).not.toHaveProperty('geotextile');
  });

  test('it takes the place of no stone', () => {
    const [bare, with_] = [laid([onBase()]), laid([onBase({ geotextile: true })])];
    expect(num(with_.figures.total.tons)).toBe(num(bare.figures.total.tons));
  });

  test('formulas give their values', () => {
    const figures = laid([onBase({ geotextile: true })], { posts: [somePosts()] }).figures;
    expect(wrongFormulas(figures satisfies FigureTree)).toEqual([]);
    expect(expressionCount({ ...figures.geotextile } as FigureTree)).toBe(6);
  });

  test('fabric without a base, and a lap as wide as the roll, are told where they stand', () => {
    const found = (slab: Slab, roll = aRoll()) => laid([slab], { roll }).problems;
    expect(found(onBase({ geotextile: true, baseIn: 0 }))).toEqual([
      { code: 'fabric-without-base', path: 'build.slabs.drive.geotextile', parts: { slab: 'New drive' } },
    ]);
    expect(found(onBase({ geotextile: true }), aRoll({ lapIn: 144 }))).toEqual([
      {
        code: 'roll-lap-too-long',
        path: 'company.suppliers.geotextile.lap',
        parts: { lap: '144″', roll: '144″' },
      },
    ]);
    expect(found(onBase({ geotextile: true }), aRoll({ lapIn: 143.5 }))).toEqual([]);
    expect(() => laid([onBase({ geotextile: true })], { roll: null })).toThrow(RangeError);
  });

  test(`invariant: strips and pieces laid with their laps are never more than it says (seed ${SEED})`, () => {
    const many = fc.integer({ min: 1, max: 12 });
    const side = fc.integer({ min: 24, max: 2000 });
    fc.assert(
      fc.property(many, many, side, side, fc.integer({ min: 0, max: 23 }), (strips, pieces, w, l, lapIn) => {
        const coveredSqIn = (strips * (w - lapIn) + lapIn) * (pieces * (l - lapIn) + lapIn);
        const roll = { rollWidthIn: w, rollLengthIn: l, lapIn };
        const usedSqFt = (strips * w * pieces * l) / 144;
        expect(withLapsSqFt({ areaSqFt: coveredSqIn / 144, ...roll })).toBeGreaterThan(
          usedSqFt * (1 - 1e-12),
        );
      }),
      { numRuns: runCount(100), seed: SEED },
    );
  });

  test.each([
    [
      'an area that is no number',
      () => fabricAreaSqFt({ baseAreaSqFt: Number.NaN, perimeterFt: 1, baseIn: 1 }),
    ],
    ['a perimeter below 0', () => fabricAreaSqFt({ baseAreaSqFt: 1, perimeterFt: -1, baseIn: 1 })],
    ['a lap below 0', () => withLapsSqFt({ areaSqFt: 1, rollWidthIn: 9, rollLengthIn: 9, lapIn: -1 })],
    [
      'a lap as long as the roll',
      () => withLapsSqFt({ areaSqFt: 1, rollWidthIn: 99, rollLengthIn: 9, lapIn: 9 }),
    ],
    ['less than nothing', () => withLapsSqFt({ areaSqFt: -1, rollWidthIn: 9, rollLengthIn: 9, lapIn: 1 })],
  ])('refuses %s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});

function somePosts(changed: Partial<Posts> = {}): Posts {
  const footing = { diameterIn: 12, depthIn: 30 };
  return { id: 'drive', label: 'Posts' as PublicText, count: 4, footing, ...changed };
}

describe('the holes of posts', () => {
  // Four holes of a foot across and 2 1/2 ft deep, at 130 lb/cu ft; they have the id of the slab.
  const holesCuFt = 4 * Math.PI * 0.5 ** 2 * 2.5;

  test('exact: their fill is ordered with the base, and the plate does not run in them', () => {
    const [bare, made] = [laid([onBase()]).figures, laid([onBase()], { posts: [somePosts()] }).figures];
    expect(made.holes['drive']?.tons.value).toBeCloseTo((holesCuFt * 130) / 2000, 9);
    expect(num(made.total.compacted) - num(bare.total.compacted)).toBeCloseTo(holesCuFt / 27, 9);
    expect(num(made.total.tons) - num(bare.total.tons)).toBeCloseTo((holesCuFt * 130) / 2000, 9);
    // 11.81 and 0.51 tons, by half tons.
    expect([num(bare.total['order-tons']), num(made.total['order-tons'])]).toEqual([12, 12.5]);
    expect(num(made.total['plate-hours'])).toBe(num(bare.total['plate-hours']));
    expect(bare.holes).toEqual({});
  });

  test('they are filled where no slab has a base', () => {
    const { total } = laid([onBase({ baseIn: 0 })], { posts: [somePosts()] }).figures;
    expect(num(total['order-tons'])).toBe(1); // 0.51 tons
  });
});
