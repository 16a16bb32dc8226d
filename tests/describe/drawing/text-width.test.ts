import { describe, expect, test } from 'vitest';
import { balancedLines, wrapText } from '../../../src/describe/drawing/lines.ts';
import { textWidthIn } from '../../../src/describe/drawing/text-width.ts';

const style = { sizePt: 72, weight: 400 } as const;

describe('textWidthIn', () => {
  // Noto Sans, figures tabular: 572 thousandths of the text size each (font file, seen).
  test.each([...'0123456789'])('the figure %s is as wide as every other', (figure) => {
    expect(textWidthIn(figure, style)).toBeCloseTo(0.572, 12);
    expect(textWidthIn(figure, { ...style, weight: 700 })).toBeCloseTo(0.572, 12);
  });

  // Measured in Chromium with the shipped font at 8 pt: "36′" 0.152838 in, "4′" 0.089359 in; it rounds
  // advances to 1/64 px, hence a thousandth of an inch.
  test.each([
    { text: '36′', browserIn: 0.152838 },
    { text: '4′', browserIn: 0.089359 },
  ])('$text is as wide as the browser sets it', ({ text, browserIn }) => {
    expect(textWidthIn(text, { sizePt: 8, weight: 400 })).toBeCloseTo(browserIn, 3);
  });

  test('widths add up and grow with the size', () => {
    expect(textWidthIn('Walk', style)).toBeCloseTo(textWidthIn('Wa', style) + textWidthIn('lk', style), 12);
    expect(textWidthIn('Walk', { ...style, sizePt: 36 })).toBeCloseTo(textWidthIn('Walk', style) / 2, 12);
    expect(textWidthIn('', style)).toBe(0);
  });

  test('refuses a character that is not in the font, by its code', () => {
    expect(() => textWidthIn('3⅜', style)).toThrow(/U\+215C/);
    expect(() => textWidthIn('a', { ...style, sizePt: Number.NaN })).toThrow(RangeError);
  });
});

describe('lines', () => {
  test('wraps at spaces and cuts what is too much with an ellipsis', () => {
    expect(wrapText('one two three', style, { widthIn: textWidthIn('one two', style), lines: 2 })).toEqual([
      'one two',
      'three',
    ]);
    const cut = wrapText('one two three four', style, { widthIn: textWidthIn('one two', style), lines: 1 });
    expect(cut).toHaveLength(1);
    expect(cut[0]).toMatch(/^one.*…$/);
    const long = wrapText('w'.repeat(400), style, { widthIn: 10, lines: 2 });
    expect(textWidthIn(long[0] ?? '', style)).toBeLessThanOrEqual(10);
  });

  test('balances a label over lines, or says that it has too few words', () => {
    expect(balancedLines('Replacement panel at the side gate', style, 2)).toEqual([
      'Replacement panel',
      'at the side gate',
    ]);
    expect(balancedLines('Driveway', style, 2)).toBeNull();
  });
});
