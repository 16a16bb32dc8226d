import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bagCount,
  baggedCostUsd,
  calcConcrete,
  cheapestTruckOrder,
  shortLoadFeesUsd,
  slabCuYd,
  spillCuYd,
  stepsCuYd,
  type TruckTerms,
  truckLoadsCuYd,
  truckOrderCostUsd,
  unevennessCuYd,
} from '../../../src/calculate/concrete/index.ts';
import { num } from '../../../src/calculate/figure.ts';
import { type BuiltSteps, tapedRisen } from '../../../src/calculate/flights/index.ts';
import type {
  BagSupplier,
  Build,
  ConcreteSupplier,
  Exposure,
  Placing,
  Slab,
} from '../../../src/calculate/job.ts';
import type { PlacingAccess } from '../../../src/calculate/placing/index.ts';
import type { CrewText, PublicText } from '../../../src/calculate/text.ts';
import { rational } from '../../../src/units/index.ts';
import { aMix } from '../a-mix.ts';
import { testExpressions } from '../evaluate.ts';
import {
  aSlab,
  at,
  byId,
  dollarsAnHour,
  outlined,
  propertyRuns,
  rectangle,
  tapedIn,
  values,
} from '../slabs.ts';

const supplier: ConcreteSupplier = {
  label: 'Plant' as CrewText,
  phone: '555-0100' as CrewText,
  price: { amountUsd: new Decimal('185'), perUnit: 'yd3', text: '$185 per yd3' },
  incrementCuYd: 0.25,
  truckCuYd: 9,
  shortLoadBelowCuYd: 5,
  shortLoadFeeUsd: new Decimal('150'),
  fuelFee: null,
  saturdayFee: null,
  additives: {},
  dischargeLimitHr: null,
  onTheWayHr: null,
  freeHrPerCuYd: null,
  waitFee: null,
  callAheadHr: null,
  noticeDays: 2,
  freeCancelHr: null,
};

const perLoad = (usd: number) =>
  ({ amountUsd: new Decimal(usd), perUnit: 'load', text: `$${usd} per load` }) as const;
const perCuYd = (usd: number) =>
  ({ amountUsd: new Decimal(usd), perUnit: 'yd3', text: `$${usd} per yd3` }) as const;

const bagged: BagSupplier = {
  label: 'Yard' as CrewText,
  phone: '555-0101' as CrewText,
  price: { amountUsd: new Decimal('6.85'), perUnit: 'bag', text: '$6.85 per bag' },
  yieldCuFt: 0.6,
  weightLb: 80,
  mixing: { perHour: rational(12), unit: 'each', text: '12 each per h' },
};

const stoop: BuiltSteps = {
  id: 'stoop',
  label: 'Front steps' as PublicText,
  widthIn: 48,
  riserCount: 3,
  riserIn: 7,
  treadIn: 11,
  landingIn: 36,
  risen: tapedRisen({ id: 'stoop', riserCount: 3, riserIn: 7 }),
};

/** Six yards an hour, and nothing said of the way from the truck. */
function placedHow(placing: Partial<Placing> = {}, access: Partial<PlacingAccess> = {}) {
  return {
    placing: { chute: null, wheelbarrow: null, buggy: null, pump: null, ...placing },
    access: {
      truckAt: null,
      chuteReaches: [],
      wayExtraIn: 0,
      waySlope: null,
      wayWidthIn: null,
      ...access,
    },
    placePace: { perHour: rational(6), unit: 'yd3', text: '6 yd3 per h' },
  } as const;
}

function concrete(made: {
  slabs?: readonly Slab[];
  steps?: readonly BuiltSteps[];
  supplier?: ConcreteSupplier;
  exposure?: Exposure;
  formBulgeIn?: number;
  poursOnSaturday?: boolean;
  mix?: Partial<Build['mix']>;
  placing?: Partial<Placing>;
  access?: Partial<PlacingAccess>;
}) {
  const { shapes, slabs, outlines: plans } = outlined(...(made.slabs ?? [aSlab()]));
  return calcConcrete({
    slabs,
    shapes,
    steps: byId(...(made.steps ?? [])),
    mix: aMix({ exposure: made.exposure ?? 'freezing-and-deicers', ...made.mix }),
    thickened: {},
    allowances: { baseUnevennessIn: 0.25, spillRatio: 0.03, formBulgeIn: made.formBulgeIn ?? 0 },
    poursOnSaturday: made.poursOnSaturday ?? false,
    plans,
    ...placedHow(made.placing, made.access),
    supplier: made.supplier ?? supplier,
    bagged,
    laborUsdPerHr: dollarsAnHour(42.5),
  });
}

