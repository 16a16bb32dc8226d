/**
 * A CSS string literal, quotes included, for any text: `"` and `\`, line breaks, `<` (so that it
 * cannot close the style element) and all but printable ASCII become hex escapes.
 *
 * A space ends a hex escape, so that a digit after it is not read as part of it.
 * Source: W3C, CSS Syntax Module Level 3, section 4.3.7, "Consume an escaped code point".
 *
 * @throws {RangeError} For a null character, which CSS cannot hold.
 *
 * @example cssString('5″ deep') // "5\2033  deep"
 */
export function cssString(text: string): string {
  if (text.includes('\0')) throw new RangeError('a CSS string cannot hold a null character');
  const escaped = Array.from(text, (char) =>
    /[ -~]/.test(char) && !/["\\<>&']/.test(char) ? char : `\\${char.codePointAt(0)?.toString(16)} `,
  );
  return `"${escaped.join('')}"`;
}
