import type { Decimal } from 'decimal.js';
import { roundToCent, Usd } from '../../units/index.ts';
import type { Figure, FigureValue } from '../figure.ts';

/** What the company pays. Never shown to a homeowner. */
export type Cost = Decimal & { readonly money: 'cost' };

/** What the homeowner pays. */
export type Price = Decimal & { readonly money: 'price' };

/** Overhead and margin, both as shares of the price (0 to 1, together below 1). */
export type Shares = { readonly overheadRatio: number; readonly marginRatio: number };

/** The amount of a figure of cost. */
export function costOf(figure: Figure): Cost {
  return new Usd(figure.value) as Cost;
}

/**
 * The price that covers a cost and leaves overhead and margin, to the cent.
 *
 * price = cost / (1 - overhead - margin), half up to the cent.
 * This is the only way from a cost to a price.
 *
 * @throws {RangeError} If overhead and margin together are 1 or more, or one of them is below 0.
 *
 * @example priceFromCost(8250, { overheadRatio: 0.15, marginRatio: 0.1 }) // 11,000.00
 */
export function priceFromCost(cost: Cost, shares: Shares): Price {
  const { overheadRatio, marginRatio } = shares;
  const keptRatio = new Usd(1).minus(overheadRatio).minus(marginRatio);
  if (!(overheadRatio >= 0 && marginRatio >= 0 && keptRatio.gt(0))) {
    throw new RangeError(
      `overhead ${overheadRatio} and margin ${marginRatio} must be 0 or more and together below 1`,
    );
  }
  return roundToCent(new Usd(cost).dividedBy(keptRatio)) as Price;
}

/** max(0, minimum - sum): what brings a small job up to the least charge. */
export function minimumChargeAddition(sum: Price, minimumUsd: Decimal): Price {
  return Usd.max(0, minimumUsd.minus(sum)) as Price;
}

/**
 * Tax on an amount, to the cent. Whether and on what a contract is taxed differs by state: the
 * base is the company's own setting.
 */
export function taxUsd(baseUsd: Decimal, taxRatio: number): Price {
  return roundToCent(baseUsd.times(taxRatio)) as Price;
}

/**
 * What others charge the homeowner, such as a city for its panel: no cost of the company, and in no price of
 * its offer.
 */
export function othersPrice(amountUsd: FigureValue): Price {
  return new Usd(amountUsd) as Price;
}
