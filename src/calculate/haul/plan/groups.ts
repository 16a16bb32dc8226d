import { costKey, KEYS_PER_STEP } from './cost-key.ts';
import { capacityLb } from './options.ts';
import type { PlanBase, PlanProblem } from './problem.ts';
import type { Greatest, MostTime, Sum, TripKind } from './together.ts';
import { awayHr, outHr, swapSavesHr } from './working.ts';

/* The costs of a problem that trips have together, and the time that they take. */

const SEC_PER_HR = 3600;
/** Weights are quarters, so that a price of four steps keeps them whole. */
export const QUARTERS = 4;

export function costsTogether(problem: PlanProblem): readonly Greatest[] {
  const { base, streams } = problem;
  return [
    ...(streams.length > 0 && swapSavesHr(problem) > 0 ? [waitedFor(problem)] : []),
    ...(base === null ? [] : [boughtBase(problem, base)]),
  ];
}

/**
 * Loads for which the truck waits: the first one, and those that no other trailer comes between. Of n
 * loads in the best order, m of them on the trailer that has most: max(1, 2 m - n), the greatest of 1
 * and of the loads of each trailer less all others.
 */
function waitedFor(problem: PlanProblem): Greatest {
  const { trailers, rates } = problem;
  const savesHr = swapSavesHr(problem);
  const step = QUARTERS * KEYS_PER_STEP;
  return {
    keyEach: Math.round(costKey(savesHr * (rates.driverUsdPerHr + rates.truckUsdPerHr), 0) / step) * step,
    secEach: Math.round(savesHr * SEC_PER_HR),
    sums: [
      { start: 1, ofTrip: () => 0, ofDelivery: 0 },
      ...trailers.map(
        ({ id }): Sum => ({
          start: 0,
          ofTrip: ({ trailer, isOut }) => (isOut ? (id === trailer.id ? 1 : -1) : 0),
          ofDelivery: 0,
        }),
      ),
    ],
  };
}

/**
 * Base, bought the cheapest first: the greatest, over each price there is, of all base at this price less
 * what each load saves against it. What a load has paid for with its minimum is free: a price of 0.
 */
function boughtBase({ places }: PlanProblem, base: PlanBase): Greatest {
  const selling = places.filter(({ sellsBase }) => sellsBase);
  const hasMinimum = selling.some(({ baseMinimumUsd }) => baseMinimumUsd > 0);
  const prices = new Set([base.usdPerLb, ...selling.map((place) => place.baseUsdPerLb)]);
  if (hasMinimum) prices.add(0);
  const delivered = { mostLb: base.deliveryLb, usdPerLb: base.usdPerLb, minimumUsd: 0 };
  return {
    keyEach: 1,
    secEach: 0,
    sums: [...prices].map((price) => ({
      start: costKey(price * base.weightLb, 0),
      ofTrip: (trip) => boughtKey(price, offerOf(trip, base)),
      ofDelivery: boughtKey(price, delivered),
    })),
  };
}

type Offer = { readonly mostLb: number; readonly usdPerLb: number; readonly minimumUsd: number };

function offerOf({ trailer, place, withBase }: TripKind, base: PlanBase): Offer {
  return withBase
    ? {
        mostLb: capacityLb(trailer, base.looseLbPerCuYd),
        usdPerLb: place.baseUsdPerLb,
        minimumUsd: place.baseMinimumUsd,
      }
    : { mostLb: 0, usdPerLb: 0, minimumUsd: 0 };
}

/** What is paid for all of an offer that is worth it at such a price of base, less what that is worth. */
function boughtKey(price: number, { mostLb, usdPerLb, minimumUsd }: Offer): number {
  const paidLb = usdPerLb > 0 ? Math.min(mostLb, minimumUsd / usdPerLb) : mostLb;
  const takenLb = price >= usdPerLb ? mostLb : paidLb;
  return costKey(Math.max(minimumUsd, usdPerLb * takenLb) - price * takenLb, 0);
}

/** Null where nothing limits it. */
export function mostTime(problem: PlanProblem, keyPerSec: number): MostTime | null {
  const { mostHr, mostTrailerHr, trailers } = problem;
  if (mostHr === null && mostTrailerHr === null) return null;
  const secOf = (hours: number | null) =>
    hours === null ? Number.MAX_SAFE_INTEGER : Math.floor(hours * SEC_PER_HR);
  const all = { mostSec: secOf(mostHr), ofTripSec: (trip: TripKind) => tripSec(problem, trip) };
  const own = trailers.map(({ id }) => ({
    mostSec: secOf(mostTrailerHr),
    ofTripSec: (trip: TripKind) => (trip.trailer.id === id ? tripSec(problem, trip) : 0),
  }));
  return {
    keyPerSec: mostHr === null ? 0 : keyPerSec,
    limits: [all, ...(mostTrailerHr === null ? [] : own)],
  };
}

/** Of the driver, without what he waits for a load where trailers are swapped. */
export function tripSec(problem: PlanProblem, { place, withBase, isOut }: TripKind): number {
  return Math.round((isOut ? outHr(problem, place, withBase) : awayHr(place, false)) * SEC_PER_HR);
}

/** None, and some times what an hour costs. */
export function timePrices({ rates }: PlanProblem): readonly number[] {
  const hourUsd = Math.max(1, rates.driverUsdPerHr + rates.truckUsdPerHr);
  return [0, 0.5, 1, 2, 4, 8, 16].map(
    (times) => Math.round(costKey((times * hourUsd) / SEC_PER_HR, 0) / KEYS_PER_STEP) * KEYS_PER_STEP,
  );
}
