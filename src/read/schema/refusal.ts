import { type Measure, shortened } from '../../problems/index.ts';
import type { ParseCode } from '../../units/index.ts';
import type { Finding } from './leaf.ts';

const MOST_SHOWN = 60;

/** The finding for a text that a parser of units refused. */
export function refusal(
  text: string,
  measure: Measure,
  refused: { readonly code: ParseCode; readonly forms: readonly string[] },
): Finding {
  const written = { value: shortened(text, MOST_SHOWN), forms: refused.forms };
  switch (refused.code) {
    case 'without-unit':
      return { code: `${measure}-without-unit`, parts: written };
    case 'unknown-unit':
    case 'wrong-kind':
      return { code: refused.code, parts: { ...written, measure } };
    default:
      return { code: refused.code, parts: written };
  }
}
