import type { Pour, Weather } from '../calculate/job.ts';
import type { PourSection } from '../read/index.ts';
import { inCoreUnit, inCoreUnitOrNull } from './quantity.ts';

const MIN_PER_HR = 60;

/** What a job says of the day concrete is placed; nothing of it has to be said. */
export function pourOf(input: PourSection | undefined): Pour {
  const noise = input?.['noise-allowed'];
  return {
    firstTruckHr: hourOrNull(input?.['first-truck']),
    noiseAllowed:
      noise === undefined
        ? null
        : { fromHr: noise.from.minutes / MIN_PER_HR, toHr: noise.to.minutes / MIN_PER_HR },
    curing: input?.curing ?? null,
    laterCoat:
      input?.['later-coat'] === undefined || input['later-coat'] === 'none' ? null : input['later-coat'],
    weather: input?.weather === undefined ? null : weatherOf(input.weather),
  };
}

function weatherOf(input: NonNullable<PourSection['weather']>): Weather {
  return {
    on: input.on,
    concreteF: inCoreUnit(input.concrete),
    times: input.times.map(
      ({ at, air, humidity, wind, 'rain-chance': rainChance, rain, sky }): Weather['times'][number] => ({
        atHr: at.minutes / MIN_PER_HR,
        airF: inCoreUnit(air),
        humidityRatio: inCoreUnit(humidity),
        windMph: inCoreUnit(wind),
        rainChanceRatio: inCoreUnitOrNull(rainChance),
        rainIn: inCoreUnitOrNull(rain),
        sky: sky ?? null,
      }),
    ),
    lowBeforeF: inCoreUnitOrNull(input['low-before']),
    rainBeforeIn: inCoreUnitOrNull(input['rain-before']),
    sunriseHr: hourOrNull(input.sunrise),
    sunsetHr: hourOrNull(input.sunset),
    comingF: (input['coming-days'] ?? []).map(inCoreUnit),
  };
}

function hourOrNull(time: { readonly minutes: number } | undefined): number | null {
  return time === undefined ? null : time.minutes / MIN_PER_HR;
}
