import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spread, workdayOnOrAfter } from '../../../src/calculate/crew/calendar.ts';
import { phaseDays } from '../../../src/calculate/crew/phases.ts';
import { weekdayOf } from '../../../src/units/index.ts';
import { propertyRuns } from '../slabs.ts';
import { crewOf } from './a-plan.ts';

const dates = (result: ReturnType<typeof crewOf>, kind: 'work' | 'cure') =>
  result.data.days.filter((day) => day.kind === kind).map(({ on, phase }) => `${on} ${phase}`);

describe('calendar', () => {
  test('from a Monday: four work days, forms off the day after the pour', () => {
    const result = crewOf();
    expect(dates(result, 'work')).toEqual([
      '2026-05-04 tear-out',
      '2026-05-05 base-and-forms',
      '2026-05-06 pour',
      '2026-05-07 strip-and-clean',
    ]);
    expect(result.data.openings).toEqual({ walkOn: '2026-05-08', driveOn: '2026-05-13' });
    expect(result.problems).toEqual([]);
  });

  test('a pour on a Friday: forms off on Monday, curing through the weekend', () => {
    const result = crewOf({ plan: { poursOn: null, startsOn: '2026-05-06', crew: ['ana', 'ben', 'cal'] } });
    expect(dates(result, 'work').slice(2)).toEqual(['2026-05-08 pour', '2026-05-11 strip-and-clean']);
    expect(dates(result, 'cure').map((line) => line.slice(0, 10))).toEqual([
      '2026-05-09',
      '2026-05-10',
      '2026-05-11',
      '2026-05-12',
      '2026-05-13',
      '2026-05-14',
    ]);
    expect(result.data.openings).toEqual({ walkOn: '2026-05-10', driveOn: '2026-05-15' });
  });

  test('a start on a Saturday is a problem, and the days begin on the Monday', () => {
    const result = crewOf({ plan: { poursOn: null, startsOn: '2026-05-09', crew: ['ana', 'ben', 'cal'] } });
    expect(result.problems).toEqual([
      { code: 'starts-on-weekend', path: 'plan.starts-on', parts: { on: '2026-05-09', weekday: 'saturday' } },
    ]);
    expect(dates(result, 'work')[0]).toBe('2026-05-11 tear-out');
    expect(workdayOnOrAfter('2026-05-10')).toBe('2026-05-11');
  });

  test('a pour on a day that was chosen: what follows it moves along, what comes before does not', () => {
    const plan = { startsOn: '2026-05-04', poursOn: '2026-05-09', crew: ['ana', 'ben', 'cal'] };
    const result = crewOf({ plan });
    expect(dates(result, 'work')).toEqual([
      '2026-05-04 tear-out',
      '2026-05-05 base-and-forms',
      '2026-05-09 pour',
      '2026-05-11 strip-and-clean',
    ]);
    expect(result.data.openings).toEqual({ walkOn: '2026-05-11', driveOn: '2026-05-16' });
    expect(result.problems).toEqual([]);
    const early = (poursOn: string) => crewOf({ plan: { ...plan, poursOn } });
    expect(early('2026-05-06').figures.total['pour-early']?.value).toBe(0);
    expect(early('2026-05-04').figures.total['pour-early']?.value).toBe(2);
    expect(dates(early('2026-05-04'), 'work')).toContain('2026-05-06 pour');
    expect(crewOf().figures.total['pour-early']).toBeUndefined();
  });

  test('one person: the tear-out of 21 h runs over three days in the order of the work', () => {
    const result = crewOf({ plan: { poursOn: null, startsOn: '2026-05-07', crew: ['ana'] } });
    const tearOut = result.data.days.filter(({ phase }) => phase === 'tear-out');
    expect(tearOut.map(({ on }) => on)).toEqual(['2026-05-07', '2026-05-08', '2026-05-11']);
    expect(tearOut[0]?.tasks.map(({ task }) => task)).toEqual(['set-up', 'saw-cut', 'break-out', 'haul']);
    expect(tearOut[2]?.tasks.map(({ task }) => task)).toEqual(['break-out', 'haul']);
  });

  test('property: parts add up to the task, and no task is longer than the day', () => {
    const hours = fc.double({ min: 0.1, max: 30, noNaN: true });
    const some = fc.array(
      fc.record({ laborHr: hours, people: fc.integer({ min: 1, max: 4 }), isHaul: fc.boolean() }),
      {
        minLength: 1,
        maxLength: 5,
      },
    );
    fc.assert(
      fc.property(some, fc.integer({ min: 1, max: 5 }), (drawn, crewCount) => {
        const names = ['set-up', 'saw-cut', 'break-out', 'dig', 'base'] as const;
        const tasks = drawn.map(({ laborHr, people, isHaul }, index) => {
          const paced = { task: names[index] ?? 'dig', laborHr, clockHr: laborHr / people };
          return isHaul && index === 0 ? { task: 'haul' as const, laborHr, clockHr: laborHr } : paced;
        });
        const laborHr = tasks.reduce((sumHr, task) => sumHr + task.laborHr, 0);
        const longestClockHr = Math.max(...tasks.map(({ clockHr }) => clockHr));
        const dayCount = phaseDays({ laborHr, longestClockHr, crewCount, dayHr: 8 });
        const days = spread(tasks, { dayCount, crewCount, dayHr: 8 });
        expect(days).toHaveLength(dayCount);
        for (const task of tasks) {
          const parts = days.flatMap((day) => day.filter((part) => part.task === task.task));
          expect(parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
          expect(parts.reduce((sum, part) => sum + part.laborHr, 0)).toBeCloseTo(task.laborHr, 8);
          for (const { clockHr } of parts) expect(clockHr).toBeLessThanOrEqual(8 + 1e-6);
        }
        for (const day of days) {
          const dayLaborHr = day.reduce((sum, part) => sum + part.laborHr, 0);
          expect(dayLaborHr).toBeLessThanOrEqual(crewCount * 8 + 1e-6);
        }
      }),
      propertyRuns,
    );
  });

  test('property: work is on Monday to Friday and never goes back in time', () => {
    const starts = fc.integer({ min: 0, max: 364 });
    fc.assert(
      fc.property(starts, fc.integer({ min: 1, max: 6 }), (dayOfYear, crewCount) => {
        const startsOn = new Date(Date.UTC(2026, 0, 1 + dayOfYear)).toISOString().slice(0, 10);
        const crew = Array.from({ length: crewCount }, (_, index) => `person-${index}`);
        const { data } = crewOf({ plan: { poursOn: null, startsOn, crew } });
        const work = data.days.filter(({ kind }) => kind === 'work').map(({ on }) => on);
        expect(work.every((on) => weekdayOf(on) <= 5)).toBe(true);
        expect(work).toEqual(work.toSorted());
      }),
      propertyRuns,
    );
  });
});
