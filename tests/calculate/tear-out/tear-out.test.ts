import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Figure, type FigureTree, num } from '../../../src/calculate/figure.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import { handRateFor } from '../../../src/calculate/tear-out/hand-work.ts';
import {
  calcTearOut,
  flatVolumeCuFt,
  handLaborHr,
  handPieceSideIn,
  loadFactor,
  looseVolume,
  swellRatio,
  unitWeightOfPavingLbPerCuFt,
  weightLb,
  weightLbPerSqFt,
} from '../../../src/calculate/tear-out/index.ts';
import { MATERIALS } from '../../../src/calculate/tear-out/materials.ts';
import { runCount } from '../../support/property-runs.ts';
import { fig } from '../crew/a-plan.ts';
import { anExisting, aSlab, rectangle, tearOut } from '../haul/a-haul.ts';
import { expressionCount, wrongFormulas } from '../haul/reevaluate.ts';
import { at, byId, TAPE_LIMITS } from '../slabs.ts';

const SEED = 20_260_501;
const runs = { numRuns: runCount(200), seed: SEED };

function existingOf(result: ReturnType<typeof tearOut>, id: string) {
  const figures = result.figures.existing[id];
  if (figures === undefined) throw new Error(`no figures of ${id}`);
  return figures;
}

describe('calcTearOut', () => {
  test('exact: 500 sq ft of 4 in concrete', () => {
    const drive = existingOf(tearOut([anExisting()]), 'drive');
    expect(num(drive.volume)).toBeCloseTo(166.6667, 4);
    expect(num(drive.weight)).toBeCloseTo(25_000, 6);
    expect(num(drive['weight-per-sq-ft'])).toBe(50);
    expect(num(drive['loose-volume'])).toBeCloseTo((166.6667 / 27) * 1.6, 4);
    expect(num(drive['loose-unit-weight'])).toBeCloseTo(93.75, 9);
  });

  test('a unit weight of the job replaces that of the table', () => {
    const drive = existingOf(tearOut([anExisting({ unitWeightLbPerCuFt: 144 })]), 'drive');
    expect(num(drive.weight)).toBeCloseTo(24_000, 6);
    expect(drive['unit-weight'].source).toBe('company figure');
    expect(drive['unit-weight'].inputs).toEqual({
      unitWeightLbPerCuFt: { path: 'site.existing.drive.unit-weight', value: 144, unit: 'lb/cu ft' },
    });
  });

  test('saw cut: the edges along the house and along what stays, no others', () => {
    const shape = rectangle(25, 20, [
      { edge: 1, kind: 'house' },
      { edge: 2, kind: 'stays' },
      { edge: 3, kind: 'joint' },
    ]);
    const result = tearOut([anExisting({ shape })]);
    expect(num(existingOf(result, 'drive')['saw-cut'])).toBe(45);
    expect(num(result.figures.total['saw-cut'])).toBe(45);
  });

  test('each material goes to its stream, and the streams add up to the total', () => {
    const result = tearOut(
      [
        anExisting({ id: 'plain' }),
        anExisting({ id: 'meshed', steel: 'mesh' }),
        anExisting({ id: 'barred', steel: 'bars' }),
        anExisting({ id: 'bricks', material: 'brick', steel: 'mesh' }),
        anExisting({ id: 'paving', material: 'asphalt' }),
      ],
      [aSlab({ digIn: 6 }), aSlab({ id: 'patio', digIn: 0 })],
    );
    expect(Object.fromEntries(result.data.cargo.map(({ name, stream }) => [name, stream]))).toEqual({
      plain: 'clean-concrete',
      meshed: 'concrete-with-steel',
      barred: 'concrete-with-steel',
      bricks: 'masonry',
      paving: 'asphalt',
      drive: 'soil',
    });
    expect(Object.keys(result.figures.streams)).toEqual([
      'clean-concrete',
      'concrete-with-steel',
      'masonry',
      'asphalt',
      'soil',
    ]);
    expect(Object.keys(result.figures.soil)).toEqual(['drive']);
    const bySum = Object.values(result.figures.streams).reduce((sum, stream) => sum + num(stream.weight), 0);
    expect(num(result.figures.total.weight)).toBe(bySum);
    expect(
      num(result.figures.streams['concrete-with-steel']?.weight ?? result.figures.total.weight),
    ).toBeCloseTo(50_000, 6);
  });

  test('exact: soil under 500 sq ft, 6 in deep, is 250 cu ft in place and a quarter more in the box', () => {
    const soil = tearOut([], [aSlab({ digIn: 6 })]).figures.soil['drive'];
    expect(soil).toBeDefined();
    if (soil === undefined) return;
    expect(num(soil.volume)).toBe(250);
    expect(num(soil.weight)).toBeCloseTo((250 / 27) * 3400, 6);
    // 3,400 over 2,700: the loose weight of the yard is the loose weight printed.
    expect(num(soil['loose-unit-weight']) * 27).toBeCloseTo(2700, 6);
    expect(num(soil.weight) / num(soil['loose-volume'])).toBeCloseTo(2700, 6);
  });

  test('nothing to tear out: no stream, a total of 0', () => {
    const { figures, problems } = tearOut([]);
    expect(figures.streams).toEqual({});
    expect(num(figures.total.weight)).toBe(0);
    expect(problems).toEqual([]);
  });

  test('hand labor only where a rate is published for the thing', () => {
    const result = tearOut([
      anExisting({ id: 'drive' }),
      anExisting({ id: 'bricks', material: 'brick' }),
      anExisting({ id: 'thin', thicknessIn: 1.5 }),
      anExisting({ id: 'thick', thicknessIn: 12, steel: 'bars' }),
    ]);
    expect(Object.keys(result.figures['hand-labor'])).toEqual(['drive']);
  });

  test.each([
    { steel: 'none', thicknessIn: 5.9, fast: 1.9 },
    { steel: 'none', thicknessIn: 6, fast: 3.7 },
    { steel: 'mesh', thicknessIn: 5.9, fast: 3.9 },
    { steel: 'bars', thicknessIn: 6, fast: 4.7 },
  ] as const)('$thicknessIn in with $steel: the row of $fast h/m3', ({ steel, thicknessIn, fast }) => {
    expect(handRateFor({ material: 'concrete', steel, thicknessIn })?.fastHrPerCuM).toBe(fast);
  });

  test('formulas give their values', () => {
    const figures = tearOut(
      [
        anExisting(),
        anExisting({ id: 'walk-2', material: 'asphalt', thicknessIn: 2.5, shape: rectangle(31.3, 4.1) }),
        anExisting({ id: 'a-1', material: 'brick' }),
        anExisting({ id: 'a1', unitWeightLbPerCuFt: 145.5, material: 'brick' }),
      ],
      [aSlab({ digIn: 3.5 })],
    ).figures satisfies FigureTree;
    expect(wrongFormulas(figures)).toEqual([]);
    expect(expressionCount(figures)).toBeGreaterThan(30);
  });

  test('soil under a slab is what its heights have, where they do, and none under a cubic foot', () => {
    const slabs = byId(aSlab({ digIn: 3 }));
    const outline = calcOutline({ slabs, existing: {}, limits: TAPE_LIMITS });
    const rest = { existing: {}, hollow: {}, posts: {}, oldSteps: {}, green: {}, chip: {} };
    const soilOf = (dug?: Record<string, Figure>) =>
      calcTearOut({
        ...rest,
        slabs,
        shapes: outline.figures,
        outlines: {},
        ...(dug === undefined ? {} : { dug }),
      }).figures.soil;
    expect(num(at(soilOf(), 'drive').volume)).toBeCloseTo(125, 9);
    const dug = at(soilOf({ drive: fig(100, 'cu ft') }), 'drive');
    expect(num(dug.volume)).toBe(100);
    expect(num(dug.weight)).toBeCloseTo((num(at(soilOf(), 'drive').weight) * 100) / 125, 6);
    expect(num(at(soilOf({ drive: fig(1, 'cu ft') }), 'drive').volume)).toBe(1);
    expect(soilOf({ drive: fig(0.99, 'cu ft') })).toEqual({});
    expect(num(at(soilOf({ walk: fig(100, 'cu ft') }), 'drive').volume)).toBeCloseTo(125, 9);
  });

  test('a thing without an outline is refused by name', () => {
    const noShapes = { slabs: {}, existing: {} };
    const whole = {
      existing: { drive: anExisting() },
      hollow: {},
      posts: {},
      oldSteps: {},
      green: {},
      chip: {},
      slabs: {},
      shapes: noShapes,
      outlines: {},
    };
    expect(() => calcTearOut(whole)).toThrow(/no outline called drive/);
  });
});

