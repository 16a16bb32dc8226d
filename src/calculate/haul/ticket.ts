import type { Decimal } from 'decimal.js';
import { lbToTon, type Rate, roundToCent, sumUsd, Usd } from '../../units/index.ts';
import type { DumpPlace, Stream } from '../job.ts';

type Tariff = Pick<DumpPlace, 'fee' | 'minimumUsd' | 'surcharges' | 'feeWithBase'>;
type Ticket = {
  readonly weightLb: number;
  readonly looseCuYd: number;
  readonly streams: readonly Stream[];
  readonly withBase: boolean;
};

/**
 * What one load costs at the gate, to the cent: the rate times what the load is, with what is added
 * for the streams on it, and no less than the least charge of a visit.
 *
 * fee = max(minimum, rate x loads, tons or loose yards + surcharges). Patterns of public postings: by
 * the ton with a minimum (Merced County, CA), by the yard with so much more for concrete with bar in it
 * (Clearwater County, MN), by the load (Mattoon, IL), less where base is bought (private quarry terms,
 * olivespringsquarry.net); all seen.
 *
 * @throws {RangeError} If a rate is by another unit; such a rate is refused where files are read.
 *
 * @example ticketUsd($38.91 per ton, no minimum, { weightLb: 9_000, ... }) // $175.10
 */
export function ticketUsd(tariff: Tariff, load: Ticket): Decimal {
  const rate = load.withBase ? (tariff.feeWithBase ?? tariff.fee) : tariff.fee;
  const rates = [rate, ...load.streams.flatMap((stream) => tariff.surcharges[stream] ?? [])];
  const amountUsd = sumUsd(rates.map((one) => one.amountUsd.times(billedQuantity(one, load))));
  return roundToCent(Usd.max(tariff.minimumUsd, amountUsd));
}

/** The tickets of several loads together. */
export function ticketsUsd(tariff: Tariff, loads: readonly Ticket[]): Decimal {
  return sumUsd(loads.map((load) => ticketUsd(tariff, load)));
}

function billedQuantity(fee: Rate, load: Ticket): Decimal {
  switch (fee.perUnit) {
    case 'load':
      return new Usd(1);
    case 'ton':
      return new Usd(lbToTon(load.weightLb));
    case 'yd3':
      return new Usd(load.looseCuYd);
    default:
      throw new RangeError(`a place charges by the load, ton or yd3, got ${fee.perUnit}`);
  }
}
