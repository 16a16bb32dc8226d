import { plainLine } from './plain-line.ts';
import type { SourceSpot } from './types.ts';

/** A line of a file, counted from 1, without its line break; null where there is none. */
export type ReadLine = (file: string, line: number) => string | null;

const NUMBER_WIDTH = 5;
/** A line of more characters is shown in part, with the spot in it. */
const MOST_SHOWN = 100;
const SHOWN_BEFORE = 40;

/**
 * The line of a spot and the one before, with carets below the spot.
 *
 * @returns Lines without a line break at the end; none if the line cannot be read any more.
 */
export function codeFrame(spot: SourceSpot, readLine: ReadLine): readonly string[] {
  const line = readLine(spot.file, spot.line);
  if (line === null) return [];
  const cut = line.length > MOST_SHOWN ? Math.max(0, spot.column - 1 - SHOWN_BEFORE) : 0;
  const shown = (text: string) => plainLine(text).slice(cut, cut + MOST_SHOWN);
  const at = spot.column - 1 - cut;
  const carets = Math.max(1, Math.min(spot.length, Math.max(1, shown(line).length - at)));

  const frame = [
    numbered(spot.line, shown(line)),
    `${' '.repeat(NUMBER_WIDTH)} | ${' '.repeat(at)}${'^'.repeat(carets)}`,
  ];
  const before = spot.line > 1 ? readLine(spot.file, spot.line - 1) : null;
  return before === null ? frame : [numbered(spot.line - 1, shown(before)), ...frame];
}

function numbered(line: number, text: string): string {
  return `${String(line).padStart(NUMBER_WIDTH)} | ${text}`.trimEnd();
}
