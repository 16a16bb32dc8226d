import { describe, expect, test } from 'vitest';
import { plainSlabSqFt } from '../../../src/calculate/crew/break-quantity.ts';
import { paceIn } from '../../../src/calculate/crew/hours.ts';
import { calcLaborRate, PHASES } from '../../../src/calculate/crew/index.ts';
import { phaseDays } from '../../../src/calculate/crew/phases.ts';
import { stepsFacesSqFt } from '../../../src/calculate/crew/quantities.ts';
import { num } from '../../../src/calculate/figure.ts';
import { tapedRisen } from '../../../src/calculate/flights/index.ts';
import type { CrewText, PublicText } from '../../../src/calculate/text.ts';
import { rational } from '../../../src/units/index.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab, someBars } from '../slabs.ts';
import { crewOf, existing, fig, production, rate, row, someWork } from './a-plan.ts';

const people = Object.fromEntries(
  [
    ['ana', '30.00'],
    ['ben', '24.00'],
    ['cal', '20.00'],
  ].map(([id = '', wage = '']) => [id, { id, label: id as CrewText, wage: rate(wage, 'h') }]),
);

const hoursOf = (result: ReturnType<typeof crewOf>) =>
  Object.fromEntries(
    Object.entries(result.figures.tasks).map(([task, figures]) => [
      task,
      [num(figures['clock-hours']), num(figures['labor-hours'])],
    ]),
  );

describe('labor rate', () => {
  test('by hand: (30 + 24) / 2 = 27.00; with 35 % on top 36.45', () => {
    const { figures, problems } = calcLaborRate({
      plan: { crew: ['ana', 'ben'] },
      labor: { burdenRatio: 0.35, people },
    });
    expect(figures['average-wage'].value.toString()).toBe('27');
    expect(figures['labor-cost-per-hour'].value.toString()).toBe('36.45');
    expect(problems).toEqual([]);
  });

  test('by hand: 74 / 3 = 24.67; with 30 % on top 32.07, rounded once', () => {
    const { figures } = calcLaborRate({
      plan: { crew: ['ana', 'ben', 'cal'] },
      labor: { burdenRatio: 0.3, people },
    });
    expect(figures['average-wage'].value.toString()).toBe('24.67');
    expect(figures['labor-cost-per-hour'].value.toString()).toBe('32.07');
  });

  test('a wage a day is a problem at its path', () => {
    const daily = { ...people, ana: { id: 'ana', label: 'Ana' as CrewText, wage: rate('240.00', 'day') } };
    const { problems } = calcLaborRate({
      plan: { crew: ['ana'] },
      labor: { burdenRatio: 0.3, people: daily },
    });
    expect(problems).toEqual([
      { code: 'wage-not-per-hour', path: 'company.labor.people.ana.wage', parts: { unit: 'day' } },
    ]);
  });

  test('nobody, and somebody unknown, throw', () => {
    expect(() => calcLaborRate({ plan: { crew: [] }, labor: { burdenRatio: 0, people } })).toThrow(
      RangeError,
    );
    expect(() => calcLaborRate({ plan: { crew: ['dan'] }, labor: { burdenRatio: 0, people } })).toThrow(
      'dan',
    );
  });

  const three = calcLaborRate({
    plan: { crew: ['ana', 'ben', 'cal'] },
    labor: { burdenRatio: 0.315, people },
  });
  testExpressions('labor rate', three.figures, 2);
});

