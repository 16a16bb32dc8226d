import { daysBetween } from '../../units/index.ts';
import { constant, type Figure, type FigureUnit, figure, type Given, given, num } from '../figure.ts';
import type { Weather } from '../job.ts';
import type { ClockFigures, FinishClockFigures } from './clock-figures.ts';
import { hoursOf, weatherAt } from './weather-at.ts';

const PATH = 'pour.weather';

/** Below this the air makes it cold weather [°F]. */
export const COLD_AIR_F = 40;
/** From here on the measures of hot weather are taken: common practice, no source, 80 to 85 °F [°F]. */
export const HOT_AIR_F = 80;
const COLD_AIR_SOURCE = 'ACI 306R-16, air below 40 °F in the time of protection (from memory)';
/** Least temperature of concrete as placed, sections below 12 in, in cold weather [°F]. */
const COLD_CONCRETE_F = 55;
const COLD_CONCRETE_SOURCE =
  'ACI 306R as given by C. Beall, Masonry and Concrete, fig. 3-37: 55 °F as placed, sections below 12 in (seen)';

export type WeatherFigures = {
  /** From the planned day of the pour to the day of the forecast, either way [days]. */
  readonly 'days-apart': Figure;
  readonly concrete: Figure;
  readonly 'lowest-air': Figure;
  readonly 'highest-air': Figure;
  readonly 'strongest-wind': Figure;
  /** How much too cold the concrete comes in cold weather [°F]; 0 where it is not cold. */
  readonly 'concrete-too-cold': Figure;
  /** The rest only where it is given. */
  readonly 'rain-chance'?: Figure;
  readonly rain?: Figure;
  readonly 'low-before'?: Figure;
  readonly 'rain-before'?: Figure;
  /** Work on the face before sunrise or after sunset [h]. */
  readonly 'hours-in-the-dark'?: Figure;
};

/** What the forecast says of the hours in which the concrete is fresh. */
export function weatherFigures(
  weather: Weather,
  clock: ClockFigures,
  finish: FinishClockFigures,
  pourOn: string,
): WeatherFigures {
  const fromHr = num(clock['first-truck']);
  const rainTimes = timesWithin(weather.times, fromHr, num(finish['set-by']));
  const work = turnsWithin(weather.times, fromHr, num(finish['cured-by']));
  const chances = rainTimes.map(({ rainChanceRatio }) => rainChanceRatio).filter((one) => one !== null);
  const amountsIn = rainTimes.map(({ rainIn }) => rainIn).filter((one) => one !== null);
  const airF = work.map((turn) => turn.airF);
  const concreteF = given(`${PATH}.concrete`, weather.concreteF, '°F');
  const lowest = among('lowest', Math.min(...airF), '°F');
  return {
    'days-apart': among(
      'from the day of the pour to the day of the forecast, whichever is first',
      Math.abs(daysBetween(pourOn, weather.on)),
      'days',
    ),
    concrete: same('concreteF', concreteF),
    'lowest-air': lowest,
    'highest-air': among('highest', Math.max(...airF), '°F'),
    'strongest-wind': among('strongest', Math.max(...work.map(({ windMph }) => windMph)), 'mph'),
    'concrete-too-cold': tooCold(lowest, concreteF),
    ...(chances.length === 0 ? {} : { 'rain-chance': among('highest', Math.max(...chances), 'ratio') }),
    ...(amountsIn.length === 0
      ? {}
      : {
          rain: among(
            'together',
            amountsIn.reduce((sumIn, oneIn) => sumIn + oneIn, 0),
            'in',
          ),
        }),
    ...optional('low-before', weather.lowBeforeF, '°F'),
    ...optional('rain-before', weather.rainBeforeIn, 'in'),
    ...inTheDark(clock['first-truck'], finish['cured-by'], weather),
  };
}

/**
 * The forecast at both ends of a stretch of the day and at its own times between them: it runs straight from one
 * to the next, so its highest and lowest values are among these.
 */
