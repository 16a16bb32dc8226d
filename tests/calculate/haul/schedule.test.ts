import { describe, expect, test } from 'vitest';
import { type ScheduledTrip, tripTimes, type WorkingDay } from '../../../src/calculate/haul/index.ts';

/*
 * Worked by hand: half an hour of loading, half an hour each way, a quarter at the gate: a trip of 1.75 h.
 */

const DAY: WorkingDay = { firstOn: '2026-05-07', startsHr: 7, lengthHr: 8 }; // a Thursday

function aTrip(
  changed: Partial<ScheduledTrip> = {},
  place: Partial<ScheduledTrip['place']> = {},
): ScheduledTrip {
  return {
    trailer: 'long-box',
    loadingHr: 0.5,
    withBase: false,
    place: { id: 'yard', driveHr: 0.5, turnHr: 0.25, open: null, openOn: [1, 2, 3, 4, 5, 6, 7], ...place },
    ...changed,
  };
}

const open = (fromHr: number, lastLoadHr: number) => ({
  open: { fromHr, toHr: lastLoadHr + 0.5, lastLoadHr },
});

describe('when the trips are driven', () => {
  test('one after the other, as many as are back within the day', () => {
    const times = tripTimes(
      Array.from({ length: 6 }, () => aTrip()),
      DAY,
    );
    expect(times[0]).toEqual({ on: '2026-05-07', startsHr: 7, leavesHr: 7.5, arrivesHr: 8, backHr: 8.75 });
    // The fourth is back at 14:00, a fifth would be at 15:45.
    expect(times.map((trip) => trip?.on)).toEqual([
      ...Array.from({ length: 4 }, () => '2026-05-07'),
      ...Array.from({ length: 2 }, () => '2026-05-08'),
    ]);
    expect(times[4]?.startsHr).toBe(7);
  });

  test('base on the way back takes one more turn; a trip for base alone is not loaded here', () => {
    const [back, alone] = tripTimes(
      [aTrip({ withBase: true }), aTrip({ withBase: true, loadingHr: 0 })],
      DAY,
    );
    expect(back?.backHr).toBe(9);
    expect([alone?.startsHr, alone?.arrivesHr, alone?.backHr]).toEqual([9, 9.5, 10.25]);
  });

  test('a trip that fills the day to the minute is not put off', () => {
    const times = tripTimes([aTrip(), aTrip()], { ...DAY, lengthHr: 3.5 });
    expect(times.map((trip) => trip?.on)).toEqual(['2026-05-07', '2026-05-07']);
  });

  test('it waits for the gate to open, and goes the next day after the last load', () => {
    expect(tripTimes([aTrip({}, open(8.5, 15))], DAY)[0]).toMatchObject({ startsHr: 7.5, arrivesHr: 8.5 });
    const [first, second] = tripTimes([aTrip({}, open(7, 8)), aTrip({}, open(7, 8))], DAY);
    expect([first?.on, first?.arrivesHr]).toEqual(['2026-05-07', 8]);
    expect([second?.on, second?.arrivesHr]).toEqual(['2026-05-08', 8]);
  });

  test('a place that is closed on a day is driven to on the next workday that it is open', () => {
    const monday = aTrip({}, { openOn: [1] });
    expect(tripTimes([monday, aTrip()], DAY).map((trip) => trip?.on)).toEqual(['2026-05-11', '2026-05-11']);
  });

  test('nobody is let in who leaves in the morning: no time at all', () => {
    expect(tripTimes([aTrip({}, open(6, 7.75)), aTrip()], DAY).map((trip) => trip === null)).toEqual([
      true,
      false,
    ]);
  });

  test('a trip longer than a day is begun in the morning', () => {
    const [first, long, next] = tripTimes([aTrip(), aTrip({ loadingHr: 9 }), aTrip()], DAY);
    expect([first?.on, long?.on, long?.startsHr, next?.on]).toEqual([
      '2026-05-07',
      '2026-05-08',
      7,
      '2026-05-11',
    ]);
  });

  test('a Saturday is no workday, whatever the place says', () => {
    const saturday = aTrip({}, { openOn: [6] });
    expect(tripTimes([saturday], DAY)).toEqual([null]);
  });
});

