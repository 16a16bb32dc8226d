/** In the plain fonts of drawing programs, primes and the fraction stroke are missing. */
const plain: readonly (readonly [from: string, to: string])[] = [
  ['′', "'"],
  ['″', '"'],
  ['⁄', '/'],
  ['\u00a0', ' '],
  ['\u2009', ' '],
];

/**
 * A text as one line of a DXF file that says the same. Line breaks, control characters and halves of
 * characters, which would end the line or spoil the file, become spaces; what a drawing program would take for a code is written so that it
 * is not: a caret is followed by a space (which stands for the caret itself), doubled percent signs and
 * the backslash of \U+ and \M+ are set apart.
 *
 * Source: Autodesk, "DXF Reference", "Text and character codes" (from memory).
 */
export function dxfText(text: string): string {
  const said = plain.reduce((so, [from, to]) => so.replaceAll(from, to), text);
  return said
    .replaceAll(/[\p{Cc}\p{Cs}\u2028\u2029]+/gu, ' ')
    .replaceAll('^', '^ ')
    .replaceAll(/%(?=%)/g, '% ')
    .replaceAll(/\\(?=[UM]\+)/gi, '\\ ')
    .trim();
}
