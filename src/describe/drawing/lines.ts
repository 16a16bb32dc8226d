import type { TextPrimitive } from './drawing.ts';
import { textWidthIn } from './text-width.ts';

export type TextStyle = Pick<TextPrimitive, 'sizePt' | 'weight'>;

/**
 * A text broken at spaces into lines no wider than asked. What does not fit, a word or a line too
 * many, is cut and ends in an ellipsis.
 */
export function wrapText(text: string, style: TextStyle, most: { widthIn: number; lines: number }): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidthIn(longer, style) <= most.widthIn) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  const kept = lines.slice(0, most.lines);
  return kept.map((line, index) => {
    const isCut = index === kept.length - 1 && lines.length > kept.length;
    return shortened(line, style, most.widthIn, isCut);
  });
}

/** The text in exactly so many lines, as evenly as its spaces allow; null if it has too few words. */
export function balancedLines(text: string, style: TextStyle, count: number): string[] | null {
  const words = text.split(/\s+/).filter((part) => part !== '');
  if (words.length < count) return null;
  const wholeIn = textWidthIn(words.join(' '), style);
  for (let share = 1 / count; share <= 1; share += 0.05) {
    const lines = wrapText(text, style, { widthIn: wholeIn * share, lines: words.length });
    if (lines.length <= count && lines.join(' ') === words.join(' ')) return lines;
  }
  return null;
}

function shortened(line: string, style: TextStyle, widthIn: number, isCut: boolean): string {
  if (!isCut && textWidthIn(line, style) <= widthIn) return line;
  const characters = [...line];
  while (characters.length > 0 && textWidthIn(`${characters.join('')}…`, style) > widthIn) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
