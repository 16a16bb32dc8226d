import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { loaderSets } from '../../../src/calculate/haul/index.ts';
import { haulWhy } from '../../../src/calculate/haul/why.ts';
import { aPlace, aTruck, haul, LONG_BOX } from './a-haul.ts';

/*
 * 25,000 lb of slab are three loads of a long box. Worked by hand: 0.4 h of loading, 1.25 h away; $40 a
 * load, $30 an hour, $1 a mile, 20 miles.
 */
const TWINS = [LONG_BOX, { ...LONG_BOX, id: 'twin-box' }];

function workingOf(result: ReturnType<typeof haul>) {
  const { working } = result.figures;
  if (working === undefined) throw new Error('nothing is hauled');
  return working;
}

describe('one truck that swaps two trailers', () => {
  const swapped = haul({ trailers: TWINS, swapHr: 0.1 });

  test('exact: waits for the first load, and spares 0.3 h of each other one', () => {
    expect(swapped.data.loads.map(({ trailer }) => trailer)).toEqual(['long-box', 'twin-box', 'long-box']);
    const { spared, waits, hours } = workingOf(swapped).swapped ?? {};
    expect([spared, waits, hours].map((figure) => figure && num(figure))).toEqual([
      expect.closeTo(0.3, 9),
      1,
      expect.closeTo(0.3, 9),
    ]);
    expect(num(swapped.figures.total.hours)).toBeCloseTo(3 * 1.65 - 2 * 0.3, 9);
    expect(num(swapped.figures.total.cost)).toBeCloseTo(3 * 40 + 60 + 30 * 4.35, 9);
  });

  test('the truck is slower: 1.25 h away and 0.1 h for the swap against 0.4 h of loading', () => {
    expect(num(workingOf(swapped)['truck-cycle'])).toBeCloseTo(1.35, 9);
    expect(loaderSets(workingOf(swapped))).toBe(false);
  });

  test('the cost of the figures is that of the plan, and the last trip is back when they say', () => {
    const { planned, trips } = swapped.data;
    expect(planned?.plan.costUsd).toBeCloseTo(num(swapped.figures.total.cost), 2);
    expect(trips.at(-1)?.backHr).toBeCloseTo(7 + num(swapped.figures.total.hours), 9);
  });

  test('a loader that is slower sets the day: what is spared is the time away, less the swap', () => {
    const slow = haul({ trailers: TWINS, swapHr: 0.1, loadingHr: 2, day: aLongDay });
    expect(loaderSets(workingOf(slow))).toBe(true);
    expect(num(slow.figures.total.hours)).toBeCloseTo(3 * 3.25 - 2 * 1.15, 9);
    expect(slow.data.trips.at(-1)?.leavesHr).toBeCloseTo(7 + 2 + 2 * 2.1, 9);
  });

  test('with one trailer, or where swapping takes as long as loading, the truck waits for every load', () => {
    for (const result of [haul({ swapHr: 0.1 }), haul({ trailers: TWINS, swapHr: 0.4 })]) {
      expect(workingOf(result).swapped).toBeUndefined();
      expect(num(result.figures.total.hours)).toBeCloseTo(3 * 1.65, 9);
    }
  });

  test('what one trailer alone would cost is told', () => {
    if (swapped.data.planned === null) throw new Error('nothing is planned');
    const { only } = haulWhy(swapped.data.planned, {
      trailers: Object.fromEntries(TWINS.map((trailer) => [trailer.id, trailer])),
      towVehicle: aTruck(),
      loadReserveLb: 0,
    });
    expect(num(only['long-box']?.cost ?? fail())).toBeCloseTo(3 * 40 + 60 + 30 * 4.95, 9);
  });
});

const aLongDay = { firstOn: '2026-05-04', startsHr: 7, lengthHr: 14 };

function fail(): never {
  throw new Error('there is no such plan');
}

describe('two trucks and one loader', () => {
  test('exact: each trip takes its cycle, and the clock half of their hours', () => {
    const result = haul({ trailers: TWINS, driverCount: 2 });
    expect(num(result.figures.total.hours)).toBeCloseTo(3 * 1.65, 9);
    expect(num(workingOf(result).trucks)).toBe(2);
    expect(num(workingOf(result)['truck-cycle'])).toBeCloseTo(1.65 / 2, 9);
  });

  // The loader fills one in 2 h, so that each truck has one in 4 h; alone it would take 3.25 h.
  test('exact: where the loader is slower each truck waits its turn', () => {
    const result = haul({ trailers: TWINS, driverCount: 2, loadingHr: 2 });
    expect(loaderSets(workingOf(result))).toBe(true);
    expect(num(result.figures.total.hours)).toBeCloseTo(3 * 4, 9);
    expect(result.data.planned?.plan.costUsd).toBeCloseTo(num(result.figures.total.cost), 2);
  });

  test('no more trucks than trailers', () => {
    expect(num(workingOf(haul({ driverCount: 2 })).trucks)).toBe(1);
  });
});

// Published (from memory): 0.054 h to load and 0.5 h away keep a loader busy with 10.3 units, so 11; a
// worked example of texts on construction methods, arithmetic checked.
test('published: the loader sets the pace of 11 units, and 10 set the pace of the loader', () => {
  const boxes = Array.from({ length: 11 }, (_, index) => ({ ...LONG_BOX, id: `box-${index}` }));
  const place = aPlace({ driveHr: 0.2, turnHr: 0.1 });
  const pace = (driverCount: number) =>
    loaderSets(workingOf(haul({ trailers: boxes, places: [place], driverCount, loadingHr: 0.054 })));
  expect([10, 11].map(pace)).toEqual([false, true]);
});
