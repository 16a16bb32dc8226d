import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Figure, given, num } from '../../../src/calculate/figure.ts';
import { calcFlights, equalRisers, formedRiserIn, strideIn } from '../../../src/calculate/flights/index.ts';
import type { Steps } from '../../../src/calculate/job.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { runCount } from '../../support/property-runs.ts';
import { fig } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';

function someSteps(changed: Partial<Steps> = {}): Steps {
  return {
    id: 'porch',
    label: 'Porch steps' as PublicText,
    widthIn: 48,
    rise: { kind: 'taped', riserCount: 3, riserIn: 7 },
    treadIn: 11,
    landingIn: 36,
    treadSlope: 0,
    roomIn: null,
    ...changed,
  };
}

function calc(changed: Partial<Steps> = {}, heightsIn: Readonly<Record<string, number>> = {}) {
  const points = Object.fromEntries(
    Object.entries(heightsIn).map(([id, heightIn]) => [id, { height: fig(heightIn, 'in') }]),
  );
  const { figures, data, problems } = calcFlights({
    flights: {},
    steps: { porch: someSteps(changed) },
    graded: {},
    points,
  });
  const [porch, built] = [figures.steps['porch'], data.steps['porch']];
  if (porch === undefined || built === undefined) throw new Error('no figures of the porch');
  return { porch, built, problems };
}

const BETWEEN = { kind: 'heights', from: 'walk', to: 'door', riserCount: null } as const;
const topsOf = (tops: Readonly<Record<string, { readonly front: Figure; readonly back?: Figure }>>) =>
  Object.entries(tops).map(([key, { front, back }]) => [
    key,
    num(front),
    back === undefined ? null : num(back),
  ]);

