import { describe, expect, test } from 'vitest';
import { bestPlan } from '../../../../src/calculate/haul/plan/best-plan.ts';
import { nextPlan } from '../../../../src/calculate/haul/plan/next-plan.ts';
import type { Plan, PlanProblem, Tariff } from '../../../../src/calculate/haul/plan/problem.ts';
import { aPlace, aProblem, aStream, aTrailer, FREE, someBase } from './a-problem.ts';

/** The plan where there is one, or the test fails. */
function planned(problem: PlanProblem): Plan {
  const plan = bestPlan(problem);
  if (plan === null) throw new Error('there is no plan');
  return plan;
}

/** Trips that cost nothing themselves: only what the gate takes. */
const STILL = {
  driverUsdPerHr: 0,
  truckUsdPerHr: 0,
  truckUsdPerMi: 0,
  loadingHr: 0,
  swapHr: null,
  driverCount: 1,
};

function gateUsd(payloadLb: number, tariff: Partial<Tariff>, streamLb = 25_000): number {
  return planned(
    aProblem({
      trailers: [aTrailer('one', payloadLb)],
      places: [aPlace('yard', { tariff: { ...FREE, ...tariff } })],
      streams: [aStream('clean-concrete', streamLb)],
      rates: STILL,
    }),
  ).costUsd;
}

describe('what fees make of trailers', () => {
  test('exact: $40 a load for 25,000 lb is 4 loads of 7,300 lb or 3 of 9,800 lb', () => {
    expect(gateUsd(7300, { usdPerLoad: 40 })).toBe(160);
    expect(gateUsd(9800, { usdPerLoad: 40 })).toBe(120);
  });

  test('exact: $12 a ton is $150 for 12.5 tons, in small loads or large', () => {
    expect(gateUsd(7300, { usdPerTon: 12 })).toBe(150);
    expect(gateUsd(9800, { usdPerTon: 12 })).toBe(150);
  });

  test('exact: of both trailers the flat fee takes the larger, three times', () => {
    const problem = aProblem({
      trailers: [aTrailer('small', 7300), aTrailer('large', 9800)],
      places: [aPlace('yard', { tariff: { ...FREE, usdPerLoad: 40 } })],
      streams: [aStream('clean-concrete', 25_000)],
    });
    const plan = planned(problem);
    expect(plan.costUsd).toBe(3 * (40 + 60));
    expect(plan.byStream[0]?.trips.reduce((sum, { count }) => sum + count, 0)).toBe(3);
  });
});

describe('what may share a load', () => {
  const streams = [aStream('clean-concrete', 6000), aStream('masonry', 3000)];
  const mixed = (usdPerTon: number) =>
    aProblem({
      streams,
      places: [
        aPlace('yard', {
          tariff: { ...FREE, usdPerTon: 10 },
          surcharges: { masonry: { ...FREE, usdPerTon } },
          mixedLoads: true,
        }),
      ],
    });

  // Apart: two trips of $60, 3 tons at $10 and 1.5 tons at $10 and the surcharge. On one load: 4.5 tons at both.
  test('exact: a cheap stream on a dear load saves the trip', () => {
    const plan = planned(mixed(16));
    expect(plan.costUsd).toBe(60 + 4.5 * 26);
    expect(plan.tripCount).toBe(1);
    expect(plan.shared[0]?.parts).toEqual([
      { stream: 'clean-concrete', weightLb: 6000 },
      { stream: 'masonry', weightLb: 3000 },
    ]);
  });

  test('exact: it does not where the surcharge on 3 tons comes to more than the trip', () => {
    const plan = planned(mixed(24));
    expect(plan.costUsd).toBe(2 * 60 + 3 * 10 + 1.5 * 34);
    expect(plan.shared).toEqual([]);
  });
});

