import { CENT_KEY } from './cost-key.ts';
import type { Tally, Together } from './together.ts';

/** What is wanted of base on trips that carry something out, and what it is worth there. */
export type BaseNeed = {
  /** In all; 0 where none is wanted [lb]. */
  readonly needLb: number;
  /** The most of it that may come while rubble leaves [lb]. */
  readonly roomLb: number;
  /** What so much base costs that comes another way; infinite where it cannot. */
  readonly bringKey: (weightLb: number) => number;
  /** The most that base on the way back may save of a trip; 0 where it never does. */
  readonly gainKey: number;
  /** What a pound costs at the least that comes another way; infinite where it cannot. */
  readonly worthKeyPerLb: number;
  /** What may have to come another way where a way that has brought more leaves less room; 0 where it cannot. */
  readonly crowdedKey: number;
  /** The least and the most that a trip brings back [lb]. */
  readonly leastLoadLb: number;
  readonly mostLoadLb: number;
  /** The most that a trip or a delivery brings [lb]. */
  readonly mostBringLb: number;
  /** What trips cost together. */
  readonly together: Together;
};

export type BringsBase = {
  readonly baseLb: number;
  /** The least that one of its trips brings; infinite where none brings any [lb]. */
  readonly leastBaseLb: number;
};

type Compared = BringsBase & { readonly tally: Tally };

const NOISE_LB = 1e-6;

/** Whether every trip with base is needed: without the smallest of them there would be too little. */
export function mayStillBeNeeded(way: BringsBase, base: BaseNeed): boolean {
  if (way.baseLb === 0) return true;
  return way.baseLb <= base.roomLb + NOISE_LB && way.baseLb - way.leastBaseLb < base.needLb - NOISE_LB;
}

/**
 * By how much a way must be cheaper than another one so that nothing that may follow speaks for the
 * other: what base it lacks costs; where it leaves less need of base or less room for it, what the trips
 * that have to come back empty would have saved and brought; and what its trips may cost more together.
 */
export function headStartKey(way: Compared, other: Compared, base: BaseNeed): number {
  const togetherKey = base.together.headStartKey(way.tally, other.tally);
  return togetherKey === Number.POSITIVE_INFINITY
    ? togetherKey
    : togetherKey + baseStartKey(way, other, base);
}

function baseStartKey(way: BringsBase, other: BringsBase, base: BaseNeed): number {
  const moreLb = way.baseLb - other.baseLb;
  const lackLb = Math.min(other.baseLb, base.needLb) - Math.min(way.baseLb, base.needLb);
  const lackKey = lackLb > NOISE_LB ? base.bringKey(lackLb) : 0;
  const isMore = moreLb > NOISE_LB;
  if (other.baseLb >= base.needLb - NOISE_LB) return lackKey;
  if (!isMore && way.leastBaseLb >= other.leastBaseLb) return lackKey;
  return lackKey + emptiedKey(moreLb, base) + (isMore ? base.crowdedKey : 0);
}

/**
 * Trips with base come back empty, the smallest first, until each that is left is needed. A cent more than
 * what that costs: of two ways that cost the same, each would otherwise give way to the other.
 */
function emptiedKey(moreLb: number, { gainKey, leastLoadLb, mostLoadLb }: BaseNeed): number {
  const count = Math.ceil((moreLb + mostLoadLb - leastLoadLb) / leastLoadLb);
  return gainKey === 0 || count <= 0 ? 0 : gainKey * count + CENT_KEY;
}

/** Ways of equal rank that no other one beats; of equal ones the first. */
export function unbeatenWays<T extends Compared & { readonly key: number }>(
  ways: readonly T[],
  base: BaseNeed,
): readonly T[] {
  const sorted = [...ways].sort((one, other) => one.key - other.key || other.baseLb - one.baseLb);
  const kept: T[] = [];
  for (const way of sorted) {
    if (!kept.some((other) => other.key + headStartKey(other, way, base) <= way.key)) kept.push(way);
  }
  return kept;
}
