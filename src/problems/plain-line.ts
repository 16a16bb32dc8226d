/*
 * What a user wrote, made fit for a terminal: control characters and marks that turn the writing
 * direction could hide or repaint what stands around them.
 */
const UNSAFE = /[\p{Cc}\p{Zl}\p{Zp}\u061c\u200b-\u200f\u202a-\u202e\u2066-\u2069\ufeff]/gu;
const STAND_IN = '\u00b7';

/** The same count of characters, with a dot for each that could disturb; a tab becomes a space. */
export function plainLine(text: string): string {
  return text.replaceAll('\t', ' ').replace(UNSAFE, STAND_IN);
}

/** As `plainLine`, cut to so many characters with `…` at the end. */
export function shortened(text: string, most: number): string {
  const plain = plainLine(text);
  return plain.length <= most ? plain : `${plain.slice(0, most - 1)}…`;
}
