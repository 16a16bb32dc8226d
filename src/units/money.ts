import type { Decimal } from 'decimal.js';
import { DECIMAL_PATTERN, LONGEST_TEXT, plainText, withThousandsCommas } from './number-text.ts';
import { type ParseCode, type ParseResult, refused, taken } from './parse-result.ts';
import { type Rational, rationalFromDecimalText } from './rational.ts';
import { Usd } from './usd.ts';

export { Usd } from './usd.ts';

const CENT_DECIMALS = 2;

/**
 * Reads an amount of US dollars: `$1,250.00`, `$1250`, `-$12.00`. At most two decimals.
 * Another currency is `not-dollars`, a bare number `without-unit`.
 */
export function parseMoney(text: string): ParseResult<Decimal> {
  const reading = readDollars(text, CENT_DECIMALS);
  return 'usd' in reading ? taken(reading.usd) : refused(reading.code, formsFor(text));
}

/** Dollars with up to so many decimals, or why not. */
export function readDollars(text: string, decimals: number): { usd: Decimal } | { code: ParseCode } {
  if (text.length > LONGEST_TEXT) return { code: 'not-a-number' };
  const plain = plainText(text);
  const match = DOLLARS.exec(plain);
  if (match === null) return { code: whyNotDollars(plain) };
  const [, sign = '', digits = ''] = match;
  if ((digits.split('.')[1] ?? '').length > decimals) return { code: 'not-a-number' };
  return { usd: withoutMinusZero(new Usd(`${sign}${digits.replaceAll(',', '')}`)) };
}

const DOLLARS = new RegExp(String.raw`^(-?)\$(${DECIMAL_PATTERN})$`);
const NUMBER_ALONE = new RegExp(String.raw`^-?${DECIMAL_PATTERN}$`);

function whyNotDollars(plain: string): ParseCode {
  const otherSign = /(?!\$)\p{Sc}/u.test(plain);
  const otherDollar = /[A-Z]\$/.test(plain) && !/\bUS\$/.test(plain);
  const otherCode = /^-?(?!USD)[A-Z]{3}\b|\b(?!USD)[A-Z]{3}$/.test(plain);
  if (otherSign || otherDollar || otherCode) return 'not-dollars';
  if (/['"]/.test(plain)) return 'stray-quote';
  if (NUMBER_ALONE.test(plain)) return 'without-unit';
  return /\d ?[A-Za-z]|[A-Za-z]\$? ?\d/.test(plain) ? 'unknown-unit' : 'not-a-number';
}

/** The same digits with a dollar sign, with and without cents; an example if there are none. */
function formsFor(text: string): readonly string[] {
  const digits = /\d[\d,]*(?:\.\d+)?/.exec(text.slice(0, LONGEST_TEXT))?.[0];
  if (digits === undefined) return ['$1,250.00', '$1,250'];
  const amountUsd = roundToCent(new Usd(digits.replaceAll(',', '')));
  const sign = /^\s*-/.test(text) ? '-' : '';
  const [whole = '', cents] = amountUsd.toFixed(CENT_DECIMALS).split('.');
  const withCents = `${sign}$${withThousandsCommas(whole)}.${cents}`;
  return amountUsd.isInteger()
    ? [withCents, `${sign}$${withThousandsCommas(whole)}`]
    : [...new Set([withCents, `${sign}$${whole}.${cents}`])];
}

/**
 * Half a cent and more goes up, away from zero; never -0.00.
 *
 * @throws {RangeError} If the amount is not finite.
 */
export function roundToCent(amountUsd: Decimal): Decimal {
  return withoutMinusZero(finite(amountUsd).toDecimalPlaces(CENT_DECIMALS, Usd.ROUND_HALF_UP));
}

/**
 * Down to the whole cent, for an amount a rule caps; a negative amount goes away from zero.
 *
 * @throws {RangeError} If the amount is not finite.
 */
export function floorToCent(amountUsd: Decimal): Decimal {
  return withoutMinusZero(finite(amountUsd).toDecimalPlaces(CENT_DECIMALS, Usd.ROUND_FLOOR));
}

export function sumUsd(amountsUsd: readonly Decimal[]): Decimal {
  return amountsUsd.reduce<Decimal>((sum, amountUsd) => sum.plus(finite(amountUsd)), new Usd(0));
}

/**
 * Shares of a total in whole cents that add up to it exactly.
 *
 * Each share is its weight's part of the total cut down to the cent; the cents left over go one
 * each to the largest parts cut off (the earlier one of two equal). 100.00 in three
 * equal shares is 33.34, 33.33, 33.33, where rounding each for itself loses a cent. The method of
 * largest remainders (common practice, no source).
 *
 * @param totalUsd Whole cents; may be negative.
 * @param weights  At least one above 0, none below 0.
 * @throws {RangeError} If the total is not whole cents, or the weights are not as said.
 */
export function splitByLargestRemainder(totalUsd: Decimal, weights: readonly Decimal[]): Decimal[] {
  const totalCents = finite(totalUsd).times(100);
  if (!totalCents.isInteger()) throw new RangeError(`totalUsd must be whole cents, got ${totalUsd}`);
  if (
    !weights.every((weight) => weight.isFinite() && weight.gte(0)) ||
    !weights.some((weight) => weight.gt(0))
  ) {
    throw new RangeError(`weights must be 0 or more and not all 0, got [${weights.join(', ')}]`);
  }

  const cents = BigInt(totalCents.abs().toFixed(0));
  const parts = inWholeNumbers(weights.map((weight) => rationalFromDecimalText(weight.abs().toFixed())));
  const whole = parts.reduce((sum, part) => sum + part, 0n);
  const shares = parts.map((part, index) => ({
    index,
    cents: (cents * part) / whole,
    cutOff: (cents * part) % whole,
  }));
  const leftOver = Number(shares.reduce((rest, share) => rest - share.cents, cents));
  const favoured = shares
    .toSorted((one, other) => Number(other.cutOff > one.cutOff) - Number(other.cutOff < one.cutOff))
    .slice(0, leftOver)
    .map((share) => share.index);
  const sign = totalCents.isNegative() ? -1 : 1;
  return shares.map((share) => {
    const shareCents = share.cents + (favoured.includes(share.index) ? 1n : 0n);
    return withoutMinusZero(new Usd(shareCents.toString()).dividedBy(100).times(sign));
  });
}

/** The fractions over their common denominator. */
function inWholeNumbers(values: readonly Rational[]): readonly bigint[] {
  const common = values.reduce(
    (product, value) => (product % value.d === 0n ? product : product * value.d),
    1n,
  );
  return values.map((value) => (value.n * common) / value.d);
}

function finite(amountUsd: Decimal): Decimal {
  if (!amountUsd.isFinite()) throw new RangeError(`expected an amount of dollars, got ${amountUsd}`);
  return new Usd(amountUsd);
}

function withoutMinusZero(amountUsd: Decimal): Decimal {
  return amountUsd.isZero() ? new Usd(0) : amountUsd;
}
