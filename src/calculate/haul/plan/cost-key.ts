/*
 * Costs are compared as whole thousandths of a cent, with the count of trips behind them and the count
 * of different kinds of trips behind that, in one number: sums of them are exact, and of two plans that
 * cost the same the one with fewer trips is less, and then the one with fewer changes of trailer or place.
 */

const STEPS_PER_USD = 1e5;
/** Of a thousandth of a cent; parts of costs that are whole multiples of it leave the counts alone. */
export const KEYS_PER_STEP = 1e6;
const KEYS_PER_TRIP = 1e3;

/** What one more kind of trip, or a delivery, counts among equal costs. */
export const KIND_KEY = 1;
/** A cent: more than any sum of roundings. */
export const CENT_KEY = (STEPS_PER_USD / 100) * KEYS_PER_STEP;

export function costKey(usd: number, tripCount: number): number {
  return Math.round(usd * STEPS_PER_USD) * KEYS_PER_STEP + tripCount * KEYS_PER_TRIP;
}

export function usdOfKey(key: number): number {
  return Math.floor(key / KEYS_PER_STEP) / STEPS_PER_USD;
}

export function tripsOfKey(key: number): number {
  return Math.floor((key % KEYS_PER_STEP) / KEYS_PER_TRIP);
}
