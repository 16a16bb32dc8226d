import type { Weather, WeatherTime } from '../job.ts';

type Measured = Pick<WeatherTime, 'airF' | 'humidityRatio' | 'windMph'>;

/**
 * The forecast at a time of day: straight between the two times it is given for. Before the first and
 * after the last of them it is taken to stay as it is.
 *
 * @param times In the order of the day.
 * @param atHr  From midnight.
 * @throws {RangeError} If no time is given.
 */
export function weatherAt(times: Weather['times'], atHr: number): Measured {
  const next = times.findIndex((time) => time.atHr >= atHr);
  const later = times[next === -1 ? times.length - 1 : next];
  const earlier = next > 0 ? times[next - 1] : later;
  if (later === undefined || earlier === undefined) throw new RangeError('a forecast needs a time');
  const span = later.atHr - earlier.atHr;
  const share = span > 0 ? (atHr - earlier.atHr) / span : 0;
  const between = (key: keyof Measured) => earlier[key] + (later[key] - earlier[key]) * share;
  return { airF: between('airF'), humidityRatio: between('humidityRatio'), windMph: between('windMph') };
}

/** Whole hours of the day from the first to the last time of a forecast, both ends of it included. */
export function hoursOf(times: Weather['times'], fromHr: number, toHr: number): readonly number[] {
  const [first, last] = [times[0], times.at(-1)];
  if (first === undefined || last === undefined) return [];
  const startHr = Math.max(Math.ceil(first.atHr), Math.floor(fromHr));
  const endHr = Math.min(Math.floor(last.atHr), Math.ceil(toHr));
  return Array.from({ length: Math.max(0, endHr - startHr + 1) }, (_, index) => startHr + index);
}

/** Mean of the air at the whole hours between two times, each counted once [°F]. */
export function meanAirF(times: Weather['times'], fromHr: number, toHr: number): number {
  const hours = Array.from(
    { length: Math.max(1, Math.ceil(toHr) - Math.floor(fromHr) + 1) },
    (_, index) => Math.floor(fromHr) + index,
  );
  return hours.reduce((sumF, atHr) => sumF + weatherAt(times, atHr).airF, 0) / hours.length;
}
