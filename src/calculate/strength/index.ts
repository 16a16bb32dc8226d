import { fToC } from '../../units/index.ts';
import { constant, type Figure, figure, num } from '../figure.ts';
import type { Job } from '../job.ts';
import type { TopicResult } from '../topic.ts';
import { WAIT_ROWS, WAITS, type Wait } from './floors.ts';
import {
  AGE_SOURCE,
  ageAfterDays,
  ageForRatioDays,
  daysToAge,
  STRENGTH_A_DAYS,
  STRENGTH_B,
  STRENGTH_SOURCE,
  strengthRatio,
} from './maturity.ts';

export { WAITS, type Wait } from './floors.ts';
export { ageFactor, ageForRatioDays, daysToAge, equivalentAgeHr, strengthRatio } from './maturity.ts';

export type WaitFigures = {
  /** The least days after the pour. */
  readonly floor: Figure;
  /** The strength waited for [psi] and the days it takes, both estimates; only with the coming days. */
  readonly strength?: Figure;
  readonly estimate?: Figure;
  /** The later of the two [days after the pour]. */
  readonly days: Figure;
};

export type StrengthResult = TopicResult<
  {
    readonly waits: Readonly<Record<Wait, WaitFigures>>;
    /** By age, `day-3`; only with the coming days [psi]. */
    readonly at?: Readonly<Record<string, Figure>>;
    /** The equivalent ages of the same days. */
    readonly ages?: Readonly<Record<string, Figure>>;
  },
  { readonly isEstimated: boolean }
>;

const AGES_DAYS = [1, 3, 7, 14, 28];

/**
 * How strong the concrete will be in the coming days, and what may be done to it when. An estimate from the
 * temperatures of the forecast never comes before the days that the rules ask for, and a test of the concrete
 * overrules both.
 */
export function calcStrength(input: {
  readonly pour: Pick<Job['pour'], 'weather'>;
  /** Of the mix as it is ordered. */
  readonly strengthPsi: Figure;
}): StrengthResult {
  const comingF = input.pour.weather?.comingF ?? [];
  const daysC = comingF.map(fToC);
  const { strengthPsi } = input;
  const waits = Object.fromEntries(
    WAITS.map((wait) => [wait, waitFigures(wait, strengthPsi, daysC)]),
  ) as unknown as Record<Wait, WaitFigures>;
  const ages = Object.fromEntries(
    AGES_DAYS.map((dayCount) => [`day-${dayCount}`, ageFigure(dayCount, daysC)]),
  );
  const at = Object.fromEntries(
    Object.entries(ages).map(([day, age]) => [day, strengthAt(age, strengthPsi)]),
  );
  return {
    figures: { waits, ...(daysC.length === 0 ? {} : { ages, at }) },
    data: { isEstimated: daysC.length > 0 },
    problems: [],
  };
}

function waitFigures(wait: Wait, strengthPsi: Figure, daysC: readonly number[]): WaitFigures {
  const { floorDays, floorSource, strength, strengthSource } = WAIT_ROWS[wait];
  const floor = figure({
    value: floorDays,
    unit: 'days',
    decimals: 0,
    formula: 'leastDays',
    inputs: { leastDays: constant('least days after the pour', floorDays, 'days', floorSource) },
    source: floorSource,
  });
  if (strength === null || daysC.length === 0) return { floor, days: same(floor) };
  const wanted =
    'psi' in strength
      ? constant('strength', Math.min(strength.psi, num(strengthPsi)), 'psi', strengthSource)
      : constant('share of the strength of the mix', strength.ratio, 'ratio', strengthSource);
  const target = figure({
    value: 'psi' in strength ? num(wanted) : strength.ratio * num(strengthPsi),
    unit: 'psi',
    decimals: 0,
    formula: 'psi' in strength ? 'wantedPsi' : 'strengthPsi * shareRatio',
    inputs: 'psi' in strength ? { wantedPsi: wanted } : { strengthPsi, shareRatio: wanted },
    source: strengthSource,
  });
  const estimate = figure({
    value: daysToAge(ageForRatioDays(num(target) / num(strengthPsi)), daysC),
    unit: 'days',
    decimals: 0,
    formula: {
      method:
        'whole days until the equivalent age at the mean air of the coming days gives the strength; after the last of them at the mean of all; 90 at most',
    },
    inputs: { targetPsi: target, strengthPsi },
    source: `${AGE_SOURCE}; ${STRENGTH_SOURCE}`,
    rounding: 'up',
  });
  return { floor, strength: target, estimate, days: later(floor, estimate) };
}

function same(floorDays: Figure): Figure {
  return figure({
    value: num(floorDays),
    unit: 'days',
    decimals: 0,
    formula: 'floorDays',
    inputs: { floorDays },
  });
}

function later(floorDays: Figure, estimateDays: Figure): Figure {
  return figure({
    value: Math.max(num(floorDays), num(estimateDays)),
    unit: 'days',
    decimals: 0,
    formula: 'max(floorDays, estimateDays)',
    inputs: { floorDays, estimateDays },
  });
}

function ageFigure(dayCount: number, daysC: readonly number[]): Figure {
  return figure({
    value: daysC.length === 0 ? 0 : ageAfterDays(dayCount, daysC),
    unit: 'days',
    decimals: 1,
    formula: { method: `equivalent age after ${dayCount} days at the mean air of the coming days` },
    inputs: {},
    source: AGE_SOURCE,
  });
}

function strengthAt(age: Figure, strengthPsi: Figure): Figure {
  return figure({
    value: num(strengthPsi) * strengthRatio(num(age)),
    unit: 'psi',
    decimals: 0,
    formula: 'strengthPsi * (ageDays / (aDays + b * ageDays))',
    inputs: {
      strengthPsi,
      ageDays: age,
      aDays: constant('a', STRENGTH_A_DAYS, 'days', STRENGTH_SOURCE),
      b: constant('b', STRENGTH_B, 'ratio', STRENGTH_SOURCE),
    },
    source: STRENGTH_SOURCE,
  });
}
