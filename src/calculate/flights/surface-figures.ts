import { type Figure, type Given, num } from '../figure.ts';
import type { FootSpot } from '../job.ts';
import { lengthFigure } from './length-figure.ts';
import { RISER_MOST, RISER_SPREAD } from './limits.ts';

export type SurfaceFigures = {
  /** The lowest and the highest that the lowest riser may be beside the others [in]. */
  readonly 'riser-least': Figure;
  readonly 'riser-most': Figure;
  /** How far the surface may come up or go down against what is there now [in]. */
  readonly 'may-rise': Figure;
  readonly 'may-drop': Figure;
  /** How far it has to, since the lowest riser is too high or too low now [in]; one of them is 0. */
  readonly 'must-rise': Figure;
  readonly 'must-drop': Figure;
  /** How much higher or lower it has to lie than planned [in]; one of them is 0. */
  readonly higher: Readonly<Record<FootSpot, Figure>>;
  readonly lower: Readonly<Record<FootSpot, Figure>>;
};

/**
 * Where the surface at the foot of a flight has to lie so that its lowest riser goes with the others.
 *
 * The lowest riser may be from 3/8 in below the highest of the others to 3/8 in above the lowest of them, and
 * never above 7 3/4 in. A flight of one riser has no others: it may be anything up to that.
 *
 * @param flight.others The risers above the lowest, even among themselves.
 * @param flight.risers The lowest riser by where it is, once the surface is new.
 */
export function surfaceFigures(flight: {
  readonly riser1In: Given;
  readonly others: Readonly<Record<string, Given>>;
  readonly risers: Readonly<Record<FootSpot, Figure>>;
}): SurfaceFigures {
  const { riser1In, others, risers } = flight;
  const [values, names] = [Object.values(others).map(num), Object.keys(others).join(', ')];
  const isAlone = values.length === 0;
  const leastIn = isAlone
    ? lengthFigure(0, '0', {})
    : lengthFigure(Math.max(0, Math.max(...values) - num(RISER_SPREAD)), `max(0, max(${names}) - spreadIn)`, {
        ...others,
        spreadIn: RISER_SPREAD,
      });
  const mostIn = isAlone
    ? lengthFigure(num(RISER_MOST), 'highestIn', { highestIn: RISER_MOST })
    : lengthFigure(
        Math.min(num(RISER_MOST), Math.min(...values) + num(RISER_SPREAD)),
        `min(highestIn, min(${names}) + spreadIn)`,
        { highestIn: RISER_MOST, ...others, spreadIn: RISER_SPREAD },
      );
  const higher = (riserIn: Figure) => above({ riserIn, mostIn });
  const lower = (riserIn: Figure) => above({ leastIn, riserIn });
  return {
    'riser-least': leastIn,
    'riser-most': mostIn,
    'may-rise': above({ riser1In, leastIn }),
    'may-drop': above({ mostIn, riser1In }),
    'must-rise': above({ riser1In, mostIn }),
    'must-drop': above({ leastIn, riser1In }),
    higher: { left: higher(risers.left), middle: higher(risers.middle), right: higher(risers.right) },
    lower: { left: lower(risers.left), middle: lower(risers.middle), right: lower(risers.right) },
  };
}

/** How far the first of two heights is above the second; 0 where it is not. */
function above(heights: Readonly<Record<string, Figure | Given>>): Figure {
  const [oneIn = Number.NaN, otherIn = Number.NaN] = Object.values(heights).map(num);
  return lengthFigure(Math.max(0, oneIn - otherIn), `max(0, ${Object.keys(heights).join(' - ')})`, heights);
}
