import { type Bounds, isWithin } from './bounds.ts';
import type { Cover } from './covers.ts';
import { type BaseNeed, mayStillBeNeeded, unbeatenWays } from './frontier.ts';
import { leastKeyOf, type SharedWay } from './shared-loads.ts';

/** Covers for some of the streams, and the loads that some of them share. */
export type Way = {
  readonly key: number;
  readonly baseLb: number;
  readonly leastBaseLb: number;
  readonly covers: ReadonlyMap<number, Cover>;
  readonly shared: readonly SharedWay['load'][];
};

/** The ways for all streams: each covered in whole, or sharing a load with others. */
export function combined(made: {
  readonly whole: readonly (readonly Cover[])[];
  readonly sharing: ReadonlyMap<number, readonly SharedWay[]>;
  readonly base: BaseNeed;
  readonly bounds: Bounds;
}): readonly Way[] {
  const { whole, sharing, base, bounds } = made;
  const none: Way = {
    key: 0,
    baseLb: 0,
    leastBaseLb: Number.POSITIVE_INFINITY,
    covers: new Map(),
    shared: [],
  };
  const bySet = new Map<number, readonly Way[]>([[0, [none]]]);
  const all = 2 ** whole.length - 1;
  for (let set = 1; set <= all; set += 1) {
    const first = 31 - Math.clz32(set & -set);
    const alone = added(bySet.get(set & ~(1 << first)) ?? [], whole[first] ?? [], base, (cover) => ({
      covers: [[first, cover]],
      shared: [],
    }));
    const together = [...sharing].flatMap(([sharers, ways]) =>
      (sharers & (1 << first)) !== 0 && (sharers & ~set) === 0
        ? added(bySet.get(set & ~sharers) ?? [], ways, base, ({ covers, load }) => ({
            covers: [...covers],
            shared: [load],
          }))
        : [],
    );
    const leastKey = leastKeyOf(set, bounds);
    const within = [...alone, ...together].filter((way) => isWithin(way, leastKey, bounds));
    bySet.set(set, unbeatenWays(within, base));
  }
  return bySet.get(all) ?? [];
}

type Addend = { readonly key: number; readonly baseLb: number; readonly leastBaseLb: number };

function added<T extends Addend>(
  ways: readonly Way[],
  more: readonly T[],
  base: BaseNeed,
  partsOf: (addend: T) => {
    readonly covers: readonly (readonly [number, Cover])[];
    readonly shared: readonly SharedWay['load'][];
  },
): readonly Way[] {
  return ways.flatMap((way) =>
    more.flatMap((addend) => {
      const sum = {
        baseLb: way.baseLb + addend.baseLb,
        leastBaseLb: Math.min(way.leastBaseLb, addend.leastBaseLb),
      };
      if (!mayStillBeNeeded(sum, base)) return [];
      const { covers, shared } = partsOf(addend);
      return [
        {
          ...sum,
          key: way.key + addend.key,
          covers: new Map([...way.covers, ...covers]),
          shared: [...way.shared, ...shared],
        },
      ];
    }),
  );
}
