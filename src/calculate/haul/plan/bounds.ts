import { CENT_KEY, costKey } from './cost-key.ts';
import type { Cover } from './covers.ts';
import { type BaseNeed, mayStillBeNeeded } from './frontier.ts';
import type { PlanLimits } from './limits.ts';
import { keyOfWeight, type Option } from './options.ts';
import type { PlanStream } from './problem.ts';
import { type SharedOption, sharedKeyPerLb } from './shared-options.ts';
import { plusTally, type Tally } from './together.ts';

/*
 * What can be left out before anything is combined. Each pound of base is given a price; then every
 * stream has a cheapest cover of its own, and together they cost no more than any plan does. A plan
 * that is there already costs so much more than that, and a cover that is further from the cheapest
 * of its stream than that is in no better plan.
 */

/** How far from the cheapest everything of the best plan is at most, at one price of base. */
export type Bounds = {
  /** Of a pound of base. */
  readonly baseKeyPerLb: number;
  /** Of each stream: the least that covering it costs, less the base that it brings. */
  readonly leastKeys: readonly number[];
  readonly slackKey: number;
  /** All of them together with the base: no plan costs less. */
  readonly sumKey: number;
  readonly noiseKey: number;
};

/** Of a stream: a cover with what its rest costs at the least on a shared load, at a price of base. */
export type PricedCover = Cover & { readonly restKeyAt: (baseKeyPerLb: number) => number };

const PRICE_STEPS = 12;

/** What base costs that no trip with rubble brings, with what all trips cost together; infinite where it cannot come. */
export type RestKeyOf = (restLb: number, tally: Tally) => number;

/** @returns null where some stream has no cover at all. */
export function boundsOf(made: {
  readonly covers: readonly (readonly PricedCover[])[];
  readonly base: BaseNeed;
  readonly restKeyOf: RestKeyOf;
  readonly limits: PlanLimits;
}): Bounds | null {
  const { covers, base, limits } = made;
  if (covers.some((ofStream) => ofStream.length === 0)) return null;
  return boundsBy(base, {
    knownKeyAt: (price) => Math.min(mostKeyOf(limits, base), planKeyAt(price, made)),
    leastKeysAt: (price) => covers.map((ofStream) => leastKeyOfCovers(ofStream, price)),
  });
}

/** The price at which the streams together cost the most. */
function boundsBy(
  base: BaseNeed,
  at: {
    readonly knownKeyAt: (baseKeyPerLb: number) => number;
    readonly leastKeysAt: (baseKeyPerLb: number) => readonly number[];
  },
): Bounds {
  let knownKey = Number.POSITIVE_INFINITY;
  let best: Omit<Bounds, 'slackKey' | 'noiseKey'> = {
    baseKeyPerLb: 0,
    leastKeys: [],
    sumKey: Number.NEGATIVE_INFINITY,
  };
  for (const baseKeyPerLb of pricesOf(base)) {
    knownKey = Math.min(knownKey, at.knownKeyAt(baseKeyPerLb));
    const leastKeys = at.leastKeysAt(baseKeyPerLb);
    const broughtLb = baseKeyPerLb >= 0 ? base.needLb : mostBroughtLb(base);
    const sumKey = leastKeys.reduce((sum, key) => sum + key, baseKeyPerLb * broughtLb);
    if (sumKey > best.sumKey) best = { baseKeyPerLb, leastKeys, sumKey };
  }
  const { baseKeyPerLb, leastKeys, sumKey } = best;
  return { baseKeyPerLb, leastKeys, sumKey, slackKey: knownKey - sumKey + CENT_KEY, noiseKey: CENT_KEY };
}

/**
 * Bounds from parts of loads, before there are covers: each stream goes in the cheapest pounds there
 * are, and a plan of simple covers is known.
 */
export function roughBounds(made: {
  readonly streams: readonly PlanStream[];
  readonly options: readonly (readonly Option[])[];
  readonly sharedOptions: readonly SharedOption[];
  readonly base: BaseNeed;
  readonly restKeyOf: RestKeyOf;
  readonly limits: PlanLimits;
}): Bounds {
  const { streams, options, sharedOptions, base, limits } = made;
  const { none } = base.together;
  const known = streams.map(({ weightLb }, index) => simpleCovers(weightLb, options[index] ?? [], none));
  return boundsBy(base, {
    knownKeyAt: (price) =>
      limits.held === null
        ? Math.min(
            mostKeyOf(limits, base),
            planKeyAt(price, { covers: known, base, restKeyOf: made.restKeyOf }),
          )
        : mostKeyOf(limits, base),
    leastKeysAt: (price) =>
      streams.map(
        (stream, index) =>
          stream.weightLb * leastKeyPerLb({ stream, options: options[index] ?? [], sharedOptions }, price),
      ),
  });
}

/** What a pound costs at the least, on any part of a load of its own or of one that is shared. */
export function leastKeyPerLb(
  made: {
    readonly stream: PlanStream;
    readonly options: readonly Option[];
    readonly sharedOptions: readonly SharedOption[];
  },
  baseKeyPerLb: number,
): number {
  return made.options.reduce(
    (least, option) => {
      const tripKey = option.fixedKey - baseKeyPerLb * option.baseLb;
      const full = (tripKey + keyOfWeight(option, option.capacityLb)) / option.capacityLb;
      const free = option.freeLb > 0 ? tripKey / option.freeLb : Number.POSITIVE_INFINITY;
      return Math.min(least, full, free);
    },
    sharedKeyPerLb(made.sharedOptions, made.stream, { restLb: 0, baseKeyPerLb }),
  );
}

