import type { PlanPlace, PlanProblem, PlanStream } from '../../src/calculate/haul/plan/problem.ts';

/*
 * A hard haul: three trailers, five streams, four places, 120 tons, and base that may ride back. Invented
 * figures of the size that yards and trailers of the trade have.
 */

const TON = 2000;
const NO_FEE = { usdPerLoad: 0, usdPerTon: 0, usdPerCuYd: 0 };

export const HARD_HAUL: PlanProblem = {
  trailers: [
    { id: 'long', payloadLb: 9_500, boxCuYd: 7.26 },
    { id: 'middle', payloadLb: 7_000, boxCuYd: 3.33 },
    { id: 'short', payloadLb: 5_400, boxCuYd: 2.6 },
  ],
  places: [
    place('crusher', ['clean-concrete', 'concrete-with-steel', 'asphalt'], {
      tariff: { ...NO_FEE, usdPerLoad: 45 },
      surcharges: { 'concrete-with-steel': { ...NO_FEE, usdPerLoad: 10 } },
      mixedLoads: true,
      distanceMi: 9,
      driveHr: 22 / 60,
      turnHr: 0.25,
      sellsBase: true,
    }),
    place('landfill', ['clean-concrete', 'concrete-with-steel', 'masonry', 'asphalt', 'soil'], {
      tariff: { ...NO_FEE, usdPerTon: 38 },
      minimumUsd: 25,
      mixedLoads: true,
      distanceMi: 14,
      driveHr: 0.5,
      turnHr: 20 / 60,
    }),
    place('fill-site', ['soil'], {
      tariff: { ...NO_FEE, usdPerLoad: 20 },
      distanceMi: 6,
      driveHr: 16 / 60,
      turnHr: 10 / 60,
    }),
    place('quarry', ['clean-concrete', 'masonry', 'asphalt'], {
      tariff: { ...NO_FEE, usdPerTon: 9 },
      tariffWithBase: { ...NO_FEE, usdPerTon: 6 },
      minimumUsd: 30,
      distanceMi: 17,
      driveHr: 0.55,
      turnHr: 0.3,
      sellsBase: true,
    }),
  ],
  streams: [
    stream('clean-concrete', 38.4, 2_531),
    stream('concrete-with-steel', 31.2, 2_531),
    stream('masonry', 9.7, 1_400),
    stream('asphalt', 14.3, 2_400),
    stream('soil', 26.4, 2_700),
  ],
  base: {
    weightLb: 52 * TON,
    looseLbPerCuYd: 2_808,
    usdPerLb: 19 / TON,
    deliveryUsd: 110,
    deliveryLb: 12 * TON,
    roomLb: null,
  },
  rates: {
    driverUsdPerHr: 38,
    truckUsdPerHr: 0,
    truckUsdPerMi: 0.95,
    loadingHr: 25 / 60,
    swapHr: null,
    driverCount: 1,
  },
  mostHr: null,
  mostTrailerHr: null,
};

/** One trailer is filled while the truck is away with another. */
export const SWAPPED_HAUL: PlanProblem = {
  ...HARD_HAUL,
  rates: { ...HARD_HAUL.rates, swapHr: 8 / 60 },
};

function stream(name: PlanStream['stream'], tons: number, looseLbPerCuYd: number): PlanStream {
  return { stream: name, weightLb: tons * TON, looseLbPerCuYd };
}

function place(
  id: string,
  accepts: PlanPlace['accepts'],
  rest: Pick<PlanPlace, 'tariff' | 'distanceMi' | 'driveHr' | 'turnHr'> & Partial<PlanPlace>,
): PlanPlace {
  return {
    id,
    accepts,
    tariffWithBase: rest.tariff,
    minimumUsd: 0,
    surcharges: {},
    mixedLoads: false,
    sellsBase: false,
    baseUsdPerLb: 19 / TON,
    baseMinimumUsd: 0,
    ...rest,
  };
}
