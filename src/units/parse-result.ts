/** Why a text was refused. The words for it are written elsewhere, by code. */
export type ParseCode =
  | 'without-unit'
  | 'unknown-unit'
  | 'wrong-kind'
  | 'not-a-number'
  | 'not-dollars'
  | 'not-a-date'
  | 'not-a-time-of-day'
  | 'not-yes-no'
  | 'stray-quote'
  | 'not-a-count';

/**
 * What became of a text: its value, or why not and how it could be written.
 *
 * `forms` are ways of writing the same value that would be taken (each does parse); where no
 * value can be made out they are examples of the kind that was asked for.
 */
export type ParseResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly code: ParseCode; readonly forms: readonly string[] };

export function taken<T>(value: T): ParseResult<T> {
  return { ok: true, value };
}

export function refused(code: ParseCode, forms: readonly string[]): ParseResult<never> {
  return { ok: false, code, forms };
}
