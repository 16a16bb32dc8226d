import type { CoreProblem } from '../../problems/index.ts';
import { Usd } from '../../units/index.ts';
import { type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Additive, ConcreteSupplier } from '../job.ts';
import { type Arrival, arrivals } from './delivery.ts';
import { type DeliveryFigures, deliveryFigures, deliveryTerms } from './delivery-figures.ts';
import { type TruckTerms, truckLoadsCuYd } from './truck.ts';
import { type TruckFigures, truckFigures, truckProblem, type Waiting } from './truck-figures.ts';

export type ByTruck = {
  readonly truck: TruckFigures;
  readonly delivery: DeliveryFigures;
  readonly arrivals: readonly Arrival[];
  readonly problems: readonly CoreProblem[];
};

/** The order by truck: loads no larger than what is out before the limit, every fee, and when trucks come. */
export function byTruck(made: {
  readonly needed: Figure;
  readonly placed: Figure;
  readonly clockHr: Figure | null;
  readonly placePerHr: FigureInput;
  readonly supplier: ConcreteSupplier;
  readonly poursOnSaturday: boolean;
  readonly additives: readonly Additive[];
}): ByTruck {
  const problem = truckProblem(made.supplier);
  // A truck that cannot carry one increment is the problem; the order is still shown, one increment a load.
  const supplier =
    problem === null ? made.supplier : { ...made.supplier, truckCuYd: made.supplier.incrementCuYd };
  const known = deliveryTerms({ ...made, supplier, volume: made.placed });
  const { 'most-per-load': mostPerLoad = null } = known;
  const waiting = waitingOf(known['wait-per-yard'], supplier);
  const terms: TruckTerms = {
    ...supplier,
    truckCuYd: mostPerLoad === null ? supplier.truckCuYd : num(mostPerLoad),
    additives: Object.fromEntries(made.additives.map((additive) => [additive, supplier.additives[additive]])),
    saturdayFee: made.poursOnSaturday ? supplier.saturdayFee : null,
    ...(waiting === null
      ? {}
      : { waitUsdPerCuYd: new Usd(waiting.usdPerHr.value).times(num(waiting.perYardHr)) }),
  };
  const truck = truckFigures(made.needed, terms, { waiting, mostPerLoad });
  const loads = { largest: truck['largest-load'], beforeLast: truck['load-before-last'] ?? null };
  const trucks = arrivals(truckLoadsCuYd(num(truck.order), terms), num(known.rate));
  return {
    truck,
    delivery: { ...deliveryFigures(known, loads, supplier), ...lastEmpty(trucks, known.rate, truck.order) },
    arrivals: trucks,
    problems: problem === null ? [] : [problem],
  };
}

/** Nothing where no truck comes. */
function lastEmpty(
  trucks: readonly Arrival[],
  rateCuYdPerHr: Figure,
  orderCuYd: Figure,
): Pick<DeliveryFigures, 'last-empty'> {
  const last = trucks.at(-1);
  if (last === undefined) return {};
  return {
    'last-empty': figure({
      value: last.afterFirstHr + last.unloadHr,
      unit: 'h',
      decimals: 2,
      formula: {
        method:
          'each truck comes as the one before it is empty, in steps of 5 min up; then the last one unloads',
      },
      inputs: { orderCuYd, rateCuYdPerHr },
    }),
  };
}

function waitingOf(perYardHr: Figure | undefined, { waitFee }: ConcreteSupplier): Waiting | null {
  if (perYardHr === undefined || waitFee === null) return null;
  return {
    perYardHr,
    usdPerHr: given('company.suppliers.concrete.wait-fee', waitFee.amountUsd, '$/h'),
  };
}
