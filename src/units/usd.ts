import { Decimal } from 'decimal.js';

/**
 * The one decimal context for money and for exact decimals on their way to a page.
 *
 * The library's own default keeps 20 digits and would lose a cent on a long number,
 * and writes 1e21 in exponent form; `Decimal.set` would change it for everybody.
 */
export const Usd = Decimal.clone({
  precision: 40,
  rounding: Decimal.ROUND_HALF_UP,
  toExpNeg: -30,
  toExpPos: 30,
});
