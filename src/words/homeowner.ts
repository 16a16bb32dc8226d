import type { PublicText } from '../problems/text.ts';

/**
 * Marks fixed words as fit for the homeowner: only public text and numbers may be put in, so a
 * sentence of the proposal cannot carry a crew note or a cost.
 */
export function homeowner(
  words: TemplateStringsArray,
  ...parts: readonly (PublicText | number)[]
): PublicText {
  return String.raw({ raw: words }, ...parts) as PublicText;
}
