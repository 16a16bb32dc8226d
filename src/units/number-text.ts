import { addR, type Rational, rational, rationalFromDecimalText } from './rational.ts';

/** Longer texts are refused unread: no measurement needs them, and big numbers cost time. */
export const LONGEST_TEXT = 200;

const WHOLE = String.raw`(?:[1-9]\d{0,2}(?:,\d{3})+|\d+)`;

/** Digits, with thousands commas only in groups of three, and decimals: `14,000`, `4.75`. */
export const DECIMAL_PATTERN = String.raw`${WHOLE}(?:\.\d+)?`;

/** `6 1/2`, `6-1/2`, `1/4`, `4.75`, `14,000`. */
export const NUMBER_PATTERN = String.raw`(?:${WHOLE}[ -]\d+\/\d+|\d+\/\d+|${DECIMAL_PATTERN})`;

/**
 * Stands after a number so that it cannot be cut short: without it `12` could be read as `1`
 * and a unit `2`, or `1,25 m` as `1` and something.
 */
export const NUMBER_END = String.raw`(?![\d.,]|\/\d)`;

const MIXED = /^(?:([\d,]+)[ -])?(\d+)\/(\d+)$/;

/**
 * The value of a text that matched `NUMBER_PATTERN`.
 *
 * @returns null for a denominator of 0, and for a part fraction that is not below 1
 *          (`6 9/8`: one of its three numbers must be a slip).
 */
export function readNumber(text: string): Rational | null {
  const mixed = MIXED.exec(text);
  if (mixed === null) return rationalFromDecimalText(text.replaceAll(',', ''));
  const [, whole, numerator = '', denominator = ''] = mixed;
  const n = BigInt(numerator);
  const d = BigInt(denominator);
  if (d === 0n) return null;
  if (whole === undefined) return rational(n, d);
  return n < d ? addR(rational(BigInt(whole.replaceAll(',', ''))), rational(n, d)) : null;
}

/** One space between words, plain quotes for typographic feet and inch marks, a plain minus. */
export function plainText(text: string): string {
  return text.replace(/[′’‘]/g, "'").replace(/[″”“]/g, '"').replace(/−/g, '-').replace(/\s+/g, ' ').trim();
}

/** `in/ft`, `in / ft` and `in per ft` are one unit. */
export function plainUnit(text: string): string {
  return text.replace(/ ?\/ ?| per /g, ' per ').trim();
}

/** The decimals in full where they end, else null: 3/8 is `0.375`, 1/3 is null. */
export function endingDecimalText(value: Rational): string | null {
  let rest = value.d;
  let twos = 0;
  let fives = 0;
  for (; rest % 2n === 0n; rest /= 2n) twos += 1;
  for (; rest % 5n === 0n; rest /= 5n) fives += 1;
  if (rest !== 1n) return null;
  const places = Math.max(twos, fives);
  const magnitude = value.n < 0n ? -value.n : value.n;
  const digits = ((magnitude * 10n ** BigInt(places)) / value.d).toString().padStart(places + 1, '0');
  const whole = withThousandsCommas(digits.slice(0, digits.length - places));
  const sign = value.n < 0n ? '-' : '';
  return places === 0 ? `${sign}${whole}` : `${sign}${whole}.${digits.slice(digits.length - places)}`;
}

/** Whole number and part fraction: `6 1/2`, `1/3`, `-2 3/4`, `12`. */
export function mixedText(value: Rational): string {
  const magnitude = value.n < 0n ? -value.n : value.n;
  const whole = magnitude / value.d;
  const part = magnitude % value.d;
  const words: string[] = [];
  if (whole > 0n || part === 0n) words.push(withThousandsCommas(whole.toString()));
  if (part > 0n) words.push(`${part}/${value.d}`);
  return `${value.n < 0n ? '-' : ''}${words.join(' ')}`;
}

export function withThousandsCommas(digits: string): string {
  return digits.replace(/\B(?=(?:\d{3})+$)/g, ',');
}
