import type { Price } from '../../calculate/price/index.ts';
import type { PublicText } from '../../calculate/text.ts';
import { formatMoney } from '../../units/index.ts';

/** The only way an amount of money reaches the homeowner: it must be a price. */
export function showPrice(price: Price): PublicText {
  return formatMoney(price) as PublicText;
}
