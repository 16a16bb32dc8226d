import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import {
  ageFactor,
  ageForRatioDays,
  calcStrength,
  daysToAge,
  equivalentAgeHr,
  strengthRatio,
  WAITS,
} from '../../../src/calculate/strength/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { fig } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { aWeather } from '../pour-day/a-pour.ts';

const strengthOf = (comingF: readonly number[], strengthPsi = 4000) =>
  calcStrength({ pour: { weather: aWeather({ comingF }) }, strengthPsi: fig(strengthPsi, 'psi') });
const daysOf = (comingF: readonly number[], strengthPsi = 4000) => {
  const { waits } = strengthOf(comingF, strengthPsi).figures;
  return WAITS.map((wait) => num(waits[wait].days));
};

describe('maturity', () => {
  const spell = fc.record({
    hours: fc.double({ min: 0, max: 200, noNaN: true }),
    temperatureC: fc.double({ min: -10, max: 40, noNaN: true }),
  });

  test('invariant: more time or more warmth never makes concrete younger or weaker', () => {
    fc.assert(
      fc.property(fc.array(spell, { maxLength: 6 }), spell, (spells, more) => {
        const age = equivalentAgeHr(spells);
        expect(equivalentAgeHr([...spells, more])).toBeGreaterThanOrEqual(age);
        const warmer = spells.map((one) => ({ ...one, temperatureC: one.temperatureC + 5 }));
        expect(equivalentAgeHr(warmer)).toBeGreaterThanOrEqual(age);
        expect(strengthRatio(equivalentAgeHr(warmer) / 24)).toBeGreaterThanOrEqual(strengthRatio(age / 24));
      }),
      { numRuns: runCount(200), seed: 5 },
    );
  });

  test('exact: the age of a ratio gives the ratio', () => {
    for (const ratio of [0, 0.1, 0.5, 0.7, 1])
      expect(strengthRatio(ageForRatioDays(ratio))).toBeCloseTo(ratio, 12);
  });

  test('exact: at the reference an hour is an hour, and frost counts nothing', () => {
    expect(ageFactor(23)).toBe(1);
    expect(ageFactor(0)).toBe(0);
    expect(ageFactor(-20)).toBe(0);
    expect(daysToAge(5, [23])).toBe(5);
    expect(daysToAge(5.1, [23])).toBe(6);
    expect(daysToAge(0, [23])).toBe(0);
    // A day of frost, then days at the reference.
    expect(daysToAge(3, [-5, 23, 23, 23])).toBe(4);
    expect(daysToAge(3, [-5])).toBe(90);
  });

  test('after the last day the mean of all goes on', () => {
    const mean = (10 + 20) / 2;
    expect(daysToAge(20, [10, 20])).toBe(2 + daysToAge(20 - ageFactor(10) - ageFactor(20), [mean]));
  });

  test.each([
    () => ageFactor(81),
    () => ageFactor(Number.NaN),
    () => strengthRatio(-1),
    () => ageForRatioDays(1.01),
    () => ageForRatioDays(Number.NaN),
    () => daysToAge(3, []),
  ])('refuses what is outside its range: %s', (wrong) => {
    expect(wrong).toThrow(RangeError);
  });
});

describe('what the concrete waits for', () => {
  test('without the coming days the floors hold', () => {
    expect(daysOf([])).toEqual([1, 2, 7, 7, 28, 28]);
    expect(strengthOf([]).figures.at).toBeUndefined();
    expect(strengthOf([]).data.isEstimated).toBe(false);
  });

  test('at 73.4 °F, the reference, cars come after 7 days', () => {
    // 0.7: 4 × 0.7 / (1 - 0.595) = 6.9 days; the whole of it: 4 / 0.15 = 26.7.
    expect(daysOf([73.4])).toEqual([1, 2, 7, 7, 28, 28]);
  });

  test('at 50 °F all but the sealer waits longer than its floor or as long', () => {
    // A day at 10 °C counts 0.460: 500 of 4000 psi is 0.56 days, 70 % is 6.91, all of it 26.67.
    expect(daysOf([50])).toEqual([2, 2, 16, 16, 58, 28]);
  });

  test('a mix below 500 psi more than its own strength is not asked for', () => {
    expect(num(strengthOf([60], 400).figures.waits.walk.strength!)).toBe(400);
    expect(num(strengthOf([60], 4000).figures.waits.drive.strength!)).toBeCloseTo(2800, 9);
  });

  test('invariant: no estimate comes before its floor, and colder is never sooner', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 20, max: 95, noNaN: true }), { minLength: 1, maxLength: 8 }),
        (comingF) => {
          const now = daysOf(comingF);
          const floors = daysOf([]);
          const colder = daysOf(comingF.map((airF) => airF - 5));
          for (const [index, dayCount] of now.entries()) {
            expect(dayCount).toBeGreaterThanOrEqual(floors[index] ?? Infinity);
            expect(colder[index]).toBeGreaterThanOrEqual(dayCount);
          }
        },
      ),
      { numRuns: runCount(200), seed: 6 },
    );
  });

  test('invariant: strength grows from age to age', () => {
    const { at } = strengthOf([50, 55, 45]).figures;
    const grown = Object.values(at!).map(num);
    expect(grown).toEqual(grown.toSorted((one, other) => one - other));
    expect(new Set(grown).size).toBe(5);
  });
});

testExpressions('strength', strengthOf([50, 60]).figures, 15);
