import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { Slab } from '../../../src/calculate/job.ts';
import {
  type BarFigures,
  barGrid,
  barLapIn,
  barPiecesIn,
  barTable,
  calcReinforcement,
  chairCount,
  cutFromSticks,
  type MeshFigures,
  meshSheetCount,
  meshWeightLb,
  type ReinforcementResult,
  sheetsAlong,
  steelAreaSqInPerFt,
} from '../../../src/calculate/reinforcement/index.ts';
import { testExpressions } from '../evaluate.ts';
import { anyShape, aSlab, at, lShape, outlined, propertyRuns, rectangle, tapedIn, values } from '../slabs.ts';

const suppliers = {
  mesh: { sheetLengthIn: 240, sheetWidthIn: 96, lapIn: 8 },
  bars: { stockIn: 240, lapDiameters: 40 },
};

function steel(...slabs: readonly Slab[]) {
  return calcReinforcement({ ...outlined(...slabs), suppliers });
}

/** The figures of a slab that has bars in it. */
function barsOf(result: ReinforcementResult, id = 'drive'): BarFigures {
  const laid = at(result.figures.slabs, id);
  if (!('sticks' in laid)) throw new Error(`${id} has no bars`);
  return laid;
}

const mesh = { kind: 'mesh', style: '6x6-w2.9' } as const;
const bars = { kind: 'bars', size: 4, spacingIn: 18 } as const;
const drive = aSlab({ reinforcement: bars });
const apron = aSlab({ id: 'apron', shape: rectangle(240, 120), reinforcement: mesh });
const walk = aSlab({ id: 'front-walk', shape: rectangle(360, 48) });
const patio = aSlab({
  id: 'patio',
  shape: rectangle(144, 120),
  reinforcement: { ...bars, size: 3, spacingIn: 12 },
});

