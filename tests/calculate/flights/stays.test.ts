import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { calcFlights, isEven, type TreadWork, treadWork } from '../../../src/calculate/flights/index.ts';
import type { Flight } from '../../../src/calculate/job.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { runCount } from '../../support/property-runs.ts';
import { testExpressions } from '../evaluate.ts';

const typed = (left: number, middle: number, right: number) =>
  ({ kind: 'typed', changeIn: { left, middle, right } }) as const;

function aFlight(changed: Partial<Flight> = {}): Flight {
  return {
    id: 'porch',
    label: 'Porch steps' as PublicText,
    risersIn: [7, 7.25, 7],
    treadIn: 11,
    widthIn: 48,
    foot: typed(0, 0, 0),
    topping: null,
    ...changed,
  };
}

function calc(changed: Partial<Flight> = {}) {
  const flight = aFlight(changed);
  const { figures, data, problems } = calcFlights({
    flights: { porch: flight },
    steps: {},
    points: undefined,
    graded: {},
  });
  const porch = figures.stays['porch'];
  if (porch === undefined) throw new Error('no figures of the porch');
  return { porch, uneven: data.uneven, problems, flight };
}

const evenly = (riseIn: number) => typed(riseIn, riseIn, riseIn);

describe('the lowest step of a flight that stays', () => {
  test('exact: it loses what the surface rises and gains what it drops, by spot', () => {
    const { porch, uneven } = calc({ foot: typed(-0.5, 0, 0.25) });
    expect(Object.values(porch.risers).map(num)).toEqual([7.5, 7, 6.75]);
    expect(num(porch['difference-now'])).toBe(0.25);
    expect(num(porch.difference)).toBe(0.75);
    expect(num(porch.highest)).toBe(7.5);
    expect(uneven).toEqual(['porch']);
  });

  test('exact: how far the surface may move is what is left of 3/8 in, and of 7 3/4 in', () => {
    const { surface } = calc().porch;
    // The highest of the others is 7 1/4 in, the lowest 7 in.
    expect(surface === undefined ? null : num(surface['riser-least'])).toBe(6.875);
    expect(surface === undefined ? null : num(surface['riser-most'])).toBe(7.375);
    const high = calc({ risersIn: [7.5, 7.5, 7.625] }).porch.surface;
    expect(high === undefined ? null : num(high['riser-most'])).toBe(7.75);
    expect(high === undefined ? null : num(high['may-drop'])).toBe(0.25);
  });

  test('exact: one step has no others; it may be anything up to 7 3/4 in', () => {
    const { porch, uneven } = calc({ risersIn: [7], foot: evenly(-0.75) });
    expect(porch.surface === undefined ? null : num(porch.surface['riser-least'])).toBe(0);
    expect(porch.surface === undefined ? null : num(porch.surface['may-drop'])).toBe(0.75);
    expect(porch.kept.treads).toEqual({});
    expect(num(porch.kept.volume)).toBe(0);
    expect(uneven).toEqual([]);
    expect(calc({ risersIn: [7], foot: evenly(-0.8) }).uneven).toEqual(['porch']);
  });

  test('exact: a step that is wrong as it is has to be moved, and by how much is told', () => {
    const low = calc({ risersIn: [6, 7, 7], foot: evenly(0.125) }).porch.surface;
    expect(low === undefined ? null : [num(low['must-drop']), num(low['may-drop'])]).toEqual([0.625, 1.375]);
    expect(low === undefined ? null : Object.values(low.lower).map(num)).toEqual([0.75, 0.75, 0.75]);
    expect(low === undefined ? null : num(low['must-rise'])).toBe(0);
    const high = calc({ risersIn: [8, 7], foot: typed(0, 0.25, 0.625) }).porch.surface;
    expect(high === undefined ? null : [num(high['must-rise']), num(high['may-rise'])]).toEqual([
      0.625, 1.375,
    ]);
    expect(high === undefined ? null : Object.values(high.higher).map(num)).toEqual([0.625, 0.375, 0]);
  });

  test('no height helps where the others are uneven or too high by themselves', () => {
    expect(calc({ risersIn: [7, 6.5, 7] }).porch.surface).toBeUndefined();
    expect(calc({ risersIn: [7.75, 7.8] }).porch.surface).toBeUndefined();
    expect(calc({ risersIn: [7, 6.625, 7] }).porch.surface).toBeDefined();
  });

  test('a surface that would cover the lowest tread is a problem, at the spot', () => {
    const { problems } = calc({ foot: typed(6.9, 7, 7.5) });
    expect(problems).toEqual([
      {
        code: 'foot-above-tread',
        path: 'site.flights.porch.foot.middle',
        parts: { rise: '7″', riser: '7″' },
      },
      {
        code: 'foot-above-tread',
        path: 'site.flights.porch.foot.right',
        parts: { rise: '7 1/2″', riser: '7″' },
      },
    ]);
  });

  test('invariant: a surface moved as far as it may leaves an even flight, and a hair further does not', () => {
    fc.assert(
      fc.property(flights(), (risersIn) => {
        const { surface } = calc({ risersIn }).porch;
        if (surface === undefined) return;
        const [lowestIn = 0] = risersIn;
        const upIn = lowestIn - num(surface['riser-least']);
        const downIn = num(surface['riser-most']) - lowestIn;
        const unevenAt = (riseIn: number) => calc({ risersIn, foot: evenly(riseIn) }).uneven.length > 0;
        expect(unevenAt(upIn)).toBe(false);
        expect(unevenAt(-downIn)).toBe(false);
        expect(unevenAt(upIn + 0.001)).toBe(true);
        expect(unevenAt(-downIn - 0.001)).toBe(true);
      }),
      { numRuns: runCount(40), seed: 41 },
    );
  });
});

