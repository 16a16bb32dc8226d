import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestPlan } from '../../../../src/calculate/haul/plan/best-plan.ts';
import type { Plan, PlannedTrips, PlanProblem } from '../../../../src/calculate/haul/plan/problem.ts';
import { runCount } from '../../../support/property-runs.ts';
import { mostLb } from './brute-costs.ts';
import { smallProblem } from './small-problems.ts';

const SEED = 20_260_518;
const runs = { numRuns: runCount(80), seed: SEED };
const ALL = { rebates: true, mixed: true, base: true };
const PLAIN = { rebates: false, mixed: false, base: true };
/** A cent, for the roundings of tickets. */
const CENT_USD = 0.01;

/** The cost; more than any where there is no plan. */
function costUsd(problem: PlanProblem): number {
  return bestPlan(problem)?.costUsd ?? Number.POSITIVE_INFINITY;
}

function heavier(problem: PlanProblem, factor: number): PlanProblem {
  const streams = problem.streams.map((stream) => ({ ...stream, weightLb: stream.weightLb * factor }));
  return { ...problem, streams };
}

function trailerOf({ trailers }: PlanProblem, { trailer }: Pick<PlannedTrips, 'trailer'>) {
  const found = trailers.find(({ id }) => id === trailer);
  if (found === undefined) throw new Error(`no trailer ${trailer}`);
  return found;
}

const growth = fc.double({ min: 1.01, max: 2, noNaN: true });

