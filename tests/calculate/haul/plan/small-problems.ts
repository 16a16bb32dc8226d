import fc from 'fast-check';
import type {
  PlanBase,
  PlanPlace,
  PlanProblem,
  PlanStream,
  PlanTrailer,
  Tariff,
} from '../../../../src/calculate/haul/plan/problem.ts';
import { mostLb } from './brute-costs.ts';

/* Problems small enough to look at every plan: few loads, few kinds of trips. */

export type Wanted = {
  readonly rebates: boolean;
  readonly mixed: boolean;
  readonly base: boolean;
  /** Trailers that are swapped, or several trucks. */
  readonly swaps?: boolean;
  /** Base has a price of its own at each place. */
  readonly prices?: boolean;
  /** The drivers have only so much time. */
  readonly hurried?: boolean;
};

const STREAMS = ['clean-concrete', 'masonry', 'soil'] as const;
/** Loads that each stream needs at the most of the smallest trailer, by the count of streams. */
const MOST_LOADS = [0, 3.9, 2.8, 1.9];

const tariff: fc.Arbitrary<Tariff> = fc
  .tuple(
    fc.constantFrom('load', 'ton', 'cuYd', 'both'),
    fc.integer({ min: 0, max: 9 }),
    fc.integer({ min: 2, max: 8 }),
  )
  .map(([by, load, unit]) => ({
    usdPerLoad: by === 'load' || by === 'both' ? load * 10 : 0,
    usdPerTon: by === 'ton' || by === 'both' ? unit * 4 : 0,
    usdPerCuYd: by === 'cuYd' ? unit * 3 : 0,
  }));

const someTrailers: fc.Arbitrary<readonly PlanTrailer[]> = fc
  .array(fc.record({ payload: fc.integer({ min: 50, max: 98 }), box: fc.constantFrom(2.5, 3, 4, 8) }), {
    minLength: 1,
    maxLength: 2,
  })
  .map((made) =>
    made.map(({ payload, box }, index) => ({ id: `t${index}`, payloadLb: payload * 100, boxCuYd: box })),
  );

function place(index: number, wanted: Wanted): fc.Arbitrary<PlanPlace> {
  return fc
    .record({
      accepts: fc.oneof(fc.constant([...STREAMS]), fc.subarray([...STREAMS], { minLength: 1 })),
      tariff,
      rebate: fc.constantFrom(1, 1, 0.5, 0),
      minimumUsd: fc.constantFrom(0, 0, 25, 60, 120),
      surcharged: fc.option(fc.tuple(fc.constantFrom(...STREAMS), tariff), { freq: 2 }),
      mixedLoads: fc.boolean(),
      distanceMi: fc.integer({ min: 1, max: 40 }),
      driveMin: fc.integer({ min: 5, max: 60 }),
      turnMin: fc.integer({ min: 5, max: 30 }),
      sellsBase: fc.boolean(),
      baseUsdPerTon: wanted.prices ? fc.constantFrom(8, 14, 19, 26) : fc.constant(0),
      baseMinimumUsd: wanted.prices ? fc.constantFrom(0, 0, 30, 70) : fc.constant(0),
    })
    .map(({ rebate, surcharged, driveMin, turnMin, baseUsdPerTon, ...made }) => ({
      ...made,
      id: `p${index}`,
      tariffWithBase: wanted.rebates
        ? {
            ...made.tariff,
            usdPerLoad: made.tariff.usdPerLoad * rebate,
            usdPerTon: made.tariff.usdPerTon * rebate,
          }
        : made.tariff,
      surcharges: surcharged === null ? {} : { [surcharged[0]]: surcharged[1] },
      mixedLoads: wanted.mixed && made.mixedLoads,
      driveHr: driveMin / 60,
      turnHr: turnMin / 60,
      baseUsdPerLb: baseUsdPerTon / 2000,
    }));
}

const someBase = fc.record({
  loads: fc.integer({ min: 1, max: 30 }),
  looseLbPerCuYd: fc.constant(2800),
  deliveryUsd: fc.integer({ min: 0, max: 20 }).map((tens) => tens * 10),
  deliveryLb: fc.constantFrom(6000, 24_000),
  room: fc.option(fc.integer({ min: 0, max: 30 }), { freq: 2 }),
});

export function smallProblem(wanted: Wanted): fc.Arbitrary<PlanProblem> {
  return fc
    .record({
      trailers: someTrailers,
      places: fc
        .integer({ min: 1, max: 3 })
        .chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => place(index, wanted)))),
      streams: fc.integer({ min: 1, max: 3 }),
      sizes: fc.tuple(
        ...STREAMS.map(() =>
          fc.record({ tenths: fc.integer({ min: 1, max: 40 }), loose: fc.constantFrom(2000, 2400, 2700) }),
        ),
      ),
      base: wanted.base ? fc.option(someBase, { freq: 2 }) : fc.constant(null),
      perHr: fc.boolean(),
      loadingHr: wanted.swaps ? fc.constantFrom(0.25, 0.4, 0.75, 1.5) : fc.constant(0.4),
      swapHr: wanted.swaps ? fc.constantFrom(null, 0, 0.1, 0.2) : fc.constant(null),
      driverCount: wanted.swaps ? fc.constantFrom(1, 1, 1, 2) : fc.constant(1),
      mostHr: wanted.hurried
        ? fc.integer({ min: 2, max: 24 }).map((halves) => halves / 2)
        : fc.constant(null),
      baseUsdPerTon: wanted.prices ? fc.constantFrom(8, 14, 19, 26) : fc.constant(0),
    })
    .map(({ trailers, places, streams, sizes, base, perHr, mostHr, baseUsdPerTon, ...driven }) => {
      const least = (loose: number) =>
        Math.min(...trailers.map((trailer) => mostLb(trailer, { looseLbPerCuYd: loose })));
      return {
        trailers,
        places,
        streams: sizes.slice(0, streams).map(
          ({ tenths, loose }, index): PlanStream => ({
            stream: STREAMS[index] as PlanStream['stream'],
            weightLb: Math.round(((tenths / 40) * (MOST_LOADS[streams] ?? 0) * least(loose)) / 10) * 10,
            looseLbPerCuYd: loose,
          }),
        ),
        base: base === null ? null : { ...baseOf(base, least(2800)), usdPerLb: baseUsdPerTon / 2000 },
        rates: {
          driverUsdPerHr: 38,
          truckUsdPerHr: perHr ? 22 : 0,
          truckUsdPerMi: perHr ? 0 : 0.9,
          ...driven,
        },
        mostHr: driven.driverCount > 1 ? null : mostHr,
        mostTrailerHr: driven.driverCount > 1 ? mostHr : null,
      };
    });
}

function baseOf(
  made: {
    loads: number;
    room: number | null;
    looseLbPerCuYd: number;
    deliveryUsd: number;
    deliveryLb: number;
  },
  loadLb: number,
): Omit<PlanBase, 'usdPerLb'> {
  const { loads, room, ...rest } = made;
  return {
    ...rest,
    weightLb: Math.round((loads / 10) * loadLb),
    roomLb: room === null ? null : Math.round((room / 10) * loadLb),
  };
}