describe(`invariants of the tear-out (seed ${SEED})`, () => {
  const side = fc.double({ min: 1, max: 200, noNaN: true });
  const thickness = fc.double({ min: 0.5, max: 24, noNaN: true });
  const more = fc.double({ min: 1, max: 3, noNaN: true });

  test('weight never falls with area or thickness', () => {
    fc.assert(
      fc.property(side, side, thickness, more, (lengthFt, widthFt, thicknessIn, factor) => {
        const weightOf = (made: Parameters<typeof anExisting>[0]) =>
          num(tearOut([anExisting(made)]).figures.total.weight);
        const plain = weightOf({ shape: rectangle(lengthFt, widthFt), thicknessIn });
        expect(
          weightOf({ shape: rectangle(lengthFt * factor, widthFt), thicknessIn }),
        ).toBeGreaterThanOrEqual(plain);
        expect(
          weightOf({ shape: rectangle(lengthFt, widthFt), thicknessIn: thicknessIn * factor }),
        ).toBeGreaterThanOrEqual(plain);
      }),
      runs,
    );
  });

  test('changing the swell changes the loose volume and not the tons', () => {
    const row = MATERIALS.concrete as { swellRatio: number };
    const shipped = row.swellRatio;
    const swell = fc.double({ min: 0, max: 2, noNaN: true });
    const torn = (share: number, lengthFt: number, thicknessIn: number) => {
      row.swellRatio = share;
      const result = tearOut([anExisting({ shape: rectangle(lengthFt, 10), thicknessIn })]);
      return existingOf(result, 'drive');
    };
    try {
      fc.assert(
        fc.property(side, thickness, swell, swell, (lengthFt, thicknessIn, one, other) => {
          const low = torn(Math.min(one, other), lengthFt, thicknessIn);
          const high = torn(Math.max(one, other), lengthFt, thicknessIn);
          expect(num(high.weight)).toBe(num(low.weight));
          expect(num(high['loose-volume'])).toBeGreaterThanOrEqual(num(low['loose-volume']));
          const boxLb = num(high['loose-volume']) * 27 * num(high['loose-unit-weight']);
          expect(boxLb / num(high.weight)).toBeCloseTo(1, 9);
        }),
        runs,
      );
    } finally {
      row.swellRatio = shipped;
    }
  });

  test('swell and load factor undo each other', () => {
    const weight = fc.double({ min: 500, max: 5000, noNaN: true });
    fc.assert(
      fc.property(weight, weight, (inPlace, loose) => {
        expect(loadFactor(swellRatio({ inPlace, loose }))).toBeCloseTo(loose / inPlace, 9);
      }),
      runs,
    );
  });

  test('a hand piece weighs its limit', () => {
    fc.assert(
      fc.property(thickness, (thicknessIn) => {
        const perSqFt = weightLbPerSqFt({ thicknessIn, unitWeightLbPerCuFt: 150 });
        const sideIn = handPieceSideIn({ limitLb: 51, weightLbPerSqFt: perSqFt });
        expect((sideIn / 12) ** 2 * perSqFt).toBeCloseTo(51, 9);
      }),
      runs,
    );
  });
});

