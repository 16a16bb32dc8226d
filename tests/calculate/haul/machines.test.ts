import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { HaulInput } from '../../../src/calculate/haul/index.ts';
import type { Machine } from '../../../src/calculate/job.ts';
import type { CrewText } from '../../../src/calculate/text.ts';
import { haul, LONG_BOX, rate, SHORT_BOX } from './a-haul.ts';
import { wrongFormulas } from './reevaluate.ts';

/*
 * A yard 6 miles and 0.25 h away, 0.2 h to tie a machine down or take it off: a leg of 0.65 h. Three
 * trips of 1.65 h from when the machine is there.
 */
const YARD = { distanceMi: 6, driveHr: 0.25, tieDownHr: 0.2 };

function aMachine(id: string, weightLb: number, lengthIn = 110): Machine {
  return {
    id,
    label: id as CrewText,
    kind: 'loader-with-breaker',
    cost: rate('48', 'h'),
    cab: 'open',
    wet: true,
    liftsLb: null,
    plate: { widthIn: null, travelFtPerHr: null, liftIn: null, passesEachWay: null },
    tiedDown: { weightLb, lengthIn },
  };
}

const runs = (machine: string) => ({ machine }) as HaulInput['production']['dig'];

function withMachine(machine: Machine, made: Parameters<typeof haul>[0] = {}, later: string | null = null) {
  const production = {
    'break-out': runs(machine.id),
    ...(later === null ? {} : { backfill: runs(later) }),
  } as HaulInput['production'];
  return haul({ yard: YARD, machines: { [machine.id]: machine }, production, ...made });
}

describe('a machine that rides on a trailer of the job', () => {
  const result = withMachine(aMachine('loader', 6000));

  test('exact: it comes before anything is loaded, and goes once the last load is away', () => {
    const [first] = result.data.trips;
    const last = result.data.trips.at(-1);
    expect(first?.startsHr).toBeCloseTo(7 + 0.65, 9);
    expect(last?.backHr).toBeCloseTo(7.65 + 3 * 1.65, 9);
    expect(result.data.legs).toEqual([
      {
        machine: 'loader',
        trailer: 'long-box',
        way: 'to-job',
        times: { on: '2026-05-04', leavesHr: 7.2, arrivesHr: 7.45 },
      },
      {
        machine: 'loader',
        trailer: 'long-box',
        way: 'to-yard',
        times: { on: '2026-05-04', leavesHr: expect.closeTo(12.8, 9), arrivesHr: expect.closeTo(13.05, 9) },
      },
    ]);
  });

  test('exact: both legs are driven time and miles of the haul', () => {
    const without = haul();
    const { loader } = result.figures.machines ?? {};
    expect(loader && [num(loader.hours), num(loader.miles)]).toEqual([expect.closeTo(1.3, 9), 12]);
    expect(num(result.figures.total.hours)).toBeCloseTo(num(without.figures.total.hours) + 1.3, 9);
    expect(num(result.figures.total.cost)).toBeCloseTo(num(without.figures.total.cost) + 1.3 * 30 + 12, 9);
    expect(wrongFormulas(result.figures)).toEqual([]);
  });

  test('where the day is too short it goes the next one', () => {
    const short = withMachine(aMachine('loader', 6000), {
      day: { firstOn: '2026-05-08', startsHr: 7, lengthHr: 6 },
    });
    expect(short.data.legs.at(-1)?.times).toMatchObject({ on: '2026-05-11', leavesHr: 7.2 });
  });

  test('where it works on after the hauling it is fetched once that is done', () => {
    expect(withMachine(aMachine('loader', 6000), {}, 'loader').data.legs.at(-1)).toMatchObject({
      way: 'to-yard',
      times: null,
    });
  });

  test('it rides on the trailer that hauls first, or the one that carries it', () => {
    const both = { trailers: [SHORT_BOX, LONG_BOX] };
    expect(withMachine(aMachine('loader', 6000), both).data.legs[0]?.trailer).toBe('long-box');
    // 10 ft 1 in does not go into the box of the short one, 7,300 lb is all that it carries.
    const small = withMachine(aMachine('loader', 7301), both);
    expect(small.data.legs[0]?.trailer).toBe('long-box');
  });

  test.each([
    ['heavier than any payload', aMachine('loader', 9801)],
    ['longer than any box', aMachine('loader', 6000, 169)],
  ])('%s: a problem with the numbers', (_, machine) => {
    const { problems } = withMachine(machine);
    expect(problems.map(({ code, path }) => [code, path])).toEqual([
      ['machine-on-no-trailer', 'company.machines.loader.tied-down.weight'],
    ]);
    expect(problems[0]?.parts).toMatchObject({ trailers: 'Long box 9800 lb, 14 ft' });
  });

  test('exactly the payload and the length of the box go', () => {
    expect(withMachine(aMachine('loader', 9800, 168)).problems).toEqual([]);
  });

  test('without a yard, or without a weight to tie down, nothing rides', () => {
    expect(withMachine(aMachine('loader', 6000), { yard: null }).data.legs).toEqual([]);
    expect(withMachine({ ...aMachine('loader', 6000), tiedDown: null }).data.legs).toEqual([]);
  });

  test('exact: of two the truck fetches one after the other', () => {
    const machines = { loader: aMachine('loader', 6000), forks: aMachine('forks', 5000) };
    const production = {
      'break-out': runs('loader'),
      'saw-and-lift': runs('forks'),
    } as HaulInput['production'];
    const { data, figures } = haul({
      yard: YARD,
      machines,
      production,
      brokenBy: ['breaker', 'saw-and-lift'],
    });
    expect(data.trips[0]?.startsHr).toBeCloseTo(7 + 0.65 + 0.25 + 0.65, 9);
    expect(num(figures.machines?.['forks']?.hours ?? figures.total.hours)).toBeCloseTo(1.3 + 0.5, 9);
    expect(wrongFormulas(figures)).toEqual([]);
  });
});
