import type { TaskHours } from '../../../src/calculate/crew/index.ts';
import { type Figure, figure } from '../../../src/calculate/figure.ts';
import type { Finish, JointCut, Pour, Weather, WeatherTime } from '../../../src/calculate/job.ts';
import { calcPourDay } from '../../../src/calculate/pour-day/index.ts';
import { calcStrength } from '../../../src/calculate/strength/index.ts';
import { fig } from '../crew/a-plan.ts';

export function aTime(atHr: number, changed: Partial<WeatherTime> = {}): WeatherTime {
  return {
    atHr,
    airF: 70,
    humidityRatio: 0.5,
    windMph: 5,
    rainChanceRatio: 0.1,
    rainIn: null,
    sky: null,
    ...changed,
  };
}

/** A day of 70 °F, concrete of 70 °F, with one thing changed. */
export function aWeather(changed: Partial<Weather> = {}): Weather {
  return {
    on: '2026-05-08',
    concreteF: 70,
    times: [aTime(6), aTime(22)],
    lowBeforeF: null,
    rainBeforeIn: null,
    sunriseHr: null,
    sunsetHr: null,
    comingF: [],
    ...changed,
  };
}

const task = (clockHr: number, people = 1) => {
  const of = (value: number, unit: 'h' | 'sq ft') =>
    figure({ value, unit, decimals: 1, formula: { method: 'of the test' }, inputs: {} });
  return {
    quantity: of(600, 'sq ft'),
    'clock-hours': of(clockHr, 'h'),
    'labor-hours': of(clockHr * people, 'h'),
  };
};

export const TASKS: TaskHours = {
  place: task(2, 3),
  finish: task(3, 3),
  cure: task(0.5),
  'saw-joints': task(1.5),
};

/** A pour at 8:00 by three people: 2 h of placing, 3 h of finishing, 1.5 h of sawing. */
export function aPourDay(
  changed: Partial<Pour> & {
    readonly finishes?: readonly Finish[];
    readonly tasks?: TaskHours;
    readonly freeCancelHr?: number | null;
    readonly lastEmptyHr?: Figure | null;
    readonly crew?: readonly string[];
    readonly cuts?: readonly JointCut[];
  } = {},
) {
  const {
    finishes = ['broom'],
    tasks = TASKS,
    freeCancelHr = null,
    lastEmptyHr = null,
    crew = ['a', 'b', 'c'],
    cuts = ['wet-sawn'],
    ...pour
  } = changed;
  const day = calcPourDay({
    pour: {
      firstTruckHr: 8,
      noiseAllowed: null,
      curing: null,
      laterCoat: null,
      weather: aWeather(),
      ...pour,
    },
    slabs: Object.fromEntries(
      finishes.map((finish, index) => [`slab-${index}`, { id: `slab-${index}`, finish }]),
    ),
    cutFt: new Map(cuts.map((cut) => [cut, { [cut]: fig(cut === 'early-entry' ? 20 : 40, 'ft') }])),
    rules: [],
    freeCancelHr,
    lastEmptyHr,
    waits: calcStrength({ pour: { weather: null }, strengthPsi: fig(4000, 'psi') }).figures.waits,
    plan: { crew },
    labor: { dayStartsHr: 7 },
    tasks,
    days: [{ on: '2026-05-08', kind: 'work', phase: 'pour' }],
  });
  if (day === null) throw new Error('nothing is placed');
  return day;
}
