import type { Decimal } from 'decimal.js';
import { readDollars } from './money.ts';
import { plainText, plainUnit } from './number-text.ts';
import { type ParseCode, type ParseResult, refused, taken } from './parse-result.ts';
import { type RateUnit, rateUnitBySpelling } from './unit-words.ts';

export type { RateUnit } from './unit-words.ts';

/** A price in the unit it was quoted in; it is billed in that unit too, never by way of another. */
export type Rate = {
  readonly amountUsd: Decimal;
  readonly perUnit: RateUnit;
  readonly text: string;
};

/** A rate may be finer than a cent, as prices a pound or a mile are: `$0.0725 per lb`. */
const RATE_DECIMALS = 4;

/**
 * Reads a price for a unit: `$185 per yd3`, `$185/yd3`, `$6.50 each`. Up to four decimals.
 *
 * @param allowed The units the place can use; any other unit is `wrong-kind`.
 */
export function parseRate(text: string, allowed: readonly RateUnit[]): ParseResult<Rate> {
  const { amountText, unitText } = split(text);
  const amount = readDollars(amountText, RATE_DECIMALS);
  const perUnit = unitText === null ? undefined : rateUnitBySpelling(unitText);
  const refuse = (code: ParseCode) => refused(code, formsFor(amountText, perUnit, allowed));
  if ('code' in amount) return refuse(amount.code);
  if (unitText === null) return refuse('without-unit');
  if (perUnit === undefined) return refuse(/['"]/.test(unitText) ? 'stray-quote' : 'unknown-unit');
  if (!allowed.includes(perUnit)) return refuse('wrong-kind');
  return taken({ amountUsd: amount.usd, perUnit, text });
}

/** Amount and unit of `$185/yd3`, `$185 per yd3`, `$6.50 each`; unit null if there is none. */
function split(text: string): { amountText: string; unitText: string | null } {
  const plain = plainUnit(plainText(text)).replace(/(?<! per) each$/, ' per each');
  const at = plain.indexOf(' per ');
  return at < 0
    ? { amountText: plain, unitText: null }
    : { amountText: plain.slice(0, at), unitText: plain.slice(at + ' per '.length) };
}

/** The amount by the unit that was written if the place can use it, else by those it can. */
function formsFor(
  amountText: string,
  perUnit: RateUnit | undefined,
  allowed: readonly RateUnit[],
): readonly string[] {
  const digits = /\d+(?:,\d{3})*(?:\.\d{1,4})?(?!\d)/.exec(amountText)?.[0] ?? '100';
  const amount = `${amountText.startsWith('-') ? '-' : ''}$${digits}`;
  const units = perUnit !== undefined && allowed.includes(perUnit) ? [perUnit] : allowed;
  const [only, ...others] = units.map((unit) =>
    unit === 'each' ? `${amount} each` : `${amount} per ${unit}`,
  );
  if (only === undefined) return [];
  return others.length > 0 || only.endsWith(' each')
    ? [only, ...others].slice(0, 3)
    : [only, only.replace(' per ', '/')];
}
