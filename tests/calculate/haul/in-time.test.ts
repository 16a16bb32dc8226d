import { describe, expect, test } from 'vitest';
import { aPlace, haul, LONG_BOX, rate } from './a-haul.ts';

/*
 * Three loads on a day of 8 h that starts at 7. To the far yard a trip takes 0.4 + 1.5 + 0.25 + 1.5 h,
 * to the near one 1.15 h and $200 more.
 */
const FAR = aPlace({ id: 'far', driveHr: 1.5, fee: rate('10', 'load') });
const NEAR = aPlace({ id: 'near', driveHr: 0.25, fee: rate('210', 'load') });
const FIRST_ON = '2026-05-04';

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

  test('a second driver is in time where one is not', () => {
    const trailers = [LONG_BOX, { ...LONG_BOX, id: 'twin-box' }];
    const made = { places: [FAR], trailers, haulByOn: FIRST_ON };
    expect(haul(made).problems.map(({ code }) => code)).toEqual(['haul-not-in-time']);
    expect(haul({ ...made, driverCount: 2 }).problems).toEqual([]);
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
