import {
  cuFtPerCuYd,
  cuFtPerGal,
  cuMPerCuFt,
  degFAtZeroC,
  degFPerDegC,
  ftPerMi,
  ftPerYd,
  hrPerDay,
  inPerFt,
  kgPerCuMPerLbPerCuFt,
  kgPerLb,
  kgPerTonne,
  kmPerMi,
  lbPerTon,
  lPerCuFt,
  minPerHr,
  mmPerIn,
  paPerPsi,
  sqInPerSqFt,
  sqMPerLPerSqFtPerGal,
  sqMPerSqFt,
} from './convert.ts';
import type { QuantityKind } from './kinds.ts';
import { plainUnit } from './number-text.ts';
import { divideR, multiplyR, type Rational, rational } from './rational.ts';

/**
 * A unit that can be written after a number.
 * `base` is how many base units one of it is; `baseAtZero` is where its zero lies (temperature).
 */
export type UnitRow = {
  readonly kind: QuantityKind;
  readonly symbol: string;
  readonly spellings: readonly string[];
  readonly base: Rational;
  readonly baseAtZero: Rational;
  /** Written in part fractions (`6 1/2 in`) rather than decimals. */
  readonly inFractions: boolean;
  /** The symbol beside any number but 1, where it differs: `18 tons`. */
  readonly plural: string;
};

/** Feet and inches together; not a row, since it is two numbers. */
export const FEET_INCHES = 'ft-in';
/** `1:48`; not a row, since the number stands below the line. */
export const ONE_IN = '1:n';

const ONE = rational(1);
const ZERO = rational(0);

function row(
  kind: QuantityKind,
  spellings: readonly [string, ...string[]],
  base: Rational,
  more: { baseAtZero?: Rational; inFractions?: boolean; plural?: string } = {},
): UnitRow {
  const [symbol] = spellings;
  const { baseAtZero = ZERO, inFractions = false, plural = symbol } = more;
  return { kind, symbol, spellings: spellings.map(plainUnit), base, baseAtZero, inFractions, plural };
}

const inPerMm = divideR(ONE, mmPerIn);
const inPerM = multiplyR(inPerMm, rational(1000));
const cuFtPerCuM = divideR(ONE, cuMPerCuFt);

/** The first spelling is the symbol used when writing. */
export const UNIT_ROWS: readonly UnitRow[] = [
  row('length', ['in', '"'], ONE, { inFractions: true }),
  row('length', ['ft', "'"], inPerFt),
  row('length', ['yd'], multiplyR(ftPerYd, inPerFt)),
  row('length', ['mi'], multiplyR(ftPerMi, inPerFt)),
  row('length', ['mm'], inPerMm),
  row('length', ['cm'], multiplyR(inPerMm, rational(10))),
  row('length', ['m'], inPerM),
  row('length', ['km'], multiplyR(inPerM, rational(1000))),

  row('area', ['sq ft', 'ft2'], ONE),
  row('area', ['sq in', 'in2'], divideR(ONE, sqInPerSqFt)),
  row('area', ['m2'], divideR(ONE, sqMPerSqFt)),

  row('volume', ['yd3', 'cu yd'], cuFtPerCuYd),
  row('volume', ['cu ft', 'ft3'], ONE),
  row('volume', ['m3'], cuFtPerCuM),
  row('volume', ['gal'], cuFtPerGal),
  row('volume', ['L'], divideR(ONE, lPerCuFt)),

  row('weight', ['lb'], ONE),
  row('weight', ['ton', 'tons'], lbPerTon, { plural: 'tons' }),
  row('weight', ['t'], divideR(kgPerTonne, kgPerLb)),
  row('weight', ['kg'], divideR(ONE, kgPerLb)),

  row('slope', ['in per ft'], divideR(ONE, inPerFt), { inFractions: true }),
  row('slope', ['%'], rational(1, 100)),
  row('slope', ['mm per m'], rational(1, 1000)),

  row('temperature', ['°F', 'F'], ONE),
  row('temperature', ['°C', 'C'], degFPerDegC, { baseAtZero: degFAtZeroC }),

  row('duration', ['min'], divideR(ONE, minPerHr)),
  row('duration', ['h'], ONE),
  row('duration', ['day', 'days'], hrPerDay, { plural: 'days' }),

  row('share', ['%'], rational(1, 100)),

  row('density', ['lb per cu ft', 'lb per ft3'], ONE),
  row('density', ['lb per yd3', 'lb per cu yd'], divideR(ONE, cuFtPerCuYd)),
  row('density', ['kg per m3'], divideR(ONE, kgPerCuMPerLbPerCuFt)),

  row('strength', ['psi'], ONE),
  row('strength', ['MPa'], divideR(rational(1_000_000), paPerPsi)),

  row('speed', ['mph'], ONE),
  row('speed', ['km/h'], divideR(ONE, kmPerMi)),

  row('coverage', ['sq ft per gal', 'ft2 per gal'], ONE),
  row('coverage', ['m2 per L'], divideR(ONE, sqMPerLPerSqFtPerGal)),

  row('evaporation', ['lb per sq ft per h', 'lb per ft2 per h'], ONE),
  row('evaporation', ['kg per m2 per h'], divideR(sqMPerSqFt, kgPerLb)),

  row('angle', ['deg', 'degree', 'degrees', '°'], ONE),
];

/** The row of a unit as someone wrote it, or undefined. Upper and lower case count. */
export function unitBySpelling(kind: QuantityKind, written: string): UnitRow | undefined {
  const spelling = plainUnit(written);
  return UNIT_ROWS.find((unit) => unit.kind === kind && unit.spellings.includes(spelling));
}

/** @throws {RangeError} If the kind has no unit of that symbol. */
export function unitBySymbol(kind: QuantityKind, symbol: string): UnitRow {
  const found = UNIT_ROWS.find((unit) => unit.kind === kind && unit.symbol === symbol);
  if (found === undefined) throw new RangeError(`${JSON.stringify(symbol)} is not a unit of ${kind}`);
  return found;
}

export const QUANTITY_KINDS: readonly QuantityKind[] = [...new Set(UNIT_ROWS.map((unit) => unit.kind))];
