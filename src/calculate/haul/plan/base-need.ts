import { CENT_KEY, costKey, KIND_KEY } from './cost-key.ts';
import type { BaseNeed } from './frontier.ts';
import type { PlanLimits } from './limits.ts';
import { capacityLb, fetchUsd } from './options.ts';
import type { PlanBase, PlanPlace, PlanProblem } from './problem.ts';

const LB_PER_TON = 2000;
const NOISE_LB = 1e-6;

const NO_NEED: BaseNeed = {
  needLb: 0,
  roomLb: 0,
  bringKey: () => 0,
  gainKey: 0,
  crowdedKey: 0,
  worthKeyPerLb: 0,
  leastLoadLb: Number.POSITIVE_INFINITY,
  mostLoadLb: 0,
};

/** What is wanted of base on trips that carry something out, and what it is worth there. */
export function baseNeedOf(problem: PlanProblem, limits: PlanLimits): BaseNeed {
  const { base, trailers, places } = problem;
  if (base === null || trailers.length === 0) return NO_NEED;
  const selling = places.filter(({ sellsBase }) => sellsBase);
  const loadsLb = trailers.map((trailer) => capacityLb(trailer, base.looseLbPerCuYd));
  const kinds = kindsOf(problem, base, selling);
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
    gainKey: Math.max(0, ...selling.map((place) => gainKeyOf(problem, place))),
    leastLoadLb: Math.min(...loadsLb),
    mostLoadLb: Math.max(...loadsLb),
  };
}

type Kind = { readonly eachKey: number; readonly eachLb: number };

/** A delivery, and a trip of each trailer to the place that is cheapest to fetch from. */
function kindsOf(problem: PlanProblem, base: PlanBase, selling: readonly PlanPlace[]): readonly Kind[] {
  const nearestKey = Math.min(...selling.map((place) => costKey(fetchUsd(problem, place), 1) + KIND_KEY));
  return [
    { eachKey: costKey(base.deliveryUsd, 0) + KIND_KEY, eachLb: base.deliveryLb },
    ...problem.trailers.map((trailer) => ({
      eachKey: nearestKey,
      eachLb: capacityLb(trailer, base.looseLbPerCuYd),
    })),
  ];
}

/** What so much costs at the most: by the cheapest kind alone. */
function bringKeyOf(kinds: readonly Kind[]): (weightLb: number) => number {
  return (weightLb) => {
    let leastKey = Number.POSITIVE_INFINITY;
    for (const { eachKey, eachLb } of kinds) {
      leastKey = Math.min(leastKey, Math.ceil((weightLb - NOISE_LB) / eachLb) * eachKey);
    }
    return leastKey;
  };
}

/** The most that base on the way back may save of a trip to this place; at least 1 where it costs nothing. */
function gainKeyOf({ trailers, rates }: PlanProblem, place: PlanPlace): number {
  const { tariff, tariffWithBase, turnHr } = place;
  const mostTon = Math.max(...trailers.map(({ payloadLb }) => payloadLb)) / LB_PER_TON;
  const mostCuYd = Math.max(...trailers.map(({ boxCuYd }) => boxCuYd));
  const savedUsd =
    Math.max(0, tariff.usdPerLoad - tariffWithBase.usdPerLoad) +
    Math.max(0, tariff.usdPerTon - tariffWithBase.usdPerTon) * mostTon +
    Math.max(0, tariff.usdPerCuYd - tariffWithBase.usdPerCuYd) * mostCuYd;
  const gainKey = costKey(savedUsd - turnHr * (rates.driverUsdPerHr + rates.truckUsdPerHr), 0);
  return gainKey < -CENT_KEY ? 0 : Math.max(1, gainKey);
}
