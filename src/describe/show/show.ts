import type { UnitSystem } from '../../calculate/job.ts';
import type { PublicText } from '../../calculate/text.ts';
import {
  ceilToStep,
  cuYdToCuM,
  floorToStep,
  formatFeetInches,
  formatInches,
  formatNumber,
  fToC,
  ftToM,
  galToL,
  inToM,
  inToMm,
  lbPerSqFtToKgPerSqM,
  lbToKg,
  lbToTon,
  lbToTonne,
  miToKm,
  mphToKmPerHr,
  psiToMpa,
  slopeToInPerFt,
  sqFtToSqM,
} from '../../units/index.ts';

/**
 * How a job shows its quantities: feet and inches, or metric. Each takes the core's unit and gives
 * the number with its unit symbol. A quantity is never a secret, so these are public text; money
 * has its own functions.
 */
export type Show = {
  /** A plan length: 14′ 6 3/8″ or 4.43 m. */
  readonly length: (lengthIn: number) => PublicText;
  /** A height against a datum: 100.25 ft or 30.556 m. */
  readonly height: (heightIn: number) => PublicText;
  /** A piece to cut, not shorter than given: 14′ 6 5/16″ or 4,427 mm. */
  readonly cut: (lengthIn: number) => PublicText;
  /** A small size: 4 1/2″ or 114 mm. */
  readonly size: (sizeIn: number) => PublicText;
  /** The height of a step: 6 13/16″ or 173 mm; the nearest, not less than given, or not more. */
  readonly fine: (sizeIn: number) => PublicText;
  readonly fineUp: (sizeIn: number) => PublicText;
  readonly fineDown: (sizeIn: number) => PublicText;
  /** A run of edge or joint in whole steps: 36.0 ft or 11.0 m. */
  readonly run: (lengthFt: number) => PublicText;
  readonly area: (areaSqFt: number) => PublicText;
  /** Area that a yard covers, or a cubic metre; the bare number, to divide by. */
  readonly cover: (areaSqFtPerCuYd: number) => PublicText;
  readonly volume: (volumeCuYd: number) => PublicText;
  /** Parts of one volume, so rounded that they add up, as shown, to what their sum shows. */
  readonly volumes: (partsCuYd: readonly number[]) => readonly PublicText[];
  readonly weight: (weightLb: number) => PublicText;
  /** A weight that something has to bear at least, not less than given: 2,001 lb or 908 kg. */
  readonly leastWeight: (weightLb: number) => PublicText;
  /** Tons of 2,000 lb, or tonnes. */
  readonly tons: (weightLb: number) => PublicText;
  readonly slope: (slope: number) => PublicText;
  readonly strength: (strengthPsi: number) => PublicText;
  readonly liquid: (volumeGal: number) => PublicText;
  readonly distance: (distanceMi: number) => PublicText;
  readonly temperature: (temperatureF: number) => PublicText;
  readonly speed: (speedMph: number) => PublicText;
  /** Water that leaves a face: 0.12 lb/sq ft/h or 0.59 kg/m²/h. */
  readonly evaporation: (rateLbPerSqFtHr: number) => PublicText;
  readonly rainfall: (rainIn: number) => PublicText;
  readonly percent: (ratio: number) => PublicText;
  readonly hours: (timeHr: number) => PublicText;
  /** In whole minutes. */
  readonly minutes: (timeHr: number) => PublicText;
  readonly count: (count: number) => PublicText;
  /** A plain ratio: 0.45. */
  readonly ratio: (ratio: number) => PublicText;
  /** What is poured in an hour: 6.0 yd³ or 4.6 m³; the words say that it is an hour. */
  readonly pour: (volumeCuYdPerHr: number) => PublicText;
};

const shown = (text: string): PublicText => text as PublicText;

const either = {
  percent: (ratio: number) =>
    shown(`${formatNumber(ratio * 100, Number.isInteger(round9(ratio * 100)) ? 0 : 1)} %`),
  hours: (timeHr: number) => shown(`${formatNumber(timeHr, 1)} h`),
  minutes: (timeHr: number) => shown(`${formatNumber(timeHr * 60, 0)} min`),
  count: (count: number) => shown(formatNumber(count, 0)),
  ratio: (ratio: number) => shown(formatNumber(ratio, 2)),
};

const LEVEL = formatInches(0, 16);
const NO_PERCENT = `${formatNumber(0, 1)} %`;

