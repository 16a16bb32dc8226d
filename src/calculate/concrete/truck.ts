import type { Decimal } from 'decimal.js';
import { ceilToStep, floorToStep, roundToCent, Usd } from '../../units/index.ts';
import type { ConcreteSupplier } from '../job.ts';
import { usdPerCuYd } from '../usd-per-cu-yd.ts';
import { feeUsd } from './truck-fees.ts';

/** What a plant asks on the day of the pour; `saturdayFee` is null on any other day. */
export type TruckTerms = Pick<
  ConcreteSupplier,
  | 'price'
  | 'incrementCuYd'
  | 'truckCuYd'
  | 'shortLoadBelowCuYd'
  | 'shortLoadFeeUsd'
  | 'fuelFee'
  | 'saturdayFee'
> & {
  /** What waiting costs, spread over what is unloaded; not there where none is charged. */
  readonly waitUsdPerCuYd?: Decimal;
  /** Prices of what is added to this mix. */
  readonly additives?: ConcreteSupplier['additives'];
};

/** What an order costs, each line rounded half up to the cent. */
export type TruckCost = {
  readonly concreteUsd: Decimal;
  readonly additivesUsd: Decimal;
  readonly shortLoadUsd: Decimal;
  readonly fuelUsd: Decimal;
  readonly saturdayUsd: Decimal;
  readonly waitUsd: Decimal;
};

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
 * The lines of what an order costs.
 *
 * @param orderCuYd A multiple of the increment, 0 or more [yd³].
 * @throws {RangeError} As `truckLoadsCuYd`, or if a price is for something else than it can count.
 */
export function truckCost(orderCuYd: number, terms: TruckTerms): TruckCost {
  const order = { orderCuYd, loadCount: truckLoadsCuYd(orderCuYd, terms).length };
  return {
    concreteUsd: concreteUsdOf(orderCuYd, terms),
    additivesUsd: Object.values(terms.additives ?? {}).reduce<Decimal>(
      (sumUsd, price) => sumUsd.plus(feeUsd(price ?? null, order)),
      new Usd(0),
    ),
    shortLoadUsd: shortLoadFeesUsd(orderCuYd, terms),
    fuelUsd: feeUsd(terms.fuelFee, order),
    saturdayUsd: feeUsd(terms.saturdayFee, order),
    waitUsd: roundToCent(new Usd(terms.waitUsdPerCuYd ?? 0).times(orderCuYd)),
  };
}

function concreteUsdOf(orderCuYd: number, terms: TruckTerms): Decimal {
  return roundToCent(usdPerCuYd(terms.price).times(orderCuYd));
}

/** The sum of the lines of what an order costs. */
export function truckOrderCostUsd(orderCuYd: number, terms: TruckTerms): Decimal {
  const lines = truckCost(orderCuYd, terms);
  return Object.values(lines).reduce((sumUsd, lineUsd) => sumUsd.plus(lineUsd), new Usd(0));
}

/**
 * The cheapest order that is enough; of two that cost the same, the smaller one.
 *
 * @param neededCuYd [yd³], 0 or more.
 * @returns A multiple of the increment [yd³].
 * @throws {RangeError} As `truckOrderCostUsd`.
 *
 * Usually the needed amount up to the increment. Where a short-load fee is due, more concrete can
 * cost less: every increment is tried up to a whole truck more, past which one more load with its own
 * fees has come and none has gone.
 */
export function cheapestTruckOrder(neededCuYd: number, terms: TruckTerms): number {
  if (!(neededCuYd >= 0)) throw new RangeError(`neededCuYd must be 0 or more, got ${neededCuYd}`);
  const stepCuYd = terms.incrementCuYd;
  const leastCuYd = ceilToStep(neededCuYd, stepCuYd);
  if (leastCuYd === 0) return 0;

  const moreSteps = Math.round(
    ceilToStep(Math.max(terms.truckCuYd, terms.shortLoadBelowCuYd), stepCuYd) / stepCuYd,
  );
  let best = { orderCuYd: leastCuYd, costUsd: truckOrderCostUsd(leastCuYd, terms) };
  for (let steps = 1; steps <= moreSteps; steps += 1) {
    const orderCuYd = ceilToStep(leastCuYd + steps * stepCuYd, stepCuYd);
    // No fee is below 0: once the concrete alone costs as much, neither it nor any larger order is cheaper.
    if (!concreteUsdOf(orderCuYd, terms).lt(best.costUsd)) break;
    const costUsd = truckOrderCostUsd(orderCuYd, terms);
    if (costUsd.lt(best.costUsd)) best = { orderCuYd, costUsd };
  }
  return best.orderCuYd;
}

function stepsIn(orderCuYd: number, stepCuYd: number): number {
  if (!(orderCuYd >= 0)) throw new RangeError(`orderCuYd must be 0 or more, got ${orderCuYd}`);
  const steps = Math.round(orderCuYd / stepCuYd);
  if (Math.abs(steps * stepCuYd - orderCuYd) > stepCuYd / 1e6) {
    throw new RangeError(`orderCuYd must be a multiple of ${stepCuYd}, got ${orderCuYd}`);
  }
  return steps;
}
