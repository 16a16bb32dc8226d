import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestPlan, couldCarry, type PlanProblem, planHr } from '../../../src/calculate/haul/plan/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { anExisting, aPlace, aTruck, haul, LONG_BOX, rate, rectangle, SHORT_BOX } from './a-haul.ts';

/** Set PROPERTY_SEED to repeat a run. */
const seed = Number(process.env['PROPERTY_SEED'] ?? Date.now() % 2 ** 31);
const run = { seed, numRuns: runCount(200) };
console.log(`haul in time: properties run with PROPERTY_SEED=${seed}`);

/*
 * Three loads on a day of 8 h that starts at 7. To the far yard a trip takes 0.4 + 1.5 + 0.25 + 1.5 h,
 * to the near one 1.15 h and $200 more.
 */
const FAR = aPlace({ id: 'far', driveHr: 1.5, fee: rate('10', 'load') });
const NEAR = aPlace({ id: 'near', driveHr: 0.25, fee: rate('210', 'load') });
const FIRST_ON = '2026-05-04';

function planned({ data }: ReturnType<typeof haul>): PlanProblem {
  if (data.planned === null) throw new RangeError('nothing is planned');
  return data.planned.problem;
}

const placesOf = (result: ReturnType<typeof haul>) => result.data.loads.map(({ place }) => place).sort();

describe('days as a limit of the plan', () => {
  test('with time enough all goes where it is cheapest, over two days', () => {
    const result = haul({ places: [FAR, NEAR], haulByOn: '2026-05-05' });
    expect(placesOf(result)).toEqual(['far', 'far', 'far']);
    expect(result.data.trips.map(({ on }) => on)).toEqual([FIRST_ON, FIRST_ON, '2026-05-05']);
  });

  // Two to the far yard and one to the near one are 8.45 h, one and two 5.95 h.
  test('exact: in one day as many go to the cheap place as there is time for', () => {
    const result = haul({ places: [FAR, NEAR], haulByOn: FIRST_ON });
    expect(result.problems).toEqual([]);
    expect(placesOf(result)).toEqual(['far', 'near', 'near']);
    expect(result.data.planned?.plan.costUsd).toBeCloseTo(10 + 2 * 210 + 5.95 * 30 + 60, 2);
    expect(new Set(result.data.trips.map(({ on }) => on))).toEqual(new Set([FIRST_ON]));
  });

  test('a day more costs nothing where nothing is late', () => {
    const within = haul({ places: [FAR, NEAR], haulByOn: '2026-05-08' });
    expect(within.data.planned?.plan).toEqual(haul({ places: [FAR, NEAR] }).data.planned?.plan);
  });

  // The hours of the drivers would do; the gate takes nobody after 9:30, who leaves at 7.
  test('trips that hours have room for and the gate has not are not in time', () => {
    const gate = { fromHr: 6, toHr: 10, lastLoadHr: 9.5 };
    const result = haul({ places: [aPlace({ ...FAR, open: gate }), NEAR], haulByOn: FIRST_ON });
    expect(placesOf(result)).toEqual(['far', 'near', 'near']);
    const [first] = result.data.loads;
    expect(first?.place).toBe('far');
  });

  // Regression: the cheap place is as near as the dear one, but its gate lets one load a day in. All to the dear one
  // takes as long by the hours and is in time; it was refused, since no plan takes fewer hours.
  test('of plans that take the same hours one that is in time is found', () => {
    const gate = { fromHr: 6, toHr: 10, lastLoadHr: 8.2 };
    const cheap = aPlace({ id: 'cheap', driveHr: 0.5, fee: rate('10', 'load'), open: gate });
    const dear = aPlace({ id: 'a-dear-one', driveHr: 0.5, fee: rate('90', 'load') });
    const result = haul({ places: [cheap, dear], haulByOn: FIRST_ON });
    expect(result.problems).toEqual([]);
    expect(placesOf(result)).toEqual(['a-dear-one', 'a-dear-one', 'a-dear-one']);
    expect(new Set(result.data.trips.map(({ on }) => on))).toEqual(new Set([FIRST_ON]));
    // What other plans cost is asked within the same hours, which the plan itself keeps.
    expect(bestPlan(planned(result))).not.toBeNull();
    expect(planHr(planned(result), result.data.planned!.plan)).toBeLessThanOrEqual(planned(result).mostHr!);
  });

  test('a second driver is in time where one is not', () => {
    const trailers = [LONG_BOX, { ...LONG_BOX, id: 'twin-box' }];
    const made = { places: [FAR], trailers, haulByOn: FIRST_ON };
    expect(haul(made).problems.map(({ code }) => code)).toEqual(['haul-not-in-time']);
    expect(haul({ ...made, driverCount: 2 }).problems).toEqual([]);
  });

  // 30 loads for two trailers, each of which has room for 15 at the most in the days there are.
  test('two trailers that could not carry it all in their hours are told so, without looking at every plan', () => {
    const trailers = [LONG_BOX, SHORT_BOX];
    const made = {
      existing: [anExisting({ shape: rectangle(250, 20) })],
      places: [FAR, NEAR],
      trailers,
      towVehicle: aTruck({ towRatingLb: 7_000 }),
      loadingHr: 3,
      driverCount: 2,
    };
    const early = haul({ ...made, haulByOn: '2026-05-15' });
    expect(early.problems.map(({ code }) => code)).toEqual(['haul-not-in-time']);
    expect(couldCarry({ ...planned(early), mostTrailerHr: 96 })).toBe(false);
    expect(couldCarry({ ...planned(early), mostTrailerHr: 960 })).toBe(true);
    expect(couldCarry({ ...planned(early), mostTrailerHr: null })).toBe(true);
  });

  test('where no plan is in time the quickest one says by how much, and the gate how many a day', () => {
    const result = haul({ places: [FAR], haulByOn: FIRST_ON });
    expect(result.problems).toEqual([
      {
        code: 'haul-not-in-time',
        path: 'plan.haul-by',
        parts: { haulBy: FIRST_ON, days: '1', trips: '3', lastOn: '2026-05-05', perDay: 'Yard 2' },
      },
    ]);
    const shut = { fromHr: 8, toHr: 12, lastLoadHr: 12 };
    const gated = haul({ places: [aPlace({ ...FAR, open: shut })], haulByOn: '2026-05-05' });
    expect(gated.problems[0]?.parts).toMatchObject({ days: '2', lastOn: '2026-05-06', perDay: 'Yard 1' });
  });
});

