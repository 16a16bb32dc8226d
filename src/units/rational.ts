import type { Decimal } from 'decimal.js';
import { Usd } from './usd.ts';

/** An exact fraction n/d, reduced, with d above 0. Made by `rational` only. */
export type Rational = { readonly n: bigint; readonly d: bigint };

/**
 * The fraction n/d in lowest terms.
 *
 * @param n Any whole number; as `number` only up to 2^53 - 1.
 * @param d Any whole number but 0; its sign moves to the numerator.
 * @throws {RangeError} If d is 0, or a `number` is not a safe whole number.
 */
export function rational(n: bigint | number, d: bigint | number = 1n): Rational {
  let numerator = wholeNumber(n);
  let denominator = wholeNumber(d);
  if (denominator === 0n) throw new RangeError(`a fraction needs a denominator other than 0, got ${n}/0`);
  if (denominator < 0n) {
    numerator = -numerator;
    denominator = -denominator;
  }
  const divisor = greatestCommonDivisor(numerator < 0n ? -numerator : numerator, denominator);
  return { n: numerator / divisor, d: denominator / divisor };
}

export function addR(one: Rational, other: Rational): Rational {
  return rational(one.n * other.d + other.n * one.d, one.d * other.d);
}

/** from - amount */
export function subtractR(from: Rational, amount: Rational): Rational {
  return rational(from.n * amount.d - amount.n * from.d, from.d * amount.d);
}

export function multiplyR(one: Rational, other: Rational): Rational {
  return rational(one.n * other.n, one.d * other.d);
}

/**
 * dividend / divisor
 *
 * @throws {RangeError} If the divisor is 0.
 */
export function divideR(dividend: Rational, divisor: Rational): Rational {
  return rational(dividend.n * divisor.d, dividend.d * divisor.n);
}

/** -1, 0 or 1: whether `one` is below, equal to or above `other`. Exact. */
export function compareR(one: Rational, other: Rational): -1 | 0 | 1 {
  const difference = one.n * other.d - other.n * one.d;
  if (difference === 0n) return 0;
  return difference < 0n ? -1 : 1;
}

/** The nearest double, also where numerator and denominator are beyond 2^53. */
export function rationalToNumber(value: Rational): number {
  const n = Number(value.n);
  const d = Number(value.d);
  if (Number.isSafeInteger(n) && Number.isSafeInteger(d)) return n / d;
  return rationalToDecimal(value).toNumber();
}

/** A Decimal of 40 significant digits; exact where the fraction ends within them. */
export function rationalToDecimal(value: Rational): Decimal {
  return new Usd(value.n.toString()).dividedBy(value.d.toString());
}

/**
 * Reads plain decimal digits, `-4.75` or `12`; no commas, no exponent, a digit before the point.
 *
 * @throws {RangeError} If the text is anything else.
 *
 * @example rationalFromDecimalText('4.75') // { n: 19n, d: 4n }
 */
export function rationalFromDecimalText(text: string): Rational {
  const match = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text);
  if (match === null) throw new RangeError(`not a plain decimal number: ${JSON.stringify(text)}`);
  const decimals = match[3] ?? '';
  const digits = BigInt(`${match[2]}${decimals}`);
  return rational(match[1] === '-' ? -digits : digits, 10n ** BigInt(decimals.length));
}

function wholeNumber(value: bigint | number): bigint {
  if (typeof value === 'bigint') return value;
  if (!Number.isSafeInteger(value)) throw new RangeError(`a fraction is made of whole numbers, got ${value}`);
  return BigInt(value);
}

function greatestCommonDivisor(one: bigint, other: bigint): bigint {
  let larger = one;
  let smaller = other;
  while (smaller !== 0n) [larger, smaller] = [smaller, larger % smaller];
  return larger;
}
