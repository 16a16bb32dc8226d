import * as units from '../../src/units/index.ts';
import {
  compareR,
  divideR,
  formatFeetInches,
  formatInches,
  formatNumber,
  ftToIn,
  inToFt,
  multiplyR,
  parseQuantity,
  type QuantityKind,
  type Rational,
  rational,
  rationalToDecimal,
  rationalToNumber,
  roundToCent,
  slopeToDeg,
  slopeToInPerFt,
  slopeToPct,
  splitByLargestRemainder,
  Usd,
} from '../../src/units/index.ts';
import { runChecks } from './load.ts';

function valueOf(kind: QuantityKind, text: string): Rational {
  const result = parseQuantity(kind, text);
  if (!result.ok) throw new Error(`${text}: ${result.code}`);
  return result.value.value;
}

function isRational(value: unknown): value is Rational {
  return typeof value === 'object' && value !== null && 'n' in value && 'd' in value;
}

function exactFactor(name: string): string {
  const factor = (units as Record<string, unknown>)[name];
  if (!isRational(factor)) throw new Error(`no exact factor is called ${name}`);
  return rationalToDecimal(factor).toFixed();
}

function convert(by: string, value: number): number {
  const conversion = (units as Record<string, unknown>)[by];
  if (typeof conversion !== 'function') throw new Error(`no conversion is called ${by}`);
  return conversion(value);
}

const slopeOf = (text: string): number => rationalToNumber(valueOf('slope', text));

runChecks('units', {
  'exact factor': (given) => exactFactor(given.name),
  convert: (given) => convert(given.by, given.value),
  'slope in percent': (given) => slopeToPct(slopeOf(given.slope)),
  'slope as one in': (given) => rationalToNumber(divideR(rational(1), valueOf('slope', given.slope))),
  'slope in inches to the foot': (given) => slopeToInPerFt(slopeOf(given.slope)),
  'slope in degrees': (given) => slopeToDeg(slopeOf(given.slope)),
  'slope of a fall': (given) =>
    slopeToPct(rationalToNumber(divideR(valueOf('length', given.fall), valueOf('length', given.run)))),
  fall: (given) => rationalToNumber(multiplyR(valueOf('slope', given.slope), valueOf('length', given.run))),
  'slopes are equal': (given) => compareR(valueOf('slope', given.one), valueOf('slope', given.other)) === 0,
  'decimal feet in inches': (given) => ftToIn(given.ft),
  'decimal feet on a tape': (given) => {
    const lengthIn = ftToIn(given.ft);
    return [formatInches(lengthIn, 8), formatInches(lengthIn, 16)];
  },
  'height above a benchmark': (given) =>
    formatFeetInches(ftToIn(given.grade - given.benchmark), given.denominator),
  'inches in hundredths of a foot': (given) => formatNumber(inToFt(given.inches), 2),
  'feet and inches': (given) => {
    const lengthIn = ftToIn(given.ft);
    return [
      formatFeetInches(lengthIn, 8, { alwaysFeet: true }),
      formatFeetInches(lengthIn, 16, { alwaysFeet: true }),
    ];
  },
  'round to the cent': (given) => roundToCent(new Usd(given.amount)).toFixed(2),
  'split in cents': (given) => {
    const weights = given.weights.map((weight: number) => new Usd(weight));
    const shares = splitByLargestRemainder(new Usd(given.cents).dividedBy(100), weights);
    return shares.map((shareUsd) => shareUsd.times(100).toNumber());
  },
});
