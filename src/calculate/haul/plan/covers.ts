import { costKey, KIND_KEY } from './cost-key.ts';
import { type BaseNeed, headStartKey, mayStillBeNeeded } from './frontier.ts';
import type { Option } from './options.ts';
import { plusTally, type Tally } from './together.ts';

/** So many trips of each option, in the order of the options. */
export type Cover = {
  readonly key: number;
  /** What does not go on them, and has to share a load; 0 where all goes [lb]. */
  readonly restLb: number;
  /** Base that they bring back, and the least that one of them brings [lb]. */
  readonly baseLb: number;
  readonly leastBaseLb: number;
  readonly tally: Tally;
  readonly counts: readonly number[];
};

type Label = {
  readonly fixedKey: number;
  /** Capacity up to each rate, from what the fixed fees pay for to all of it [lb]. */
  readonly upToRateLb: readonly number[];
  readonly baseLb: number;
  readonly leastBaseLb: number;
  readonly tally: Tally;
  readonly counts: readonly number[];
};

/** Of a weight: what a double may be off by. */
export const NOISE_RATIO = 1e-9;

/**
 * The ways to carry all of one stream that another one does not beat. Loads fill the cheapest pounds
 * first. Where all goes already, one more load may still pay: it takes pounds that are dear where they are.
 *
 * @param made.mostOf Of an option, the most trips.
 */
export function wholeCovers(made: {
  readonly weightLb: number;
  readonly options: readonly Option[];
  readonly base: BaseNeed;
  readonly mostOf: (option: Option) => number;
  /** Whether trips for base alone are held back, so that a load may go for its base alone. */
  readonly mustBringBase: boolean;
  /** What a pound costs at the least on further loads. */
  readonly elsewhereKeyPerLb: number;
  /** Whether so many trips may be part of the best plan, with so much still to carry. */
  readonly mayHelp: (way: { key: number; baseLb: number }, restLb: number) => boolean;
}): readonly Cover[] {
  const { weightLb, options, base } = made;
  const rates = [...new Set(options.map(({ usdPerLb }) => usdPerLb).filter((rate) => rate > 0))];
  rates.sort((one, other) => one - other);
  const enoughLb = weightLb * (1 - NOISE_RATIO);
  const isWhole = (label: Label) => (label.upToRateLb.at(-1) ?? 0) >= enoughLb;
  const mayPay = (label: Label, option: Option) =>
    !isWhole(label) ||
    (made.mustBringBase && option.withBase) ||
    (label.upToRateLb[rates.filter((rate) => rate <= option.outUsdPerLb).length] ?? 0) < enoughLb;

  let labels: readonly Label[] = [
    {
      fixedKey: 0,
      upToRateLb: Array.from({ length: rates.length + 1 }, () => 0),
      baseLb: 0,
      leastBaseLb: Number.POSITIVE_INFINITY,
      tally: base.together.none,
      counts: options.map(() => 0),
    },
  ];
  for (const [index, option] of options.entries()) {
    const most = made.mostOf(option);
    const grown = labels.flatMap((label) => {
      const out = [label];
      for (let count = 1, last = label; count <= most && mayPay(last, option); count += 1) {
        last = withOneMore({ label: last, option, options, index, rates });
        if (!mayStillBeNeeded(last, base)) break;
        out.push(last);
      }
      return out;
    });
    const hopeful = grown.filter((label) =>
      made.mayHelp(
        {
          key:
            label.fixedKey +
            leastVaryingKey(label, { weightLb, rates, elsewhereKeyPerLb: made.elsewhereKeyPerLb }),
          baseLb: label.baseLb,
        },
        Math.max(0, weightLb - (label.upToRateLb.at(-1) ?? 0)),
      ),
    );
    labels = unbeaten(hopeful, weightLb, base);
  }

  return labels.filter(isWhole).map((label) => {
    const { baseLb, leastBaseLb, tally, counts } = label;
    const key = label.fixedKey + costKey(varyingUsd(label, weightLb, rates), 0);
    return { key, restLb: 0, baseLb, leastBaseLb, tally, counts };
  });
}

/** Whether the trailer goes to the place already, be it that it comes back another way. */
export function goesAlready(
  { counts }: Pick<Cover, 'counts'>,
  { trailer, place }: Option,
  options: readonly Option[],
): boolean {
  return options.some(
    (other, at) => (counts[at] ?? 0) > 0 && other.trailer.id === trailer.id && other.place.id === place.id,
  );
}

function withOneMore(made: {
  readonly label: Label;
  readonly option: Option;
  readonly options: readonly Option[];
  readonly index: number;
  readonly rates: readonly number[];
}): Label {
  const { label, option, index, rates } = made;
  const tripKey = option.fixedKey + (goesAlready(label, option, made.options) ? 0 : KIND_KEY);
  return {
    fixedKey: label.fixedKey + tripKey,
    upToRateLb: label.upToRateLb.map((lb, rateIndex) => {
      const rate = rateIndex === 0 ? 0 : (rates[rateIndex - 1] ?? 0);
      return lb + (option.usdPerLb <= rate ? option.capacityLb : option.freeLb);
    }),
    baseLb: label.baseLb + option.baseLb,
    leastBaseLb: option.baseLb > 0 ? Math.min(label.leastBaseLb, option.baseLb) : label.leastBaseLb,
    tally: plusTally(label.tally, option.tally),
    counts: label.counts.map((count, at) => (at === index ? count + 1 : count)),
  };
}

/** What the weight on these loads adds to their fees at the least: a pound that is dear there may go elsewhere. */
function leastVaryingKey(
  label: Label,
  made: {
    readonly weightLb: number;
    readonly rates: readonly number[];
    readonly elsewhereKeyPerLb: number;
  },
): number {
  const { weightLb, rates, elsewhereKeyPerLb } = made;
  const usdPerLb = Math.max(0, elsewhereKeyPerLb) / costKey(1, 0);
  const carriedLb = Math.min(weightLb, label.upToRateLb.at(-1) ?? 0);
  const cappedRates = rates.map((rate) => Math.min(rate, usdPerLb));
  return costKey(varyingUsd(label, carriedLb, cappedRates), 0);
}

/** The part of the fees that grows with the weight, at the least [$]. */
function varyingUsd(label: Label, weightLb: number, rates: readonly number[]): number {
  let usd = 0;
  for (const [index, rate] of rates.entries()) {
    const belowLb = Math.min(weightLb, label.upToRateLb[index] ?? 0);
    const upToLb = Math.min(weightLb, label.upToRateLb[index + 1] ?? 0);
    usd += rate * (upToLb - belowLb);
  }
  return usd;
}

/** Those that no other one beats: no dearer, no less room at any rate, no less base. */
function unbeaten(labels: readonly Label[], weightLb: number, base: BaseNeed): readonly Label[] {
  const sorted = [...labels].sort((one, other) => one.fixedKey - other.fixedKey);
  const kept: Label[] = [];
  for (const label of sorted) {
    if (!kept.some((other) => beats(other, label, weightLb, base))) kept.push(label);
  }
  return kept;
}

/** Written as a loop: it runs for every pair. */
function beats(other: Label, label: Label, weightLb: number, base: BaseNeed): boolean {
  const { upToRateLb } = label;
  for (let index = upToRateLb.length - 1; index >= 0; index -= 1) {
    if (Math.min(upToRateLb[index] ?? 0, weightLb) > (other.upToRateLb[index] ?? 0)) return false;
  }
  return other.fixedKey + headStartKey(other, label, base) <= label.fixedKey;
}
