import { Usd } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { DumpPlace, TowVehicle } from '../job.ts';
import { haulCostUsd, truckIsByTheMile } from './trip.ts';

/** What every haul of a job costs by: trucks and drivers, the time to load and to swap trailers. */
export type HaulRates = {
  readonly towVehicle: TowVehicle;
  readonly laborUsdPerHr: Figure;
  readonly loadingHr: number;
  /** Null where trailers are not swapped. */
  readonly swapHr: number | null;
  readonly driverCount: number;
};

/** Driver, truck and fees of so many hours and miles [$]. */
export function haulCostFigure(
  drive: { readonly hours: Figure; readonly miles: Figure; readonly fee: Figure | null },
  rates: HaulRates,
): Figure {
  const { hours, miles, fee } = drive;
  const truck = rates.towVehicle.cost;
  const byTheMile = truckIsByTheMile(truck);
  const inputs: Record<string, FigureInput> = {
    ...(fee === null ? {} : { feeUsd: fee }),
    hours,
    laborUsdPerHr: rates.laborUsdPerHr,
    ...(byTheMile ? { miles } : {}),
    truckUsd: given('company.tow-vehicle.cost', truck.amountUsd, byTheMile ? '$/mi' : '$/h'),
  };
  return figure({
    value: haulCostUsd({
      feeUsd: new Usd(fee === null ? 0 : fee.value),
      hours: num(hours),
      miles: num(miles),
      laborUsdPerHr: new Usd(rates.laborUsdPerHr.value),
      truck,
    }),
    unit: '$',
    decimals: 2,
    formula: `roundCent(${fee === null ? '' : 'feeUsd + '}laborUsdPerHr * hours + truckUsd * ${byTheMile ? 'miles' : 'hours'})`,
    inputs,
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
}

/** The times and the distance of a place, as inputs. */
export function placeInputs(place: DumpPlace) {
  const path = `company.places.${place.id}`;
  return {
    driveHr: given(`${path}.drive`, place.driveHr, 'h'),
    turnHr: given(`${path}.turn`, place.turnHr, 'h'),
    distanceMi: given(`${path}.distance`, place.distanceMi, 'mi'),
  };
}
