import { constant, type Figure, figure } from '../figure.ts';
import type { Exposure } from '../job.ts';
import { strengthFloor, strengthRows } from './strength.ts';

/** The published minimum for the exposure; its source names the row that governs. */
export function strengthFigure(exposure: Exposure): Figure {
  const rows = strengthRows(exposure);
  const floor = strengthFloor(exposure);
  const inputs = Object.fromEntries(
    rows.map((row) => [
      `${row.standard}Psi`,
      constant(`least strength, ${row.source.replace(/ \(.*\)$/, '')}`, row.leastPsi, 'psi', row.source),
    ]),
  );
  return figure({
    value: floor.leastPsi,
    unit: 'psi',
    decimals: 0,
    formula: `max(${Object.keys(inputs).join(', ')})`,
    inputs,
    source: floor.source,
  });
}