describe('hours of the tasks', () => {
  test('by hand, quantity over pace, times people', () => {
    expect(hoursOf(crewOf())).toEqual({
      'set-up': [1, 2],
      'saw-cut': [1, 1],
      'break-out': [6, 12],
      haul: [6, 6],
      base: [8, 16],
      form: [4, 8],
      place: [2, 6],
      finish: [2, 4],
      cure: [1, 1],
      'saw-joints': [1, 1],
      strip: [1, 2],
      backfill: [2, 4],
      clean: [2, 6],
    });
  });

  test('6 in with mesh takes 1.5 x 1.6 as long, with bars 1.5 x 2.05', () => {
    expect(plainSlabSqFt({ areaSqFt: 100, thicknessIn: 6, steelRatio: 1.6 })).toBeCloseTo(240, 12);
    const old = existing['old-drive'];
    if (old === undefined) throw new Error('no old drive');
    const thick = (steel: 'mesh' | 'bars') =>
      num(
        crewOf({ existing: { 'old-drive': { ...old, thicknessIn: 6, steel } } }).figures.tasks['break-out']
          ?.quantity ?? fig(0, 'sq ft'),
      );
    expect(thick('mesh')).toBeCloseTo(720 * 1.5 * 1.6, 9);
    expect(thick('bars')).toBeCloseTo(720 * 1.5 * 2.05, 9);
  });

  test('each way of taking out has its own pace; where it is sawn, thickness counts and steel does not', () => {
    const old = existing['old-drive'];
    if (old === undefined) throw new Error('no old drive');
    const thick = { ...old, thicknessIn: 6, steel: 'mesh' as const };
    const work = someWork();
    const made = crewOf({
      existing: {
        'old-drive': thick,
        'old-walk': { ...thick, id: 'old-walk', breakOut: 'jackhammer' },
        'old-pad': { ...thick, id: 'old-pad', breakOut: 'saw-and-lift' },
      },
      shapes: {
        ...work.shapes,
        existing: {
          'old-drive': { area: fig(100, 'sq ft') },
          'old-walk': { area: fig(40, 'sq ft') },
          'old-pad': { area: fig(120, 'sq ft') },
        },
      },
      breaking: { total: { 'cut-length': fig(80, 'ft') } },
      production: production({
        'break-out-by-hand': row('break-out-by-hand', '24 sq ft per h', 2, { machine: 'jackhammer' }),
        'saw-and-lift': row('saw-and-lift', '90 sq ft per h', 3, { machine: 'loader-with-breaker' }),
      }),
    });
    // 100 x 1.5 x 1.6 at 120 an hour, 40 x 1.5 x 1.6 at 24, 120 x 1.5 at 90, and 40 + 80 ft at 40.
    expect(hoursOf(made)).toMatchObject({
      'saw-cut': [3, 3],
      'break-out': [2, 4],
      'break-out-by-hand': [4, 8],
      'saw-and-lift': [2, 6],
    });
    // 2 set up, 3 saw, 4, 8 and 6 break and lift, 6 haul.
    expect(num(made.figures.phases['tear-out']['labor-hours'])).toBeCloseTo(29, 9);
    expect(num(made.figures.total['people-short'])).toBe(0);
  });

  test('a way of taking out without a pace throws', () => {
    const old = existing['old-drive'];
    if (old === undefined) throw new Error('no old drive');
    expect(() => crewOf({ existing: { 'old-drive': { ...old, breakOut: 'jackhammer' } } })).toThrow(
      'break-out-by-hand',
    );
  });

  test('soil is dug in yards, and steel is laid where a slab has it', () => {
    const work = someWork();
    const { figures } = crewOf({
      tearOut: { ...work.tearOut, soil: { drive: { volume: fig(108, 'cu ft') } } },
      slabs: { drive: aSlab({ reinforcement: someBars() }) },
    });
    expect(num(figures.tasks.dig?.quantity ?? fig(0, 'yd3'))).toBe(4);
    expect(num(figures.tasks.reinforce?.quantity ?? fig(0, 'sq ft'))).toBe(720);
  });

  test('a flight of 3 risers is finished on 2 treads, its landing and 3 risers', () => {
    const steps = { widthIn: 48, riserCount: 3, riserIn: 7, treadIn: 12, landingIn: 36 };
    expect(stepsFacesSqFt(steps)).toBeCloseTo((48 * (24 + 36 + 21)) / 144, 12);
    const risen = tapedRisen({ id: 'porch', ...steps });
    const porch = { porch: { id: 'porch', label: 'Porch' as PublicText, ...steps, risen } };
    expect(num(crewOf({ steps: porch }).figures.tasks.finish?.quantity ?? fig(0, 'sq ft'))).toBe(720 + 27);
  });

  test('bags are mixed and placed by the hours of the bags, shared by the people of the row', () => {
    expect(hoursOf(crewOf({ supply: 'bags' }))['place']).toEqual([12, 36]);
  });

  test('a pace in metric is the same pace: 9 m an hour is 29.53 ft', () => {
    expect(paceIn('ft', { perHour: rational(9), unit: 'm' })).toBeCloseTo(29.5276, 4);
    expect(paceIn('sq ft', { perHour: rational(10), unit: 'm2' })).toBeCloseTo(107.639, 3);
    expect(paceIn('yd3', { perHour: rational(4), unit: 'm3' })).toBeCloseTo(5.2318, 5);
    expect(paceIn('ft', { perHour: rational(9), unit: 'm2' })).toBeNull();
  });

  test('a pace that counts something else is a problem', () => {
    const { problems } = crewOf({ production: production({ form: row('form', '20 sq ft per h', 2) }) });
    expect(problems).toEqual([
      {
        code: 'pace-unit',
        path: 'company.production.form.pace',
        parts: { task: 'form', unit: 'sq ft', wanted: 'ft' },
      },
    ]);
  });
});

