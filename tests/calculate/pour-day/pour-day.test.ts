import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { STEP_NAMES, sawClosesHr, sawOpensHr, weatherAt } from '../../../src/calculate/pour-day/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { fig as given } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { aPourDay, aTime, aWeather, TASKS } from './a-pour.ts';

describe('weatherAt', () => {
  const times = [aTime(8, { airF: 50, windMph: 4 }), aTime(12, { airF: 60, windMph: 8, humidityRatio: 0.3 })];

  test('exact: straight between two times, held beyond them', () => {
    expect(weatherAt(times, 9)).toEqual({ airF: 52.5, windMph: 5, humidityRatio: 0.45 });
    expect(weatherAt(times, 12)).toEqual({ airF: 60, windMph: 8, humidityRatio: 0.3 });
    expect(weatherAt(times, 5)).toEqual({ airF: 50, windMph: 4, humidityRatio: 0.5 });
    expect(weatherAt(times, 20)).toEqual({ airF: 60, windMph: 8, humidityRatio: 0.3 });
  });

  test('refuses a forecast of nothing', () => {
    expect(() => weatherAt([], 9)).toThrow(RangeError);
  });
});

describe('the clock of a day of 70 °F: sets in 6 h, tools after 2.4', () => {
  const { clock, setting, finishers, saw } = aPourDay().figures;

  test('exact: by hand', () => {
    expect(num(setting!['setting-time'])).toBe(6);
    expect(num(setting!['tools-after'])).toBeCloseTo(2.4, 9);
    expect(num(clock['placed-by'])).toBe(10);
    expect(num(clock['tools-from']!)).toBeCloseTo(10.4, 9);
    // 3 h from 10:24; the last concrete would be ready at 12:24.
    expect(num(clock['finished-by']!)).toBeCloseTo(13.4, 9);
    expect(num(clock['cured-by']!)).toBeCloseTo(13.9, 9);
    expect(num(clock['set-by']!)).toBe(16);
    // 9 labor hours in the 5.6 h from the first tool to the last of it having set.
    expect(num(finishers!.needed)).toBe(2);
    // 12 - 8 (70 - 40) / 50 = 7.2 h after finishing.
    expect(num(saw!['opens-after'])).toBeCloseTo(7.2, 9);
    expect(num(saw!.opens)).toBeCloseTo(20.6, 9);
    expect(num(saw!.closes)).toBeCloseTo(13.4 + 14.4, 9);
  });

  test('exact: it is not placed before the last truck is empty', () => {
    const placedBy = (lastEmptyHr: number) =>
      num(aPourDay({ lastEmptyHr: given(lastEmptyHr, 'h') }).figures.clock['placed-by']);
    expect([placedBy(1.5), placedBy(2), placedBy(2.25)]).toEqual([10, 10, 10.25]);
    // Empty at noon, 12 + 3 h of finishing.
    expect(num(aPourDay({ lastEmptyHr: given(4, 'h') }).figures.clock['finished-by']!)).toBe(15);
  });

  test('no tool starts before the last concrete is placed, and none is finished before it is ready', () => {
    const slow = {
      ...TASKS,
      place: { ...TASKS.place!, 'clock-hours': fig(5) },
      finish: { ...TASKS.finish!, 'clock-hours': fig(1) },
    };
    const late = aPourDay({ tasks: slow }).figures.clock;
    expect(num(late['tools-from']!)).toBe(13);
    expect(num(late['finished-by']!)).toBeCloseTo(13 + 2.4, 9);
  });

  test('exact: hands, and concrete that sets before the last of it is placed', () => {
    const hot = aWeather({ concreteF: 100, times: [aTime(6, { airF: 100 }), aTime(22, { airF: 100 })] });
    const { finishers: few } = aPourDay({ weather: hot, crew: ['a'] }).figures;
    // Sets in 1.7 h: from 10:00, when it is placed, to 11:42 for 9 labor hours.
    expect(num(few!['time-to-finish'])).toBeCloseTo(1.7, 9);
    expect(num(few!.needed)).toBe(6);
    expect(num(few!.short)).toBe(5);
    expect(num(few!['tools-late'])).toBeCloseTo(0.3, 9);
  });
});

