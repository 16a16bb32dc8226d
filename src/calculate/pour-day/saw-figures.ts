import { type Figure, figure, num } from '../figure.ts';
import type { Pour } from '../job.ts';
import { type FinishClockFigures, hours, type PourTasks, type SettingFigures } from './clock-figures.ts';
import { type Span, sawTimes } from './saw-times.ts';
import { SAW_CLOSES_SOURCE, SAW_OPENS_SOURCE, type SawMethod, sawClosesHr, sawOpensHr } from './setting.ts';

export type SawFigures = {
  /** Of its own joints; only where another saw cuts the rest. */
  readonly 'cutting-hours'?: Figure;
  /** Hours after finishing. */
  readonly 'opens-after': Figure;
  readonly 'closes-after': Figure;
  /** On the clock, hours from midnight of the day of the pour. */
  readonly opens: Figure;
  readonly closes: Figure;
  /** Hours of cutting that fall outside of the hours in which noise is allowed. */
  readonly 'hours-short': Figure;
};

export type SawPlan = {
  readonly window: Span;
  /** When it is sawn; null where no hour of the window may be loud. */
  readonly at: Span | null;
};

/** When the joints are sawn with one kind of saw; null where none are. */
export function sawFigures(
  method: SawMethod,
  day: {
    readonly finish: FinishClockFigures;
    readonly setting: SettingFigures;
    readonly tasks: PourTasks;
    readonly noiseAllowed: Pour['noiseAllowed'];
    /** Where it cuts not all of them. */
    readonly cuttingHr?: Figure;
  },
): { readonly figures: SawFigures; readonly plan: SawPlan } | null {
  const { finish, setting, tasks, noiseAllowed } = day;
  const cuttingHr = day.cuttingHr ?? tasks.sawHr;
  if (cuttingHr === null) return null;
  const finishedByHr = finish['finished-by'];
  const { temperature } = setting;
  const opensAfter = figure({
    value: sawOpensHr(method, num(temperature)),
    unit: 'h',
    decimals: 1,
    formula: { method: 'straight between the hours for 90 °F and for 40 °F' },
    inputs: { temperatureF: temperature },
    source: SAW_OPENS_SOURCE,
  });
  const closesAfter = figure({
    value: sawClosesHr(method, num(temperature)),
    unit: 'h',
    decimals: 1,
    formula: {
      method: 'twice the time to the first cut, at most 18 h; of an early-entry saw that to a wet cut',
    },
    inputs: { temperatureF: temperature },
    source: SAW_CLOSES_SOURCE,
  });
  const window = {
    fromHr: num(finishedByHr) + num(opensAfter),
    toHr: num(finishedByHr) + num(closesAfter),
  };
  const { at, shortHr } = sawTimes({ window, cuttingHr: num(cuttingHr), allowed: noiseAllowed });
  const opens = hours(window.fromHr, 'finishedByHr + opensAfterHr', {
    finishedByHr,
    opensAfterHr: opensAfter,
  });
  const closes = hours(window.toHr, 'finishedByHr + closesAfterHr', {
    finishedByHr,
    closesAfterHr: closesAfter,
  });
  return {
    figures: {
      ...(day.cuttingHr === undefined ? {} : { 'cutting-hours': day.cuttingHr }),
      'opens-after': opensAfter,
      'closes-after': closesAfter,
      opens,
      closes,
      'hours-short': figure({
        value: shortHr,
        unit: 'h',
        decimals: 1,
        formula: {
          method: 'hours of sawing less the longest stretch of its window in which noise is allowed',
        },
        inputs: { cuttingHr, opensHr: opens, closesHr: closes },
      }),
    },
    plan: { window, at },
  };
}
