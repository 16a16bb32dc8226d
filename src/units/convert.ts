import { divideR, multiplyR, type Rational, rational, rationalToNumber } from './rational.ts';

/*
 * Exact unit factors, and plain number helpers made of them.
 *
 * Definitions:
 * - 1 ft = 0.3048 m exactly, so 1 in = 25.4 mm: NIST and NOAA notice, 85 FR 62698 (2020-10-05), seen.
 *   The US survey foot was retired on 2022-12-31 (same notice, seen) and is not used here.
 * - 1 lb = 0.45359237 kg exactly: NIST Handbook 44, appendix C, from memory.
 * - 1 short ton = 2000 lb: NIST Handbook 44, appendix C, from memory.
 * - 1 US gal = 231 cu in exactly: fire science mathematics table, math.fire.org, seen.
 * - standard gravity 9.80665 m/s² exactly: NIST SP 811, appendix B, from memory.
 * - °F = 9/5 °C + 32: NIST SP 811, appendix B, from memory.
 */

export const inPerFt: Rational = rational(12);
export const ftPerYd: Rational = rational(3);
export const ftPerMi: Rational = rational(5280);
export const mmPerIn: Rational = rational(127, 5);
export const mPerFt: Rational = rational(381, 1250);
export const kmPerMi: Rational = rational(25146, 15625);
export const sqInPerSqFt: Rational = rational(144);
export const sqMPerSqFt: Rational = multiplyR(mPerFt, mPerFt);
export const cuInPerCuFt: Rational = rational(1728);
export const cuFtPerCuYd: Rational = rational(27);
export const cuMPerCuFt: Rational = multiplyR(sqMPerSqFt, mPerFt);
export const cuInPerGal: Rational = rational(231);
export const cuFtPerGal: Rational = divideR(cuInPerGal, cuInPerCuFt);
export const lPerCuFt: Rational = multiplyR(cuMPerCuFt, rational(1000));
export const lPerGal: Rational = multiplyR(lPerCuFt, cuFtPerGal);
export const lbPerTon: Rational = rational(2000);
export const kgPerLb: Rational = rational(45359237, 100_000_000);
export const kgPerTonne: Rational = rational(1000);
export const kgPerCuMPerLbPerCuFt: Rational = divideR(kgPerLb, cuMPerCuFt);
export const sqMPerLPerSqFtPerGal: Rational = divideR(sqMPerSqFt, lPerGal);
/** lbf per sq in: weight of a pound over a square inch, kg x m/s² / m². */
export const paPerPsi: Rational = divideR(
  multiplyR(kgPerLb, rational(980665, 100_000)),
  multiplyR(rational(127, 5000), rational(127, 5000)),
);
export const degFPerDegC: Rational = rational(9, 5);
export const degFAtZeroC: Rational = rational(32);
export const minPerHr: Rational = rational(60);
export const hrPerDay: Rational = rational(24);

export const ftToIn = (lengthFt: number): number => times(lengthFt, inPerFt);
export const inToFt = (lengthIn: number): number => over(lengthIn, inPerFt);
export const inToMm = (lengthIn: number): number => times(lengthIn, mmPerIn);
export const mmToIn = (lengthMm: number): number => over(lengthMm, mmPerIn);
export const inToM = (lengthIn: number): number => times(lengthIn, divideR(mPerFt, inPerFt));
export const mToIn = (lengthM: number): number => over(lengthM, divideR(mPerFt, inPerFt));
export const ftToM = (lengthFt: number): number => times(lengthFt, mPerFt);
export const mToFt = (lengthM: number): number => over(lengthM, mPerFt);
export const inToMi = (lengthIn: number): number => over(lengthIn, multiplyR(inPerFt, ftPerMi));
export const miToKm = (lengthMi: number): number => times(lengthMi, kmPerMi);
export const kmToMi = (lengthKm: number): number => over(lengthKm, kmPerMi);

export const sqInToSqFt = (areaSqIn: number): number => over(areaSqIn, sqInPerSqFt);
export const sqFtToSqIn = (areaSqFt: number): number => times(areaSqFt, sqInPerSqFt);
export const sqFtToSqM = (areaSqFt: number): number => times(areaSqFt, sqMPerSqFt);
export const sqMToSqFt = (areaSqM: number): number => over(areaSqM, sqMPerSqFt);

export const cuInToCuFt = (volumeCuIn: number): number => over(volumeCuIn, cuInPerCuFt);
export const cuFtToCuYd = (volumeCuFt: number): number => over(volumeCuFt, cuFtPerCuYd);
export const cuYdToCuFt = (volumeCuYd: number): number => times(volumeCuYd, cuFtPerCuYd);
export const cuFtToCuM = (volumeCuFt: number): number => times(volumeCuFt, cuMPerCuFt);
export const cuMToCuFt = (volumeCuM: number): number => over(volumeCuM, cuMPerCuFt);
export const cuYdToCuM = (volumeCuYd: number): number =>
  times(volumeCuYd, multiplyR(cuFtPerCuYd, cuMPerCuFt));
export const cuFtToGal = (volumeCuFt: number): number => over(volumeCuFt, cuFtPerGal);
export const galToCuFt = (volumeGal: number): number => times(volumeGal, cuFtPerGal);
export const galToL = (volumeGal: number): number => times(volumeGal, lPerGal);
export const lToGal = (volumeL: number): number => over(volumeL, lPerGal);
export const cuFtToL = (volumeCuFt: number): number => times(volumeCuFt, lPerCuFt);

