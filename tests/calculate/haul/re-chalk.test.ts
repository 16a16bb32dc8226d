import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { CHALK_STEPS, thicknessOffsetsIn } from '../../../src/calculate/haul/index.ts';
import { inToMm, mmToIn, sqFtToSqM } from '../../../src/units/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { testExpressions } from '../evaluate.ts';
import { anExisting, aPlace, haul, LONG_BOX, rectangle, SHORT_BOX } from './a-haul.ts';

/** Carries 7,000 lb in a box that holds more of the heaviest rubble. */
const CARRIES_7000 = { ...LONG_BOX, grossRatingLb: 11_200 };

type Row = {
  readonly name: string;
  readonly thicknessIn: number;
  readonly isPlanned: boolean;
  readonly areaSqFt: number;
  readonly loads: number;
};

function rowsOf(result: ReturnType<typeof haul>, id = 'drive'): readonly Row[] {
  const [first] = result.data.reChalk[id] ?? [];
  return (first?.rows ?? []).map((row) => {
    const bay = result.figures['re-chalk'][id]?.[first?.trailer ?? '']?.[row.name];
    if (bay === undefined) throw new Error(`no figures of ${row.name}`);
    return { ...row, areaSqFt: num(bay['area-per-load']), loads: num(bay.loads) };
  });
}

describe('what to chalk where a slab is thicker or thinner', () => {
  // By hand: 150 lb/cu ft are 12.5 lb an inch and square foot; 7,000 lb of 37.5, 43.75, 50, 56.25,
  // 62.5, 68.75 and 75 lb/sq ft, and 25 by 20 ft of it.
  test('7,000 lb of 150 lb/cu ft, planned as 4 in', () => {
    const rows = rowsOf(haul({ trailers: [CARRIES_7000] }));
    expect(
      rows.map(({ name, thicknessIn, areaSqFt, loads }) => [name, thicknessIn, areaSqFt, loads]),
    ).toEqual([
      ['t-3', 3, 186, 3],
      ['t-3-5', 3.5, 160, 4],
      ['t-4', 4, 140, 4],
      ['t-4-5', 4.5, 124, 5],
      ['t-5', 5, 112, 5],
      ['t-5-5', 5.5, 101, 5],
      ['t-6', 6, 93, 6],
    ]);
    expect(rows.filter(({ isPlanned }) => isPlanned).map(({ name }) => name)).toEqual(['t-4']);
  });

  test('no load more for the noise of doubles: 448 sq ft of 5 in is four bays of 112 sq ft', () => {
    const existing = [anExisting({ shape: rectangle(28, 16), thicknessIn: 4 })];
    const atFive = rowsOf(haul({ existing, trailers: [CARRIES_7000] })).find(({ name }) => name === 't-5');
    expect([atFive?.areaSqFt, atFive?.loads]).toEqual([112, 4]);
  });

  test('the bays of the planned thickness are those of the plan, and in them the whole slab goes', () => {
    const result = haul();
    const planned = rowsOf(result).find(({ isPlanned }) => isPlanned);
    const perLoad = result.figures.streams['clean-concrete']?.['sq-ft-per-load']['drive']?.['long-box'];
    expect(planned?.areaSqFt).toBe(perLoad && num(perLoad));
    expect(planned?.loads).toBe(result.data.loads.length);
  });

  test('the box decides where the rubble is light', () => {
    // A level box of 196 cu ft takes 122.5 in place: 367 sq ft of 4 in, 245 of 6.
    const rows = rowsOf(haul({ existing: [anExisting({ unitWeightLbPerCuFt: 40 })] }));
    expect(rows.map(({ name, areaSqFt }) => [name, areaSqFt])).toEqual(
      expect.arrayContaining([
        ['t-4', 367],
        ['t-6', 245],
      ]),
    );
  });

  test('each thing by the trailers its own loads ride on', () => {
    const result = haul({
      existing: [anExisting(), anExisting({ id: 'walk', steel: 'mesh', shape: rectangle(20, 4) })],
      trailers: [LONG_BOX, SHORT_BOX],
      places: [aPlace()],
    });
    expect(Object.keys(result.data.reChalk)).toEqual(['drive', 'walk']);
    for (const id of ['drive', 'walk']) {
      const loads = result.data.loads.filter(({ pieces }) =>
        pieces.some(({ existingId }) => existingId === id),
      );
      expect(new Set(result.data.reChalk[id]?.map(({ trailer }) => trailer))).toEqual(
        new Set(loads.map(({ trailer }) => trailer)),
      );
    }
  });

  test('nothing to chalk where nothing goes, or where it has no way to go', () => {
    expect(haul({ existing: [] }).figures['re-chalk']).toEqual({});
    expect(haul({ places: [aPlace({ accepts: ['soil'] })] }).data.reChalk).toEqual({});
  });

  test('a thickness of which not a square foot goes on a load has no row', () => {
    // 40 lb of 12.5 lb an inch and square foot: just over 3 in.
    const rows = rowsOf(haul({ trailers: [{ ...LONG_BOX, grossRatingLb: 4_240 }] }));
    expect(rows.map(({ name, areaSqFt }) => [name, areaSqFt])).toEqual([['t-3', 1]]);
  });

  test('metric: steps of 10 mm and of a tenth of a square metre', () => {
    const existing = [anExisting({ thicknessIn: mmToIn(100) })];
    const result = haul({ existing, trailers: [CARRIES_7000], chalk: CHALK_STEPS.metric });
    const rows = rowsOf(result);
    expect(rows.map(({ name }) => name)).toEqual([80, 90, 100, 110, 120, 130, 140].map((mm) => `t-${mm}`));
    expect(rows.map(({ thicknessIn }) => Math.round(inToMm(thicknessIn) * 1e6) / 1e6)).toEqual([
      80, 90, 100, 110, 120, 130, 140,
    ]);
    // 7,000 lb of 150 lb/cu ft are 46.667 cu ft or 1.32145 m3: 13.2145 m2 of 100 mm, 9.439 of 140.
    const shown = rows.map(({ areaSqFt }) => sqFtToSqM(areaSqFt));
    expect(shown[2]).toBeCloseTo(13.2, 9);
    expect(shown[6]).toBeCloseTo(9.4, 9);
    for (const areaSqM of shown) expect(areaSqM * 10).toBeCloseTo(Math.round(areaSqM * 10), 9);
  });

  testExpressions('us', haul({ existing: [anExisting({ thicknessIn: 4.25 })] }).figures['re-chalk'], 14);
  const metric = haul({ existing: [anExisting({ thicknessIn: mmToIn(95) })], chalk: CHALK_STEPS.metric });
  testExpressions('metric', metric.figures['re-chalk'], 14);
});

