import { cuFtToCuYd, cuMToCuFt, mToFt, type Pace, rationalToNumber } from '../../units/index.ts';

/**
 * A pace of volume [yd³/h].
 *
 * @throws {RangeError} If it counts something else, which reading refuses.
 */
export function cuYdPerHr({ perHour, unit, text }: Pace): number {
  const amount = rationalToNumber(perHour);
  if (unit === 'yd3') return amount;
  if (unit === 'm3') return cuFtToCuYd(cuMToCuFt(amount));
  throw new RangeError(`concrete is placed by the volume, got ${text}`);
}

/**
 * A speed [ft/h].
 *
 * @throws {RangeError} If it counts something else, which reading refuses.
 */
export function ftPerHr({ perHour, unit, text }: Pace): number {
  const amount = rationalToNumber(perHour);
  if (unit === 'ft') return amount;
  if (unit === 'm') return mToFt(amount);
  throw new RangeError(`a way is counted by its length, got ${text}`);
}