/** Short tons of 2000 lb; a tonne is 1000 kg. */
export const lbToTon = (weightLb: number): number => over(weightLb, lbPerTon);
export const tonToLb = (weightTon: number): number => times(weightTon, lbPerTon);
export const lbToKg = (weightLb: number): number => times(weightLb, kgPerLb);
export const kgToLb = (weightKg: number): number => over(weightKg, kgPerLb);
export const lbToTonne = (weightLb: number): number => times(weightLb, divideR(kgPerLb, kgPerTonne));
export const tonneToLb = (weightTonne: number): number => over(weightTonne, divideR(kgPerLb, kgPerTonne));

export const lbPerCuFtToKgPerCuM = (densityLbPerCuFt: number): number =>
  times(densityLbPerCuFt, kgPerCuMPerLbPerCuFt);
export const kgPerCuMToLbPerCuFt = (densityKgPerCuM: number): number =>
  over(densityKgPerCuM, kgPerCuMPerLbPerCuFt);
export const lbPerCuFtToLbPerCuYd = (densityLbPerCuFt: number): number =>
  times(densityLbPerCuFt, cuFtPerCuYd);
export const lbPerCuYdToLbPerCuFt = (densityLbPerCuYd: number): number => over(densityLbPerCuYd, cuFtPerCuYd);
/** Short tons a cubic yard to tonnes a cubic metre, as earthwork tables print it. */
export const tonPerCuYdToTonnePerCuM = (densityTonPerCuYd: number): number =>
  lbPerCuFtToKgPerCuM(lbPerCuYdToLbPerCuFt(tonToLb(densityTonPerCuYd))) / 1000;

export const psiToMpa = (strengthPsi: number): number =>
  times(strengthPsi, divideR(paPerPsi, rational(1_000_000)));
export const mpaToPsi = (strengthMpa: number): number =>
  over(strengthMpa, divideR(paPerPsi, rational(1_000_000)));
export const psiToPa = (pressurePsi: number): number => times(pressurePsi, paPerPsi);
export const mphToKmPerHr = (speedMph: number): number => times(speedMph, kmPerMi);
export const kmPerHrToMph = (speedKmPerHr: number): number => over(speedKmPerHr, kmPerMi);
/** Water that leaves a face, in an hour. */
export const lbPerSqFtToKgPerSqM = (rateLbPerSqFt: number): number =>
  times(rateLbPerSqFt, divideR(kgPerLb, sqMPerSqFt));
export const sqFtPerGalToSqMPerL = (coverageSqFtPerGal: number): number =>
  times(coverageSqFtPerGal, sqMPerLPerSqFtPerGal);

/** °C = (°F - 32) 5/9 */
export const fToC = (temperatureF: number): number =>
  over(temperatureF - rationalToNumber(degFAtZeroC), degFPerDegC);
/** °F = °C 9/5 + 32 */
export const cToF = (temperatureC: number): number =>
  times(temperatureC, degFPerDegC) + rationalToNumber(degFAtZeroC);

/** Slope is rise over run; in per ft = 12 rise/run. */
export const slopeToInPerFt = (slope: number): number => times(slope, inPerFt);
export const inPerFtToSlope = (fallInPerFt: number): number => over(fallInPerFt, inPerFt);
/** percent = 100 rise/run */
export const slopeToPct = (slope: number): number => times(slope, rational(100));
/** angle = atan(rise/run) */
export const slopeToDeg = (slope: number): number => (Math.atan(finite(slope)) * 180) / Math.PI;

/** Of one step. Far above the noise of a long chain of doubles, far below anything that is bought. */
const NOISE_RATIO = 1e-9;

/**
 * The smallest whole multiple of a step that is not below the value: order quantities, loads, legal minima.
 *
 * @param value Any finite number.
 * @param step  Above 0, in the unit of the value.
 * @throws {RangeError} If the value is not finite or the step is not above 0.
 *
 * A value that stands above a multiple only by the noise of floating point is taken to be on
 * it: 1e-9 of the quotient (of one step for less than a step) is subtracted before rounding up.
 * 448 (5/12) 150 / 7000 is four loads exactly, but comes out of doubles as 4.000000000000001.
 *
 * @example ceilToStep((448 * (5 / 12) * 150) / 7000, 1) // 4, where Math.ceil gives 5
 */
export function ceilToStep(value: number, step: number): number {
  const stepCount = quotient(value, step);
  return multiple(Math.ceil(stepCount - NOISE_RATIO * Math.max(1, Math.abs(stepCount))), step);
}

/**
 * The greatest whole multiple of a step that is not above the value: legal maxima, loads that still fit.
 * Guarded as `ceilToStep` is, upward.
 *
 * @throws {RangeError} If the value is not finite or the step is not above 0.
 */
export function floorToStep(value: number, step: number): number {
  const stepCount = quotient(value, step);
  return multiple(Math.floor(stepCount + NOISE_RATIO * Math.max(1, Math.abs(stepCount))), step);
}

/** `ceilToStep` with a step of one: how many whole things it takes. */
export function ceilCount(value: number): number {
  return ceilToStep(value, 1);
}

function quotient(value: number, step: number): number {
  if (!(step > 0 && step < Infinity)) throw new RangeError(`step must be above 0, got ${step}`);
  return finite(value) / step;
}

/** 15 digits, so that three steps of 0.1 are 0.3; and 0 instead of -0. */
function multiple(count: number, step: number): number {
  const product = count * step;
  // A whole number has no digit too many.
  if (Number.isInteger(product) && Math.abs(product) < 1e15) return product + 0;
  return Number(product.toPrecision(15)) + 0;
}

function times(value: number, factor: Rational): number {
  return (finite(value) * Number(factor.n)) / Number(factor.d);
}

function over(value: number, factor: Rational): number {
  return (finite(value) * Number(factor.d)) / Number(factor.n);
}

function finite(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`expected a finite number, got ${value}`);
  return value;
}
