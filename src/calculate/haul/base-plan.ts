import type { Decimal } from 'decimal.js';
import { ceilCount, lbPerCuFtToLbPerCuYd, tonToLb, Usd } from '../../units/index.ts';
import type { BaseResult } from '../base/index.ts';
import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { BaseSupplier, DumpPlace, Trailer } from '../job.ts';
import { type HaulRates, haulCostFigure, placeInputs } from './cost-figures.ts';
import { loadCount, volumeOfWeightCuYd } from './load-count.ts';
import type { UsableTrailer } from './stream-plan.ts';
import { pairedCount, roundTripCount, tripHr } from './trip.ts';

export type HaulBaseFigures = {
  /** Of base on the trailer; 0 where it is delivered. */
  readonly loads: Figure;
  /** Of them, those that ride back on a debris trip. */
  readonly paired: Figure;
  /** Round trips for base alone. */
  readonly 'own-trips': Figure;
  /** Of the driver, for base [h]. */
  readonly hours: Figure;
  /** For base, beyond the debris trips [mi]. */
  readonly miles: Figure;
  /** Driver and truck for base [$]; the base itself is bought with the materials. */
  readonly cost: Figure;
  /** 1 where the supplier brings it, else 0. */
  readonly delivered: Figure;
  /** What the supplier asks for bringing it [$]. */
  readonly 'delivery-offer': Figure;
  /** What the supplier is paid for bringing it; 0 where it is fetched [$]. */
  readonly 'delivery-cost': Figure;
  /** What fetching was held against where it is delivered and a place sells base. */
  readonly 'if-fetched'?: FetchFigures;
};

export type FetchFigures = {
  readonly loads: Figure;
  readonly paired: Figure;
  readonly 'own-trips': Figure;
  readonly hours: Figure;
  readonly miles: Figure;
  readonly cost: Figure;
};

/** How the base comes: on which trailer from which place; both null where it is delivered or none is needed. */
export type BasePlan = {
  readonly trailer: Trailer | null;
  readonly place: DumpPlace | null;
  readonly figures: HaulBaseFigures;
};

/** Debris loads by trailer and place: those on which base can ride back. */
export type TripsTo = (trailerId: string, placeId: string) => number;

/**
 * How the base comes to the job: on the trailer, riding back on debris trips where the place of the
 * debris sells base and on trips of its own beyond those, or brought by the supplier where that costs
 * less. A load that rides back adds one more turn in the yard (scale, loading); the base can be
 * dumped on the job while debris still leaves it.
 */
export function planBase(made: {
  readonly base: BaseResult['figures'];
  readonly supplier: BaseSupplier;
  readonly trailers: readonly UsableTrailer[];
  readonly places: readonly DumpPlace[];
  readonly tripsTo: TripsTo;
  readonly rates: HaulRates;
}): BasePlan {
  const { base, supplier, trailers, rates } = made;
  const orderTon = base.total['order-tons'];
  if (!(num(orderTon) > 0)) return { trailer: null, place: null, figures: nothing('no base is laid', rates) };

  const offer = deliveryFigure(orderTon, supplier);
  const fetches = trailers.flatMap((trailer) =>
    made.places
      .filter((place) => place.sellsBase)
      .map((place) => fetchBase(base, trailer, place, made.tripsTo(trailer.trailer.id, place.id), rates)),
  );
  const best = fetches.reduce<Fetch | null>(
    (least, fetch) => (least === null || isBetter(fetch, least) ? fetch : least),
    null,
  );
  if (best === null || num(offer) < num(best.figures.cost)) {
    const none = nothing('the supplier delivers: the trailer carries no base', rates);
    const inputs = best === null ? { offerUsd: offer } : { offerUsd: offer, fetchUsd: best.figures.cost };
    const delivered = flag(
      1,
      'no place on the list sells base, or delivery costs less than fetching',
      inputs,
    );
    const figures = { ...none, delivered, 'delivery-offer': offer, 'delivery-cost': taken(offer) };
    return {
      trailer: null,
      place: null,
      figures: best === null ? figures : { ...figures, 'if-fetched': best.figures },
    };
  }
  const delivered = flag(0, 'fetching costs no more than delivery', {
    offerUsd: offer,
    fetchUsd: best.figures.cost,
  });
  return {
    trailer: best.trailer,
    place: best.place,
    figures: {
      ...best.figures,
      delivered,
      'delivery-offer': offer,
      'delivery-cost': zeroUsd('the base is fetched'),
    },
  };
}

type Fetch = {
  readonly trailer: Trailer;
  readonly place: DumpPlace;
  readonly figures: FetchFigures;
};

function isBetter(fetch: Fetch, other: Fetch): boolean {
  for (const name of ['cost', 'own-trips', 'loads'] as const) {
    const more = Math.sign(num(fetch.figures[name]) - num(other.figures[name]));
    if (more !== 0) return more < 0;
  }
  if (fetch.trailer.id !== other.trailer.id) return fetch.trailer.id < other.trailer.id;
  return fetch.place.id < other.place.id;
}

