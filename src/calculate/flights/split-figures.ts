import { type Figure, type FigureInput, figure, type Given, given, num } from '../figure.ts';
import type { Flight } from '../job.ts';
import { risersOf } from './foot-figures.ts';
import { lengthFigure } from './length-figure.ts';

export type TreadFigures = {
  /** What is laid on it, or taken off it, so that all risers are equal [in]; one of them is 0. */
  readonly add: Figure;
  readonly 'take-off': Figure;
  /** What is laid lacks to its thinnest, or is over its thickest [in]; where something is laid and that is known. */
  readonly 'too-thin-by'?: Figure;
  readonly 'too-thick-by'?: Figure;
};

export type SplitFigures = {
  /** The rise of the whole flight, at the middle of its foot [in]. */
  readonly rise: Figure;
  readonly riser: Figure;
  /** tread-1 is the lowest; none in a flight of one riser. */
  readonly treads: Readonly<Record<string, TreadFigures>>;
  /** Laid on the treads, without the landing [cu ft]. */
  readonly volume: Figure;
};

/** Below this nothing is laid and nothing taken off: common practice, no source [in]. */
export const LEVEL_ENOUGH_IN = 1 / 16;

/**
 * A flight that stays, split into equal risers once more: what each tread has to come up or go down.
 *
 * Tread k stands the sum of the risers above it below the landing, and has to stand n - k equal risers below
 * it. The rise is taken at the middle of the foot.
 *
 * @param footIn  How far the new surface lies above the one that is there, at the middle [in].
 * @param landing What is laid on the landing; null where it stays as it is.
 */
export function splitFigures(flight: Flight, footIn: FigureInput, landing: Given | null): SplitFigures {
  const { id, risersIn, treadIn, widthIn } = flight;
  const risers = risersOf(flight);
  const names = Object.keys(risers);
  const raise = landing === null ? {} : { landingIn: landing };
  const raiseIn = landing === null ? 0 : num(landing);
  const plus = landing === null ? '' : ' + landingIn';

  const rise = lengthFigure(
    risersIn.reduce((sum, riserIn) => sum + riserIn, 0) - num(footIn) + raiseIn,
    `${names.join(' + ')} - footIn${plus}`,
    { ...risers, footIn, ...raise },
  );
  const riser = lengthFigure(num(rise) / risersIn.length, `riseIn / ${risersIn.length}`, {
    riseIn: rise,
  });
  const treads = Object.fromEntries(
    names.slice(1).map((_, index) => {
      const above = Object.fromEntries(names.slice(index + 1).map((name) => [name, risers[name] as Given]));
      return [`tread-${index + 1}`, treadFigures(flight, { above, raise, riser })] as const;
    }),
  );
  const adds = Object.fromEntries(
    Object.entries(treads).map(([key, { add }]) => [`${key.replace('tread-', 'tread')}AddIn`, add]),
  );
  const volume = figure({
    value: (Object.values(adds).reduce((sum, add) => sum + num(add), 0) * treadIn * widthIn) / 1728,
    unit: 'cu ft',
    decimals: 3,
    formula: `(${Object.keys(adds).join(' + ') || '0'}) * treadIn * widthIn / 1728`,
    inputs: {
      ...adds,
      treadIn: given(`site.flights.${id}.tread`, treadIn, 'in'),
      widthIn: given(`site.flights.${id}.width`, widthIn, 'in'),
    },
  });
  return { rise, riser, treads, volume };
}

/**
 * @param made.above The risers above the tread.
 * @param made.raise What is laid on the landing, or nothing.
 * @param made.riser What every riser is to be.
 */
function treadFigures(
  { id, topping }: Pick<Flight, 'id' | 'topping'>,
  made: {
    readonly above: Readonly<Record<string, Given>>;
    readonly raise: Readonly<Record<string, Given>>;
    readonly riser: Figure;
  },
): TreadFigures {
  const { above, raise, riser } = made;
  const count = Object.keys(above).length;
  const stands = { ...above, ...raise };
  const isIn = Object.values(stands).reduce((sum, part) => sum + num(part), 0);
  const wantedIn = count * num(riser);
  const inputs = { ...stands, equalIn: riser };
  const [is, wanted] = [Object.keys(stands).join(' + '), `${count} * equalIn`];
  const add = lengthFigure(Math.max(0, isIn - wantedIn), `max(0, ${is} - ${wanted})`, inputs);
  const takeOff = lengthFigure(Math.max(0, wantedIn - isIn), `max(0, ${wanted} - (${is}))`, inputs);
  if (topping === null || num(add) < LEVEL_ENOUGH_IN) return { add, 'take-off': takeOff };
  const at = (key: string) => `site.flights.${id}.topping.${key}`;
  return {
    add,
    'take-off': takeOff,
    'too-thin-by': lengthFigure(Math.max(0, topping.thinnestIn - num(add)), 'max(0, thinnestIn - addIn)', {
      thinnestIn: given(at('thinnest'), topping.thinnestIn, 'in'),
      addIn: add,
    }),
    'too-thick-by': lengthFigure(Math.max(0, num(add) - topping.thickestIn), 'max(0, addIn - thickestIn)', {
      thickestIn: given(at('thickest'), topping.thickestIn, 'in'),
      addIn: add,
    }),
  };
}
