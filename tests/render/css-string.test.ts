import { describe, expect, test } from 'vitest';
import { cssString } from '../../src/render/css-string.ts';

/**
 * Reads a CSS string as a browser does. W3C, CSS Syntax Module Level 3, sections 4.3.5 and 4.3.7
 * (from memory): after a backslash up to six hex digits and one white space; a line break ends the
 * string.
 */
function readCssString(literal: string): string {
  const text = literal.match(/^"((?:[^"\\\n]|\\[0-9a-f]{1,6}\s?)*)"$/i)?.[1];
  if (text === undefined) throw new Error(`not one whole CSS string: ${literal}`);
  return text.replace(/\\([0-9a-f]{1,6})\s?/gi, (_, hex: string) =>
    String.fromCodePoint(Number.parseInt(hex, 16)),
  );
}

describe('cssString', () => {
  test.each([
    ['plain', 'Harbor Flatwork'],
    ['quotes', `5' 3" "deep"`],
    ['backslash before a hex digit', 'C:\\abc \\22 '],
    ['line breaks', 'one\ntwo\r\nthree\ffour'],
    ['the end of a style element', '</style><script>alert(1)</script>'],
    ['a comment', '/* */ } @import url(x);'],
    ['letters after an escape', '5″deep, Müller, 😀9'],
    ['empty', ''],
  ])('%s comes back as it was', (_, text) => {
    expect(readCssString(cssString(text))).toBe(text);
  });

  test('leaves nothing that CSS or HTML could take for its own', () => {
    const all = Array.from({ length: 0x2100 - 1 }, (_, at) => String.fromCharCode(at + 1)).join('');
    expect(cssString(all).slice(1, -1)).toMatch(/^(?:[ -~])*$/);
    expect(cssString(all).slice(1, -1)).not.toMatch(/["<>&']/);
  });

  test('a null character is refused', () => {
    expect(() => cssString('a\0b')).toThrow(RangeError);
  });
});