describe('refusals', () => {
  test.each([
    ['no area', () => flatVolumeCuFt({ areaSqFt: 0, thicknessIn: 4 })],
    ['no thickness', () => flatVolumeCuFt({ areaSqFt: 1, thicknessIn: Number.NaN })],
    ['a volume below 0', () => weightLb({ volumeCuFt: -1, unitWeightLbPerCuFt: 150 })],
    ['no unit weight', () => weightLb({ volumeCuFt: 1, unitWeightLbPerCuFt: 0 })],
    ['a square foot of no thickness', () => weightLbPerSqFt({ thicknessIn: 0, unitWeightLbPerCuFt: 150 })],
    [
      'a square foot of no weight',
      () => weightLbPerSqFt({ thicknessIn: 4, unitWeightLbPerCuFt: Number.NaN }),
    ],
    ['a paving rate of 0', () => unitWeightOfPavingLbPerCuFt(0)],
    ['a swell from no loose weight', () => swellRatio({ inPlace: 1, loose: 0 })],
    ['a swell of -1', () => loadFactor(-1)],
    ['a loose volume of NaN', () => looseVolume(Number.NaN, 0.6)],
    ['a loose volume with a swell of -1', () => looseVolume(1, -1)],
    ['a hand piece of nothing', () => handPieceSideIn({ limitLb: 0, weightLbPerSqFt: 50 })],
    ['a hand piece of a weightless slab', () => handPieceSideIn({ limitLb: 51, weightLbPerSqFt: 0 })],
    ['hand labor at no rate', () => handLaborHr({ volumeCuFt: 1, hrPerCuM: 0 })],
    ['hand labor on less than nothing', () => handLaborHr({ volumeCuFt: -1, hrPerCuM: 1.9 })],
  ])('%s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});
