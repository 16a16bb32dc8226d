import type { Decimal } from 'decimal.js';
import {
  cuFtPerCuYd,
  cuMPerCuFt,
  multiplyR,
  type Rate,
  rationalToDecimal,
  roundToCent,
  Usd,
} from '../../units/index.ts';

/**
 * A fee of a supplier on an order, rounded half up to the cent.
 *
 * @param fee   By the load, or by the volume.
 * @param order.orderCuYd [yd³], 0 or more.
 * @param order.loadCount Whole number, 0 or more.
 * @throws {RangeError} If the fee is by something else.
 */
export function feeUsd(
  fee: Rate | null,
  order: { readonly orderCuYd: number; readonly loadCount: number },
): Decimal {
  if (fee === null) return new Usd(0);
  if (fee.perUnit === 'load') return roundToCent(new Usd(fee.amountUsd).times(order.loadCount));
  return roundToCent(usdPerCuYd(fee).times(order.orderCuYd));
}

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
