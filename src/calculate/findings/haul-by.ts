import { daysBetween } from '../../units/index.ts';
import { type Figure, figure, given } from '../figure.ts';

export type HaulByFigures = {
  /** From the first day of work to that of the last trip [days]. */
  readonly 'last-trip': Figure;
  /** [days] */
  readonly 'days-late': Figure;
};

/**
 * Calendar days by which the last trip is later than the day by which all is to be hauled; 0 where it
 * is not. Both are counted from the first day of work.
 *
 * @param hauled.haulByOn Not before the first day of work; null where nobody named one.
 * @param hauled.tripsOn  The day of each trip.
 * @returns Null where no day is named or nothing is hauled.
 */
export function haulByFigures(hauled: {
  readonly startsOn: string;
  readonly haulByOn: string | null;
  readonly tripsOn: readonly string[];
}): HaulByFigures | null {
  const { startsOn, haulByOn } = hauled;
  const lastOn = hauled.tripsOn.toSorted().at(-1);
  if (haulByOn === null || lastOn === undefined) return null;
  const [lastDays, allowedDays] = [daysBetween(startsOn, lastOn), daysBetween(startsOn, haulByOn)];
  const lastTripDays = figure({
    value: lastDays,
    unit: 'days',
    decimals: 0,
    formula: { method: 'from the first day of work to that of the last trip' },
    inputs: {},
  });
  return {
    'last-trip': lastTripDays,
    'days-late': figure({
      value: Math.max(0, lastDays - allowedDays),
      unit: 'days',
      decimals: 0,
      formula: 'max(0, lastTripDays - haulByDays)',
      inputs: { lastTripDays, haulByDays: given('plan.haul-by', allowedDays, 'days') },
    }),
  };
}
