import { describe, expect, test } from 'vitest';
import { type FigureTree, num } from '../../../src/calculate/figure.ts';
import { haulWhy, ticketUsd } from '../../../src/calculate/haul/index.ts';
import { Usd } from '../../../src/units/index.ts';
import {
  anExisting,
  aPlace,
  aSlab,
  aTruck,
  byId,
  haul,
  LONG_BOX,
  rate,
  rectangle,
  SHORT_BOX,
} from './a-haul.ts';
import { wrongFormulas } from './reevaluate.ts';

/*
 * 150 lb/cu ft, 4 in: 50 lb a square foot; the long box carries 9,800 lb, the short one 7,300.
 */

const existing = [
  anExisting({ id: 'drive', shape: rectangle(21, 20), steel: 'mesh' }), // 21,000 lb
  anExisting({ id: 'walk', shape: rectangle(20, 4) }), // 4,000 lb
];
const mixing = aPlace({ mixedLoads: true, surcharges: { 'concrete-with-steel': rate('10', 'load') } });

describe('streams that share a load', () => {
  test('what is left over of both goes together, where the place lets it: a trip less', () => {
    const { data } = haul({ existing, places: [mixing] });
    expect(data.loads.map(({ streams, weightLb }) => [streams, weightLb])).toEqual([
      [['concrete-with-steel'], 9800],
      [['concrete-with-steel'], 9800],
      [['clean-concrete', 'concrete-with-steel'], 5400],
    ]);
    const [, , shared] = data.loads;
    expect(shared?.pieces.map(({ existingId, weightLb }) => [existingId, weightLb])).toEqual([
      ['walk', 4000],
      ['drive', 1400],
    ]);
    expect(shared?.areaSqFt).toBeCloseTo(108, 9);
    expect(haul({ existing, places: [aPlace()] }).data.loads).toHaveLength(4);
  });

  test('every load with steel on it pays for it, and the formulas say so', () => {
    const result = haul({ existing, places: [mixing], loadReserveLb: 0 });
    expect(result.data.loads.map(({ feeUsd }) => feeUsd.toNumber())).toEqual([50, 50, 50]);
    expect(num(result.figures.total.fees)).toBe(150);
    expect(wrongFormulas(result.figures satisfies FigureTree)).toEqual([]);
  });

  test('it does not share where that costs more than the trip it saves', () => {
    const dear = aPlace({ mixedLoads: true, surcharges: { 'concrete-with-steel': rate('90', 'load') } });
    const { data } = haul({
      existing: [
        existing[1] ?? anExisting(),
        anExisting({ id: 'pad', steel: 'bars', shape: rectangle(8, 4) }),
      ],
      places: [dear, aPlace({ id: 'other', mixedLoads: true, distanceMi: 11 })],
    });
    expect(data.loads.map(({ place }) => place)).toEqual(['other']);
  });
});

describe('fees', () => {
  const load = { weightLb: 9_000, looseCuYd: 4, streams: ['masonry'] as const, withBase: false };

  test.each([
    ['a surcharge by the load', { surcharges: { masonry: rate('15', 'load') } }, '55.00'],
    ['a surcharge by the ton', { surcharges: { masonry: rate('2', 'ton') } }, '49.00'],
    ['a surcharge by the loose yard', { surcharges: { masonry: rate('3.50', 'yd3') } }, '54.00'],
    ['one of another stream', { surcharges: { soil: rate('15', 'load') } }, '40.00'],
    [
      'the least of a visit is not added to',
      { minimumUsd: new Usd(52), surcharges: { masonry: rate('15', 'load') } },
      '55.00',
    ],
  ])('%s', (_, changed, usd) => {
    expect(ticketUsd(aPlace(changed), load).toFixed(2)).toBe(usd);
  });

  test('a load that goes back with base pays its own fee, where the place has one', () => {
    const place = aPlace({ feeWithBase: rate('12', 'ton') });
    expect(ticketUsd(place, { ...load, withBase: true }).toFixed(2)).toBe('54.00');
    expect(ticketUsd(aPlace(), { ...load, withBase: true }).toFixed(2)).toBe('40.00');
  });
});

