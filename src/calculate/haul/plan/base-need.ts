import { CENT_KEY, costKey, KIND_KEY } from './cost-key.ts';
import type { BaseNeed } from './frontier.ts';
import type { PlanLimits } from './limits.ts';
import { capacityLb, fetchUsd } from './options.ts';
import type { PlanBase, PlanPlace, PlanProblem } from './problem.ts';
import type { Share, Together } from './together.ts';
import { outHr } from './working.ts';

const LB_PER_TON = 2000;
const NOISE_LB = 1e-6;

const NO_NEED: Omit<BaseNeed, 'together'> = {
  needLb: 0,
  roomLb: 0,
  bringKey: () => 0,
  gainKey: 0,
  crowdedKey: 0,
  worthKeyPerLb: 0,
  leastLoadLb: Number.POSITIVE_INFINITY,
  mostLoadLb: 0,
  mostBringLb: 0,
};

/** What is wanted of base on trips that carry something out, and what it is worth there. */
export function baseNeedOf(problem: PlanProblem, limits: PlanLimits, together: Together): BaseNeed {
  const { base, trailers, places } = problem;
  if (base === null || trailers.length === 0) return { ...NO_NEED, together };
  const selling = places.filter(({ sellsBase }) => sellsBase);
  const loadsLb = trailers.map((trailer) => capacityLb(trailer, base.looseLbPerCuYd));
  const kinds = kindsOf(problem, base, selling, together);
  const roomLb = base.roomLb ?? Number.POSITIVE_INFINITY;
  const bringKey = limits.holdsBase ? () => Number.POSITIVE_INFINITY : bringKeyOf(kinds);
  // No trips with base bring more than the need and a load: only less room than that can be too little.
  const crowdedLb = Math.min(base.weightLb + Math.max(...loadsLb) - roomLb, Math.max(...loadsLb));
  return {
    needLb: base.weightLb,
    roomLb,
    bringKey,
    crowdedKey: crowdedLb > 0 ? bringKey(crowdedLb) : 0,
    worthKeyPerLb: Math.min(...kinds.map(({ eachKey, eachLb }) => eachKey / eachLb)),
    gainKey: Math.max(0, ...selling.map((place) => gainKeyOf(problem, place, together))),
    leastLoadLb: Math.min(...loadsLb),
    mostLoadLb: Math.max(...loadsLb),
    mostBringLb: Math.max(...loadsLb, base.deliveryLb),
    together,
  };
}

/** One way to bring base by itself: what it counts for in the keys, and what it may cost at the most. */
type Kind = { readonly eachKey: number; readonly mostKey: number; readonly eachLb: number };

/** A delivery, and a trip of each trailer to each place. */
function kindsOf(
  problem: PlanProblem,
  base: PlanBase,
  selling: readonly PlanPlace[],
  together: Together,
): readonly Kind[] {
  const kind = (ownKey: number, { key, tally }: Share, eachLb: number): Kind => {
    const eachKey = ownKey + KIND_KEY + key;
    return { eachKey, mostKey: eachKey + together.headStartKey(tally, together.none), eachLb };
  };
  return [
    kind(costKey(base.deliveryUsd, 0), together.ofDelivery, base.deliveryLb),
    ...problem.trailers.flatMap((trailer) =>
      selling.map((place) =>
        kind(
          costKey(fetchUsd(problem, place), 1),
          together.ofTrip({ trailer, place, withBase: true, isOut: false }),
          capacityLb(trailer, base.looseLbPerCuYd),
        ),
      ),
    ),
  ];
}

/** What so much costs at the most: by the cheapest kind alone. */
function bringKeyOf(kinds: readonly Kind[]): (weightLb: number) => number {
  return (weightLb) => {
    let leastKey = Number.POSITIVE_INFINITY;
    for (const { mostKey, eachLb } of kinds) {
      leastKey = Math.min(leastKey, Math.ceil((weightLb - NOISE_LB) / eachLb) * mostKey);
    }
    return leastKey;
  };
}

/** The most that base on the way back may save of a trip to this place; at least 1 where it costs nothing. */
function gainKeyOf(problem: PlanProblem, place: PlanPlace, together: Together): number {
  const { trailers, rates } = problem;
  const { tariff, tariffWithBase } = place;
  const mostTon = Math.max(...trailers.map(({ payloadLb }) => payloadLb)) / LB_PER_TON;
  const mostCuYd = Math.max(...trailers.map(({ boxCuYd }) => boxCuYd));
  const savedUsd =
    Math.max(0, tariff.usdPerLoad - tariffWithBase.usdPerLoad) +
    Math.max(0, tariff.usdPerTon - tariffWithBase.usdPerTon) * mostTon +
    Math.max(0, tariff.usdPerCuYd - tariffWithBase.usdPerCuYd) * mostCuYd;
  const moreHr = outHr(problem, place, true) - outHr(problem, place, false);
  const emptiedKeys = trailers.map((trailer) => {
    const empty = together.ofTrip({ trailer, place, withBase: false, isOut: true });
    const laden = together.ofTrip({ trailer, place, withBase: true, isOut: true });
    return empty.key - laden.key + together.headStartKey(empty.tally, laden.tally);
  });
  const gainKey =
    costKey(savedUsd - moreHr * (rates.driverUsdPerHr + rates.truckUsdPerHr), 0) + Math.max(...emptiedKeys);
  return gainKey < -CENT_KEY ? 0 : Math.max(1, gainKey);
}
