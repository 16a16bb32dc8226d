import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { Slab } from '../../../src/calculate/job.ts';
import { calcJoints } from '../../../src/calculate/joints/index.ts';
import {
  type BarFigures,
  barLapIn,
  barRuns,
  barTable,
  calcReinforcement,
  chairCount,
  dragAreaSqInPerFt,
  type MeshFigures,
  meshSheetCount,
  meshStripsIn,
  meshWeightLb,
  type ReinforcementResult,
  sheetsAlong,
  steelAreaSqInPerFt,
  wireDiameterIn,
} from '../../../src/calculate/reinforcement/index.ts';
import { usd } from '../cost/a-cost.ts';
import { testExpressions } from '../evaluate.ts';
import {
  anyShape,
  aSlab,
  at,
  lShape,
  outlined,
  propertyRuns,
  rectangle,
  someBars,
  someMesh,
  tapedIn,
} from '../slabs.ts';

type Suppliers = Parameters<typeof calcReinforcement>[0]['suppliers'];

const suppliers: Suppliers = {
  mesh: { sheetLengthIn: 240, sheetWidthIn: 96, lapIn: 8, roll: null },
  bars: { stocksIn: [240], lapDiameters: 40, kerfIn: null },
  glassFibreBars: { stocksIn: [240], lapDiameters: 40, kerfIn: null },
};

const mix = { slumpIn: 4, aggregateIn: 0.75 };

function steel(slabs: readonly Slab[], changed: Partial<Suppliers> = {}) {
  const made = outlined(...slabs);
  const joints = calcJoints({ ...made, mix });
  return calcReinforcement({
    ...made,
    joints: joints.figures.slabs,
    jointLines: joints.data.lines,
    suppliers: { ...suppliers, ...changed },
  });
}

/** The figures of a slab that has bars in it. */
function barsOf(result: ReinforcementResult, id = 'drive'): BarFigures {
  const laid = at(result.figures.slabs, id);
  if (!('length' in laid)) throw new Error(`${id} has no bars`);
  return laid;
}

function meshOf(result: ReinforcementResult, id: string): MeshFigures {
  const laid = at(result.figures.slabs, id);
  if ('length' in laid) throw new Error(`${id} has no mesh`);
  return laid;
}

const drive = aSlab({ reinforcement: someBars() });
const apron = aSlab({ id: 'apron', shape: rectangle(240, 120), reinforcement: someMesh() });
const walk = aSlab({ id: 'front-walk', shape: rectangle(360, 48) });
const patio = aSlab({
  id: 'patio',
  shape: rectangle(144, 120),
  reinforcement: someBars({ size: 3, spacingIn: 12 }),
});

