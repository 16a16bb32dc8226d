import { type Figure, figure, num } from '../figure.ts';
import type { JointCut } from '../job.ts';
import { inputKey, inputsOf, sumExpression } from '../sum-figure.ts';
import { type SawFigures, type SawPlan, sawFigures } from './saw-figures.ts';

/** Lengths by slab [ft], by the way they are cut. */
export type CutLengths = ReadonlyMap<JointCut, Readonly<Record<string, Figure>>>;

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
 * its own joints: the share of all that is sawn.
 *
 * @param cutFt Of all joints; tooled ones are passed over.
 */
export function sawsOf(
  cutFt: CutLengths,
  day: Parameters<typeof sawFigures>[1],
): { readonly figures: SawsFigures; readonly plans: Saws } {
  const { wet, earlyOnes } = { wet: cutFt.get('wet-sawn'), earlyOnes: cutFt.get('early-entry') };
  const dayOf = (own: Lengths, others: Lengths | undefined) =>
    others === undefined ? day : { ...day, ...ownHours(day, own, others) };
  const saw = wet === undefined ? null : sawFigures('wet-saw', dayOf(wet, earlyOnes));
  const early = earlyOnes === undefined ? null : sawFigures('early-entry', dayOf(earlyOnes, wet));
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

type Lengths = Readonly<Record<string, Figure>>;

/** The hours of a saw that shares the joints with another one. */
function ownHours(
  { tasks }: Parameters<typeof sawFigures>[1],
  own: Lengths,
  others: Lengths,
): { readonly cuttingHr?: Figure } {
  const { sawHr } = tasks;
  if (sawHr === null) return {};
  const parts = (lengths: Lengths) =>
    Object.entries(lengths).map(([id, input]) => ({ key: inputKey('sawn', id, 'Ft'), input }));
  const [mine, all] = [parts(own), [...parts(own), ...parts(others)]];
  const feet = (some: typeof all) => some.reduce((sumFt, { input }) => sumFt + num(input), 0);
  return {
    cuttingHr: figure({
      value: (num(sawHr) * feet(mine)) / feet(all),
      unit: 'h',
      decimals: 1,
      formula: `sawHr * (${sumExpression(mine)}) / (${sumExpression(all)})`,
      inputs: { sawHr, ...inputsOf(all) },
    }),
  };
}

/** Of a saw that gets all of it cut in its time. */
function fitting(saw: ReturnType<typeof sawFigures>): SawPlan | null {
  return saw === null || num(saw.figures['hours-short']) > 0 ? null : saw.plan;
}
