import type { Decimal } from 'decimal.js';
import { Usd } from '../../units/index.ts';

/** What may carry a part that the chute does not reach. */
export const CARRIED_BY = ['wheelbarrow', 'buggy', 'pump'] as const;
export type CarriedBy = (typeof CARRIED_BY)[number];

/** What each way would cost a part by itself; a way that does not get there is not among them. */
export type Offer = { readonly [means in CarriedBy]?: Decimal };

/** Once for the pour, where a way is used at all. */
export type Fixed = { readonly [means in CarriedBy]: Decimal };

export type Choice = {
  /** In the order of the offers; null where nothing gets there. */
  readonly by: readonly (CarriedBy | null)[];
  readonly costUsd: Decimal;
};

/**
 * The cheapest way for each part, hires counted once: of all sets of ways the one whose hires and whose
 * cheapest way for each part cost least together. Ties go to fewer ways, then to the earlier in
 * `CARRIED_BY`. A part that no way reaches costs nothing here and is told.
 */
export function cheapestWays(offers: readonly Offer[], fixed: Fixed): Choice {
  const sets = Array.from({ length: 2 ** CARRIED_BY.length }, (_, bits) =>
    CARRIED_BY.filter((__, index) => (bits >> index) % 2 === 1),
  ).toSorted((one, other) => one.length - other.length);
  let best: Choice | null = null;
  let bestReached = -1;
  for (const set of sets) {
    const choice = withSet(offers, fixed, set);
    const reached = choice.by.filter((means) => means !== null).length;
    const isBetter =
      best === null || reached > bestReached || (reached === bestReached && choice.costUsd.lt(best.costUsd));
    if (!isBetter) continue;
    best = choice;
    bestReached = reached;
  }
  if (best === null) throw new Error('there is always the set without any way');
  return best;
}

function withSet(offers: readonly Offer[], fixed: Fixed, set: readonly CarriedBy[]): Choice {
  const by = offers.map((offer) => cheapestOf(offer, set));
  const used = CARRIED_BY.filter((means) => by.includes(means));
  const parts = by.map((means, index) => (means === null ? new Usd(0) : costOf(offers[index], means)));
  const costUsd = [...used.map((means) => fixed[means]), ...parts].reduce<Decimal>(
    (sumUsd, oneUsd) => sumUsd.plus(oneUsd),
    new Usd(0),
  );
  return { by, costUsd };
}

function cheapestOf(offer: Offer, set: readonly CarriedBy[]): CarriedBy | null {
  return set.reduce<CarriedBy | null>((best, means) => {
    const costUsd = offer[means];
    if (costUsd === undefined) return best;
    return best === null || costUsd.lt(costOf(offer, best)) ? means : best;
  }, null);
}

function costOf(offer: Offer | undefined, means: CarriedBy): Decimal {
  const costUsd = offer?.[means];
  if (costUsd === undefined) throw new RangeError(`no offer of a ${means}`);
  return costUsd;
}
