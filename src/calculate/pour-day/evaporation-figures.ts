import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { Weather, WeatherTime } from '../job.ts';
import type { Rule } from '../rule.ts';
import {
  ACT_FROM,
  EVAPORATION_FORMULA,
  EVAPORATION_SOURCE,
  evaporationLbPerSqFtHr,
  VAPOR_AT_32_PSI,
  VAPOR_SOURCE,
  WATCH_FROM,
} from './evaporation.ts';
import { weatherAt } from './weather-at.ts';

export type EvaporationFigures = {
  /** By hour of the day, `hour-08`. */
  readonly at: Readonly<Record<string, Figure>>;
  /** What the forecast says of the same hours. */
  readonly forecast: Readonly<
    Record<string, { readonly air: Figure; readonly humidity: Figure; readonly wind: Figure }>
  >;
  readonly most: Figure;
};

/** Weather and evaporation in one hour. */
export type PourHour = {
  readonly atHr: number;
  readonly airF: number;
  readonly humidityRatio: number;
  readonly windMph: number;
  readonly rainChanceRatio: number | null;
  readonly rainIn: number | null;
  readonly sky: WeatherTime['sky'];
  readonly evaporation: Figure;
  /** What it asks for. */
  readonly level: 'low' | 'watch' | 'act';
};

const hourKey = (atHr: number): string => `hour-${String(atHr).padStart(2, '0')}`;

/** Evaporation of each hour; null where the forecast speaks of none of them. */
export function evaporationFigures(
  weather: Weather,
  hoursHr: readonly number[],
  rules: readonly Pick<Rule, 'code' | 'limit'>[],
): { readonly figures: EvaporationFigures; readonly hours: readonly PourHour[] } | null {
  const limit = rules.find(({ code }) => code === 'evaporation-high')?.limit ?? ACT_FROM;
  const forecast = Object.fromEntries(hoursHr.map((atHr) => [hourKey(atHr), forecastFigures(weather, atHr)]));
  const hours = hoursHr.map((atHr): PourHour => {
    const {
      rainChanceRatio = null,
      rainIn = null,
      sky = null,
    } = weather.times.findLast((time) => time.atHr <= atHr) ?? {};
    const measured = weatherAt(weather.times, atHr);
    const evaporation = atOneHour(weather, forecast[hourKey(atHr)] ?? forecastFigures(weather, atHr));
    const level = num(evaporation) > limit ? 'act' : num(evaporation) > WATCH_FROM ? 'watch' : 'low';
    return { atHr, ...measured, rainChanceRatio, rainIn, sky, evaporation, level };
  });
  if (hours.length === 0) return null;
  const at = Object.fromEntries(hours.map(({ atHr, evaporation }) => [hourKey(atHr), evaporation]));
  const most = figure({
    value: Math.max(...Object.values(at).map(num)),
    unit: 'lb/sq ft/h',
    decimals: 3,
    formula: { method: 'the highest of the hours in which the face lies open' },
    inputs: {},
    source: EVAPORATION_SOURCE,
  });
  return { figures: { at, forecast, most }, hours };
}

function forecastFigures(weather: Weather, atHr: number): EvaporationFigures['forecast'][string] {
  const { airF, humidityRatio, windMph } = weatherAt(weather.times, atHr);
  const told = (name: string, value: number, unit: '°F' | 'ratio' | 'mph', decimals: number) =>
    figure({
      value,
      unit,
      decimals,
      formula: { method: `${name} of the forecast, straight between its times` },
      inputs: {},
    });
  return {
    air: told('air', airF, '°F', 1),
    humidity: told('humidity', humidityRatio, 'ratio', 2),
    wind: told('wind', windMph, 'mph', 1),
  };
}

function atOneHour(
  weather: Weather,
  { air, humidity, wind }: EvaporationFigures['forecast'][string],
): Figure {
  const concreteF = given('pour.weather.concrete', weather.concreteF, '°F');
  return figure({
    value: evaporationLbPerSqFtHr({
      concreteF: weather.concreteF,
      airF: num(air),
      humidityRatio: num(humidity),
      windMph: num(wind),
    }),
    unit: 'lb/sq ft/h',
    decimals: 3,
    formula: EVAPORATION_FORMULA,
    inputs: {
      vaporPsi: constant('vapor pressure at 32 °F', VAPOR_AT_32_PSI, 'psi', VAPOR_SOURCE),
      concreteF,
      airF: air,
      humidityRatio: humidity,
      windMph: wind,
    },
    source: EVAPORATION_SOURCE,
  });
}