const fig = (value: number) => ({ ...TASKS.place!['clock-hours'], value });

describe('the order of the day', () => {
  const finishes = fc.uniqueArray(fc.constantFrom('broom', 'float', 'exposed-aggregate'), { minLength: 1 });

  test('invariant: steps stand in their order, none ends before it starts, none is early', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 35, max: 105, noNaN: true }),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        finishes,
        (airF, placeHr, kinds) => {
          const tasks = { ...TASKS, place: { ...TASKS.place!, 'clock-hours': fig(placeHr) } };
          const weather = aWeather({ concreteF: 70, times: [aTime(6, { airF })] });
          const { steps } = aPourDay({ weather, tasks, finishes: kinds }).data;
          const places = steps.map(({ name }) => STEP_NAMES.indexOf(name));
          expect(places).toEqual(places.toSorted((one, other) => one - other));
          const starts = steps.map(({ fromHr }) => fromHr ?? Number.NaN);
          expect(starts).toEqual(starts.toSorted((one, other) => one - other));
          for (const { fromHr, toHr } of steps)
            expect(toHr ?? Infinity).toBeGreaterThanOrEqual(fromHr ?? Infinity);
          const of = (name: string) => steps.find((step) => step.name === name);
          expect(of('saw')!.fromHr!).toBeGreaterThan(of('wait')!.toHr!);
          if (kinds.includes('exposed-aggregate'))
            expect(of('wash')!.fromHr!).toBeGreaterThanOrEqual(of('retard-and-cover')!.toHr!);
        },
      ),
      { numRuns: runCount(200), seed: 4 },
    );
  });

  test('the steps of each finish', () => {
    const names = (kinds: Parameters<typeof aPourDay>[0]) =>
      aPourDay(kinds).data.steps.map(({ name }) => name);
    expect(names({ finishes: ['broom'] })).toEqual([
      'place',
      'wait',
      'finish-broom',
      'cure',
      'saw',
      'cure-cuts',
    ]);
    expect(names({ finishes: ['exposed-aggregate'] })).toEqual([
      'place',
      'wait',
      'retard-and-cover',
      'wash',
      'cure-washed',
      'saw',
      'cure-cuts',
    ]);
    expect(names({ finishes: ['float', 'exposed-aggregate'] })).toEqual([
      'place',
      'wait',
      'finish-float',
      'retard-and-cover',
      'cure',
      'wash',
      'cure-washed',
      'saw',
      'cure-cuts',
    ]);
    const { 'saw-joints': _, ...unsawn } = TASKS;
    expect(names({ tasks: unsawn })).toEqual(['place', 'wait', 'finish-broom', 'cure']);
  });

  test('without a forecast only the times of the crew are known', () => {
    const { figures, data } = aPourDay({ weather: null });
    expect(Object.keys(figures)).toEqual(['clock']);
    expect(data.steps[0]).toEqual({ name: 'place', fromHr: 8, toHr: 10 });
    expect(data.steps.slice(1).map(({ toHr }) => toHr)).toEqual([null, null, null, null, null]);
    expect(aPourDay({ weather: null, firstTruckHr: null }).data.steps[0]?.fromHr).toBe(7);
  });
});