describe('calcReinforcement', () => {
  const result = steel(drive, apron, walk, patio);

  test('mesh by hand', () => {
    // Along the apron: 1 + 2 sheets (240 covers 240; 96 + 88 covers 120), the other way 3 x 1.
    const { sheets, weight, chairs } = at(result.figures.slabs, 'apron') as MeshFigures;
    expect(values({ sheets, weight, chairs })).toEqual({ sheets: 2, weight: 2 * 160 * 0.42, chairs: 23 });
    expect(at(result.data.steelSqInPerFt, 'apron')).toBeCloseTo(0.058, 12);
  });

  test('bars by hand', () => {
    // Along: 212 in of width at most 18 apart, 12 spaces, 13 runs of 476 in, each of 3 bars with 2 laps of 20.
    // Across: 476 in of length, 27 spaces, 28 runs of 212 in, one bar each.
    const laid = values(barsOf(result));
    expect(laid['bars-along']).toBe(13);
    expect(laid['bars-across']).toBe(28);
    expect(laid.length).toBeCloseTo((13 * (476 + 40) + 28 * 212) / 12, 9);
    expect(laid.weight).toBeCloseTo(laid.length * 0.668, 9);
    // 13 runs of 240 + 240 + 36; nothing else fits behind 212, six of 36 go into a stick.
    expect(laid.sticks).toBe(26 + 28 + 3);
    expect(laid.chairs).toBe(45); // 720 sq ft at 4 ft each way
    expect(at(result.data.cuts, 'drive')).toEqual([
      { lengthIn: 240, count: 26 },
      { lengthIn: 212, count: 28 },
      { lengthIn: 36, count: 13 },
    ]);
  });

  test('a slab without steel has no figures, and totals are sums', () => {
    expect(Object.keys(result.figures.slabs)).toEqual(['drive', 'apron', 'patio']);
    const { sheets, sticks, weight, chairs } = values(result.figures.total);
    // Patio: 11 runs of 140 in and 13 of 116 in; one of the long or two of the short in a stick.
    const driveLb = ((13 * 516 + 28 * 212) / 12) * 0.668;
    const patioLb = ((11 * 140 + 13 * 116) / 12) * 0.376;
    expect(sheets).toBe(2);
    expect(sticks).toBe(57 + 11 + 7);
    expect(weight).toBeCloseTo(driveLb + 134.4 + patioLb, 9);
    expect(chairs).toBe(45 + 23 + 14);
  });

  test('no steel at all is 0 everywhere', () => {
    expect(values(steel(walk).figures.total)).toEqual({
      sheets: 0,
      sticks: 0,
      'bought-bars': 0,
      weight: 0,
      chairs: 0,
    });
  });

  test('a slab too narrow for its cover gets no bars that way', () => {
    const strip = steel(aSlab({ shape: rectangle(120, 3), reinforcement: bars }));
    expect(values(barsOf(strip))).toMatchObject({
      'bars-along': 0,
      'bars-across': 0,
      sticks: 0,
    });
  });

  test('a lap as long as what it laps is a problem, told once', () => {
    const long = { mesh: { ...suppliers.mesh, lapIn: 96 }, bars: { stockIn: 20, lapDiameters: 40 } };
    const refused = calcReinforcement({ ...outlined(drive, apron), suppliers: long });
    expect(refused.problems).toEqual([
      { code: 'bar-lap-too-long', path: 'company.suppliers.bars.lap', parts: { lap: '20″', stock: '20″' } },
      { code: 'mesh-lap-too-long', path: 'company.suppliers.mesh.lap', parts: { lap: '96″', sheet: '96″' } },
    ]);
    expect(refused.figures.slabs).toEqual({});
  });

  testExpressions('reinforcement', result.figures, 10);

  test('invariant: length is the clipped grid and its laps, cut from enough sticks', () => {
    fc.assert(
      fc.property(anyShape, tapedIn(9, 24), fc.constantFrom(3, 4, 5), (shape, spacingIn, size) => {
        const made = outlined(aSlab({ shape, reinforcement: { kind: 'bars', size, spacingIn } }));
        const laid = barsOf(calcReinforcement({ ...made, suppliers }));
        const grid = barGrid({ outline: at(made.outlines, 'drive'), spacingIn, coverIn: 2 });
        const runsIn = [...grid.alongIn, ...grid.acrossIn];
        const lapIn = 40 * barTable[size].diameterIn;
        // Laps counted another way: each bar after the first adds the stock less a lap.
        const lapCountOf = (runIn: number) => {
          let laps = 0;
          for (let coveredIn = 240; coveredIn < runIn - 1e-6; coveredIn += 240 - lapIn) laps += 1;
          return laps;
        };
        const totalIn = runsIn.reduce((sumIn, runIn) => sumIn + runIn + lapCountOf(runIn) * lapIn, 0);
        expect(num(laid.length)).toBeCloseTo(totalIn / 12, 6);
        expect(num(laid.sticks) * 20).toBeGreaterThanOrEqual(num(laid.length) - 1e-6);
        expect(num(laid['bars-along']) + num(laid['bars-across'])).toBe(runsIn.length);
      }),
      propertyRuns,
    );
  });
});

describe('barGrid', () => {
  test('runs of an L end at its inner edges', () => {
    const { outlines } = outlined(
      aSlab({ shape: lShape({ lengthIn: 240, widthIn: 240, legIn: 90, armIn: 90 }) }),
    );
    const grid = barGrid({ outline: at(outlines, 'drive'), spacingIn: 59, coverIn: 2 });
    // Places 2, 61, 120, 179 and 238 in: two in the arm, three in the leg.
    expect(grid.alongIn).toEqual([236, 236, 86, 86, 86]);
    expect(grid.acrossIn).toEqual([236, 236, 86, 86, 86]);
  });
});