describe('phases and days', () => {
  test('by hand: 21 h and 24 h are a day each for three people of 8 h', () => {
    const { figures } = crewOf();
    const phases = PHASES.map((phase) => [
      num(figures.phases[phase]['labor-hours']),
      num(figures.phases[phase].days),
    ]);
    expect(phases).toEqual([
      [21, 1],
      [24, 1],
      [12, 1],
      [12, 1],
    ]);
    expect(num(figures.total['labor-hours'])).toBe(69);
    expect(num(figures.total['work-days'])).toBe(4);
  });

  test('days: exactly full is one day; a little more is two; a lone driver cannot do 9 h in 8', () => {
    const crew = { crewCount: 3, dayHr: 8 };
    expect(phaseDays({ ...crew, laborHr: 24, longestClockHr: 8 })).toBe(1);
    expect(phaseDays({ ...crew, laborHr: 24.1, longestClockHr: 8 })).toBe(2);
    expect(phaseDays({ ...crew, laborHr: 9, longestClockHr: 9 })).toBe(2);
    expect(phaseDays({ ...crew, laborHr: 0, longestClockHr: 0 })).toBe(0);
  });

  test('tear-out and base share a day when both fit in one', () => {
    const work = someWork();
    const little = crewOf({
      base: { slabs: { drive: { area: fig(50, 'sq ft') } } },
      forms: { slabs: { drive: { length: fig(14.5, 'ft') } } },
    });
    // 21 h + 1 h + 1 h of the 24 h of a day.
    expect(little.data.firstPhasesShareDay).toBe(true);
    expect(num(little.figures.total['work-days'])).toBe(3);
    expect(little.data.days.slice(0, 3).map(({ on, phase }) => [on, phase])).toEqual([
      ['2026-05-04', 'tear-out'],
      ['2026-05-04', 'base-and-forms'],
      ['2026-05-05', 'pour'],
    ]);
    const more = crewOf({ base: { slabs: { drive: { area: fig(150, 'sq ft') } } }, forms: work.forms });
    expect(more.data.firstPhasesShareDay).toBe(false);
  });

  test('a pour that does not fit is still one day, and its days say so', () => {
    const { figures, data } = crewOf({ supply: 'bags' });
    expect(num(figures.phases.pour.days)).toBe(2);
    expect(data.days.filter(({ kind, phase }) => kind === 'work' && phase === 'pour')).toHaveLength(1);
    expect(num(figures.total['work-days'])).toBe(4);
  });

  test('people a task asks for beyond the crew, and area for each finisher', () => {
    const { figures } = crewOf({ production: production({ place: row('place', '5 yd3 per h', 5) }) });
    expect(num(figures.total['people-short'])).toBe(2);
    expect(num(figures.total['area-per-finisher'])).toBe(360);
    // 250 of exposed aggregate for 400 of a broom finish: 360 x 1.6.
    const exposed = crewOf({ slabs: { drive: aSlab({ finish: 'exposed-aggregate' }) } });
    expect(num(exposed.figures.total['area-per-finisher'])).toBeCloseTo(576, 9);
    expect(num(crewOf().figures.total['people-short'])).toBe(0);
  });

  const steps = {
    porch: {
      id: 'porch',
      label: 'Porch' as PublicText,
      widthIn: 48,
      riserCount: 3,
      riserIn: 7,
      treadIn: 12,
      landingIn: 36,
      risen: tapedRisen({ id: 'porch', riserCount: 3, riserIn: 7 }),
    },
  };
  const soil = { drive: { volume: fig(107.3, 'cu ft') }, 'side-1': { volume: fig(31.1, 'cu ft') } };
  testExpressions('crew', crewOf().figures, 40);
  testExpressions('crew with bags', crewOf({ supply: 'bags' }).figures, 40);
  testExpressions(
    'crew with steps and soil',
    crewOf({
      steps,
      tearOut: { hollow: {}, posts: {}, 'old-steps': {}, soil, total: { 'saw-cut': fig(33.3, 'ft') } },
    }).figures,
    40,
  );
});
