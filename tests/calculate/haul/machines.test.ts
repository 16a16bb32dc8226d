import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { HaulInput } from '../../../src/calculate/haul/index.ts';
import { fewestRides, type Riding, trailersFor } from '../../../src/calculate/haul/rides.ts';
import { trailerFigures } from '../../../src/calculate/haul/trailer-figures.ts';
import type { Machine } from '../../../src/calculate/job.ts';
import type { CrewText } from '../../../src/calculate/text.ts';
import { runCount } from '../../support/property-runs.ts';
import { aSlab, aTruck, haul, LONG_BOX, rate, SHORT_BOX } from './a-haul.ts';
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
        machines: ['loader'],
        trailer: 'long-box',
        way: 'to-job',
        times: { on: '2026-05-04', leavesHr: 7.2, arrivesHr: 7.45 },
      },
      {
        machines: ['loader'],
        trailer: 'long-box',
        way: 'to-yard',
        times: { on: '2026-05-04', leavesHr: expect.closeTo(12.8, 9), arrivesHr: expect.closeTo(13.05, 9) },
      },
    ]);
  });

  test('exact: both legs are driven time and miles of the haul', () => {
    const without = haul();
    const legs = Object.entries(result.figures.rides ?? {});
    expect(legs.map(([id, { hours, miles }]) => [id, num(hours), num(miles)])).toEqual([
      ['to-job-1', expect.closeTo(0.65, 9), 6],
      ['to-yard-1', expect.closeTo(0.65, 9), 6],
    ]);
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
      way: 'to-yard-last',
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

  /** Two that break out, of 110 in each: on the long box of 168 in one after the other. */
  function withTwo(lengths: readonly [number, number], weights: readonly [number, number] = [6000, 3000]) {
    const machines = {
      loader: aMachine('loader', weights[0], lengths[0]),
      forks: aMachine('forks', weights[1], lengths[1]),
    };
    const production = {
      'break-out': runs('loader'),
      'saw-and-lift': runs('forks'),
    } as HaulInput['production'];
    return haul({ yard: YARD, machines, production, brokenBy: ['breaker', 'saw-and-lift'] });
  }

  test('exact: of two that do not fit together the truck fetches one after the other', () => {
    const { data, figures } = withTwo([110, 110]);
    expect(data.legs.map(({ machines, way }) => [way, ...machines])).toEqual([
      ['to-job', 'loader'],
      ['to-job', 'forks'],
      ['to-yard', 'loader'],
      ['to-yard', 'forks'],
    ]);
    expect(data.trips[0]?.startsHr).toBeCloseTo(7 + 0.65 + 0.25 + 0.65, 9);
    // Back empty, then tied down.
    expect(data.legs[1]?.times?.leavesHr).toBeCloseTo(7 + 0.65 + 0.25 + 0.2, 9);
    expect(num(figures.rides?.['to-job-2']?.hours ?? figures.total.hours)).toBeCloseTo(0.65 + 0.25, 9);
    expect(num(figures.rides?.['to-job-2']?.miles ?? figures.total.miles)).toBe(12);
    expect(wrongFormulas(figures)).toEqual([]);
  });

  test('exact: two that fit one behind the other ride once', () => {
    const { data, figures } = withTwo([110, 58]);
    expect(data.legs.map(({ machines, way, times }) => [way, machines, times?.leavesHr])).toEqual([
      // Both are tied down before it leaves.
      ['to-job', ['loader', 'forks'], expect.closeTo(7.4, 9)],
      ['to-yard', ['loader', 'forks'], expect.any(Number)],
    ]);
    expect(data.trips[0]?.startsHr).toBeCloseTo(7 + 4 * 0.2 + 0.25, 9);
    expect(num(figures.rides?.['to-job-1']?.hours ?? figures.total.hours)).toBeCloseTo(1.05, 9);
    // 9,000 of 9,800 lb.
    expect(num(figures.rides?.['to-job-1']?.fullness ?? figures.total.hours)).toBeCloseTo(9000 / 9800, 9);
    expect(wrongFormulas(figures)).toEqual([]);
  });

  test.each([
    ['an inch too long', withTwo([110, 59])],
    ['a pound too heavy', withTwo([110, 58], [6000, 3801])],
  ])('%s together: two rides', (_, { data }) => {
    expect(data.legs.filter(({ way }) => way === 'to-job')).toHaveLength(2);
  });

  test('the compactor rides with the loader, and stays when that goes', () => {
    const machines = { loader: aMachine('loader', 6000), plate: aMachine('plate', 400, 50) };
    const production = { 'break-out': runs('loader'), base: runs('plate') } as HaulInput['production'];
    const slabs = [aSlab({ baseIn: 4 })];
    const legs = haul({ yard: YARD, machines, production, slabs }).data.legs;
    expect(legs.map(({ machines: ids, way }) => [way, ...ids])).toEqual([
      ['to-job', 'loader', 'plate'],
      ['to-yard', 'loader'],
      ['to-yard-last', 'plate'],
    ]);
    // Without base it stays in the yard.
    expect(haul({ yard: YARD, machines, production }).data.legs[0]?.machines).toEqual(['loader']);
  });
});

const seed = Number(process.env['PROPERTY_SEED'] ?? Date.now() % 2 ** 31);
console.log(`rides: properties run with PROPERTY_SEED=${seed}`);

describe('invariant: the fewest rides', () => {
  const trailers = [SHORT_BOX, LONG_BOX].map((trailer) => ({
    trailer,
    figures: trailerFigures(trailer, aTruck(), 0).figures,
  }));
  const some = fc.array(
    fc.record({ weightLb: fc.integer({ min: 100, max: 7000 }), lengthIn: fc.integer({ min: 20, max: 120 }) }),
    { minLength: 1, maxLength: 5 },
  );
  const ridersOf = (sizes: readonly { readonly weightLb: number; readonly lengthIn: number }[]) =>
    sizes.map(({ weightLb, lengthIn }, index) => aMachine(`m${index}`, weightLb, lengthIn) as Riding);

  test('each machine rides once, what rides together fits, and no way of parting them takes fewer', () => {
    fc.assert(
      fc.property(some, (sizes) => {
        const riding = ridersOf(sizes);
        const rides = fewestRides(riding, trailers);
        expect(rides.flat().toSorted(byName)).toEqual(riding);
        for (const ride of rides)
          expect(trailersFor(ride, trailers), ride.map(nameOf).join()).not.toEqual([]);
        const fits = (parts: readonly (readonly Riding[])[]) =>
          parts.every((part) => trailersFor(part, trailers).length > 0);
        const least = Math.min(
          ...partsOf(riding)
            .filter(fits)
            .map((parts) => parts.length),
        );
        expect(rides).toHaveLength(least);
      }),
      { seed, numRuns: runCount(100) },
    );
  });
});

const nameOf = ({ id }: Machine) => id;
const byName = (one: Machine, other: Machine) => (one.id < other.id ? -1 : 1);

/** Every way of parting some things into groups. */
function partsOf<T>(things: readonly T[]): readonly (readonly (readonly T[])[])[] {
  const [first, ...others] = things;
  if (first === undefined) return [[]];
  return partsOf(others).flatMap((parts) => [
    [[first], ...parts],
    ...parts.map((part, index) => parts.with(index, [first, ...part])),
  ]);
}