describe('calcConcrete', () => {
  const walk = aSlab({ id: 'front-walk', shape: rectangle(360, 48) });
  const result = concrete({ slabs: [aSlab(), walk], steps: [stoop] });

  const allOfIt = concrete({
    slabs: [aSlab({ probedIn: 4.25 }), walk],
    steps: [stoop],
    formBulgeIn: 0.125,
    poursOnSaturday: true,
    supplier: { ...supplier, fuelFee: perLoad(28), saturdayFee: perCuYd(8) },
  });

  test('the job by hand', () => {
    // 720 and 120 sq ft of 4 in, and 27.4167 cu ft of steps.
    const netCuYd = (720 * 4 + 120 * 4) / 324 + 27.41666666666667 / 27;
    const total = values(result.figures.total);
    expect(num(at(result.figures.steps, 'stoop').net)).toBeCloseTo(1.0154, 4);
    expect(total.net).toBeCloseTo(netCuYd, 9);
    expect(total.unevenness).toBeCloseTo((840 * 0.25) / 324, 9);
    expect(total.spill).toBeCloseTo(netCuYd * 0.03, 9);
    expect(total.needed).toBeCloseTo(12.3755, 4); // 11.3858 + 0.6481 + 0.3416
    expect(values(result.figures.truck)).toMatchObject({
      least: 12.5,
      'least-cost': 2312.5,
      order: 12.5,
      loads: 2,
      concrete: 2312.5,
      'short-load-fee': 0,
      cost: 2312.5,
    });
    expect(num(result.figures.truck['left-over'])).toBeCloseTo(0.1245, 4);
    expect(result.data).toMatchObject({ supply: 'truck', loadsCuYd: [6.25, 6.25], placedBy: null });
  });

  test('bags by hand', () => {
    // 12.3755 yd3 are 334.14 cu ft, 556.9 bags of 0.6; 46 h 25 min of mixing.
    const bags = values(result.figures.bags);
    expect(bags).toMatchObject({ count: 557, weight: 44560, cost: 5788.16 });
    expect(bags['mixing-hours']).toBeCloseTo(46.4167, 4);
  });

  test('for a little concrete bags are cheaper, and no truck is called', () => {
    const little = concrete({ slabs: [aSlab({ shape: rectangle(36, 36) })] });
    expect(little.data).toMatchObject({ supply: 'bags', loadsCuYd: [] });
    expect(num(little.figures.truck.cost)).toBeGreaterThan(num(little.figures.bags.cost));
  });

  test('more concrete is ordered where it costs less, and the figure says so', () => {
    // 320 sq ft of 4 in: 3.9506 net, 0.2469 and 0.1185 on top. 4.5 yd3 and the fee cost $982.50, 5 yd3 $925.
    const job = concrete({ slabs: [aSlab({ shape: rectangle(240, 192) })] });
    expect(num(job.figures.total.needed)).toBeCloseTo(4.316, 4);
    expect(values(job.figures.truck)).toMatchObject({
      least: 4.5,
      'least-cost': 982.5,
      order: 5,
      loads: 1,
      'short-load-fee': 0,
      cost: 925,
    });
    expect(job.figures.truck.order.formula).toHaveProperty('method');
    expect(result.figures.truck.order.formula).toHaveProperty('expression');
  });

  test.each([
    { exposure: 'no-freezing', psi: 2500, basis: /IBC 1904\.2/ },
    { exposure: 'freezing', psi: 3500, basis: /IBC 1904\.2/ },
    { exposure: 'freezing-and-deicers', psi: 4500, basis: /ACI 332-20/ },
  ] as const)('the strength floor for $exposure names its basis', ({ exposure, psi, basis }) => {
    const floor = concrete({ exposure }).figures['strength-floor'];
    expect(floor.value).toBe(psi);
    expect(floor.source).toMatch(basis);
  });

  test('nothing to pour orders nothing', () => {
    const nothing = calcConcrete({
      ...outlined(),
      steps: {},
      mix: aMix({ exposure: 'freezing' }),
      thickened: {},
      allowances: { baseUnevennessIn: 0.25, spillRatio: 0.03, formBulgeIn: 0 },
      poursOnSaturday: false,
      plans: {},
      ...placedHow(),
      supplier,
      bagged,
      laborUsdPerHr: dollarsAnHour(42.5),
    });
    expect(values(nothing.figures.truck)).toMatchObject({
      order: 0,
      loads: 0,
      'short-load-fee': 0,
      cost: 0,
      'left-over': 0,
    });
    expect(nothing.data).toMatchObject({ supply: 'truck', loadsCuYd: [] });
  });

  test('a truck that cannot carry one increment is a problem', () => {
    expect(concrete({ supplier: { ...supplier, truckCuYd: 0.2 } }).problems).toEqual([
      {
        code: 'truck-below-increment',
        path: 'company.suppliers.concrete.truck',
        parts: { truck: '0.20', increment: '0.25' },
      },
    ]);
    expect(result.problems).toEqual([]);
  });

  test('bulging forms, by hand', () => {
    // 116 and 68 ft of form 4 in deep, 1/8 in out: 184 x 4/12 sq ft of face.
    const bowed = concrete({ slabs: [aSlab(), walk], formBulgeIn: 0.125 });
    const { bulge, net, unevenness, spill, needed } = bowed.figures.total;
    expect(bulge && num(bulge)).toBeCloseTo((184 * (4 / 12) * 0.125) / 324, 9);
    const parts = [net, unevenness, spill, bulge].map((part) => (part === undefined ? 0 : num(part)));
    expect(num(needed)).toBeCloseTo(
      parts.reduce((sumCuYd, part) => sumCuYd + part, 0),
      12,
    );
    expect(result.figures.total.bulge).toBeUndefined();
  });

  test('a probed base is taken as it is, and nothing is added for what is not level', () => {
    const probed = concrete({ slabs: [aSlab({ probedIn: 4.5 }), walk] });
    expect(num(at(probed.figures.slabs, 'drive').net)).toBeCloseTo((720 * 4.5) / 324, 9);
    expect(num(probed.figures.total.unevenness)).toBeCloseTo((120 * 0.25) / 324, 9);
  });

  test('fees: fuel on every load, Saturday only where the pour falls on one', () => {
    const withFees = { ...supplier, fuelFee: perLoad(28), saturdayFee: perCuYd(8) };
    const weekday = concrete({ slabs: [aSlab(), walk], steps: [stoop], supplier: withFees });
    expect(weekday.figures.truck['fuel-fee']?.value.toString()).toBe('56');
    expect(weekday.figures.truck['saturday-fee']).toBeUndefined();
    expect(weekday.figures.truck.cost.value.toString()).toBe('2368.5');
    const saturday = concrete({
      slabs: [aSlab(), walk],
      steps: [stoop],
      supplier: withFees,
      poursOnSaturday: true,
    });
    expect(saturday.figures.truck['saturday-fee']?.value.toString()).toBe('100');
    expect(saturday.figures.truck.cost.value.toString()).toBe('2468.5');
    const notAsked = concrete({ poursOnSaturday: true });
    expect(notAsked.figures.truck['saturday-fee']).toBeUndefined();
  });

  testExpressions('concrete with fees, bulging and probed', allOfIt.figures, 20);
  testExpressions('concrete', result.figures, 14);
  testExpressions('concrete without freezing', concrete({ exposure: 'no-freezing' }).figures, 12);
});

