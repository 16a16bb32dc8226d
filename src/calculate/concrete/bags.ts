import type { Decimal } from 'decimal.js';
import { ceilCount, cuYdToCuFt, roundToCent, Usd } from '../../units/index.ts';

/**
 * Bags of dry mix for a volume.
 *
 * @param made.neededCuYd [yd³], 0 or more.
 * @param made.yieldCuFt  Of one bag [cu ft], above 0.
 * @throws {RangeError} If a value is outside its range.
 *
 * n = ceil(27 V / yield)
 *
 * @example bagCount({ neededCuYd: 1, yieldCuFt: 0.6 }) // 45
 */
export function bagCount(made: { neededCuYd: number; yieldCuFt: number }): number {
  const { neededCuYd, yieldCuFt } = made;
  if (!(neededCuYd >= 0 && neededCuYd < Infinity)) {
    throw new RangeError(`neededCuYd must be 0 or more, got ${neededCuYd}`);
  }
  if (!(yieldCuFt > 0 && yieldCuFt < Infinity))
    throw new RangeError(`yieldCuFt must be above 0, got ${yieldCuFt}`);
  return ceilCount(cuYdToCuFt(neededCuYd) / yieldCuFt);
}

/**
 * Bags and the labor that mixes them, rounded once, half up to the cent.
 *
 * @throws {RangeError} If a value is below 0 or not finite.
 */
export function baggedCostUsd(made: {
  bagCount: number;
  usdPerBag: Decimal;
  mixingHr: number;
  laborUsdPerHr: Decimal;
}): Decimal {
  const { bagCount: count, usdPerBag, mixingHr, laborUsdPerHr } = made;
  for (const [name, value] of Object.entries({ bagCount: count, usdPerBag, mixingHr, laborUsdPerHr })) {
    const exact = new Usd(value);
    if (!(exact.isFinite() && exact.gte(0))) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
  const bagsUsd = new Usd(usdPerBag).times(count);
  return roundToCent(bagsUsd.plus(new Usd(laborUsdPerHr).times(mixingHr)));
}
