import type { Decimal } from 'decimal.js';
import type { Outline } from '../../geometry/index.ts';
import { Usd } from '../../units/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import type { Placing, Site } from '../job.ts';
import { usdPerCuYd } from '../usd-per-cu-yd.ts';
import { type CarriedBy, cheapestWays } from './choose.ts';
import { type InsteadFigures, insteadFigures } from './instead-figures.ts';
import { fixedOf, offerOf } from './offers.ts';
import { type Reach, reachOf } from './reach.ts';
import { type Part, type PlacedFigures, thingFigures } from './thing-figures.ts';
import { type PlacingTotals, totalFigures } from './total-figures.ts';

export { carryHr, carryTrips } from './carry.ts';
export { CARRIED_BY, type CarriedBy, cheapestWays, type Fixed, type Offer } from './choose.ts';
export { cuYdPerHr } from './paces.ts';
export { reachOf } from './reach.ts';

export type PlacedThing = {
  readonly id: string;
  /** What is placed there, allowances and all [yd3]. */
  readonly volume: Figure;
  /** On the plan; null for steps, which are reckoned as far as the farthest slab. */
  readonly outline: Outline | null;
};

export type PlacingFigures = {
  readonly things: Readonly<Record<string, PlacedFigures>>;
  /** Of each way alone, what all that is carried would cost. */
  readonly instead: InsteadFigures;
  /** The worst of the way, as it was measured. */
  readonly way: { readonly steepest?: Figure; readonly narrowest?: Figure };
  readonly total: PlacingTotals;
};

export type PlacingPlan = {
  readonly figures: PlacingFigures;
  /** How each thing is placed beyond the chute; null where the chute does all of it, or nothing gets there. */
  readonly by: Readonly<Record<string, CarriedBy | null>>;
  readonly isPumped: boolean;
};

/** What the job says of the way from the truck. */
export type PlacingAccess = Pick<
  Site['access'],
  'truckAt' | 'chuteReaches' | 'wayExtraIn' | 'waySlope' | 'wayWidthIn'
>;

type PlacingInput = {
  readonly things: readonly PlacedThing[];
  readonly access: PlacingAccess;
  readonly placing: Placing;
  readonly laborUsdPerHr: Figure;
  readonly concreteUsdPerCuYd: Decimal;
};

/**
 * How the concrete of each thing gets from the truck to its place: by the chute as far as it reaches,
 * beyond that by the cheapest of wheelbarrow, buggy and pump that gets there, hires counted once.
 *
 * @returns Null where the company says nothing of it, or the job does not say where the truck stands.
 */
export function planPlacing(input: PlacingInput): PlacingPlan | null {
  const reaches = reachesOf(input);
  if (reaches === null || input.things.length === 0) return null;
  const { placing, laborUsdPerHr, access } = input;
  const parts = input.things.map((thing, index): Part => {
    const reach = reaches[index] ?? NEAR;
    const volumeCuYd = num(thing.volume) * (1 - reach.chuteRatio);
    const carried = { volumeCuYd, wayFt: reach.wayFt, farthestFt: reach.farthestFt };
    return { id: thing.id, volume: thing.volume, reach, carried };
  });
  const carried = parts.filter((part) => part.carried.volumeCuYd > 0);
  const terms = {
    laborUsdPerHr: new Usd(laborUsdPerHr.value),
    pumpUsdPerCuYd: pumpUsdPerCuYd(placing),
  };
  const way = { slope: access.waySlope, widthIn: access.wayWidthIn };
  const offers = carried.map((part) => offerOf(part.carried, way, placing, terms));
  const fixed = fixedOf(placing, input.concreteUsdPerCuYd);
  const choice = cheapestWays(offers, fixed);
  const by = Object.fromEntries(carried.map(({ id }, index) => [id, choice.by[index] ?? null]));
  const things = Object.fromEntries(
    parts.map((part) => [part.id, thingFigures(part, by[part.id] ?? null, placing)]),
  );
  return {
    figures: {
      things,
      instead: insteadFigures(offers, fixed, placing, laborUsdPerHr),
      way: wayFigures(access),
      total: totalFigures({ parts, things, by, placing, laborUsdPerHr }),
    },
    by: Object.fromEntries(input.things.map(({ id }) => [id, by[id] ?? null])),
    isPumped: Object.values(by).includes('pump'),
  };
}

const NEAR: Reach = { farthestFt: 0, chuteRatio: 1, wayFt: 0 };

/** Of each thing; null where it cannot be told. */
function reachesOf({ things, access, placing }: PlacingInput): readonly Reach[] | null {
  const { chute, wheelbarrow, buggy, pump } = placing;
  if ([chute, wheelbarrow, buggy, pump].every((means) => means === null)) return null;
  const extraFt = access.wayExtraIn / 12;
  const found = things.map(({ id, outline }): Reach | null => {
    if (access.chuteReaches.includes(id)) return NEAR;
    if (outline === null || access.truckAt === null) return null;
    const reach = reachOf(outline, access.truckAt, chute?.reachIn ?? 0);
    return { ...reach, farthestFt: reach.farthestFt + extraFt, wayFt: reach.wayFt + extraFt };
  });
  const known = found.filter((reach) => reach !== null);
  const isTold = things.every(({ outline }, index) => found[index] !== null || outline === null);
  if (!isTold || known.length === 0) return null;
  const farthest = known.reduce((most, reach) => (reach.farthestFt > most.farthestFt ? reach : most));
  return found.map((reach) => reach ?? farthest);
}

function wayFigures({ waySlope, wayWidthIn }: PlacingAccess): PlacingFigures['way'] {
  const one = (path: string, value: number, unit: 'ratio' | 'in') =>
    figure({
      value,
      unit,
      decimals: unit === 'in' ? 1 : 3,
      formula: 'measured',
      inputs: { measured: given(path, value, unit) },
    });
  return {
    ...(waySlope === null ? {} : { steepest: one('site.access.way-slope', waySlope, 'ratio') }),
    ...(wayWidthIn === null ? {} : { narrowest: one('site.access.way-width', wayWidthIn, 'in') }),
  };
}

function pumpUsdPerCuYd({ pump }: Placing): Decimal {
  const byVolume = pump?.byVolume ?? null;
  return byVolume === null ? new Usd(0) : usdPerCuYd(byVolume);
}
