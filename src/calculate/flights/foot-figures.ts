import { type Figure, type Given, given, num } from '../figure.ts';
import type { Flight, FootSpot } from '../job.ts';
import type { FootChanges } from './foot-changes.ts';
import { lengthFigure } from './length-figure.ts';
import { isEven } from './limits.ts';
import { type SurfaceFigures, surfaceFigures } from './surface-figures.ts';

export const FOOT_SPOTS: readonly FootSpot[] = ['left', 'middle', 'right'];

export type FootFigures = {
  /** Highest less lowest riser as it is now [in]. */
  readonly 'difference-now': Figure;
  /** The lowest riser once the surface at the foot is new [in]. */
  readonly risers: Readonly<Record<FootSpot, Figure>>;
  /** The highest riser of the flight then, and how far it is above the lowest [in]. */
  readonly highest: Figure;
  readonly difference: Figure;
  /** Where the surface would have to lie; only where the steps above the lowest are even and low enough. */
  readonly surface?: SurfaceFigures;
};

/** Risers by name, from the bottom up: riser1In, riser2In. */
export function risersOf({ id, risersIn }: Pick<Flight, 'id' | 'risersIn'>): Record<string, Given> {
  return Object.fromEntries(
    risersIn.map((riserIn, index) => [
      `riser${index + 1}In`,
      given(`site.flights.${id}.risers.${index}`, riserIn, 'in'),
    ]),
  );
}

/**
 * What the surface at its foot does to a flight that stays: only the lowest riser changes, by as much as the
 * surface rises or drops, at each end and in the middle. Source: geometry.
 *
 * @throws {RangeError} If the flight has no riser, which the reader refuses.
 */
export function footFigures(flight: Pick<Flight, 'id' | 'risersIn'>, changes: FootChanges): FootFigures {
  const taped = risersOf(flight);
  const { riser1In, ...others } = taped;
  if (riser1In === undefined) throw new RangeError(`the flight ${flight.id} has no riser`);
  const riserAt = (spot: FootSpot) => {
    const riseIn = changes[spot];
    return lengthFigure(num(riser1In) - num(riseIn), 'riser1In - riseIn', { riser1In, riseIn });
  };
  const risers = { left: riserAt('left'), middle: riserAt('middle'), right: riserAt('right') };
  const then = { ...others, leftIn: risers.left, middleIn: risers.middle, rightIn: risers.right };
  const surface = isEven(flight.risersIn.slice(1)) ? surfaceFigures({ riser1In, others, risers }) : null;
  return {
    'difference-now': differenceOf(taped),
    risers,
    highest: lengthFigure(
      Math.max(...Object.values(then).map(num)),
      `max(${Object.keys(then).join(', ')})`,
      then,
    ),
    difference: differenceOf(then),
    ...(surface === null ? {} : { surface }),
  };
}

function differenceOf(inputs: Readonly<Record<string, Figure | Given>>): Figure {
  const [values, names] = [Object.values(inputs).map(num), Object.keys(inputs).join(', ')];
  return lengthFigure(Math.max(...values) - Math.min(...values), `max(${names}) - min(${names})`, inputs);
}
