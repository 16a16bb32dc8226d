import type { Stream } from '../../job.ts';
import type { PlannedTrips, SharedLoad } from './problem.ts';

/** What a plan must not have; counts are the most of their kind. */
export type PlanLimits = {
  /** The stream that `mostOf` holds back; null where none. */
  readonly held: Stream | null;
  readonly mostOf: (stream: Stream, trips: Omit<PlannedTrips, 'count'>) => number;
  readonly allowsShared: (load: SharedLoad) => boolean;
  readonly mostBaseTrips: (trailer: string, place: string) => number;
  readonly mostDeliveries: number;
  /** Whether one of the last two holds anything back. */
  readonly holdsBase: boolean;
  /** What it may cost; one that costs more may be missed [$]. */
  readonly mostUsd: number;
};

export const NO_LIMITS: PlanLimits = {
  held: null,
  mostOf: () => Number.POSITIVE_INFINITY,
  allowsShared: () => true,
  mostBaseTrips: () => Number.POSITIVE_INFINITY,
  mostDeliveries: Number.POSITIVE_INFINITY,
  holdsBase: false,
  mostUsd: Number.POSITIVE_INFINITY,
};
