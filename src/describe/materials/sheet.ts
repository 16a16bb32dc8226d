import type { SpreadsheetCell, SpreadsheetView } from '../views.ts';

/** A column of a sheet: a quantity takes two, one for the number and one for the text of the page. */
export type SheetColumn<Row> = {
  readonly heading: string;
  readonly cell: (row: Row) => SpreadsheetCell;
};

/** Rows under columns as a sheet, or null where it would have no row. It never has a row of totals. */
export function sheetOrNull<Row>(sheet: {
  readonly name: string;
  readonly columns: readonly SheetColumn<Row>[];
  readonly rows: readonly Row[];
}): SpreadsheetView | null {
  const { name, columns, rows } = sheet;
  if (rows.length === 0) return null;
  return {
    name,
    headings: columns.map(({ heading }) => heading),
    rows: rows.map((one) => columns.map(({ cell }) => cell(one))),
  };
}
