import type { Decimal } from 'decimal.js';
import { lbToTon, type Rate, roundToCent, sumUsd, Usd } from '../../units/index.ts';
import type { DumpPlace } from '../job.ts';

type Tariff = Pick<DumpPlace, 'fee' | 'minimumUsd'>;
type Ticket = { readonly weightLb: number; readonly looseCuYd: number };

/**
 * What one load costs at the gate, to the cent: the rate times what the load is, and no less than
 * the least charge of a visit.
 *
 * fee = max(minimum, rate x loads, tons or loose yards). Patterns of public postings: by the ton
 * with a minimum (Merced County, CA), by the yard (Clearwater County, MN), by the load (Mattoon,
 * IL), all seen.
 *
 * @throws {RangeError} If the rate is by another unit; such a rate is refused where files are read.
 *
 * @example ticketUsd({ fee: $38.91 per ton, minimumUsd: 0 }, { weightLb: 9_000, looseCuYd: 4 }) // $175.10
 */
export function ticketUsd(tariff: Tariff, load: Ticket): Decimal {
  const amountUsd = tariff.fee.amountUsd.times(billedQuantity(tariff.fee, load));
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
