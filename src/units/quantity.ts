import { EXAMPLES, formsOf } from './forms.ts';
import { guesses } from './guesses.ts';
import type { Quantity, QuantityKind } from './kinds.ts';
import { LONGEST_TEXT, NUMBER_END, NUMBER_PATTERN, plainText, readNumber } from './number-text.ts';
import { type ParseCode, type ParseResult, refused, taken } from './parse-result.ts';
import { addR, divideR, multiplyR, type Rational, rational } from './rational.ts';
import { FEET_INCHES, ONE_IN, QUANTITY_KINDS, unitBySpelling } from './unit-table.ts';

type Measure = { readonly value: Rational; readonly unit: string };
type Reading = { readonly measure: Measure } | { readonly code: ParseCode };

/**
 * Reads a quantity of one kind, a number and its unit: `14' 6"`, `1/4 in per ft`, `2.5 m3`.
 * A leading minus is read; the caller decides the range.
 *
 * Anchored at both ends, so that no digit is left over or taken for a unit: `12` has no unit,
 * `14 ft 6` lacks the second one, `3-4 in` is no number. Inches beside feet stay under 12, and the
 * feet are whole.
 *
 * @example parseQuantity('length', `14'-6 3/8"`) // ok, value 1395/8
 * @example parseQuantity('length', '42') // without-unit: 42 in, 3' 6", 1.07 m
 */
export function parseQuantity<K extends QuantityKind>(kind: K, text: string): ParseResult<Quantity<K>> {
  const reading = read(kind, text);
  if ('measure' in reading) return taken({ kind, ...reading.measure, text });
  return refused(reading.code, formsFor(kind, text, reading.code));
}

function read(kind: QuantityKind, text: string): Reading {
  if (text.length > LONGEST_TEXT) return { code: 'not-a-number' };
  const plain = plainText(text);
  const minus = plain.startsWith('-');
  const body = minus ? plain.slice(1) : plain;
  const reading = readBody(kind, body, rational(minus ? -1 : 1));
  return 'code' in reading && isOfOtherKind(kind, body) ? { code: 'wrong-kind' } : reading;
}

/** @param sign 1 or -1. It belongs to the number as written: -10 C is below zero C, not below zero °F. */
function readBody(kind: QuantityKind, body: string, sign: Rational): Reading {
  if (kind === 'length') {
    const feetInches = readFeetInches(body, sign);
    if (feetInches !== null) return feetInches;
  }
  if (kind === 'slope') {
    const oneIn = readOneIn(body, sign);
    if (oneIn !== null) return oneIn;
  }
  return readNumberAndUnit(kind, body, sign);
}

function isOfOtherKind(kind: QuantityKind, body: string): boolean {
  if (body.startsWith('$')) return true;
  return QUANTITY_KINDS.some(
    (other) => other !== kind && !isLike(kind, other) && 'measure' in readBody(other, body, rational(1)),
  );
}

/** `45 degrees` where a temperature is asked for lacks its letter; it is no angle. */
function isLike(kind: QuantityKind, other: QuantityKind): boolean {
  return kind === 'temperature' && other === 'angle';
}

const NUMBER_AND_UNIT = new RegExp(String.raw`^(${NUMBER_PATTERN})${NUMBER_END} ?(.*)$`);

function readNumberAndUnit(kind: QuantityKind, body: string, sign: Rational): Reading {
  const match = NUMBER_AND_UNIT.exec(body);
  if (match === null) return { code: /['"]/.test(body) ? 'stray-quote' : 'not-a-number' };
  const [, written = '', unitText = ''] = match;
  const amount = readNumber(written);
  if (amount === null || /^[\d.:-]/.test(unitText)) return { code: 'not-a-number' };
  if (unitText === '') return { code: 'without-unit' };
  const unit = unitBySpelling(kind, unitText);
  if (unit === undefined) return { code: /['"]/.test(unitText) ? 'stray-quote' : 'unknown-unit' };
  return {
    measure: {
      value: addR(multiplyR(multiplyR(sign, amount), unit.base), unit.baseAtZero),
      unit: unit.symbol,
    },
  };
}

const FEET_AND_INCHES = new RegExp(
  String.raw`^(${NUMBER_PATTERN}) ?(?:'|ft)(?:-| ?)(${NUMBER_PATTERN})${NUMBER_END} ?(.*)$`,
);

/** null if there are no two numbers with feet between them. */
function readFeetInches(body: string, sign: Rational): Reading | null {
  const match = FEET_AND_INCHES.exec(body);
  if (match === null) return null;
  const [, feetText = '', inchText = '', unitText = ''] = match;
  if (unitText === '') return { code: 'without-unit' };
  if (unitText !== '"' && unitText !== 'in') {
    return { code: /['"]/.test(unitText) ? 'stray-quote' : 'unknown-unit' };
  }
  const feet = readNumber(feetText);
  const inches = readNumber(inchText);
  const readable = feet !== null && inches !== null && feet.d === 1n && inches.n < 12n * inches.d;
  if (!readable) return { code: 'not-a-number' };
  return {
    measure: { value: multiplyR(sign, addR(multiplyR(feet, rational(12)), inches)), unit: FEET_INCHES },
  };
}

const ONE_TO = new RegExp(String.raw`^1 ?: ?(${NUMBER_PATTERN})$`);

/** null if it is not written as a proportion. */
function readOneIn(body: string, sign: Rational): Reading | null {
  const match = ONE_TO.exec(body);
  if (match === null) return null;
  const run = readNumber(match[1] ?? '');
  if (run === null || run.n === 0n) return { code: 'not-a-number' };
  return { measure: { value: divideR(sign, run), unit: ONE_IN } };
}

/**
 * Writes a refused text in ways that are taken, so far as it can be understood. The guesses
 * serve the message only; a refused text stays refused.
 */
function formsFor(kind: QuantityKind, text: string, code: ParseCode): readonly string[] {
  if (code === 'wrong-kind' || text.length > LONGEST_TEXT) return EXAMPLES[kind];
  const readings = guesses(kind, plainText(text)).flatMap((guess) => {
    const reading = read(kind, guess);
    return 'measure' in reading ? [{ kind, ...reading.measure, text: guess }] : [];
  });
  const [first, second] = readings;
  if (first === undefined) return EXAMPLES[kind];
  return second === undefined ? formsOf(first) : readings.flatMap((reading) => formsOf(reading).slice(0, 1));
}
