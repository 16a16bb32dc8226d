import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { Placing, Slab } from '../../../src/calculate/job.ts';
import {
  CARRIED_BY,
  carryHr,
  carryTrips,
  cheapestWays,
  type Offer,
  planPlacing,
  reachOf,
} from '../../../src/calculate/placing/index.ts';
import { rational } from '../../../src/units/index.ts';
import { fig } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab, at, dollarsAnHour, outlined, propertyRuns, rectangle } from '../slabs.ts';

const perHour = (amount: number, unit: 'ft' | 'yd3') =>
  ({ perHour: rational(amount), unit, text: `${amount} ${unit} per h` }) as const;

const WAYS: Placing = {
  chute: { reachIn: 16 * 12, pace: perHour(15, 'yd3') },
  wheelbarrow: {
    holdsCuFt: 2.5,
    count: 2,
    speed: perHour(9000, 'ft'),
    turnHr: 1 / 60,
    steepestSlope: 0.08,
    narrowestIn: 36,
  },
  buggy: {
    holdsCuFt: 10,
    count: 1,
    speed: perHour(18000, 'ft'),
    turnHr: 2 / 60,
    steepestSlope: 0.15,
    narrowestIn: 48,
    cost: { amountUsd: new Decimal(145), perUnit: 'day', text: '$145 per day' },
  },
  pump: {
    reachIn: 200 * 12,
    pace: perHour(20, 'yd3'),
    peopleCount: 1,
    visitUsd: new Decimal(480),
    byVolume: { amountUsd: new Decimal(4), perUnit: 'yd3', text: '$4 per yd3' },
    keepsCuYd: 0.25,
  },
};

type Access = Parameters<typeof planPlacing>[0]['access'];

function planned(made: {
  slab?: Partial<Slab>;
  volumeCuYd?: number;
  access?: Partial<Access>;
  placing?: Partial<Placing>;
}) {
  const { outlines } = outlined(aSlab(made.slab));
  return planPlacing({
    things: [
      { id: 'drive', volume: fig(made.volumeCuYd ?? 9, 'yd3'), outline: at(outlines, 'drive') },
      { id: 'steps--stoop', volume: fig(1, 'yd3'), outline: null },
    ],
    access: {
      truckAt: { xIn: -60, yIn: 108 },
      chuteReaches: [],
      wayExtraIn: 0,
      waySlope: null,
      wayWidthIn: null,
      ...made.access,
    },
    placing: { ...WAYS, ...made.placing },
    laborUsdPerHr: dollarsAnHour(40),
    concreteUsdPerCuYd: new Decimal(170),
  });
}

const plan = (made: Parameters<typeof planned>[0] = {}) => {
  const found = planned(made);
  if (found === null) throw new Error('nothing was planned');
  return found;
};

describe('reachOf', () => {
  const { outlines } = outlined(aSlab({ shape: rectangle(480, 216) }));
  const drive = at(outlines, 'drive');

  test('exact: a chute at the middle of the end reaches half a circle', () => {
    const { chuteRatio, farthestFt, wayFt } = reachOf(drive, { xIn: 0, yIn: 108 }, 96);
    expect(chuteRatio).toBeCloseTo((Math.PI * 8 ** 2) / 2 / (40 * 18), 5);
    expect(farthestFt).toBeCloseTo(Math.hypot(40, 9), 9);
    expect(wayFt).toBeCloseTo((8 + Math.hypot(40, 9)) / 2, 9);
  });

  test('all of it, none of it, and without a chute', () => {
    expect(reachOf(drive, { xIn: 240, yIn: 108 }, 600).chuteRatio).toBe(1);
    expect(reachOf(drive, { xIn: -600, yIn: 108 }, 192).chuteRatio).toBe(0);
    const none = reachOf(drive, { xIn: -60, yIn: 108 }, 0);
    expect(none.chuteRatio).toBe(0);
    expect(none.wayFt).toBeCloseTo(25, 1);
  });
});

describe('carrying', () => {
  test('exact: eleven barrows of 2.5 cu ft to a yard, and their hours', () => {
    expect(carryTrips({ volumeCuYd: 1, holdsCuFt: 2.5 })).toBe(11);
    expect(carryTrips({ volumeCuYd: 10 / 27, holdsCuFt: 2.5 })).toBe(4);
    expect(carryTrips({ volumeCuYd: 0, holdsCuFt: 2.5 })).toBe(0);
    // 60 ft there and back at 9,000 ft an hour, a minute to fill and tip: 1.8 min a trip.
    expect(carryHr({ trips: 10, wayFt: 60, speedFtPerHr: 9000, turnHr: 1 / 60 })).toBeCloseTo(0.3, 9);
  });

  test('refused: what is outside its range', () => {
    expect(() => carryTrips({ volumeCuYd: -1, holdsCuFt: 2 })).toThrow(RangeError);
    expect(() => carryTrips({ volumeCuYd: 1, holdsCuFt: 0 })).toThrow(/holdsCuFt/);
    expect(() => carryHr({ trips: 1, wayFt: Number.NaN, speedFtPerHr: 1, turnHr: 0 })).toThrow(/wayFt/);
    expect(() => carryHr({ trips: 1, wayFt: 1, speedFtPerHr: 0, turnHr: 0 })).toThrow(/speedFtPerHr/);
  });
});

