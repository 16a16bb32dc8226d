import { plainText } from './number-text.ts';
import { type ParseResult, refused, taken } from './parse-result.ts';

/** A time of day as whole minutes from midnight, 0 to 1,440, and how it was written. */
export type TimeOfDay = { readonly minutes: number; readonly text: string };

const MIN_PER_HR = 60;
const HALF_DAY_HR = 12;
const DAY_HR = 24;
const CLOCK_24 = /^(\d{1,2}):(\d\d)$/;
const CLOCK_12 = /^(\d{1,2})(?::(\d\d))? ?([ap])(?:m|\.m\.)$/i;
const EXAMPLES = ['7:30', '16:30', '4:30 pm'] as const;

/**
 * Reads a time of day: `7:00`, `16:30`, `7 am`, `4:30 pm`. Without am or pm it is on the clock of 24
 * hours; `24:00` is the end of the day. `12 am` is midnight and `12 pm` noon, as clocks show them.
 *
 * A bare hour is `without-unit`: `7` may be in the morning or in the evening.
 */
export function parseTimeOfDay(text: string): ParseResult<TimeOfDay> {
  const plain = plainText(text);
  const minutes = minutesOf(plain);
  if (minutes !== null) return taken({ minutes, text });
  if (/['"]/.test(plain)) return refused('stray-quote', formsFor(plain));
  return refused(/^\d{1,2}$/.test(plain) ? 'without-unit' : 'not-a-time-of-day', formsFor(plain));
}

function minutesOf(plain: string): number | null {
  const [, hour24, minute24] = CLOCK_24.exec(plain) ?? [];
  if (hour24 !== undefined) {
    const minutes = joined(hour24, minute24);
    return minutes !== null && minutes <= DAY_HR * MIN_PER_HR ? minutes : null;
  }
  const [, hour12 = '', minute12, half = ''] = CLOCK_12.exec(plain) ?? [];
  const hour = Number(hour12);
  if (!(hour >= 1 && hour <= HALF_DAY_HR)) return null;
  const isAfternoon = half.toLowerCase() === 'p';
  return joined(String((hour % HALF_DAY_HR) + (isAfternoon ? HALF_DAY_HR : 0)), minute12);
}

/** Minutes from midnight, null where the minutes are no minutes of an hour. */
function joined(hour: string, minute = '00'): number | null {
  return Number(minute) < MIN_PER_HR ? Number(hour) * MIN_PER_HR + Number(minute) : null;
}

/** Both halves of the day for a bare hour, else the same digits with a colon, else examples; each is taken. */
function formsFor(plain: string): readonly string[] {
  const words = plain.toLowerCase();
  if (/\bnoon\b/.test(words)) return ['12:00', '12 pm'];
  if (/\bmidnight\b/.test(words)) return ['0:00', '24:00'];
  const [, hour, minute] = /(?<![\d:.])(\d{1,2})(?:[:.h ]?(\d\d))?(?![:.]?\d)/.exec(words) ?? [];
  const [, half] = /([ap])\.?m/.exec(words) ?? [];
  const time = `${hour}:${minute ?? '00'}`;
  const isBare = minute === undefined && half === undefined;
  const forms = isBare
    ? [time, `${hour} am`, `${hour} pm`]
    : [...(half === undefined ? [] : [`${time} ${half}m`]), time];
  const works = forms.filter((form) => minutesOf(form) !== null);
  return works.length > 0 ? works : EXAMPLES;
}

/** The hour and minutes of a clock, and on one of 12 hours the half of the day. */
export type ClockFace = { readonly time: string; readonly half: 'am' | 'pm' | null };

/**
 * What a clock shows: `16:30` on one of 24 hours, `4:30` and pm on one of 12. To the whole minute.
 *
 * @param timeHr Hours from midnight, 0 to 24.
 * @throws {RangeError} If the time is outside of a day.
 */
export function clockFace(timeHr: number, clock: 12 | 24): ClockFace {
  if (!(timeHr >= 0 && timeHr <= DAY_HR)) throw new RangeError(`timeHr must be 0 to 24, got ${timeHr}`);
  const minutes = Math.round(timeHr * MIN_PER_HR);
  const hour = Math.floor(minutes / MIN_PER_HR);
  const minute = String(minutes % MIN_PER_HR).padStart(2, '0');
  if (clock === DAY_HR) return { time: `${hour}:${minute}`, half: null };
  const isAfternoon = hour >= HALF_DAY_HR && hour < DAY_HR;
  return { time: `${hour % HALF_DAY_HR || HALF_DAY_HR}:${minute}`, half: isAfternoon ? 'pm' : 'am' };
}
