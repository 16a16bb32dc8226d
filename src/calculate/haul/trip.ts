import type { Decimal } from 'decimal.js';
import { type Rate, roundToCent } from '../../units/index.ts';

/**
 * Hours of a round trip: loading + out + turn at the place + back.
 *
 * @throws {RangeError} If one of them is below 0.
 *
 * Source: the four terms of a published haul solution, scribd.com/document/472604844 (seen).
 */
export function tripHr(trip: {
  readonly loadingHr: number;
  readonly outHr: number;
  readonly turnHr: number;
  readonly backHr: number;
}): number {
  const { loadingHr, outHr, turnHr, backHr } = trip;
  if (!(loadingHr >= 0 && outHr >= 0 && turnHr >= 0 && backHr >= 0)) {
    throw new RangeError(`the parts of a trip must be 0 or more, got ${[loadingHr, outHr, turnHr, backHr]}`);
  }
  return loadingHr + outHr + turnHr + backHr;
}

/**
 * Round trips of so many loads out and so many loads of base in, where some ride back.
 *
 * @param trips.pairableCount Loads of base that may ride back on a trip out; the yard sells base and
 *   the trip is not before the day it may arrive.
 * @returns n_out + n_base - paired, with paired no more than either.
 * @throws {RangeError} If a count is not a whole number from 0.
 */
export function roundTripCount(trips: {
  readonly outCount: number;
  readonly baseCount: number;
  readonly pairableCount: number;
}): number {
  return trips.outCount + trips.baseCount - pairedCount(trips);
}

/** How many loads of base ride back. */
export function pairedCount(trips: {
  readonly outCount: number;
  readonly baseCount: number;
  readonly pairableCount: number;
}): number {
  const counts = [trips.outCount, trips.baseCount, trips.pairableCount];
  if (!counts.every((count) => Number.isInteger(count) && count >= 0)) {
    throw new RangeError(`counts must be whole numbers from 0, got ${counts}`);
  }
  return Math.min(...counts);
}

/**
 * Driver and truck over hours and miles, with fees, to the cent.
 *
 * @param drive.truck By the mile or the hour; by another unit it is refused where files are read.
 */
export function haulCostUsd(drive: {
  readonly feeUsd: Decimal;
  readonly hours: number;
  readonly miles: number;
  readonly laborUsdPerHr: Decimal;
  readonly truck: Rate;
}): Decimal {
  const { feeUsd, hours, miles, laborUsdPerHr, truck } = drive;
  const truckUsd = truck.amountUsd.times(truckIsByTheMile(truck) ? miles : hours);
  return roundToCent(feeUsd.plus(laborUsdPerHr.times(hours)).plus(truckUsd));
}

/** @throws {RangeError} If the truck is neither by the mile nor by the hour. */
export function truckIsByTheMile(truck: Rate): boolean {
  if (truck.perUnit !== 'mi' && truck.perUnit !== 'h') {
    throw new RangeError(`a truck costs by the mile or the hour, got ${truck.perUnit}`);
  }
  return truck.perUnit === 'mi';
}
