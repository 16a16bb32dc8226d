import { Decimal } from 'decimal.js';
import { expect } from 'vitest';
import type { TableView } from '../../src/describe/views.ts';

/** Every amount in the row of the total is the sum of those above it, as printed; an empty cell is none. */
export function expectTotal(table: TableView): void {
  const totals = table.rows.filter(({ isTotal }) => isTotal);
  const lines = table.rows.filter(({ isTotal }) => !isTotal);
  expect(totals.length, table.caption).toBe(1);
  const cells = totals[0]?.cells ?? [];
  const amounts = cells.flatMap((cell, column) => (cell.startsWith('$') ? [{ cell, column }] : []));
  expect(amounts.length, table.caption).toBeGreaterThan(0);
  for (const { cell, column } of amounts) {
    const own = lines.map((line) => line.cells[column]).filter((one) => one !== '');
    const sum = own.reduce((at, one) => at.plus(amountOf(one)), new Decimal(0));
    expect(sum.toFixed(2), table.caption).toBe(amountOf(cell).toFixed(2));
  }
}

function amountOf(cell: string | undefined): Decimal {
  if (cell === undefined || !/^\$[\d,]+\.\d\d$/.test(cell)) throw new RangeError(`no amount: ${cell}`);
  return new Decimal(cell.replace(/[$,]/g, ''));
}
