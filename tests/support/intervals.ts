import type { FigureInput } from '../../src/calculate/figure.ts';
import { showInput } from '../../src/describe/show/index.ts';
import type { Arithmetic } from '../calculate/evaluate.ts';

/** All values from the least to the most. */
export type Interval = { readonly least: number; readonly most: number };

const hull = (values: readonly number[]): Interval => ({
  least: Math.min(...values),
  most: Math.max(...values),
});

/** For what grows, or falls, with every one of its arguments, the ends decide. */
const byEnds =
  (of: (one: number, other: number) => number) =>
  (one: Interval, other: Interval): Interval =>
    hull([
      of(one.least, other.least),
      of(one.least, other.most),
      of(one.most, other.least),
      of(one.most, other.most),
    ]);
const growing =
  (of: (...values: number[]) => number) =>
  (...args: Interval[]): Interval => ({
    least: of(...args.map(({ least }) => least)),
    most: of(...args.map(({ most }) => most)),
  });

/** What a double may be off by, so that a value at a step is taken to be on it. */
const NOISE = 1e-9;
const roundHalfUp = (x: number) => Math.floor(x * 100 + 0.5) / 100;

/**
 * Interval arithmetic: the interval of a result holds the result of every choice of values from the
 * intervals of its inputs, whichever of them are off and by how much within those. Each operation
 * gives the least and the most it can be; a name that occurs twice in an expression is taken to
 * vary by itself, which makes the interval wider and never too narrow. A step (`ceilStep`) or a
 * rounding is taken at both ends, on the outer side of the noise.
 */
export const intervals: Arithmetic<Interval> = {
  from: (value) => ({ least: Number(value), most: Number(value) }),
  fromInput: printed,
  operators: {
    '+': byEnds((one, other) => one + other),
    '-': byEnds((one, other) => one - other),
    '*': byEnds((one, other) => one * other),
    '/': (one, other) => {
      if (other.least <= 0 && other.most >= 0) throw new RangeError('a divisor that may be 0');
      return byEnds((a, b) => a / b)(one, other);
    },
    '^': (one, other) => {
      if (one.least < 0) throw new RangeError('a power of what may be below 0');
      return byEnds((a, b) => a ** b)(one, other);
    },
  },
  functions: {
    min: growing(Math.min),
    max: growing(Math.max),
    ceil: outward(Math.ceil),
    floor: outward(Math.floor),
    sqrt: growing(Math.sqrt),
    ceilStep: stepped(Math.ceil),
    floorStep: stepped(Math.floor),
    roundCent: outward(roundHalfUp),
  },
};

function outward(of: (x: number) => number) {
  return (x: Interval = { least: Number.NaN, most: Number.NaN }): Interval => ({
    least: of(x.least - NOISE * Math.max(1, Math.abs(x.least))),
    most: of(x.most + NOISE * Math.max(1, Math.abs(x.most))),
  });
}

function stepped(of: (x: number) => number) {
  return (...[x, step]: Interval[]): Interval => {
    if (x === undefined || step === undefined || !(step.least > 0)) throw new RangeError('a step above 0');
    return byEnds((a, b) => a * b)(outward(of)(byEnds((a, b) => a / b)(x, step)), step);
  };
}

/** The number of a printed value. @throws {RangeError} If there is none. */
export function printedNumber(text: string): { readonly value: number; readonly halfUnit: number } {
  const found = /^(-|−)?\$?([\d,]+)(?:\.(\d+))?/.exec(text);
  if (found === null) throw new RangeError(`no number in ${JSON.stringify(text)}`);
  const [, minus, whole = '', digits = ''] = found;
  const value = Number(`${whole.replaceAll(',', '')}.${digits}`) * (minus === undefined ? 1 : -1);
  return { value, halfUnit: 0.5 * 10 ** -digits.length };
}

/**
 * What an input can have been, from what is printed of it: as printed where that is all of it, else
 * half a unit of the last digit more or less.
 */
function printed(input: FigureInput): Interval {
  const { value, halfUnit } = printedNumber(showInput(input));
  const isWhole = Math.abs(Number(input.value) - value) <= 1e-12 * Math.max(1, Math.abs(value));
  return isWhole ? { least: value, most: value } : { least: value - halfUnit, most: value + halfUnit };
}
