import { num } from '../figure.ts';
import type { Finish } from '../job.ts';
import type { ClockFigures, FinishClockFigures, SettingFigures } from './clock-figures.ts';
import type { SawPlan } from './saw-figures.ts';

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
 * @param day.finish, day.setting, day.saw Null without a forecast: then only the crew's own hours are known.
 * @param day.alsoEarly Null where no joint is cut by an early-entry saw beside others that are sawn later.
 */
export function timetable(day: {
  readonly finishes: readonly Finish[];
  readonly clock: ClockFigures;
  readonly finish: FinishClockFigures | null;
  readonly setting: SettingFigures | null;
  readonly saw: SawPlan | null;
  readonly alsoEarly: SawPlan | null;
  readonly isSawn: boolean;
}): readonly Step[] {
  const { finishes, finish, setting, saw } = day;
  const [truckHr, placedHr] = [num(day.clock['first-truck']), num(day.clock['placed-by'])];
  const [toolsHr, finishedHr, curedHr] = (['tools-from', 'finished-by', 'cured-by'] as const).map((key) =>
    finish === null ? null : num(finish[key]),
  ) as [number | null, number | null, number | null];
  const washHr = setting === null ? null : Math.max(truckHr + num(setting['setting-time']), finishedHr ?? 0);
  const isExposed = finishes.includes('exposed-aggregate');
  const isPlain = finishes.length === 0 || finishes.some((one) => one !== 'exposed-aggregate');

  const step = (name: StepName, fromHr: number | null, toHr: number | null): Step => ({ name, fromHr, toHr });
  const sawnHr = saw?.at ?? null;
  const earlyHr = day.alsoEarly?.at ?? null;
  return [
    step('place', truckHr, placedHr),
    step('wait', truckHr, toolsHr),
    ...(finishes.includes('broom') ? [step('finish-broom', toolsHr, finishedHr)] : []),
    ...(finishes.includes('float') ? [step('finish-float', toolsHr, finishedHr)] : []),
    ...(isExposed ? [step('retard-and-cover', toolsHr, finishedHr)] : []),
    ...(isPlain ? [step('cure', toolsHr, curedHr)] : []),
    ...(isExposed ? [step('wash', washHr, null), step('cure-washed', washHr, null)] : []),
    ...(day.alsoEarly === null ? [] : [step('saw-early', earlyHr?.fromHr ?? null, earlyHr?.toHr ?? null)]),
    ...(day.isSawn
      ? [
          step('saw', sawnHr?.fromHr ?? null, sawnHr?.toHr ?? null),
          step('cure-cuts', sawnHr?.fromHr ?? null, sawnHr?.toHr ?? null),
        ]
      : []),
  ];
}
