import { Temporal } from 'temporal-polyfill';
import { plainText } from './number-text.ts';
import { type ParseResult, refused, taken } from './parse-result.ts';

const ISO_DATE = /^\d{4}-\d\d-\d\d$/;
const EXAMPLE = '2026-05-04';
const SATURDAY = 6;

/**
 * Reads a calendar date, `2026-05-04`; the value is that same text. Days that do not exist
 * and every other way to write a date are refused.
 */
export function parseDate(text: string): ParseResult<string> {
  const plain = plainText(text);
  if (isDate(plain)) return taken(plain);
  return refused(/['"]/.test(plain) ? 'stray-quote' : 'not-a-date', formsFor(plain));
}

/** The shape is tested first: the date library also takes `20260504` and a date with a time. */
function isDate(text: string): boolean {
  if (!ISO_DATE.test(text)) return false;
  try {
    Temporal.PlainDate.from(text, { overflow: 'reject' });
    return true;
  } catch (problem) {
    if (problem instanceof RangeError) return false;
    throw problem;
  }
}

/** Both readings of `5/4/2026`; for a day past the end of its month, that end and the day after it. */
function formsFor(plain: string): readonly string[] {
  const yearFirst = /^\D*(\d{4})[-/. ]?(\d{1,2})[-/. ]?(\d{1,2})(?!\d)/.exec(plain);
  const yearLast = /^\D*(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4})(?!\d)/.exec(plain);
  const [year, one, other] =
    yearFirst !== null ? yearFirst.slice(1) : [yearLast?.[3], yearLast?.[1], yearLast?.[2]];
  if (year === undefined || one === undefined || other === undefined) return [EXAMPLE];
  const forms = [isoOf(year, one, other), ...(yearLast !== null ? [isoOf(year, other, one)] : [])];
  const dates = [...new Set(forms)].filter(isDate);
  if (dates.length > 0) return dates;
  const monthStart = isoOf(year, one, '1');
  if (!isDate(monthStart)) return [EXAMPLE];
  const nextMonth = Temporal.PlainDate.from(monthStart).add({ months: 1 });
  return [nextMonth.subtract({ days: 1 }).toString(), nextMonth.toString()].filter(isDate);
}

function isoOf(year: string, month: string, day: string): string {
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

/**
 * The date n days after, or before if n is negative.
 *
 * @throws {RangeError} If the date is not one, n is not whole, or the result leaves the years 0000 to 9999.
 */
export function addDaysOn(iso: string, n: number): string {
  const resultOn = plainDate(iso).add({ days: n }).toString();
  if (!ISO_DATE.test(resultOn)) throw new RangeError(`${n} days from ${iso} leaves the years 0000 to 9999`);
  return resultOn;
}

/** Monday 1 to Sunday 7. @throws {RangeError} If the date is not one. */
export function weekdayOf(iso: string): number {
  return plainDate(iso).dayOfWeek;
}

/**
 * The first Monday to Friday after a date, never the date itself. Knows no holidays.
 *
 * @throws {RangeError} If the date is not one.
 */
export function nextWorkdayOn(iso: string): string {
  let on = addDaysOn(iso, 1);
  while (weekdayOf(on) >= SATURDAY) on = addDaysOn(on, 1);
  return on;
}

/** Days from the one to the other; negative if they stand in the wrong order. @throws {RangeError} If one is no date. */
export function daysBetween(earlierOn: string, laterOn: string): number {
  return plainDate(earlierOn).until(plainDate(laterOn), { largestUnit: 'day' }).days;
}

function plainDate(iso: string): Temporal.PlainDate {
  if (!isDate(iso)) throw new RangeError(`not a date: ${JSON.stringify(iso)}`);
  return Temporal.PlainDate.from(iso);
}
