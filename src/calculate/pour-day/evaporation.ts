/** Of saturated water vapor over water at 32 °F, in the formula of Tetens [psi]: 6.1078 hPa. */
export const VAPOR_AT_32_PSI = 0.088586;

export const VAPOR_SOURCE =
  'O. Tetens 1930 as given by F. W. Murray 1967, vapor pressure over water, 6.1078 hPa × 10^(7.5 C / (237.3 + C)) (from memory)';
export const EVAPORATION_SOURCE =
  'C. A. Menzel 1954, the equation behind the chart of ACI 305R and the drying table of W. Lerch 1957 (coefficients from memory; they give the table within 6 %)';

/** Precautions are taken above it: UFGS 03300N and ACI 305R (seen in the first) [lb/sq ft/h]. */
export const ACT_FROM = 0.2;
/** Above it the face is watched; mixes that bleed little crack from here on: half of the other (seen for silica fume) [lb/sq ft/h]. */
export const WATCH_FROM = 0.1;

/**
 * Pressure of saturated water vapor.
 *
 * @param temperatureF -80 to 200 °F; over water below freezing too.
 * @returns [psi].
 * @throws {RangeError} If the temperature is outside of that.
 *
 * e = 0.088586 × 10^(7.5 (F - 32) / (F + 395.14)): Tetens' formula with C = (F - 32) / 1.8.
 *
 * @example vaporPressurePsi(70) // 0.3632
 */
export function vaporPressurePsi(temperatureF: number): number {
  return VAPOR_AT_32_PSI * vaporRatio(temperatureF);
}

/** Of the pressure at 32 °F. */
function vaporRatio(temperatureF: number): number {
  if (!(temperatureF >= -80 && temperatureF <= 200)) {
    throw new RangeError(`temperatureF must be -80 to 200, got ${temperatureF}`);
  }
  return 10 ** ((7.5 * (temperatureF - 32)) / (temperatureF + 395.14));
}

/**
 * How fast water leaves the face of fresh concrete.
 *
 * @param at.concreteF     Temperature of the concrete at its face [°F].
 * @param at.airF          Temperature of the air [°F].
 * @param at.humidityRatio Relative humidity of the air, 0 to 1.
 * @param at.windMph       Mean wind 20 in above the face [mph], 0 or more.
 * @returns [lb/sq ft/h]; 0 where water would condense.
 * @throws {RangeError} If a value is outside its range.
 *
 * E = 0.44 (e0 - r ea) (0.253 + 0.096 V), with e0 and ea the pressures of saturated vapor at the
 * temperature of the concrete and of the air [psi]. Source: C. A. Menzel 1954. Readings of it differ from
 * what is measured by about 40 % either way (K. C. Hover, ACI SP-338, abstract, seen).
 */
export function evaporationLbPerSqFtHr(at: {
  readonly concreteF: number;
  readonly airF: number;
  readonly humidityRatio: number;
  readonly windMph: number;
}): number {
  const { concreteF, airF, humidityRatio, windMph } = at;
  if (!(humidityRatio >= 0 && humidityRatio <= 1))
    throw new RangeError(`humidityRatio must be 0 to 1, got ${humidityRatio}`);
  if (!(windMph >= 0 && windMph < Infinity))
    throw new RangeError(`windMph must be 0 or more, got ${windMph}`);
  // In the order of EVAPORATION_FORMULA, so that both come to the same double.
  const driveRatio = vaporRatio(concreteF) - humidityRatio * vaporRatio(airF);
  return Math.max(0, 0.44 * VAPOR_AT_32_PSI * driveRatio * (0.253 + 0.096 * windMph));
}

/** The same as an expression over the inputs of a figure. */
export const EVAPORATION_FORMULA =
  'max(0, 0.44 * vaporPsi * (10^(7.5 * (concreteF - 32) / (concreteF + 395.14)) - humidityRatio * 10^(7.5 * (airF - 32) / (airF + 395.14))) * (0.253 + 0.096 * windMph))';
