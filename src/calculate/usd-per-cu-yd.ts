import type { Decimal } from 'decimal.js';
import { cuFtPerCuYd, cuMPerCuFt, multiplyR, type Rate, rationalToDecimal, Usd } from '../units/index.ts';

/**
 * A price for a volume as a price for a yd³: exact, so billing through it is billing in the quoted unit.
 *
 * @throws {RangeError} If the price is for something else than a volume.
 */
export function usdPerCuYd(price: Rate): Decimal {
  const amountUsd = new Usd(price.amountUsd);
  switch (price.perUnit) {
    case 'yd3':
      return amountUsd;
    case 'cu ft':
      return amountUsd.times(27);
    case 'm3':
      return amountUsd.times(rationalToDecimal(multiplyR(cuFtPerCuYd, cuMPerCuFt)));
    default:
      throw new RangeError(`concrete is priced for a volume, got ${price.text}`);
  }
}