describe('mesh', () => {
  test('the turning with fewer sheets is taken', () => {
    const sheet = { lengthIn: 240, widthIn: 96 };
    expect(meshSheetCount({ box: { lengthIn: 96, widthIn: 240 }, sheet, lapIn: 8 })).toBe(1);
    expect(meshSheetCount({ box: { lengthIn: 4, widthIn: 4 }, sheet, lapIn: 8 })).toBe(1);
  });

  test('exact: two sheets with a lap reach twice their length less the lap', () => {
    expect(sheetsAlong({ sideIn: 472, sheetIn: 240, lapIn: 8 })).toBe(2);
    expect(sheetsAlong({ sideIn: 472.1, sheetIn: 240, lapIn: 8 })).toBe(3);
  });

  test('invariant: sheets reach the side, one fewer would not', () => {
    fc.assert(
      fc.property(tapedIn(13, 1200), tapedIn(40, 300), tapedIn(0, 12), (sideIn, sheetIn, lapIn) => {
        const sheets = sheetsAlong({ sideIn, sheetIn, lapIn });
        const reachIn = (count: number) => count * sheetIn - (count - 1) * lapIn;
        expect(reachIn(sheets)).toBeGreaterThanOrEqual(sideIn - 1e-6);
        if (sheets > 1) expect(reachIn(sheets - 1)).toBeLessThan(sideIn);
      }),
      propertyRuns,
    );
  });
});

describe('cutFromSticks', () => {
  test('the longest first, each into the first stick with room', () => {
    expect(cutFromSticks([60, 200, 120, 40, 120, 180], 240)).toEqual([
      [200, 40],
      [180, 60],
      [120, 120],
    ]);
  });

  test('invariant: every piece is cut once, and no stick is cut beyond its length', () => {
    fc.assert(
      fc.property(fc.array(tapedIn(1, 240), { maxLength: 60 }), (piecesIn) => {
        const sticks = cutFromSticks(piecesIn, 240);
        expect(sticks.flat().toSorted((a, b) => a - b)).toEqual(piecesIn.toSorted((a, b) => a - b));
        const usedIn = sticks.map((cutsIn) => cutsIn.reduce((sum, cutIn) => sum + cutIn, 0));
        expect(usedIn.every((lengthIn) => lengthIn <= 240)).toBe(true);
        // First fit never leaves two sticks half empty.
        expect(usedIn.filter((lengthIn) => lengthIn <= 120).length).toBeLessThanOrEqual(1);
      }),
      propertyRuns,
    );
  });
});

describe('refused', () => {
  test('what is outside its range', () => {
    const { outlines } = outlined(drive);
    const outline = at(outlines, 'drive');
    expect(() => sheetsAlong({ sideIn: 100, sheetIn: 8, lapIn: 8 })).toThrow(RangeError);
    expect(() => sheetsAlong({ sideIn: Number.NaN, sheetIn: 96, lapIn: 8 })).toThrow(RangeError);
    expect(() =>
      meshWeightLb({ sheetCount: -1, sheet: { lengthIn: 1, widthIn: 1 }, lbPer100SqFt: 42 }),
    ).toThrow();
    expect(() => steelAreaSqInPerFt({ areaSqIn: 0.2, spacingIn: 0 })).toThrow(RangeError);
    expect(() => barGrid({ outline, spacingIn: 0, coverIn: 2 })).toThrow(RangeError);
    expect(() => barGrid({ outline, spacingIn: 12, coverIn: -1 })).toThrow(RangeError);
    expect(() => barPiecesIn({ runIn: 0, stockIn: 240, lapIn: 20 })).toThrow(RangeError);
    expect(() => barPiecesIn({ runIn: 100, stockIn: 20, lapIn: 20 })).toThrow(RangeError);
    expect(() => barLapIn({ lapDiameters: Number.NaN, diameterIn: 0.5 })).toThrow(RangeError);
    expect(() => cutFromSticks([241], 240)).toThrow(RangeError);
    expect(() => chairCount({ areaSqFt: 100, spacingFt: 0 })).toThrow(RangeError);
  });
});