function turnsWithin(times: Weather['times'], fromHr: number, toHr: number) {
  const between = times.map(({ atHr }) => atHr).filter((atHr) => atHr > fromHr && atHr < toHr);
  return [fromHr, ...between, toHr].map((atHr) => weatherAt(times, atHr));
}

/** The times within a stretch of the day, with the last one before it, which holds until the next. */
function timesWithin(times: Weather['times'], fromHr: number, toHr: number): Weather['times'] {
  const lastBefore = times.findLast(({ atHr }) => atHr <= fromHr);
  const within = times.filter(({ atHr }) => atHr > fromHr && atHr <= toHr);
  const found = lastBefore === undefined ? within : [lastBefore, ...within];
  return found.length > 0 ? found : times.slice(0, 1);
}

/** Whole hours in which the face lies open, of those the forecast speaks of. */
export function openHours(
  weather: Weather,
  clock: ClockFigures,
  finish: FinishClockFigures,
): readonly number[] {
  return hoursOf(weather.times, num(clock['first-truck']), num(finish['cured-by']));
}

function among(which: string, value: number, unit: FigureUnit): Figure {
  return figure({
    value,
    unit,
    decimals: unit === 'ratio' || unit === 'in' ? 2 : 0,
    formula: { method: unit === 'days' ? which : `${which} of the forecast while the concrete is fresh` },
    inputs: {},
  });
}

function same(name: string, input: Given): Figure {
  return figure({
    value: input.value,
    unit: input.unit,
    decimals: 2,
    formula: name,
    inputs: { [name]: input },
  });
}

function optional(key: 'low-before' | 'rain-before', value: number | null, unit: '°F' | 'in') {
  if (value === null) return {};
  return { [key]: same(unit === 'in' ? 'rainIn' : 'airF', given(`${PATH}.${key}`, value, unit)) };
}

function tooCold(lowestF: Figure, concreteF: Given): Figure {
  const isCold = num(lowestF) < COLD_AIR_F;
  return figure({
    value: isCold ? Math.max(0, COLD_CONCRETE_F - num(concreteF)) : 0,
    unit: '°F',
    decimals: 0,
    formula: { method: 'least temperature less that of the concrete where the air is cold, else 0' },
    inputs: {
      lowestAirF: lowestF,
      concreteF,
      coldAirF: constant('cold air', COLD_AIR_F, '°F', COLD_AIR_SOURCE),
      leastF: constant('least temperature as placed', COLD_CONCRETE_F, '°F', COLD_CONCRETE_SOURCE),
    },
    source: COLD_CONCRETE_SOURCE,
  });
}

/** What of the work lies before sunrise or after sunset; nothing where neither is given. */
function inTheDark(
  firstTruckHr: Figure,
  curedByHr: Figure,
  { sunriseHr, sunsetHr }: Pick<Weather, 'sunriseHr' | 'sunsetHr'>,
): { readonly 'hours-in-the-dark'?: Figure } {
  if (sunriseHr === null && sunsetHr === null) return {};
  const before = sunriseHr === null ? 0 : Math.max(0, sunriseHr - num(firstTruckHr));
  const after = sunsetHr === null ? 0 : Math.max(0, num(curedByHr) - sunsetHr);
  const parts = [
    ...(sunriseHr === null ? [] : ['max(0, sunriseHr - firstTruckHr)']),
    ...(sunsetHr === null ? [] : ['max(0, curedByHr - sunsetHr)']),
  ];
  const dark = figure({
    value: before + after,
    unit: 'h',
    decimals: 1,
    formula: parts.join(' + '),
    inputs: {
      ...(sunriseHr === null ? {} : { sunriseHr: given(`${PATH}.sunrise`, sunriseHr, 'h'), firstTruckHr }),
      ...(sunsetHr === null ? {} : { sunsetHr: given(`${PATH}.sunset`, sunsetHr, 'h'), curedByHr }),
    },
  });
  return { 'hours-in-the-dark': dark };
}