describe('planPlacing', () => {
  test('part by the chute, the rest and the steps by barrow: by hand', () => {
    const { figures, by } = plan();
    const drive = at(figures.things, 'drive');
    const carried = num(drive.carried);
    expect(carried).toBeCloseTo(9 * (1 - num(drive['chute-share'])), 9);
    expect(by).toEqual({ drive: 'wheelbarrow', 'steps--stoop': 'wheelbarrow' });
    const trips = Math.ceil((carried * 27) / 2.5);
    expect(drive.trips?.value).toBe(trips);
    const wayFt = (16 + Math.hypot(45, 9)) / 2;
    expect(Number(drive['labor-hours']?.value)).toBeCloseTo(trips * ((2 * wayFt) / 9000 + 1 / 60), 6);
    // Steps are reckoned as far as the farthest slab.
    expect(Number(at(figures.things, 'steps--stoop').way?.value)).toBeCloseTo(wayFt, 6);
    expect(num(figures.total.hire)).toBe(0);
  });

  test('a truck that drives along reaches all of it', () => {
    const { figures, by } = plan({ access: { chuteReaches: ['drive'] } });
    expect(num(at(figures.things, 'drive').carried)).toBe(0);
    expect(by['drive']).toBeNull();
    expect(num(figures.total['clock-hours'])).toBeCloseTo(10 / 15, 9);
  });

  test('steep, narrow, far: what does not get there is not taken', () => {
    const by = (made: Parameters<typeof planned>[0]) => plan(made).by['drive'];
    const far = { truckAt: { xIn: -100 * 12, yIn: 108 } };
    expect(by({ access: { ...far, waySlope: 0.1 } })).toBe('buggy');
    expect(by({ access: { ...far, waySlope: 0.1, wayWidthIn: 40 } })).toBe('pump');
    expect(by({ access: { ...far, waySlope: 0.08, wayWidthIn: 36 } })).not.toBeNull();
    const nowhere = plan({ access: { truckAt: { xIn: -300 * 12, yIn: 108 }, waySlope: 0.2 } });
    expect(nowhere.by['drive']).toBeNull();
    expect(num(nowhere.figures.total.unreached)).toBe(2);
  });

  test('a pump is hired once, and keeps some concrete', () => {
    const pumped = plan({ access: { waySlope: 0.3 }, volumeCuYd: 12 });
    expect(pumped.isPumped).toBe(true);
    const carried = Object.values(pumped.figures.things).reduce((sum, one) => sum + num(one.carried), 0);
    expect(num(pumped.figures.total.hire)).toBeCloseTo(480 + 4 * carried, 2);
  });

  test('nothing is planned where nobody says where the truck stands, or how concrete is placed', () => {
    expect(planned({ access: { truckAt: null } })).toBeNull();
    expect(planned({ placing: { chute: null, wheelbarrow: null, buggy: null, pump: null } })).toBeNull();
  });

  testExpressions('placing', plan().figures, 10);
  testExpressions('placing by pump', plan({ access: { waySlope: 0.3 } }).figures, 10);
});

describe('cheapestWays', () => {
  const usd = fc.integer({ min: 0, max: 900 }).map((amount) => new Decimal(amount));
  const offer: fc.Arbitrary<Offer> = fc
    .record({ wheelbarrow: fc.option(usd), buggy: fc.option(usd), pump: fc.option(usd) })
    .map((one) =>
      Object.fromEntries(Object.entries(one).filter(([, amount]) => amount !== null)),
    ) as fc.Arbitrary<Offer>;
  const fixed = fc.record({ wheelbarrow: usd, buggy: usd, pump: usd });

  test('invariant: as cheap as the cheapest of all ways to choose, and reaches whatever can be reached', () => {
    fc.assert(
      fc.property(fc.array(offer, { minLength: 1, maxLength: 4 }), fixed, (offers, hires) => {
        const { by, costUsd } = cheapestWays(offers, hires);
        for (const [index, means] of by.entries())
          expect(means === null).toBe(Object.keys(offers[index] ?? {}).length === 0);
        expect(costUsd.toNumber()).toBe(bruteForce(offers, hires));
      }),
      propertyRuns,
    );
  });

  function bruteForce(offers: readonly Offer[], hires: Parameters<typeof cheapestWays>[1]): number {
    const choices = offers.reduce<readonly (readonly (string | null)[])[]>(
      (all, one) => {
        const ways = Object.keys(one);
        return all.flatMap((before) => (ways.length === 0 ? [null] : ways).map((way) => [...before, way]));
      },
      [[]],
    );
    const costs = choices.map((ways) => {
      const parts = ways.map((way, index) => (way === null ? 0 : Number(offers[index]?.[way as 'pump'])));
      const used = CARRIED_BY.filter((way) => ways.includes(way)).map((way) => hires[way].toNumber());
      return [...parts, ...used].reduce((sum, amount) => sum + amount, 0);
    });
    return Math.min(...costs);
  }
});
