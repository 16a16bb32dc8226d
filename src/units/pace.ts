import { LONGEST_TEXT, NUMBER_END, NUMBER_PATTERN, plainText, plainUnit, readNumber } from './number-text.ts';
import { type ParseCode, type ParseResult, refused, taken } from './parse-result.ts';
import { type Rational, rational } from './rational.ts';
import { rateUnitBySpelling, withCount } from './unit-words.ts';

export type PaceUnit = 'sq ft' | 'm2' | 'ft' | 'm' | 'yd3' | 'm3' | 'ton' | 'load' | 'each';

/** Production in an hour, in the unit it was given in. */
export type Pace = { readonly perHour: Rational; readonly unit: PaceUnit; readonly text: string };

const PACE_UNITS: readonly PaceUnit[] = ['sq ft', 'm2', 'ft', 'm', 'yd3', 'm3', 'ton', 'load', 'each'];
const PER_HOUR = ' per h';
const NUMBER_AND_UNIT = new RegExp(String.raw`^(-?)(${NUMBER_PATTERN})${NUMBER_END} ?(.*)$`);

/**
 * Reads a production: `200 sq ft per h`, `12 yd3/h`, `2 loads per h`.
 *
 * @param allowed The units the place can use; any other unit is `wrong-kind`.
 */
export function parsePace(text: string, allowed: readonly PaceUnit[]): ParseResult<Pace> {
  if (text.length > LONGEST_TEXT) return refused('not-a-number', formsFor('100', undefined, allowed));
  const plain = plainText(text);
  const match = NUMBER_AND_UNIT.exec(plain);
  if (match === null) {
    return refused(/['"]/.test(plain) ? 'stray-quote' : 'not-a-number', formsFor('100', undefined, allowed));
  }
  const [, sign = '', written = '', unitText = ''] = match;
  const rest = plainUnit(unitText);
  const amount = readNumber(written);
  const unit = paceUnit(rest.endsWith(PER_HOUR) ? rest.slice(0, -PER_HOUR.length) : rest);
  const refuse = (code: ParseCode) => refused(code, formsFor(`${sign}${written}`, unit, allowed));
  if (amount === null || /^[\d.:-]/.test(rest))
    return refused('not-a-number', formsFor('100', unit, allowed));
  if (rest === '' || (unit !== undefined && !rest.endsWith(PER_HOUR))) return refuse('without-unit');
  if (unit === undefined) return refuse(/['"]/.test(rest) ? 'stray-quote' : 'unknown-unit');
  if (!allowed.includes(unit)) return refuse('wrong-kind');
  return taken({ perHour: sign === '-' ? rational(-amount.n, amount.d) : amount, unit, text });
}

function paceUnit(written: string): PaceUnit | undefined {
  const unit = rateUnitBySpelling(written);
  return PACE_UNITS.find((known) => known === unit);
}

function formsFor(
  count: string,
  unit: PaceUnit | undefined,
  allowed: readonly PaceUnit[],
): readonly string[] {
  const units = unit !== undefined && allowed.includes(unit) ? [unit] : allowed;
  const forms = units.map((each) => `${withCount(count, each)}${PER_HOUR}`);
  const [only] = forms;
  return forms.length === 1 && only !== undefined ? [only, only.replace(PER_HOUR, '/h')] : forms.slice(0, 3);
}
