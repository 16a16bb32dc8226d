import {
  compareR,
  divideR,
  type PaceUnit,
  parseCount,
  parseDate,
  parseMoney,
  parsePace,
  parseQuantity,
  parseRate,
  parseTimeOfDay,
  parseYesNo,
  type Quantity,
  type QuantityKind,
  type RateUnit,
  rational,
  rationalFromDecimalText,
  rationalToNumber,
} from '../../units/index.ts';
import { leaf } from './leaf.ts';
import { outOfRange, type Range } from './range.ts';
import { refusal } from './refusal.ts';

type Told = readonly [description: string, ...examples: string[]];
type ReadKind = Extract<
  QuantityKind,
  | 'length'
  | 'area'
  | 'volume'
  | 'weight'
  | 'slope'
  | 'duration'
  | 'share'
  | 'density'
  | 'strength'
  | 'coverage'
  | 'angle'
  | 'temperature'
  | 'speed'
>;

/** Above these somebody wrote a digit too many; they also keep every figure far from overflow. */
const MOST: Readonly<Record<ReadKind, string>> = {
  length: '2,000 ft',
  area: '50,000 sq ft',
  volume: '1,000 yd3',
  weight: '200,000 lb',
  slope: '100 %',
  duration: '30 days',
  share: '100 %',
  density: '300 lb per cu ft',
  strength: '20,000 psi',
  coverage: '5,000 sq ft per gal',
  angle: '360 deg',
  temperature: '2,000 F',
  speed: '200 mph',
};

export const ABOVE_ZERO = { above: 0 } as const;
export const FROM_ZERO = { least: '0' } as const;

/** A measured value with its unit; its text stays with it, and its value is exact. */
export function quantity<K extends ReadKind>(
  kind: K,
  range: Range<string>,
  ...[description, ...examples]: Told
) {
  const bounds = { most: MOST[kind], ...range };
  return leaf({ kind, description, examples }, (text) => {
    const parsed = parseQuantity(kind, text);
    if (!parsed.ok) return { finding: refusal(text, kind, parsed) };
    const finding = outOfRange(text, bounds, (end) => compareR(parsed.value.value, endValue(kind, end)));
    return finding === null ? { value: parsed.value } : { finding };
  });
}

function endValue(kind: QuantityKind, end: string | 0): Quantity['value'] {
  if (end === 0 || end === '0') return rational(0);
  const parsed = parseQuantity(kind, end);
  if (!parsed.ok) throw new RangeError(`${end} is not a ${kind}`);
  return parsed.value.value;
}

export const length = (range: Range<string>, ...told: Told) => quantity('length', range, ...told);
export const weight = (range: Range<string>, ...told: Told) => quantity('weight', range, ...told);
export const share = (range: Range<string>, ...told: Told) => quantity('share', range, ...told);
export const temperature = (range: Range<string>, ...told: Told) => quantity('temperature', range, ...told);
export const speed = (range: Range<string>, ...told: Told) => quantity('speed', range, ...told);
export const duration = (range: Range<string>, ...told: Told) => quantity('duration', range, ...told);

const MOST_USD = '$1,000,000';

/** An amount of dollars, from nothing to a million. */
export function money(...[description, ...examples]: Told) {
  return leaf({ kind: 'dollars', description, examples }, (text) => {
    const parsed = parseMoney(text);
    if (!parsed.ok) return { finding: refusal(text, 'money', parsed) };
    const finding = outOfRange(text, { least: '$0', most: MOST_USD }, (end) =>
      parsed.value.cmp(dollars(end)),
    );
    return finding === null ? { value: parsed.value } : { finding };
  });
}

/** Dollars by one of the units that the place can be billed in. */
export function rate(units: readonly RateUnit[], ...[description, ...examples]: Told) {
  return leaf({ kind: `$ per ${units.join(', ')}`, description, examples }, (text) => {
    const parsed = parseRate(text, units);
    if (!parsed.ok) return { finding: refusal(text, 'rate', parsed) };
    const finding = outOfRange(text, { least: '$0', most: MOST_USD }, (end) =>
      parsed.value.amountUsd.cmp(dollars(end)),
    );
    return finding === null ? { value: parsed.value } : { finding };
  });
}