describe(`invariants of the plan of trips (seed ${SEED})`, () => {
  test('the order in which things are written changes neither cost nor trips', () => {
    const orders = fc.record({ trailers: fc.nat(), places: fc.nat(), streams: fc.nat() });
    const turned = <T>(all: readonly T[], by: number) =>
      [...all.slice(by % all.length), ...all.slice(0, by % all.length)].reverse();
    fc.assert(
      fc.property(smallProblem(ALL), orders, (problem, order) => {
        const plan = bestPlan(problem);
        const other = bestPlan({
          ...problem,
          trailers: turned(problem.trailers, order.trailers),
          places: turned(problem.places, order.places),
          streams: turned(problem.streams, order.streams),
        });
        expect(other?.costUsd ?? -1).toBeCloseTo(plan?.costUsd ?? -1, 3);
        expect(other?.tripCount).toBe(plan?.tripCount);
      }),
      runs,
    );
  });

  test('more weight never costs less', () => {
    fc.assert(
      fc.property(smallProblem(PLAIN), growth, (problem, factor) => {
        expect(costUsd(heavier(problem, factor))).toBeGreaterThanOrEqual(costUsd(problem) - CENT_USD);
      }),
      runs,
    );
  });

  test('with one trailer and one place more weight never takes fewer trips', () => {
    fc.assert(
      fc.property(smallProblem({ ...PLAIN, base: false }), growth, (made, factor) => {
        const places = made.places
          .slice(0, 1)
          .map((place) => ({ ...place, accepts: made.streams.map(({ stream }) => stream) }));
        const problem = { ...made, trailers: made.trailers.slice(0, 1), places };
        const heavy = bestPlan(heavier(problem, factor));
        expect(heavy?.tripCount ?? 0).toBeGreaterThanOrEqual(
          bestPlan(problem)?.tripCount ?? Number.POSITIVE_INFINITY,
        );
      }),
      runs,
    );
  });

  test('a larger payload and box never cost more', () => {
    fc.assert(
      fc.property(smallProblem(PLAIN), growth, (made, factor) => {
        const problem = { ...made, base: made.base && { ...made.base, roomLb: null } };
        const trailers = problem.trailers.map(({ id, payloadLb, boxCuYd }) => ({
          id,
          payloadLb: payloadLb * factor,
          boxCuYd: boxCuYd * factor,
        }));
        expect(costUsd({ ...problem, trailers })).toBeLessThanOrEqual(costUsd(problem) + CENT_USD);
      }),
      runs,
    );
  });

  test('one more trailer or place never costs more', () => {
    fc.assert(
      fc.property(smallProblem(ALL), (problem) => {
        const least = costUsd(problem) - CENT_USD;
        const [first] = problem.trailers;
        if (first !== undefined)
          expect(costUsd({ ...problem, trailers: [first] })).toBeGreaterThanOrEqual(least);
        expect(costUsd({ ...problem, places: problem.places.slice(1) })).toBeGreaterThanOrEqual(least);
      }),
      runs,
    );
  });

  test('what goes on the trips is the weight of each stream, and no load is over payload or box', () => {
    fc.assert(
      fc.property(smallProblem(ALL), (problem) => {
        const plan = bestPlan(problem);
        if (plan === null) return;
        for (const { stream, weightLb, looseLbPerCuYd } of problem.streams) {
          const own = plan.byStream.find((planned) => planned.stream === stream);
          const shared = plan.shared.flatMap(({ parts }) => parts.filter((part) => part.stream === stream));
          const restLb = shared.reduce((sum, part) => sum + part.weightLb, 0);
          expect((own?.weightLb ?? 0) + restLb).toBeCloseTo(weightLb, 6);
          expect(shared.length).toBeLessThanOrEqual(1);
          const mostOwnLb = (own?.trips ?? []).reduce(
            (sum, trip) => sum + trip.count * mostLb(trailerOf(problem, trip), { looseLbPerCuYd }),
            0,
          );
          expect(own?.weightLb).toBeLessThanOrEqual(mostOwnLb + 1e-6);
          // Where some of it shares a load, the others are full.
          if (restLb > 0) expect(own?.weightLb).toBeCloseTo(mostOwnLb, 6);
        }
        for (const load of plan.shared) {
          const { payloadLb, boxCuYd } = trailerOf(problem, load);
          const loose = (of: string) =>
            problem.streams.find(({ stream }) => stream === of)?.looseLbPerCuYd ?? 0;
          expect(load.parts.length).toBeGreaterThan(1);
          expect(load.parts.reduce((sum, { weightLb }) => sum + weightLb, 0)).toBeLessThanOrEqual(
            payloadLb + 1e-3,
          );
          const cuYd = load.parts.reduce((sum, { stream, weightLb }) => sum + weightLb / loose(stream), 0);
          expect(cuYd).toBeLessThanOrEqual(boxCuYd + 1e-6);
        }
      }),
      runs,
    );
  });

  test('base that is needed comes, none of the trips for it is to spare, and there is room for what comes early', () => {
    fc.assert(
      fc.property(smallProblem(ALL), (problem) => {
        const plan = bestPlan(problem);
        const { base } = problem;
        if (plan === null || base === null) return;
        const back = backLb(problem, plan, base);
        const alone = plan.baseTrips.flatMap((trip) =>
          Array.from({ length: trip.count }, () => mostLb(trailerOf(problem, trip), base)),
        );
        const delivered = Array.from({ length: plan.deliveryCount }, () => base.deliveryLb);
        const sum = (all: readonly number[]) => all.reduce((total, lb) => total + lb, 0);
        const broughtLb = sum([...back, ...alone, ...delivered]);
        expect(broughtLb).toBeGreaterThanOrEqual(base.weightLb - 1e-3);
        expect(sum(back)).toBeLessThanOrEqual((base.roomLb ?? Number.POSITIVE_INFINITY) + 1e-3);
        for (const lb of [...alone, ...delivered]) expect(broughtLb - lb).toBeLessThan(base.weightLb);
        for (const lb of back) expect(sum(back) - lb).toBeLessThan(base.weightLb);
      }),
      runs,
    );
  });
});

/** Of each trip that carries something out and brings base. */
function backLb(
  problem: PlanProblem,
  plan: Plan,
  base: { readonly looseLbPerCuYd: number },
): readonly number[] {
  const own = plan.byStream.flatMap(({ trips }) => trips);
  return [...own, ...plan.shared.map((load) => ({ ...load, count: 1 }))]
    .filter(({ withBase }) => withBase)
    .flatMap((trip) => Array.from({ length: trip.count }, () => mostLb(trailerOf(problem, trip), base)));
}
