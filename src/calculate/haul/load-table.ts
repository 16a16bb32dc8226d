import type { Decimal } from 'decimal.js';
import type { Stream } from '../job.ts';
import type { BasePlan } from './base-plan.ts';
import type { LoadPiece } from './split.ts';
import type { StreamPlan } from './stream-plan.ts';
import { ticketUsd } from './ticket.ts';
import { fillHeightIn } from './trailer.ts';

/** One trip with debris, as it is driven. */
export type HaulLoad = {
  /** `load-1` and so on, in the order in which they leave. */
  readonly name: string;
  /** More than one where the place lets them share a load. */
  readonly streams: readonly Stream[];
  /** Ids of the trailer and the place. */
  readonly trailer: string;
  readonly place: string;
  /** Of the existing things on it; null for soil. */
  readonly areaSqFt: number | null;
  readonly weightLb: number;
  readonly looseCuYd: number;
  /** Height in the box if it lay level; rough, as the swell is. */
  readonly fillIn: number;
  readonly feeUsd: Decimal;
  readonly returns: 'base' | 'empty';
  /** What is on it, in the order in which it is loaded. */
  readonly pieces: readonly LoadPiece[];
};

/** The trips with debris in order; base rides back on the last ones, when the ground is nearest to ready. */
export function loadTable(
  plans: readonly { readonly stream: Stream; readonly plan: StreamPlan }[],
  base: BasePlan,
  pairedCount: number,
): readonly HaulLoad[] {
  const loads = plans.flatMap(({ stream, plan }) => plan.loads.map((load) => ({ stream, plan, load })));
  const canReturnBase = loads.flatMap(({ plan }, index) =>
    plan.trailer.id === base.trailer?.id && plan.place.id === base.place?.id ? [index] : [],
  );
  const returnsBase = new Set(canReturnBase.slice(canReturnBase.length - pairedCount));
  return loads.map(({ stream, plan, load }, index) => ({
    name: `load-${index + 1}`,
    streams: [stream],
    trailer: plan.trailer.id,
    place: plan.place.id,
    areaSqFt: load.areaSqFt,
    weightLb: load.weightLb,
    looseCuYd: load.looseCuYd,
    fillIn: fillHeightIn(load.looseCuYd, plan.trailer.box),
    feeUsd: ticketUsd(plan.place, load),
    returns: returnsBase.has(index) ? 'base' : 'empty',
    pieces: load.pieces,
  }));
}
