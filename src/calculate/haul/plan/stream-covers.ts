import { type Bounds, isWithin, leastKeyPerLb, type PricedCover } from './bounds.ts';
import { type Cover, wholeCovers } from './covers.ts';
import { type BaseNeed, headStartKey, unbeatenWays } from './frontier.ts';
import type { PlanLimits } from './limits.ts';
import type { Option } from './options.ts';
import type { PlanStream } from './problem.ts';
import { restCovers } from './rest-covers.ts';
import { mostSharedLb, type SharedOption, sharedKeyPerLb } from './shared-options.ts';

/**
 * The covers of one stream that may be part of the best plan.
 *
 * @param made.leastKey Of the rough bounds, for this stream.
 */
export function streamCovers(made: {
  readonly stream: PlanStream;
  readonly options: readonly Option[];
  readonly sharedOptions: readonly SharedOption[];
  readonly base: BaseNeed;
  readonly limits: PlanLimits;
  readonly rough: { readonly bounds: Bounds; readonly leastKey: number };
}): readonly PricedCover[] {
  const { stream, options, sharedOptions, base, limits, rough } = made;
  const carried = { weightLb: stream.weightLb, options, base };
  const mostOf = ({ trailer, place, withBase }: Option) =>
    limits.mostOf(stream.stream, { trailer: trailer.id, place: place.id, withBase });
  const mayHelp = (some: readonly SharedOption[]) => {
    const restKeyPerLb = leastKeyPerLb({ stream, options, sharedOptions: some }, rough.bounds.baseKeyPerLb);
    return (way: { key: number; baseLb: number }, restLb: number) =>
      isWithin({ key: way.key + restKeyPerLb * restLb, baseLb: way.baseLb }, rough.leastKey, rough.bounds);
  };
  const whole = unbeatenWays(
    wholeCovers({
      ...carried,
      mostOf,
      mustBringBase: limits.holdsBase,
      elsewhereKeyPerLb: leastKeyPerLb({ stream, options, sharedOptions: [] }, rough.bounds.baseKeyPerLb),
      mayHelp: mayHelp([]),
    }),
    base,
  );
  const mostRestLb = mostSharedLb(sharedOptions, stream);
  const rests = restCovers({ ...carried, mostOf, mostRestLb, mayHelp: mayHelp(sharedOptions) });
  // One that costs no less than what carries all of it is of no use.
  const useful = rests.filter(
    (cover) => !whole.some((other) => other.key + headStartKey(other, cover, base) <= cover.key),
  );
  return [...whole, ...useful].map((cover) => priced(cover, stream, sharedOptions));
}

function priced(cover: Cover, stream: PlanStream, sharedOptions: readonly SharedOption[]): PricedCover {
  const { restLb } = cover;
  if (restLb === 0) return { ...cover, restKeyAt: () => 0 };
  return {
    ...cover,
    restKeyAt: (baseKeyPerLb) => restLb * sharedKeyPerLb(sharedOptions, stream, { restLb, baseKeyPerLb }),
  };
}