/**
 * Full loads of one option, some of them with base where others come back empty, and the last one of any:
 * not the cheapest covers, but some.
 */
function simpleCovers(weightLb: number, options: readonly Option[], none: Tally): readonly PricedCover[] {
  return options.flatMap((most) => {
    const fullCount = Math.ceil(weightLb / most.capacityLb - 1e-9) - 1;
    const restLb = weightLb - fullCount * most.capacityLb;
    const lasts = options.filter(({ capacityLb }) => capacityLb >= restLb * (1 - 1e-9));
    const otherWay = options.find((option) => isOtherWayBack(option, most));
    const counts = otherWay === undefined ? [0] : Array.from({ length: fullCount + 1 }, (_, count) => count);
    return counts.flatMap((otherCount) =>
      lasts.map((last) =>
        coverOf({
          options,
          restLb,
          last,
          none,
          full: new Map([
            [most, fullCount - otherCount],
            ...(otherWay === undefined ? [] : [[otherWay, otherCount] as const]),
          ]),
        }),
      ),
    );
  });
}

function isOtherWayBack(option: Option, other: Option): boolean {
  const { trailer, place, withBase } = option;
  return trailer.id === other.trailer.id && place.id === other.place.id && withBase !== other.withBase;
}

function coverOf(made: {
  readonly options: readonly Option[];
  /** So many full loads of each. */
  readonly full: ReadonlyMap<Option, number>;
  readonly last: Option;
  readonly restLb: number;
  readonly none: Tally;
}): PricedCover {
  const { options, full, last, restLb } = made;
  const counts = options.map((option) => (full.get(option) ?? 0) + (option === last ? 1 : 0));
  const bringing = options.filter(({ baseLb }, index) => baseLb > 0 && (counts[index] ?? 0) > 0);
  const fullKey = [...full].reduce(
    (sum, [option, count]) => sum + count * (option.fixedKey + keyOfWeight(option, option.capacityLb)),
    0,
  );
  return {
    key: fullKey + last.fixedKey + keyOfWeight(last, restLb),
    restLb: 0,
    restKeyAt: () => 0,
    baseLb: options.reduce((sum, { baseLb }, index) => sum + baseLb * (counts[index] ?? 0), 0),
    leastBaseLb: Math.min(Number.POSITIVE_INFINITY, ...bringing.map(({ baseLb }) => baseLb)),
    tally: options.reduce((sum, { tally }, index) => plusTally(sum, tally, counts[index] ?? 0), made.none),
    counts,
  };
}

/** Whether something that covers some streams may be in the best plan. */
export function isWithin(
  way: { readonly key: number; readonly baseLb: number },
  leastKey: number,
  bounds: Bounds,
): boolean {
  return way.key - bounds.baseKeyPerLb * way.baseLb - leastKey <= bounds.slackKey;
}

/** From what base is worth at the most to what it may save at the most on a trip. */
function pricesOf(base: BaseNeed): readonly number[] {
  if (base.needLb === 0) return [0];
  const worth = Number.isFinite(base.worthKeyPerLb) ? base.worthKeyPerLb : 0;
  const saved = base.gainKey / base.leastLoadLb;
  const steps = Array.from({ length: PRICE_STEPS + 1 }, (_, index) => index / PRICE_STEPS);
  const most = worth > 0 ? steps.map((step) => step * worth) : [worth];
  return [...most, ...steps.slice(1).map((step) => Math.min(0, worth) - step * saved)];
}

/** At a price below 0: of base that costs something another way, what rides back; else all of it. */
function mostBroughtLb(base: BaseNeed): number {
  return base.worthKeyPerLb < 0
    ? base.needLb + base.mostBringLb
    : Math.min(base.roomLb, base.needLb + base.mostLoadLb);
}

/** The least that a cover of these costs, less the base that it brings at this price. */
export function leastKeyOfCovers(covers: readonly PricedCover[], baseKeyPerLb: number): number {
  return covers.reduce(
    (least, { key, restKeyAt, baseLb }) =>
      Math.min(least, key + restKeyAt(baseKeyPerLb) - baseKeyPerLb * baseLb),
    Number.POSITIVE_INFINITY,
  );
}

/** What the plan costs that takes of each stream the cheapest whole cover at this price of base. */
function planKeyAt(baseKeyPerLb: number, made: Omit<Parameters<typeof boundsOf>[0], 'limits'>): number {
  let sum = { key: 0, baseLb: 0, leastBaseLb: Number.POSITIVE_INFINITY, tally: made.base.together.none };
  for (const covers of made.covers) {
    let least: PricedCover | null = null;
    for (const cover of covers) {
      if (cover.restLb > 0) continue;
      const isLess =
        least === null || cover.key - baseKeyPerLb * cover.baseLb < least.key - baseKeyPerLb * least.baseLb;
      const after = {
        baseLb: sum.baseLb + cover.baseLb,
        leastBaseLb: Math.min(sum.leastBaseLb, cover.leastBaseLb),
      };
      if (isLess && mayStillBeNeeded(after, made.base)) least = cover;
    }
    if (least === null) return Number.POSITIVE_INFINITY;
    sum = {
      key: sum.key + least.key,
      baseLb: sum.baseLb + least.baseLb,
      leastBaseLb: Math.min(sum.leastBaseLb, least.leastBaseLb),
      tally: plusTally(sum.tally, least.tally),
    };
  }
  return sum.key + made.restKeyOf(Math.max(0, made.base.needLb - sum.baseLb), sum.tally);
}

function mostKeyOf({ mostUsd }: PlanLimits, { together }: BaseNeed): number {
  return costKey(mostUsd, 0) - together.startKey + CENT_KEY;
}
