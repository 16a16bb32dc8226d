import { num } from '../figure.ts';
import type { JointCut } from '../job.ts';
import { type SawFigures, type SawPlan, sawFigures } from './saw-figures.ts';

/** Each with its figures where it cuts any joint. */
export type SawsFigures = {
  readonly saw?: SawFigures;
  readonly 'early-saw'?: SawFigures;
};

/** Null without a forecast, or where the saw cuts no joint. */
export type Saws = {
  readonly saw: SawPlan | null;
  readonly earlySaw: SawPlan | null;
  /** Of an early-entry saw that would cut all in its time, where the usual one has none and no other is there. */
  readonly earlyEntry: SawPlan | null;
};

export const NO_SAWS: Saws = { saw: null, earlySaw: null, earlyEntry: null };

/**
 * When the joints are sawn, by the ways in which they are cut. Where there are two, each saw gets the hours of
 * all joints: that is too much for either, and no joint is forgotten.
 *
 * @param cuts Of the joints that are sawn; tooled ones are passed over.
 */
export function sawsOf(
  cuts: ReadonlySet<JointCut>,
  day: Parameters<typeof sawFigures>[1],
): { readonly figures: SawsFigures; readonly plans: Saws } {
  const saw = cuts.has('wet-sawn') ? sawFigures('wet-saw', day) : null;
  const early = cuts.has('early-entry') ? sawFigures('early-entry', day) : null;
  const isShort = saw !== null && num(saw.figures['hours-short']) > 0;
  return {
    figures: {
      ...(saw === null ? {} : { saw: saw.figures }),
      ...(early === null ? {} : { 'early-saw': early.figures }),
    },
    plans: {
      saw: saw?.plan ?? null,
      earlySaw: early?.plan ?? null,
      earlyEntry: isShort && early === null ? fitting(sawFigures('early-entry', day)) : null,
    },
  };
}

/** Of a saw that gets all of it cut in its time. */
function fitting(saw: ReturnType<typeof sawFigures>): SawPlan | null {
  return saw === null || num(saw.figures['hours-short']) > 0 ? null : saw.plan;
}