/** Two to five risers of sixteenths of an inch. */
function flights() {
  return fc
    .array(fc.integer({ min: 96, max: 124 }), { minLength: 2, maxLength: 5 })
    .map((sixteenths) => sixteenths.map((count) => count / 16));
}

describe('isEven', () => {
  test.each([
    { risersIn: [7.75], even: true },
    { risersIn: [7.8], even: false },
    { risersIn: [7, 7.375], even: true },
    { risersIn: [7, 7.376], even: false },
    { risersIn: [], even: true },
  ])('exact: $risersIn is $even', ({ risersIn, even }) => {
    expect(isEven(risersIn)).toBe(even);
  });
});

describe('the flight split into equal steps once more', () => {
  test('exact: with the landing as it is, and with 3/4 in laid on it', () => {
    const { porch } = calc({
      risersIn: [7, 7, 7],
      foot: evenly(0.75),
      topping: { thinnestIn: 0.5, thickestIn: 1.5, landingIn: 0.75 },
    });
    // 20 1/4 in are three steps of 6 3/4 in; the treads come up 1/2 and 1/4 in.
    expect(num(porch.kept.riser)).toBe(6.75);
    expect(Object.values(porch.kept.treads).map(({ add }) => num(add))).toEqual([0.5, 0.25]);
    // 3/4 in more of 11 by 48 in.
    expect(num(porch.kept.volume)).toBeCloseTo((0.75 * 11 * 48) / 1728, 12);
    // As much on the landing as below: the flight is what it was.
    expect(porch.raised === undefined ? null : num(porch.raised.riser)).toBe(7);
    const raised = Object.values(porch.raised?.treads ?? {});
    expect(raised.map(({ add }) => num(add))).toEqual([0.75, 0.75]);
  });

  test('without something to lay on the landing there is one split', () => {
    expect(calc().porch.raised).toBeUndefined();
    const topping = { thinnestIn: 0.5, thickestIn: 1.5, landingIn: 0 };
    expect(calc({ topping }).porch.raised).toBeUndefined();
  });

  test('invariant: each old riser with what its ends move is the new one', () => {
    fc.assert(
      fc.property(
        flights(),
        fc.integer({ min: -16, max: 16 }),
        fc.integer({ min: 1, max: 24 }),
        (risersIn, footSixteenths, landingSixteenths) => {
          const [footIn, landingIn] = [footSixteenths / 16, landingSixteenths / 16];
          const topping = { thinnestIn: 0.5, thickestIn: 1.5, landingIn };
          const { porch } = calc({ risersIn, foot: evenly(footIn), topping });
          for (const { split, topIn } of [
            { split: porch.kept, topIn: 0 },
            { split: porch.raised, topIn: landingIn },
          ]) {
            if (split === undefined) throw new Error('no split with the landing raised');
            const moved = Object.values(split.treads).map((tread) => num(tread.add) - num(tread['take-off']));
            const ends = [footIn, ...moved, topIn];
            for (const [index, riserIn] of risersIn.entries()) {
              const riser = riserIn + (ends[index + 1] ?? Number.NaN) - (ends[index] ?? Number.NaN);
              expect(riser).toBeCloseTo(num(split.riser), 9);
            }
          }
        },
      ),
      { numRuns: runCount(40), seed: 42 },
    );
  });

  const topping = { thinnestIn: 0.5, thickestIn: 1.5, landingIn: 0 };
  // Of two risers the tread comes up by half of what the upper one has more than the lower.
  test.each<{ moreIn: number; laid: Flight['topping']; work: TreadWork }>([
    { moreIn: 0.12, laid: topping, work: 'as-it-is' },
    { moreIn: -0.12, laid: null, work: 'as-it-is' },
    { moreIn: -0.125, laid: topping, work: 'take-off' },
    { moreIn: 0.125, laid: null, work: 'not-said' },
    { moreIn: 0.98, laid: topping, work: 'too-thin' },
    { moreIn: 1, laid: topping, work: 'lay' },
    { moreIn: 3, laid: topping, work: 'lay' },
    { moreIn: 3.02, laid: topping, work: 'too-thick' },
  ])('exact: an upper riser $moreIn in higher is "$work"', ({ moreIn, laid, work }) => {
    const tread = calc({ risersIn: [7, 7 + moreIn], topping: laid }).porch.kept.treads['tread-1'];
    expect(tread === undefined ? null : treadWork(tread)).toBe(work);
  });

  test('exact: what lacks to the thinnest and what is over the thickest', () => {
    const treadOf = (moreIn: number) =>
      calc({ risersIn: [7, 7 + moreIn], topping }).porch.kept.treads['tread-1'];
    expect(treadOf(0.5)?.['too-thin-by']?.value).toBe(0.25);
    expect(treadOf(0.5)?.['too-thick-by']?.value).toBe(0);
    expect(treadOf(4)?.['too-thick-by']?.value).toBe(0.5);
    expect(treadOf(0.1)?.['too-thin-by']).toBeUndefined();
  });
});

const { figures } = calcFlights({
  steps: {},
  graded: {},
  points: undefined,
  flights: {
    porch: aFlight({
      foot: typed(0.5, 1, -0.5),
      topping: { thinnestIn: 0.5, thickestIn: 1, landingIn: 0.5 },
    }),
    stoop: aFlight({ id: 'stoop', risersIn: [7.1], foot: evenly(0.3) }),
  },
});
testExpressions('flights that stay', figures, 50);
