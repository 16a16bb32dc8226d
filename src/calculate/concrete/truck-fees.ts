import type { Decimal } from 'decimal.js';
import { type Rate, roundToCent, Usd } from '../../units/index.ts';
import { usdPerCuYd } from '../usd-per-cu-yd.ts';

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
