import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  baseAreaSqFt,
  baseTon,
  compactedCuYd,
  looseCuYd,
  looseUnitWeightLbPerCuFt,
} from '../../../src/calculate/base/index.ts';
import { type FigureTree, num } from '../../../src/calculate/figure.ts';
import { runCount } from '../../support/property-runs.ts';
import { aBaseSupplier, aSlab, base, rectangle } from '../haul/a-haul.ts';
import { expressionCount, wrongFormulas } from '../haul/reevaluate.ts';

const SEED = 20_260_502;
const runs = { numRuns: runCount(200), seed: SEED };

describe('calcBase', () => {
  test('exact: 500 sq ft of 4 in, no margin', () => {
    const { total } = base([aSlab({ baseIn: 4 })]).figures;
    expect(num(total.compacted)).toBeCloseTo(6.1728, 4);
    expect(num(total.loose)).toBeCloseTo(7.716, 4);
    expect(num(total.tons)).toBeCloseTo(10.8333, 4);
    expect(num(total['order-tons'])).toBe(11);
    expect(num(total['loose-unit-weight'])).toBe(104);
  });

  test('exact: a margin of 6 in goes along the formed edges only', () => {
    const shape = rectangle(25, 20, [{ edge: 1, kind: 'house' }]);
    const { slabs } = base([aSlab({ baseIn: 4, shape })], aBaseSupplier(), 6).figures;
    // 25 + 2 x 20 ft are formed.
    expect(slabs['drive'] && num(slabs['drive'].area)).toBe(532.5);
  });

  test('only slabs with a base; without one nothing is ordered', () => {
    const { figures } = base([aSlab({ baseIn: 0 }), aSlab({ id: 'patio', baseIn: 4 })]);
    expect(Object.keys(figures.slabs)).toEqual(['patio']);
    expect(num(base([aSlab()]).figures.total['order-tons'])).toBe(0);
  });

  test('formulas give their values', () => {
    const figures = base(
      [aSlab({ baseIn: 4 }), aSlab({ id: 'walk-2', baseIn: 3.5, shape: rectangle(41.7, 3.9) })],
      aBaseSupplier({ incrementTon: 0.25 }),
      6,
    ).figures satisfies FigureTree;
    expect(wrongFormulas(figures)).toEqual([]);
    expect(expressionCount(figures)).toBe(20);
  });
});

describe(`invariants of the base (seed ${SEED})`, () => {
  const area = fc.double({ min: 1, max: 5000, noNaN: true });
  const thickness = fc.double({ min: 1, max: 12, noNaN: true });
  const unitWeight = fc.double({ min: 80, max: 150, noNaN: true });
  const ratio = fc.double({ min: 1, max: 1.6, noNaN: true });

  test('loose and compacted weigh the same', () => {
    fc.assert(
      fc.property(area, thickness, unitWeight, ratio, (areaSqFt, thicknessIn, lbPerCuFt, loose) => {
        const compacted = compactedCuYd({ areaSqFt, thicknessIn });
        const looseLb = looseCuYd(compacted, loose) * 27 * looseUnitWeightLbPerCuFt(lbPerCuFt, loose);
        expect(looseLb / 2000 / baseTon(compacted, lbPerCuFt)).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  test('the order is never short and never a whole increment over', () => {
    fc.assert(
      fc.property(area, fc.constantFrom(0.1, 0.25, 0.5, 1), (lengthFt, incrementTon) => {
        const slab = aSlab({ baseIn: 4, shape: rectangle(lengthFt, 10) });
        const { total } = base([slab], aBaseSupplier({ incrementTon })).figures;
        const over = num(total['order-tons']) - num(total.tons);
        expect(over).toBeGreaterThan(-1e-6);
        expect(over).toBeLessThan(incrementTon);
      }),
      runs,
    );
  });
});

describe('refusals', () => {
  test.each([
    ['an area below 0', () => compactedCuYd({ areaSqFt: -1, thicknessIn: 4 })],
    ['no thickness', () => compactedCuYd({ areaSqFt: 1, thicknessIn: Number.NaN })],
    ['a base that grows by compacting', () => looseCuYd(1, 0.99)],
    ['a weightless base', () => baseTon(1, 0)],
    ['a loose weight of nothing', () => looseUnitWeightLbPerCuFt(0, 1.25)],
    ['a loose weight heavier than compacted', () => looseUnitWeightLbPerCuFt(130, 0.9)],
    [
      'a margin below 0',
      () => baseAreaSqFt({ areaSqFt: 1, formedStraightFt: 1, formedCurvedFt: 0, marginIn: -1 }),
    ],
  ])('%s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});
