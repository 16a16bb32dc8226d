import type { PlanPlace, PlanTrailer } from './problem.ts';

/*
 * Costs that no trip has by itself: each is the greatest of several sums over all trips. Trips that
 * follow one on the same trailer wait to be loaded; base is bought where it is cheapest. A part of every
 * sum is in the keys of the trips already, so that keys bound the cost from below; what is missing is
 * added once all trips are known. Everything is a whole number, so that sums are exact.
 */

/** What trips add to each of the sums, one group of sums after the other, and seconds at the end. */
export type Tally = readonly number[];

/** One trip: out with rubble, or for base alone. */
export type TripKind = {
  readonly trailer: PlanTrailer;
  readonly place: PlanPlace;
  readonly withBase: boolean;
  readonly isOut: boolean;
};

/** A cost that is so much times the greatest of several sums. */
export type Greatest = {
  readonly keyEach: number;
  /** Of the drivers. */
  readonly secEach: number;
  readonly sums: readonly Sum[];
};

export type Sum = {
  readonly start: number;
  readonly ofTrip: (trip: TripKind) => number;
  readonly ofDelivery: number;
};

/** Some of the sums of a cost, and the part of each that is in the keys of the trips; 1 together. */
export type Weighed = Greatest & { readonly weights: readonly number[] };

/** The most seconds that drivers may take: all of them first, then those of each trailer where each keeps its own. */
export type MostTime = {
  /** What a second of all is priced at in the keys of the trips. */
  readonly keyPerSec: number;
  readonly limits: readonly {
    readonly mostSec: number;
    readonly ofTripSec: (trip: TripKind) => number;
  }[];
};

export type Share = { readonly key: number; readonly tally: Tally };

export type Together = {
  readonly none: Tally;
  readonly ofTrip: (trip: TripKind) => Share;
  readonly ofDelivery: Share;
  /** Part of the cost of every plan; below 0 where time is priced. */
  readonly startKey: number;
  /** What such trips cost beyond their keys and `startKey`, 0 or more; infinite where they take too long. */
  readonly restKey: (tally: Tally) => number;
  /** By how much `restKey` of the first may be more at the most, whatever trips are added to both. */
  readonly headStartKey: (tally: Tally, other: Tally) => number;
};

export function plusTally(tally: Tally, other: Tally, times = 1): Tally {
  if (tally.length === 0 || times === 0) return tally;
  return tally.map((sum, index) => sum + times * (other[index] ?? 0));
}

/** A cost of one sum is wholly in the keys and seconds of the trips: nothing of it is in the tallies. */
export function togetherOf(costs: readonly Weighed[], time: MostTime | null): Together {
  const tallied = costs.filter(({ sums }) => sums.length > 1);
  const single = costs.filter(({ sums }) => sums.length === 1);
  const singleSec = (ofSum: (sum: Sum) => number) =>
    single.reduce(
      (sec, { secEach, sums }) => sec + secEach * sums.reduce((all, sum) => all + ofSum(sum), 0),
      0,
    );
  const share = (ofSum: (sum: Sum) => number, ownSec: readonly number[]): Share => {
    const sec = ownSec.map((one, index) => (index === 0 ? one + singleSec(ofSum) : one));
    return {
      key: costs.reduce(
        (key, cost) => key + cost.keyEach * weightedOf(cost, ofSum),
        time === null ? 0 : time.keyPerSec * (sec[0] ?? 0),
      ),
      tally: [...tallied.flatMap(({ sums }) => sums.map(ofSum)), ...sec],
    };
  };
  const secOf = (trip: TripKind) =>
    time === null ? [] : time.limits.map(({ ofTripSec }) => ofTripSec(trip));
  const noSec = time === null ? [] : time.limits.map(() => 0);
  const mostSec = (time?.limits ?? []).map((limit, index) =>
    index === 0 ? limit.mostSec - singleSec(({ start }) => start) : limit.mostSec,
  );
  const keyPerSec = time?.keyPerSec ?? 0;
  const startKey = costs.reduce(
    (key, cost) => key + cost.keyEach * weightedOf(cost, ({ start }) => start),
    -keyPerSec * (mostSec[0] ?? 0),
  );
  const weighing = { costs: tallied, keyPerSec, mostSec };
  return {
    none: share(() => 0, noSec).tally,
    ofTrip: (trip) => share(({ ofTrip }) => ofTrip(trip), secOf(trip)),
    ofDelivery: share(({ ofDelivery }) => ofDelivery, noSec),
    startKey,
    restKey: (tally) => (tally.length === 0 ? 0 : restKeyOf(tally, weighing)),
    headStartKey: (tally, other) => (tally.length === 0 ? 0 : headStartOf(tally, other, weighing)),
  };
}

type Weighing = {
  readonly costs: readonly Weighed[];
  readonly keyPerSec: number;
  /** All drivers first; none where nothing limits them. */
  readonly mostSec: readonly number[];
};

function weightedOf({ sums, weights }: Weighed, ofSum: (sum: Sum) => number): number {
  return sums.reduce((all, sum, index) => all + (weights[index] ?? 0) * ofSum(sum), 0);
}

function restKeyOf(tally: Tally, { costs, keyPerSec, mostSec }: Weighing): number {
  let [key, waitSec, at] = [0, 0, 0];
  for (const { keyEach, secEach, sums, weights } of costs) {
    let [greatest, weighted] = [Number.NEGATIVE_INFINITY, 0];
    for (const [index, { start }] of sums.entries()) {
      const sum = start + (tally[at] ?? 0);
      greatest = Math.max(greatest, sum);
      weighted += (weights[index] ?? 0) * sum;
      at += 1;
    }
    key += keyEach * (greatest - weighted);
    waitSec += secEach * greatest;
  }
  for (const [index, most] of mostSec.entries()) {
    const sec = tally[at + index] ?? 0;
    if (sec + (index === 0 ? waitSec : 0) > most) return Number.POSITIVE_INFINITY;
    if (index === 0) key += keyPerSec * (most - sec);
  }
  return key;
}

/** Written as loops: it runs for every pair of ways. */
function headStartOf(tally: Tally, other: Tally, { costs, keyPerSec, mostSec }: Weighing): number {
  let key = 0;
  let waitSec = 0;
  let at = 0;
  for (const { keyEach, secEach, weights } of costs) {
    let greatest = Number.NEGATIVE_INFINITY;
    let weighted = 0;
    for (const weight of weights) {
      const more = (tally[at] ?? 0) - (other[at] ?? 0);
      if (more > greatest) greatest = more;
      weighted += weight * more;
      at += 1;
    }
    key += keyEach * (greatest - weighted);
    waitSec += secEach * greatest;
  }
  for (let index = 0; index < mostSec.length; index += 1) {
    const moreSec = (tally[at + index] ?? 0) - (other[at + index] ?? 0);
    if (moreSec + (index === 0 ? waitSec : 0) > 0) return Number.POSITIVE_INFINITY;
    if (index === 0) key -= keyPerSec * moreSec;
  }
  return key;
}
