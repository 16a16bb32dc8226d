import type { Decimal } from 'decimal.js';
import { type Rate, Usd } from '../../units/index.ts';
import type { Carrier, Placing, Pump } from '../job.ts';
import { carryHr, carryTrips } from './carry.ts';
import type { CarriedBy, Fixed, Offer } from './choose.ts';
import { cuYdPerHr, ftPerHr } from './paces.ts';

/** A part that the chute does not reach. */
export type CarriedPart = {
  readonly volumeCuYd: number;
  readonly wayFt: number;
  readonly farthestFt: number;
};

/** The worst of the way; null where nobody said, and nothing is held against it. */
export type Way = { readonly slope: number | null; readonly widthIn: number | null };

export type Effort = { readonly trips: number; readonly laborHr: number; readonly clockHr: number };

/** What a part takes by one means. */
export function effortOf(part: CarriedPart, means: CarriedBy, placing: Placing): Effort {
  if (means === 'pump') return pumpEffort(part, present(placing.pump));
  return carrierEffort(part, present(placing[means]));
}

function carrierEffort({ volumeCuYd, wayFt }: CarriedPart, carrier: Carrier): Effort {
  const trips = carryTrips({ volumeCuYd, holdsCuFt: carrier.holdsCuFt });
  const laborHr = carryHr({ trips, wayFt, speedFtPerHr: ftPerHr(carrier.speed), turnHr: carrier.turnHr });
  return { trips, laborHr, clockHr: laborHr / carrier.count };
}

function pumpEffort({ volumeCuYd }: CarriedPart, pump: Pump): Effort {
  const clockHr = volumeCuYd / cuYdPerHr(pump.pace);
  return { trips: 0, laborHr: clockHr * pump.peopleCount, clockHr };
}

/** What each means that gets there would cost a part, its hire left out. */
export function offerOf(
  part: CarriedPart,
  way: Way,
  placing: Placing,
  terms: { readonly laborUsdPerHr: Decimal; readonly pumpUsdPerCuYd: Decimal },
): Offer {
  const labor = (means: CarriedBy) =>
    new Usd(terms.laborUsdPerHr).times(effortOf(part, means, placing).laborHr);
  const { wheelbarrow, buggy, pump } = placing;
  return {
    ...(wheelbarrow !== null && goes(wheelbarrow, way) ? { wheelbarrow: labor('wheelbarrow') } : {}),
    ...(buggy !== null && goes(buggy, way)
      ? { buggy: labor('buggy').plus(byTheHour(buggy.cost).times(effortOf(part, 'buggy', placing).clockHr)) }
      : {}),
    ...(pump !== null && part.farthestFt * 12 <= pump.reachIn
      ? { pump: labor('pump').plus(terms.pumpUsdPerCuYd.times(part.volumeCuYd)) }
      : {}),
  };
}

/** Of a hire by the day nothing goes by the hour. */
function byTheHour({ amountUsd, perUnit }: Rate): Decimal {
  return new Usd(perUnit === 'h' ? amountUsd : 0);
}

function goes({ steepestSlope, narrowestIn }: Carrier, { slope, widthIn }: Way): boolean {
  return (slope ?? 0) <= steepestSlope && (widthIn ?? narrowestIn) >= narrowestIn;
}

/** Hires counted once; of the pump, with the concrete that stays in it. */
export function fixedOf(placing: Placing, concreteUsdPerCuYd: Decimal): Fixed {
  const { buggy, pump } = placing;
  return {
    wheelbarrow: new Usd(0),
    buggy: buggy === null || buggy.cost.perUnit !== 'day' ? new Usd(0) : new Usd(buggy.cost.amountUsd),
    pump: pump === null ? new Usd(0) : new Usd(pump.visitUsd).plus(concreteUsdPerCuYd.times(pump.keepsCuYd)),
  };
}

function present<T>(means: T | null): T {
  if (means === null) throw new RangeError('only what the company has makes an offer');
  return means;
}