describe('loads that a trailer holds exactly', () => {
  test.each([
    { weightLb: 28_000, payloadLb: 7000, loads: 4 },
    { weightLb: 28_000.1, payloadLb: 7000, loads: 5 },
    // 55 times what is 55 times in decimals and a little more in binary fractions.
    { weightLb: (180 / 0.9) * (1 + 10 / 100), payloadLb: 4, loads: 55 },
    { weightLb: 0.1 + 0.2, payloadLb: 0.1, loads: 3 },
  ])('exact: $weightLb lb are $loads loads of $payloadLb lb', ({ weightLb, payloadLb, loads }) => {
    const plan = planned(
      aProblem({ trailers: [aTrailer('one', payloadLb)], streams: [aStream('soil', weightLb)] }),
    );
    expect(plan.tripCount).toBe(loads);
    expect(plan.byStream[0]?.weightLb).toBe(weightLb);
  });
});

describe('what fills a load that is paid for', () => {
  // 12,000 lb at $4 a ton: the small load leaves 6,000 lb for the flat fee, beside the 4,000 lb that go there anyway.
  test('exact: a smaller full load where what it leaves goes for nothing', () => {
    const plan = planned(
      aProblem({
        trailers: [aTrailer('large', 10_000), aTrailer('small', 6000)],
        streams: [aStream('clean-concrete', 4000), aStream('masonry', 12_000)],
        places: [
          aPlace('by-ton', { accepts: ['masonry'], tariff: { ...FREE, usdPerTon: 4 } }),
          aPlace('flat', { tariff: { ...FREE, usdPerLoad: 30 }, mixedLoads: true }),
        ],
      }),
    );
    expect(plan.costUsd).toBe(60 + 3 * 4 + 60 + 30);
    expect(plan.byStream[1]?.trips).toEqual([
      { trailer: 'small', place: 'by-ton', withBase: false, count: 1 },
    ]);
  });
});

describe('base on the way back', () => {
  const yard = aPlace('yard', { sellsBase: true });
  const rebate = aPlace('yard', {
    sellsBase: true,
    tariff: { ...FREE, usdPerLoad: 90 },
    tariffWithBase: FREE,
  });

  test('exact: with what is hauled, for one more turn', () => {
    const plan = planned(aProblem({ places: [yard], base: someBase() }));
    expect(plan.costUsd).toBe(60 + 10);
    expect(plan.byStream[0]?.trips[0]?.withBase).toBe(true);
  });

  test('exact: delivered where that costs less than the turn', () => {
    const plan = planned(aProblem({ places: [yard], base: someBase({ deliveryUsd: 9 }) }));
    expect(plan.costUsd).toBe(60 + 9);
    expect(plan.deliveryCount).toBe(1);
  });

  // Regression: the load that brought more at the same cost was kept alone, and left no room for the second one.
  test('regression: a smaller load where a large one would leave too little room', () => {
    const plan = planned(
      aProblem({
        trailers: [aTrailer('large', 10_000), aTrailer('small', 6000)],
        streams: [aStream('clean-concrete', 6000), aStream('soil', 10_000)],
        places: [yard],
        base: someBase({ weightLb: 16_000, roomLb: 16_000 }),
      }),
    );
    expect(plan.costUsd).toBe(2 * (60 + 10));
    expect(plan.baseTrips).toEqual([]);
  });

  test('exact: of two trips that would save as much, one brings the only load there is need of', () => {
    const plan = planned(
      aProblem({
        streams: [aStream('clean-concrete', 8000), aStream('soil', 8000)],
        places: [rebate],
        base: someBase({ weightLb: 5000 }),
      }),
    );
    expect(plan.costUsd).toBe(60 + 10 + 60 + 90);
  });

  // Regression: a second load that is not needed for its rubble was never tried.
  test('regression: the next plan may halve a load so that base comes back twice', () => {
    const problem = aProblem({ places: [rebate], base: someBase({ weightLb: 20_000 }) });
    const best = planned(problem);
    expect(best.costUsd).toBe(60 + 10 + 50);
    const next = nextPlan(problem, best);
    expect(next?.costUsd).toBe(2 * (60 + 10));
    expect(next?.baseTrips).toEqual([]);
  });
});

describe('no plan', () => {
  test('exact: a stream that no place takes', () => {
    const places = [aPlace('yard', { accepts: ['soil'] })];
    expect(bestPlan(aProblem({ places }))).toBe(null);
  });

  test('exact: no other way with one trailer, one place and one load', () => {
    const problem = aProblem({});
    expect(nextPlan(problem, planned(problem))).toBe(null);
  });
});
