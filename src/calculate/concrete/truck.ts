import type { Decimal } from 'decimal.js';
import {
  ceilToStep,
  cuFtPerCuYd,
  cuMPerCuFt,
  floorToStep,
  multiplyR,
  type Rate,
  rationalToDecimal,
  roundToCent,
  Usd,
} from '../../units/index.ts';
import type { ConcreteSupplier } from '../job.ts';

export type TruckTerms = Pick<
  ConcreteSupplier,
  'price' | 'incrementCuYd' | 'truckCuYd' | 'shortLoadBelowCuYd' | 'shortLoadFeeUsd'
>;

/**
 * The loads of an order, largest first, as few as the trucks allow.
 *
 * @param orderCuYd A multiple of the increment, 0 or more [yd³].
 * @returns Loads [yd³], each a multiple of the increment; their sum is the order.
 * @throws {RangeError} If the order is below 0 or no multiple, or a truck holds less than an increment.
 *
 * As even as the increment allows. Where that would leave several loads short, all but the last
 * are brought up to where no fee is due: with as few loads as possible one at most stays short.
 *
 * @example 9.5 yd³ in trucks of 9 with a fee below 5: [5, 4.5], not twice 4.75
 */
export function truckLoadsCuYd(orderCuYd: number, terms: TruckTerms): number[] {
  const stepCuYd = terms.incrementCuYd;
  const orderSteps = stepsIn(orderCuYd, stepCuYd);
  const truckSteps = Math.round(floorToStep(terms.truckCuYd, stepCuYd) / stepCuYd);
  if (!(truckSteps >= 1)) {
    throw new RangeError(
      `a truck of ${terms.truckCuYd} yd3 holds less than the increment of ${stepCuYd} yd3`,
    );
  }
  if (orderSteps === 0) return [];
  const loadCount = Math.ceil(orderSteps / truckSteps);
  const enoughSteps = Math.round(ceilToStep(terms.shortLoadBelowCuYd, stepCuYd) / stepCuYd);

  const evenSteps = Math.floor(orderSteps / loadCount);
  const fuller = orderSteps % loadCount;
  const isOnlyLastShort = loadCount > 1 && evenSteps < enoughSteps && enoughSteps <= truckSteps;
  const loads = Array.from({ length: loadCount }, (_, index) => {
    if (!isOnlyLastShort) return evenSteps + (index < fuller ? 1 : 0);
    return index < loadCount - 1 ? enoughSteps : orderSteps - enoughSteps * (loadCount - 1);
  });
  // Through ceilToStep for its 15 digits: 7 steps of 0.1 are 0.7.
  return loads.map((loadSteps) => ceilToStep(loadSteps * stepCuYd, stepCuYd));
}

/**
 * Fees for the loads of an order that are below the supplier's limit.
 *
 * @throws {RangeError} As `truckLoadsCuYd`.
 */
export function shortLoadFeesUsd(orderCuYd: number, terms: TruckTerms): Decimal {
  const shortCount = truckLoadsCuYd(orderCuYd, terms).filter(
    (loadCuYd) => loadCuYd < terms.shortLoadBelowCuYd - terms.incrementCuYd / 1e6,
  ).length;
  return roundToCent(new Usd(terms.shortLoadFeeUsd).times(shortCount));
}

/**
 * What an order costs: the concrete and the fees for short loads, rounded once, half up to the cent.
 *
 * @param orderCuYd A multiple of the increment, 0 or more [yd³].
 * @throws {RangeError} As `truckLoadsCuYd`, or if the price is for something else than a volume.
 */
export function truckOrderCostUsd(orderCuYd: number, terms: TruckTerms): Decimal {
  const concreteUsd = usdPerCuYd(terms.price).times(orderCuYd);
  return roundToCent(concreteUsd.plus(shortLoadFeesUsd(orderCuYd, terms)));
}

/**
 * The cheapest order that is enough; of two that cost the same, the smaller one.
 *
 * @param neededCuYd [yd³], 0 or more.
 * @returns A multiple of the increment [yd³].
 * @throws {RangeError} As `truckOrderCostUsd`.
 *
 * Usually the needed amount up to the increment. Where a short-load fee is due, more concrete can
 * cost less: the least that makes no load short is at most the short-load limit away, so every
 * increment up to there is tried.
 */
export function cheapestTruckOrder(neededCuYd: number, terms: TruckTerms): number {
  if (!(neededCuYd >= 0)) throw new RangeError(`neededCuYd must be 0 or more, got ${neededCuYd}`);
  const stepCuYd = terms.incrementCuYd;
  const leastCuYd = ceilToStep(neededCuYd, stepCuYd);
  if (leastCuYd === 0) return 0;

  const moreSteps = Math.round(ceilToStep(terms.shortLoadBelowCuYd, stepCuYd) / stepCuYd);
  let best = { orderCuYd: leastCuYd, costUsd: truckOrderCostUsd(leastCuYd, terms) };
  for (let steps = 1; steps <= moreSteps; steps += 1) {
    const orderCuYd = ceilToStep(leastCuYd + steps * stepCuYd, stepCuYd);
    const costUsd = truckOrderCostUsd(orderCuYd, terms);
    if (costUsd.lt(best.costUsd)) best = { orderCuYd, costUsd };
  }
  return best.orderCuYd;
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

function stepsIn(orderCuYd: number, stepCuYd: number): number {
  if (!(orderCuYd >= 0)) throw new RangeError(`orderCuYd must be 0 or more, got ${orderCuYd}`);
  const steps = Math.round(orderCuYd / stepCuYd);
  if (Math.abs(steps * stepCuYd - orderCuYd) > stepCuYd / 1e6) {
    throw new RangeError(`orderCuYd must be a multiple of ${stepCuYd}, got ${orderCuYd}`);
  }
  return steps;
}
