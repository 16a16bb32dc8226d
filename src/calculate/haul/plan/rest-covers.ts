import { KIND_KEY } from './cost-key.ts';
import { type Cover, goesAlready, NOISE_RATIO } from './covers.ts';
import { type BaseNeed, headStartKey, mayStillBeNeeded } from './frontier.ts';
import { keyOfWeight, type Option } from './options.ts';
import { plusTally } from './together.ts';

/**
 * The ways to carry one stream but for a rest that may share a load, those that another one does not
 * beat. All loads are full, so that only what they hold together counts; none at all is a way too.
 *
 * @param made.mostRestLb The most that may share a load; 0 where nothing may [lb].
 * @param made.mostOf     Of an option, the most trips.
 * @param made.mayHelp    Whether so many trips may be part of the best plan, with so much still to carry.
 */
export function restCovers(made: {
  readonly weightLb: number;
  readonly options: readonly Option[];
  readonly base: BaseNeed;
  readonly mostRestLb: number;
  readonly mostOf: (option: Option) => number;
  readonly mayHelp: (way: { key: number; baseLb: number }, restLb: number) => boolean;
}): readonly Cover[] {
  const { weightLb, options, base, mostRestLb } = made;
  if (mostRestLb === 0) return [];
  const noneLb = weightLb * NOISE_RATIO;
  const counts = options.map(() => 0);
  const none = {
    key: 0,
    restLb: weightLb,
    baseLb: 0,
    leastBaseLb: Number.POSITIVE_INFINITY,
    tally: base.together.none,
    counts,
  };
  let covers: readonly Cover[] = [none];
  for (const [index, option] of options.entries()) {
    const most = made.mostOf(option);
    const grown = covers.flatMap((cover) => {
      const out = [cover];
      for (let count = 1, last = cover; count <= most; count += 1) {
        last = withFullLoad(last, option, options, index);
        if (last.restLb <= noneLb || !mayStillBeNeeded(last, base)) break;
        out.push(last);
      }
      return out;
    });
    covers = unbeatenRests(
      grown.filter((cover) => made.mayHelp(cover, cover.restLb)),
      base,
    );
  }
  return covers.filter(({ restLb }) => restLb <= mostRestLb * (1 + NOISE_RATIO));
}

function withFullLoad(cover: Cover, option: Option, options: readonly Option[], index: number): Cover {
  const kindKey = goesAlready(cover, option, options) ? 0 : KIND_KEY;
  return {
    key: cover.key + option.fixedKey + keyOfWeight(option, option.capacityLb) + kindKey,
    restLb: cover.restLb - option.capacityLb,
    baseLb: cover.baseLb + option.baseLb,
    leastBaseLb: option.baseLb > 0 ? Math.min(cover.leastBaseLb, option.baseLb) : cover.leastBaseLb,
    tally: plusTally(cover.tally, option.tally),
    counts: cover.counts.map((count, at) => (at === index ? count + 1 : count)),
  };
}

/** Those that no other one beats: no dearer, no more left over, no less base. */
function unbeatenRests(covers: readonly Cover[], base: BaseNeed): readonly Cover[] {
  const sorted = [...covers].sort((one, other) => one.key - other.key || one.restLb - other.restLb);
  const kept: Cover[] = [];
  for (const cover of sorted) {
    const isBeaten = kept.some(
      (other) => other.restLb <= cover.restLb && other.key + headStartKey(other, cover, base) <= cover.key,
    );
    if (!isBeaten) kept.push(cover);
  }
  return kept;
}
