import { ceilCount, floorToStep } from '../../units/index.ts';

/**
 * Loads that a weight and a loose volume take: whichever asks for more.
 *
 * @param what.weightLb   0 or more [lb].
 * @param what.looseCuYd  0 or more [yd3].
 * @param what.payloadLb  Above 0 [lb].
 * @param what.boxCuYd    Above 0, level full [yd3].
 * @throws {RangeError} If a value is outside its range.
 *
 * n = max(ceil(W / P), ceil(V / B)), with no load more for the noise of floating point.
 * Common practice; both limits hold.
 *
 * @example loadCount({ weightLb: 25_000, looseCuYd: 9.877, payloadLb: 7_300, boxCuYd: 3.33 }) // 4
 */
export function loadCount(what: {
  readonly weightLb: number;
  readonly looseCuYd: number;
  readonly payloadLb: number;
  readonly boxCuYd: number;
}): number {
  const { weightLb, looseCuYd, payloadLb, boxCuYd } = what;
  if (!(weightLb >= 0)) throw new RangeError(`weightLb must be 0 or more, got ${weightLb}`);
  if (!(looseCuYd >= 0)) throw new RangeError(`looseCuYd must be 0 or more, got ${looseCuYd}`);
  if (!(payloadLb > 0)) throw new RangeError(`payloadLb must be above 0, got ${payloadLb}`);
  if (!(boxCuYd > 0)) throw new RangeError(`boxCuYd must be above 0, got ${boxCuYd}`);
  return Math.max(ceilCount(weightLb / payloadLb), ceilCount(looseCuYd / boxCuYd));
}

/**
 * The loose unit weight at which payload and box are full together: g* = P / B. What is heavier is
 * held back by its weight, what is lighter by the box.
 *
 * @returns [lb/yd3].
 */
export function boxLimitLbPerCuYd(payloadLb: number, boxCuYd: number): number {
  if (!(payloadLb > 0 && boxCuYd > 0)) {
    throw new RangeError(`payload and box must be above 0, got ${payloadLb} lb and ${boxCuYd} yd3`);
  }
  return payloadLb / boxCuYd;
}

/**
 * Square feet that one load takes: A = floorStep(min(P, 27 B g) / w, s), by weight and by the box.
 *
 * @param load.looseLbPerCuFt  Loose unit weight g [lb/cu ft].
 * @param load.weightLbPerSqFt Of the slab, w [lb/sq ft].
 * @param load.stepSqFt        What a chalk line tells apart, s; above 0 [sq ft].
 * @returns Whole steps [sq ft].
 */
export function sqFtPerLoad(load: {
  readonly payloadLb: number;
  readonly boxCuYd: number;
  readonly looseLbPerCuFt: number;
  readonly weightLbPerSqFt: number;
  readonly stepSqFt: number;
}): number {
  const { payloadLb, boxCuYd, looseLbPerCuFt, weightLbPerSqFt, stepSqFt } = load;
  if (!(weightLbPerSqFt > 0)) throw new RangeError(`weightLbPerSqFt must be above 0, got ${weightLbPerSqFt}`);
  return floorToStep(Math.min(payloadLb, boxCuYd * 27 * looseLbPerCuFt) / weightLbPerSqFt, stepSqFt);
}

/** Volume of a weight: V = W / g, at one unit weight of one state [yd3]. */
export function volumeOfWeightCuYd(weightLb: number, lbPerCuYd: number): number {
  if (!(weightLb >= 0)) throw new RangeError(`weightLb must be 0 or more, got ${weightLb}`);
  if (!(lbPerCuYd > 0)) throw new RangeError(`lbPerCuYd must be above 0, got ${lbPerCuYd}`);
  return weightLb / lbPerCuYd;
}

/** Weight of a volume: W = V g, at one unit weight of one state [lb]. */
export function weightOfVolumeLb(volumeCuYd: number, lbPerCuYd: number): number {
  if (!(volumeCuYd >= 0)) throw new RangeError(`volumeCuYd must be 0 or more, got ${volumeCuYd}`);
  if (!(lbPerCuYd > 0)) throw new RangeError(`lbPerCuYd must be above 0, got ${lbPerCuYd}`);
  return volumeCuYd * lbPerCuYd;
}

/**
 * A weight in equal loads, all but one in whole steps, that add up to it exactly in doubles.
 *
 * @param loadsCount Whole, 1 or more.
 * @param stepLb     A whole pound, or a power of two of one; both keep the sum exact.
 * @returns The fuller loads first.
 * @throws {RangeError} If the weight is below 0, the count not a whole number from 1, or the step not above 0.
 *
 * @example splitWeightLb(25_000, 3, 1) // [8334, 8333, 8333]
 */
export function splitWeightLb(weightLb: number, loadsCount: number, stepLb: number): number[] {
  if (!(weightLb >= 0 && weightLb < Infinity)) {
    throw new RangeError(`weightLb must be 0 or more, got ${weightLb}`);
  }
  if (!(Number.isInteger(loadsCount) && loadsCount >= 1)) {
    throw new RangeError(`loadsCount must be a whole number from 1, got ${loadsCount}`);
  }
  if (!(stepLb > 0)) throw new RangeError(`stepLb must be above 0, got ${stepLb}`);
  const evenLb = Math.floor(weightLb / loadsCount / stepLb) * stepLb;
  const restLb = weightLb - evenLb * loadsCount;
  const fullerCount = Math.min(Math.floor(restLb / stepLb), loadsCount - 1);
  const loads = Array.from({ length: loadsCount - 1 }, (_, index) =>
    index < fullerCount ? evenLb + stepLb : evenLb,
  );
  return [...loads, weightLb - loads.reduce((sum, loadLb) => sum + loadLb, 0)];
}