function dollars(end: string | 0): string {
  return end === 0 ? '0' : end.replace(/[$,]/g, '');
}

/** How much gets done in an hour. */
export function pace(units: readonly PaceUnit[], ...[description, ...examples]: Told) {
  return leaf({ kind: `${units.join(', ')} per h`, description, examples }, (text) => {
    const parsed = parsePace(text, units);
    if (!parsed.ok) return { finding: refusal(text, 'pace', parsed) };
    const perHour = parsed.value.perHour;
    const finding = outOfRange(text, { above: 0, most: '100,000' }, (end) =>
      compareR(perHour, plainNumber(end)),
    );
    return finding === null ? { value: parsed.value } : { finding };
  });
}

/** A whole number without a unit. */
export function count(
  range: { readonly least: number; readonly most: number },
  ...[description, ...examples]: Told
) {
  const bounds = { least: String(range.least), most: String(range.most) };
  return leaf({ kind: 'whole number', description, examples, isBare: true }, (text) => {
    const parsed = parseCount(text);
    if (!parsed.ok) return { finding: refusal(text, 'length', parsed) };
    const finding = outOfRange(text, bounds, (end) => parsed.value - Number(end));
    return finding === null ? { value: parsed.value } : { finding };
  });
}

/** A number without a unit, with decimals: how many times one thing is another. */
export function times(
  range: { readonly least: string; readonly most: string },
  ...[description, ...examples]: Told
) {
  return leaf({ kind: 'number', description, examples, isBare: true }, (text) => {
    if (!/^\d{1,6}(\.\d{1,6})?$/.test(text))
      return { finding: refusal(text, 'length', { code: 'not-a-number', forms: examples }) };
    const value = rationalFromDecimalText(text);
    const finding = outOfRange(text, range, (end) => compareR(value, plainNumber(end)));
    return finding === null ? { value: rationalToNumber(value) } : { finding };
  });
}

function plainNumber(end: string | 0): Quantity['value'] {
  return rationalFromDecimalText(String(end).replaceAll(',', ''));
}

const HOURS_A_DAY = rational(24);

/** Whole days, `30 days`. */
export function days(mostDays: number, ...[description, ...examples]: Told) {
  return leaf({ kind: 'days', description, examples }, (text) => {
    const parsed = parseQuantity('duration', text);
    if (!parsed.ok) {
      const bare = parseCount(text);
      const forms = bare.ok ? [`${bare.value} ${bare.value === 1 ? 'day' : 'days'}`] : examples;
      return { finding: refusal(text, 'duration', { ...parsed, forms }) };
    }
    const inDays = divideR(parsed.value.value, HOURS_A_DAY);
    if (inDays.d !== 1n)
      return { finding: { code: 'not-whole-days', parts: { value: text, forms: examples } } };
    const range = { least: '0 days', most: `${mostDays} days` };
    const finding = outOfRange(text, range, (end) =>
      compareR(inDays, rational(Number.parseInt(String(end), 10))),
    );
    return finding === null ? { value: rationalToNumber(inDays) } : { finding };
  });
}

/** A calendar date; the value is the text. */
export function date(...[description, ...examples]: Told) {
  return leaf({ kind: 'date', description, examples }, (text) => {
    const parsed = parseDate(text);
    return parsed.ok ? { value: parsed.value } : { finding: refusal(text, 'duration', parsed) };
  });
}

/** A time of day, to the minute. */
export function timeOfDay(...[description, ...examples]: Told) {
  return leaf({ kind: 'time of day', description, examples }, (text) => {
    const parsed = parseTimeOfDay(text);
    return parsed.ok ? { value: parsed.value } : { finding: refusal(text, 'time-of-day', parsed) };
  });
}

export function yesNo(description: string) {
  return leaf({ kind: 'yes or no', description, examples: ['yes', 'no'] }, (text) => {
    const parsed = parseYesNo(text);
    return parsed.ok ? { value: parsed.value } : { finding: refusal(text, 'duration', parsed) };
  });
}
