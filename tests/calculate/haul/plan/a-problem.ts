import type {
  PlanBase,
  PlanPlace,
  PlanProblem,
  PlanStream,
  PlanTrailer,
  Tariff,
} from '../../../../src/calculate/haul/plan/problem.ts';

export const FREE: Tariff = { usdPerLoad: 0, usdPerTon: 0, usdPerCuYd: 0 };

/** A deep box, so that only the payload counts. */
export function aTrailer(id: string, payloadLb: number, boxCuYd = 50): PlanTrailer {
  return { id, payloadLb, boxCuYd };
}

export function aStream(stream: PlanStream['stream'], weightLb: number): PlanStream {
  return { stream, weightLb, looseLbPerCuYd: 2000 };
}

/** Free, takes everything, and an hour and a half from loading to being back. */
export function aPlace(id: string, changed: Partial<PlanPlace> = {}): PlanPlace {
  const tariff = changed.tariff ?? FREE;
  return {
    id,
    accepts: ['clean-concrete', 'concrete-with-steel', 'masonry', 'soil'],
    tariff,
    tariffWithBase: tariff,
    minimumUsd: 0,
    surcharges: {},
    mixedLoads: false,
    distanceMi: 0,
    driveHr: 0.5,
    turnHr: 0.25,
    sellsBase: false,
    baseUsdPerLb: 0,
    baseMinimumUsd: 0,
    ...changed,
  };
}

export function someBase(changed: Partial<PlanBase> = {}): PlanBase {
  return {
    weightLb: 10_000,
    looseLbPerCuYd: 2800,
    usdPerLb: 0,
    deliveryUsd: 1000,
    deliveryLb: 24_000,
    roomLb: null,
    ...changed,
  };
}

/** $40 an hour; a trip to a place as above is $60. */
export function aProblem(changed: Partial<PlanProblem>): PlanProblem {
  return {
    trailers: [aTrailer('one', 10_000)],
    places: [aPlace('yard')],
    streams: [aStream('clean-concrete', 8000)],
    base: null,
    rates: {
      driverUsdPerHr: 40,
      truckUsdPerHr: 0,
      truckUsdPerMi: 0,
      loadingHr: 0.25,
      swapHr: null,
      driverCount: 1,
    },
    mostHr: null,
    mostTrailerHr: null,
    ...changed,
  };
}
