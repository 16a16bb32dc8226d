import { splitWeightLb } from './load-count.ts';

/** A load still empty: what fits, what its fixed fee pays for, and what each pound beyond that costs. */
export type EmptyLoad = {
  readonly capacityLb: number;
  readonly freeLb: number;
  readonly usdPerLb: number;
};

const NOISE_RATIO = 1e-9;

/**
 * A weight laid on loads, at the least cost: the cheapest pounds first, and among equally cheap ones
 * each load as full as the others. In whole steps but for one load, adding up to the weight exactly.
 *
 * @param stepLb A whole pound, or a power of two of one; both keep the sum exact.
 * @throws {RangeError} If it does not fit.
 */
export function shareOutLb(weightLb: number, loads: readonly EmptyLoad[], stepLb: number): readonly number[] {
  const [first] = loads;
  if (first === undefined) throw new RangeError('there is no load');
  if (loads.every((load) => isLike(load, first))) return splitWeightLb(weightLb, loads.length, stepLb);
  return inSteps(weightLb, loads, idealLb(weightLb, loads), stepLb);
}

function isLike(load: EmptyLoad, other: EmptyLoad): boolean {
  return (
    load.capacityLb === other.capacityLb && load.freeLb === other.freeLb && load.usdPerLb === other.usdPerLb
  );
}

/** The same, not in steps. */
export function idealLb(weightLb: number, loads: readonly EmptyLoad[]): readonly number[] {
  const rates = [...new Set([0, ...loads.map(({ usdPerLb }) => usdPerLb)])].sort((one, other) => one - other);
  let filled: readonly number[] = loads.map(() => 0);
  let leftLb = weightLb;
  for (const rate of rates) {
    const roomsLb = loads.map((load, index) => {
      const upToLb = load.usdPerLb <= rate ? load.capacityLb : load.freeLb;
      return Math.max(0, upToLb - (filled[index] ?? 0));
    });
    const roomLb = roomsLb.reduce((sum, lb) => sum + lb, 0);
    if (roomLb === 0) continue;
    // What is left once all is laid is noise of either sign.
    const shareRatio = Math.min(1, Math.max(0, leftLb / roomLb));
    filled = filled.map((lb, index) => lb + (roomsLb[index] ?? 0) * shareRatio);
    leftLb -= roomLb * shareRatio;
  }
  if (leftLb > weightLb * NOISE_RATIO) throw new RangeError(`${leftLb} lb of ${weightLb} have no room`);
  return filled;
}

function inSteps(
  weightLb: number,
  loads: readonly EmptyLoad[],
  wanted: readonly number[],
  stepLb: number,
): readonly number[] {
  const whole = wanted.map((lb) => Math.floor(lb / stepLb) * stepLb);
  const leftOf = () => weightLb - whole.reduce((sum, lb) => sum + lb, 0);
  for (const [index, { capacityLb }] of loads.entries()) {
    while (leftOf() >= stepLb && (whole[index] ?? 0) + stepLb <= capacityLb)
      whole[index] = (whole[index] ?? 0) + stepLb;
  }
  const restLb = leftOf();
  // What is missing goes where most room is; what noise has laid too much comes off the heaviest.
  const worthOf = (index: number) =>
    restLb < 0 ? (whole[index] ?? 0) : (loads[index]?.capacityLb ?? 0) - (whole[index] ?? 0);
  const taker = loads.reduce((best, _, index) => (worthOf(index) > worthOf(best) ? index : best), 0);
  return whole.map((lb, index) => (index === taker ? lb + restLb : lb));
}