describe('what the weather does', () => {
  test('exact: the day of the forecast, either way, and what can be put off', () => {
    const apart = (on: string) => num(aPourDay({ weather: aWeather({ on }) }).figures.weather!['days-apart']);
    expect([apart('2026-05-08'), apart('2026-05-09'), apart('2026-05-06')]).toEqual([0, 1, 2]);
    const put = aPourDay({ freeCancelHr: 10 }).figures.clock['put-off-by'];
    expect(num(put!)).toBe(-2);
    expect(aPourDay().figures.clock['put-off-by']).toBeUndefined();
  });

  test('concrete below 55 °F is too cold only in cold air', () => {
    const short = (concreteF: number, airF: number) => {
      const weather = aWeather({ concreteF, times: [aTime(6, { airF })] });
      return num(aPourDay({ weather }).figures.weather!['concrete-too-cold']);
    };
    expect([short(50, 39), short(50, 40), short(55, 39), short(60, 20)]).toEqual([5, 0, 0, 0]);
  });

  test('only the hours in which the concrete is fresh count', () => {
    const times = [
      aTime(2, { windMph: 40, rainChanceRatio: 0.9, airF: 20 }),
      aTime(7, { windMph: 4, rainChanceRatio: 0.2, rainIn: 0.01 }),
      aTime(15, { windMph: 12, rainChanceRatio: 0.4, rainIn: 0.02 }),
      aTime(18, { windMph: 30, rainChanceRatio: 0.8, rainIn: 0.5, airF: 110 }),
    ];
    // Cured by 13:54, set by 16:00.
    const { weather } = aPourDay({ weather: aWeather({ times }) }).figures;
    // Straight from 4 mph at 7:00 to 12 at 15:00.
    expect(num(weather!['strongest-wind'])).toBeCloseTo(4 + 6.9, 9);
    expect(num(weather!['rain-chance']!)).toBe(0.4);
    expect(num(weather!.rain!)).toBeCloseTo(0.03, 9);
    expect(num(weather!['highest-air'])).toBe(70);
  });

  test('what is not given makes no figure', () => {
    const times = [aTime(6, { rainChanceRatio: null })];
    const { weather } = aPourDay({ weather: aWeather({ times }) }).figures;
    expect(Object.keys(weather!)).toEqual([
      'days-apart',
      'concrete',
      'lowest-air',
      'highest-air',
      'strongest-wind',
      'concrete-too-cold',
    ]);
  });

  test('exact: work before sunrise and after sunset', () => {
    const dark = (sunriseHr: number | null, sunsetHr: number | null) =>
      num(aPourDay({ weather: aWeather({ sunriseHr, sunsetHr }) }).figures.weather!['hours-in-the-dark']!);
    expect(dark(8.5, null)).toBeCloseTo(0.5, 9);
    expect(dark(null, 13)).toBeCloseTo(0.9, 9);
    expect(dark(8.5, 13)).toBeCloseTo(1.4, 9);
    expect(dark(6, 20)).toBe(0);
  });

  test('the hours of drying, and what each asks for', () => {
    const times = [
      aTime(8),
      aTime(11, { windMph: 25, humidityRatio: 0.2 }),
      aTime(12, { windMph: 60, humidityRatio: 0.1 }),
    ];
    const { data, figures } = aPourDay({ weather: aWeather({ times }) });
    expect(data.hours.map(({ atHr }) => atHr)).toEqual([8, 9, 10, 11, 12]);
    expect(data.hours.map(({ level }) => level)).toEqual(['low', 'watch', 'act', 'act', 'act']);
    expect(Object.keys(figures.evaporation!.at)).toEqual([
      'hour-08',
      'hour-09',
      'hour-10',
      'hour-11',
      'hour-12',
    ]);
    expect(num(figures.evaporation!.most)).toBe(num(data.hours.at(-1)!.evaporation));
  });

  test('a night without noise asks for another saw', () => {
    const noiseAllowed = { fromHr: 9, toHr: 19.5 };
    const hot = aWeather({ concreteF: 90, times: [aTime(6, { airF: 90 })] });
    const day = aPourDay({ noiseAllowed, weather: hot, firstTruckHr: 12 }).data;
    expect(day.saw?.at).toBeNull();
    expect(day.earlyEntry?.at).not.toBeNull();
    expect(day.earlyEntry?.at).toEqual({ fromHr: 18, toHr: 19.5 });
    expect(
      aPourDay({ noiseAllowed: { fromHr: 9, toHr: 19 }, weather: hot, firstTruckHr: 12 }).data.earlyEntry,
    ).toBeNull();
    expect(aPourDay().data.earlyEntry).toBeNull();
  });

  test('joints that an early-entry saw cuts have its window; beside others they are sawn before them', () => {
    const usual = aPourDay();
    expect(Object.keys(usual.figures)).not.toContain('early-saw');
    expect(usual.data.earlySaw).toBeNull();

    const early = aPourDay({ cuts: ['early-entry', 'tooled'] });
    expect(Object.keys(early.figures)).not.toContain('saw');
    expect(early.data.saw).toBeNull();
    // At 70 °F the first cut is so many hours after the last tool.
    const finishedByHr = num(early.figures.clock['finished-by']!);
    expect(early.data.earlySaw?.window).toEqual({
      fromHr: expect.closeTo(finishedByHr + sawOpensHr('early-entry', 70), 9),
      toHr: expect.closeTo(finishedByHr + sawClosesHr('early-entry', 70), 9),
    });
    expect(num(early.figures['early-saw']!.opens)).toBeLessThan(num(usual.figures.saw!.opens));
    expect(early.data.steps.map(({ name }) => name).slice(-2)).toEqual(['saw-early', 'cure-cuts']);

    const both = aPourDay({ cuts: ['wet-sawn', 'early-entry'] });
    expect([both.data.saw, both.data.earlySaw]).toEqual([usual.data.saw, early.data.earlySaw]);
    // 1.5 h for 60 ft, of which the one saw cuts 40 ft and the other 20.
    expect(num(both.figures.saw!['cutting-hours']!)).toBeCloseTo(1, 12);
    expect(num(both.figures['early-saw']!['cutting-hours']!)).toBeCloseTo(0.5, 12);
    expect(Object.keys(early.figures['early-saw']!)).not.toContain('cutting-hours');
    const [first, second, cured] = both.data.steps.slice(-3);
    expect([first?.name, second?.name, cured?.name]).toEqual(['saw-early', 'saw', 'cure-cuts']);
    expect([cured?.fromHr, cured?.toHr]).toEqual([first?.fromHr, second?.toHr]);
  });

  test('a saw without its hours, or without a forecast, leaves the curing of the cuts open', () => {
    const noiseAllowed = { fromHr: 9, toHr: 19.5 };
    const hot = aWeather({ concreteF: 90, times: [aTime(6, { airF: 90 })] });
    const cuts = ['wet-sawn', 'early-entry'] as const;
    const day = aPourDay({ noiseAllowed, weather: hot, firstTruckHr: 12, cuts });
    expect(day.data.saw?.at).toBeNull();
    expect(day.data.earlySaw?.at).toEqual({ fromHr: 18, toHr: 19.5 });
    expect(num(day.figures['early-saw']!['hours-short'])).toBe(0);
    expect(num(day.figures.saw!['hours-short'])).toBeCloseTo(1, 12);
    expect(day.data.steps.at(-1)).toEqual({ name: 'cure-cuts', fromHr: null, toHr: null });
    // An early-entry saw is there already: it is not offered once more.
    expect(day.data.earlyEntry).toBeNull();

    const open = aPourDay({ weather: null, cuts }).data.steps.slice(-3);
    expect(open.map(({ name, fromHr }) => [name, fromHr])).toEqual([
      ['saw-early', null],
      ['saw', null],
      ['cure-cuts', null],
    ]);
    expect(aPourDay({ cuts: ['tooled'] }).data.steps.map(({ name }) => name)).not.toContain('cure-cuts');
  });
});

testExpressions(
  'pour day',
  aPourDay({
    weather: aWeather({ sunriseHr: 9, sunsetHr: 13, rainBeforeIn: 0.2, lowBeforeF: 30 }),
    freeCancelHr: 3,
  }).figures,
  20,
);