describe('calcReinforcement', () => {
  const result = steel([drive, apron, walk, patio]);

  test('mesh by hand', () => {
    // Along the apron: 1 + 2 sheets (240 covers 240; 96 + 88 covers 120), the other way 3 x 1.
    const laid = meshOf(result, 'apron');
    expect(laid.sheets && num(laid.sheets)).toBe(2);
    expect(num(laid.weight)).toBe(2 * 160 * 0.42);
    expect(num(laid.chairs)).toBe(23);
    expect(num(laid.along.area)).toBeCloseTo(0.058, 12);
    // 4 in less 2 of cover and two wires of 0.192 in.
    expect(num(laid['chair-height'])).toBeCloseTo(4 - 2 - 2 * 0.1922, 3);
  });

  test('mesh out of rolls by hand: all slabs of a style out of the same rolls', () => {
    const roll = { lengthIn: 600, widthIn: 60, priceUsd: usd('90.00') };
    const rolled = someMesh({ from: 'rolls' });
    const made = steel(
      [aSlab({ ...apron, reinforcement: rolled }), aSlab({ ...walk, reinforcement: rolled })],
      { mesh: { ...suppliers.mesh, roll } },
    );
    // The apron: 52 in a strip, ceil(112 / 52) = 3 strips of 240, or ceil(232 / 52) = 5 of 120 in: 600.
    // The walk: one strip of 360 in, or seven of 48. Together 600 + 336 in, more than one roll.
    expect(num(at(made.figures.rolls as Record<string, { length: never }>, '6x6-w2.9').length)).toBe(78);
    expect(num(made.figures.total.rolls)).toBe(2);
    expect(num(made.figures.total.sheets)).toBe(0);
    expect(num(meshOf(made, 'apron').weight)).toBeCloseTo(50 * 5 * 0.42, 9);
  });

  test('bars by hand', () => {
    // Along: 212 in of width at most 18 apart, 12 spaces, 13 runs of 476 in, each of 3 bars with 2 laps of 20.
    // Across: 476 in of length, 27 spaces, 28 runs of 212 in, one bar each.
    const laid = barsOf(result);
    expect(num(laid['bars-along'])).toBe(13);
    expect(num(laid['bars-across'])).toBe(28);
    expect(num(laid.laps)).toBe(26);
    expect(num(laid.diagonals)).toBe(0);
    expect(num(laid.length)).toBeCloseTo((13 * (476 + 40) + 28 * 212) / 12, 9);
    expect(num(laid.weight)).toBeCloseTo(num(laid.length) * 0.668, 9);
    expect(num(laid.chairs)).toBe(45); // 720 sq ft at 4 ft each way
    // 13 x 28 crossings; on the rim 2 x 13 + 2 x 28 less the 4 corners counted twice; half of the rest; laps.
    expect(num(laid.ties)).toBe(78 + (364 - 78) / 2 + 2 * 26);
    expect(num(laid.along.area)).toBeCloseTo(0.2 * (12 / 18), 12);
    expect(num(laid.along.ratio)).toBeCloseTo((0.2 * 12) / 18 / 48, 12);
    // F L w / (2 f) = 1.5 x 40 ft x 50 lb/sq ft / 80,000 psi
    expect(num(at(laid.along as Record<string, BarFigures['length']>, 'drag-area'))).toBeCloseTo(0.0375, 9);
  });

  test('no lap lies on a joint line where stock leaves another place', () => {
    expect(num(barsOf(result)['laps-on-joints'])).toBe(0);
    const { lines } = calcJoints({ ...outlined(drive), mix }).data;
    const acrossXIn = at(lines, 'drive')
      .filter(({ fromXIn, toXIn }) => fromXIn === toXIn)
      .map((line) => line.fromXIn);
    expect(acrossXIn.length).toBeGreaterThan(2);
    const bars = at(result.data.laid, 'drive').bars.filter(({ way }) => way === 'along');
    for (const { from, pieces } of bars) {
      for (const [index, { fromIn }] of pieces.slice(1).entries()) {
        const before = pieces[index];
        if (before === undefined) throw new Error('a lap lies between two bars');
        const lap = [from.xIn + fromIn, from.xIn + before.fromIn + before.lengthIn] as const;
        expect(lap[1] - lap[0]).toBeCloseTo(20, 9);
        expect(acrossXIn.filter((xIn) => xIn > lap[0] && xIn < lap[1])).toEqual([]);
      }
    }
    // From one end and the other in turn.
    expect(bars[0]?.pieces).not.toEqual(bars[1]?.pieces);
    expect(bars[0]?.pieces).toEqual(bars[2]?.pieces);
  });

  test('slabs share stock bars of a size', () => {
    // 11 runs of 140 in and 13 of 116 in for the patio; one of the long or two of the short in a stick.
    const stock = at(result.figures.stock, 'steel-3');
    expect(num(stock.pieces)).toBe(24);
    expect(num(stock.sticks)).toBe(11 + 7);
    const second = aSlab({ ...patio, id: 'second', shape: rectangle(104, 120) });
    // Six more of 100 in, which go behind those of 140 in, and eleven of 116 in.
    const shared = steel([patio, second]);
    const own =
      num(at(steel([patio]).figures.stock, 'steel-3').sticks) +
      num(at(steel([second]).figures.stock, 'steel-3').sticks);
    expect(num(at(shared.figures.stock, 'steel-3').sticks)).toBeLessThan(own);
  });

  test('a slab without steel has no figures, and totals are sums', () => {
    expect(Object.keys(result.figures.slabs)).toEqual(['drive', 'apron', 'patio']);
    const { sheets, weight, chairs, ties } = result.figures.total;
    const driveLb = ((13 * 516 + 28 * 212) / 12) * 0.668;
    const patioLb = ((11 * 140 + 13 * 116) / 12) * 0.376;
    expect(num(sheets)).toBe(2);
    expect(num(weight)).toBeCloseTo(driveLb + 134.4 + patioLb, 9);
    expect(num(chairs)).toBe(45 + 23 + 14);
    expect(num(ties)).toBe(num(barsOf(result).ties) + num(barsOf(result, 'patio').ties));
    const stock = result.figures.stock;
    const boughtLb = num(at(stock, 'steel-3')['bought-weight']) + num(at(stock, 'steel-4')['bought-weight']);
    expect(num(result.figures.total['bought-bars'])).toBeCloseTo(boughtLb, 9);
  });

  test('no steel at all is 0 everywhere', () => {
    const { total, stock, slabs } = steel([walk]).figures;
    expect(Object.values(total).map(num)).toEqual(Object.values(total).map(() => 0));
    expect({ stock, slabs }).toEqual({ stock: {}, slabs: {} });
  });

  test('a slab too narrow for its cover gets no bars', () => {
    const strip = steel([aSlab({ shape: rectangle(120, 3), reinforcement: someBars() })]);
    expect(num(barsOf(strip)['bars-along'])).toBe(0);
    expect(num(barsOf(strip)['bars-across'])).toBe(0);
    expect(strip.figures.stock).toEqual({});
  });

  test('each way its own spacing, and its own cover', () => {
    const laid = barsOf(steel([aSlab({ reinforcement: someBars({ spacingAcrossIn: 24, coverIn: 3 }) })]));
    expect(num(laid['bars-along'])).toBe(Math.ceil(210 / 18) + 1);
    expect(num(laid['bars-across'])).toBe(Math.ceil(474 / 24) + 1);
    expect(num(laid['chair-height'])).toBeCloseTo(4 - 3 - 1, 12);
    expect(num(laid.across.area)).toBeCloseTo(0.1, 12);
  });

  test('an inner corner without a joint gets two bars across it, of mesh as well', () => {
    const shape = lShape({ lengthIn: 240, widthIn: 240, legIn: 90, armIn: 90 });
    const joints = { cut: 'wet-sawn', lines: {}, propose: 'nothing', sealed: false } as const;
    const barred = steel([aSlab({ shape, joints, reinforcement: someBars() })]);
    expect(num(barsOf(barred).diagonals)).toBe(2);
    const diagonals = at(barred.data.laid, 'drive').bars.filter(({ way }) => way === 'diagonal');
    expect(diagonals.map(({ lengthIn }) => lengthIn)).toEqual([48, 48]);
    const meshed = steel([aSlab({ shape, joints, reinforcement: someMesh() })]);
    expect(num(meshOf(meshed, 'drive').diagonals)).toBe(2);
    // Two bars of 4 ft out of one of 20 ft.
    expect(num(at(meshed.figures.stock, 'steel-4').sticks)).toBe(1);
    expect(num(at(meshed.figures.stock, 'steel-4').length)).toBe(8);
  });

  test('bent pieces at outer corners: steel is cut for them, glass fibre comes bent', () => {
    const bent = someBars({ corners: 'bent' });
    const ofSteel = steel([aSlab({ reinforcement: bent })]);
    expect(num(barsOf(ofSteel)['bent-pieces'])).toBe(4);
    expect(num(ofSteel.figures.total['ordered-bent'])).toBe(0);
    // Two legs of a lap of 20 in.
    const short = at(ofSteel.data.stock, 'steel-4').pieces.find(({ lengthIn }) => lengthIn === 40);
    expect(short?.places).toContainEqual({ slab: 'drive', as: 'bent', count: 4 });
    const ofGlass = steel([aSlab({ reinforcement: { ...bent, material: 'glass-fibre' } })]);
    expect(num(ofGlass.figures.total['ordered-bent'])).toBe(4);
    expect(num(ofGlass.figures.total['bought-bars'])).toBe(0);
    const { pieces } = at(ofGlass.data.stock, 'glass-fibre-4');
    expect(pieces.flatMap(({ places }) => places.map(({ as }) => as))).not.toContain('bent');
    expect('drag-area' in barsOf(ofGlass).along).toBe(false);
  });

  test('glass fibre is sawn: three of 80 in need more than one of 240', () => {
    const three = (material: 'steel' | 'glass-fibre') =>
      steel([aSlab({ shape: rectangle(84, 18), reinforcement: someBars({ material, spacingIn: 7 }) })]);
    expect(num(at(three('steel').figures.stock, 'steel-4').sticks)).toBe(2); // 3 of 80, 13 of 14 in
    expect(at(three('steel').data.stock, 'steel-4').plan.bars[0]?.leftIn).toBe(0);
    const sawn = at(three('glass-fibre').data.stock, 'glass-fibre-4').plan.bars;
    expect(sawn.some(({ cuts }) => cuts[0]?.lengthIn === 80 && cuts[0].count === 3)).toBe(false);
  });

  test('a lap as long as what it laps is a problem, told once', () => {
    const refused = steel([drive, apron], {
      mesh: { ...suppliers.mesh, lapIn: 96 },
      bars: { stocksIn: [20], lapDiameters: 40, kerfIn: null },
    });
    expect(refused.problems).toEqual([
      { code: 'bar-lap-too-long', path: 'company.suppliers.bars.lap', parts: { lap: '20″', stock: '20″' } },
      { code: 'mesh-lap-too-long', path: 'company.suppliers.mesh.lap', parts: { lap: '96″', sheet: '96″' } },
    ]);
    expect(refused.figures.slabs).toEqual({});
  });

  test('cover and bars that do not go into the slab are a problem at the cover, or at the steel', () => {
    const own = steel([aSlab({ reinforcement: someBars({ coverIn: 3.25 }) })]);
    expect(own.problems).toEqual([
      {
        code: 'cover-too-thick',
        path: 'build.slabs.drive.reinforcement.cover',
        parts: { cover: '3 1/4″', mat: '1″', thickness: '4″' },
      },
    ]);
    expect(own.figures.slabs).toEqual({});
    const usual = steel([aSlab({ thicknessIn: 2.5, reinforcement: someBars() })]);
    expect(usual.problems.map(({ path }) => path)).toEqual(['build.slabs.drive.reinforcement']);
    expect(steel([aSlab({ thicknessIn: 3, reinforcement: someBars() })]).problems).toEqual([]);
  });

  testExpressions('reinforcement', result.figures, 20);

  test('invariant: length is the clipped grid, its laps and the bars across corners; stock holds it', () => {
    fc.assert(
      fc.property(
        anyShape,
        tapedIn(9, 24),
        fc.constantFrom(3 as const, 4 as const, 5 as const),
        // Joints move no bar, and take most of the time.
        fc.constantFrom('nothing' as const, 'nothing' as const, 'rest' as const),
        (shape, spacingIn, size, propose) => {
          const joints = { cut: 'wet-sawn' as const, lines: {}, propose, sealed: false };
          const slab = aSlab({ shape, joints, reinforcement: someBars({ size, spacingIn }) });
          const made = steel([slab]);
          const laid = barsOf(made);
          const outline = at(outlined(slab).outlines, 'drive');
          const runs = barRuns({ outline, spacingIn: { along: spacingIn, across: spacingIn }, coverIn: 2 });
          const lapIn = 40 * barTable.steel[size].diameterIn;
          const { bars } = at(made.data.laid, 'drive');
          const diagonalIn = bars
            .filter(({ way }) => way === 'diagonal')
            .reduce((sum, bar) => sum + bar.lengthIn, 0);
          const gridIn = runs.reduce((sum, { lengthIn }) => sum + lengthIn, 0);
          const totalIn = gridIn + num(laid.laps) * lapIn + diagonalIn;
          expect(num(laid.length)).toBeCloseTo(totalIn / 12, 6);
          // Counted another way: each bar after the first adds the stock less a lap.
          const leastLaps = runs.reduce((sum, { lengthIn }) => {
            let laps = 0;
            for (let coveredIn = 240; coveredIn < lengthIn - 1e-6; coveredIn += 240 - lapIn) laps += 1;
            return sum + laps;
          }, 0);
          expect(num(laid.laps)).toBeGreaterThanOrEqual(leastLaps);
          expect(num(laid['bars-along']) + num(laid['bars-across'])).toBe(runs.length);
          for (const { pieces, lengthIn } of bars) {
            expect(pieces.every((piece) => piece.lengthIn > 0 && piece.lengthIn <= 240)).toBe(true);
            expect(pieces[0]?.fromIn).toBe(0);
            const last = pieces.at(-1);
            expect(last && last.fromIn + last.lengthIn).toBeCloseTo(lengthIn, 9);
          }
          const [stock] = Object.values(made.figures.stock);
          if (stock === undefined) return;
          expect(num(stock.length)).toBeCloseTo(num(laid.length), 6);
          expect(num(stock['bought-length'])).toBeGreaterThanOrEqual(num(stock.length) - 1e-6);
          expect(num(stock['bought-length'])).toBeLessThanOrEqual(num(stock['first-fit-length']));
        },
      ),
      propertyRuns,
    );
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

  test('exact: strips of a roll run the way that takes less', () => {
    // Two strips of 60 in reach 112 in.
    expect(meshStripsIn({ box: { lengthIn: 300, widthIn: 112 }, rollWidthIn: 60, lapIn: 8 })).toBe(600);
    expect(meshStripsIn({ box: { lengthIn: 112, widthIn: 300 }, rollWidthIn: 60, lapIn: 8 })).toBe(600);
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

describe('refused', () => {
  test('what is outside its range', () => {
    expect(() => sheetsAlong({ sideIn: 100, sheetIn: 8, lapIn: 8 })).toThrow(RangeError);
    expect(() => sheetsAlong({ sideIn: Number.NaN, sheetIn: 96, lapIn: 8 })).toThrow(RangeError);
    expect(() =>
      meshWeightLb({ sheetCount: -1, sheet: { lengthIn: 1, widthIn: 1 }, lbPer100SqFt: 42 }),
    ).toThrow();
    expect(() => steelAreaSqInPerFt({ areaSqIn: 0.2, spacingIn: 0 })).toThrow(RangeError);
    expect(() => barLapIn({ lapDiameters: Number.NaN, diameterIn: 0.5 })).toThrow(RangeError);
    expect(() => chairCount({ areaSqFt: 100, spacingFt: 0 })).toThrow(RangeError);
    expect(() => wireDiameterIn(0)).toThrow(RangeError);
    const drag = { frictionRatio: 1.5, lengthFt: 20, weightLbPerSqFt: 50, stressPsi: 40_000 };
    expect(() => dragAreaSqInPerFt({ ...drag, lengthFt: 0 })).toThrow(RangeError);
    expect(() => dragAreaSqInPerFt({ ...drag, stressPsi: Number.NaN })).toThrow(RangeError);
  });
});
