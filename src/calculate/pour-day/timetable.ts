import { num } from '../figure.ts';
import type { Finish, JointCut } from '../job.ts';
import type { ClockFigures, FinishClockFigures, SettingFigures } from './clock-figures.ts';
import type { Span } from './saw-times.ts';
import type { Saws } from './saws.ts';

/** What is done on the day, in the order in which it is done. */
export const STEP_NAMES = [
  'place',
  'wait',
  'finish-broom',
  'finish-float',
  'retard-and-cover',
  'cure',
  'wash',
  'cure-washed',
  'saw-early',
  'saw',
  'cure-cuts',
] as const;
export type StepName = (typeof STEP_NAMES)[number];

/** Hours from midnight of the day of the pour; null where nothing tells. */
export type Step = { readonly name: StepName; readonly fromHr: number | null; readonly toHr: number | null };

/**
 * The day in its true order: place, screed and bull float at once; wait for the bleed water; edge, tool, float
 * and broom; cure at once; saw in its window and cure the cuts. Exposed aggregate is sprayed with a retarder
 * and covered, washed once the concrete between the stones has set, and then cured. Common practice, as in
 * Concrete Construction, "Exposing aggregate" (seen).
 *
 * @param day.finish, day.setting, day.saws Null without a forecast: then only the crew's own hours are known.
 * @param day.cuts Of the joints that are sawn; tooled ones are passed over.
 */
export function timetable(day: {
  readonly finishes: readonly Finish[];
  readonly clock: ClockFigures;
  readonly finish: FinishClockFigures | null;
  readonly setting: SettingFigures | null;
  readonly saws: Pick<Saws, 'saw' | 'earlySaw'>;
  readonly cuts: ReadonlySet<JointCut>;
}): readonly Step[] {
  const { finishes, finish, setting, saws, cuts } = day;
  const [truckHr, placedHr] = [num(day.clock['first-truck']), num(day.clock['placed-by'])];
  const [toolsHr, finishedHr, curedHr] = (['tools-from', 'finished-by', 'cured-by'] as const).map((key) =>
    finish === null ? null : num(finish[key]),
  ) as [number | null, number | null, number | null];
  const washHr = setting === null ? null : Math.max(truckHr + num(setting['setting-time']), finishedHr ?? 0);
  const isExposed = finishes.includes('exposed-aggregate');
  const isPlain = finishes.length === 0 || finishes.some((one) => one !== 'exposed-aggregate');

  const step = (name: StepName, fromHr: number | null, toHr: number | null): Step => ({ name, fromHr, toHr });
  const sawn = [
    ...(cuts.has('early-entry') ? [{ name: 'saw-early' as const, at: saws.earlySaw?.at ?? null }] : []),
    ...(cuts.has('wet-sawn') ? [{ name: 'saw' as const, at: saws.saw?.at ?? null }] : []),
  ];
  const cut = aroundAll(sawn.map(({ at }) => at));
  return [
    step('place', truckHr, placedHr),
    step('wait', truckHr, toolsHr),
    ...(finishes.includes('broom') ? [step('finish-broom', toolsHr, finishedHr)] : []),
    ...(finishes.includes('float') ? [step('finish-float', toolsHr, finishedHr)] : []),
    ...(isExposed ? [step('retard-and-cover', toolsHr, finishedHr)] : []),
    ...(isPlain ? [step('cure', toolsHr, curedHr)] : []),
    ...(isExposed ? [step('wash', washHr, null), step('cure-washed', washHr, null)] : []),
    ...sawn.map(({ name, at }) => step(name, at?.fromHr ?? null, at?.toHr ?? null)),
    ...(sawn.length === 0 ? [] : [step('cure-cuts', cut?.fromHr ?? null, cut?.toHr ?? null)]),
  ];
}

/** From the first to the last of some stretches; null where one of them is not known. */
function aroundAll(spans: readonly (Span | null)[]): Span | null {
  const known = spans.flatMap((span) => (span === null ? [] : [span]));
  if (known.length < spans.length) return null;
  return {
    fromHr: Math.min(...known.map(({ fromHr }) => fromHr)),
    toHr: Math.max(...known.map(({ toHr }) => toHr)),
  };
}
