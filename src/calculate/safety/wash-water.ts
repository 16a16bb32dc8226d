import { constant, type Figure, figure, given } from '../figure.ts';

/**
 * Clean running water to wash wet cement off, for each worker and day [gal].
 * Source: CPWR, Construction Solutions, reinforced concrete, solution 58: 5 to 7 gal (seen).
 */
export const WASH_WATER_GAL = { least: 5, most: 7 } as const;
const SOURCE =
  'CPWR, Construction Solutions, reinforced concrete, solution 58: 5 to 7 gal a worker a day (seen)';

/** people x days x gallons a person a day. */
export function washWaterGal(need: {
  peopleCount: number;
  dayCount: number;
  galPerPersonDay: number;
}): number {
  return need.peopleCount * need.dayCount * need.galPerPersonDay;
}

/** Wash water to bring on the day of the pour, for the whole crew. */
export function washWaterFigures(peopleCount: number): {
  readonly 'wash-least': Figure;
  readonly 'wash-most': Figure;
} {
  const one = (galPerPersonDay: number) =>
    figure({
      value: washWaterGal({ peopleCount, dayCount: 1, galPerPersonDay }),
      unit: 'gal',
      decimals: 0,
      formula: 'crewCount * galPerPersonDay',
      inputs: {
        crewCount: given('plan.crew', peopleCount, 'each'),
        galPerPersonDay: constant('clean wash water a worker a day', galPerPersonDay, 'gal', SOURCE),
      },
      source: SOURCE,
    });
  return { 'wash-least': one(WASH_WATER_GAL.least), 'wash-most': one(WASH_WATER_GAL.most) };
}
