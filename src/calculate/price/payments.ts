import { floorToCent, splitByLargestRemainder, Usd } from '../../units/index.ts';
import type { Price } from './money.ts';

/** Decimals at which a share of a dollar is taken as meant: 9600 / 3 is 3200, not 3199.99999. */
const MEANT_DECIMALS = 8;

/**
 * The payments, which add up to the total exactly.
 *
 * The first is cut down to the cent, since it is the deposit and a cap on a deposit is not to be
 * passed by a cent; the rest of the total goes to the others by largest remainder.
 *
 * @param total       The sum of the lines shown.
 * @param shareRatios Shares of the total, at least one above 0; one payment takes it all.
 */
export function splitPayments(total: Price, shareRatios: readonly number[]): readonly Price[] {
  const [firstRatio, ...otherRatios] = shareRatios;
  if (firstRatio === undefined || !otherRatios.some((ratio) => ratio > 0)) {
    return shareRatios.map((_, index) => (index === 0 ? total : (new Usd(0) as Price)));
  }
  const first = floorToCent(new Usd(total).times(firstRatio).toDecimalPlaces(MEANT_DECIMALS));
  const others = splitByLargestRemainder(
    new Usd(total).minus(first),
    otherRatios.map((ratio) => new Usd(ratio)),
  );
  return [first, ...others] as Price[];
}
