import type { UnitSystem } from '../../../calculate/job.ts';
import type { Words } from '../../../words/index.ts';
import { clockWords } from '../../parts/clock-words.ts';

const DAY_HR = 24;
/** Estimates are told to the quarter of an hour. */
const QUARTERS = 4;

/** A time of the day of the pour, of the day after or of the day before, to the quarter of an hour. */
export function aboutTime(atHr: number, unitSystem: UnitSystem, words: Words): string {
  return exactTime(Math.round(atHr * QUARTERS) / QUARTERS, unitSystem, words);
}

/** As it was given, to the minute. */
export function exactTime(atHr: number, unitSystem: UnitSystem, words: Words): string {
  const day = Math.floor(atHr / DAY_HR);
  const time = clockWords(atHr - day * DAY_HR, unitSystem, words);
  if (day === 0) return time;
  return day > 0 ? words.pourDay.time.nextDay(time) : words.pourDay.time.dayBefore(time);
}