describe('truck orders', () => {
  const at185: TruckTerms = supplier;

  test('loads are even, in increments', () => {
    expect(truckLoadsCuYd(12.5, at185)).toEqual([6.25, 6.25]);
    expect(truckLoadsCuYd(19.5, at185)).toEqual([6.5, 6.5, 6.5]);
    expect(truckLoadsCuYd(10.25, at185)).toEqual([5.25, 5]);
    expect(truckLoadsCuYd(9, at185)).toEqual([9]);
  });

  test('one short load, where an even split would make two', () => {
    expect(truckLoadsCuYd(9.5, at185)).toEqual([5, 4.5]);
    expect(shortLoadFeesUsd(9.5, at185).toNumber()).toBe(150);
    expect(truckOrderCostUsd(9.5, at185).toFixed(2)).toBe('1907.50');
  });

  test('trucks smaller than the limit pay the fee every time', () => {
    const small = { ...at185, truckCuYd: 4 };
    expect(truckLoadsCuYd(9, small)).toEqual([3, 3, 3]);
    expect(shortLoadFeesUsd(9, small).toNumber()).toBe(450);
    expect(cheapestTruckOrder(9, small)).toBe(9);
  });

  test('a metric increment and price are billed in cubic metres', () => {
    const cuYdPerCuM = 1.3079506193143922;
    const metric: TruckTerms = {
      ...at185,
      price: { amountUsd: new Decimal('240'), perUnit: 'm3', text: '$240 per m3' },
      incrementCuYd: 0.2 * cuYdPerCuM,
      truckCuYd: 7 * cuYdPerCuM,
      shortLoadBelowCuYd: 4 * cuYdPerCuM,
    };
    const orderCuYd = cheapestTruckOrder(5.5 * cuYdPerCuM, metric);
    expect(orderCuYd).toBeCloseTo(5.6 * cuYdPerCuM, 9);
    expect(truckOrderCostUsd(orderCuYd, metric).toFixed(2)).toBe('1344.00');
  });

  test('exact: an amount on an increment stays there, whatever its last digit', () => {
    const free = { ...at185, incrementCuYd: 0.1, shortLoadBelowCuYd: 0 };
    expect(cheapestTruckOrder(0.1 + 0.2, free)).toBe(0.3);
    expect(truckLoadsCuYd(0.7, free)).toEqual([0.7]);
  });

  test('of two orders that cost the same the smaller one is taken', () => {
    const terms = { ...at185, price: { ...at185.price, amountUsd: new Decimal('150') } };
    expect(truckOrderCostUsd(4, terms).toNumber()).toBe(truckOrderCostUsd(5, terms).toNumber());
    expect(cheapestTruckOrder(4, terms)).toBe(4);
  });

  const anyTerms = fc
    .record({
      quarters: fc.integer({ min: 1, max: 4 }),
      truckCuYd: fc.integer({ min: 3, max: 11 }),
      shortLoadBelowCuYd: fc.integer({ min: 0, max: 6 }),
      feeUsd: fc.integer({ min: 0, max: 400 }),
      fuelUsd: fc.option(fc.integer({ min: 0, max: 90 })),
      saturdayUsd: fc.option(fc.integer({ min: 0, max: 30 })),
      priceUsd: fc.integer({ min: 90, max: 260 }),
    })
    .map(
      ({ quarters, truckCuYd, shortLoadBelowCuYd, feeUsd, fuelUsd, saturdayUsd, priceUsd }): TruckTerms => ({
        price: { amountUsd: new Decimal(priceUsd), perUnit: 'yd3', text: '' },
        incrementCuYd: quarters / 4,
        truckCuYd,
        shortLoadBelowCuYd,
        shortLoadFeeUsd: new Decimal(feeUsd),
        fuelFee: fuelUsd === null ? null : perLoad(fuelUsd),
        saturdayFee: saturdayUsd === null ? null : perCuYd(saturdayUsd),
      }),
    );
  const anyNeed = fc.double({ min: 0.05, max: 40, noNaN: true });

  test('invariant: loads add up to the order, fit their truck, and are as few as can be', () => {
    fc.assert(
      fc.property(anyNeed, anyTerms, (neededCuYd, terms) => {
        const orderCuYd = cheapestTruckOrder(neededCuYd, terms);
        const loads = truckLoadsCuYd(orderCuYd, terms);
        const fitsCuYd = Math.floor(terms.truckCuYd / terms.incrementCuYd) * terms.incrementCuYd;
        expect(loads.reduce((sum, load) => sum + load, 0)).toBe(orderCuYd);
        expect(Math.max(...loads)).toBeLessThanOrEqual(fitsCuYd);
        expect(Math.min(...loads)).toBeGreaterThan(0);
        expect(loads.length).toBe(Math.ceil(orderCuYd / fitsCuYd));
        if (terms.shortLoadBelowCuYd <= fitsCuYd) {
          expect(loads.filter((load) => load < terms.shortLoadBelowCuYd).length).toBeLessThanOrEqual(1);
        }
      }),
      propertyRuns,
    );
  });

  test('invariant: the order is enough, and less than an increment more unless more is cheaper', () => {
    let takenMore = 0;
    fc.assert(
      fc.property(anyNeed, anyTerms, (neededCuYd, terms) => {
        const orderCuYd = cheapestTruckOrder(neededCuYd, terms);
        expect(orderCuYd).toBeGreaterThanOrEqual(neededCuYd - 1e-6);
        const leastCuYd = Math.ceil(neededCuYd / terms.incrementCuYd) * terms.incrementCuYd;
        if (orderCuYd > leastCuYd) {
          takenMore += 1;
          expect(truckOrderCostUsd(orderCuYd, terms).lt(truckOrderCostUsd(leastCuYd, terms))).toBe(true);
        } else expect(orderCuYd).toBe(leastCuYd);
        // Of every order up to two trucks more none is cheaper.
        const mostCuYd = leastCuYd + 2 * Math.max(terms.truckCuYd, terms.shortLoadBelowCuYd);
        for (let tried = leastCuYd; tried < mostCuYd; tried += terms.incrementCuYd) {
          expect(truckOrderCostUsd(tried, terms).gte(truckOrderCostUsd(orderCuYd, terms))).toBe(true);
        }
      }),
      propertyRuns,
    );
    expect(takenMore).toBeGreaterThan(5);
  });
});

