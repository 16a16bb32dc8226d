import { ceilCount } from '../../units/index.ts';
import { type Figure, figure, type Given, num } from '../figure.ts';
import type { FinishClockFigures, PourTasks, SettingFigures } from './clock-figures.ts';

export type FinisherFigures = {
  /** From the first tool until the last concrete has set [h]. */
  readonly 'time-to-finish': Figure;
  readonly needed: Figure;
  readonly short: Figure;
  /** By how much the first concrete has set before the crew is done placing [h]. */
  readonly 'tools-late': Figure;
};

/** People it takes to finish all of it before it has set. */
export function finisherFigures(
  finish: FinishClockFigures,
  setting: SettingFigures,
  tasks: Pick<PourTasks, 'placeHr' | 'finishLaborHr'>,
  crewCount: Given,
): FinisherFigures {
  const { 'set-by': setByHr, 'tools-from': toolsFromHr } = finish;
  const { 'setting-time': settingTimeHr } = setting;
  const { finishLaborHr, placeHr } = tasks;
  const timeToFinish = figure({
    value: num(setByHr) - num(toolsFromHr),
    unit: 'h',
    decimals: 1,
    formula: 'setByHr - toolsFromHr',
    inputs: { setByHr, toolsFromHr },
  });
  const needed = figure({
    value: ceilCount(num(finishLaborHr) / num(timeToFinish)),
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(finishLaborHr / timeToFinishHr, 1)',
    inputs: { finishLaborHr, timeToFinishHr: timeToFinish },
    rounding: 'up',
  });
  return {
    'time-to-finish': timeToFinish,
    needed,
    short: figure({
      value: Math.max(0, num(needed) - num(crewCount)),
      unit: 'each',
      decimals: 0,
      formula: 'max(0, neededCount - crewCount)',
      inputs: { neededCount: needed, crewCount },
    }),
    'tools-late': figure({
      value: Math.max(0, num(placeHr) - num(settingTimeHr)),
      unit: 'h',
      decimals: 1,
      formula: 'max(0, placeHr - settingTimeHr)',
      inputs: { placeHr, settingTimeHr },
    }),
  };
}
