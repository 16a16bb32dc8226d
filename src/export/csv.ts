import type { SpreadsheetCell, SpreadsheetView } from '../describe/views.ts';

const lineEnd = '\r\n';

/**
 * Says that the bytes are UTF-8. A spreadsheet program may read a file without it in the code page of its
 * machine, and the shown texts hold signs beyond ASCII (″, m², letters of names). The cost: a program that
 * does not know the mark sees it before the first heading.
 * Source: RFC 3629 section 6 on the mark; that spreadsheets go by it: common practice (from memory).
 */
const byteOrderMark = '\uFEFF';

/**
 * Where a cell would begin with what a spreadsheet takes for the start of a formula: at the start of the
 * text, and behind what a program set to another separator would cut at (semicolon, tab, line break).
 * Source: MITRE, CWE-1236, "Improper Neutralization of Formula Elements in a CSV File" (seen) for = + - @
 * and the apostrophe; OWASP, "CSV Injection" for tab, carriage return and the separators (from memory).
 */
const formulaStart = /(?<=^|[;\t\r\n])(?=[=+\-@\t\r])/g;

/**
 * Rows as a CSV file: a line of headings, then a line a row, every text in quotes, numbers bare and in
 * full, nothing between the commas where a cell is empty. Text that a spreadsheet would take for a formula
 * gets an apostrophe before it. The same rows give the same bytes.
 *
 * Source: Y. Shafranovich, RFC 4180, "Common Format and MIME Type for Comma-Separated Values (CSV) Files",
 * section 2 (seen): CRLF ends a line, quotes inside quotes are doubled, each line has as many fields.
 * @throws {RangeError} If a row has more or fewer cells than there are headings, or a number is not finite.
 */
export function spreadsheetToCsv({ headings, rows }: Omit<SpreadsheetView, 'name'>): string {
  const lines = [headings, ...rows].map((cells) => {
    if (cells.length !== headings.length) {
      throw new RangeError(`a row has ${cells.length} cells under ${headings.length} headings`);
    }
    return `${cells.map(fieldOf).join(',')}${lineEnd}`;
  });
  return `${byteOrderMark}${lines.join('')}`;
}

function fieldOf(cell: SpreadsheetCell): string {
  if (cell === null) return '';
  if (typeof cell === 'string') return `"${cell.replaceAll(formulaStart, "'").replaceAll('"', '""')}"`;
  if (!Number.isFinite(Number(cell))) throw new RangeError(`a cell takes finite numbers only, got ${cell}`);
  return typeof cell === 'number' ? String(cell) : cell.toFixed();
}