describe('the thicknesses', () => {
  test.each([
    { plannedIn: 4, offsetsIn: [-1, -0.5, 0, 0.5, 1, 1.5, 2] },
    { plannedIn: 2.5, offsetsIn: [-0.5, 0, 0.5, 1, 1.5, 2] },
    { plannedIn: 2.25, offsetsIn: [0, 0.5, 1, 1.5, 2] },
    { plannedIn: 1.5, offsetsIn: [0, 0.5, 1, 1.5, 2] },
  ])('round $plannedIn in', ({ plannedIn, offsetsIn }) => {
    expect(thicknessOffsetsIn(plannedIn, CHALK_STEPS.us)).toEqual(offsetsIn);
  });

  test('60 mm has 50 mm before it, in spite of doubles', () => {
    const thicknessesMm = thicknessOffsetsIn(mmToIn(60), CHALK_STEPS.metric).map((offsetIn) =>
      Math.round(inToMm(mmToIn(60) + offsetIn)),
    );
    expect(thicknessesMm).toEqual([50, 60, 70, 80, 90, 100]);
  });

  test.each([0, -1, Number.NaN])('a thickness of %d is refused', (plannedIn) => {
    expect(() => thicknessOffsetsIn(plannedIn, CHALK_STEPS.us)).toThrow(RangeError);
  });
});

const SEED = 20_260_511;

describe(`invariants of what to chalk (seed ${SEED})`, () => {
  const slab = fc.record({
    lengthFt: fc.double({ min: 2, max: 80, noNaN: true }),
    widthFt: fc.double({ min: 2, max: 30, noNaN: true }),
    plannedIn: fc.double({ min: 1, max: 12, noNaN: true }),
    lbPerCuFt: fc.double({ min: 30, max: 180, noNaN: true }),
    system: fc.constantFrom('us' as const, 'metric' as const),
  });

  test('thicker is never more area nor fewer loads; no bay is over the payload or the box', () => {
    const { lengthIn, widthIn, heightIn } = SHORT_BOX.box;
    const boxCuFt = (lengthIn * widthIn * heightIn) / 1728;
    fc.assert(
      fc.property(slab, ({ lengthFt, widthFt, plannedIn, lbPerCuFt, system }) => {
        const shape = rectangle(lengthFt, widthFt);
        const existing = [anExisting({ shape, thicknessIn: plannedIn, unitWeightLbPerCuFt: lbPerCuFt })];
        const steps = CHALK_STEPS[system];
        const rows = rowsOf(haul({ existing, trailers: [SHORT_BOX], chalk: steps }));
        expect(rows.length).toBeGreaterThanOrEqual(5);
        expect(rows.filter(({ isPlanned }) => isPlanned).map((row) => row.thicknessIn)).toEqual([plannedIn]);

        for (const [index, { thicknessIn, areaSqFt, loads }] of rows.entries()) {
          const before = rows[index - 1];
          if (before !== undefined) {
            expect(thicknessIn).toBeGreaterThan(before.thicknessIn);
            expect(areaSqFt).toBeLessThanOrEqual(before.areaSqFt);
            expect(loads).toBeGreaterThanOrEqual(before.loads);
          }
          const cuFt = (areaSqFt * thicknessIn) / 12;
          expect(cuFt * lbPerCuFt).toBeLessThanOrEqual(7_300 * (1 + 1e-8));
          expect(cuFt * 1.6).toBeLessThanOrEqual(boxCuFt * (1 + 1e-8));
          // One step of area more would be over one of the two.
          const moreCuFt = ((areaSqFt + steps.areaSqFt) * thicknessIn) / 12;
          expect(moreCuFt * lbPerCuFt > 7_300 || moreCuFt * 1.6 > boxCuFt).toBe(true);
          // The bays cover the slab, and one fewer would not.
          const slabSqFt = lengthFt * widthFt;
          expect(loads * areaSqFt).toBeGreaterThanOrEqual(slabSqFt * (1 - 1e-8));
          expect((loads - 1) * areaSqFt).toBeLessThan(slabSqFt);
        }
      }),
      { numRuns: runCount(200), seed: SEED },
    );
  });
});
