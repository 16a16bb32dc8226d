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
    expect(times[0]).toEqual({ on: '2026-05-07', startsHr: 7, arrivesHr: 8, backHr: 8.75 });
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
