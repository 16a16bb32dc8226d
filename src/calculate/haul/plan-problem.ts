import { lbPerCuFtToLbPerCuYd, type Rate, tonToLb } from '../../units/index.ts';
import type { BaseResult } from '../base/index.ts';
import { num } from '../figure.ts';
import type { BaseSupplier, DumpPlace, Stream } from '../job.ts';
import type { StreamFigures } from '../tear-out/index.ts';
import type { HaulRates } from './cost-figures.ts';
import type { PlanBase, PlanPlace, PlanProblem, Tariff } from './plan/index.ts';
import { truckIsByTheMile } from './trip.ts';
import type { UsableTrailer } from './usable-trailer.ts';

export type HaulSetting = {
  readonly trailers: readonly UsableTrailer[];
  /** Those that are open. */
  readonly places: readonly DumpPlace[];
  readonly streams: readonly { readonly stream: Stream; readonly torn: StreamFigures }[];
  readonly base: BaseResult['figures'];
  readonly supplier: BaseSupplier;
  readonly baseRoomLb: number | null;
  readonly rates: HaulRates;
};

/** The haul as plain numbers, everything in the order of its name. */
export function planProblem(setting: HaulSetting): PlanProblem {
  const { trailers, places, streams, rates } = setting;
  const truckUsd = rates.towVehicle.cost.amountUsd.toNumber();
  const byTheMile = truckIsByTheMile(rates.towVehicle.cost);
  return {
    trailers: trailers
      .map(({ trailer, figures }) => ({
        id: trailer.id,
        payloadLb: num(figures.payload),
        boxCuYd: num(figures['box-volume']),
      }))
      .sort(byName),
    places: places.map((place) => planPlace(place, setting.supplier)).sort(byName),
    streams: streams.map(({ stream, torn }) => ({
      stream,
      weightLb: num(torn.weight),
      looseLbPerCuYd: num(torn.weight) / num(torn['loose-volume']),
    })),
    base: planBase(setting),
    rates: {
      driverUsdPerHr: num(rates.laborUsdPerHr),
      truckUsdPerHr: byTheMile ? 0 : truckUsd,
      truckUsdPerMi: byTheMile ? truckUsd : 0,
      loadingHr: rates.loadingHr,
      swapHr: rates.swapHr,
      driverCount: rates.driverCount,
    },
    mostHr: null,
    mostTrailerHr: null,
  };
}

function byName(one: { readonly id: string }, other: { readonly id: string }): number {
  return one.id < other.id ? -1 : 1;
}

function planPlace(place: DumpPlace, supplier: BaseSupplier): PlanPlace {
  const tariff = tariffOf(place.fee);
  return {
    id: place.id,
    accepts: place.accepts,
    tariff,
    tariffWithBase: place.feeWithBase === null ? tariff : tariffOf(place.feeWithBase),
    minimumUsd: place.minimumUsd.toNumber(),
    surcharges: Object.fromEntries(
      Object.entries(place.surcharges).map(([stream, rate]) => [stream, tariffOf(rate)]),
    ),
    mixedLoads: place.mixedLoads,
    distanceMi: place.distanceMi,
    driveHr: place.driveHr,
    turnHr: place.turnHr,
    sellsBase: place.sellsBase,
    baseUsdPerLb: usdPerLb((place.base ?? supplier).price),
    baseMinimumUsd: place.base?.minimumUsd.toNumber() ?? 0,
  };
}

/** Base is sold by the ton. */
function usdPerLb({ amountUsd }: Rate): number {
  return amountUsd.toNumber() / tonToLb(1);
}

function tariffOf(rate: Rate): Tariff {
  const usd = rate.amountUsd.toNumber();
  return {
    usdPerLoad: rate.perUnit === 'load' ? usd : 0,
    usdPerTon: rate.perUnit === 'ton' ? usd : 0,
    usdPerCuYd: rate.perUnit === 'yd3' ? usd : 0,
  };
}

function planBase({ base, supplier, baseRoomLb }: HaulSetting): PlanBase | null {
  const orderLb = tonToLb(num(base.total['order-tons']));
  if (orderLb === 0) return null;
  return {
    weightLb: orderLb,
    looseLbPerCuYd: lbPerCuFtToLbPerCuYd(num(base.total['loose-unit-weight'])),
    usdPerLb: usdPerLb(supplier.price),
    deliveryUsd: supplier.deliveryUsd.toNumber(),
    deliveryLb: tonToLb(supplier.deliveryTon),
    roomLb: baseRoomLb,
  };
}
