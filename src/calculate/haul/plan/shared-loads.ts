import type { Stream } from '../../job.ts';
import { type Bounds, isWithin } from './bounds.ts';
import { costKey } from './cost-key.ts';
import type { Cover } from './covers.ts';
import { type BaseNeed, headStartKey, mayStillBeNeeded } from './frontier.ts';
import { capacityLb, tariffOf } from './options.ts';
import type { PlanStream, SharedLoad } from './problem.ts';
import { FULL_RATIO, type SharedOption } from './shared-options.ts';
import { plusTally, type Tally } from './together.ts';

/*
 * Where a place lets streams share a load, what is left over of several of them may go on one: all
 * their other loads are full, and a stream shares one load at most. A load is full when the shares of
 * a full load that are on it add up to one.
 */

/** One of the covers of each of some streams, with what they leave over on one load. */
export type SharedWay = {
  readonly key: number;
  readonly baseLb: number;
  readonly leastBaseLb: number;
  readonly tally: Tally;
  /** By the index of the stream. */
  readonly covers: ReadonlyMap<number, Cover>;
  readonly load: SharedLoad;
};

/** A load in the making. */
type Filling = {
  readonly key: number;
  readonly shareRatio: number;
  /** Of the load, for what is on it so far, at the least. */
  readonly partKey: number;
  readonly weightLb: number;
  readonly looseCuYd: number;
  readonly baseLb: number;
  readonly leastBaseLb: number;
  readonly tally: Tally;
  readonly covers: ReadonlyMap<number, Cover>;
};

/** A filling with one cover more, whose covers are listed once it is kept. */
type Fuller = Omit<Filling, 'covers'> & { readonly filling: Filling; readonly cover: Cover };

const LB_PER_TON = 2000;

/**
 * All ways in which streams share this load, by the set of the streams that do (a bit each).
 *
 * @param covers Of each stream; those that leave a rest.
 */
export function sharedWays(made: {
  readonly option: SharedOption;
  readonly streams: readonly PlanStream[];
  readonly covers: readonly (readonly Cover[])[];
  readonly base: BaseNeed;
  readonly bounds: Bounds;
}): ReadonlyMap<number, readonly SharedWay[]> {
  const { option, streams, covers, base, bounds } = made;
  const { baseLb } = option;
  const empty: Filling = {
    key: option.driveKey,
    shareRatio: 0,
    partKey: 0,
    weightLb: 0,
    looseCuYd: 0,
    baseLb,
    leastBaseLb: baseLb > 0 ? baseLb : Number.POSITIVE_INFINITY,
    tally: option.tally,
    covers: new Map(),
  };
  const bySet = new Map<number, readonly Filling[]>([[0, [empty]]]);
  for (const [index, stream] of streams.entries()) {
    if (!option.place.accepts.includes(stream.stream)) continue;
    const mostLb = capacityLb(option.trailer, stream.looseLbPerCuYd);
    const keyPerLb = option.leastKeysPerLb.get(stream.stream) ?? 0;
    // The emptiest first: what is too much for a load is so with all that come after.
    const restsFirst = [...(covers[index] ?? [])].sort((one, other) => one.restLb - other.restLb);
    for (const [set, fillings] of Array.from(bySet)) {
      const leastKey = leastKeyOf(set | (1 << index), bounds);
      const fuller: Fuller[] = [];
      for (const filling of fillings) {
        for (const cover of restsFirst) {
          const shareRatio = filling.shareRatio + cover.restLb / mostLb;
          if (shareRatio > FULL_RATIO) break;
          const partKey = filling.partKey + keyPerLb * cover.restLb;
          const wholeLb = filling.baseLb + cover.baseLb;
          const within = {
            key: filling.key + cover.key - option.driveKey + partKey,
            baseLb: wholeLb - baseLb * (1 - Math.min(1, shareRatio)),
          };
          if (!isWithin(within, leastKey, bounds)) continue;
          const leastBaseLb = Math.min(filling.leastBaseLb, cover.leastBaseLb);
          if (!mayStillBeNeeded({ baseLb: wholeLb, leastBaseLb }, base)) continue;
          fuller.push({
            key: filling.key + cover.key,
            shareRatio,
            partKey,
            weightLb: filling.weightLb + cover.restLb,
            looseCuYd: filling.looseCuYd + cover.restLb / stream.looseLbPerCuYd,
            baseLb: wholeLb,
            leastBaseLb,
            tally: plusTally(filling.tally, cover.tally),
            filling,
            cover,
          });
        }
      }
      if (fuller.length > 0) {
        const kept = unbeatenFillings(fuller, base, option.feeGrows);
        bySet.set(
          set | (1 << index),
          kept.map(({ filling, cover, ...full }) => ({
            ...full,
            covers: new Map([...filling.covers, [index, cover]]),
          })),
        );
      }
    }
  }
  return new Map(
    [...bySet]
      .filter(([set]) => (set & (set - 1)) !== 0)
      .map(([set, fillings]) => [set, fillings.map((filling) => asWay(filling, option, streams))]),
  );
}

/** Of the streams of a set together. */
export function leastKeyOf(set: number, bounds: Bounds): number {
  return bounds.leastKeys.reduce((sum, key, index) => ((set >> index) & 1 ? sum + key : sum), 0);
}

/** No dearer, no fuller, no less base; and no heavier or looser where the fee grows with that. */
function unbeatenFillings(
  fillings: readonly Fuller[],
  base: BaseNeed,
  feeGrows: SharedOption['feeGrows'],
): readonly Fuller[] {
  const sorted = [...fillings].sort((one, other) => one.key - other.key || one.shareRatio - other.shareRatio);
  const kept: Fuller[] = [];
  for (const filling of sorted) {
    const isBeaten = kept.some(
      (other) =>
        other.shareRatio <= filling.shareRatio &&
        (!feeGrows.byWeight || other.weightLb <= filling.weightLb) &&
        (!feeGrows.byVolume || other.looseCuYd <= filling.looseCuYd) &&
        other.key + headStartKey(other, filling, base) <= filling.key,
    );
    if (!isBeaten) kept.push(filling);
  }
  return kept;
}

function asWay(filling: Filling, option: SharedOption, streams: readonly PlanStream[]): SharedWay {
  const { place, trailer, withBase } = option;
  const parts = [...filling.covers].map(([index, { restLb }]) => ({
    stream: (streams[index] as PlanStream).stream,
    weightLb: restLb,
  }));
  const tariff = tariffOf(
    place,
    parts.map(({ stream }): Stream => stream),
    withBase,
  );
  const feeUsd = Math.max(
    place.minimumUsd,
    tariff.usdPerLoad +
      (tariff.usdPerTon * filling.weightLb) / LB_PER_TON +
      tariff.usdPerCuYd * filling.looseCuYd,
  );
  return {
    key: filling.key + costKey(feeUsd, 0),
    baseLb: filling.baseLb,
    leastBaseLb: filling.leastBaseLb,
    tally: filling.tally,
    covers: filling.covers,
    load: { trailer: trailer.id, place: place.id, withBase, parts },
  };
}
