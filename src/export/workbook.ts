import type { Cell, Sheet } from 'write-excel-file/universal';
import type { SpreadsheetCell, SpreadsheetView } from '../describe/views.ts';

/** Widths in characters: a narrow column keeps room for a typed number, a wide one is cut off by the next. */
const WIDTH = { least: 8, most: 60, margin: 2 };

/** The years a zip archive can carry. Source: PKWARE, APPNOTE.TXT, 4.4.6, MS-DOS date (from memory). */
const ZIP_SECONDS = { first: Date.UTC(1980, 0, 1) / 1000, last: Date.UTC(2099, 11, 31) / 1000 };

/**
 * Sheets as the bytes of a workbook (.xlsx): a bold row of headings that stays in view, texts as texts,
 * numbers as numbers, money with two decimals, nothing where a cell is empty. No text becomes a formula:
 * every text is a cell of type text and keeps that type when it is edited. The same sheets and the same
 * stamp give the same bytes. The libraries are loaded when it is called.
 *
 * Source: ECMA-376 part 1, 18.3.1.4 on cells, 18.18.11 on their types (from memory).
 * @param workbook.epochSeconds The date inside the file, UTC [s since 1970-01-01]; a day outside the years
 *   1980 to 2099 becomes the nearest.
 * @throws {RangeError} If there is no sheet, a row has more or fewer cells than there are headings, or a
 *   number is not finite.
 */
export async function workbookOf(workbook: {
  readonly sheets: readonly SpreadsheetView[];
  readonly epochSeconds: number;
}): Promise<Uint8Array> {
  const { sheets, epochSeconds } = workbook;
  if (sheets.length === 0) throw new RangeError('a workbook has at least one sheet');
  const made = sheets.map(sheetOf);
  const { default: writeWorkbook } = await import('write-excel-file/universal');
  const blob = await writeWorkbook(made).toBlob();
  return zippedAgain(new Uint8Array(await blob.arrayBuffer()), epochSeconds);
}

/** The writer stamps its archive with the clock: its entries are packed again, in order, with one stamp. */
async function zippedAgain(archive: Uint8Array, epochSeconds: number): Promise<Uint8Array> {
  const { unzipSync, zipSync } = await import('fflate');
  const entries = Object.entries(unzipSync(archive)).toSorted(([one], [other]) => (one < other ? -1 : 1));
  return zipSync(Object.fromEntries(entries), { mtime: zipDay(epochSeconds) });
}

/** Noon of the day on the clock of the machine, which is what goes into a zip, so in no time zone another. */
function zipDay(epochSeconds: number): Date {
  const { first, last } = ZIP_SECONDS;
  const day = new Date(Math.min(Math.max(epochSeconds, first), last) * 1000);
  return new Date(day.getUTCFullYear(), day.getUTCMonth(), day.getUTCDate(), 12);
}

function sheetOf({ name, headings, rows }: SpreadsheetView): Sheet<Blob> {
  const wrong = rows.find((row) => row.length !== headings.length);
  if (wrong !== undefined) {
    throw new RangeError(`a row of ${name} has ${wrong.length} cells under ${headings.length} headings`);
  }
  const data = rows.map((row) => row.map(cellOf));
  return {
    sheet: name,
    data: [headings.map((heading) => ({ ...textCell(heading), fontWeight: 'bold' as const })), ...data],
    columns: headings.map((heading, at) => ({
      width: widthOf([heading, ...rows.map((row) => row[at] ?? null)]),
    })),
    stickyRowsCount: 1,
  };
}

function cellOf(cell: SpreadsheetCell): Cell {
  if (cell === null || cell === '') return null;
  if (typeof cell === 'string') return textCell(cell);
  const value = Number(cell);
  if (!Number.isFinite(value)) throw new RangeError(`a cell takes finite numbers only, got ${cell}`);
  return typeof cell === 'number' ? { type: Number, value } : { type: Number, value, format: '0.00' };
}

/** A cell whose text is a text, also when somebody types into it: that is what the format @ says. */
function textCell(text: string) {
  return { type: String, value: plainText(text), format: '@' };
}

/**
 * A text that reads as it is. A spreadsheet takes _x0041_ for an escaped character, so such an underscore
 * is itself escaped; the writer looks texts up by name and would find what every object has ("constructor"),
 * so such a text ends with a space.
 * Source: ECMA-376 part 1, 22.9.2.19, ST_Xstring (from memory).
 */
function plainText(text: string): string {
  const escaped = text.replaceAll(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_');
  return escaped in Object.prototype ? `${escaped} ` : escaped;
}

function widthOf(cells: readonly SpreadsheetCell[]): number {
  const longest = Math.max(...cells.map(lengthOf)) + WIDTH.margin;
  return Math.min(Math.max(longest, WIDTH.least), WIDTH.most);
}

function lengthOf(cell: SpreadsheetCell): number {
  if (cell === null) return 0;
  return (typeof cell === 'object' ? cell.toFixed(2) : String(cell)).length;
}
