import { type Bounds, isWithin } from './bounds.ts';
import type { Cover } from './covers.ts';
import { type BaseNeed, mayStillBeNeeded, unbeatenWays } from './frontier.ts';
import { leastKeyOf, type SharedWay } from './shared-loads.ts';
import { plusTally, type Tally } from './together.ts';

/** Covers for some of the streams, and the loads that some of them share. */
export type Way = {
  readonly key: number;
  readonly baseLb: number;
  readonly leastBaseLb: number;
  readonly tally: Tally;
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
    tally: base.together.none,
    covers: new Map(),
    shared: [],
  };
  const bySet = new Map<number, readonly Way[]>([[0, [none]]]);
  const waysOf = (set: number): readonly Way[] => {
    const known = bySet.get(set);
    if (known !== undefined) return known;
    const first = 31 - Math.clz32(set & -set);
    const join = joining(leastKeyOf(set, bounds), bounds, base);
    const alone = join(waysOf(set & ~(1 << first)), whole[first] ?? [], (cover) => ({
      covers: [[first, cover]],
      shared: [],
    }));
    const together = [...sharing].flatMap(([sharers, ways]) =>
      (sharers & (1 << first)) !== 0 && (sharers & ~set) === 0
        ? join(waysOf(set & ~sharers), ways, ({ covers, load }) => ({ covers: [...covers], shared: [load] }))
        : [],
    );
    const found = unbeatenWays([...alone, ...together], base);
    bySet.set(set, found);
    return found;
  };
  return waysOf(2 ** whole.length - 1);
}

type Addend = Pick<Way, 'key' | 'baseLb' | 'leastBaseLb' | 'tally'>;
type Parts = {
  readonly covers: readonly (readonly [number, Cover])[];
  readonly shared: readonly SharedWay['load'][];
};

/** Joins ways for some streams with those for others, as far as the two may be part of the best plan. */
function joining(leastKey: number, bounds: Bounds, base: BaseNeed) {
  return <T extends Addend>(
    ways: readonly Way[],
    more: readonly T[],
    partsOf: (addend: T) => Parts,
  ): readonly Way[] => {
    const joined: Way[] = [];
    for (const way of ways) {
      for (const addend of more) {
        const sum = {
          key: way.key + addend.key,
          baseLb: way.baseLb + addend.baseLb,
          leastBaseLb: Math.min(way.leastBaseLb, addend.leastBaseLb),
        };
        if (!isWithin(sum, leastKey, bounds) || !mayStillBeNeeded(sum, base)) continue;
        const { covers, shared } = partsOf(addend);
        joined.push({
          ...sum,
          tally: plusTally(way.tally, addend.tally),
          covers: new Map([...way.covers, ...covers]),
          shared: [...way.shared, ...shared],
        });
      }
    }
    return joined;
  };
}
