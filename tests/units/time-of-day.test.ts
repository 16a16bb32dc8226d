import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockFace, parseTimeOfDay } from '../../src/units/index.ts';
import { runCount } from '../support/property-runs.ts';

const run = { seed: 20_260_504, numRuns: runCount(300) };

describe('parseTimeOfDay: every written form, in minutes from midnight', () => {
  test.each([
    ['7:00', 420],
    ['07:00', 420],
    ['16:30', 990],
    ['0:00', 0],
    ['23:59', 1439],
    ['24:00', 1440],
    ['7 am', 420],
    ['7am', 420],
    ['7:30 AM', 450],
    ['4 p.m.', 960],
    ['11:59 pm', 1439],
    // As clocks show them: the first half of the day starts with 12.
    ['12 am', 0],
    ['12:30 am', 30],
    ['12 pm', 720],
    ['12:01 pm', 721],
    ['1 pm', 780],
    ['  7:00 ', 420],
  ])('%s', (text, minutes) => {
    expect(parseTimeOfDay(text)).toEqual({ ok: true, value: { minutes, text } });
  });
});

const EXAMPLES = ['7:30', '16:30', '4:30 pm'];

describe('parseTimeOfDay: refusals', () => {
  test.each([
    ['7', 'without-unit', ['7:00', '7 am', '7 pm']],
    ['16', 'without-unit', ['16:00']],
    ['16.30', 'not-a-time-of-day', ['16:30']],
    ['0730', 'not-a-time-of-day', ['07:30']],
    ['16h30', 'not-a-time-of-day', ['16:30']],
    ['13 pm', 'not-a-time-of-day', ['13:00']],
    ['0 am', 'not-a-time-of-day', ['0:00']],
    ['7:30 in the pm', 'not-a-time-of-day', ['7:30 pm', '7:30']],
    ['noon', 'not-a-time-of-day', ['12:00', '12 pm']],
    ['midnight', 'not-a-time-of-day', ['0:00', '24:00']],
    ['24:30', 'not-a-time-of-day', EXAMPLES],
    ['24:01', 'not-a-time-of-day', EXAMPLES],
    ['25:00', 'not-a-time-of-day', EXAMPLES],
    ['7:60', 'not-a-time-of-day', EXAMPLES],
    ['7:60 pm', 'not-a-time-of-day', EXAMPLES],
    ['7:5', 'not-a-time-of-day', EXAMPLES],
    ['7:30 to 16:00', 'not-a-time-of-day', ['7:30']],
    ['"7:00"', 'stray-quote', ['7:00']],
    ['-7:00', 'not-a-time-of-day', ['7:00']],
    ['dawn', 'not-a-time-of-day', EXAMPLES],
    ['', 'not-a-time-of-day', EXAMPLES],
    ['9'.repeat(300), 'not-a-time-of-day', EXAMPLES],
  ])('%s is %s', (text, code, forms) => {
    expect(parseTimeOfDay(text)).toEqual({ ok: false, code, forms });
  });

  test('every form that is suggested is taken, whatever was written', () => {
    const scrap = fc.constantFrom(
      ...'0 7 12 13 24 60 : . :30 :5 am pm a.m. PM noon h " - midnight'.split(' '),
    );
    const text = fc.oneof(
      fc.array(scrap, { maxLength: 4 }).map((scraps) => scraps.join('')),
      fc.array(scrap, { maxLength: 4 }).map((scraps) => scraps.join(' ')),
    );
    fc.assert(
      fc.property(text, (written) => {
        const result = parseTimeOfDay(written);
        if (result.ok) return;
        expect(result.forms.length).toBeGreaterThan(0);
        for (const form of result.forms) expect(parseTimeOfDay(form), form).toMatchObject({ ok: true });
      }),
      run,
    );
  });
});

describe('clockFace', () => {
  test.each([
    [0, '12:00', 'am', '0:00'],
    [0.5, '12:30', 'am', '0:30'],
    [7, '7:00', 'am', '7:00'],
    [11 + 59 / 60, '11:59', 'am', '11:59'],
    [12, '12:00', 'pm', '12:00'],
    [16.5, '4:30', 'pm', '16:30'],
    [23 + 59 / 60, '11:59', 'pm', '23:59'],
    [24, '12:00', 'am', '24:00'],
  ])('%d h is %s %s, and %s', (timeHr, time12, half, time24) => {
    expect(clockFace(timeHr, 12)).toEqual({ time: time12, half });
    expect(clockFace(timeHr, 24)).toEqual({ time: time24, half: null });
  });

  test('invariant: what a clock shows is read as the same minute', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1439 }),
        fc.constantFrom(12 as const, 24 as const),
        (minutes, clock) => {
          const { time, half } = clockFace(minutes / 60, clock);
          const text = half === null ? time : `${time} ${half}`;
          expect(parseTimeOfDay(text)).toMatchObject({ value: { minutes } });
        },
      ),
      run,
    );
  });

  test.each([-0.01, 24.01, Number.NaN, Number.POSITIVE_INFINITY])('%d h is no time of a day', (timeHr) => {
    expect(() => clockFace(timeHr, 12)).toThrow(RangeError);
  });
});
