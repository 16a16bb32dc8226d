import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FigureTree, num } from '../../../src/calculate/figure.ts';
import {
  boxVolumeCuYd,
  fillHeightIn,
  limitsLb,
  payloadLb,
  tongueLb,
} from '../../../src/calculate/haul/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { aTruck, haul, LONG_BOX, rate } from './a-haul.ts';

const SEED = 20_260_503;
const runs = { numRuns: runCount(200), seed: SEED };

function longBox(result: ReturnType<typeof haul>) {
  const figures = result.figures.trailers['long-box'];
  if (figures === undefined) throw new Error('no figures of the trailer');
  return figures;
}

describe('payload', () => {
  // Worked by hand from the ratings: each row lowers one rating until it is the least.
  test.each([
    { governing: 'gross-rating', truck: {}, trailer: {}, payload: 9_800 },
    { governing: 'axle-rating', truck: {}, trailer: { axleRatingLb: 12_000 }, payload: 9_130 },
    { governing: 'tow-rating', truck: { towRatingLb: 13_000 }, trailer: {}, payload: 8_800 },
    { governing: 'combined-rating', truck: { combinedRatingLb: 21_000 }, trailer: {}, payload: 8_800 },
    { governing: 'truck-gross', truck: { grossRatingLb: 9_800 }, trailer: {}, payload: 7_800 },
    { governing: 'hitch', truck: { hitchRatingLb: 1_500 }, trailer: {}, payload: 5_800 },
  ] as const)('$governing governs: $payload lb', ({ governing, truck, trailer, payload }) => {
    const result = haul({ towVehicle: aTruck(truck), trailers: [{ ...LONG_BOX, ...trailer }] });
    expect(num(longBox(result).payload)).toBe(payload);
    expect(result.data.governing).toEqual({ 'long-box': governing });
    expect(result.problems).toEqual([]);
  });

  test('the reserve is taken off before the payload is cut to whole tens', () => {
    expect(num(longBox(haul({ loadReserveLb: 301 })).payload)).toBe(9_490);
  });

  test('of two equal limits the first is named', () => {
    const result = haul({ towVehicle: aTruck({ towRatingLb: 14_000 }) });
    expect(result.data.governing).toEqual({ 'long-box': 'gross-rating' });
  });

  test('the tongue band is 10 and 15 % of the loaded trailer', () => {
    const figures = longBox(haul());
    expect(num(figures['tongue-low'])).toBe(1_400);
    expect(num(figures['tongue-high'])).toBe(2_100);
  });

  test('a trailer that may carry nothing is a problem with its numbers, and is not used', () => {
    const result = haul({ towVehicle: aTruck({ hitchRatingLb: 660 }), loadReserveLb: 300 });
    expect(result.problems).toEqual([
      {
        code: 'no-payload',
        path: 'company.trailers.long-box.empty',
        parts: {
          trailer: 'Long box',
          limit: 'hitch',
          allowsLb: '200',
          emptyLb: '4200',
          reserveLb: '300',
        },
      },
    ]);
    expect(num(longBox(result).payload)).toBe(-100);
    expect(result.data.loads).toEqual([]);
    expect(result.figures.streams).toEqual({} satisfies FigureTree);
  });

  test('a payload of exactly 0 is a problem, one of 10 is not', () => {
    const at = (hitchRatingLb: number) =>
      haul({ towVehicle: aTruck({ hitchRatingLb }) }).problems.map(({ code }) => code);
    expect(at(631)).toEqual(['no-payload']);
    expect(at(632)).toEqual([]);
  });

  test(`no rating is ever passed by a load of the payload (seed ${SEED})`, () => {
    const lb = (min: number, max: number) => fc.integer({ min, max });
    fc.assert(
      fc.property(
        fc.record({
          grossRatingLb: lb(3_000, 20_000),
          axleRatingLb: lb(3_000, 20_000),
          emptyLb: lb(500, 5_000),
        }),
        fc.record({
          towRatingLb: lb(3_000, 20_000),
          combinedRatingLb: lb(10_000, 40_000),
          grossRatingLb: lb(7_000, 16_000),
          curbLb: lb(4_000, 8_000),
          carriesLb: lb(0, 2_000),
          hitchRatingLb: lb(300, 3_000),
        }),
        (trailer, truck) => {
          const loadedLb = trailer.emptyLb + payloadLb(limitsLb(trailer, truck), 0);
          const noise = 1e-6;
          expect(loadedLb).toBeLessThanOrEqual(Math.min(trailer.grossRatingLb, truck.towRatingLb) + noise);
          expect(loadedLb * 0.9).toBeLessThanOrEqual(trailer.axleRatingLb + noise);
          expect(loadedLb * 0.15).toBeLessThanOrEqual(truck.hitchRatingLb + noise);
          const truckLb = truck.curbLb + truck.carriesLb;
          expect(truckLb + loadedLb * 0.15).toBeLessThanOrEqual(truck.grossRatingLb + noise);
          expect(truckLb + loadedLb).toBeLessThanOrEqual(truck.combinedRatingLb + noise);
        },
      ),
      runs,
    );
  });
});

describe('box', () => {
  test('exact: a box filled to its height holds its volume', () => {
    expect(fillHeightIn(boxVolumeCuYd(LONG_BOX.box), LONG_BOX.box)).toBeCloseTo(24, 9);
  });
});

describe('refusals', () => {
  test.each([
    ['a reserve below 0', () => payloadLb(limitsLb(LONG_BOX, aTruck()), -1)],
    ['a box without height', () => boxVolumeCuYd({ lengthIn: 1, widthIn: 1, heightIn: 0 })],
    ['a fill below 0', () => fillHeightIn(-1, LONG_BOX.box)],
    ['the tongue of no trailer', () => tongueLb(0, 0.1)],
    ['a tongue of the whole trailer', () => tongueLb(100, 1)],
    ['a truck by the day', () => haul({ towVehicle: aTruck({ cost: rate('90', 'day') }) })],
  ])('%s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});