describe('volumes', () => {
  test('invariant: net grows with length, width and thickness', () => {
    fc.assert(
      fc.property(
        tapedIn(12, 900),
        tapedIn(12, 400),
        tapedIn(3, 8),
        tapedIn(1, 20),
        (long, wide, thick, more) => {
          const net = (lengthIn: number, widthIn: number, thicknessIn: number) => {
            const job = concrete({ slabs: [aSlab({ shape: rectangle(lengthIn, widthIn), thicknessIn })] });
            return num(at(job.figures.slabs, 'drive').net);
          };
          const baseCuYd = net(long, wide, thick);
          expect(net(long + more, wide, thick)).toBeGreaterThan(baseCuYd);
          expect(net(long, wide + more, thick)).toBeGreaterThan(baseCuYd);
          expect(net(long, wide, thick + more)).toBeGreaterThan(baseCuYd);
        },
      ),
      propertyRuns,
    );
  });

  test('refused: what is outside its range', () => {
    const flight = { widthIn: 48, riserCount: 3, riserIn: 7, treadIn: 11, landingIn: 36 };
    expect(() => slabCuYd({ areaSqFt: -1, thicknessIn: 4 })).toThrow(RangeError);
    expect(() => slabCuYd({ areaSqFt: Number.NaN, thicknessIn: 4 })).toThrow(RangeError);
    expect(() => unevennessCuYd({ lowIn: Infinity, areaSqFt: 1 })).toThrow(RangeError);
    expect(() => spillCuYd({ netCuYd: 1, spillRatio: -0.1 })).toThrow(RangeError);
    expect(() => stepsCuYd({ ...flight, riserCount: 0 })).toThrow(RangeError);
    expect(() => stepsCuYd({ ...flight, riserCount: 2.5 })).toThrow(RangeError);
    expect(() => stepsCuYd({ ...flight, landingIn: -1 })).toThrow(RangeError);
    expect(() => bagCount({ neededCuYd: 1, yieldCuFt: 0 })).toThrow(RangeError);
    expect(() => bagCount({ neededCuYd: Number.NaN, yieldCuFt: 0.6 })).toThrow(RangeError);
    expect(() => cheapestTruckOrder(-1, supplier)).toThrow(RangeError);
    expect(() => truckLoadsCuYd(4.1, supplier)).toThrow(/multiple/);
    expect(() => truckLoadsCuYd(4, { ...supplier, truckCuYd: 0.1 })).toThrow(RangeError);
    expect(() =>
      truckOrderCostUsd(4, {
        ...supplier,
        price: { ...supplier.price, perUnit: 'ton', text: '$90 per ton' },
      }),
    ).toThrow(/volume/);
    expect(() =>
      baggedCostUsd({ bagCount: 1, usdPerBag: new Decimal(-1), mixingHr: 1, laborUsdPerHr: new Decimal(1) }),
    ).toThrow(RangeError);
  });
});
