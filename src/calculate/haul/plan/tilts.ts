import { costsTogether, mostTime, QUARTERS, timePrices } from './groups.ts';
import type { Plan, PlanProblem } from './problem.ts';
import { type Greatest, type Sum, type Together, togetherOf, type Weighed } from './together.ts';
import { totalsOf } from './totals.ts';

/*
 * Which sums of a cost that trips have together are looked at. With some of them left out no plan costs
 * more, so that the best plan is the best one of all as soon as none of those left out would be greatest;
 * else the one that is greatest is looked at too. So few sums are told apart, often one of each cost.
 */

/** Of each cost the sums that are looked at; and whether the time is. */
export type Looked = { readonly sums: readonly (readonly number[])[]; readonly isTimed: boolean };

/** One sum of each cost, all ways to choose it. */
export function firstLooks(problem: PlanProblem): readonly Looked[] {
  return costsTogether(problem)
    .reduce<readonly (readonly (readonly number[])[])[]>(
      (chosen, { sums }) => chosen.flatMap((some) => sums.map((_, index) => [...some, [index]])),
      [[]],
    )
    .map((sums) => ({ sums, isTimed: false }));
}

/** Ways to lay the sums on the trips: all of one, or parts of two; and prices of time. */
export function tiltsOf(problem: PlanProblem, { sums, isTimed }: Looked): readonly Together[] {
  const costs = costsTogether(problem);
  const weighed = costs.reduce<readonly (readonly Weighed[])[]>(
    (some, cost, index) => {
      const looked = sums[index] ?? [];
      const ofLooked = { ...cost, sums: looked.map((sum) => cost.sums[sum] as Sum) };
      return some.flatMap((one) =>
        weightsOf(looked.length).map((weights) => [...one, { ...ofLooked, weights }]),
      );
    },
    [[]],
  );
  const prices = isTimed ? timePrices(problem) : [0];
  return weighed.flatMap((some) =>
    prices.map((price) => togetherOf(some, isTimed ? mostTime(problem, price) : null)),
  );
}

function weightsOf(count: number): readonly (readonly number[])[] {
  const indices = Array.from({ length: count }, (_, index) => index);
  const pairs = indices.flatMap((one) => indices.filter((other) => other > one).map((other) => [one, other]));
  return [
    ...indices.map((one) => indices.map((index) => (index === one ? 1 : 0))),
    ...pairs.flatMap(([one, other]) =>
      [1, 2, 3].map((quarters) =>
        indices.map((index) =>
          index === one ? quarters / QUARTERS : index === other ? 1 - quarters / QUARTERS : 0,
        ),
      ),
    ),
  ];
}

/**
 * What a plan costs beyond what was looked at.
 *
 * @returns key Infinite where it takes too long.
 * @returns looked What to look at too; null where nothing was missed.
 */
export function missedBy(
  problem: PlanProblem,
  plan: Plan,
  { sums, isTimed }: Looked,
): { readonly key: number; readonly looked: Looked | null } {
  const { sums: totals, sec, trailerSec } = totalsOf(problem, plan);
  const costs = costsTogether(problem).map((cost, index) =>
    missedOf(cost, totals[index] ?? [], sums[index] ?? []),
  );
  const time = mostTime(problem, 0);
  const isLate =
    time?.limits.some(({ mostSec }, index) => ([sec, ...trailerSec][index] ?? 0) > mostSec) ?? false;
  const isAll = !isLate && costs.every(({ added }) => added === null);
  return {
    key: isLate ? Number.POSITIVE_INFINITY : costs.reduce((sum, { key }) => sum + key, 0),
    looked: isAll
      ? null
      : {
          sums: costs.map(({ added }, index) => [...(sums[index] ?? []), ...(added === null ? [] : [added])]),
          isTimed: isTimed || isLate,
        },
  };
}

function missedOf({ keyEach }: Greatest, totals: readonly number[], looked: readonly number[]) {
  const greatest = Math.max(...totals);
  const seen = Math.max(...looked.map((index) => totals[index] ?? 0));
  return {
    key: keyEach * (greatest - seen),
    added: greatest > seen ? totals.indexOf(greatest) : null,
  };
}
