import type { Finding } from './leaf.ts';

/** What a number may be: ends included, but for `above: 0`. */
export type Range<T> = { readonly above?: 0; readonly least?: T; readonly most?: T };

/**
 * What is wrong with where a value lies, or null.
 *
 * @param written How the user wrote it.
 * @param compare Below 0, 0 or above 0, as the value lies to an end or to zero.
 */
export function outOfRange(
  written: string,
  range: Range<string>,
  compare: (end: string | 0) => number,
): Finding | null {
  const value = written;
  if (range.above === 0 && !(compare(0) > 0)) return { code: 'not-above-zero', parts: { value } };
  if (range.least !== undefined && compare(range.least) < 0) {
    return { code: 'too-small', parts: { value, least: range.least } };
  }
  if (range.most !== undefined && compare(range.most) > 0) {
    return { code: 'too-large', parts: { value, most: range.most } };
  }
  return null;
}
