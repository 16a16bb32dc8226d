import type { TableView } from '../views.ts';

type Align = 'start' | 'end';

/** A column: its heading and on which side its cells stand. */
export const start = (heading: string) => ({ heading, align: 'start' as Align });
export const end = (heading: string) => ({ heading, align: 'end' as Align });

export const row = (...cells: string[]): TableView['rows'][number] => ({ cells, note: null, isTotal: false });
export const totalRow = (...cells: string[]): TableView['rows'][number] => ({
  cells,
  note: null,
  isTotal: true,
});

/** A table, or null where it would have no row. */
export function tableOrNull(
  caption: string,
  columns: TableView['columns'],
  rows: TableView['rows'],
): TableView | null {
  return rows.length === 0 ? null : { caption, columns, rows };
}

/** Rows with a note below the last of them. */
export function withNote(rows: TableView['rows'], note: string | null): TableView['rows'] {
  return rows.map((one, index) => (index === rows.length - 1 ? { ...one, note } : one));
}
