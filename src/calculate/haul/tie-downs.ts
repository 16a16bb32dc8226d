/** Share of the cargo's weight that the working load limits of its tie-downs reach together. */
export const AGGREGATE_SHARE_RATIO = 1 / 2;
export const AGGREGATE_SOURCE =
  '49 CFR 393.106(d): working load limits together at least half of the weight of the cargo (seen as quoted in an insurance broker\'s page, "Cargo securement rules")';

/** What a tie-down counts that is fixed to the cargo or comes back to the side it started from. */
export const SAME_SIDE_RATIO = 1 / 2;
export const SAME_SIDE_SOURCE =
  "49 CFR 393.106(d): half of the limit where a tie-down is fixed to the cargo or comes back to its side (seen as quoted in an insurance broker's page)";

export const COUNT_SOURCE =
  '49 CFR 393.110, number of tie-downs (seen as quoted in a public forum); 393.130, four from 10,000 lb on (from memory)';

export const STEP_IN = 120;
const SHORT_IN = 60;
const LIGHT_LB = 1100;
export const HEAVY_MACHINE_LB = 10_000;
export const HEAVY_MACHINE_COUNT = 4;

/**
 * Least that the working load limits of all tie-downs of an article come to together: half of its weight.
 *
 * @returns [lb].
 * @throws {RangeError} If the weight is not above 0.
 */
export function aggregateWorkingLoadLb(cargoLb: number): number {
  if (!(cargoLb > 0 && cargoLb < Infinity)) throw new RangeError(`cargoLb must be above 0, got ${cargoLb}`);
  return cargoLb * AGGREGATE_SHARE_RATIO;
}

/**
 * Least number of tie-downs of an article.
 *
 * Nothing in front of it: 1 up to 5 ft and 1,100 lb; 2 up to 5 ft and heavier, and over 5 ft up to 10 ft;
 * one more for each further 10 ft or part of it. Blocked in front: 1 for each 10 ft or part.
 *
 * @throws {RangeError} If length or weight is not above 0.
 *
 * Source: 49 CFR 393.110 (seen as quoted in a public forum).
 */
export function tiedownCount(article: {
  readonly lengthIn: number;
  readonly weightLb: number;
  readonly isBlockedInFront: boolean;
}): number {
  const { lengthIn, weightLb, isBlockedInFront } = article;
  if (!(lengthIn > 0 && lengthIn < Infinity && weightLb > 0 && weightLb < Infinity)) {
    throw new RangeError(`length and weight must be above 0, got ${lengthIn} and ${weightLb}`);
  }
  const tenFeet = Math.ceil(lengthIn / STEP_IN);
  if (isBlockedInFront || (lengthIn <= SHORT_IN && weightLb <= LIGHT_LB)) return tenFeet;
  return tenFeet + 1;
}

/**
 * The same for a machine on wheels or tracks: from 10,000 lb on, never under four.
 *
 * Source: 49 CFR 393.130 (from memory).
 */
export function machineTiedownCount(machine: Parameters<typeof tiedownCount>[0]): number {
  const count = tiedownCount(machine);
  return machine.weightLb >= HEAVY_MACHINE_LB ? Math.max(HEAVY_MACHINE_COUNT, count) : count;
}
