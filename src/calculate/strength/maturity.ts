/** Absolute zero is so far below 0 °C, as ASTM C1074 counts it. */
const KELVIN = 273;
const HR_A_DAY = 24;

/** Activation energy over the gas constant, cement of Type I without admixtures [K]. */
export const ACTIVATION_K = 5000;
/** Temperature at which the strength of a mix is tested [°C]. */
export const REFERENCE_C = 23;
export const AGE_SOURCE =
  'ASTM C1074, equivalent age with Q = 5000 K for Type I (from memory; method seen in N. J. Carino, The Maturity Method, 1984), referred to 23 °C, at which cylinders are cured';

/**
 * How fast concrete ages at a temperature, against its age at the reference.
 *
 * @param temperatureC -40 to 80 °C.
 * @param referenceC   The temperature at which an hour counts as an hour [°C].
 * @returns 1 at the reference; 0 at 0 °C and below, where nothing is counted, to be on the safe side.
 * @throws {RangeError} If the temperature is outside of that.
 *
 * exp(-Q (1/T - 1/Tr)), in kelvin. Source: ASTM C1074.
 *
 * @example ageFactor(10, 20) // 0.547
 */
export function ageFactor(temperatureC: number, referenceC: number = REFERENCE_C): number {
  if (!(temperatureC >= -40 && temperatureC <= 80))
    throw new RangeError(`temperatureC must be -40 to 80, got ${temperatureC}`);
  if (temperatureC <= 0) return 0;
  return Math.exp(-ACTIVATION_K * (1 / (temperatureC + KELVIN) - 1 / (referenceC + KELVIN)));
}

/** A stretch of time at one temperature. */
export type Spell = { readonly hours: number; readonly temperatureC: number };

/** Age at the reference temperature that does as much as these spells together [h]. */
export function equivalentAgeHr(spells: readonly Spell[], referenceC: number = REFERENCE_C): number {
  return spells.reduce(
    (sumHr, { hours, temperatureC }) => sumHr + hours * ageFactor(temperatureC, referenceC),
    0,
  );
}

export const STRENGTH_A_DAYS = 4;
export const STRENGTH_B = 0.85;
export const STRENGTH_SOURCE =
  'ACI 209R-92, equation 2-1, moist cured, Type I: t / (4.0 + 0.85 t), t in days (from memory)';

/**
 * Strength at an age over the strength at 28 days.
 *
 * @param ageDays At the reference temperature, 0 or more.
 * @throws {RangeError} If the age is below 0 or not a finite number.
 *
 * t / (4.0 + 0.85 t). Source: ACI 209R-92, equation 2-1. It is of the mean strength.
 */
export function strengthRatio(ageDays: number): number {
  if (!(ageDays >= 0 && ageDays < Infinity))
    throw new RangeError(`ageDays must be 0 or more, got ${ageDays}`);
  return ageDays / (STRENGTH_A_DAYS + STRENGTH_B * ageDays);
}

/**
 * The age at which a share of the strength at 28 days is reached: the equation above, solved for t.
 *
 * @param ratio 0 to 1.
 * @returns [days at the reference temperature].
 * @throws {RangeError} If the ratio is outside of that.
 */
export function ageForRatioDays(ratio: number): number {
  if (!(ratio >= 0 && ratio <= 1)) throw new RangeError(`ratio must be 0 to 1, got ${ratio}`);
  return (STRENGTH_A_DAYS * ratio) / (1 - STRENGTH_B * ratio);
}

/** Nothing is looked for later than this; by then the forecast says nothing any more. */
export const MOST_DAYS = 90;

/**
 * How many days of the coming weather it takes to reach an age.
 *
 * @param ageDays At the reference temperature.
 * @param daysC   Mean air of each day from the pour on [°C], at least one; after the last the mean of all of
 *                them goes on. A slab of a few inches is taken to be as warm as the air.
 * @returns Whole days, up; at most 90.
 * @throws {RangeError} If no day is given.
 */
export function daysToAge(ageDays: number, daysC: readonly number[]): number {
  let reachedDays = 0;
  let dayCount = 0;
  // What a chain of doubles leaves below the age is no day of its own.
  while (reachedDays < ageDays - 1e-9 && dayCount < MOST_DAYS) {
    reachedDays += ageFactor(airOfDay(daysC, dayCount));
    dayCount += 1;
  }
  return dayCount;
}

/** Age at the reference temperature after so many days of the coming weather [days]. */
export function ageAfterDays(dayCount: number, daysC: readonly number[]): number {
  const spells = Array.from({ length: dayCount }, (_, index) => ({
    hours: HR_A_DAY,
    temperatureC: airOfDay(daysC, index),
  }));
  return equivalentAgeHr(spells) / HR_A_DAY;
}

function airOfDay(daysC: readonly number[], index: number): number {
  if (daysC.length === 0) throw new RangeError('the coming days have no temperature');
  return daysC[index] ?? daysC.reduce((sumC, oneC) => sumC + oneC, 0) / daysC.length;
}