function fetchBase(
  base: BaseResult['figures'],
  { trailer, figures: trailerFigures }: UsableTrailer,
  place: DumpPlace,
  debrisTripCount: number,
  rates: HaulRates,
): Fetch {
  const { payload, 'box-volume': box } = trailerFigures;
  const { 'order-tons': orderTon, 'loose-unit-weight': looseUnitWeight } = base.total;
  const weightLb = tonToLb(num(orderTon));
  const baseCount = loadCount({
    weightLb,
    looseCuYd: volumeOfWeightCuYd(weightLb, lbPerCuFtToLbPerCuYd(num(looseUnitWeight))),
    payloadLb: num(payload),
    boxCuYd: num(box),
  });
  const loads = figure({
    value: baseCount,
    unit: 'each',
    decimals: 0,
    formula:
      'max(ceilStep(orderTon * 2000 / payloadLb, 1), ceilStep(orderTon * 2000 / (looseLbPerCuFt * 27) / boxCuYd, 1))',
    inputs: { orderTon, payloadLb: payload, looseLbPerCuFt: looseUnitWeight, boxCuYd: box },
    source: 'common practice, no source',
    rounding: 'up',
  });
  const pairing = { outCount: debrisTripCount, baseCount, pairableCount: debrisTripCount };
  const pairedLoads = figure({
    value: pairedCount(pairing),
    unit: 'each',
    decimals: 0,
    formula: { method: 'loads of base, and no more than the debris trips of that trailer to that place' },
    inputs: { loads },
  });
  const ownTrips = figure({
    value: roundTripCount(pairing) - debrisTripCount,
    unit: 'each',
    decimals: 0,
    formula: 'loads - paired',
    inputs: { loads, paired: pairedLoads },
  });
  const { driveHr, turnHr, distanceMi } = placeInputs(place);
  const ownHr = tripHr({ loadingHr: 0, outHr: place.driveHr, turnHr: place.turnHr, backHr: place.driveHr });
  const hours = figure({
    value: num(pairedLoads) * place.turnHr + num(ownTrips) * ownHr,
    unit: 'h',
    decimals: 1,
    formula: 'paired * turnHr + ownTrips * (driveHr + turnHr + driveHr)',
    inputs: { paired: pairedLoads, ownTrips, driveHr, turnHr },
    source: COMPANY_FIGURE,
  });
  const miles = figure({
    value: num(ownTrips) * 2 * place.distanceMi,
    unit: 'mi',
    decimals: 0,
    formula: 'ownTrips * 2 * distanceMi',
    inputs: { ownTrips, distanceMi },
    source: COMPANY_FIGURE,
  });
  const cost = haulCostFigure({ hours, miles, fee: null }, rates);
  return {
    trailer,
    place,
    figures: { loads, paired: pairedLoads, 'own-trips': ownTrips, hours, miles, cost },
  };
}

/** What the supplier asks for bringing the order: a charge for each load of his truck. */
function deliveryFigure(orderTon: Figure, supplier: BaseSupplier): Figure {
  return figure({
    value: supplier.deliveryUsd.times(ceilCount(num(orderTon) / supplier.deliveryTon)),
    unit: '$',
    decimals: 2,
    formula: 'ceilStep(orderTon / deliveryTon, 1) * deliveryUsd',
    inputs: {
      orderTon,
      deliveryTon: given('company.suppliers.base.delivery-load', supplier.deliveryTon, 'ton'),
      deliveryUsd: given('company.suppliers.base.delivery', supplier.deliveryUsd, '$/load'),
    },
    source: COMPANY_FIGURE,
    rounding: 'up',
  });
}

/** The offer is taken. One figure has one id, so what is paid is a figure of its own. */
function taken(offer: Figure): Figure {
  return figure({
    value: offer.value,
    unit: '$',
    decimals: 2,
    formula: 'offerUsd',
    inputs: { offerUsd: offer },
    source: COMPANY_FIGURE,
  });
}

function nothing(why: string, rates: HaulRates): HaulBaseFigures {
  const none = (unit: 'each' | 'h' | 'mi') =>
    figure({ value: 0, unit, decimals: 0, formula: { method: why }, inputs: {} });
  const hours = none('h');
  const miles = none('mi');
  return {
    loads: none('each'),
    paired: none('each'),
    'own-trips': none('each'),
    hours,
    miles,
    cost: haulCostFigure({ hours, miles, fee: null }, rates),
    delivered: none('each'),
    'delivery-offer': zeroUsd(why),
    'delivery-cost': zeroUsd(why),
  };
}

function flag(value: 0 | 1, method: string, inputs: Record<string, Figure>): Figure {
  return figure({ value, unit: 'each', decimals: 0, formula: { method }, inputs });
}

function zeroUsd(method: string): Figure {
  const value: Decimal = new Usd(0);
  return figure({ value, unit: '$', decimals: 2, formula: { method }, inputs: {} });
}