describe('one truck that drops a trailer to be filled and takes the full one', () => {
  const swapping = { count: 1, swapHr: 0.1 };
  const inTurn = (count: number, loadingHr = 0.5) =>
    Array.from({ length: count }, (_, index) => aTrip({ trailer: index % 2 === 0 ? 'a' : 'b', loadingHr }));

  // Away 1.25 h: longer than the loading, so that each trip after the first takes 0.1 + 1.25 h.
  test('it waits for the first load alone; the truck sets the pace', () => {
    const times = tripTimes(inTurn(3), DAY, swapping);
    expect(times.map((trip) => trip?.leavesHr)).toEqual([7.5, 7.5 + 1.35, 7.5 + 2 * 1.35]);
    // The second is filled as soon as the loader has filled the first.
    expect(times.map((trip) => trip?.startsHr)).toEqual([7, 7.5, 7.5 + 1.35]);
    expect(times.at(-1)?.backHr).toBeCloseTo(7.5 + 2 * 1.35 + 1.25, 9);
  });

  // Filling takes 2 h: the next one leaves 2 h after the last one left, and the swap.
  test('a loader that takes longer than the trip sets the pace', () => {
    const leaves = tripTimes(inTurn(3, 2), { ...DAY, lengthHr: 12 }, swapping).map((trip) => trip?.leavesHr);
    expect(leaves[0]).toBe(9);
    expect(leaves[1]).toBeCloseTo(9 + 2 + 0.1, 9);
    expect(leaves[2]).toBeCloseTo(9 + 2 * (2 + 0.1), 9);
  });

  test('on the same trailer again it waits as ever', () => {
    const [, second] = tripTimes([aTrip(), aTrip()], DAY, swapping);
    expect([second?.startsHr, second?.leavesHr]).toEqual([8.75, 9.25]);
  });

  test('what is put off to the next day was filled the evening before', () => {
    const [first, second] = tripTimes(inTurn(2), { ...DAY, lengthHr: 2 }, swapping);
    expect(first?.backHr).toBe(8.75);
    expect(second).toMatchObject({ on: '2026-05-08', startsHr: null, leavesHr: 7.1 });
  });

  test('it is filled in the morning where the loader had no time left in the evening', () => {
    const [first, second] = inTurn(2);
    const trips = [first, { ...second, loadingHr: 1.5 }] as ScheduledTrip[];
    // The loader is free at 7:30, the day over at 8:45: fifteen minutes too early.
    const times = tripTimes(trips, { ...DAY, lengthHr: 1.75 }, swapping);
    expect(times[1]).toMatchObject({ on: '2026-05-08', startsHr: 7, leavesHr: 8.6 });
  });
});

describe('two trucks and one loader', () => {
  test('each keeps its trailer, and waits for the loader', () => {
    const trips = ['a', 'b', 'a', 'b'].map((trailer) => aTrip({ trailer }));
    const times = tripTimes(trips, DAY, { count: 2, swapHr: null });
    expect(times.map((trip) => [trip?.startsHr, trip?.backHr])).toEqual([
      [7, 8.75],
      [7.5, 9.25],
      [8.75, 10.5],
      [9.25, 11],
    ]);
  });

  // Filling takes 1 1/2 h, a trip 1 1/4 h: the loader fills one after the other without a break.
  test('a loader that is slower than both sets the pace', () => {
    const trips = ['a', 'b', 'a', 'b'].map((trailer) => aTrip({ trailer, loadingHr: 1.5 }));
    const starts = tripTimes(trips, { ...DAY, lengthHr: 12 }, { count: 2, swapHr: null }).map(
      (trip) => trip?.startsHr,
    );
    expect(starts).toEqual([7, 8.5, 10, 11.5]);
  });
});