/** A few loads, for one or two drivers with two trailers, by a day that may be too soon. */
const someHaul = fc.record({
  lengthFt: fc.integer({ min: 20, max: 60 }),
  driverCount: fc.constantFrom(1, 2, 2),
  days: fc.integer({ min: 0, max: 3 }),
  driveHr: fc.constantFrom(0.25, 0.5, 0.9, 1.4),
  loadingHr: fc.constantFrom(0.4, 1, 2),
  otherFee: fc.constantFrom('60', '110', '180'),
});

test('invariant: what is refused as late is driven after its last day, even as quick as it can be', () => {
  let refused = 0;
  fc.assert(
    fc.property(someHaul, ({ lengthFt, driverCount, days, driveHr, loadingHr, otherFee }) => {
      const haulByOn = `2026-05-0${4 + days}`;
      const { problems, data } = haul({
        existing: [anExisting({ shape: rectangle(lengthFt, 20) })],
        places: [
          { ...FAR, driveHr },
          { ...NEAR, fee: rate(otherFee, 'load') },
        ],
        trailers: [LONG_BOX, SHORT_BOX],
        driverCount,
        loadingHr,
        haulByOn,
      });
      const late = problems.filter(({ code }) => code === 'haul-not-in-time');
      refused += late.length;
      for (const { parts } of late) expect(`${parts?.['lastOn']}` > haulByOn).toBe(true);
      if (late.length === 0) expect(data.trips.every(({ on }) => on <= haulByOn)).toBe(true);
    }),
    run,
  );
  expect(refused).toBeGreaterThan(run.numRuns / 20);
});