const us: Show = {
  ...either,
  length: (lengthIn) => shown(formatFeetInches(lengthIn, 8)),
  height: (heightIn) => shown(`${formatNumber(heightIn / 12, 2)} ft`),
  cut: (lengthIn) => shown(formatFeetInches(ceilToStep(lengthIn, 1 / 16), 16)),
  size: (sizeIn) => shown(formatInches(sizeIn, 8)),
  fine: (sizeIn) => shown(formatInches(sizeIn, 16)),
  fineUp: (sizeIn) => shown(formatInches(ceilToStep(sizeIn, 1 / 16), 16)),
  fineDown: (sizeIn) => shown(formatInches(floorToStep(sizeIn, 1 / 16), 16)),
  run: (lengthFt) => shown(`${formatNumber(lengthFt, 1)} ft`),
  area: (areaSqFt) => shown(`${formatNumber(areaSqFt, 0)} sq ft`),
  cover: (areaSqFtPerCuYd) => shown(formatNumber(areaSqFtPerCuYd, 1)),
  volume: (volumeCuYd) => shown(`${formatNumber(volumeCuYd, 2)} yd³`),
  pour: (volumeCuYdPerHr) => shown(`${formatNumber(volumeCuYdPerHr, 1)} yd³`),
  volumes: (partsCuYd) => hundredthsOf(partsCuYd).map((part) => shown(`${formatNumber(part, 2)} yd³`)),
  weight: (weightLb) => shown(`${formatNumber(weightLb, 0)} lb`),
  leastWeight: (weightLb) => shown(`${formatNumber(ceilToStep(weightLb, 1), 0)} lb`),
  tons: (weightLb) => shown(`${formatNumber(lbToTon(weightLb), 1)} tons`),
  slope: (slope) => {
    const percent = `${formatNumber(slope * 100, 1)} %`;
    const fall = formatInches(slopeToInPerFt(slope), 16);
    // Less than a tape shows on a foot is no level yet.
    return shown(fall === LEVEL && percent !== NO_PERCENT ? percent : `${fall} / ft (${percent})`);
  },
  strength: (strengthPsi) => shown(`${formatNumber(strengthPsi, 0)} psi`),
  liquid: (volumeGal) => shown(`${formatNumber(volumeGal, Number.isInteger(volumeGal) ? 0 : 1)} gal`),
  distance: (distanceMi) => shown(`${formatNumber(distanceMi, 0)} mi`),
  temperature: (temperatureF) => shown(`${formatNumber(temperatureF, 0)} °F`),
  speed: (speedMph) => shown(`${formatNumber(speedMph, 0)} mph`),
  evaporation: (rate) => shown(`${formatNumber(rate, 2)} lb/sq ft/h`),
  rainfall: (rainIn) => shown(`${formatNumber(rainIn, 2)} in`),
};

const metric: Show = {
  ...either,
  length: (lengthIn) => shown(`${formatNumber(inToM(lengthIn), 2)} m`),
  height: (heightIn) => shown(`${formatNumber(inToM(heightIn), 3)} m`),
  cut: (lengthIn) => shown(`${formatNumber(ceilToStep(inToMm(lengthIn), 1), 0)} mm`),
  size: (sizeIn) => shown(`${formatNumber(inToMm(sizeIn), 0)} mm`),
  fine: (sizeIn) => shown(`${formatNumber(inToMm(sizeIn), 0)} mm`),
  fineUp: (sizeIn) => shown(`${formatNumber(ceilToStep(inToMm(sizeIn), 1), 0)} mm`),
  fineDown: (sizeIn) => shown(`${formatNumber(floorToStep(inToMm(sizeIn), 1), 0)} mm`),
  run: (lengthFt) => shown(`${formatNumber(ftToM(lengthFt), 1)} m`),
  area: (areaSqFt) => shown(`${formatNumber(sqFtToSqM(areaSqFt), 1)} m²`),
  cover: (areaSqFtPerCuYd) => shown(formatNumber(sqFtToSqM(areaSqFtPerCuYd) / cuYdToCuM(1), 1)),
  volume: (volumeCuYd) => shown(`${formatNumber(cuYdToCuM(volumeCuYd), 2)} m³`),
  pour: (volumeCuYdPerHr) => shown(`${formatNumber(cuYdToCuM(volumeCuYdPerHr), 1)} m³`),
  volumes: (partsCuYd) =>
    hundredthsOf(partsCuYd.map(cuYdToCuM)).map((part) => shown(`${formatNumber(part, 2)} m³`)),
  weight: (weightLb) => shown(`${formatNumber(lbToKg(weightLb), 0)} kg`),
  leastWeight: (weightLb) => shown(`${formatNumber(ceilToStep(lbToKg(weightLb), 1), 0)} kg`),
  tons: (weightLb) => shown(`${formatNumber(lbToTonne(weightLb), 1)} t`),
  slope: (slope) => shown(`${formatNumber(slope * 1000, 0)} mm / m (${formatNumber(slope * 100, 1)} %)`),
  strength: (strengthPsi) => shown(`${formatNumber(psiToMpa(strengthPsi), 0)} MPa`),
  liquid: (volumeGal) => shown(`${formatNumber(galToL(volumeGal), 0)} L`),
  distance: (distanceMi) => shown(`${formatNumber(miToKm(distanceMi), 0)} km`),
  temperature: (temperatureF) => shown(`${formatNumber(fToC(temperatureF), 0)} °C`),
  speed: (speedMph) => shown(`${formatNumber(mphToKmPerHr(speedMph), 0)} km/h`),
  evaporation: (rate) => shown(`${formatNumber(lbPerSqFtToKgPerSqM(rate), 2)} kg/m²/h`),
  rainfall: (rainIn) => shown(`${formatNumber(inToMm(rainIn), 0)} mm`),
};

/** The way to show quantities of a job. */
export function showIn(system: UnitSystem): Show {
  return system === 'us' ? us : metric;
}

/**
 * Amounts of 0 or more in whole hundredths that add up to their sum in whole hundredths: each down,
 * then one more where most was cut off.
 */
function hundredthsOf(parts: readonly number[]): readonly number[] {
  const wanted = Math.round(round9(parts.reduce((sum, part) => sum + part, 0) * 100));
  const whole = parts.map((part) => Math.floor(round9(part * 100)));
  const cutOff = (index: number) => (parts[index] ?? 0) * 100 - (whole[index] ?? 0);
  const short = wanted - whole.reduce((sum, part) => sum + part, 0);
  const raised = new Set(
    parts
      .map((_, index) => index)
      .toSorted((one, other) => cutOff(other) - cutOff(one) || one - other)
      .slice(0, Math.max(0, short)),
  );
  return whole.map((part, index) => (part + (raised.has(index) ? 1 : 0)) / 100);
}

/** Drops float noise, so that 0.07 x 100 counts as a whole percent. */
function round9(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}
