import { calcCuring } from '../../src/calculate/curing/index.ts';
import { num } from '../../src/calculate/figure.ts';
import type { Finish } from '../../src/calculate/job.ts';
import {
  evaporationLbPerSqFtHr,
  type SawMethod,
  sawClosesHr,
  sawOpensHr,
  settingHr,
  vaporPressurePsi,
} from '../../src/calculate/pour-day/index.ts';
import {
  ageFactor,
  ageForRatioDays,
  calcStrength,
  daysToAge,
  equivalentAgeHr,
  strengthRatio,
  type Wait,
} from '../../src/calculate/strength/index.ts';
import { cToF, kmPerHrToMph, lbPerSqFtToKgPerSqM } from '../../src/units/index.ts';
import { fig } from '../calculate/crew/a-plan.ts';
import { aPourDay, aTime, aWeather } from '../calculate/pour-day/a-pour.ts';
import { runChecks } from './load.ts';

type Air = { concreteF: number; airF: number; windMph: number };

/** The humidity at which the face dries at a rate: halved until it is found. */
function humidityPctAt(air: Air, rateLbPerSqFtHr: number): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (evaporationLbPerSqFtHr({ ...air, humidityRatio: middle }) > rateLbPerSqFtHr) low = middle;
    else high = middle;
  }
  return high * 100;
}

runChecks('pour-day', {
  'evaporation by dew point': ({ concreteF, airF, dewF, windMph }) => {
    const humidityRatio = vaporPressurePsi(dewF) / vaporPressurePsi(airF);
    return evaporationLbPerSqFtHr({ concreteF, airF, humidityRatio, windMph });
  },
  'evaporation lb per sq ft per h': ({ concreteF, airF, humidityPct, windMph }) =>
    evaporationLbPerSqFtHr({ concreteF, airF, humidityRatio: humidityPct / 100, windMph }),
  'evaporation kg per m2 per h': ({ concreteC, airC, humidityPct, windKmPerHr }) =>
    lbPerSqFtToKgPerSqM(
      evaporationLbPerSqFtHr({
        concreteF: cToF(concreteC),
        airF: cToF(airC),
        humidityRatio: humidityPct / 100,
        windMph: kmPerHrToMph(windKmPerHr),
      }),
    ),
  'vapor pressure psi': ({ temperatureF }) => vaporPressurePsi(temperatureF),
  'humidity at which it dries so fast, %': ({ concreteF, airF, windMph, rate }) =>
    humidityPctAt({ concreteF, airF, windMph }, rate),
  'setting h': ({ temperatureF }) => settingHr(temperatureF),
  'saw opens h': ({ method, temperatureF }: { method: SawMethod; temperatureF: number }) =>
    sawOpensHr(method, temperatureF),
  'saw closes h': ({ method, temperatureF }: { method: SawMethod; temperatureF: number }) =>
    sawClosesHr(method, temperatureF),
  'strength ratio': ({ ageDays }) => strengthRatio(ageDays),
  'psi at an age': ({ strengthPsi, ageDays }) => strengthPsi * strengthRatio(ageDays),
  'equivalent age h': ({ spells, referenceC }: { spells: [number, number][]; referenceC: number }) =>
    equivalentAgeHr(
      spells.map(([hours, temperatureC]) => ({ hours, temperatureC })),
      referenceC,
    ),
  'age factor': ({ temperatureC, referenceC }) => ageFactor(temperatureC, referenceC),
  'days to a share of the strength': ({ ratio, airC }) => daysToAge(ageForRatioDays(ratio), [airC]),
  'concrete too cold F': ({ airF, concreteF }) => {
    const weather = aWeather({ concreteF, times: [aTime(6, { airF })] });
    const figures = aPourDay({ weather }).figures.weather;
    return figures === undefined ? Number.NaN : num(figures['concrete-too-cold']);
  },
  'least days': ({ wait }: { wait: Wait }) =>
    num(calcStrength({ pour: { weather: null }, strengthPsi: fig(4000, 'psi') }).figures.waits[wait].days),
  'gallons of curing compound': (given: { areaSqFt: number; finish: Finish; coverage: number }) => {
    const area = fig(given.areaSqFt, 'sq ft');
    const { figures } = calcCuring({
      pour: { curing: null, laterCoat: null },
      slabs: { drive: { id: 'drive', finish: given.finish } },
      areas: { drive: { area } },
      curedSqFt: area,
      sundries: { curingCoverageSqFtPerGal: given.coverage, curingRoughCoverageSqFtPerGal: null },
    });
    return num(figures.compound);
  },
  'lb per sq ft in kg per m2': ({ value }) => lbPerSqFtToKgPerSqM(value),
});
