import { describe, expect, test } from 'vitest';
import {
  addDaysOn,
  daysBetween,
  formatDateLong,
  nextWorkdayOn,
  parseCount,
  parseDate,
  parseYesNo,
  weekdayOf,
} from '../../src/units/index.ts';

describe('parseDate', () => {
  test.each(['2026-05-04', '2028-02-29', '2000-02-29', ' 2026-05-04 '])('%s', (text) => {
    expect(parseDate(text)).toEqual({ ok: true, value: text.trim() });
  });

  test.each([
    ['2026-02-30', 'not-a-date', ['2026-02-28', '2026-03-01']],
    ['2026-02-29', 'not-a-date', ['2026-02-28', '2026-03-01']],
    ['1900-02-29', 'not-a-date', ['1900-02-28', '1900-03-01']],
    ['2026-5-4', 'not-a-date', ['2026-05-04']],
    ['20260504', 'not-a-date', ['2026-05-04']],
    ['2026-05-04T10:00', 'not-a-date', ['2026-05-04']],
    ['2026-W19-1', 'not-a-date', ['2026-05-04']],
    ['5/4/2026', 'not-a-date', ['2026-05-04', '2026-04-05']],
    ['5/14/2026', 'not-a-date', ['2026-05-14']],
    ['2026-13-01', 'not-a-date', ['2026-05-04']],
    ['May 4', 'not-a-date', ['2026-05-04']],
    ['"2026-05-04"', 'stray-quote', ['2026-05-04']],
    ['', 'not-a-date', ['2026-05-04']],
  ])('%s is %s', (text, code, forms) => {
    expect(parseDate(text)).toEqual({ ok: false, code, forms });
    for (const form of forms) expect(parseDate(form)).toMatchObject({ ok: true });
  });
});

describe('days', () => {
  test('addDaysOn goes over months, leap days and years, both ways', () => {
    expect(addDaysOn('2026-12-31', 1)).toBe('2027-01-01');
    expect(addDaysOn('2028-02-28', 1)).toBe('2028-02-29');
    expect(addDaysOn('2026-03-01', -1)).toBe('2026-02-28');
    expect(addDaysOn('2026-05-04', 0)).toBe('2026-05-04');
  });

  // ISO 8601: Monday is 1, Sunday 7. 2000-01-01 was a Saturday, 2024-02-29 a Thursday (any calendar).
  test.each([
    ['2000-01-01', 6],
    ['2024-02-29', 4],
    ['2026-05-04', 1],
    ['2026-05-10', 7],
  ])('%s is weekday %d', (on, weekday) => {
    expect(weekdayOf(on)).toBe(weekday);
  });

  test.each([
    ['2026-05-04', '2026-05-05'],
    ['2026-05-07', '2026-05-08'],
    ['2026-05-08', '2026-05-11'],
    ['2026-05-09', '2026-05-11'],
    ['2026-05-10', '2026-05-11'],
  ])('the workday after %s is %s', (on, nextOn) => {
    expect(nextWorkdayOn(on)).toBe(nextOn);
  });

  test('daysBetween counts nights, and is negative backwards', () => {
    expect(daysBetween('2026-05-04', '2026-05-04')).toBe(0);
    expect(daysBetween('2028-02-01', '2028-03-01')).toBe(29);
    expect(daysBetween('2026-01-01', '2027-01-01')).toBe(365);
    expect(daysBetween('2026-05-05', '2026-05-04')).toBe(-1);
  });

  test('what is no date throws', () => {
    expect(() => addDaysOn('2026-5-4', 1)).toThrow(RangeError);
    expect(() => addDaysOn('2026-05-04', 0.5)).toThrow(RangeError);
    expect(() => addDaysOn('9999-12-31', 1)).toThrow(RangeError);
    expect(() => weekdayOf('20260504')).toThrow(RangeError);
    expect(() => nextWorkdayOn('')).toThrow(RangeError);
    expect(() => daysBetween('2026-02-30', '2026-03-01')).toThrow(RangeError);
  });

  test('formatDateLong puts the words given in order', () => {
    const weekdays = 'Monday Tuesday Wednesday Thursday Friday Saturday Sunday'.split(' ');
    const months =
      'January February March April May June July August September October November December'.split(' ');
    expect(formatDateLong('2026-05-04', { weekdays, months })).toBe('Monday 4 May 2026');
    expect(formatDateLong('2028-12-31', { weekdays, months })).toBe('Sunday 31 December 2028');
    expect(() => formatDateLong('2026-05-10', { weekdays: weekdays.slice(0, 6), months })).toThrow(
      RangeError,
    );
    expect(() => formatDateLong('2026-02-30', { weekdays, months })).toThrow(RangeError);
  });
});

describe('parseCount', () => {
  test.each([
    ['0', 0],
    ['3', 3],
    ['1,200', 1200],
  ])('%s', (text, value) => {
    expect(parseCount(text)).toEqual({ ok: true, value });
  });

  test.each([
    ['-3', 'not-a-count', ['3', '12']],
    ['2.5', 'not-a-count', ['2', '3']],
    ['3 bags', 'not-a-count', ['3']],
    ['1,20', 'not-a-count', ['1']],
    ['three', 'not-a-count', ['3', '12']],
    ['', 'not-a-count', ['3', '12']],
    ['9007199254740993', 'not-a-count', ['3', '12']],
    ['"3"', 'stray-quote', ['3']],
  ])('%s is %s', (text, code, forms) => {
    expect(parseCount(text)).toEqual({ ok: false, code, forms });
  });
});

describe('parseYesNo', () => {
  test('yes and no', () => {
    expect(parseYesNo('yes')).toEqual({ ok: true, value: true });
    expect(parseYesNo('no')).toEqual({ ok: true, value: false });
  });
  test.each(['Yes', 'true', 'y', '1', '', 'yes no'])('%s is neither', (text) => {
    expect(parseYesNo(text)).toEqual({ ok: false, code: 'not-yes-no', forms: ['yes', 'no'] });
  });
});