describe('steps to build', () => {
  test('what the job says of the risers is taken, as the values of its files', () => {
    const { porch, built } = calc();
    expect([num(porch.rise), num(porch.risers), num(porch.riser)]).toEqual([21, 3, 7]);
    expect(built).toMatchObject({ riserCount: 3, riserIn: 7, landingIn: 36 });
    expect(built.risen).toEqual({
      risers: given('build.steps.porch.risers', 3, 'each'),
      riser: given('build.steps.porch.riser', 7, 'in'),
    });
  });

  test('exact: between two heights there are as few equal risers as 7 3/4 in allow', () => {
    const { porch, built } = calc({ rise: BETWEEN }, { walk: -3, door: 28 });
    expect([num(porch.rise), num(porch.risers), num(porch.riser)]).toEqual([31, 4, 7.75]);
    expect(built).toMatchObject({ riserCount: 4, riserIn: 7.75, risen: { riser: porch.riser } });
    expect(num(calc({ rise: BETWEEN }, { walk: 0, door: 31.01 }).porch.risers)).toBe(5);
  });

  test('the job may want more or fewer of them', () => {
    const { porch } = calc({ rise: { ...BETWEEN, riserCount: 5 } }, { walk: 0, door: 31 });
    expect([num(porch.risers), num(porch.riser)]).toEqual([5, 6.2]);
  });

  test.each([
    { doorIn: 10, by: '0″' },
    { doorIn: 7.5, by: '2 1/2″' },
  ])('an end that lies no higher than the foot is a problem: $doorIn in', ({ doorIn, by }) => {
    expect(calc({ rise: BETWEEN }, { walk: 10, door: doorIn }).problems).toEqual([
      { code: 'steps-do-not-rise', path: 'build.steps.porch.to', parts: { from: 'walk', to: 'door', by } },
    ]);
  });

  test('exact: tops of the forms, level and pitched', () => {
    expect(topsOf(calc().porch.tops)).toEqual([
      ['tread-1', 7, 7],
      ['tread-2', 14, 14],
      ['landing', 21, null],
    ]);
    // 21 3/4 in with two treads of 12 in that rise 1/4 in each: forms of 7 1/12 in.
    const { porch } = calc({
      rise: { kind: 'taped', riserCount: 3, riserIn: 7.25 },
      treadIn: 12,
      treadSlope: 1 / 48,
      landingIn: 0,
    });
    expect(num(porch['form-riser'])).toBeCloseTo(85 / 12, 12);
    expect(topsOf(porch.tops)).toEqual([
      ['tread-1', expect.closeTo(85 / 12, 10), expect.closeTo(88 / 12, 10)],
      ['tread-2', expect.closeTo(173 / 12, 10), expect.closeTo(176 / 12, 10)],
      ['top', expect.closeTo(21.75, 10), null],
    ]);
    expect(num(porch.difference)).toBe(0.25);
    expect(num(porch.highest)).toBeCloseTo(88 / 12, 12);
    expect(porch.landing).toBeUndefined();
  });

  test('one riser has no tread that pitches', () => {
    const { porch } = calc({ rise: { kind: 'taped', riserCount: 1, riserIn: 7 }, treadSlope: 1 / 48 });
    expect([num(porch.difference), num(porch.highest), num(porch.run)]).toEqual([0, 7, 36]);
    expect(topsOf(porch.tops)).toEqual([['landing', 7, null]]);
  });

  test('treads that would rise as high as the flight are a problem', () => {
    const steep = { treadSlope: 1, treadIn: 10.5 };
    expect(calc(steep).problems).toEqual([
      {
        code: 'treads-rise-too-much',
        path: 'build.steps.porch.tread-fall',
        parts: { treads: '21″', rise: '21″' },
      },
    ]);
    expect(calc({ ...steep, treadIn: 10.4 }).problems).toEqual([]);
  });

  test('a run longer than the room for it is a problem; one that fits leaves the rest', () => {
    // Two treads of 11 in and a landing of 36 in.
    const { porch, problems } = calc({ roomIn: 58 });
    expect(problems).toEqual([]);
    expect(num(porch.run)).toBe(58);
    expect(porch['room-left'] === undefined ? null : num(porch['room-left'])).toBe(0);
    const left = calc({ roomIn: 60 }).porch['room-left'];
    expect(left === undefined ? null : num(left)).toBe(2);
    expect(calc({ roomIn: 57.5 }).problems).toEqual([
      {
        code: 'steps-without-room',
        path: 'build.steps.porch.room',
        parts: { run: '4′ 10″', room: '4′ 9 1/2″' },
      },
    ]);
  });

  test('one riser without a landing is a problem, for nothing of it is poured', () => {
    const one = { rise: { kind: 'taped', riserCount: 1, riserIn: 7 } } as const;
    expect(calc({ ...one, landingIn: 0 }).problems).toEqual([
      { code: 'steps-of-nothing', path: 'build.steps.porch.landing', parts: {} },
    ]);
    expect(calc(one).problems).toEqual([]);
    expect(calc({ landingIn: 0 }).problems).toEqual([]);
  });

  test('invariant: the forms and the treads make up the rise, and risers are never above the limit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 1600 }),
        fc.integer({ min: 0, max: 8 }),
        (sixteenths, fallSixteenths) => {
          const totalIn = sixteenths / 16;
          const { count, riserIn } = equalRisers({ totalIn, mostIn: 7.75 });
          expect(riserIn).toBeLessThanOrEqual(7.75 + 1e-9);
          if (count > 1) expect(totalIn / (count - 1)).toBeGreaterThan(7.75);
          const treadRiseIn = fallSixteenths / 160;
          const formIn = formedRiserIn({ totalIn, count, treadRiseIn });
          expect(count * formIn + (count - 1) * treadRiseIn).toBeCloseTo(totalIn, 9);
        },
      ),
      { numRuns: runCount(60), seed: 43 },
    );
  });

  test('refused: what is outside its range', () => {
    expect(() => equalRisers({ totalIn: 0, mostIn: 7.75 })).toThrow(RangeError);
    expect(() => equalRisers({ totalIn: 7, mostIn: Number.NaN })).toThrow(RangeError);
    expect(() => formedRiserIn({ totalIn: 7, count: 1.5, treadRiseIn: 0 })).toThrow(RangeError);
    expect(() => formedRiserIn({ totalIn: 7, count: 2, treadRiseIn: 7 })).toThrow(RangeError);
    expect(() => formedRiserIn({ totalIn: 7, count: 2, treadRiseIn: -0.1 })).toThrow(RangeError);
    expect(() => strideIn({ riserIn: 7, treadIn: Infinity })).toThrow(RangeError);
  });
});

testExpressions('steps as said', { porch: calc({ treadSlope: 1 / 96, roomIn: 70 }).porch }, 15);
testExpressions(
  'steps between heights',
  { porch: calc({ rise: BETWEEN, treadSlope: 1 / 90 }, { walk: 3.1, door: 40.3 }).porch },
  15,
);
