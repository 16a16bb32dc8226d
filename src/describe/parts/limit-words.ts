import type { FigureUnit, FigureValue } from '../../calculate/figure.ts';
import type { UnitSystem } from '../../calculate/job.ts';
import type { Rule } from '../../calculate/rule.ts';
import {
  formatMoney,
  formatNumber,
  fToC,
  ftToM,
  inToMm,
  lbPerSqFtToKgPerSqM,
  lbToKg,
  mphToKmPerHr,
  psiToMpa,
  sqFtToSqM,
  Usd,
} from '../../units/index.ts';
import { type Show, showIn } from '../show/index.ts';

/** The limit of a rule: as it is written there, and as a number in the unit of its figure. */
export type Limit = {
  readonly limit: number;
  readonly limitText: string;
  readonly unit: FigureUnit;
  readonly direction: Rule['direction'];
};

type Told = {
  readonly show: (value: number, show: Show) => string;
  /** What is told to so much, in feet and inches, is told as it is. */
  readonly step: number;
  /** The last digit of a metric job, in the unit of the figure. */
  readonly metricStep: number;
};

/** Units that a job shows in its own way. */
const TOLD: Readonly<Partial<Record<FigureUnit, Told>>> = {
  in: { show: (sizeIn, show) => show.fine(sizeIn), step: 1 / 16, metricStep: 1 / inToMm(1) },
  ft: { show: (lengthFt, show) => show.run(lengthFt), step: 0.1, metricStep: 0.1 / ftToM(1) },
  'sq ft': { show: (areaSqFt, show) => show.area(areaSqFt), step: 1, metricStep: 0.1 / sqFtToSqM(1) },
  lb: { show: (weightLb, show) => show.weight(weightLb), step: 1, metricStep: 1 / lbToKg(1) },
  psi: { show: (strengthPsi, show) => show.strength(strengthPsi), step: 1, metricStep: 1 / psiToMpa(1) },
  '°F': {
    show: (temperatureF, show) => show.temperature(temperatureF),
    step: 1,
    metricStep: 1 / (fToC(1) - fToC(0)),
  },
  mph: { show: (speedMph, show) => show.speed(speedMph), step: 1, metricStep: 1 / mphToKmPerHr(1) },
  'lb/sq ft/h': {
    show: (rate, show) => show.evaporation(rate),
    step: 0.01,
    metricStep: 0.01 / lbPerSqFtToKgPerSqM(1),
  },
};

/**
 * As it is written; in feet and inches as the other sheets tell it, to a metric job in its own units too: the most
 * that is allowed rounded down, the least up.
 */
export function limitWords({ limit, limitText, unit, direction }: Limit, system: UnitSystem): string {
  if (unit === 'each') return formatNumber(limit, 0);
  const told = toldIn(unit, limit);
  if (told === undefined) return withPercent(limit, limitText, direction);
  if (system === 'us') return isWhole(limit / told.step) ? told.show(limit, showIn(system)) : limitText;
  const own = told.show(limit + told.metricStep * NEARLY_HALF * SAFE[direction], showIn(system));
  return limit === 0 || own === limitText ? own : `${limitText} (${own})`;
}

/** So far from the nearest digit that it is taken for the safe one. */
const NEARLY_HALF = 0.5 - 1e-6;
const SAFE = { 'at-most': -1, 'at-least': 1 } as const;

/** A slope in hundredths of a percent behind its ratio: `1:48 (2.08 %)`. */
function withPercent(limit: number, limitText: string, direction: Limit['direction']): string {
  if (!/:/.test(limitText)) return limitText;
  const percent = formatNumber(limit * 100 + 0.01 * NEARLY_HALF * SAFE[direction], DECIMALS);
  return `${limitText} (${percent} %)`;
}

/** What is held against the limit, with as many digits as tell the two apart. */
export function valueWords(value: FigureValue, held: Limit, system: UnitSystem): string {
  const { limit, limitText, unit } = held;
  if (unit === '$') return formatMoney(new Usd(value));
  const number = Number(value);
  if (unit === 'ratio') {
    if (/%/.test(limitText)) return `${apart(number * 100, limit * 100, 1)} %`;
    // A slope beside 1:48 needs the digits that tell it from 2 %.
    return /:/.test(limitText)
      ? `${apart(number * 100, limit * 100, DECIMALS)} %`
      : apart(number, limit, DECIMALS);
  }
  if (unit === 'each') return formatNumber(number, 0);
  if (unit === 'days' && number === 1) return '1 day';
  const told = toldIn(unit, limit);
  const own = told?.show(number, showIn(system));
  if (own !== undefined && own !== told?.show(limit, showIn(system))) return own;
  return `${Number.isInteger(number) ? formatNumber(number, 0) : apart(number, limit, DECIMALS)} ${unit}`;
}

const DECIMALS = 2;
const MOST_DECIMALS = 6;

function apart(number: number, limit: number, decimals: number): string {
  const text = formatNumber(number, decimals);
  const isAlike = text === formatNumber(limit, decimals) && number !== limit;
  return isAlike && decimals < MOST_DECIMALS ? apart(number, limit, decimals + 1) : text;
}

/** A limit of 0 °F is one of a difference, which no thermometer shows. */
function toldIn(unit: FigureUnit, limit: number): Told | undefined {
  return unit === '°F' && limit === 0 ? undefined : TOLD[unit];
}

function isWhole(count: number): boolean {
  return Math.abs(count - Math.round(count)) < 1e-9;
}