describe('base', () => {
  // 500 sq ft of 4 in: 11 tons, three loads of the long box; three loads of rubble.
  const slabs = [aSlab({ baseIn: 4 })];

  test('no more of it comes before the rubble is gone than there is room for', () => {
    const { data, figures } = haul({ slabs, baseRoomLb: 10_000 });
    expect(data.loads.filter(({ returns }) => returns === 'base')).toHaveLength(1);
    expect(num(figures.base['own-trips'])).toBe(2);
    expect(haul({ slabs, baseRoomLb: 9_700 }).data.loads.every(({ returns }) => returns === 'empty')).toBe(
      true,
    );
  });
});

describe('days', () => {
  const day = { firstOn: '2026-05-04', startsHr: 7, lengthHr: 8 };

  test('only places that are open on the first day are driven to', () => {
    const shut = aPlace({ id: 'a-yard', fee: rate('5', 'load'), openOn: [2, 3] });
    expect(haul({ places: [shut, aPlace()], day }).data.loads[0]?.place).toBe('yard');
    const { problems, figures } = haul({ places: [shut], day });
    expect(problems).toEqual([
      {
        code: 'places-closed',
        path: 'plan.starts-on',
        parts: { stream: 'clean-concrete', places: 'Yard', on: '2026-05-04' },
      },
    ]);
    expect(figures.streams).toEqual({});
  });

  test('a place that takes its last load before one can be there is a problem', () => {
    const early = aPlace({ open: { fromHr: 5, toHr: 8, lastLoadHr: 7.5 } });
    expect(haul({ places: [early], day }).problems).toEqual([
      {
        code: 'place-lets-nobody-in',
        path: 'company.places.yard.open',
        parts: { place: 'Yard', arrives: '7:54', lastLoad: '7:30' },
      },
    ]);
  });
});

describe('why the trips are as they are', () => {
  test('the next plan, each trailer alone, and no reserve', () => {
    const trailers = [LONG_BOX, SHORT_BOX];
    const result = haul({ trailers, loadReserveLb: 300 });
    const { planned } = result.data;
    if (planned === null) throw new Error('there is no plan');
    const why = haulWhy(planned, { trailers: byId(trailers), towVehicle: aTruck(), loadReserveLb: 300 });
    // 25,000 lb: three loads of 9,500 lb, four of 7,000; a trip costs $109.50.
    expect([num(why.plan.trips), num(why.plan.cost)]).toEqual([3, 328.5]);
    expect(num(why.only['long-box']?.trips ?? why.plan.trips)).toBe(3);
    expect([why.only['short-box']?.trips, why.only['short-box']?.cost].map((one) => one && num(one))).toEqual(
      [4, 438],
    );
    // Two long loads and a short one cost the same.
    expect([why['second-best']?.trips, why['second-best']?.cost].map((one) => one && num(one))).toEqual([
      3, 328.5,
    ]);
    expect(why['no-reserve'] && num(why['no-reserve'].trips)).toBe(3);
  });

  test('without its reserve a trailer carries more: 28,800 lb are three loads of 9,800 and four of 9,500', () => {
    const longer = [anExisting({ shape: rectangle(28.8, 20) })];
    const { planned } = haul({ existing: longer, loadReserveLb: 300 }).data;
    if (planned === null) throw new Error('there is no plan');
    const fleet = { trailers: byId([LONG_BOX]), towVehicle: aTruck(), loadReserveLb: 300 };
    const why = haulWhy(planned, fleet);
    expect([why.plan.trips, why['no-reserve']?.trips].map((one) => one && num(one))).toEqual([4, 3]);
  });

  test('one trailer and no reserve leave nothing to compare with', () => {
    const { planned } = haul().data;
    if (planned === null) throw new Error('there is no plan');
    const why = haulWhy(planned, { trailers: byId([LONG_BOX]), towVehicle: aTruck(), loadReserveLb: 0 });
    expect(Object.keys(why)).toEqual(['plan', 'only']);
    expect(why.only).toEqual({});
  });
});
