import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mixFigures } from '../../../src/calculate/concrete/index.ts';
import type { FigureTree } from '../../../src/calculate/figure.ts';
import {
  calcChecks,
  combinationRatingLb,
  evaluateRules,
  towedOfHeavyLb,
} from '../../../src/calculate/findings/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { aMix } from '../a-mix.ts';
import { fig } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { LONG_BOX } from '../haul/a-haul.ts';
import { shippedRules } from './shipped-rules.ts';

const runs = { numRuns: runCount(200), seed: 20_261_125 };

function checksOf(rated: { truckLb: number; trailerLb: number; combinedLb?: number }) {
  const { truckLb, trailerLb, combinedLb = 9000 } = rated;
  return calcChecks({
    slabs: {},
    mix: aMix({ strengthPsi: 4000 }),
    mixFigures: mixFigures(aMix({ strengthPsi: 4000 }), fig(3500, 'psi')),
    strengthFloorPsi: fig(3500, 'psi'),
    trailers: {},
    loads: [],
    fleet: {
      towVehicle: { grossRatingLb: truckLb, combinedRatingLb: combinedLb },
      trailers: {
        box: { ...LONG_BOX, id: 'box', grossRatingLb: trailerLb },
        parked: { ...LONG_BOX, id: 'parked', grossRatingLb: 90_000 },
      },
      hauling: ['box'],
    },
  });
}

function licences(rated: Parameters<typeof checksOf>[0]) {
  const rules = shippedRules('general').filter(({ code }) => code.startsWith('licence-'));
  const figures = { checks: checksOf(rated) as FigureTree };
  const { findings } = evaluateRules({ rules, figures, tags: ['any-job'], acknowledged: [] });
  return findings.map(({ code, where }) => `${code} ${where}`);
}

describe('commercial licence, 49 CFR 383.91(a)', () => {
  const A = 'licence-group-a box';
  const B = 'licence-group-b job';

  test.each([
    { why: 'one pound short of 26,001', truckLb: 12_000, trailerLb: 14_000, found: [] },
    { why: '26,001 or more is reached', truckLb: 12_001, trailerLb: 14_000, found: [A] },
    { why: 'a trailer of 10,000 is not in excess of 10,000', truckLb: 19_500, trailerLb: 10_000, found: [] },
    { why: 'a trailer of 10,001 is', truckLb: 19_500, trailerLb: 10_001, found: [A] },
    { why: 'heavy trailer, light combination', truckLb: 9900, trailerLb: 14_000, found: [] },
    { why: 'a truck of 26,000 is no Group B', truckLb: 26_000, trailerLb: 5000, found: [] },
    { why: 'one of 26,001 is', truckLb: 26_001, trailerLb: 5000, found: [B] },
    { why: 'both', truckLb: 26_001, trailerLb: 14_000, found: [A, B] },
    { why: '26,000.9 is under 26,001', truckLb: 12_000.9, trailerLb: 14_000, found: [] },
    { why: 'so is 26,000.9 alone', truckLb: 26_000.9, trailerLb: 5000, found: [] },
  ])('$why: $truckLb + $trailerLb', ({ truckLb, trailerLb, found }) => {
    expect(licences({ truckLb, trailerLb })).toEqual(found);
  });

  test('the rating in combination counts where it is the greater', () => {
    expect(licences({ truckLb: 10_000, trailerLb: 12_000, combinedLb: 26_001 })).toEqual([A]);
    expect(licences({ truckLb: 10_000, trailerLb: 12_000, combinedLb: 26_000 })).toEqual([]);
  });

  test('a trailer that hauls nothing is not looked at', () => {
    expect(Object.keys(checksOf({ truckLb: 12_001, trailerLb: 5000 }).fleet)).toEqual(['box']);
  });
});

describe('figures of the fleet', () => {
  testExpressions('heavy', checksOf({ truckLb: 12_400.5, trailerLb: 14_000 }) as FigureTree, 5);
  testExpressions('twice as heavy', checksOf({ truckLb: 40_000, trailerLb: 14_000 }) as FigureTree, 5);
  testExpressions('light', checksOf({ truckLb: 9900, trailerLb: 7000 }) as FigureTree, 5);

  const ratingLb = fc.integer({ min: 1, max: 80_000 });
  test('invariant: never under any of the ratings, and more rating never makes less', () => {
    fc.assert(
      fc.property(ratingLb, ratingLb, ratingLb, (truckGrossLb, trailerGrossLb, combinedLb) => {
        const rated = { truckGrossLb, trailerGrossLb, combinedLb };
        const combinationLb = combinationRatingLb(rated);
        expect(combinationLb).toBeGreaterThanOrEqual(Math.max(truckGrossLb + trailerGrossLb, combinedLb));
        expect(combinationRatingLb({ ...rated, trailerGrossLb: trailerGrossLb + 1 })).toBeGreaterThanOrEqual(
          combinationLb,
        );
        expect([0, trailerGrossLb]).toContain(towedOfHeavyLb({ combinationLb, trailerGrossLb }));
      }),
      runs,
    );
  });

  test.each(['truckGrossLb', 'trailerGrossLb', 'combinedLb'])('%s has to be above 0', (key) => {
    const rated = { truckGrossLb: 1, trailerGrossLb: 1, combinedLb: 1 };
    for (const wrong of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => combinationRatingLb({ ...rated, [key]: wrong })).toThrow(RangeError);
    }
  });
});
