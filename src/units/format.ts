import type { Decimal } from 'decimal.js';
import { weekdayOf } from './date.ts';
import type { Quantity } from './kinds.ts';
import { roundToCent } from './money.ts';
import { endingDecimalText, mixedText, withThousandsCommas } from './number-text.ts';
import { compareR, divideR, type Rational, rational, subtractR } from './rational.ts';
import { FEET_INCHES, ONE_IN, type UnitRow, unitBySymbol } from './unit-table.ts';
import { Usd } from './usd.ts';

/**
 * A number with thousands commas and a fixed count of decimals, half up away from zero.
 * The digits rounded are the ones a person sees: 1.005 to two decimals is `1.01`. Never `-0`.
 *
 * @throws {RangeError} If the value is not finite.
 */
export function formatNumber(value: number | Decimal, decimals: number): string {
  const exact = new Usd(value);
  if (!exact.isFinite()) throw new RangeError(`cannot write ${value} as a number`);
  const [whole = '', part] = exact.abs().toFixed(decimals, Usd.ROUND_HALF_UP).split('.');
  const digits = `${withThousandsCommas(whole)}${part === undefined ? '' : `.${part}`}`;
  return exact.isNegative() && /[1-9]/.test(digits) ? `-${digits}` : digits;
}

/**
 * Feet, inches and a reduced fraction: `14′ 6 3/8″`; `4″` when under a foot.
 *
 * Rounded once, half up, in the smallest unit, and carried from there: never feet, inches
 * and fraction each for itself (common practice, no source). The sign goes in front of the
 * rounded magnitude. Halves that fall short only by floating point noise count as halves.
 *
 * @param inches      Any finite length [in].
 * @param denominator Parts of an inch, 8 or 16.
 * @param options.alwaysFeet Show `0′ 4″` rather than `4″`.
 * @throws {RangeError} If the length is not finite.
 */
export function formatFeetInches(
  inches: number,
  denominator: 8 | 16,
  options: { readonly alwaysFeet?: boolean } = {},
): string {
  const parts = roundedParts(inches, denominator);
  const magnitude = parts < 0 ? -parts : parts;
  const feet = Math.floor(magnitude / (12 * denominator));
  const rest = inchesText(rational(magnitude - feet * 12 * denominator, denominator), feet > 0);
  const text = feet > 0 || options.alwaysFeet === true ? `${formatNumber(feet, 0)}′ ${rest}` : rest;
  return parts < 0 ? `-${text}` : text;
}

/**
 * Inches and a reduced fraction, without feet: `6 3/8″`. Rounds as `formatFeetInches` does.
 *
 * @throws {RangeError} If the length is not finite.
 */
export function formatInches(inches: number, denominator: 8 | 16): string {
  return `${mixedText(rational(roundedParts(inches, denominator), denominator))}″`;
}

/** `$1,250.00`, `-$12.00`; rounded half up to the cent. */
export function formatMoney(amountUsd: Decimal): string {
  const cents = roundToCent(amountUsd);
  return `${cents.isNegative() ? '-' : ''}$${formatNumber(cents.abs(), 2)}`;
}

/** 0.07 with no decimals is `7 %`. */
export function formatPercent(ratio: number | Decimal, decimals: number): string {
  return `${formatNumber(new Usd(ratio).times(100), decimals)} %`;
}

/**
 * `Monday 4 May 2026`, in the words given: weekdays from Monday, months from January.
 *
 * @throws {RangeError} If the date is not one, or a word is missing.
 */
export function formatDateLong(
  iso: string,
  names: { readonly weekdays: readonly string[]; readonly months: readonly string[] },
): string {
  const weekday = names.weekdays[weekdayOf(iso) - 1];
  const month = names.months[Number(iso.slice(5, 7)) - 1];
  if (weekday === undefined || month === undefined) throw new RangeError(`no words for the date ${iso}`);
  return `${weekday} ${Number(iso.slice(8))} ${month} ${Number(iso.slice(0, 4))}`;
}

/**
 * A quantity in the unit it was written in, exactly: reading the text again gives the same
 * value. Decimals where they end, otherwise part fractions; nothing is rounded.
 *
 * A slope of unit `1:n` that cannot stand so (zero, or an n that does not end) is written in
 * in per ft, or in percent.
 *
 * @throws {RangeError} If the unit is not one of the kind.
 *
 * @example formatQuantity(lengthOf("14'-6 3/8\"")) // 14′ 6 3/8″
 */
export function formatQuantity(quantity: Quantity): string {
  const { kind, value, unit } = quantity;
  if (kind === 'length' && unit === FEET_INCHES) return feetInchesText(value);
  if (kind === 'slope' && unit === ONE_IN) return oneInText(value);
  return inUnit(value, unitBySymbol(kind, unit));
}

function inUnit(value: Rational, unit: UnitRow): string {
  const amount = divideR(subtractR(value, unit.baseAtZero), unit.base);
  const number = unit.inFractions ? tapeText(amount) : (endingDecimalText(amount) ?? mixedText(amount));
  return `${number} ${compareR(amount, rational(1)) === 0 ? unit.symbol : unit.plural}`;
}

/** The finest division of a tape; anything else reads better in decimals. */
const FINEST_TAPE_PART = 64n;

function tapeText(amount: Rational): string {
  const onTape = FINEST_TAPE_PART % amount.d === 0n;
  return onTape ? mixedText(amount) : (endingDecimalText(amount) ?? mixedText(amount));
}

function feetInchesText(lengthIn: Rational): string {
  const magnitude = lengthIn.n < 0n ? -lengthIn.n : lengthIn.n;
  const inFoot = 12n * lengthIn.d;
  const feet = magnitude / inFoot;
  const rest = inchesText(rational(magnitude - feet * inFoot, lengthIn.d), true);
  return `${lengthIn.n < 0n ? '-' : ''}${withThousandsCommas(feet.toString())}′ ${rest}`;
}

/** Beside feet the whole inches are always written, `12′ 0 3/8″`, so that no digit is looked for. */
function inchesText(inches: Rational, besideFeet: boolean): string {
  const number = tapeText(inches);
  return besideFeet && number.includes('/') && !number.includes(' ') ? `0 ${number}″` : `${number}″`;
}

function oneInText(slope: Rational): string {
  const run = slope.n === 0n ? null : divideR(rational(1), slope);
  const text = run === null ? null : endingDecimalText(run.n < 0n ? rational(-run.n, run.d) : run);
  if (text !== null) return `${slope.n < 0n ? '-' : ''}1:${text}`;
  return inUnit(slope, unitBySymbol('slope', slope.n === 0n ? '%' : 'in per ft'));
}

/** Of one part: makes up for the noise of floating point in a value that should be a half. */
const NOISE_PARTS = 1e-9;

function roundedParts(inches: number, denominator: 8 | 16): number {
  if (!Number.isFinite(inches)) throw new RangeError(`cannot write ${inches} as a length`);
  const parts = Math.floor(Math.abs(inches) * denominator + 0.5 + NOISE_PARTS);
  return inches < 0 && parts > 0 ? -parts : parts;
}
