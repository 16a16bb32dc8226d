import { plainText } from './number-text.ts';
import { type ParseResult, refused, taken } from './parse-result.ts';

const COUNT = /^(?:[1-9]\d{0,2}(?:,\d{3})+|\d+)$/;

/** Reads a count, a whole number from 0 without a unit: `3`, `1,200`. */
export function parseCount(text: string): ParseResult<number> {
  const plain = plainText(text);
  const count = COUNT.test(plain) ? Number(plain.replaceAll(',', '')) : Number.NaN;
  if (Number.isSafeInteger(count)) return taken(count);
  return refused(/['"]/.test(plain) ? 'stray-quote' : 'not-a-count', countForms(plain));
}

/** The whole numbers on both sides of what was written. */
function countForms(plain: string): readonly string[] {
  const number = Number(/^["']?(\d{1,9}(?:\.\d+)?)(?!\d)/.exec(plain)?.[1] ?? Number.NaN);
  if (!Number.isFinite(number)) return ['3', '12'];
  return [...new Set([Math.floor(number), Math.ceil(number)])].map(String);
}

/** Reads `yes` or `no`; nothing else, so that no slip turns into an answer. */
export function parseYesNo(text: string): ParseResult<boolean> {
  const plain = plainText(text);
  if (plain === 'yes' || plain === 'no') return taken(plain === 'yes');
  return refused(/['"]/.test(plain) ? 'stray-quote' : 'not-yes-no', ['yes', 'no']);
}
