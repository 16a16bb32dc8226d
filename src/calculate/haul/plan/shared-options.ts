import type { Stream } from '../../job.ts';
import { costKey } from './cost-key.ts';
import { capacityLb, driveUsd, returnsOf, tariffOf, usdPerLb } from './options.ts';
import type { PlanPlace, PlanProblem, PlanStream, PlanTrailer } from './problem.ts';
import type { Tally, Together } from './together.ts';

/** Of a load: shares that add up to more are too much. */
export const FULL_RATIO = 1 + 1e-9;
const LB_PER_TON = 2000;

/** A load that several streams may share. */
export type SharedOption = {
  readonly trailer: PlanTrailer;
  readonly place: PlanPlace;
  readonly withBase: boolean;
  readonly baseLb: number;
  readonly driveKey: number;
  readonly tally: Tally;
  /**
   * What a pound of each stream that it may hold costs at the least: the part of the trip that it takes
   * up, with its own fee where loads are paid by what they hold.
   */
  readonly leastKeysPerLb: ReadonlyMap<Stream, number>;
  readonly feeGrows: { readonly byWeight: boolean; readonly byVolume: boolean };
};

export function sharedOptionsOf(problem: PlanProblem, together: Together): readonly SharedOption[] {
  return problem.trailers.flatMap((trailer) =>
    problem.places
      .filter(({ mixedLoads }) => mixedLoads)
      .flatMap((place) =>
        returnsOf(place, problem.base).map((withBase) =>
          sharedOptionOf(problem, { trailer, place, withBase, together }),
        ),
      ),
  );
}

function sharedOptionOf(
  problem: PlanProblem,
  made: Pick<SharedOption, 'trailer' | 'place' | 'withBase'> & { readonly together: Together },
): SharedOption {
  const { trailer, place, withBase, together } = made;
  const { base } = problem;
  const tripUsd = driveUsd(problem, place, withBase);
  const share = together.ofTrip({ trailer, place, withBase, isOut: true });
  const driveKey = costKey(tripUsd, 1) + share.key;
  const mostFee = tariffOf(place, place.accepts, withBase);
  return {
    trailer,
    place,
    withBase,
    baseLb: withBase && base !== null ? capacityLb(trailer, base.looseLbPerCuYd) : 0,
    driveKey,
    tally: share.tally,
    leastKeysPerLb: new Map(
      problem.streams
        .filter(({ stream }) => place.accepts.includes(stream))
        .map((stream) => [stream.stream, leastKeyPerLbOf(stream, { trailer, place, withBase, driveKey })]),
    ),
    feeGrows: {
      byWeight: mostFee.usdPerTon > 0,
      byVolume: mostFee.usdPerCuYd > 0,
    },
  };
}

/** All streams of a load count in one way, by its fees or by its minimum, or they could come to more than it costs. */
function leastKeyPerLbOf(
  { stream, looseLbPerCuYd }: PlanStream,
  made: Pick<SharedOption, 'trailer' | 'place' | 'withBase'> & { readonly driveKey: number },
): number {
  const { trailer, place, withBase, driveKey } = made;
  const mostLb = capacityLb(trailer, looseLbPerCuYd);
  const { usdPerLoad, ...bare } = tariffOf(place, [], withBase);
  const fullUsd = usdPerLoad + (bare.usdPerTon * trailer.payloadLb) / LB_PER_TON;
  if (fullUsd <= place.minimumUsd)
    return (driveKey + costKey(Math.max(place.minimumUsd, usdPerLoad), 0)) / mostLb;
  const own = tariffOf(place, [stream], withBase);
  return (driveKey + costKey(own.usdPerLoad + usdPerLb(own, looseLbPerCuYd) * mostLb, 0)) / mostLb;
}

/** What a pound of a stream costs at the least on a load that holds so much of it; infinite where none does. */
export function sharedKeyPerLb(
  options: readonly SharedOption[],
  { stream, looseLbPerCuYd }: PlanStream,
  at: { readonly restLb: number; readonly baseKeyPerLb: number },
): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { trailer, leastKeysPerLb, baseLb } of options) {
    const mostLb = capacityLb(trailer, looseLbPerCuYd);
    const keyPerLb = leastKeysPerLb.get(stream);
    if (keyPerLb === undefined || at.restLb > mostLb * FULL_RATIO) continue;
    least = Math.min(least, keyPerLb - (at.baseKeyPerLb * baseLb) / mostLb);
  }
  return least;
}

/** The most of a stream that may be on a shared load; 0 where it may share none [lb]. */
export function mostSharedLb(options: readonly SharedOption[], stream: PlanStream): number {
  const accepting = options.filter(({ place }) => place.accepts.includes(stream.stream));
  return Math.max(0, ...accepting.map(({ trailer }) => capacityLb(trailer, stream.looseLbPerCuYd)));
}
