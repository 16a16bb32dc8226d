import { constant, type Figure, figure, type Given, num } from '../figure.ts';
import { SETTING_SOURCE, settingHr, TOOLS_AFTER_RATIO, TOOLS_SOURCE, TOOLS_SPREAD_RATIO } from './setting.ts';

/** Hours of a task on the clock; null where it is not done. */
export type PourTasks = {
  readonly placeHr: Figure;
  readonly finishHr: Figure;
  readonly finishLaborHr: Figure;
  readonly cureHr: Figure;
  readonly sawHr: Figure | null;
};

export type SettingFigures = {
  /** Mean of the air from the first truck on [°F]. */
  readonly 'mean-air': Figure;
  /** Of concrete and air together [°F]. */
  readonly temperature: Figure;
  readonly 'setting-time': Figure;
  /** From placing until a tool may touch the face: about, earliest, latest [h]. */
  readonly 'tools-after': Figure;
  readonly 'tools-after-earliest': Figure;
  readonly 'tools-after-latest': Figure;
};

/** Hours from midnight of the day of the pour; past 24 it is the next day. */
export type ClockFigures = {
  readonly 'first-truck': Figure;
  readonly 'placed-by': Figure;
};
export type FinishClockFigures = {
  readonly 'tools-from': Figure;
  readonly 'finished-by': Figure;
  readonly 'cured-by': Figure;
  /** The last concrete is too stiff for rain to mark it [h]. */
  readonly 'set-by': Figure;
};

const CLOCK_DECIMALS = 2;

export const hours = (
  value: number,
  formula: string,
  inputs: Readonly<Record<string, Figure | Given | ReturnType<typeof constant>>>,
  source?: string,
): Figure =>
  figure({ value, unit: 'h', decimals: CLOCK_DECIMALS, formula, inputs, ...(source ? { source } : {}) });

/**
 * What the crew's own hours say, whatever the weather.
 *
 * @param lastEmptyHr When the last truck is empty, after the first one came; null where none comes. Placing is
 *                    never over before.
 */
export function clockFigures(
  firstTruckHr: Given,
  { placeHr }: PourTasks,
  lastEmptyHr: Figure | null,
): ClockFigures {
  const firstTruck = hours(num(firstTruckHr), 'firstTruckHr', { firstTruckHr });
  return {
    'first-truck': firstTruck,
    'placed-by':
      lastEmptyHr === null
        ? hours(num(firstTruck) + num(placeHr), 'firstTruckHr + placeHr', {
            firstTruckHr: firstTruck,
            placeHr,
          })
        : hours(
            num(firstTruck) + Math.max(num(placeHr), num(lastEmptyHr)),
            'firstTruckHr + max(placeHr, lastEmptyHr)',
            { firstTruckHr: firstTruck, placeHr, lastEmptyHr },
          ),
  };
}

/** How fast the concrete sets on this day. */
export function settingFigures(concreteF: Given, meanAirF: number): SettingFigures {
  const meanAir = figure({
    value: meanAirF,
    unit: '°F',
    decimals: 1,
    formula: { method: 'mean of the air at the whole hours from the first truck to six hours after it' },
    inputs: {},
  });
  const temperature = figure({
    value: (num(concreteF) + meanAirF) / 2,
    unit: '°F',
    decimals: 1,
    formula: '(concreteF + meanAirF) / 2',
    inputs: { concreteF, meanAirF: meanAir },
    source:
      'common practice, no source: a slab sets between the temperature it comes with and that of the air',
  });
  const settingTime = figure({
    value: settingHr(num(temperature)),
    unit: 'h',
    decimals: 1,
    formula: { method: 'straight between the rows of the table of setting times' },
    inputs: { temperatureF: temperature },
    source: SETTING_SOURCE,
  });
  const share = (ratio: number) =>
    figure({
      value: num(settingTime) * ratio,
      unit: 'h',
      decimals: 1,
      formula: 'settingHr * shareRatio',
      inputs: {
        settingHr: settingTime,
        shareRatio: constant('of the setting time', ratio, 'ratio', TOOLS_SOURCE),
      },
      source: TOOLS_SOURCE,
    });
  return {
    'mean-air': meanAir,
    temperature,
    'setting-time': settingTime,
    'tools-after': share(TOOLS_AFTER_RATIO),
    'tools-after-earliest': share(TOOLS_AFTER_RATIO - TOOLS_SPREAD_RATIO),
    'tools-after-latest': share(TOOLS_AFTER_RATIO + TOOLS_SPREAD_RATIO),
  };
}

/**
 * When finishing starts and ends. The crew that places also finishes, so no tool starts before the last
 * concrete is down; the last of it is finished no sooner than its bleed water is gone.
 */
export function finishClock(
  clock: ClockFigures,
  setting: SettingFigures,
  tasks: PourTasks,
): FinishClockFigures {
  const { 'first-truck': firstTruckHr, 'placed-by': placedByHr } = clock;
  const { 'tools-after': toolsAfterHr, 'setting-time': settingTimeHr } = setting;
  const { finishHr, cureHr } = tasks;
  const toolsFrom = hours(
    Math.max(num(firstTruckHr) + num(toolsAfterHr), num(placedByHr)),
    'max(firstTruckHr + toolsAfterHr, placedByHr)',
    { firstTruckHr, toolsAfterHr, placedByHr },
  );
  const finishedBy = hours(
    Math.max(num(toolsFrom) + num(finishHr), num(placedByHr) + num(toolsAfterHr)),
    'max(toolsFromHr + finishHr, placedByHr + toolsAfterHr)',
    { toolsFromHr: toolsFrom, finishHr, placedByHr, toolsAfterHr },
  );
  return {
    'tools-from': toolsFrom,
    'finished-by': finishedBy,
    'cured-by': hours(num(finishedBy) + num(cureHr), 'finishedByHr + cureHr', {
      finishedByHr: finishedBy,
      cureHr,
    }),
    'set-by': hours(num(placedByHr) + num(settingTimeHr), 'placedByHr + settingTimeHr', {
      placedByHr,
      settingTimeHr,
    }),
  };
}
